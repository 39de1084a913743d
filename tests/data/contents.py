"""Contents: all that a book holds, to hold one moment against another, and whether its file is whole."""

import sqlite3
from contextlib import closing
from dataclasses import asdict, replace
from datetime import datetime
from typing import Any

from data.book import Book
from data.growing.conditions import Crop
from data.numbers import KeptScore, PhotoId
from data.tables.journal import from_text
from data.tables.rows import OF_BED, score_of, time_of


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


def old_scores(book: Book, photo: PhotoId) -> tuple[KeptScore, ...]:
    """The scores that corrections of a photo have replaced, first one first; the book keeps them for good."""
    query = (
        "SELECT o.body FROM score s JOIN old_score o ON o.score = s.id WHERE s.photo = :photo ORDER BY o.id"
    )
    kept = [from_text(row["body"]) for row in book._rows(query, photo=photo)]
    return tuple(score_of(dict.fromkeys(OF_BED) | old["score"], old["suspects"]) for old in kept)


def say_of_crop(book: Book, name: str, **said: object) -> None:
    """What is usual for a crop, as it comes along with another grower's book; nobody types it here."""
    with book.writing() as db:
        row = asdict(replace(book.crop(name) or Crop(name=name), **said))  # type: ignore[arg-type]
        db.table("crop").upsert(row, pk="name")
