"""Own spread: what to do where some media scatter more than others.

In    numbers of trays by medium, with blocks or without
Out   whether spreads differ clearly; differences with a standard error that rests on the two media alone
Not   the reading with one common spread (`leastsquares.py`)

In blocks each block's own difference of two media is one number, and a t interval of these is exact whatever
the spreads are; where blocks hold unlike many trays it hardly fails more often (Bakirov & Szekely 2005, from
memory; 5.1 of 100 drawn trials instead of 5). Without blocks: each medium's own variance, with the degrees of
freedom of Welch (1938) and Satterthwaite (1946). These are too many where two or three trays stand against
clearly more: then the fewer trays' own count, with which a limit never fails too often (Mickey & Brown 1966,
Ann. Math. Stat. 37, 639-642; all from memory).
Whether spreads differ is asked of the residuals' sizes (Levene 1960); since residuals of a fit of blocks are
tied to each other, its chance is counted among trials drawn with equal spreads (Barnard's Monte Carlo test,
seeded). Several media against the trusted one: each limit at 0.95^(1/k) (Sidak), which is a little careful.
"""

from dataclasses import dataclass, replace
from functools import lru_cache

import numpy as np
from scipy.special import stdtrit

from data.statistics.leastsquares import BlockFit, Design, sums
from data.statistics.quadrature import Floats

__all__ = [
    "LEAST_TRAYS", "NO_SPREAD", "UNEVEN", "Apart", "is_uneven", "own_difference", "pair_apart", "pairs_q",
    "sidak_q", "spreads", "unequal_chance",
]  # fmt: skip

FEW, MANY = 3, 1.5  # trays; times as many: else up to 23 of 100 joint limits of drawn trials failed, not 5
UNEVEN = (
    2.0  # times the trays, in blocks: one spread, where the fewer scatter thrice, fails in 10 to 18 of 100
)
LEAST_TRAYS = 5  # of each medium; spreads of fewer cannot be told apart
DRAWS, LEAST_DRAWS = 999, 199
MOST_DRAWN = 500_000  # numbers: a book of years is drawn less often
SEED = 20260311
NO_SPREAD = 1e-12  # of the numbers' size; below that rounding is all there is


@dataclass(frozen=True, slots=True, kw_only=True)
class Apart:
    """A difference of two media from their own trays only."""

    difference: float
    se: float
    df: float


def pair_apart(one: Floats, other: Floats) -> Apart:
    """Mean of `one` minus mean of `other` with each group's own spread."""
    own = np.array([one.var(ddof=1) / len(one), other.var(ddof=1) / len(other)])
    free = np.array([len(one) - 1, len(other) - 1])
    return Apart(
        difference=float(one.mean() - other.mean()),
        se=float(own.sum()) ** 0.5,
        df=_free(own, free),
    )


def _free(own: Floats, free: Floats) -> float:
    """Degrees of freedom of the sum of two variances of means."""
    few, many = sorted(free + 1)
    if few <= FEW and many >= MANY * few:
        return float(few - 1)
    whole = float(own.sum())
    return float(whole**2 / (own**2 / free).sum()) if whole > 0 else float(free.sum())


def own_difference(design: Design, values: Floats, medium: int, trusted: int) -> Apart | None:
    """A medium minus another from the blocks that hold both; None where too few do.

    Where their numbers do not differ at all the error is 0, not what rounding leaves: nobody can rest on it.
    """
    found = _own_difference(design, values, medium, trusted)
    if found is None or found.se > NO_SPREAD * float(np.abs(values).max()):
        return found
    return replace(found, se=0.0)


def _own_difference(design: Design, values: Floats, medium: int, trusted: int) -> Apart | None:
    new, old = (design.medium_of == which for which in (medium, trusted))
    if len(design.blocks) == 1:
        return pair_apart(values[new], values[old]) if min(new.sum(), old.sum()) > 1 else None
    means = block_means(design, values)
    by_block = means[:, medium] - means[:, trusted]
    by_block = by_block[np.isfinite(by_block)]
    if len(by_block) < 2:
        return None
    se = float(by_block.std(ddof=1) / np.sqrt(len(by_block)))
    return Apart(difference=float(by_block.mean()), se=se, df=len(by_block) - 1)


