"""Mips: one picture at full size, half, a quarter ... so that any zoom is painted fast and without sparkle.

In    pixels uint8 RGB (rows, columns, 3), or a picture file
Out   `Mips`: QImages, the largest first, ready to be painted in any thread
Not   where on the screen (`viewport.py`), painting (`pictures.py`)

Each level is the area mean of the one above it. Qt's own smooth scaling looks at four pixels only, so a
12-megapixel photo fitted to a window at 0.3 would sparkle.
"""

from dataclasses import dataclass
from math import floor, log2
from typing import TYPE_CHECKING

from PySide6.QtGui import QImage

if TYPE_CHECKING:
    from vision.photo import Pixels

__all__ = ["Mips", "image_of", "level_for", "make_mips"]

SMALLEST_LEVEL = 600  # a picture below this many pixels is painted fast anyhow


@dataclass(frozen=True, slots=True, kw_only=True)
class Mips:
    """A picture of `size` (width, height); level k is 2^k times smaller than level 0."""

    size: tuple[int, int]
    levels: tuple[QImage, ...]


def make_mips(pixels: "Pixels") -> Mips:
    """All levels of a picture; runs in a worker (9 ms and 64 MB for 12 megapixels)."""
    import cv2

    levels = [image_of(pixels)]
    while max(pixels.shape[:2]) > SMALLEST_LEVEL:
        half = (max(1, pixels.shape[1] // 2), max(1, pixels.shape[0] // 2))
        pixels = cv2.resize(pixels, half, interpolation=cv2.INTER_AREA).astype("uint8", copy=False)
        levels.append(image_of(pixels))
    return Mips(size=(levels[0].width(), levels[0].height()), levels=tuple(levels))


def image_of(pixels: "Pixels") -> QImage:
    """A QImage with its own memory, in the format that the screen wants (no conversion when painted)."""
    import cv2

    rows, columns = pixels.shape[:2]
    screen = cv2.cvtColor(pixels, cv2.COLOR_RGB2BGRA)
    return QImage(screen.data, columns, rows, screen.strides[0], QImage.Format.Format_RGB32).copy()


def level_for(zoom: float, levels: int) -> int:
    """The smallest level that still has a pixel for each screen pixel; `zoom` in device pixels."""
    if zoom >= 1:
        return 0
    return min(levels - 1, max(0, floor(log2(1 / zoom) + 1e-9)))
