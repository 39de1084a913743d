"""Lately: the numbers that a new one is held against before it is kept.

In    a book, a tray, a kind of reading
Out   `Lately`: its own numbers of the last days, and those of other trays of its crop
Not   what is made of them (`quickline.py`)
"""

from collections.abc import Collection, Sequence
from dataclasses import dataclass
from datetime import timedelta
from typing import TYPE_CHECKING

from data.readings import ReadingKind
from data.records import Tile

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["Lately", "lately_kept"]

DAYS = timedelta(days=3)


@dataclass(frozen=True, slots=True, kw_only=True)
class Lately:
    """Numbers of one kind, in the book's unit."""

    own: Sequence[float] = ()  # newest last
    beside: Sequence[float] = ()  # of other trays: what is like them is not asked about


def lately_kept(book: "Book", tile: Tile, kind: ReadingKind, others: Collection[Tile]) -> Lately:
    """What was kept of a tray and of those of `others` that are of its crop; raises `BookError`."""
    since = book.now() - DAYS
    own = [one.value for one in book.readings(tile.tray_id, kind, since=since)]
    if kind is ReadingKind.WEIGHT:  # held against the tray's own alone
        return Lately(own=own)
    mates = {one.tray_id for one in others if one.crop == tile.crop} - {tile.tray_id}
    found = book.readings(kind=kind, since=since)
    return Lately(own=own, beside=[one.value for one in found if one.tray_id in mates])
