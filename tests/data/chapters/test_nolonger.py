"""What another window has taken away is told in words; nothing is half kept, and nothing ends in a fault."""

from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from datetime import datetime
from pathlib import Path

import pytest

from data.book import Book
from data.errors import BookError, BookUnreachable, NoLongerThere
from data.events import EventKind
from data.medium.benchtest import BenchKind, BenchTestId, NewBenchTest
from data.readings import NewReading, ReadingKind
from data.records import TrayId
from tests.data.builders import a_note, a_tray
from tests.made.books import an_empty_book

AT = datetime(2026, 3, 8, 9)


@pytest.fixture(name="windows")
def two_windows(tmp_path: Path) -> tuple[Book, Book]:
    return an_empty_book(tmp_path / "book"), Book.open(tmp_path / "book")


def weigh(book: Book, tray: TrayId) -> None:
    book.add_readings([NewReading(kind=ReadingKind.WEIGHT, value=812.0, taken_at=AT, tray_id=tray)])


def water(book: Book, tray: TrayId) -> None:
    book.add_event([tray], EventKind.WATERED, AT)


def read(book: Book, tray: TrayId) -> None:
    book.tray(tray)


@pytest.mark.parametrize("what", [weigh, water, read])
def test_a_tray_that_another_window_took_back(
    windows: tuple[Book, Book], what: Callable[[Book, TrayId], None]
) -> None:
    here, there = windows
    (tray,) = here.add_trays([a_tray("A1")])
    there.undo()

    with pytest.raises(NoLongerThere, match="no longer in the book"):
        what(here, tray)

    assert here.undo_text() is None
    assert here.readings() == ()


def test_photos_of_a_heap_whose_test_was_deleted_while_they_were_copied(
    windows: tuple[Book, Book], tmp_path: Path
) -> None:
    here, there = windows
    here.set_medium("coir")
    test = here.begin_test(NewBenchTest(kind=BenchKind.BREAKDOWN, medium="coir", begun_at=AT))
    there.delete_test(test)

    with pytest.raises(NoLongerThere):
        here.keep_heap_photos(test, [a_note(tmp_path, "heap.jpg")], AT)
    with pytest.raises(NoLongerThere):
        here.delete_test(test)
    assert here.heap_photos(test) == ()


def test_it_is_told_in_words_that_end_in_no_quotes(windows: tuple[Book, Book]) -> None:
    with pytest.raises(BookError) as caught:
        windows[0].bench_test(BenchTestId(7))
    assert str(caught.value).startswith("nothing was changed, since")
    assert "book" in str(caught.value)


def test_a_book_whose_drive_was_pulled_out_is_not_said_to_be_read_only(
    windows: tuple[Book, Book], tmp_path: Path
) -> None:
    here, _ = windows
    here.folder.rename(tmp_path / "away")

    def asked_by_another_thread() -> BaseException | None:
        with ThreadPoolExecutor(1) as pool:  # which has no connection yet
            return pool.submit(here.setting, "today").exception()

    assert isinstance(asked_by_another_thread(), BookUnreachable)
    (tmp_path / "away").rename(here.folder)
    assert asked_by_another_thread() is None
