"""Planes: a picture as an array, and shapes in it.

In    sizes; masks, bool (rows, columns)
Out   names of the kinds of arrays; distances from the sides, discs, outlines
Not   what a picture shows (`tissue.py`)
"""

import cv2
import numpy as np
from numpy.typing import NDArray

__all__ = ["Mask", "Pixels", "Plane", "disc", "mm_from_edge", "outline_of"]

Pixels = NDArray[np.uint8]
"""(rows, columns, 3), RGB."""
Plane = NDArray[np.float32]
"""(rows, columns)."""
Mask = NDArray[np.bool_]
"""(rows, columns)."""

THINNED_PX = 1.5  # an outline keeps to the border within this


def mm_from_edge(shape: tuple[int, ...], px_per_mm: float) -> Plane:
    """Distance of each pixel's centre from the nearest side of the picture, mm."""
    rows, columns = (
        np.asarray(np.minimum(np.arange(n) + 0.5, n - 0.5 - np.arange(n)) / px_per_mm, np.float32)
        for n in shape
    )
    return np.minimum(rows[:, None], columns[None, :])


def disc(width_mm: float, px_per_mm: float) -> NDArray[np.uint8]:
    """A disc of ones, of an odd width of 1 px and more, to open and close masks with."""
    side = round(width_mm * px_per_mm) | 1
    return np.asarray(cv2.getStructuringElement(cv2.MORPH_ELLIPSE, (side, side)), np.uint8)


def outline_of(piece: Mask) -> NDArray[np.int32]:
    """Corners of a piece's outer border, (n, 2) as (column, row) of border pixels."""
    borders, _ = cv2.findContours(piece.astype(np.uint8), cv2.RETR_EXTERNAL, cv2.CHAIN_APPROX_SIMPLE)
    return np.asarray(cv2.approxPolyDP(max(borders, key=len), THINNED_PX, True)[:, 0, :], np.int32)
