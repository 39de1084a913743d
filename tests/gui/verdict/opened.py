"""Opened: a Verdict that has read its book."""

from pytestqt.qtbot import QtBot

from data.book import Book
from gui.verdict.screen import Verdict


def read(screen: Verdict, book: Book, qtbot: QtBot) -> Verdict:
    screen.open_book(book)
    screen.arrive()
    settle(screen, qtbot)
    return screen


def settle(screen: Verdict, qtbot: QtBot) -> None:
    qtbot.wait(20)
    qtbot.waitUntil(lambda: not screen.work.jobs(), timeout=20_000)
