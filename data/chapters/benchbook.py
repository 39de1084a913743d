"""Bench book: the growing trays as the Bench shows them.

In    a book; what its look list rests on, where that has been read already
Out   tiles in rack order
Not   what needs a look (`watch.py`), what is drawn of a tile (`gui`)
"""

import sqlite3
from collections import defaultdict

from data import queries
from data.chapters.lookbook import LookBook
from data.numbers import TrayId
from data.photos.originals import picture_paths
from data.records import DayNumbers, Tile, Tray
from data.tables.packed import corners_in
from data.tables.rows import time_of
from data.watch import Morning

__all__ = ["BenchBook"]


class BenchBook(LookBook):
    """The rack of a book."""

    def tiles(self, morning: Morning | None = None) -> tuple[Tile, ...]:
        """All growing trays in rack order, each as the Bench shows it."""
        known = morning or self.morning()
        rows = self._rows(queries.NEWEST_PHOTOS, method=known.method)
        newest = {row["tray"]: row for row in rows}
        history: dict[TrayId, list[DayNumbers]] = defaultdict(list)
        for one in known.numbers:
            history[one.tray_id].append(one)
        mold = {row["tray"] for row in self._rows(queries.MOLD_SAID)}
        return tuple(
            self._tile(tray, tray.day(known.today), newest[tray.id], history[tray.id], tray.id in mold)
            for tray in known.trays
            if tray.id in newest  # else it has ended since
        )

    def _tile(self, tray: Tray, day: int, newest: sqlite3.Row, history: list[DayNumbers], mold: bool) -> Tile:
        growth = {
            tray.day(one.taken_at.date()): float(one.coverage)
            for one in history
            if one.sure and one.coverage is not None and one.method == newest["method"]
        }
        photo, corners = newest["photo"], corners_in(newest["corners"])
        return Tile(
            tray_id=tray.id,
            code=tray.code,
            crop=tray.crop,
            medium=tray.medium,
            shelf=tray.shelf,
            position=tray.position,
            day=day,
            photo_id=photo,
            taken_at=time_of(newest["taken_at"]),
            thumbnail=photo
            and picture_paths(self.folder, newest["digest"], newest["method"], corners).thumbnail,
            coverage=newest["coverage"] if newest["sure"] else None,
            growth=tuple(sorted(growth.items())),
            mold=mold,
        )
