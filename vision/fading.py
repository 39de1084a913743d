"""Fading: have the colours of a picture been taken out of it, as by a filter or an old phone.

In    pixels in sRGB, uint8 (rows, columns, 3); of a top view, of a sample of the photo
Out   how far apart its colours lie; whether coverage can still be told, is doubtful, or is lost
Not   the colour of the light (`light.py`)

A filter makes colours alike, whichever they are: grey in a grey picture, brown in a sepia one. So it is asked
how far the most different ones lie from the middle one, in tones (`tones.py`), which stay when the light gets
less. Of 72 rendered trays in white light, seeds on bare ground included, none was under 22.8; faded to a
third, where coverage was off by up to 43 points, 50 of 68 were under 22.5; faded to a tenth, grey and sepia
ones, up to 97 points off, were under 15.8. Red leaves keep most of their colour, and their coverage.
"""

from enum import IntEnum

import cv2
import numpy as np
from numpy.typing import NDArray

from vision.cielab import lab

__all__ = ["Fading", "colours_apart", "fading"]

Pixels = NDArray[np.uint8]

LOST, DOUBTFUL = 15.0, 22.5  # tones of the top view
LOST_AROUND = 26.0  # of the whole photo; a bench that has more shows that the tray itself is grey
DARKEST = 8.0  # L*; below it tones are noise
FEWEST = 100  # px that are lighter
MOST_APART = 99.0  # percentile


class Fading(IntEnum):
    """What has become of a picture's colours."""

    NONE = 0
    DOUBTFUL = 1
    LOST = 2


def fading(top: Pixels, photo: Pixels | None) -> Fading:
    """What has become of the colours of a top view; `photo` is a sample of all that the camera saw.

    Without it nothing is called lost: a close-up of one thing may be of one colour.
    """
    half = np.asarray(cv2.resize(top, None, fx=0.5, fy=0.5, interpolation=cv2.INTER_AREA), np.uint8)
    apart = colours_apart(np.ascontiguousarray(half[::2, ::2]))
    if apart is None or apart >= DOUBTFUL:
        return Fading.NONE
    around = None if photo is None else colours_apart(photo)
    lost = apart < LOST and around is not None and around < LOST_AROUND
    return Fading.LOST if lost else Fading.DOUBTFUL


def colours_apart(pixels: Pixels) -> float | None:
    """99th percentile of the distance of tones from the median one, 0 for one colour; None in the dark.

    A tone is 100 a*/(L* + 16) and 100 b*/(L* + 16).
    """
    lightness, a, b = cv2.split(lab(pixels))
    lit = lightness > DARKEST
    if np.count_nonzero(lit) < FEWEST:
        return None
    light = (lightness[lit] + 16) / 100
    redness, yellowness = a[lit] / light, b[lit] / light
    away = np.hypot(redness - np.median(redness), yellowness - np.median(yellowness))
    return float(np.percentile(away, MOST_APART))
