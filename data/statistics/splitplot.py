"""Split plot: when a setting belongs to a whole shelf, shelves are what repeats.

In    trays with block, shelf and medium; or a full table of blocks, shelves and settings
Out   one number a shelf where the medium is the shelf's; sums of squares by strata
Not   the comparison itself (`verdict`), how many shelves it takes (`power.py`)

Light, heat, stacking or watering set per shelf is tested against shelves within blocks, never against trays
(Yates 1935, Complex experiments, JRSS Supplement 2, 181-247). One shelf a setting leaves no error at all.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import groupby

import numpy as np
from scipy.special import fdtrc

from data.statistics.quadrature import Floats

__all__ = ["Line", "Plot", "Strata", "medium_is_the_shelfs", "shelf_means", "strata"]

Plot = tuple[str, str, str, float]  # block, shelf, medium, value


@dataclass(frozen=True, slots=True, kw_only=True)
class Line:
    """One line of the table: a source against the error of its own stratum."""

    df: int
    ss: float
    f: float | None = None
    p: float | None = None

    @property
    def ms(self) -> float:
        """Mean square."""
        return self.ss / self.df


@dataclass(frozen=True, slots=True, kw_only=True)
class Strata:
    """Analysis of a full split plot."""

    block: Line
    whole: Line  # the shelf's setting, against shelves within blocks
    whole_error: Line
    sub: Line  # what varies on a shelf, against trays
    both: Line
    sub_error: Line


def medium_is_the_shelfs(trays: Iterable[Plot]) -> bool:
    """Whether every shelf of every block holds one medium, and at least one shelf holds several trays."""
    media: dict[tuple[str, str], list[str]] = {}
    for block, shelf, medium, _ in trays:
        media.setdefault((block, shelf), []).append(medium)
    one_each = all(len(set(there)) == 1 for there in media.values())
    several_media = len({medium for there in media.values() for medium in there}) > 1
    return one_each and several_media and any(len(there) > 1 for there in media.values())


def shelf_means(trays: Sequence[Plot]) -> tuple[Plot, ...]:
    """One number for each shelf of each block: the mean of its trays."""
    ordered = sorted(trays, key=lambda tray: tray[:3])
    return tuple(
        (*place, float(np.mean([tray[3] for tray in there])))
        for place, there in ((key, list(group)) for key, group in groupby(ordered, key=lambda tray: tray[:3]))
    )


def strata(values: Floats) -> Strata:
    """The three strata of a full split plot; `values` are blocks x settings of the shelf x settings on it."""
    b, w, s = values.shape
    grand = values.mean()
    of_block, of_whole, of_sub = values.mean((1, 2)), values.mean((0, 2)), values.mean((0, 1))
    shelf, cell = values.mean(2), values.mean(0)
    block_ss = w * s * ((of_block - grand) ** 2).sum()
    whole_ss = b * s * ((of_whole - grand) ** 2).sum()
    whole_rest = s * ((shelf - of_block[:, None] - of_whole + grand) ** 2).sum()
    sub_ss = b * w * ((of_sub - grand) ** 2).sum()
    both_ss = b * ((cell - of_whole[:, None] - of_sub + grand) ** 2).sum()
    sub_rest = ((values - grand) ** 2).sum() - block_ss - whole_ss - whole_rest - sub_ss - both_ss
    whole_error = Line(df=(b - 1) * (w - 1), ss=float(whole_rest))
    sub_error = Line(df=w * (b - 1) * (s - 1), ss=float(sub_rest))
    return Strata(
        block=Line(df=b - 1, ss=float(block_ss)),
        whole=_tested(w - 1, float(whole_ss), whole_error),
        whole_error=whole_error,
        sub=_tested(s - 1, float(sub_ss), sub_error),
        both=_tested((w - 1) * (s - 1), float(both_ss), sub_error),
        sub_error=sub_error,
    )


def _tested(df: int, ss: float, error: Line) -> Line:
    if not error.df or error.ss <= 0:
        return Line(df=df, ss=ss)  # one shelf a setting: nothing to test against
    f = ss / df / error.ms
    return Line(df=df, ss=ss, f=f, p=float(fdtrc(df, error.df, f)))
