"""Tray reader: what can be asked of a book about its trays, and by which method they are compared.

In    a book on the disk
Out   trays, shelves, names of crops and media; the version of the method that a comparison uses
Not   photos and scores (`reader.py`), changing anything (`traybook.py`)

Light on purpose: no numpy, no picture library, no `sqlite_utils`.
"""

import json
from collections import defaultdict
from collections.abc import Iterable
from datetime import date, timedelta

from data import queries
from data.chapters.comparable import Comparable, Scorings, comparable
from data.chapters.store import Store
from data.errors import NoLongerThere
from data.records import Shelf, Tray, TrayId
from data.tables.rows import tray_of

__all__ = ["GROWTH_DAYS", "TrayReader"]

GROWTH_DAYS = 21  # of a growth line; the slowest crops of common practice are cut by then
SCORING_FIELDS = ("method", "photos", "trays", "newest")


class TrayReader(Store):
    """The questions about trays."""

    def trays(self, *, growing: bool = True) -> tuple[Tray, ...]:
        """Trays in rack order: shelf, then position. `growing=False` gives those that are done as well."""
        query = queries.TRAYS_GROWING if growing else queries.TRAYS_ALL
        return tuple(tray_of(row) for row in self._rows(query))

    def growing_ids(self) -> tuple[TrayId, ...]:
        """The growing trays in rack order, by number alone: a tenth of the time of `trays`."""
        return tuple(TrayId(row["id"]) for row in self._rows(queries.TRAY_IDS_GROWING))

    def tray(self, tray_id: TrayId) -> Tray:
        """One tray; raises `NoLongerThere` where there is none of that number."""
        row = self._row(queries.TRAY, tray=tray_id)
        if row is None:
            raise NoLongerThere(self.folder)
        return tray_of(row)

    def rack(self) -> tuple[Shelf, ...]:
        """The shelves with their growing trays."""
        shelves: dict[str, list[Tray]] = defaultdict(list)
        for tray in self.trays():
            shelves[tray.shelf].append(tray)
        return tuple(Shelf(name=name, trays=tuple(trays)) for name, trays in shelves.items())

    def crops(self) -> tuple[str, ...]:
        """Names of all crops in the book."""
        return tuple(row["name"] for row in self._rows(queries.CROP_NAMES))

    def media(self) -> tuple[str, ...]:
        """Names of all media in the book."""
        return tuple(row["name"] for row in self._rows(queries.MEDIUM_NAMES))

    # --- one version of the method

    def comparable(self, trays: Iterable[TrayId] | None = None) -> Comparable:
        """By which version of the method these trays are compared; by default the growing ones, of late."""
        if trays is None:
            values = {"since": self._since(self.today(), GROWTH_DAYS)}
            methods = queries.METHODS_OF_GROWING
            each, whole = queries.SCORINGS_OF_GROWING, queries.ALL_SCORINGS_OF_GROWING
        else:
            values = {"trays": json.dumps(list(trays)), "since": ""}
            methods = queries.METHODS_OF_SOME
            each, whole = queries.SCORINGS_OF_SOME, queries.ALL_SCORINGS_OF_SOME
        versions = self._rows(methods, **values)
        if len(versions) == 1:  # the one version is all there is
            return Comparable(method=versions[0]["method"])
        scorings = [
            Scorings(**{name: row[name] for name in SCORING_FIELDS}) for row in self._rows(each, **values)
        ]
        (total,) = self._rows(whole, **values)
        return comparable(scorings, total["photos"], total["trays"])

    @staticmethod
    def _since(today: date, days: int) -> str:
        return (today - timedelta(days=days)).isoformat()
