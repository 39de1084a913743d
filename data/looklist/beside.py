"""Beside: a number of a tray beside the same number of others, counted of the same for all of them.

In    `Standing`s of one day, or days of earlier trays; which number
Out   `Beside`: its own number, the others' median and spread, what they are a share of
Not   which trays are held against each other (`view.py`), what is out of line

Mates often grow on other media, and media lie at different heights in the tray: of one that lies deep the
camera sees more of the wall, which is no canopy and looks like a gap. So coverage and gaps are counted of the
growing bed where all that are compared know it, else of the inner area; the two are never mixed. What a tray
shows for itself stays the share of the inner area.

Measured on 60 drawn photos that we learn from, with at least 30 % of canopy seen from straight above (31 of
mats, 29 of loose media): loose media come out 3.3 points ahead of mats by coverage, 0.8 by the bed; of the 53
with 60 % and more, gaps of mats with the wall take 6.8 % (loose media 5.3), without it 3.2 (3.5). Sides and
edges stay counted of the inner area: along a side that is 15 points thinner or more loose media come out 1.9
points too even and mats 0.6 too thin, but of the bed 10.7 and 17.5 too even, for leaves that lean over the
wall hide it and pass for full bed.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from statistics import median
from typing import Generic, TypeVar

from data.looklist.standing import Standing
from data.records import EarlierDay

__all__ = ["COVERAGE", "GAPS", "Beside", "Counted", "middle_and_spread", "set_beside"]

One = TypeVar("One", bound=Standing | EarlierDay, contravariant=True)
SPREAD_PER_MAD = 1.4826


@dataclass(frozen=True, slots=True)
class Counted(Generic[One]):
    """One number in both ways of counting: of the inner area, and of the growing bed."""

    of_inner: Callable[[One], float | None]
    of_bed: Callable[[One], float | None]

    def of(self, one: One, of_bed: bool) -> float | None:
        """The number, counted so."""
        return (self.of_bed if of_bed else self.of_inner)(one)


@dataclass(frozen=True, slots=True)
class Beside:
    """A number of a tray and those of the others."""

    mine: float | None
    middle: float | None  # of the others; None where too few can be asked
    spread: float  # of the others, estimates a standard deviation; 0 where there is no middle
    of_bed: bool


def set_beside(mine: Standing, others: Sequence[One], number: Counted[Standing | One], least: int) -> Beside:
    """A number beside that of at least `least` others."""
    of_bed = mine.bed_share is not None and all(one.bed_share is not None for one in others)
    of = number.of_bed if of_bed else number.of_inner
    own, values = of(mine), [value for one in others if (value := of(one)) is not None]
    if len(values) < least:
        return Beside(own, None, 0.0, of_bed)
    middle, spread = middle_and_spread(values)
    return Beside(own, middle, spread, of_bed)


def middle_and_spread(values: Sequence[float]) -> tuple[float, float]:
    """Median, and the median absolute deviation times 1.4826.

    That is one over the upper quartile of the standard normal distribution, 0.6745, and so it estimates a
    standard deviation.
    """
    middle = median(values)
    return middle, SPREAD_PER_MAD * median(abs(value - middle) for value in values)


def _gaps_beside_the_wall(one: Standing) -> float | None:
    """At least so much of the inner area is gap without the wall: what wall is seen, taken off.

    Found so 0.7 points too small, on the photos above.
    """
    if one.gap_share is None or not one.bed_share:
        return one.gap_share
    wall = 100.0 * (1.0 - one.coverage / one.bed_share)
    return max(0.0, one.gap_share - wall)


COVERAGE: Counted[Standing | EarlierDay] = Counted(lambda one: one.coverage, lambda one: one.bed_share)
GAPS: Counted[Standing] = Counted(lambda one: one.gap_share, _gaps_beside_the_wall)
