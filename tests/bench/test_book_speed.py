"""The book after years: 5,000 trays, 70,000 photos, 200 still growing, beside a young book of those alone.

Run by hand: python -m pytest -m sweep tests/bench/test_book_speed.py. What is asked of growing trays
must take as long as in the young book, on the same machine in the same minute. Measured on two shared cores
when this was written: look list 64 ms, tiles 32 ms, one tray's days 1.2 ms, one photo stored 2.5 ms.
"""

import sqlite3
from collections.abc import Callable, Iterator
from contextlib import closing
from pathlib import Path
from statistics import median
from time import perf_counter

import pytest

from data.book import Book
from data.watch import read_looks
from tests.bench.big_book import DAYS, GROWING, TRAYS, fill
from tests.data.builders import a_note, score_note

pytestmark = [
    pytest.mark.sweep,
    pytest.mark.timeout(600),
]


@pytest.fixture(scope="module")
def years(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Book]:
    with Book.create(tmp_path_factory.mktemp("years") / "book") as book:
        fill(book, TRAYS)
        yield book


@pytest.fixture(scope="module")
def young(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Book]:
    with Book.create(tmp_path_factory.mktemp("young") / "book") as book:
        fill(book, GROWING)
        yield book


def times_as_long(old: Callable[[], object], new: Callable[[], object], rounds: int = 15) -> float:
    """How many times as long `old` takes as `new`, taken in turn; median of the rounds."""

    def seconds(work: Callable[[], object]) -> float:
        begun = perf_counter()
        work()
        return perf_counter() - begun

    return median(seconds(old) / seconds(new) for _ in range(rounds))


def test_the_look_list_depends_on_the_trays_that_grow(years: Book, young: Book) -> None:
    assert len(read_looks(years)) == len(read_looks(young)) > 0
    assert times_as_long(lambda: read_looks(years), lambda: read_looks(young)) < 2


def test_the_bench_depends_on_the_trays_that_grow(years: Book, young: Book) -> None:
    assert len(years.tiles()) == GROWING
    assert times_as_long(years.tiles, young.tiles) < 2


def test_a_tray_sheet_depends_on_the_tray(years: Book, young: Book) -> None:
    def sheet(book: Book) -> Callable[[], object]:
        tray = book.trays()[0].id
        assert len(book.days(tray)) == DAYS
        return lambda: (book.days(tray), book.peers(tray))

    assert times_as_long(sheet(years), sheet(young)) < 2


def test_storing_a_photo_takes_no_longer_after_years(years: Book, young: Book, tmp_path: Path) -> None:
    notes = iter(range(1000))

    def storing(book: Book) -> Callable[[], object]:
        def keep() -> None:
            says = {"tag": 20, "suspects": [{}, {}, {}], "taken_at": "2026-03-15T12:00:00"}
            path = a_note(tmp_path, f"{next(notes)}.jpg", **says)
            book.keep(score_note(path), path)

        return keep

    assert times_as_long(storing(years), storing(young), rounds=31) < 2


def test_notes_of_a_tray_take_little_room_beside_its_photos(years: Book) -> None:
    """A weight a day, three waterings a tray and a month of four loggers; photos stand in `table.py`."""
    with closing(sqlite3.connect(years.folder / "book.sqlite")) as db:
        (size,) = db.execute(
            "SELECT sum(pgsize) FROM dbstat JOIN sqlite_schema USING (name)"
            " WHERE tbl_name NOT IN ('photo', 'score', 'suspect')"
        ).fetchone()

    assert size / (TRAYS * DAYS) < 400  # bytes
