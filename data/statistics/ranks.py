"""Ranks: best and worst place of each medium that the intervals of all pairs leave open.

In    a fit; for each pair of media its own difference, where pairs rest on two media alone
Out   (best, worst) rank by index of medium, 1 is best
Not   the intervals from the trusted medium (`verdict/comparison.py`), what a rank means (`verdict/notes.py`)
"""

import math
from collections.abc import Callable

import numpy as np

from data.statistics.leastsquares import BlockFit
from data.statistics.ownspread import Apart, pairs_q
from data.statistics.quadrature import Floats
from data.statistics.tukey import honest_difference, rank_intervals

__all__ = ["ranks_of"]

Pair = Callable[[int, int], Apart | None]  # one medium minus another; None where it has no error of its own


def ranks_of(
    fit: BlockFit, camera_sd: float, *, lower_is_better: bool, own: Pair | None = None
) -> dict[int, tuple[int, int]]:
    """Nothing for one medium alone. `camera_sd` as in the intervals: a rank is no surer than they are."""
    count = len(fit.design.media)
    if count < 2:
        return {}
    above, apart = _of_one_spread(fit, camera_sd) if own is None else _of_pairs(count, own, camera_sd)
    sign = -1.0 if lower_is_better else 1.0
    return dict(enumerate(rank_intervals(sign * above, apart)))


def _of_one_spread(fit: BlockFit, camera_sd: float) -> tuple[Floats, Floats]:
    """How far the row's medium lies above the column's, and how far two must lie apart to be told apart."""
    errors = np.hypot(np.sqrt(float(fit.mse) * fit.design.unit_variance()), camera_sd)
    above = np.asarray(np.subtract.outer(fit.effects, fit.effects))
    return above, honest_difference(len(fit.design.media), fit.design.df) * errors


def _of_pairs(count: int, own: Pair, camera_sd: float) -> tuple[Floats, Floats]:
    above, apart = np.zeros((count, count)), np.full((count, count), np.inf)
    for i in range(count):
        for j in range(i):
            pair = own(i, j)
            if pair is not None and pair.se > 0:
                wide = pairs_q(count, pair.df) * math.hypot(pair.se, camera_sd)
                apart[i, j] = apart[j, i] = wide
                above[i, j], above[j, i] = pair.difference, -pair.difference
    return above, apart
