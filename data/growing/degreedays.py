"""Degree days: logged temperatures -> warmth that a crop has had above its base temperature.

In    logged temperatures in C with their times; the crop's base temperature
Out   `DegreeDays` of a time, which says how much of it was logged
Not   growth itself (`growth.py`), in words (`climate.py`)

Each logged hour counts by itself, as much of it as lies above the base: method 2 of McMaster & Wilhelm (1997)
Growing degree-days: one equation, two interpretations, Agric. For. Meteorol. 87, 291-300 (original not
opened), with all of a day's temperatures in place of its extremes.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime

from data.growing.samples import hours, spans

__all__ = ["DegreeDays", "logged_degree_days"]


@dataclass(frozen=True, slots=True, kw_only=True)
class DegreeDays:
    """Warmth of a time; None where nothing was logged."""

    total: float | None  # C days, of the hours that were logged
    mean: float | None  # C, of the same hours
    known: float  # hours
    unknown: float  # hours without samples: not counted as cold, not counted at all


def logged_degree_days(
    temperatures: Sequence[tuple[datetime, float]], base: float, begin: datetime, end: datetime
) -> DegreeDays:
    """Growing degree days between two times from logged temperatures, in any order."""
    ordered = sorted(temperatures)
    total = warmth = known = 0.0
    for number, start, stop in spans([at for at, _ in ordered], begin, end):
        span, temperature = hours(stop - start), ordered[number][1]
        total += max(0.0, temperature - base) * span / 24
        warmth += temperature * span
        known += span
    return DegreeDays(
        total=total if known else None,
        mean=warmth / known if known else None,
        known=known,
        unknown=max(0.0, hours(end - begin) - known),
    )
