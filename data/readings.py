"""Readings: dated numbers that a person, a scale or a logger supplies.

In    a kind, a number in the kind's own unit, a time; of a tray, a shelf or a bench test
Out   `NewReading` on the way into the book, `Reading` out of it; why a number cannot be
Not   keeping them (`chapters/readingbook.py`), other units (`entry/units.py`), files (`logs/sheet.py`)

The book keeps each kind in one unit: a reading in ounces or Fahrenheit is turned on its way in. Scores by eye
are no readings: they know who gave them, and whether blind.
"""

import math
from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum
from typing import NewType

from data.numbers import TrayId
from data.sentence import Sentence

__all__ = [
    "AFTER_THE_CUT", "SAID", "YES_OR_NO", "BenchTestId", "KeptLog", "NewReading", "Reading", "ReadingId",
    "ReadingKind", "impossible",
]  # fmt: skip

ReadingId = NewType("ReadingId", int)
BenchTestId = NewType("BenchTestId", int)


class ReadingKind(StrEnum):
    """What was measured."""

    WEIGHT = "weight"  # of the whole tray as it stands
    MEDIUM_TEMPERATURE = "medium temperature"
    AIR_TEMPERATURE = "air temperature"
    HUMIDITY = "humidity"
    WATER = "water given"
    FEED = "feed given"
    HEIGHT = "height"  # of the shoots, from the medium
    FRESH_MASS = "fresh mass"  # at the cut
    CUT_QUALITY = "cut quality"  # 1 torn, slipped, full of medium to 5 clean
    SLID = "slid at the cut"  # 1 where the medium gave way under the blade, 0 where it held
    SHELF_LIFE = "shelf life"  # of what was cut: days until it is no longer good by look and smell
    TASTE = "taste"  # of what was cut: 1 off to 5 as it should be
    LABOUR = "labour"
    SWEEPINGS = "sweepings"  # what is left to clean up
    SWEEPINGS_EYE = "sweepings by eye"  # 1 a wipe to 5 a shovel
    BREAKDOWN_EYE = "break-down by eye"  # of a used medium: 5 whole to 1 gone (`breakdown.py`)

    @property
    def unit(self) -> str:
        """The unit in which the book keeps it."""
        return UNITS[self]


ON_A_SCALE = "1-5"
YES_OR_NO = "0-1"
UNITS = {
    ReadingKind.WEIGHT: "g",
    ReadingKind.MEDIUM_TEMPERATURE: "C",
    ReadingKind.AIR_TEMPERATURE: "C",
    ReadingKind.HUMIDITY: "%",
    ReadingKind.WATER: "ml",
    ReadingKind.FEED: "ml",
    ReadingKind.HEIGHT: "mm",
    ReadingKind.FRESH_MASS: "g",
    ReadingKind.CUT_QUALITY: ON_A_SCALE,
    ReadingKind.SLID: YES_OR_NO,
    ReadingKind.SHELF_LIFE: "d",
    ReadingKind.TASTE: ON_A_SCALE,
    ReadingKind.LABOUR: "min",
    ReadingKind.SWEEPINGS: "g",
    ReadingKind.SWEEPINGS_EYE: ON_A_SCALE,
    ReadingKind.BREAKDOWN_EYE: ON_A_SCALE,
}
SAID = {"C": "°C", "d": Sentence("days")}  # units as they are read
AFTER_THE_CUT = frozenset({ReadingKind.SHELF_LIFE, ReadingKind.TASTE})
# what a number of a kind can be at all; common practice, wide on purpose: a rack, no laboratory
LIMITS = {
    ReadingKind.WEIGHT: (0.0, 100_000.0),
    ReadingKind.MEDIUM_TEMPERATURE: (-30.0, 90.0),
    ReadingKind.AIR_TEMPERATURE: (-40.0, 80.0),
    ReadingKind.HUMIDITY: (0.0, 100.0),
    ReadingKind.WATER: (0.0, 100_000.0),
    ReadingKind.FEED: (0.0, 100_000.0),
    ReadingKind.HEIGHT: (0.0, 2_000.0),
    ReadingKind.FRESH_MASS: (0.0, 20_000.0),
    ReadingKind.CUT_QUALITY: (1.0, 5.0),
    ReadingKind.SLID: (0.0, 1.0),
    ReadingKind.SHELF_LIFE: (0.0, 60.0),
    ReadingKind.TASTE: (1.0, 5.0),
    ReadingKind.LABOUR: (0.0, 1_440.0),
    ReadingKind.SWEEPINGS: (0.0, 20_000.0),
    ReadingKind.SWEEPINGS_EYE: (1.0, 5.0),
    ReadingKind.BREAKDOWN_EYE: (1.0, 5.0),
}


def impossible(kind: ReadingKind, value: float) -> Sentence | None:
    """Why a number of that kind cannot be, or None where it can; what is merely odd is no matter of this."""
    low, high = LIMITS[kind]
    if kind.unit == YES_OR_NO and value not in (low, high):
        return Sentence("{kind} can be 1 (yes) or 0 (no); {value:g} was given.", kind=str(kind), value=value)
    if math.isnan(value) or not low <= value <= high:
        if kind.unit == ON_A_SCALE:
            return Sentence(
                "{kind} can be {low:g} to {high:g}; {value:g} was given.",
                kind=str(kind), low=low, high=high, value=value,
            )  # fmt: skip
        return Sentence(
            "{kind} can be {low:g} to {high:g} {unit}; {value:g} was given.",
            kind=str(kind), low=low, high=high, unit=SAID.get(kind.unit, kind.unit), value=value,
        )  # fmt: skip
    return None


@dataclass(frozen=True, slots=True, kw_only=True)
class NewReading:
    """A reading that is to be kept; `value` in the unit of its kind. Of one tray, one shelf or one test."""

    kind: ReadingKind
    value: float
    taken_at: datetime
    tray_id: TrayId | None = None
    shelf: str | None = None
    bench_test: BenchTestId | None = None
    source: str = "person"
    note: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Reading:
    """A reading as the book keeps it."""

    id: ReadingId
    kind: ReadingKind
    value: float
    taken_at: datetime
    tray_id: TrayId | None
    shelf: str | None
    bench_test: BenchTestId | None
    source: str
    note: str

    @property
    def unit(self) -> str:
        """The unit of `value`."""
        return self.kind.unit


@dataclass(frozen=True, slots=True, kw_only=True)
class KeptLog:
    """What became of the rows of a logger's file."""

    added: int
    known: int  # rows that an earlier file has brought already
    same_file: bool  # the very file was brought in before: nothing was done

    @property
    def sentence(self) -> Sentence:
        """The fate in words."""
        if self.same_file:
            return Sentence("This file is in the book already; nothing was added.")
        if self.known:
            return Sentence(
                "Readings added: {added}; in the book already: {known}.",
                added=self.added,
                known=self.known,
            )
        if self.added == 1:
            return Sentence("1 reading added.")
        return Sentence("{added} readings added.", added=self.added)
