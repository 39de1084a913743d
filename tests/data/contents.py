"""Contents: all that a book holds, to hold one moment against another, and whether its file is whole."""

import sqlite3
from contextlib import closing
from datetime import datetime
from typing import Any

from data.book import Book
from data.numbers import PhotoId
from data.tables.rows import time_of


def contents(book: Book) -> dict[str, list[dict[str, Any]]]:
    """All rows of the book but the notes on changes."""
    with book.writing() as db:
        tables = set(db.table_names()) - {"change", "_sqlite_migrations"}
        return {name: list(db.table(name).rows) for name in sorted(tables)}


def is_whole(book: Book) -> bool:
    """Whether SQLite finds the whole file in order, and nothing in it that refers to what is not there."""
    try:
        with closing(sqlite3.connect(book.folder / "book.sqlite")) as db:
            (found,) = db.execute("PRAGMA integrity_check").fetchone()
            return bool(found == "ok") and db.execute("PRAGMA foreign_key_check").fetchall() == []
    except sqlite3.DatabaseError:
        return False


def camera_time(book: Book, photo: PhotoId) -> datetime | None:
    """What the camera's clock said where it was mended or asked about; else None."""
    (row,) = book._rows("SELECT clock_at FROM photo WHERE id = :photo", photo=photo)
    return time_of(row["clock_at"])
