"""The book after years: 5,000 trays, 70,000 photos, 200 still growing, beside a young book of those alone.

Run by hand: python -m pytest -m sweep tests/bench/test_book_speed.py. What is asked of growing trays
must take as long as in the young book, on the same machine in the same minute. Measured on two shared cores
when this was written: look list 41 ms, tiles 27 ms, one tray's days 1.1 ms, one photo stored 2 ms.
"""

from collections.abc import Callable, Iterator
from datetime import datetime, timedelta
from pathlib import Path
from statistics import median
from time import perf_counter

import pytest

from data.book import Book
from data.scorerows import score_row
from data.watch import look_list
from tests.data.builders import a_note, a_score, a_tray, score_note

pytestmark = [
    pytest.mark.sweep,
    pytest.mark.timeout(600),
]

TRAYS, GROWING, DAYS = 5000, 200, 14


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


def fill(book: Book, trays: int) -> None:
    """A book of `trays` trays with a photo on each of 14 days; the last 200 trays still grow."""
    old, new = datetime(2025, 1, 1), datetime(2026, 3, 1)
    grows = [n >= trays - GROWING for n in range(trays)]
    book.add_trays(
        a_tray(f"T{n}", sown_at=new if grows[n] else old, shelf=f"S{n % 40}", block=str(n % 40),
               tag_number=10 + n - trays + GROWING if grows[n] else None)
        for n in range(trays)
    )  # fmt: skip
    row = score_row(a_score(55.0), sure=True, made_at=new)
    with book.writing() as db:
        db.execute("UPDATE tray SET done_at = '2025-01-20T00:00:00' WHERE id <= ?", [trays - GROWING])
        db.table("photo").insert_all(
            {
                "digest": f"{n:064x}", "name": f"{n}.jpg", "suffix": ".jpg", "kept": 1,
                "added_at": "2026-03-01T00:00:00", "taken_from": "camera", "tray": n % trays + 1,
                "matched_by": "tag",
                "taken_at": (
                    (new if grows[n % trays] else old) + timedelta(days=1 + n // trays, hours=8)
                ).isoformat(),
            }
            for n in range(trays * DAYS)
        )  # fmt: skip
        db.table("score").insert_all(row | {"photo": n} for n in range(1, trays * DAYS + 1))
        db.table("suspect").insert_all(
            {
                "score": n,
                "x_mm": 100.0,
                "y_mm": 50.0,
                "area_cm2": 6.0,
                "confidence": 0.7,
                "why": "",
                "outline": "[]",
            }
            for n in range(20, trays * DAYS, 20)
        )
    book.forget_changes()
    book.set_setting("today", "2026-03-15")


def times_as_long(old: Callable[[], object], new: Callable[[], object], rounds: int = 15) -> float:
    """How many times as long `old` takes as `new`, taken in turn; median of the rounds."""

    def seconds(work: Callable[[], object]) -> float:
        begun = perf_counter()
        work()
        return perf_counter() - begun

    return median(seconds(old) / seconds(new) for _ in range(rounds))


def test_the_look_list_depends_on_the_trays_that_grow(years: Book, young: Book) -> None:
    assert len(look_list(years)) == len(look_list(young)) > 0
    assert times_as_long(lambda: look_list(years), lambda: look_list(young)) < 2


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


def test_a_photo_takes_little_room_in_the_book(years: Book) -> None:
    size = (years.folder / "book.sqlite").stat().st_size

    assert size / (TRAYS * DAYS) < 1200  # bytes
