"""Spread: how far trays of one treatment lie apart within a block, learned from the grower's own trays.

In    one number a tray, with its group (trial and crop), block and treatment
Out   the pooled residual standard deviation and its degrees of freedom; None where nothing repeats
Not   the number itself (the canopy score), how many trays follow from it (`statistics/power.py`)

Residuals of a fit of blocks and treatments within each group (randomised blocks, Fisher 1935, from memory),
pooled over the groups. With few degrees of freedom the true spread may be far off: with 2 between 0.52 and
6.28 times the estimate (chi-square, 95 %).
"""

from collections.abc import Iterable
from dataclasses import dataclass
from math import sqrt

__all__ = ["GUESS_POINTS", "GUESS_YIELD_PCT", "LEAST_DF", "Learned", "Told", "learn_spread", "spread_limits"]

GUESS_POINTS = 5.0  # points of canopy or eye score; our own guess, no source: said so wherever it is shown
GUESS_YIELD_PCT = 10.0  # % of the mean; common practice for trays side by side
LEAST_DF = 4  # below that the guess is as good


@dataclass(frozen=True, slots=True, kw_only=True)
class Told:
    """One tray's number."""

    group: str  # trial and crop
    block: str
    treatment: str
    value: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Learned:
    """What the trays say."""

    sd: float
    df: int
    trays: int


def learn_spread(told: Iterable[Told]) -> Learned | None:
    """Pooled over all groups; None where no group has a degree of freedom left."""
    groups: dict[str, list[Told]] = {}
    for one in told:
        groups.setdefault(one.group, []).append(one)
    squares, df, trays = 0.0, 0, 0
    for group in groups.values():
        rest, free = _residual(group)
        if free > 0:
            squares, df, trays = squares + rest, df + free, trays + len(group)
    return Learned(sd=sqrt(squares / df), df=df, trays=trays) if df else None


def _residual(group: list[Told]) -> tuple[float, int]:
    """Sum of squares that blocks and treatments leave over, and its degrees of freedom."""
    import numpy as np

    blocks = sorted({one.block for one in group})
    treatments = sorted({one.treatment for one in group})
    design = np.array(
        [
            [float(one.block == name) for name in blocks]
            + [float(one.treatment == name) for name in treatments]
            for one in group
        ]
    )
    values = np.array([one.value for one in group])
    fit, _, rank, _ = np.linalg.lstsq(design, values, rcond=None)
    rest = values - design @ fit
    return float(rest @ rest), len(group) - int(rank)


def spread_limits(sd: float, df: int) -> tuple[float, float]:
    """95 % limits of the true spread behind an estimate (chi-square)."""
    from scipy.special import chdtri

    low, high = (sqrt(df / float(chdtri(df, tail))) for tail in (0.025, 0.975))
    return sd * low, sd * high
