"""Book reading: one at a time, the newest question last, and nothing of a book that is open no more."""

import threading
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from data.book import Book
from data.cancel import CancelToken
from gui.bookreading import BookReading
from gui.work import Work
from tests.gui.rackbook import a_rack_book


@pytest.fixture
def mine(tmp_path: Path) -> Iterator[Book]:
    with a_rack_book(tmp_path / "mine") as book:
        yield book


@pytest.fixture
def answers(work: Work, mine: Book, came: list[object]) -> BookReading:
    reading = BookReading(work, work)
    reading.open(mine)
    reading.came.connect(came.append)
    return reading


@pytest.fixture
def came() -> list[object]:
    return []


def waiting_for(gate: threading.Event, answer: str) -> Callable[[Book, CancelToken], str]:
    def question(_book: Book, _cancel: CancelToken) -> str:
        assert gate.wait(10)
        return answer

    return question


def codes(book: Book, _cancel: CancelToken) -> list[str]:
    return [tray.code for tray in book.trays()]


def test_of_the_questions_that_come_meanwhile_the_newest_is_asked(
    answers: BookReading, came: list[object], qtbot: QtBot
) -> None:
    gate = threading.Event()
    answers.ask(waiting_for(gate, "first"))
    answers.ask(waiting_for(gate, "second"))
    answers.ask(codes)
    assert answers.waits

    gate.set()

    qtbot.waitUntil(lambda: not answers.is_running)
    assert came == ["first", ["A1", "A2", "B1"]]


def test_an_answer_of_a_book_that_is_open_no_more_is_dropped(
    answers: BookReading, came: list[object], qtbot: QtBot, tmp_path: Path
) -> None:
    gate = threading.Event()
    answers.ask(waiting_for(gate, "of the book before"))
    with a_rack_book(tmp_path / "other", per_shelf=(1,)) as other:
        answers.open(other)
        assert not answers.is_running  # nothing was asked of this one
        answers.ask(codes)

        gate.set()

        qtbot.waitUntil(lambda: not answers.is_running)
        assert came == [["A1"]]


def test_what_waits_is_asked_though_the_one_before_failed(
    answers: BookReading, came: list[object], qtbot: QtBot
) -> None:
    failures: list[object] = []
    answers.failed.connect(failures.append)
    error = KeyError("no such trial")

    def fail(_book: Book, _cancel: CancelToken) -> None:
        raise error

    answers.ask(fail)
    answers.ask(codes)

    qtbot.waitUntil(lambda: not answers.is_running)
    assert failures == [error]
    assert came == [["A1", "A2", "B1"]]


def test_who_asks_again_as_an_answer_comes_gets_one_more(
    answers: BookReading, came: list[object], qtbot: QtBot
) -> None:
    answers.came.connect(lambda _answer: answers.ask(codes) if len(came) == 1 else None)
    answers.ask(codes)

    qtbot.waitUntil(lambda: len(came) == 2 and not answers.is_running)
    assert not answers.waits


def test_without_a_book_nothing_is_read(answers: BookReading, came: list[object], work: Work) -> None:
    answers.open(None)
    answers.ask(codes)
    assert not work.jobs()
    assert came == []
