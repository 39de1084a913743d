"""Tukey: all pairs of media at once, and the ranks that the data leave open.

In    differences and standard errors of all pairs, degrees of freedom
Out   the studentized range; for each medium the best and the worst rank that it may have
Not   differences and standard errors (`leastsquares.py`)

Two media are told apart where they differ by more than q / sqrt(2) standard errors of their difference, q the
95 % point of the studentized range (Tukey 1953; with unequal numbers Kramer 1956, then a little too careful).
A medium's rank lies between 1 + the number surely better and all - the number surely worse: Mogstad, Romano,
Shaikh & Wilhelm (2024) Inference for ranks, Review of Economic Studies 91.
"""

import math
from functools import lru_cache

import numpy as np
from scipy.special import ndtr

from data.statistics.quadrature import Floats, normal_rule, root_above, spread_rule

__all__ = ["honest_difference", "range_chance", "range_q", "rank_intervals"]

CONFIDENCE = 0.95
WIDEST = 400.0  # three media and one degree of freedom need 27


def range_chance(q: float, groups: int, df: float) -> float:
    """The chance that the studentized range of `groups` means is at most q."""
    s, s_weight = spread_rule(df)
    z, z_weight = normal_rule()
    inside = np.clip(ndtr(z) - ndtr(z - q * s[:, None]), 0.0, 1.0) ** (groups - 1)
    return float(groups * (s_weight @ inside @ z_weight))


@lru_cache(maxsize=1024)
def range_q(groups: int, df: float, confidence: float = CONFIDENCE) -> float:
    """The point that the studentized range passes with the chance 1 - confidence."""
    high = 6.0
    while range_chance(high, groups, df) < confidence and high < WIDEST:
        high *= 2
    return root_above(lambda q: range_chance(q, groups, df) - confidence, 0.0, high)


def rank_intervals(above: Floats, apart: Floats) -> tuple[tuple[int, int], ...]:
    """Best and worst possible rank of each medium, 1 = best.

    Parameters
    ----------
    above : matrix of how much better the row's medium is than the column's.
    apart : matrix of how far two must lie apart to be told apart; infinite where they cannot be compared.
    """
    surely = above > apart
    better, worse = surely.sum(axis=0), surely.sum(axis=1)
    return tuple((int(1 + b), int(len(above) - w)) for b, w in zip(better, worse, strict=True))


def honest_difference(groups: int, df: float, confidence: float = CONFIDENCE) -> float:
    """How many standard errors of a difference two of `groups` media must lie apart."""
    return range_q(groups, df, confidence) / math.sqrt(2)
