"""Settings that a person decides on are steps that can be taken back, as all else is."""

from collections.abc import Callable
from pathlib import Path

import pytest

from data.book import Book
from data.chapters import changes
from tests.data.builders import a_tray
from tests.made.books import an_empty_book

KIND = "10 x 20 inch"
OFF = ((1.5, 0.0), (0.0, 0.0), (0.0, -2.0), (0.0, 0.0))

Set = Callable[[Book], None]
Read = Callable[[Book], object]


def set_limits(book: Book) -> None:
    book.set_limits({"price": (None, 1.2)})


def set_weekly(book: Book) -> None:
    book.set_trays_a_week(40)


def set_cards(book: Book) -> None:
    book.set_cards_off(KIND, OFF)


@pytest.fixture(name="book")
def a_book(tmp_path: Path) -> Book:
    book = an_empty_book(tmp_path / "book")
    book.add_trays([a_tray("A1", tray_type=KIND)])
    return book


CASES = (
    (set_limits, lambda book: book.limits(), "limits of media"),
    (set_weekly, lambda book: book.trays_a_week(), "trays a week"),
    (set_cards, lambda book: book.tray_type(KIND).cards_off_mm, f"station cards of {KIND}"),
)


@pytest.mark.parametrize(("change", "read", "words"), CASES)
def test_undo_takes_back_this_and_not_what_was_kept_before(
    book: Book, change: Set, read: Read, words: str
) -> None:
    before = read(book)
    change(book)
    after = read(book)
    assert after != before

    assert book.undo() == words
    assert read(book) == before
    assert book.redo() == words
    assert read(book) == after
    book.undo()
    assert book.undo_text() == "tray A1 added"


@pytest.mark.parametrize(("change", "read", "words"), CASES)
def test_what_is_set_as_it_was_is_no_step(book: Book, change: Set, read: Read, words: str) -> None:
    book.set_limits({})
    book.set_trays_a_week(10)
    book.set_cards_off(KIND, ())
    assert book.undo_text() == "tray A1 added"
    change(book)
    change(book)
    book.undo()
    assert book.undo_text() == "tray A1 added"


def test_a_button_that_is_held_down_is_one_step_back(book: Book) -> None:
    for trays in range(11, 31):
        book.set_trays_a_week(trays)
    book.undo()
    assert book.trays_a_week() == 10
    assert book.redo() == "trays a week"
    assert book.trays_a_week() == 30


def test_two_decisions_with_time_between_are_two_steps(book: Book, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(changes, "SAME_SETTING", -changes.SAME_SETTING)
    book.set_trays_a_week(11)
    book.set_trays_a_week(12)
    book.undo()
    assert book.trays_a_week() == 11


def test_a_clock_that_was_set_back_makes_no_one_step_of_two(book: Book) -> None:
    book.set_trays_a_week(11)
    with book.writing() as db:
        db.execute("UPDATE change SET made_at = '2999-01-01T08:00:00'")
    book.set_trays_a_week(12)
    book.undo()
    assert book.trays_a_week() == 11


def test_another_change_between_ends_the_step(book: Book) -> None:
    book.set_trays_a_week(11)
    book.set_limits({"price": (None, 1.2)})
    book.set_trays_a_week(12)
    book.undo()
    assert book.trays_a_week() == 11
    book.undo()
    assert book.limits() == {}


def test_what_is_set_anew_after_undo_ends_what_could_be_done_again(book: Book) -> None:
    book.set_trays_a_week(11)
    book.set_limits({"price": (None, 1.2)})
    book.undo()
    book.set_trays_a_week(12)
    assert book.redo_text() is None
    book.undo()
    assert book.trays_a_week() == 10
