"""Tones: top view -> colour of each pixel that stays when the light gets less.

In    top view, uint8 (rows, columns, 3), sRGB; scale in px/mm, None when it is not known
Out   `Tones`: lightness, redness, yellowness, and lightness against the surroundings
Not   what the tones mean (`leaves.py`, `ground.py`), the numbers of a score (`colour.py`)

redness = 100 a*/(L* + 16), yellowness = 100 b*/(L* + 16). L* + 16, a* and b* all grow with the cube root of
the light (ISO/CIE 11664-4), so a leaf keeps its tones in half the light; only where L* is under 8 it does
not.
"""

from dataclasses import dataclass

import cv2
import numpy as np
from numpy.typing import NDArray

from vision.cielab import lab
from vision.planes import Mask, Plane

__all__ = ["Mask", "Plane", "Tones", "colourfulness", "plane", "tones"]

AROUND_MM = 20.0  # width of "surroundings": a few leaves
AROUND_SHARE = 1 / 25  # of the longer side, where the scale is not known: the same on a whole tray


@dataclass(frozen=True, slots=True, kw_only=True)
class Tones:
    """What thresholds ask for, float32 (rows, columns) each."""

    lightness: Plane
    """L*, 0-100."""
    redness: Plane
    """Green below 0, red above."""
    yellowness: Plane
    """Blue below 0, yellow above."""
    above: Plane
    """L* above the mean of the surroundings."""
    local: Plane
    """L* + 16 in % of that of the surroundings."""
    around: tuple[int, int]
    """Width and height of the surroundings, px."""


def tones(top: NDArray[np.uint8], px_per_mm: float | None) -> Tones:
    """Tones of every pixel."""
    lightness, a, b = (plane(part) for part in cv2.split(lab(top)))
    width = max(top.shape[:2]) * AROUND_SHARE if px_per_mm is None else AROUND_MM * px_per_mm
    around = (max(3, int(width) | 1),) * 2
    mean = plane(cv2.blur(lightness, around))
    light = lightness + 16
    return Tones(
        lightness=lightness,
        redness=plane(cv2.divide(a, light, scale=100)),
        yellowness=plane(cv2.divide(b, light, scale=100)),
        above=lightness - mean,
        local=plane(cv2.divide(light, mean + 16, scale=100)),
        around=around,
    )


def colourfulness(redness: Plane, yellowness: Plane) -> Plane:
    """Length of (redness, yellowness): 0 is grey.

    Not by `cv2.magnitude`, whose last digit depends on where in memory the planes lie.
    """
    return plane(np.sqrt(redness * redness + yellowness * yellowness))


def plane(values: NDArray[np.integer | np.floating]) -> Plane:
    """The same values as float32."""
    return np.asarray(values, np.float32)
