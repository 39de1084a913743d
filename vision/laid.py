"""Laid: the canopy of one day on that of another -> what appeared, what vanished.

In    two canopies of one tray as masks of top views; how they lie on each other (`alignment.py`)
Out   `Laid`: masks where the later photo has them; patches with their outlines, mm
Not   what it means (`change.py`)

A leaf that moved a little has neither vanished nor appeared: canopy within 3 mm counts as the same, and
single specks as none.
"""

from dataclasses import dataclass

import cv2
import numpy as np

from vision.alignment import Affine
from vision.planes import Mask, disc, outline_of
from vision.topview import LONG_MM, PX_PER_MM, SHORT_MM, TOP_HEIGHT, TOP_WIDTH

__all__ = ["Area", "Laid", "areas_of"]

NEAR_MM = 3.0  # leaves nod and turn by so much in a day: of growing canopy at most 0.3 % then seems lost
SPECK_MM = 3.0  # narrower changes are borders of leaves
LEAST_AREA_CM2 = 1.0  # of a patch that is told of alone


@dataclass(frozen=True, slots=True, kw_only=True)
class Area:
    """One patch of canopy that appeared or vanished, on the later photo."""

    x_mm: float
    y_mm: float
    area_cm2: float
    outline_mm: tuple[tuple[float, float], ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Laid:
    """Both canopies where the later photo has them."""

    was: Mask
    appeared: Mask
    vanished: Mask
    seen: Mask
    """Part of the later top view that the earlier one shows too."""

    @classmethod
    def on_later(cls, was: Mask, now: Mask, matrix: Affine) -> "Laid":
        """Lay the earlier canopy on the later one by a map in mm."""
        laid = _laid(was, matrix)
        seen = _laid(np.ones_like(was), matrix)
        return cls(
            was=laid & seen,
            appeared=_more(now, laid) & seen,
            vanished=_more(laid, now) & seen,
            seen=seen,
        )


def _laid(mask: Mask, matrix: Affine) -> Mask:
    """An earlier mask where the later photo has it; False where that looks beyond the earlier one."""
    (a, b, c), (d, e, f) = matrix
    shift = 0.5  # edge coordinates -> OpenCV's, which count from pixel centres
    x, y = c * PX_PER_MM + shift * (a + b - 1), f * PX_PER_MM + shift * (d + e - 1)
    place = np.array([[a, b, x], [d, e, y]])
    size = (TOP_WIDTH, TOP_HEIGHT)
    return np.asarray(
        cv2.warpAffine(mask.astype(np.uint8), place, size, flags=cv2.INTER_NEAREST) > 0, np.bool_
    )


def _more(these: Mask, others: Mask) -> Mask:
    """What is in these and nowhere near the others; each such patch then to its own border."""
    apart = _without_specks(these & ~_grown(others))
    return np.asarray(_grown(apart) & these & ~others, np.bool_)


def _grown(mask: Mask) -> Mask:
    return np.asarray(cv2.dilate(mask.astype(np.uint8), disc(2 * NEAR_MM, PX_PER_MM)) > 0, np.bool_)


def _without_specks(mask: Mask) -> Mask:
    kept = cv2.morphologyEx(mask.astype(np.uint8), cv2.MORPH_OPEN, disc(SPECK_MM, PX_PER_MM))
    return np.asarray(kept > 0, np.bool_)


def areas_of(mask: Mask, inner_mm: tuple[float, float] = (LONG_MM, SHORT_MM)) -> tuple[Area, ...]:
    """Connected pieces of a mask of 1 cm2 and more, the largest first, by the tray's own measures."""
    mm = np.array([inner_mm[0] / TOP_WIDTH, inner_mm[1] / TOP_HEIGHT])  # a pixel's sides
    count, pieces, boxes, middles = cv2.connectedComponentsWithStats(mask.astype(np.uint8))
    cm2 = boxes[:, cv2.CC_STAT_AREA] * mm.prod() / 100
    found = []
    for k in range(1, count):
        if cm2[k] >= LEAST_AREA_CM2:
            x, y = ((middles[k] + 0.5) * mm).tolist()
            outline = tuple((x, y) for x, y in ((outline_of(pieces == k) + 0.5) * mm).tolist())
            found.append(Area(x_mm=x, y_mm=y, area_cm2=float(cm2[k]), outline_mm=outline))
    return tuple(sorted(found, key=lambda area: -area.area_cm2))
