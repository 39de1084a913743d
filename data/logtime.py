"""Log time: dates and times as instruments write them -> times of the rack's own clock.

In    cells such as "2026-03-02T21:40:00+01:00", "02.03.26 21:40", "3/2/2026 9:40 PM", "1772484000"
Out   parts (`Stamp`), the order of day and month, times; gaps and repeated hours of summer time by name
Not   finding the columns (`logcolumns.py`)
"""

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta, timezone, tzinfo
from enum import StrEnum
from functools import lru_cache
from itertools import pairwise
from typing import NamedTuple

__all__ = [
    "Clock",
    "DateOrder",
    "Hour",
    "Stamp",
    "date_of",
    "likely_orders",
    "looks_like_time",
    "possible_orders",
    "stamp_of",
    "zone_of",
]

EARLIEST, LATEST = 2000, 2099  # years of loggers
UNIX_LOW, UNIX_HIGH = 946_684_800, 4_102_444_800  # the same years in seconds
CLEARLY = 3.0  # times fewer days between neighbours: that order is the right one

MONTHS = {
    name: number
    for number, names in enumerate(
        (
            "jan januar january janvier enero",
            "feb februar february fév févr février febrero",
            "mar march mär märz mrz mars marzo",
            "apr april avr avril abril",
            "may mai mayo",
            "jun june juni juin junio",
            "jul july juli juil juillet julio",
            "aug august août aou ago agosto",
            "sep sept september septembre septiembre",
            "oct okt october oktober octobre octubre",
            "nov november novembre noviembre",
            "dec dez déc december dezember décembre diciembre",
        ),
        start=1,
    )
    for name in names.split()
}
DATE = (
    r"(?:(?P<a>\d{1,4})(?P<sign>[-/.])(?P<b>\d{1,2})(?P=sign)(?P<c>\d{1,4})|(?P<whole>(?:20)\d{6})"
    r"|(?P<day>\d{1,2})[-/. ]\s?(?P<month>[^\W\d]{3,10})\.?[-/., ]\s?(?P<year>\d{2,4})"
    r"|(?P<month2>[^\W\d]{3,10})\.?\s(?P<day2>\d{1,2})(?:st|nd|rd|th)?,?\s(?P<year2>\d{4}))"
)
CLOCK = (
    r"(?P<h>\d{1,2})[:.h](?P<min>\d{2})(?:[:.m](?P<s>\d{2})s?(?:[.,]\d{1,9})?)?"
    r"\s?(?P<half>[ap]\.?\s?m\.?)?"
)
PLAIN_CLOCK = r"(?P<h6>\d{2})(?P<min6>\d{2})(?P<s6>\d{2})"
ZONE = r"(?P<zone>Z|UTC|GMT|(?:UTC|GMT)?\s?[+-]\d{2}(?::?\d{2})?)"
WEEKDAY = r"(?:[^\W\d]{2,10}\.?,?\s)?"
STAMP = re.compile(
    rf"\s*{WEEKDAY}{DATE}(?:(?:\s?T|,?\s{{1,3}}|,)(?:{CLOCK}|{PLAIN_CLOCK})\s?{ZONE}?)?\s*", re.IGNORECASE
)
ONLY_CLOCK = re.compile(rf"\s*(?:{CLOCK}|{PLAIN_CLOCK})\s?{ZONE}?\s*", re.IGNORECASE)
UNIX = re.compile(r"\s*(\d{9,10})(?:\.\d+)?\s*|\s*(\d{12,13})\s*")
OFFSET = re.compile(r"(?:UTC|GMT)?\s?([+-])(\d{2}):?(\d{2})?", re.IGNORECASE)


class DateOrder(StrEnum):
    """In which order day, month and year stand."""

    YMD = "year, month, day"
    DMY = "day, month, year"
    MDY = "month, day, year"


class Stamp(NamedTuple):
    """A cell in parts; only what stands there."""

    parts: tuple[str, str, str] | None  # three numbers of a date, as written
    clock: tuple[int, int, int] | None
    offset: timedelta | None  # from UTC, where it is written
    unix: float | None = None


