"""Swap book: two trays that stood in each other's places for days, or carried each other's tags.

In    both trays, the day since when; whether notes went wrong as photos did
Out   photos, and where it is said readings, events and ends, changed over, as one step of undo
Not   a single photo with the wrong tray (`matchbook.py`), tags and places as they are now (`traybook.py`)

Sowing, uncovering and moves stay: they are told in the conditions of a tray, too. Swapped a second time from
a later day on, all is as it was from that day on: so days in between are mended.
"""

import sqlite3
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime, time
from typing import Any

from data.chapters.matchbook import MatchBook
from data.chapters.traybook import TrayBook
from data.events import ENDS, EventKind
from data.numbers import PhotoId, TrayId
from data.records import Tray
from data.tables import swaprows
from data.tables.journal import Recorder
from data.tables.rows import time_text

__all__ = ["SwapBook", "Swapped", "stood_together"]

STAYS = frozenset({EventKind.SOWED, EventKind.UNCOVERED, EventKind.MOVED})
END = ("done_at", "ended", "ended_why")
Row = dict[str, Any]


@dataclass(frozen=True, slots=True, kw_only=True)
class Swapped:
    """How much of two trays goes, or went, to the other one."""

    photos: int
    notes: int  # readings and events


@dataclass(frozen=True, slots=True, kw_only=True)
class _Going:
    """Rows that change over, each with the tray that it comes to."""

    photos: dict[PhotoId, TrayId]
    readings: Sequence[Row]
    events: Sequence[Row]


def stood_together(one: Tray, other: Tray, since: date) -> bool:
    """Whether both stood on a day from that one on: before, they cannot have been swapped."""
    ends = [tray.done_at.date() for tray in (one, other) if tray.done_at is not None]
    begin = max(since, one.sown_at.date(), other.sown_at.date())
    return one.id != other.id and all(begin <= end for end in ends)


class SwapBook(MatchBook, TrayBook):
    """Trays that were taken for each other."""

    def swap_of(self, one: TrayId, other: TrayId, since: date) -> Swapped:
        """What of both would change over from that day on; nothing where they never stood together."""
        going = self._going(one, other, since)
        return Swapped(photos=len(going.photos), notes=len(going.readings) + len(going.events))

    def swap_trays(self, one: TrayId, other: TrayId, since: date, *, notes: bool) -> Swapped:
        """Give all photos of two trays from a day on to the other one, both ways, as one step of undo.

        Parameters
        ----------
        notes : whether readings, events and how the trays ended change over, too.

        Raises
        ------
        TagTaken
            If a tray would grow again whose tag another one carries by now.
        """
        trays = {one: self.tray(one), other: self.tray(other)}
        going = self._going(one, other, since)
        match = self._matching(going.photos)

        def change(recorder: Recorder) -> None:
            match(recorder)
            if notes:
                self._swap_notes(recorder, going, trays)

        ended = next((tray for tray in trays.values() if tray.done_at is not None), trays[one])
        try:
            self._change(f"{trays[one].code} and {trays[other].code} swapped", change)
        except sqlite3.IntegrityError as error:
            raise self._tag_taken(ended) from error
        return Swapped(
            photos=len(going.photos), notes=len(going.readings) + len(going.events) if notes else 0
        )

    def _going(self, one: TrayId, other: TrayId, since: date) -> _Going:
        trays = self.tray(one), self.tray(other)
        if not stood_together(*trays, since):
            return _Going(photos={}, readings=(), events=())
        begin = max(since, *(tray.sown_at.date() for tray in trays))
        values = {"one": one, "other": other, "since": time_text(datetime.combine(begin, time()))}
        goes_to = {one: other, other: one}
        photos = {PhotoId(row["id"]): goes_to[row["tray"]] for row in self._rows(swaprows.PHOTOS, **values)}
        readings = [dict(row) for row in self._rows(swaprows.READINGS, **values)]
        events = [dict(row) for row in self._rows(swaprows.EVENTS, **values) if row["kind"] not in STAYS]
        for row in (*readings, *events):
            row["goes_to"] = goes_to[row["tray"]]
        return _Going(photos=photos, readings=readings, events=events)

    def _swap_notes(self, recorder: Recorder, going: _Going, trays: dict[TrayId, Tray]) -> None:
        logged = [row for row in going.readings if row["log_file"] is not None]
        for row in logged:  # of one minute a file says one thing of a tray: both would be there at once
            recorder.update("reading", row["id"], {"log_file": None})
        for row in going.readings:
            recorder.update("reading", row["id"], {"tray": row["goes_to"]})
        for row in logged:
            recorder.update("reading", row["id"], {"log_file": row["log_file"]})
        for row in going.events:
            recorder.update("event", row["id"], {"tray": row["goes_to"]})
        if any(row["kind"] in ENDS for row in going.events):
            self._swap_ends(recorder, *trays.values())

    def _swap_ends(self, recorder: Recorder, one: Tray, other: Tray) -> None:
        ends = {tray.id: dict(zip(END, _end_of(tray), strict=True)) for tray in (one, other)}
        pairs = [(one, other), (other, one)]
        for tray, of in sorted(pairs, key=lambda pair: pair[0].done_at is not None):
            recorder.update(
                "tray", tray.id, ends[of.id]
            )  # the one that grows ends first: a tag is there once


def _end_of(tray: Tray) -> tuple[str | None, str | None, str]:
    done_at = None if tray.done_at is None else time_text(tray.done_at)
    return done_at, tray.ended, tray.ended_why
