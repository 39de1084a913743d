"""Book rows: what a book of years and a trial's statistics cost, against their limits.

In    the folder of a big book (`big_book.py`), made where there is none
Out   `Row`s
Not   the table (`table.py`)
"""

import os
import shutil
import sqlite3
import tempfile
from collections.abc import Callable, Iterator
from contextlib import closing
from itertools import product
from pathlib import Path
from statistics import median
from time import perf_counter

import numpy as np

from data.book import Book
from data.statistics.dunnett import _q_equal, dunnett_q
from data.verdict import Measured, verdict_of
from data.watch import read_looks
from tests.bench.big_book import DAYS, GROWING, TRAYS, fill
from tests.bench.limits import Row, Work, busy, cpu_ms, ratio, seconds
from tests.data.builders import a_note, score_note

__all__ = ["book_rows", "trial_rows"]

STORED = 31
BYTES_A_PHOTO = """
    SELECT sum(pgsize)
      FROM dbstat
      JOIN sqlite_schema USING (name)
     WHERE tbl_name IN ('photo', 'score', 'suspect')
"""


def book_rows(folder: Path) -> Iterator[Row]:
    """A book of 5,000 trays on 14 days, 200 of them growing."""
    with tempfile.TemporaryDirectory() as name, _filled(folder, TRAYS) as book:
        yield Row(stage="look list", value=cpu_ms(lambda: read_looks(book), 15), limit=50.0, unit="ms")
        tray = book.trays()[0].id
        yield Row(
            stage="tray sheet, days and peers",
            value=cpu_ms(lambda: (book.days(tray), book.peers(tray)), 15), limit=50.0, unit="ms",
        )  # fmt: skip
        with Book.create(Path(name) / "young") as young:
            fill(young, GROWING)
            stores = [_storing(one, Path(name) / f"phone{n}") for n, one in enumerate((book, young))]
            times = [[seconds(store, clock=perf_counter) for store in stores] for _ in range(STORED)]
        stored = 1000 * median(old for old, _ in times)
        yield Row(stage="one photo stored", value=stored, limit=10.0, unit="ms, by clock", not_judged=busy())
        against = median(old / new for old, new in times)
        yield Row(stage="the same against a young book", value=against, limit=2.0, unit="x, by clock")
        yield Row(stage="file for each photo", value=_kb_a_photo(book), limit=1.2, unit="kB")
        copied = Path(name) / "copy.sqlite"
        times_a_copy = ratio(
            lambda: book.back_up().unlink(), lambda: _copy(folder, copied), 3, by_the_clock=True
        )
        yield Row(stage="backup", value=times_a_copy, limit=3.0, unit="x copy and check")


def _filled(folder: Path, trays: int) -> Book:
    if (folder / "book.sqlite").exists():
        return Book.open(folder)
    book = Book.create(folder)
    fill(book, trays)
    return book


def _storing(book: Book, phone: Path) -> Work:
    number = iter(range(10_000))
    stamp = os.getpid()  # a big book is used again: each photo is a new one

    def store() -> None:
        says = {"tag": 20, "suspects": [{}, {}, {}], "taken_at": "2026-03-15T12:00:00"}
        path = a_note(phone, f"{stamp}-{next(number)}.jpg", **says)
        book.keep(score_note(path), path)

    return store


def _kb_a_photo(book: Book) -> float:
    """With score and suspects, their indexes too."""
    with closing(sqlite3.connect(book.folder / "book.sqlite")) as db:
        (size,) = db.execute(BYTES_A_PHOTO).fetchone()
    return float(size) / (TRAYS * DAYS) / 1000


def _copy(folder: Path, target: Path) -> None:
    """As safe as the backup: on the disk when it is said to be there, and looked through."""
    shutil.copyfile(folder / "book.sqlite", target)
    with target.open("rb+") as file:
        os.fsync(file.fileno())
    with closing(sqlite3.connect(target)) as db:
        assert db.execute("PRAGMA quick_check").fetchone() == ("ok",)


# --- a trial


def trial_rows(unit: Callable[[], None]) -> Iterator[Row]:
    """Eight blocks of four media; `unit` is one strict decode of a photo of 12 megapixels."""
    rng = np.random.default_rng(1)
    table = [
        Measured(block=f"b{b}", medium=f"m{m}", value=float(rng.normal(80 + b, 2)))
        for b, m in product(range(8), range(4))
    ]
    verdict = ratio(lambda: verdict_of(table, "m0", 5.0), unit)
    yield Row(stage="verdict, own intervals, no bootstrap", value=verdict, limit=0.3)
    yield Row(stage="Dunnett q", value=ratio(_dunnett, unit), limit=0.3)


def _dunnett() -> float:
    _q_equal.cache_clear()
    return dunnett_q(20.0, 4)
