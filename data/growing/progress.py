"""Progress: severity of mold over days -> one number for the whole course.

In    times (days) and severity (% of the inner area, or any scale), ascending times
Out   area under the progress curve and under the progress stairs, in severity times days
Not   finding mold (`looklist/mold.py`)

Area under the curve: trapezoids (Shaner & Finney 1977). Stairs: curve + (y1 + yn)/2 * D/(n - 1), which gives
the first and the last day their full weight (Simko & Piepho 2012, The area under the disease progress stairs,
Phytopathology 102, 381-389). Compare only over the same days. (Originals not opened; formulas as quoted.)
"""

from collections.abc import Sequence
from itertools import pairwise

__all__ = ["area_under_curve", "area_under_stairs", "relative_curve", "relative_stairs"]


def area_under_curve(days: Sequence[float], severity: Sequence[float]) -> float:
    """Sum of trapezoids; at least two days.

    Raises
    ------
    ValueError
        Unless there is one severity for each of at least two ascending days.
    """
    _at_the_door(days, severity)
    steps = zip(pairwise(days), pairwise(severity), strict=True)
    return float(sum((t2 - t1) * (y1 + y2) / 2 for (t1, t2), (y1, y2) in steps))


def area_under_stairs(days: Sequence[float], severity: Sequence[float]) -> float:
    """The curve's area and what the first and the last day lack in it; at least two days, as above."""
    whole = days[-1] - days[0] if days else 0.0
    return area_under_curve(days, severity) + (severity[0] + severity[-1]) / 2 * whole / (len(days) - 1)


def relative_curve(days: Sequence[float], severity: Sequence[float], worst: float = 100.0) -> float:
    """Area under the curve as a share of the worst that could be, 0-1."""
    return area_under_curve(days, severity) / (worst * (days[-1] - days[0]))


def relative_stairs(days: Sequence[float], severity: Sequence[float], worst: float = 100.0) -> float:
    """Area under the stairs as a share of the worst that could be, 0-1."""
    stairs = len(days) / (len(days) - 1) if len(days) > 1 else 1.0
    return area_under_stairs(days, severity) / (worst * (days[-1] - days[0]) * stairs)


def _at_the_door(days: Sequence[float], severity: Sequence[float]) -> None:
    if len(days) != len(severity) or len(days) < 2 or any(b <= a for a, b in pairwise(days)):
        raise ValueError("a course needs two or more ascending days and one severity for each")
