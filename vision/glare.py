"""Glare: how much of a tray lies under a veil of light, or under something white.

In    top view, uint8 (rows, columns, 3), sRGB
Out   where it is hidden; the share of that, %
Not   single glints on leaves and in drops (`sparkle.py`), a photo that is burnt out (`light.py`)

Between leaves, seeds and grains of ground there is nearly always something dark in at least one channel:
within 9 mm of everything that a camera sees well (He, Sun & Tang 2011, Single image haze removal using dark
channel prior, IEEE Trans. PAMI 33, 2341-2353; from memory). Glare lies over all of it. Bare paper is bright
all over the tray, so a veil has to be twice as light as the middle of it. Of 139 rendered trays one had more
than 2.2 %, sunflowers' hulls on white paper with 4.8; three under that had a white label on the ground. Under
made glare, where coverage was 5 points too low on average and up to 33, nearly all had over 3.
"""

import cv2
import numpy as np

from vision.cielab import encoded, linear
from vision.planes import Mask, Pixels

__all__ = ["MOST_HIDDEN_PCT", "hidden", "hidden_pct"]

MOST_HIDDEN_PCT = 3.0
AROUND_PX = 9  # of the half-size top view: 9 mm on a nominal tray
VEIL = 0.2  # light of the weakest channel
LIGHTER = 2.0  # times its median over the tray


def hidden_pct(top: Pixels) -> float:
    """Share of the top view where nothing is dark within a square of 9 mm, %."""
    return 100 * float(hidden(top).mean())


def hidden(top: Pixels) -> Mask:
    """Where nothing is dark within a square of 9 mm, of the top view at half its size."""
    half = cv2.resize(top, None, fx=0.5, fy=0.5, interpolation=cv2.INTER_AREA)
    red, green, blue = cv2.split(half)
    weakest = cv2.min(cv2.min(red, green), blue)
    median = np.full((1, 1, 3), np.median(weakest), np.uint8)
    least = encoded(np.maximum(VEIL, LIGHTER * linear(median)))[0, 0, 0]
    darkest = cv2.morphologyEx(weakest, cv2.MORPH_OPEN, np.ones((AROUND_PX, AROUND_PX), np.uint8))
    return np.asarray(darkest >= least, np.bool_)
