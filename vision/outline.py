"""Outline: chances of canopy, which come a little blurred -> an order of pixels that keeps to leaves' edges.

In    top view, uint8 (rows, columns, 3), sRGB; chance of canopy of each pixel, 0-1
Out   one number a pixel: the higher, the rather canopy; only the order means anything
Not   how much canopy there is (`learned.py`)

A network that halves its picture five times knows where leaves are better than where they end. What colour
they have in this very photo it has told all the same: of all pixels of one colour, the mean chance. That, the
pixel's own chance, the chance around it and how much lighter it is than its surroundings are added with
factors from a logistic regression over trays that the network had not seen (`models/tissue.md`).
"""

import cv2
import numpy as np
from numpy.typing import NDArray

from vision.planes import Plane

__all__ = ["clues", "order"]

BINS = (16, 24, 24)  # of L*, a*, b*
BEYOND = 0.5  # % of the pixels at either end of each that share the last bins
LEAST_RANGE = 12  # codes: the range of a picture of one colour
FEW = 8.0  # pixels of a colour below which the tray's mean counts as much
LEAST_CHANCE = 1e-3
AROUND_PX = 2.0  # sd of "around", 1 mm
SURROUNDINGS_PX = 4.0
COLOUR = 0.72  # factors beside 1 for the pixel's own chance, as log odds
AROUND = -0.10
LIGHTER = 0.010  # of a code of L*


def order(top: NDArray[np.uint8], chance: Plane) -> Plane:
    """The order of pixels, float32 (rows, columns), by odds of canopy that keep to colour and edges."""
    own, colour, around, lighter = clues(top, chance)
    return np.asarray(own + COLOUR * colour + AROUND * around + LIGHTER * lighter, np.float32)


def clues(top: NDArray[np.uint8], chance: Plane) -> tuple[Plane, Plane, Plane, Plane]:
    """Log odds of each pixel, of its colour and around it; L* above the surroundings, 8-bit codes."""
    own = _log_odds(chance)
    codes = np.asarray(cv2.cvtColor(top, cv2.COLOR_RGB2LAB), np.uint8)
    light = codes[..., 0].astype(np.float32)
    around = np.asarray(cv2.GaussianBlur(own, (0, 0), AROUND_PX), np.float32)
    surroundings = np.asarray(cv2.GaussianBlur(light, (0, 0), SURROUNDINGS_PX), np.float32)
    return own, _by_colour(codes, chance), around, light - surroundings


def _by_colour(codes: NDArray[np.uint8], chance: Plane) -> Plane:
    """Log odds of canopy among all pixels of nearly the same colour, for each pixel."""
    bins = _bins(codes)
    size = int(np.prod(BINS))
    canopy = _spread(np.asarray(np.bincount(bins.ravel(), chance.ravel(), size), np.float64))
    count = _spread(np.bincount(bins.ravel(), minlength=size).astype(np.float64))
    mean = (canopy + FEW * float(chance.mean())) / (count + FEW)
    return np.asarray(_log_odds(mean.astype(np.float32))[bins], np.float32)


def _bins(codes: NDArray[np.uint8]) -> NDArray[np.int32]:
    """Number of the bin of each pixel; bins divide the range that the picture has."""
    number = np.zeros(codes.shape[:2], np.int32)
    for plane, bins in zip(cv2.split(codes), BINS, strict=True):
        low, high = np.percentile(plane[::4, ::4], (BEYOND, 100 - BEYOND))
        width = max(high - low, LEAST_RANGE) / bins
        table = np.clip((np.arange(256) - low) / width, 0, bins - 1).astype(np.uint8)
        number *= bins
        number += np.asarray(cv2.LUT(plane, table), np.uint8)
    return number


def _spread(histogram: NDArray[np.float64]) -> NDArray[np.float64]:
    """Each bin shared with its neighbours, 1 : 2 : 1 along L*, a* and b*."""
    cube = histogram.reshape(BINS)
    for axis in range(3):
        wide = np.moveaxis(cube, axis, 0)
        mixed = 2 * wide
        mixed[1:] += wide[:-1]
        mixed[:-1] += wide[1:]
        cube = np.moveaxis(mixed / 4, 0, axis)
    return cube.ravel()


def _log_odds(chance: Plane) -> Plane:
    kept = np.clip(chance, LEAST_CHANCE, 1 - LEAST_CHANCE)
    return np.asarray(np.log(kept / (1 - kept)), np.float32)
