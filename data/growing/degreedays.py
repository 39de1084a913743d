"""Degree days: temperatures -> warmth that a crop has had above its base temperature.

In    extremes of a day, or logged temperatures with their times, in C; the crop's base temperature
Out   growing degree days; `DegreeDays` of a time says how much of it was logged
Not   growth itself (`growth.py`)

McMaster & Wilhelm (1997) Growing degree-days: one equation, two interpretations, Agric. For. Meteorol. 87,
291-300 (original not opened): method 1 takes max(0, mean - base); method 2 first raises both extremes to the
base. Base temperatures of 4 to 10 C by crop are from memory: the grower sets them.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime

from data.growing.samples import hours, spans
from data.sentence import Sentence

__all__ = ["DegreeDays", "degree_days", "degree_days_raised", "logged_degree_days"]


@dataclass(frozen=True, slots=True, kw_only=True)
class DegreeDays:
    """Warmth of a time; `total` is None where nothing was logged, `sentence` then says so."""

    total: float | None  # C days, of the hours that were logged
    known: float  # hours
    unknown: float  # hours without samples: not counted as cold, not counted at all
    sentence: Sentence


def degree_days(highest: float, lowest: float, base: float) -> float:
    """Growing degree days of one day by method 1; C.

    Raises
    ------
    ValueError
        If the highest lies below the lowest.
    """
    if highest < lowest:
        raise ValueError(f"the highest temperature, {highest}, lies below the lowest, {lowest}")
    return max(0.0, (highest + lowest) / 2 - base)


def degree_days_raised(highest: float, lowest: float, base: float) -> float:
    """Growing degree days of one day by method 2; C, errors as above."""
    if highest >= lowest:
        highest, lowest = max(highest, base), max(lowest, base)
    return degree_days(highest, lowest, base)


def logged_degree_days(
    temperatures: Sequence[tuple[datetime, float]], base: float, begin: datetime, end: datetime
) -> DegreeDays:
    """Growing degree days between two times from logged temperatures, in any order."""
    ordered = sorted(temperatures)
    total = known = 0.0
    for number, start, stop in spans([at for at, _ in ordered], begin, end):
        total += max(0.0, ordered[number][1] - base) * hours(stop - start) / 24
        known += hours(stop - start)
    unknown = max(0.0, hours(end - begin) - known)
    if known == 0:
        why = Sentence("No temperature was logged in this time.")
        return DegreeDays(total=None, known=0.0, unknown=unknown, sentence=why)
    told = Sentence(
        "{total:.0f} degree days above {base:g} °C in {known:.0f} logged hours, {unknown:.0f} h unknown.",
        total=total,
        base=base,
        known=known,
        unknown=unknown,
    )
    return DegreeDays(total=total, known=known, unknown=unknown, sentence=told)
