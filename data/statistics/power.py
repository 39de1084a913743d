"""Power: how surely a design of blocks and trays shows what it is asked, and how many trays that takes.

In    number of blocks, treatments, trays in each block; margin and spread in one unit
Out   chance (0-1) to show it; blocks needed; the least margin that a number of trays can show
Not   the spread itself (`plan/spread.py`), the words (`plan/words.py`), the verdict afterwards

Fixed blocks; the chance is that of a noncentral t, and where the camera has a part in a difference, which is
known and not estimated from the trays, that of the same integral with this part held. One new treatment:
one-sided t. Several against the trusted one: one-sided
Dunnett (1955, JASA 50, 1096-1121), the chance is that of any one of them that is truly as good. Which of
several is best: Tukey's simultaneous intervals, the chance to tell one pair that lies a margin apart. Where
whole shelves get a setting the shelf is the unit (Yates 1935, JRSS Suppl. 2, 181-247): shelves within blocks;
with several media on them, set by set, as the verdict reads them.
"""

from collections.abc import Callable
from dataclasses import dataclass, replace
from math import hypot, sqrt

__all__ = [
    "MOST_BLOCKS", "SPREADS", "Design", "blocks_needed", "least_margin", "power", "set_power", "sets_needed",
    "shelf_power",
]  # fmt: skip

SPREADS = (0.7, 1.0, 1.4)  # a spread is a guess at first: shown for these multiples
MOST_BLOCKS = 60


@dataclass(frozen=True, slots=True, kw_only=True)
class Design:
    """Blocks with all treatments of one crop in each."""

    blocks: int
    treatments: int
    per_block: int = 1  # trays of each treatment in a block
    all_pairs: bool = False  # "which is best?"; else each against the trusted one
    compared: int = 0  # new treatments that the answer is about; 0: all but the trusted one
    camera_sd: float = 0.0  # of a difference, in the margin's unit: no number of trays averages it out

    @property
    def trays(self) -> int:
        """Of each treatment."""
        return self.blocks * self.per_block

    @property
    def df(self) -> int:
        """Degrees of freedom of the error: trays less blocks less treatments plus one."""
        return self.trays * self.treatments - self.blocks - self.treatments + 1

    @property
    def has_error(self) -> bool:
        """Whether anything at all can be said: two treatments, and trays that repeat."""
        return self.treatments > 1 and self.trays > 1 and self.df > 0


def power(
    design: Design, margin: float, sd: float, *, difference: float = 0.0, level: float = 0.95
) -> float | None:
    """The chance that the answer is shown; None where the design has no error to measure it by.

    Parameters
    ----------
    margin, sd : in one unit; `sd` is that of trays of one treatment within a block.
    difference : what is true, new minus trusted; negative where the new one is worse.
    """
    if not design.has_error:
        return None
    error = _error(design, sd)
    return _chance(design, (margin + difference) / error, level, design.camera_sd / error)


def _chance(design: Design, distance: float, level: float, known: float) -> float:
    """`distance` in standard errors of a difference, `known` the camera's part of one, 0-1."""
    from data.statistics.dunnett import dunnett_q
    from data.statistics.tukey import honest_difference

    if design.all_pairs:
        limit = honest_difference(design.treatments, design.df, level)
    else:
        limit = dunnett_q(design.df, design.compared or design.treatments - 1, level)
    return _passing(design.df, limit, distance, known)


def _passing(df: float, limit: float, distance: float, known: float) -> float:
    """The chance that a difference lies more than `limit` of its standard errors, as estimated, on this side.

    The estimate is hypot(s x the trays' part, the camera's part), s^2 chi-square over its degrees of freedom.
    """
    from scipy.special import ndtr

    from data.statistics.quadrature import spread_rule

    s, weight = spread_rule(df)
    estimated = (s * s * (1 - known * known) + known * known) ** 0.5
    return float(weight @ ndtr(distance - limit * estimated))


