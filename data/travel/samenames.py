"""Same names: names that stand in two books -> those to ask about, for they may mean different things.

In    two books
Out   crops, media, kinds of trays, trials and shelves that both name; what a person answers
Not   what an answer does (`newrows.py`), asking (`gui`)
"""

from dataclasses import dataclass
from enum import StrEnum
from typing import TYPE_CHECKING

from data.book import Book

if TYPE_CHECKING:
    from sqlite_utils import Database

__all__ = ["ASKED", "Answer", "SameName", "same_names"]

ASKED = ("crop", "medium", "tray_type", "trial")  # tables


class Answer(StrEnum):
    """What a name that stands in both books means."""

    SAME = "the same"
    APART = "another"


@dataclass(frozen=True, slots=True, kw_only=True)
class SameName:
    """A name that stands in both books."""

    kind: str  # "crop", "medium", "tray_type", "trial" or "shelf"
    name: str


def same_names(book: Book, other: Book) -> tuple[SameName, ...]:
    """The names to ask about: crops, media, tray types, trials and shelves that both books have.

    Tray types of one name and all the same measures are one, and nobody is asked.
    """
    with book.whole_tables() as ours, other.whole_tables() as theirs:
        alike = _types(ours) & _types(theirs)
        found = [
            SameName(kind=table, name=name)
            for table in ASKED
            for name in sorted(_names(ours, table, "name") & _names(theirs, table, "name"))
            if table != "tray_type" or name not in dict(alike)
        ]
        shelves = sorted(_names(ours, "tray", "shelf") & _names(theirs, "tray", "shelf"))
    return (*found, *(SameName(kind="shelf", name=shelf) for shelf in shelves if shelf))


def _types(db: "Database") -> set[tuple[str, tuple[float, ...]]]:
    """Name and measures of each kind of tray."""
    return {
        (row["name"], tuple(value for column, value in row.items() if column.endswith("_mm")))
        for row in db.table("tray_type").rows
    }


def _names(db: "Database", table: str, column: str) -> set[str]:
    return {row[column] for row in db.table(table).rows}
