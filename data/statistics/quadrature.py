"""Quadrature: nodes and weights for the distributions behind Dunnett's and Tukey's tests.

In    degrees of freedom
Out   nodes and weights over the estimated spread (root of chi-square over its degrees of freedom) and over a
      normal variable; the root of an increasing function
Not   the tests themselves (`dunnett.py`, `tukey.py`)

Composite Gauss-Legendre rules: no random numbers, so the same question always has the same answer.
"""

import math
from collections.abc import Callable
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray
from scipy.special import chdtri, gammaln

__all__ = ["Floats", "Rule", "normal_rule", "root_above", "spread_rule"]

Floats = NDArray[np.float64]
Rule = tuple[Floats, Floats]  # nodes, weights

NODES = 8  # in a panel
NORMAL_END = 8.5  # beyond it a normal variable has a chance of 2e-17
NORMAL_PANELS = 10
# panels over the spread end at these chances that a spread is greater; small spreads matter with few df
SPREAD_ENDS = (1.0, 1 - 1e-12, 1 - 1e-7, 1 - 1e-4, 0.995, 0.96, 0.85, 0.6, 0.3, 0.1, 0.01, 1e-4, 1e-8, 1e-14)


def _panels(ends: Floats) -> Rule:
    at, weight = np.polynomial.legendre.leggauss(NODES)
    half, middle = np.diff(ends) / 2, (ends[1:] + ends[:-1]) / 2
    return (middle[:, None] + half[:, None] * at).ravel(), (half[:, None] * weight).ravel()


@lru_cache(maxsize=1)
def normal_rule() -> Rule:
    """Nodes z and weights that hold the density of a standard normal variable; they sum to 1."""
    z, weight = _panels(np.linspace(-NORMAL_END, NORMAL_END, NORMAL_PANELS + 1))
    return z, weight * np.exp(-z * z / 2) / math.sqrt(2 * math.pi)


@lru_cache(maxsize=256)
def spread_rule(df: float) -> Rule:
    """Nodes s and weights for s = sqrt(chi-square / df); `math.inf` is the known spread, s = 1."""
    if math.isinf(df):
        return np.ones(1), np.ones(1)
    ends = np.sqrt(chdtri(df, np.array(SPREAD_ENDS)) / df)
    s, weight = _panels(ends)
    log_density = (
        math.log(2) + df / 2 * math.log(df / 2) - gammaln(df / 2) + (df - 1) * np.log(s) - df * s * s / 2
    )
    return s, weight * np.exp(log_density)


def root_above(rising: Callable[[float], float], low: float, high: float, within: float = 1e-8) -> float:
    """Where an increasing function crosses 0 between `low` and `high` (Illinois rule of false position)."""
    f_low, f_high = rising(low), rising(high)
    if f_low >= 0:
        return low
    if f_high <= 0:
        return high
    moved = 0  # the end that moved last: -1 the lower, +1 the upper
    for _ in range(100):
        at = (low * f_high - high * f_low) / (f_high - f_low)
        f_at = rising(at)
        if abs(f_at) < within or high - low < within:
            return at
        if f_at > 0:
            high, f_high = at, f_at
            f_low = f_low / 2 if moved > 0 else f_low  # the other end has stood still twice
            moved = 1
        else:
            low, f_low = at, f_at
            f_high = f_high / 2 if moved < 0 else f_high
            moved = -1
    return at
