"""Type book: the tray types of a book, and where the cards of their station were measured to lie.

In    a book; measures in mm
Out   `TrayType`s; which one carries which tag at a time, as scoring asks for it
Not   trays (`traybook.py`), places of cards from distances (`vision/cardplaces.py`)

Where the cards lie is a setting of the book beside the type: the station stands on the bench, and every photo
from then on is scored by it. Scores that are kept stay as they are.
"""

import json
import sqlite3
from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime
from typing import Any

from data.chapters.changes import Changes
from data.photos.kinds import NOMINAL, TagSpan, TraysByTag, one_kind
from data.records import PhotoId
from data.tables import noterows
from data.tables.journal import Recorder
from data.tables.rows import time_of
from vision.traytype import TrayType

__all__ = ["TypeBook"]

STATION = "station of {name}"  # setting


class TypeBook(Changes):
    """Kinds of tray."""

    def tray_types(self) -> tuple[TrayType, ...]:
        """All kinds of tray that the book knows, the first one first."""
        return tuple(self._type_of(row) for row in self._rows(noterows.TRAY_TYPES))

    def tray_type(self, name: str) -> TrayType:
        """One kind of tray; raises `KeyError` where the book has none of that name."""
        row = self._row(noterows.TRAY_TYPE, name=name)
        if row is None:
            raise KeyError(name)
        return self._type_of(row)

    def trays_by_tag(self) -> TraysByTag | None:
        """Which kind of tray carries which tag, for scoring; None where all are nominal, cards too."""
        if all(replace(one, name=NOMINAL.name) == NOMINAL for one in self.tray_types()):
            return None
        usual = self._row(noterows.USUAL_TYPE)
        spans = tuple(
            TagSpan(
                tag=row["tag_number"],
                since=datetime.fromisoformat(row["sown_at"]),
                until=time_of(row["done_at"]),
                tray_type=self._type_of(row),
            )
            for row in self._rows(noterows.OTHER_TRAYS)
        )
        return TraysByTag(usual=NOMINAL if usual is None else self._type_of(usual), spans=spans)

    def tray_of_photo(self, photo_id: PhotoId) -> TraysByTag | None:
        """The kind of tray that a matched photo shows; by its tag where it is not matched."""
        row = self._row(noterows.TYPE_OF_PHOTO, photo=photo_id)
        return self.trays_by_tag() if row is None else one_kind(self._type_of(row))

    def set_tray_type(self, tray_type: TrayType) -> None:
        """Keep the measures of a kind of tray, added where it is missing; older scores stay as they are.

        Raises
        ------
        ValueError
            Where a measure is not above 0, or the inner area does not lie inside the rim.
        """
        row = noterows.row_of_type(tray_type)
        sizes = [value for name, value in row.items() if name != "name"]
        inside = (
            tray_type.inner_long_mm <= tray_type.outer_long_mm
            and tray_type.inner_short_mm <= tray_type.outer_short_mm
        )
        if not tray_type.name or min(sizes) <= 0 or not inside:
            raise ValueError(f"no tray can have these measures: {tray_type}")
        self._set_named("tray_type", tray_type.name, row)

    def set_cards_off(self, name: str, cards_off_mm: Sequence[tuple[float, float]]) -> None:
        """Keep how far each card of the station lies from its drawn place, mm; none at all: as drawn.

        Raises
        ------
        KeyError
            Where the book has no tray type of that name.
        """
        self.tray_type(name)
        kept = [[round(right, 2), round(far, 2)] for right, far in cards_off_mm]
        text = f"station cards of {name}"
        self._set(STATION.format(name=name), json.dumps(kept), text, unset="[]")

    def _type_of(self, row: sqlite3.Row) -> TrayType:
        kept = json.loads(self.setting(STATION.format(name=row["name"])) or "[]")
        off = tuple((float(right), float(far)) for right, far in kept)
        return replace(noterows.tray_type_of(row), cards_off_mm=off)

    def _set_named(self, table: str, name: str, values: dict[str, Any]) -> None:
        plain = {key: int(value) if isinstance(value, bool) else value for key, value in values.items()}
        row = self._row(noterows.NAMED[table], name=name)

        def change(recorder: Recorder) -> None:
            if row is None:
                recorder.insert(table, plain)
            else:
                recorder.update(table, row["id"], plain)

        self._change(f"{name} described", change)
