"""Veil: light that lies over all of a photo -> how much of it, and the photo without it.

In    top view and a sample of the whole photo, uint8 (rows, columns, 3), sRGB
Out   the veil's share in the light of the lightest things, 0-1; pixels without it
Not   light over a part of the tray (`glare.py`); colours that a filter took (`fading.py`)

Steam or grease on the lens, film between, a photo taken of a screen or a print: all lay the same light over
everything, and nothing is dark any more. In a clear photo something is, in the tray's corners, between
leaves and under the rim. So what the darkest hundredth has in its weakest channel is the veil, and it is
taken off in linear light: dark-object subtraction (Chavez 1988, An improved dark-object subtraction
technique for atmospheric scattering correction of multispectral data. Remote Sensing of Environment 24,
459-479; from memory).

Of 239 rendered photos in white light the darkest hundredth, of the tray or the photo around, had at most
0.016 of what the lightest twentieth of the tray has in its strongest channel; six real ones of rooms 0.011
to 0.023. 144 of the 239 are the demonstration's, which so proves nothing of these bars. Close-ups of wheat on
flat soil have up to 0.17 without any veil, and taking it off cost up to 25 points there: so nothing is done
where either the tray or the photo around it has its darkness.
"""

import cv2
import numpy as np
from numpy.typing import NDArray

from vision.cielab import encoded, linear
from vision.planes import Pixels

__all__ = ["MOST_VEIL", "veil_of", "without_veil"]

MOST_VEIL = 0.04  # share of the light: from there on a canopy told with the veil on it lost 5 points and more
DARKEST_PCT, LIGHTEST_PCT = 1.0, 95.0
LEAST_LIGHT = 1e-3  # of a picture that is black
CLEAR = 0.05  # darkest over lightest: up to here a photo is left as it is; twice what was seen without a veil
USUAL = 0.006  # the same of the middle photo: what is left where there is a veil


def veil_of(top: Pixels, photo: Pixels) -> float:
    """The veil's light over that of the lightest things in the tray, 0 where there is no veil."""
    seen = min(_darkest(top), _darkest(photo)) / max(_lightest(top), LEAST_LIGHT)
    left = min(seen, max(USUAL, 2 * CLEAR - seen))  # no jump where a veil begins
    return max(0.0, (seen - left) / (1 - left))


def without_veil(pixels: Pixels, share: float, top: Pixels | None = None) -> Pixels:
    """Pixels with the veil's light taken off and the lightest things as light as they were.

    The share is of the lightest things in `top`, where it was told there; else of those of the pixels.
    """
    if not 0 < share < 1:
        return pixels  # nothing lies over it, or nothing is left without it: a picture of one colour
    codes = linear(np.repeat(np.arange(256, dtype=np.uint8), 3).reshape(1, 256, 3))
    light = share * _lightest(pixels if top is None else top)
    return np.asarray(cv2.LUT(pixels, encoded((codes - light) / (1 - share))), np.uint8)


def _darkest(pixels: Pixels) -> float:
    """Light of the weakest channel that a hundredth of the picture stays under."""
    return float(np.percentile(_light(pixels).min(axis=2), DARKEST_PCT))


def _lightest(pixels: Pixels) -> float:
    """Light of the strongest channel that a twentieth of the picture goes beyond."""
    return float(np.percentile(_light(pixels).max(axis=2), LIGHTEST_PCT))


def _light(pixels: Pixels) -> NDArray[np.float32]:
    """Linear light of every fourth pixel."""
    return linear(np.ascontiguousarray(pixels[::2, ::2]))