def block_means(design: Design, values: Floats) -> Floats:
    """Blocks x media: the mean of the trays there, NaN where there is none."""
    media = len(design.media)
    place = design.block_of * media + design.medium_of
    total = np.bincount(place, values, len(design.blocks) * media).reshape(-1, media)
    return np.asarray(total / np.where(design.counts > 0, design.counts, np.nan))


def sidak_q(media: int, df: float, confidence: float = 0.95) -> float:
    """Standard errors to a one-sided limit, so that `media` of them hold together at least."""
    return float(stdtrit(df, confidence ** (1 / media)))


def pairs_q(media: int, df: float, confidence: float = 0.95) -> float:
    """Standard errors to both limits of a pair, so that all pairs of `media` hold together at least.

    Tukey's range takes one spread for all; with a spread for each pair 7 to 10 of 100 drawn trials with lost
    trays told two apart that are equal.
    """
    pairs = media * (media - 1) / 2
    return float(stdtrit(df, (1 + confidence ** (1 / pairs)) / 2))


# --- do spreads differ?


def spreads(fit: BlockFit) -> Floats:
    """The standard deviation of each medium's trays within blocks, as its own residuals show it."""
    design = fit.design
    squares = np.bincount(design.medium_of, fit.residuals**2, len(design.media))
    free = np.bincount(design.medium_of, _freedom(design), len(design.media))
    return np.asarray(np.sqrt(squares / np.where(free > 0, free, np.nan)))


def unequal_chance(fit: BlockFit) -> float | None:
    """The chance of spreads so unequal where they truly are one; None where there are too few trays."""
    design = fit.design
    if design.df < 1 or len(design.media) < 2 or design.counts.sum(axis=0).min() < LEAST_TRAYS:
        return None
    seen = _levene(design, fit.residuals[:, None])[0]
    drawn = _drawn(_Key(design))
    return float((1 + (drawn >= seen * (1 - 1e-12)).sum()) / (1 + len(drawn)))


def is_uneven(design: Design) -> bool:
    """Whether one spread would err badly should spreads differ: few trays of a medium beside many.

    A medium of one tray gets no answer, and takes no sureness from the others'; where there is an error to
    measure by, at least one medium has more.
    """
    trays = design.counts.sum(axis=0)
    several = trays[trays > 1]
    return bool(several.max() >= UNEVEN * several.min())


def _freedom(design: Design) -> Floats:
    """The share of the error variance that each residual keeps."""
    size = design.counts.sum(axis=1)
    own = np.eye(len(design.media))[design.medium_of] - (design.counts / size[:, None])[design.block_of]
    kept = 1 - 1 / size[design.block_of] - np.einsum("ij,jk,ik->i", own, design.spread, own)
    return np.asarray(np.maximum(kept, 0.0))


def _levene(design: Design, residuals: Floats) -> Floats:
    """Between over within media of the residuals' sizes, for each column."""
    freedom = _freedom(design)
    scale = np.where(freedom > 1e-9, 1 / np.sqrt(np.maximum(freedom, 1e-9)), 0.0)
    size = np.abs(residuals) * scale[:, None]
    count = design.counts.sum(axis=0)[:, None]
    mean = sums(design.medium_of, size, len(design.media)) / count
    between = (count * (mean - size.mean(axis=0)) ** 2).sum(axis=0)
    within = ((size - mean[design.medium_of]) ** 2).sum(axis=0)
    return np.asarray(between / np.where(within > 0, within, np.inf))


class _Key:
    """A design as the key of a cache: the same trays in the same places, whatever they are called."""

    def __init__(self, design: Design) -> None:
        self.design = design
        self._bytes = design.medium_of.tobytes() + b"|" + design.block_of.tobytes()

    def __hash__(self) -> int:
        return hash(self._bytes)

    def __eq__(self, other: object) -> bool:
        return isinstance(other, _Key) and self._bytes == other._bytes


@lru_cache(maxsize=64)
def _drawn(key: _Key) -> Floats:
    trays = len(key.design.medium_of)
    draws = min(DRAWS, max(LEAST_DRAWS, MOST_DRAWN // trays))
    noise = np.random.default_rng(SEED).standard_normal((trays, draws))
    return _levene(key.design, key.design.fit(noise).residuals)
