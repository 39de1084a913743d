"""Levelled: a top view made as bright and as white as all others, for scoring by eye.

In    top view, uint8 (rows, columns, 3), sRGB
Out   the inner part of it, one brightness and one white for every photo
Not   the white balance of scoring (`light.py`), who is shown what (`data/blind.py`)

An eye takes the brighter photo for the better tray. White is taken from the lightest pixels, because glints
on leaves have the colour of the lamp, not of the leaf (dichromatic reflection, Shafer 1985, from memory), and
is moved no further than a lamp may be off, so that a pale canopy stays pale. Brightness is the mean
luminance.
"""

import cv2
import numpy as np
from numpy.typing import NDArray

from vision.cielab import encoded, linear
from vision.planes import Pixels

__all__ = ["levelled"]

MARGIN = 0.03  # of the length on each side: a tag's letters could look in there
LIGHTEST = 0.02  # share of pixels that tell the white
MOST_CAST = 1.12  # a channel is moved no further
WANTED = 0.16  # mean luminance, linear
LEAST_GAIN, MOST_GAIN = 0.5, 2.0
LUMINANCE = np.array([0.2126, 0.7152, 0.0722], np.float32)  # IEC 61966-2-1
BURNT = 0.98


def levelled(top: Pixels) -> Pixels:
    """The inner part of a top view, level with all others."""
    edge = round(MARGIN * top.shape[1])
    inner = np.ascontiguousarray(top[edge : top.shape[0] - edge, edge : top.shape[1] - edge])
    light = linear(inner)
    light = light * _white_gain(light)
    mean = float((light @ LUMINANCE).mean())
    gain = min(max(WANTED / max(mean, 1e-6), LEAST_GAIN), MOST_GAIN)
    return encoded(light * gain)


def _white_gain(light: NDArray[np.float32]) -> NDArray[np.float32]:
    """What brings the lightest pixels that are not burnt out to white, green held."""
    small = cv2.resize(light, None, fx=0.25, fy=0.25, interpolation=cv2.INTER_AREA).reshape(-1, 3)
    luminance = small @ LUMINANCE
    usable = small.max(axis=1) < BURNT
    if usable.sum() < 50:
        return np.ones(3, np.float32)
    from_here = np.quantile(luminance[usable], 1 - LIGHTEST)
    white = small[usable & (luminance >= from_here)].mean(axis=0)
    gain = white[1] / np.maximum(white, 1e-6)
    return np.asarray(np.clip(gain, 1 / MOST_CAST, MOST_CAST), np.float32)