@dataclass(frozen=True, slots=True)
class Hour:
    """A time on the rack's clock, and what is special about it."""

    at: datetime | None  # None: the clock skipped it
    twice: bool = False  # the clock showed it twice that night


def looks_like_time(cell: str) -> bool:
    """Whether a cell holds a date, a time of day, or seconds since 1970."""
    return stamp_of(cell) is not None


def stamp_of(cell: str) -> Stamp | None:
    """A cell in parts, or None where it is no time."""
    if len(cell) > 60 or len(cell) < 4:
        return None
    found = STAMP.fullmatch(cell)
    if found is not None:
        parts = _parts(found)
        clock = _clock(found)
        if parts is None or (clock is None and (found["h"] or found["h6"])):
            return None
        return Stamp(parts, clock, _offset(found["zone"]))
    found = ONLY_CLOCK.fullmatch(cell)
    if found is not None and ":" in cell:
        clock = _clock(found)
        return None if clock is None else Stamp(None, clock, _offset(found["zone"]))
    found = UNIX.fullmatch(cell)
    if found is None:
        return None
    seconds = float(cell) if found[1] else float(cell) / 1000
    return Stamp(None, None, None, seconds) if UNIX_LOW <= seconds < UNIX_HIGH else None


def _parts(found: re.Match[str]) -> tuple[str, str, str] | None:
    if found["a"]:
        return found["a"], found["b"], found["c"]
    if found["whole"]:
        whole = found["whole"]
        return whole[:4], whole[4:6], whole[6:]
    month = MONTHS.get((found["month"] or found["month2"]).lower())
    if month is None:
        return None
    year = found["year"] or found["year2"]
    return f"{int(year) + 2000 * (len(year) < 4):04d}", str(month), found["day"] or found["day2"]


def _clock(found: re.Match[str]) -> tuple[int, int, int] | None:
    hours, minutes, seconds, half = found.group("h", "min", "s", "half")
    if hours is None:
        hours, minutes, seconds = found.group("h6", "min6", "s6")
        if hours is None:
            return None
    hour, minute, second = int(hours), int(minutes), int(seconds or 0)
    if half:
        if not 1 <= hour <= 12:
            return None
        hour = hour % 12 + 12 * (half[0] in "pP")
    whole_day = hour == 24 and minute == second == 0
    return (hour, minute, second) if (hour < 24 or whole_day) and minute < 60 and second < 60 else None


@lru_cache(maxsize=64)
def _offset(zone: str | None) -> timedelta | None:
    if zone is None:
        return None
    found = OFFSET.fullmatch(zone)
    if found is None:
        return timedelta()
    size = timedelta(hours=int(found[2]), minutes=int(found[3] or 0))
    return -size if found[1] == "-" else size


# --- the order of day and month


@lru_cache(maxsize=20_000)
def date_of(parts: tuple[str, str, str], order: DateOrder) -> date | None:
    """The day, or None where there is none in that order."""
    one, two, three = parts
    if len(one) > 2 or order is DateOrder.YMD:
        year, month, day = one, two, three
    elif order is DateOrder.DMY:
        day, month, year = one, two, three
    else:
        month, day, year = one, two, three
    if len(year) not in (2, 4) or len(day) > 2:
        return None
    number = int(year) + (2000 if len(year) == 2 else 0)
    try:
        return date(number, int(month), int(day)) if EARLIEST <= number <= LATEST else None
    except ValueError:
        return None


def possible_orders(dates: Iterable[tuple[str, str, str]]) -> tuple[DateOrder, ...]:
    """The orders in which nearly all dates are days of the calendar, as far as they give other days."""
    unique = list(dict.fromkeys(dates))
    valid = {order: sum(date_of(one, order) is not None for one in unique) for order in DateOrder}
    most = max(valid.values(), default=0)
    if most == 0:
        return ()
    readings: dict[tuple[date | None, ...], DateOrder] = {}
    for order in (DateOrder.YMD, DateOrder.DMY, DateOrder.MDY):
        if valid[order] == most:
            readings.setdefault(tuple(date_of(one, order) for one in unique), order)
    return tuple(readings.values())


