"""Notes of the demonstration: weights, waterings and the loggers of its shelves, all of them invented.

In    the trays of the demonstration, in a book
Out   readings and events as an ordinary grower would have noted them, up to the morning that it shows
Not   scores (they are measured), the plan (`__init__.py`)

No measured tray stands behind these numbers. Each tray loses more water the more it grows, is weighed morning
and evening and watered in the morning when less than half is left; on C3 that was forgotten on the last days.
"""

import hashlib
import math
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta

from data.book import Book
from data.events import EventKind
from data.readings import NewReading, ReadingKind
from data.records import Tray, TrayId

__all__ = ["note_demo"]

LAST_MORNING = datetime(2026, 3, 11, 7, 0)
MORNING, EVENING = time(7, 0), time(18, 0)
DAY = timedelta(days=1)
LOG_EVERY = timedelta(minutes=30)
WATER_BELOW = 0.5  # of what the tray holds
HELD_BACK = 0.35  # below it the last water leaves more slowly
FORGOTTEN = {"C3": date(2026, 3, 9)}  # not watered from that day on

DRY_G = {"peat mix": 1240.0, "coir": 760.0, "plant-fibre mat": 455.0}  # tray, medium and seed
HOLDS_G = {"peat mix": 1650.0, "coir": 1900.0, "plant-fibre mat": 1050.0}
HEIGHT_MM = {"broccoli": 48.0, "red radish": 62.0}


@dataclass(frozen=True, slots=True, kw_only=True)
class _Day:
    """What was noted of one tray on one day."""

    readings: tuple[NewReading, ...]
    watered_at: datetime | None


def note_demo(book: Book) -> None:
    """Note everything in the book of the demonstration."""
    trays = book.trays()
    readings: list[NewReading] = []
    watered: dict[datetime, list[TrayId]] = {}
    for tray in trays:
        for day in _days(tray):
            readings += day.readings
            if day.watered_at is not None:
                watered.setdefault(day.watered_at, []).append(tray.id)
    book.add_readings(readings)
    every = [tray.id for tray in trays]
    sown_at, uncovered_at = trays[0].sown_at, trays[0].blackout_to
    book.add_event(every, EventKind.SOWED, sown_at)
    if uncovered_at is not None:
        book.add_event(every, EventKind.UNCOVERED, uncovered_at)
    for at, ids in sorted(watered.items()):
        book.add_event(ids, EventKind.WATERED, at, "from below")
    for shelf in sorted({tray.shelf for tray in trays}):
        name = f"shelf {shelf} (invented).csv"
        digest = hashlib.sha256(name.encode()).hexdigest()
        book.keep_log(digest, name, "invented with the demonstration", _logged(shelf, sown_at))


# --- one tray


def _days(tray: Tray) -> Iterator[_Day]:
    """From the dry tray to the last morning."""
    dry, holds = (
        DRY_G[tray.medium] * _own(tray, "dry", 0.02),
        HOLDS_G[tray.medium] * _own(tray, "holds", 0.03),
    )
    water = holds
    set_up = tray.sown_at - timedelta(minutes=40)
    yield _Day(
        readings=(
            _weight(tray, dry, set_up),
            _weight(tray, dry + water, tray.sown_at),
            _reading(tray, ReadingKind.LABOUR, _minutes(tray), tray.sown_at),
        ),
        watered_at=None,
    )
    day = tray.sown_at.date() + DAY
    while datetime.combine(day, MORNING) <= LAST_MORNING:
        lost = _loss(tray, tray.day(day)) * min(1.0, water / (HELD_BACK * holds))
        water -= 0.4 * lost  # overnight
        if tray.day(day) >= 2:  # before that the stack is left alone
            given = _given(tray, day, water, holds)
            yield _noted(tray, day, dry + water, given, 0.6 * lost)
            water += given
        water -= 0.6 * lost
        day += DAY


def _given(tray: Tray, day: date, water: float, holds: float) -> float:
    """Water that it gets in the morning, g."""
    if water >= WATER_BELOW * holds or day >= FORGOTTEN.get(tray.code, date.max):
        return 0.0
    return 50.0 * round((0.95 * holds - water) / 50.0)


def _noted(tray: Tray, day: date, weight: float, given: float, lost: float) -> _Day:
    """One day of a tray that weighs `weight` in the morning and loses `lost` until the evening, g."""
    morning, evening = datetime.combine(day, MORNING), datetime.combine(day, EVENING)
    is_last = day == LAST_MORNING.date()
    found = [_weight(tray, weight, morning)]
    watered_at = morning + timedelta(minutes=30) if given else None
    if watered_at is not None:
        found.append(_reading(tray, ReadingKind.WATER, given, watered_at))
        if is_last:  # weighed once more, for the evening is still to come
            found.append(_weight(tray, weight + given, morning + timedelta(hours=1)))
    if evening <= LAST_MORNING:
        found.append(_weight(tray, weight + given - lost, evening))
    if is_last:
        tall = HEIGHT_MM[tray.crop] * _own(tray, "height", 0.12)
        found.append(_reading(tray, ReadingKind.HEIGHT, float(round(tall)), morning))
    return _Day(readings=tuple(found), watered_at=watered_at)


def _loss(tray: Tray, day: int) -> float:
    """Water that leaves a tray on one day, g: little under cover, then more with every leaf."""
    if day < 2:
        return 45.0
    leaves = 1 / (1 + math.exp(-(day - 5.0) / 1.2))
    return (130.0 + 190.0 * leaves) * _own(tray, f"loss {day}", 0.1)


def _own(tray: Tray, what: str, spread: float) -> float:
    """Each tray's own factor, the same whenever the demonstration is made."""
    digest = hashlib.sha256(f"{tray.code} {what}".encode()).digest()
    return 1.0 + spread * (int.from_bytes(digest[:4], "big") / 2**31 - 1.0)


def _minutes(tray: Tray) -> float:
    """Of setting up: a mix takes longer."""
    return round((5.0 + 2.0 * (tray.medium == "peat mix")) * _own(tray, "minutes", 0.2), 1)


def _weight(tray: Tray, grams: float, at: datetime) -> NewReading:
    return _reading(tray, ReadingKind.WEIGHT, float(round(grams)), at)


def _reading(tray: Tray, kind: ReadingKind, value: float, at: datetime) -> NewReading:
    return NewReading(kind=kind, value=value, taken_at=at, tray_id=tray.id)


# --- the loggers


def _logged(shelf: str, begin: datetime) -> Iterator[NewReading]:
    """Air of a shelf every half hour: warm by day under the lamps, damp by night."""
    warmer = {"A": 0.9, "B": 0.3, "C": 0.0}.get(shelf, 0.0)  # the top shelf
    at = begin
    while at <= LAST_MORNING:
        hour = at.hour + at.minute / 60
        sun = math.sin((hour - 8.0) / 24.0 * 2 * math.pi)
        drift = 0.4 * math.sin((at - begin) / DAY * 2.1)
        warm = 20.6 + warmer + 1.7 * sun + drift
        damp = 61.0 - 3.0 * warmer - 7.0 * sun - 4.0 * drift
        for kind, value in ((ReadingKind.AIR_TEMPERATURE, warm), (ReadingKind.HUMIDITY, damp)):
            yield NewReading(kind=kind, value=round(value, 1), taken_at=at, shelf=shelf, source="logger")
        at += LOG_EVERY
