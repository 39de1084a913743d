"""Agreement: how well two ways of judging the same trays agree.

In    two numbers a tray, or a table of trays x judges
Out   intraclass correlations, weighted kappa, limits of agreement, rank correlation
Not   drawing a round of scoring by eye (`blind.py`), the words (`verdict/words.py`)

A number that the data do not give (no spread, too few trays) is None.
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from scipy.special import stdtr

from data.statistics.quadrature import Floats

__all__ = [
    "Icc", "Kappa", "Limits", "RankCorrelation", "icc", "kappa", "limits_of_agreement", "ranks", "spearman",
]  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class Icc:
    """Intraclass correlations of Shrout & Fleiss (1979) Psychological Bulletin 86, 420-428."""

    one_any: float | None  # ICC(1,1): each tray judged by other judges
    two_random: float | None  # ICC(2,1): may one judge stand for another, number for number?
    two_fixed: float | None  # ICC(3,1): the same, when a constant shift between judges does not matter
    mean_any: float | None  # ICC(1,k) ...: of the judges' mean
    mean_random: float | None
    mean_fixed: float | None


def icc(table: Floats) -> Icc:
    """All six for a full table, trays x judges; at least two of each."""
    n, k = table.shape
    grand = table.mean()
    between = k * ((table.mean(1) - grand) ** 2).sum() / (n - 1)
    judges = n * ((table.mean(0) - grand) ** 2).sum() / (k - 1)
    within = ((table - table.mean(1, keepdims=True)) ** 2).sum() / (n * (k - 1))
    rest = (within * n * (k - 1) - judges * (k - 1)) / ((n - 1) * (k - 1))
    shift = k * (judges - rest) / n
    return Icc(
        one_any=_ratio(between - within, between + (k - 1) * within),
        two_random=_ratio(between - rest, between + (k - 1) * rest + shift),
        two_fixed=_ratio(between - rest, between + (k - 1) * rest),
        mean_any=_ratio(between - within, between),
        mean_random=_ratio(between - rest, between + shift / k),
        mean_fixed=_ratio(between - rest, between),
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Kappa:
    """Cohen's kappa of grades, plain and weighted."""

    plain: float | None
    weighted: float | None


def kappa(counts: Floats, disagreement: Floats | None = None) -> Kappa:
    """Kappa of a square table of counts or proportions (Cohen 1968, Psychological Bulletin 70, 213-220).

    Parameters
    ----------
    disagreement : how bad each cell is, 0 on the diagonal; None weighs by the squared distance of grades.
    """
    p = counts / counts.sum()
    expected = np.outer(p.sum(1), p.sum(0))
    grade = np.arange(len(p))
    weight = (grade[:, None] - grade) ** 2.0 if disagreement is None else disagreement
    differ = 1.0 - np.eye(len(p))
    return Kappa(
        plain=_left((differ * p).sum(), (differ * expected).sum()),
        weighted=_left((weight * p).sum(), (weight * expected).sum()),
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Limits:
    """Bland & Altman (1986) Lancet 327, 307-310: between what limits two ways differ in 95 % of trays."""

    mean: float
    sd: float
    low: float
    high: float


def limits_of_agreement(one: Floats, other: Floats, times: float = 1.96) -> Limits | None:
    """Limits of `one` - `other`; None for fewer than two trays."""
    apart = one - other
    if len(apart) < 2:
        return None
    mean, sd = float(apart.mean()), float(apart.std(ddof=1))
    return Limits(
        mean=mean,
        sd=sd,
        low=mean - times * sd,
        high=mean + times * sd,
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class RankCorrelation:
    """Spearman's (1904) rank correlation; p by the t approximation."""

    rho: float
    p: float | None
    n: int


def spearman(one: Sequence[float] | Floats, other: Sequence[float] | Floats) -> RankCorrelation | None:
    """None for fewer than three pairs or where one side has no spread."""
    first, second = ranks(np.asarray(one, float)), ranks(np.asarray(other, float))
    n = len(first)
    if n < 3 or np.ptp(first) == 0 or np.ptp(second) == 0:
        return None
    rho = float(np.corrcoef(first, second)[0, 1])
    if abs(rho) > 1 - 1e-12:
        return RankCorrelation(rho=round(rho), p=0.0, n=n)
    t = rho * math.sqrt((n - 2) / (1 - rho * rho))
    return RankCorrelation(rho=rho, p=float(2 * stdtr(n - 2, -abs(t))), n=n)


def ranks(values: Floats) -> Floats:
    """Ranks from 1, ties share their mean rank."""
    _, place, count = np.unique(values, return_inverse=True, return_counts=True)
    last = np.cumsum(count)
    return np.asarray((last - (count - 1) / 2)[place], dtype=float)


def _ratio(above: float, below: float) -> float | None:
    return float(above / below) if below > 0 else None


def _left(seen: float, expected: float) -> float | None:
    return None if expected == 0 else float(1 - seen / expected)
