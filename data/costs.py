"""Costs: money, room, work and dirt of a medium, as means over trays or sums over what is sown.

In    numbers of trays, labour with its time, a price with its range, trays a week
Out   `Mean` with interval and n; room and mass of a week's or month's trays; minutes by what they were for
Not   reading the book (`materials/reading.py`), the table (`materials/table.py`)
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from enum import StrEnum
from statistics import fmean, stdev

from data.statistics.estimate import Estimate

__all__ = ["Labour", "Mean", "for_trays", "labour_kind", "mean_of_trays", "minutes_by_kind"]

SET_UP_UNTIL = timedelta(hours=12)  # after the sowing a minute is no set-up any more (common practice)


class Labour(StrEnum):
    """What the minutes were for."""

    SET_UP = "set-up"
    CARE = "care"
    AFTER = "cleaning and disposal"


@dataclass(frozen=True, slots=True, kw_only=True)
class Mean:
    """Mean of trays; the interval needs two of them."""

    estimate: Estimate
    n: int
    sd: float | None


def mean_of_trays(values: Sequence[float]) -> Mean | None:
    """Mean with its 95 % interval of Student's t; None of nothing.

    Trays that are all alike, as marks and minutes can be, do not tell how sure their mean is: no interval.
    """
    if not values:
        return None
    if len(values) == 1:
        return Mean(estimate=Estimate(value=values[0]), n=1, sd=None)
    sd = stdev(values)
    error = sd / len(values) ** 0.5 if sd > 0 else None
    return Mean(estimate=Estimate.of(fmean(values), error, len(values) - 1), n=len(values), sd=sd)


def labour_kind(at: datetime, sown_at: datetime, done_at: datetime | None) -> Labour:
    """What minutes were for, by when they were noted: before the sowing, after the end, or between.

    All day of the sowing they are set-up: its hour is often taken for nine, and sown was in the evening.
    """
    if at <= sown_at + SET_UP_UNTIL or at.date() <= sown_at.date():
        return Labour.SET_UP
    return Labour.AFTER if done_at is not None and at >= done_at else Labour.CARE


def minutes_by_kind(
    noted: Iterable[tuple[datetime, float]], sown_at: datetime, done_at: datetime | None
) -> dict[Labour, float]:
    """Minutes of one tray by what they were for; what nobody noted is missing, not nought."""
    found: dict[Labour, float] = {}
    for at, minutes in noted:
        kind = labour_kind(at, sown_at, done_at)
        found[kind] = found.get(kind, 0.0) + minutes
    return found


def for_trays(one: Estimate, trays: float) -> Estimate:
    """An amount a tray for so many trays: a week's, or a month's."""
    return one.turned(lambda value: value * trays)
