"""Material rows: questions about bench tests, factors and photographs of the heap, and rows -> records.

In    rows of the book
Out   `BenchTest`, `Factor`, `HeapPhoto`; the named SQL
Not   running it (`chapters/materialbook.py`)

What a test and a factor are comes in with the first row of one: the first look list is read without.
"""

import sqlite3
from datetime import datetime
from typing import TYPE_CHECKING

from data.readings import BenchTestId
from data.tables.rows import time_of

if TYPE_CHECKING:
    from data.medium.benchtest import BenchTest, HeapPhoto
    from data.medium.factors import Factor

__all__ = [
    "BENCH_TEST", "BENCH_TESTS", "FACTOR", "FACTORS", "HEAP_PHOTO", "HEAP_PHOTOS", "READINGS_OF_A_TEST",
    "TEST_READINGS", "bench_test_of", "factor_of", "heap_photo_of",
]  # fmt: skip

TEST_COLUMNS = """
    SELECT b.*, m.name AS medium_name, y.name AS type_name
      FROM bench_test b
      JOIN medium m ON m.id = b.medium
      LEFT JOIN tray_type y ON y.id = b.tray_type
"""
BENCH_TESTS = TEST_COLUMNS + " ORDER BY b.begun_at, b.id"
BENCH_TEST = TEST_COLUMNS + " WHERE b.id = :bench_test"
TEST_READINGS = """
    SELECT id, tray, shelf, bench_test, kind, value, taken_at, source, note
      FROM reading
     WHERE bench_test IS NOT NULL
     ORDER BY taken_at, id
"""
READINGS_OF_A_TEST = "SELECT id FROM reading WHERE bench_test = :bench_test ORDER BY id"
FACTORS = """
    SELECT f.*, m.name AS medium_name
      FROM material_factor f
      LEFT JOIN medium m ON m.id = f.medium
     ORDER BY f.id
"""
FACTOR = "SELECT id FROM material_factor WHERE name = :name AND medium IS :medium"
HEAP_PHOTOS = "SELECT * FROM heap_photo WHERE bench_test = :bench_test ORDER BY taken_at, id"
HEAP_PHOTO = "SELECT id FROM heap_photo WHERE bench_test = :bench_test AND digest = :digest"

Row = sqlite3.Row


def bench_test_of(row: Row) -> "BenchTest":
    """A test."""
    from data.medium.benchtest import BenchKind, BenchTest

    return BenchTest(
        id=BenchTestId(row["id"]),
        kind=BenchKind(row["kind"]),
        medium=row["medium_name"],
        begun_at=datetime.fromisoformat(row["begun_at"]),
        tray_type=row["type_name"],
        seating=row["seating"],
        watering=row["watering"],
        place=row["place"],
        note=row["note"],
    )


def factor_of(row: Row) -> "Factor":
    """A factor that a person entered."""
    from data.medium.factors import Factor

    return Factor(
        name=row["name"],
        value=row["value"],
        low=row["low"],
        high=row["high"],
        unit=row["unit"],
        source=row["source"],
        year=row["year"],
        medium=row["medium_name"],
        who=row["who"],
        entered_at=time_of(row["entered_at"]) or datetime.min,
    )


def heap_photo_of(row: Row) -> "HeapPhoto":
    """A photograph of a heap."""
    from data.medium.benchtest import HeapPhoto, HeapPhotoId

    return HeapPhoto(
        id=HeapPhotoId(row["id"]),
        bench_test=BenchTestId(row["bench_test"]),
        digest=row["digest"],
        suffix=row["suffix"],
        name=row["name"],
        taken_at=datetime.fromisoformat(row["taken_at"]),
    )
