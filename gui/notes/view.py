"""Note view: what was noted of a tray, as lanes and marks over days since sowing and as rows; no Qt.

In    a book, a tray; for a worker: a logger brings thousands of readings
Out   `Notes`: lanes (weight, temperature, humidity ...), marks (what was done), rows that can be corrected
Not   painting (`traysheet/timechart.py`), the table (`table.py`), adding (`entry.py`)
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime, time, timedelta
from math import floor
from typing import TYPE_CHECKING

from data.events import Event, EventId, EventKind
from data.growing.climate import climate_words
from data.growing.shelved import stands_since
from data.readings import AFTER_THE_CUT, Reading, ReadingId, ReadingKind
from data.records import Tray, TrayId
from data.sentence import Sentence
from gui.language.direction import own_direction
from gui.language.spoken import in_figures
from gui.language.words import translate
from gui.notes.unitwords import unit_words

if TYPE_CHECKING:
    from data.book import Book

__all__ = [
    "Lane", "Mark", "NoteRow", "Notes", "event_words", "kind_words", "read_notes", "reading_words",
]  # fmt: skip

# what shares a lane: the two temperatures are held against each other, and so are water and feed
ON_LANES = (
    (ReadingKind.WEIGHT,),
    (ReadingKind.WATER, ReadingKind.FEED),
    (ReadingKind.MEDIUM_TEMPERATURE, ReadingKind.AIR_TEMPERATURE),
    (ReadingKind.HUMIDITY,),
    (ReadingKind.HEIGHT,),
)
GIVEN = ON_LANES[1]  # amounts at a time, no course: bars
ON_A_LANE = frozenset(kind for kinds in ON_LANES for kind in kinds)
OF_A_SHELF = (ReadingKind.AIR_TEMPERATURE, ReadingKind.HUMIDITY)  # a logger hangs on the shelf
MOST_ROWS = 400
MOST_OF_NOTE = 24  # letters on the time axis


@dataclass(frozen=True, slots=True, kw_only=True)
class Lane:
    """Up to two kinds of reading on one scale; each a tuple of (days since sowing, value), by day."""

    label: str
    kinds: tuple[str, ...]  # words, for whoever cannot see it
    series: tuple[tuple[tuple[float, float], ...], ...]
    bars: bool = False  # amounts that were given at a time


@dataclass(frozen=True, slots=True, kw_only=True)
class Mark:
    """What was done, or a number that has no lane."""

    day: float
    words: str


@dataclass(frozen=True, slots=True, kw_only=True)
class NoteRow:
    """One row of the table; a reading has a value, an event has none."""

    at: datetime
    what: str
    value: float | None
    unit: str
    note: str
    reading: ReadingId | None = None
    event: EventId | None = None
    ends: bool = False  # the event that ended the tray


@dataclass(frozen=True, slots=True, kw_only=True)
class Notes:
    """All of it; `dark` is the blackout in days since sowing."""

    tray_id: TrayId
    lanes: tuple[Lane, ...] = ()
    marks: tuple[Mark, ...] = ()
    rows: tuple[NoteRow, ...] = ()
    dark: tuple[float, float] | None = None
    air: tuple[Sentence, ...] = ()  # what the loggers tell of it from sowing on
    left_out: int = 0  # rows of loggers that the table does not list
    unknown: int = 0  # rows of kinds that this program does not know
    sown: float = 0.0  # at which part of its day the tray was sown, 0-1

    def calendar_day(self, days: float) -> int:
        """The day since sowing by the calendar: the evening is of the same day as the morning."""
        return floor(days + self.sown + 1e-9)  # midnight itself begins a day


def read_notes(book: "Book", tray: Tray) -> Notes:
    """What was noted of a tray and, where it has none of its own, of the air over its shelf."""
    own, events = book.readings(tray.id), book.events(tray.id)
    since = stands_since(tray, events)
    readings = own + _of_the_shelf(book, tray, own, since)
    typed = [one for one in own if one.source == "person"][-MOST_ROWS:]
    rows = [_row_of_reading(one) for one in typed] + [_row_of_event(one, tray) for one in events]
    return Notes(
        tray_id=tray.id,
        lanes=_lanes(readings, tray),
        marks=_marks(readings, events, tray),
        rows=tuple(sorted(rows, key=lambda row: row.at, reverse=True)),
        dark=_dark(tray),
        air=_air(readings, tray, _air_from(own, tray, since), book.now()),
        left_out=len(own) - len(typed),
        unknown=book.unknown_notes(tray.id),
        sown=(tray.sown_at - datetime.combine(tray.sown_at, time.min)) / timedelta(days=1),
    )


def _of_the_shelf(book: "Book", tray: Tray, own: Sequence[Reading], since: datetime) -> tuple[Reading, ...]:
    has = {one.kind for one in own}
    found: list[Reading] = []
    for kind in OF_A_SHELF if tray.shelf else ():
        if kind not in has:
            found += book.readings(
                kind=kind, shelf=tray.shelf, since=since, until=tray.done_at or datetime.max
            )
    return tuple(found)


def _air_from(own: Sequence[Reading], tray: Tray, since: datetime) -> datetime:
    """From when on its air is told: its own logger moves with it, that of a shelf does not."""
    return tray.sown_at if any(one.kind is OF_A_SHELF[0] for one in own) else since


def _air(readings: Sequence[Reading], tray: Tray, since: datetime, now: datetime) -> tuple[Sentence, ...]:
    temperatures, humidities = (
        [(one.taken_at, one.value) for one in readings if one.kind is kind] for kind in OF_A_SHELF
    )
    until = min(now, tray.done_at or now)
    return climate_words(temperatures, humidities, since, until, moved=since > tray.sown_at)


def _days(at: datetime, tray: Tray) -> float:
    return (at - tray.sown_at) / timedelta(days=1)


def _lanes(readings: Sequence[Reading], tray: Tray) -> tuple[Lane, ...]:
    lanes = []
    for label, kinds in zip(_labels(), ON_LANES, strict=True):
        series = tuple(
            tuple(sorted((_days(one.taken_at, tray), one.value) for one in readings if one.kind is kind))
            for kind in kinds
        )
        if any(series):
            words = tuple(kind_words(kind) for kind in kinds)
            lanes.append(Lane(label=label, kinds=words, series=series, bars=kinds is GIVEN))
    return tuple(lanes)


def _labels() -> tuple[str, ...]:
    return (
        translate("NoteView", "Weight, g"),
        translate("NoteView", "Given, ml"),
        translate("NoteView", "Temperature, °C"),
        translate("NoteView", "Humidity, %"),
        translate("NoteView", "Height, mm"),
    )


def _marks(readings: Iterable[Reading], events: Iterable[Event], tray: Tray) -> tuple[Mark, ...]:
    marks = [
        Mark(day=_days(one.taken_at, tray), words=reading_words(one))
        for one in readings
        if one.kind not in ON_A_LANE and one.kind not in AFTER_THE_CUT  # no part of the growth
    ]
    marks += [Mark(day=_days(one.at, tray), words=_mark_words(one)) for one in events]
    return tuple(sorted(marks, key=lambda mark: mark.day))


def _mark_words(one: Event) -> str:
    """What was done; of a note how it begins."""
    if one.kind is not EventKind.NOTE:
        return event_words(one.kind)
    short = len(one.note) <= MOST_OF_NOTE
    return own_direction(one.note if short else f"{one.note[:MOST_OF_NOTE].rstrip()}…")


def reading_words(one: Reading) -> str:
    """A reading with its unit: weight 812 g."""
    words = kind_words(one.kind)
    return f"{words} {in_figures(one.value)} {unit_words(one.unit)}"


def kind_words(kind: ReadingKind) -> str:
    """What was measured."""
    return {
        ReadingKind.WEIGHT: translate("NoteView", "weight"),
        ReadingKind.MEDIUM_TEMPERATURE: translate("NoteView", "temperature of the medium"),
        ReadingKind.AIR_TEMPERATURE: translate("NoteView", "temperature of the air"),
        ReadingKind.HUMIDITY: translate("NoteView", "humidity of the air"),
        ReadingKind.WATER: translate("NoteView", "water given"),
        ReadingKind.FEED: translate("NoteView", "feed given"),
        ReadingKind.HEIGHT: translate("NoteView", "height of the shoots"),
        ReadingKind.FRESH_MASS: translate("NoteView", "fresh mass at the cut"),
        ReadingKind.CUT_QUALITY: translate("NoteView", "cut quality"),
        ReadingKind.SLID: translate("NoteView", "slid at the cut"),
        ReadingKind.SHELF_LIFE: translate("NoteView", "shelf life"),
        ReadingKind.TASTE: translate("NoteView", "taste"),
        ReadingKind.LABOUR: translate("NoteView", "labour"),
        ReadingKind.SWEEPINGS: translate("NoteView", "sweepings"),
        ReadingKind.SWEEPINGS_EYE: translate("NoteView", "sweepings by eye"),
        ReadingKind.BREAKDOWN_EYE: translate("NoteView", "break-down by eye"),
    }[kind]


def event_words(kind: EventKind) -> str:
    """What was done."""
    return {
        EventKind.SOWED: translate("NoteView", "sowed"),
        EventKind.UNCOVERED: translate("NoteView", "uncovered"),
        EventKind.WATERED: translate("NoteView", "watered"),
        EventKind.FED: translate("NoteView", "fed"),
        EventKind.TURNED: translate("NoteView", "turned"),
        EventKind.MOVED: translate("NoteView", "moved"),
        EventKind.MOLD_OUT: translate("NoteView", "mold taken out"),
        EventKind.THROWN_AWAY: translate("NoteView", "thrown away"),
        EventKind.CUT: translate("NoteView", "cut"),
        EventKind.SET_UP: translate("NoteView", "set up"),
        EventKind.CLEANED: translate("NoteView", "cleaned"),
        EventKind.NOTE: translate("NoteView", "note"),
    }[kind]


def _row_of_reading(one: Reading) -> NoteRow:
    return NoteRow(
        at=one.taken_at,
        what=kind_words(one.kind),
        value=one.value,
        unit=unit_words(one.unit),
        note=one.note,
        reading=one.id,
    )


def _row_of_event(one: Event, tray: Tray) -> NoteRow:
    return NoteRow(
        at=one.at,
        what=event_words(one.kind),
        value=None,
        unit="",
        note=one.note,
        event=one.id,
        ends=tray.ended == str(one.kind),
    )


def _dark(tray: Tray) -> tuple[float, float] | None:
    if tray.blackout_from is None or tray.blackout_to is None:
        return None
    return _days(tray.blackout_from, tray), _days(tray.blackout_to, tray)
