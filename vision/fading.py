"""Fading: have the colours of a picture been taken out of it, as by a filter or an old phone.

In    pixels in sRGB, uint8 (rows, columns, 3); of a top view, of a sample of the photo
Out   how far apart its colours lie; whether coverage can still be told, is doubtful, or is lost
Not   the colour of the light (`light.py`)

A filter makes colours alike, whichever they are: grey in a grey picture, brown in a sepia one. So it is
asked how far the most different ones lie from the middle one, in tones (`tones.py`), which stay when the
light gets less. Of 140 rendered trays in white light three were under 19, all of them white paper before
anything had come up, and one under 22.4. Faded to a third, where coverage was off by up to 43 points, 48 of
71 were under 22; faded to a tenth, grey and sepia ones, up to 97 points off, under 16. Red leaves keep most
of their colour, and their coverage. Bare paper is told by little contrast in any place (0.07 to 0.14) and
few dark spots, its seeds (7 to 20 %): canopies in faded photos with so little contrast had 36 % and more.

How much tone a canopy itself has tells no more: leaves on real photographs have 19 to 38 (the middle half),
on rendered ones 41 and more (19 of 20 trays), and these faded to a third up to 48, half of them over 21.
"""

from enum import IntEnum

import cv2
import numpy as np

from vision.cielab import lab
from vision.planes import Pixels

__all__ = ["Fading", "colours_apart", "fading"]

LOST, DOUBTFUL = 15.0, 22.0  # tones of the top view
LOST_AROUND = 26.0  # of the whole photo; a bench that has more shows that the tray itself is grey
FLAT = 0.15  # local contrast
SPOTTED = 25.0  # % of the ground
SPOT = 0.85  # of the lightest place near it, in L* + 16
NEAR_PX = 9  # of the half-size top view: 9 mm on a nominal tray
WALL = 0.1  # of each side: rim and inner wall, shadows with them
PLACE_PX = 41
DARKEST = 8.0  # L*; below it tones are noise
FEWEST = 100  # px that are lighter
LEAST_SIDE_PX = 20  # of the top view; of a strip that is narrower nothing is told
MOST_APART = 99.0  # percentile


class Fading(IntEnum):
    """What has become of a picture's colours."""

    NONE = 0
    DOUBTFUL = 1
    LOST = 2


def fading(top: Pixels, photo: Pixels | None) -> Fading:
    """What has become of the colours of a top view; `photo` is a sample of all that the camera saw.

    Without it nothing is called lost: a close-up of one thing may be of one colour. Of bare paper nothing is
    said.
    """
    if min(top.shape[:2]) < LEAST_SIDE_PX:
        return Fading.NONE
    half = np.asarray(cv2.resize(top, None, fx=0.5, fy=0.5, interpolation=cv2.INTER_AREA), np.uint8)
    apart = colours_apart(np.ascontiguousarray(half[::2, ::2]))
    if apart is None or apart >= DOUBTFUL or _is_bare(half):
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


def _is_bare(half: Pixels) -> bool:
    """Whether the top view, at half its size, shows paper with seeds on it and nothing else."""
    rows, columns = (round(WALL * side) for side in half.shape[:2])
    light = lab(np.ascontiguousarray(half[rows:-rows, columns:-columns]))[:, :, 0] + 16
    mean, square = (np.asarray(cv2.blur(one, (PLACE_PX, PLACE_PX))) for one in (light, light * light))
    contrast = np.sqrt(np.maximum(square - mean * mean, 0)) / mean
    near = cv2.morphologyEx(light, cv2.MORPH_CLOSE, np.ones((NEAR_PX, NEAR_PX), np.uint8))
    spotted = 100 * float(np.mean(light < SPOT * near))
    return bool(np.median(contrast) < FLAT) and spotted < SPOTTED