def blocks_needed(
    design: Design, margin: float, sd: float, wanted: float, *, difference: float = 0.0
) -> int | None:
    """The fewest blocks that reach the chance wanted; None where `MOST_BLOCKS` do not."""

    def enough(blocks: int) -> bool:
        reached = power(replace(design, blocks=blocks), margin, sd, difference=difference)
        return reached is not None and reached >= wanted

    return _first(enough)


def _first(enough: Callable[[int], bool]) -> int | None:
    """The smallest number from 1 to `MOST_BLOCKS` that is enough; more is always better."""
    if not enough(MOST_BLOCKS):
        return None
    too_few, many = 0, MOST_BLOCKS
    while many - too_few > 1:
        middle = (too_few + many) // 2
        too_few, many = (too_few, middle) if enough(middle) else (middle, many)
    return many


def least_margin(design: Design, sd: float, wanted: float, *, level: float = 0.95) -> float | None:
    """The narrowest margin within which these trays show "as good" with the chance wanted, if truly equal.

    For `all_pairs` the least difference between two that they tell apart.
    """
    if not design.has_error:
        return None
    error = _error(design, sd)
    known = design.camera_sd / error
    low, high = 0.0, 1.0
    while _chance(design, high, level, known) < wanted:
        high *= 2
    for _ in range(50):
        middle = (low + high) / 2
        low, high = (middle, high) if _chance(design, middle, level, known) < wanted else (low, middle)
    return high * error


def _error(design: Design, sd: float) -> float:
    """Standard error of a difference, the camera's part in it."""
    return hypot(sd * sqrt(2 / design.trays), design.camera_sd)


# --- whole shelves


def shelf_power(
    sets: int,
    settings: int,
    trays_on_shelf: int,
    margin: float,
    sd: float,
    shelf_sd: float,
    *,
    all_pairs: bool = False,
) -> float | None:
    """The chance to show, for a setting of whole shelves, that it is as good within the margin.

    Parameters
    ----------
    sets : blocks of shelves, each with one shelf of every setting.
    trays_on_shelf : of one crop, whose mean stands for the shelf.
    sd, shelf_sd : spread of trays on a shelf, and of shelves within a set, in the margin's unit.
    """
    design = Design(blocks=sets, treatments=settings, all_pairs=all_pairs)
    return power(design, margin, sqrt(shelf_sd**2 + sd**2 / trays_on_shelf))


def set_power(
    sets: int,
    treatments: int,
    margin: float,
    sd: float,
    shelf_sd: float = 0.0,
    *,
    camera_sd: float = 0.0,
    all_pairs: bool = False,
    free: float = 1.0,
) -> float | None:
    """The chance to show it of one treatment where several stand on each shelf, and shelves get a setting.

    Such a trial is read set by set (`verdict`): a difference has the spread of its own sets alone.

    Parameters
    ----------
    treatments : all of one crop, the trusted one among them.
    shelf_sd : 0 for a treatment that stands on one shelf with the trusted one.
    free : degrees of freedom that each set after the first adds; up to 2 where trays stand without sets
        (Satterthwaite).
    """
    from data.statistics.ownspread import pairs_q, sidak_q

    df = free * (sets - 1)
    if sets < 2 or treatments < 2:
        return None
    limit = pairs_q(treatments, df) if all_pairs else sidak_q(treatments - 1, df)
    error = hypot(sqrt(2 * (sd**2 + shelf_sd**2) / sets), camera_sd)
    return _passing(df, limit, margin / error, camera_sd / error)


def sets_needed(chance: Callable[[int], float | None], wanted: float) -> int | None:
    """The fewest sets of shelves whose chance is what is wanted; None where `MOST_BLOCKS` do not reach it."""

    def enough(sets: int) -> bool:
        reached = chance(sets)
        return reached is not None and reached >= wanted

    return _first(enough)
