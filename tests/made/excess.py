"""Excess green: the published colour index, as the yardstick that every other method has to beat.

In    pixels, uint8 (rows, columns, 3), RGB
Out   indices, float32 (rows, columns); a `TissueMap` with green canopy and medium only
Not   pale shoots and red canopy: the index cannot see them

Excess green: Woebbecke et al. (1995) Trans. ASAE 38, 259-269. Excess red: Meyer & Neto (2008) Comput.
Electron. Agric. 63, 282-293. Threshold: Otsu (1979) IEEE Trans. SMC 9, 62-66.
"""

from dataclasses import dataclass

import cv2
import numpy as np
from numpy.typing import NDArray

from vision.planes import Pixels
from vision.tissue import Label, TissueMap
from vision.tones import Plane, plane

__all__ = ["ExcessGreenTissue", "Split", "excess_green", "excess_red", "split"]

FIXED = 0.10  # common practice where the picture is all plant or all soil
SEPARABLE = 0.6  # common practice: with less, Otsu splits noise


def excess_green(pixels: Pixels) -> Plane:
    """2 g - r - b of the shares of red, green and blue, -1 to 2; 0 for black, which is no plant."""
    return _weighed(pixels, (-1.0, 2.0, -1.0))


def excess_red(pixels: Pixels) -> Plane:
    """1.4 r - g of the shares of red and green, -1 to 1.4; 0 for black."""
    return _weighed(pixels, (1.4, -1.0, 0.0))


@dataclass(frozen=True, slots=True, kw_only=True)
class Split:
    """A threshold between two classes, the lower one up to and with it."""

    threshold: int
    separability: float
    """0-1: variance between the classes by all variance."""


def split(levels: NDArray[np.uint8]) -> Split:
    """Otsu's threshold of whole numbers 0-255; separability 0 where all are alike."""
    threshold, upper = cv2.threshold(levels, 0, 1, cv2.THRESH_BINARY | cv2.THRESH_OTSU)
    share = float(np.mean(upper))
    variance = float(np.var(levels))
    if variance == 0 or share in (0.0, 1.0):
        return Split(threshold=int(threshold), separability=0.0)
    apart = float(levels[upper == 1].mean() - levels[upper == 0].mean())
    return Split(threshold=int(threshold), separability=share * (1 - share) * apart**2 / variance)


class ExcessGreenTissue:
    """Green canopy where excess green is above Otsu's threshold, or above 0.10 where that means nothing."""

    name = "excess green"
    version = "2"

    def label(self, top: Pixels, px_per_mm: float | None) -> TissueMap:
        """Labels: green canopy or medium."""
        index = excess_green(top)
        levels = np.asarray(cv2.convertScaleAbs(index + 1, alpha=85), np.uint8)
        found = split(levels)
        green = levels > found.threshold if found.separability >= SEPARABLE else index > FIXED
        return TissueMap(labels=np.where(green, Label.GREEN, Label.MEDIUM).astype(np.uint8))


def _weighed(pixels: Pixels, weights: tuple[float, float, float]) -> Plane:
    parts = pixels.astype(np.float32)
    total = np.maximum(cv2.transform(parts, np.ones((1, 3), np.float32)), 1)  # black would divide by nothing
    return plane(cv2.divide(cv2.transform(parts, np.array([weights], np.float32)), total))
