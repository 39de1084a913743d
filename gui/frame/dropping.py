"""Dropping: files that were dropped on the window, sorted by what happens to them; no Qt.

In    paths
Out   `Dropped`: photos and folders for Intake, tables, other books; whether a table is one of trays
Not   reading any of them whole
"""

from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path

__all__ = ["Dropped", "is_old_notes", "sort_dropped"]

TABLE_SUFFIXES = frozenset({".csv", ".txt", ".tsv"})
PACK_SUFFIX = ".evenstand"  # as `data.travel.packing` says, which is brought in late
HEAD = 65_536  # bytes that are looked at


@dataclass(frozen=True, slots=True, kw_only=True)
class Dropped:
    """What was dropped, by what happens to it."""

    photos: tuple[Path, ...] = ()  # files and folders
    tables: tuple[Path, ...] = ()  # of loggers and scales, or of trays
    books: tuple[Path, ...] = ()  # packed, in a folder, or an export


def sort_dropped(paths: Iterable[Path]) -> Dropped:
    """Sort what was dropped at once."""
    photos: list[Path] = []
    tables: list[Path] = []
    books: list[Path] = []
    for path in paths:
        suffix = path.suffix.casefold()
        if suffix == PACK_SUFFIX or _is_book(path):
            books.append(path)
        else:
            (tables if suffix in TABLE_SUFFIXES else photos).append(path)
    return Dropped(photos=tuple(photos), tables=tuple(tables), books=tuple(books))


def _is_book(path: Path) -> bool:
    if not path.is_dir():
        return False
    from data.travel.guestbook import comes_as_book

    return comes_as_book(path)


def is_old_notes(path: Path) -> bool:
    """Whether the first line of a table names crop, medium and day of sowing: then its lines are trays."""
    from data.logs.oldcolumns import fields_of, lacking
    from data.logs.oldtable import read_old_table
    from data.logs.text import NotALog

    try:
        with path.open("rb") as file:
            table = read_old_table(file.read(HEAD))
    except (OSError, NotALog):
        return False
    return lacking(fields_of(table.headings)) is None
