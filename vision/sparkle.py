"""Sparkle: CIELAB lightness of a patch -> how much it glitters, and how far that speaks against mold.

In    L* (rows, columns), which pixels belong to the patch, scale in px/mm
Out   contrast of luminance finer than 1 mm; a factor on the confidence that the patch is mold
Not   finding patches (`suspects.py`)

Felt is dull and even. Wet bare ground is as grey, but it throws the lamp back in points: they are many times
lighter than what lies between them.
"""

import cv2
import numpy as np
from numpy.typing import NDArray

__all__ = ["dullness", "sparkle"]

FINE_MM = 1.0  # sd of the blur that fine contrast is measured against
# Of 13 true and 2 false suspects on trays to learn from the true have 0.15 to 0.35, the false 0.38 and 0.41.
DULL, GLITTERING = 0.35, 0.40
LEAST = 0.3  # times the confidence, of what glitters


def sparkle(lightness: NDArray[np.float32], seen: NDArray[np.bool_], px_per_mm: float) -> float:
    """Standard deviation of luminance about its mean within 1 mm, over the patch's mean luminance.

    Luminance is that of L* (CIE 15:2018, the cube alone: what is nearly black counts little here). Pixels
    outside the patch, leaves among them, take no part. 0 where nothing is seen.
    """
    if not seen.any():
        return 0.0
    luminance = ((lightness + 16) / 116) ** 3
    weight = seen.astype(np.float32)
    sd = FINE_MM * px_per_mm
    around = cv2.GaussianBlur(luminance * weight, (0, 0), sd) / np.maximum(
        cv2.GaussianBlur(weight, (0, 0), sd), 1e-6
    )
    return float((luminance - around)[seen].std() / luminance[seen].mean())


def dullness(glitter: float) -> float:
    """1 for a dull patch, falling to 0.3 for one that glitters as wet ground does."""
    return float(np.interp(glitter, (DULL, GLITTERING), (1.0, LEAST)))
