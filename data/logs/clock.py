"""Log clock: times of an instrument's clock -> the rack's own clock, with summer time.

In    local times in the order of the file, or times that know their zone; names of zones
Out   `Hour`: the rack's time; hours that the clock skipped or showed twice, by name
Not   reading the text (`times.py`)

The book keeps the rack's local time. In the night the clocks are set back an hour comes twice: for another
zone than the rack's the order of the rows tells which is which; on the rack's own clock nothing can.
"""

import re
from datetime import UTC, date, datetime, timedelta, timezone, tzinfo
from typing import NamedTuple

from data.logs.times import OFFSET, offset_of

__all__ = ["Clock", "Hour", "zone_in", "zone_of"]

NAMED_ZONE = re.compile(r"\b(UTC|GMT)\s?(?:([+-]\d{2}):?(\d{2})?)?(?!\w)")


class Hour(NamedTuple):
    """A time on the rack's clock, and what is special about it."""

    at: datetime | None  # None: the clock skipped it
    twice: bool = False  # the clock showed it twice that night


def zone_in(heading: str) -> str | None:
    """A zone that a heading names plainly ("Time (UTC)", "Date, GMT+01:00"); CET is not taken."""
    found = NAMED_ZONE.search(heading)
    if found is None:
        return None
    return f"{found[2]}:{found[3] or '00'}" if found[2] else "UTC"


def zone_of(name: str) -> tzinfo | None:
    """A time zone by its name ("Europe/Berlin", "UTC", "+02:00"); None where it is not known."""
    found = OFFSET.fullmatch(name.strip())
    if found is not None:
        size = offset_of(name.strip())
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
