"""Dunnett: how many standard errors one-sided limits must lie off, for several media against the trusted one.

In    number of media compared, degrees of freedom, correlation of their differences
Out   q, so that the limits difference - q * se hold for all media together with the wanted confidence
Not   differences and standard errors (`leastsquares.py`), what the limits mean (`verdict`)

Dunnett (1955) A multiple comparison procedure for comparing several treatments with a control, JASA 50,
1096-1121. Differences from one control in blocks are correlated through it: by 1/2 where no tray is missing.
The multivariate t is integrated exactly wherever the correlations are products r_ij = l_i l_j: always for
one to three media (least squares in blocks gives r_ij >= r_ik r_kj >= 0, so such l exist), for any number
where no tray is missing, and for unequal numbers of trays without blocks. With four and more media and
missing trays the nearest product is integrated, and the small rest is added by a fixed lattice rule.
"""

import math
from functools import lru_cache

import numpy as np
from scipy.special import ndtr, ndtri, stdtrit

from data.statistics.quadrature import Floats, normal_rule, root_above, spread_rule

__all__ = ["dunnett_q", "loadings", "near_q", "one_sided_chance"]

CONFIDENCE = 0.95
LATTICE_POINTS = 1024
NEAR_ENOUGH = 2e-3  # correlations so near a product change q by less than 1e-5 (seen against the lattice)
LARGEST_LOADING = 0.99995
TINY = 1e-12  # of squares: media that share nothing with any other
KEPT_DIGITS = 6  # of the correlations by which an answer is remembered


def dunnett_q(df: float, correlation: Floats | int, confidence: float = CONFIDENCE) -> float:
    """The q of one-sided limits that hold together.

    Parameters
    ----------
    df : error degrees of freedom, > 0; `math.inf` where the spread is known.
    correlation : k x k matrix of the differences' correlations, or the number k for 1/2 throughout.
    """
    if isinstance(correlation, int):
        return _q_equal(correlation, df, 0.5, confidence)
    k = len(correlation)
    rounded = np.round(np.asarray(correlation, dtype=float), KEPT_DIGITS)
    off = rounded[~np.eye(k, dtype=bool)]
    if k == 1 or np.ptp(off) == 0:
        return _q_equal(k, df, float(off[0]) if k > 1 else 0.5, confidence)
    return _q_general(rounded.tobytes(), k, df, confidence)


def near_q(df: float, correlation: Floats, confidence: float = CONFIDENCE) -> float:
    """The same with the mean correlation for all, which is quick: for asking a trial many times over."""
    k = len(correlation)
    mean = 0.5 if k == 1 else float((correlation.sum() - np.trace(correlation)) / (k * (k - 1)))
    return _q_equal(k, df, round(mean, 2), confidence)


def one_sided_chance(q: float, df: float, loading: Floats) -> float:
    """The chance that all of k correlated t variables stay below q, correlations l_i l_j."""
    s, s_weight = spread_rule(df)
    z, z_weight = normal_rule()
    below = np.ones((len(s), len(z)))
    values, counts = np.unique(loading, return_counts=True)
    for value, count in zip(values, counts, strict=True):
        rest = math.sqrt(1 - min(float(value), LARGEST_LOADING) ** 2)
        below *= ndtr((q * s[:, None] - value * z) / rest) ** int(count)
    return float(s_weight @ below @ z_weight)


def loadings(correlation: Floats) -> Floats:
    """The l with l_i l_j nearest to the correlations (least squares over the pairs); exact up to three."""
    k = len(correlation)
    if k == 1:
        return np.zeros(1)
    if k == 2:
        return np.full(2, min(math.sqrt(max(float(correlation[0, 1]), 0.0)), LARGEST_LOADING))
    off = correlation - np.diag(np.diag(correlation))
    loading = np.sqrt(np.clip(off.sum(axis=1) / (k - 1), 1e-6, 1.0))
    for _ in range(500):
        before = loading.copy()
        for i in range(k):
            others = loading @ loading - loading[i] ** 2
            loading[i] = min(max(float(off[i] @ loading) / max(others, TINY), 0.0), LARGEST_LOADING)
        if np.abs(loading - before).max() < 1e-10:
            break
    return np.asarray(np.round(loading, 7))  # media with as many trays share one


@lru_cache(maxsize=4096)
def _q_equal(k: int, df: float, correlation: float, confidence: float) -> float:
    if k == 1:
        return _t(df, confidence)
    loading = np.full(k, math.sqrt(max(correlation, 0.0)))
    return _q_of(loading, df, confidence)


@lru_cache(maxsize=1024)
def _q_general(correlation: bytes, k: int, df: float, confidence: float) -> float:
    wanted = np.frombuffer(correlation).reshape(k, k)
    loading = loadings(wanted)
    q = _q_of(loading, df, confidence)
    if k <= 3:
        return q
    product = np.outer(loading, loading)
    np.fill_diagonal(product, 1.0)
    if np.abs(product - wanted).max() < NEAR_ENOUGH:
        return q
    step = 1e-3
    slope = (one_sided_chance(q + step, df, loading) - confidence) / step
    return q - (_by_lattice(q, df, wanted) - _by_lattice(q, df, product)) / slope


def _q_of(loading: Floats, df: float, confidence: float) -> float:
    least, most = _t(df, confidence), _t(df, 1 - (1 - confidence) / len(loading))
    return root_above(lambda q: one_sided_chance(q, df, loading) - confidence, least, most)


def _t(df: float, chance: float) -> float:
    return float(ndtri(chance)) if math.isinf(df) else float(stdtrit(df, chance))


# --- any correlation: separation of variables (Genz 1992) on a fixed lattice of square roots of primes


def _by_lattice(q: float, df: float, correlation: Floats) -> float:
    k = len(correlation)
    points = np.abs(2 * ((np.arange(1, LATTICE_POINTS + 1)[:, None] * _roots(k - 1)) % 1.0) - 1)
    root = np.asarray(np.linalg.cholesky(correlation), dtype=np.float64)
    total = 0.0
    for s, weight in zip(*spread_rule(df), strict=True):
        if weight < 1e-7:
            continue
        total += weight * _orthant(float(q * s), root, points)
    return float(total)


def _orthant(limit: float, root: Floats, points: Floats) -> float:
    """The chance that all of k correlated normal variables stay below a limit."""
    y = np.empty_like(points)
    below = np.full(len(points), float(ndtr(limit / root[0, 0])))
    chance = below.copy()
    for i in range(1, len(root)):
        y[:, i - 1] = ndtri(np.clip(points[:, i - 1] * below, 1e-300, 1 - 1e-16))
        below = ndtr((limit - y[:, :i] @ root[i, :i]) / root[i, i])
        chance *= below
    return float(chance.mean())


@lru_cache(maxsize=16)
def _roots(count: int) -> Floats:
    primes: list[int] = []
    number = 2
    while len(primes) < count:
        if all(number % prime for prime in primes):
            primes.append(number)
        number += 1
    return np.asarray(np.sqrt(np.array(primes, dtype=float)))
