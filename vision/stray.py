"""Stray corners: a corner of a mark that a leaf or a shadow has drawn aside -> where the rest say it is.

In    marks as seen, the camera fitted to all of them
Out   the marks, each corner that strays from its mark's other three laid where those and the camera expect it
Not   whole marks that were pushed (`station.py`), marks that are hardly seen (`covered.py`)

One corner a few px aside draws its mark's middle along, which the fit believes to a seventh of a px. It shows
in what is left over once the camera is fitted: three corners agree and one does not (data snooping, Baarda
1968, from memory; here without its test, for leaves are no noise).
"""

from collections.abc import Sequence
from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from vision.pose import Seen
from vision.posefit import Fit

__all__ = ["without_strays"]

Array = NDArray[np.float64]

# A corner strays that lies so far from the mean of the other three, and so many times as far as they from it.
# Chosen on the 24 station photos: with 1.0 and 2.0, or 2.0 and 3.0, the mean is hardly worse.
LEAST_PX, TIMES = 1.5, 2.5
SHARPEST_PX = 0.3  # what three corners scatter by at least


def without_strays(seen: Sequence[Seen], fit: Fit) -> list[Seen] | None:
    """The same marks with their stray corners mended; None where none strays. The tag is left as it is."""
    mended = [_mended(mark, fit) for mark in seen]
    if all(one is mark for one, mark in zip(mended, seen, strict=True)):
        return None
    return mended


def _mended(mark: Seen, fit: Fit) -> Seen:
    if mark.quad_mm is None:
        return mark
    expected = fit.expected(mark.quad_mm)
    off = mark.corners - expected
    others = [np.delete(off, k, axis=0) for k in range(4)]
    means = np.array([three.mean(axis=0) for three in others])
    scatter = np.array(
        [np.linalg.norm(three - mean, axis=1).max() for three, mean in zip(others, means, strict=True)]
    )
    away = np.linalg.norm(off - means, axis=1)
    times = away / np.maximum(scatter, SHARPEST_PX)
    k = int(times.argmax())
    if away[k] <= LEAST_PX or times[k] <= TIMES:
        return mark
    corners: Array = mark.corners.copy()
    corners[k] = expected[k] + means[k]
    return replace(mark, corners=corners)