def likely_orders(dates: Sequence[tuple[str, str, str]], today: date) -> tuple[DateOrder, ...]:
    """Of the possible orders those in which the days follow each other, and none lies ahead of `today`."""
    orders = possible_orders(dates)
    past = [one for one in orders if not _ahead(dates, one, today)]
    orders = tuple(past) or orders
    if len(orders) < 2:
        return orders
    steps = {order: _steps(dates, order) for order in orders}
    nearest = min(steps.values())
    return tuple(order for order in orders if steps[order] <= CLEARLY * nearest)


def _ahead(dates: Iterable[tuple[str, str, str]], order: DateOrder, today: date) -> bool:
    days = [day for one in set(dates) if (day := date_of(one, order)) is not None]
    return bool(days) and max(days) > today + timedelta(days=1)


def _steps(dates: Sequence[tuple[str, str, str]], order: DateOrder) -> int:
    days = [day for one in dates if (day := date_of(one, order)) is not None]
    return sum(abs((two - one).days) for one, two in pairwise(days) if one != two)


# --- the rack's clock


def zone_of(name: str) -> tzinfo | None:
    """A time zone by its name ("Europe/Berlin", "UTC", "+02:00"); None where it is not known."""
    found = OFFSET.fullmatch(name.strip())
    if found is not None:
        size = _offset(name.strip())
        return timezone(size) if size is not None and abs(size) < timedelta(hours=24) else None
    if name.strip().upper() in {"UTC", "GMT", "Z"}:
        return UTC
    from zoneinfo import ZoneInfo

    try:
        return ZoneInfo(name.strip())
    except (ValueError, OSError, KeyError):  # unknown names, and systems without a list of zones
        return None


class Clock:
    """Turns times of a file into the rack's; remembers the row before, for the hour that comes twice.

    Parameters
    ----------
    zone
        Zone of the instrument's clock; None: it shows the rack's time.
    rack
        The rack's zone; None: that of this computer.
    """

    def __init__(self, zone: tzinfo | None, rack: tzinfo | None = None) -> None:
        self._zone = zone
        self._rack = rack
        self._calm: dict[tuple[date, bool], timedelta | None] = {}
        self._before: datetime | None = None
        self._second = False

    def absolute(self, at: datetime) -> Hour:
        """A time that knows its zone, on the rack's clock."""
        naive = at.astimezone(self._rack).replace(tzinfo=None, fold=0)
        if self._calm_offset(naive.date(), rack=True) is not None:
            return Hour(naive)
        first, second = _offsets(naive, self._rack)
        return Hour(naive, twice=first > second)

    def local(self, at: datetime) -> Hour:
        """A time as the instrument's clock showed it, on the rack's clock."""
        calm = self._calm_offset(at.date(), rack=self._zone is None)
        before, self._before = self._before, at
        if calm is not None:
            self._second = False
            return Hour(at) if self._zone is None else self.absolute((at - calm).replace(tzinfo=UTC))
        first, second = _offsets(at, self._zone or self._rack)
        if first < second:
            return Hour(None)
        twice = first > second
        self._second = twice and (self._second or (before is not None and at < before))
        if self._zone is None:
            return Hour(at, twice=twice)
        return self.absolute((at - (second if self._second else first)).replace(tzinfo=UTC))

    def _calm_offset(self, day: date, *, rack: bool) -> timedelta | None:
        """The one offset from UTC of a day; None for a day on which the clock is changed."""
        if (day, rack) not in self._calm:
            zone = self._rack if rack else self._zone
            begin = datetime(day.year, day.month, day.day)
            offsets = {one for hours in (-2, 26) for one in _offsets(begin + timedelta(hours=hours), zone)}
            self._calm[day, rack] = offsets.pop() if len(offsets) == 1 else None
        return self._calm[day, rack]


def _offsets(at: datetime, zone: tzinfo | None) -> tuple[timedelta, timedelta]:
    """Offsets from UTC before and after a change of the clock; the same on all ordinary hours."""
    both = []
    for fold in (0, 1):
        one = at.replace(fold=fold)
        aware = one.astimezone() if zone is None else one.replace(tzinfo=zone)
        both.append(aware.utcoffset() or timedelta())
    return both[0], both[1]
