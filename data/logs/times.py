"""Log time: dates and times as instruments write them -> their parts, and the order in which they stand.

In    cells such as "2026-03-02T21:40:00+01:00", "02.03.26 21:40", "3/2/2026 9:40 PM", "1772484000"
Out   parts (`Stamp`), the order of day and month
Not   time zones and summer time (`clock.py`), finding the columns (`columns.py`)
"""

import re
from collections.abc import Iterable, Sequence
from datetime import date, timedelta
from enum import StrEnum
from functools import lru_cache
from itertools import pairwise
from typing import NamedTuple

__all__ = [
    "DateOrder",
    "Stamp",
    "date_of",
    "likely_orders",
    "looks_like_time",
    "offset_of",
    "possible_orders",
    "stamp_of",
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
WHOLE_DATE = re.compile(r"(\d{4})([-/.])(\d\d)\2(\d\d)|(\d\d)([-/.])(\d\d)\6(\d{4})")
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


def looks_like_time(cell: str) -> bool:
    """Whether a cell holds a date, a time of day, or seconds since 1970."""
    return stamp_of(cell) is not None


def stamp_of(cell: str) -> Stamp | None:
    """A cell in parts, or None where it is no time."""
    if len(cell) in (16, 19) and cell[13] == ":" and cell[10] in " T":
        usual = _usual_form(cell)
        if usual is not None:
            return usual
    if len(cell) > 60 or len(cell) < 4:
        return None
    found = STAMP.fullmatch(cell)
    if found is not None:
        parts = _parts(found)
        clock = _clock(found)
        if parts is None or (clock is None and (found["h"] or found["h6"])):
            return None
        return Stamp(parts, clock, offset_of(found["zone"]))
    found = ONLY_CLOCK.fullmatch(cell)
    if found is not None and ":" in cell:
        clock = _clock(found)
        return None if clock is None else Stamp(None, clock, offset_of(found["zone"]))
    found = UNIX.fullmatch(cell)
    if found is None:
        return None
    seconds = float(cell) if found[1] else float(cell) / 1000
    return Stamp(None, None, None, seconds) if UNIX_LOW <= seconds < UNIX_HIGH else None


def _usual_form(cell: str) -> Stamp | None:
    """Ten letters of a date, a time of day: the form of nearly all loggers, read without a pattern."""
    parts = _whole_date(cell[:10])
    clock = cell[11:13], cell[14:16], cell[17:] or "0"
    if parts is None or not all(one.isdecimal() for one in clock) or cell[16:17] not in ("", ":"):
        return None
    hour, minute, second = map(int, clock)
    return Stamp(parts, (hour, minute, second), None) if max(hour, minute - 36, second - 36) < 24 else None


@lru_cache(maxsize=4096)
def _whole_date(text: str) -> tuple[str, str, str] | None:
    found = WHOLE_DATE.fullmatch(text)
    if found is None:
        return None
    return (found[1], found[3], found[4]) if found[1] else (found[5], found[7], found[8])


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
def offset_of(zone: str | None) -> timedelta | None:
    """How far a written zone ("+01:00", "Z", "UTC") is from UTC; None for none."""
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
