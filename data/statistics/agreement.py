"""Agreement: how well two ways of judging the same trays agree.

In    two numbers a tray, or a table of trays x judges
Out   intraclass correlation, weighted kappa, limits of agreement, rank correlation
Not   drawing a round of scoring by eye (`blind.py`), the words (`verdict/words.py`)

A number that the data do not give (no spread, too few trays) is None.
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from scipy.special import stdtr

from data.statistics.quadrature import Floats

__all__ = ["Kappa", "Limits", "RankCorrelation", "icc", "kappa", "limits_of_agreement", "ranks", "spearman"]


def icc(table: Floats) -> float | None:
    """May one judge stand for another, number for number? ICC(2,1) of a full table, trays x judges.

    Shrout & Fleiss (1979) Psychological Bulletin 86, 420-428; at least two trays and two judges.
    """
    n, k = table.shape
    between = k * ((table.mean(1) - table.mean()) ** 2).sum() / (n - 1)
    judges = n * ((table.mean(0) - table.mean()) ** 2).sum() / (k - 1)
    within = ((table - table.mean(1, keepdims=True)) ** 2).sum() / (k - 1)
    rest = (within - judges) / (n - 1)
    whole = between + (k - 1) * rest + k * (judges - rest) / n
    return float((between - rest) / whole) if whole > 0 else None


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


def _left(seen: float, expected: float) -> float | None:
    return None if expected == 0 else float(1 - seen / expected)
