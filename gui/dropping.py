"""Dropping: files that were dropped on the window, sorted by what happens to them; no Qt.

In    paths
Out   `Dropped`: photos and folders for Intake, tables to be looked at, other books
Not   reading any of them
"""

from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path

__all__ = ["TABLE_SUFFIXES", "Dropped", "sort_dropped"]

TABLE_SUFFIXES = frozenset({".csv", ".txt", ".tsv"})


@dataclass(frozen=True, slots=True, kw_only=True)
class Dropped:
    """What was dropped, by what happens to it."""

    photos: tuple[Path, ...] = ()  # files and folders
    tables: tuple[Path, ...] = ()  # of loggers and scales


def sort_dropped(paths: Iterable[Path]) -> Dropped:
    """Sort what was dropped at once."""
    photos: list[Path] = []
    tables: list[Path] = []
    for path in paths:
        (tables if path.suffix.casefold() in TABLE_SUFFIXES else photos).append(path)
    return Dropped(photos=tuple(photos), tables=tuple(tables))
