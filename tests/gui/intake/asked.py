"""Asked: an Intake that has read its book, answers to it, and photos that it asks about."""

import os
from collections.abc import Sequence
from datetime import datetime
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QPushButton
from pytestqt.qtbot import QtBot

from data.book import Book
from data.records import PhotoId
from gui.intake.screen import Intake
from tests.data.builders import a_note, bring


def opened(intake: Intake, book: Book, qtbot: QtBot) -> None:
    intake.open_book(book)
    read(intake, qtbot)


def read(intake: Intake, qtbot: QtBot) -> None:
    qtbot.waitUntil(lambda: not intake.answers.is_running and intake.desk._job is None)
    intake.renew()
    qtbot.waitUntil(lambda: not intake.answers.is_running)


def press(qtbot: QtBot, intake: Intake, button: QPushButton) -> None:
    assert button.isVisible()
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
    read(intake, qtbot)


def a_wrong_walk(book: Book, phone: Path, count: int = 3) -> list[PhotoId]:
    """Trays A1, A2, ... with their tags, by a camera whose year is wrong; copies of files."""
    photos = []
    for n in range(1, count + 1):
        note = a_note(phone, f"{n}.jpg", tag=10 + n, taken_at=f"2024-03-08T08:0{n}:00")
        copied = datetime(2026, 3, 8, 9).timestamp()
        os.utime(note, (copied, copied))
        photos.append(bring(book, note).photo_id)
    return photos


def codes(book: Book, photos: Sequence[PhotoId]) -> list[str | None]:
    return [book.photo(photo).tray_code for photo in photos]


def a_walk_without_tags(book: Book, phone: Path, day: int = 8) -> list[PhotoId]:
    return [
        bring(book, a_note(phone, f"d{day}-{n}.jpg", taken_at=f"2026-03-0{day}T08:0{n}:00")).photo_id
        for n in range(6)
    ]
