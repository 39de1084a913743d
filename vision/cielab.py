"""CIELAB: sRGB pixels -> L*, a*, b* for every pixel; their light, and back.

In    pixels, uint8 (rows, columns, 3), RGB
Out   float32 (rows, columns, 3): L* 0-100, a* and b* about -128 to 127; white is D65
Not   means over a canopy (`colour.py`), white balance (`light.py`)

The sRGB curve is a table (IEC 61966-2-1), the rest ISO/CIE 11664-4 as the library has it.
"""

import cv2
import numpy as np
from numpy.typing import NDArray

__all__ = ["encoded", "lab", "linear"]


def lab(pixels: NDArray[np.uint8]) -> NDArray[np.float32]:
    """L*, a*, b* of every pixel, float32 (rows, columns, 3)."""
    return np.asarray(cv2.cvtColor(linear(pixels), cv2.COLOR_LRGB2Lab), np.float32)


def linear(pixels: NDArray[np.uint8]) -> NDArray[np.float32]:
    """Light of every pixel, 0-1, float32 (rows, columns, 3): the sRGB curve undone."""
    return np.asarray(cv2.LUT(pixels, _LIGHT), np.float32)


def encoded(light: NDArray[np.floating]) -> NDArray[np.uint8]:
    """sRGB codes of light 0-1; what lies beyond is cut off."""
    light = np.clip(light, 0.0, 1.0)
    curve = np.where(light <= 0.0031308, 12.92 * light, 1.055 * light ** (1 / 2.4) - 0.055)
    return np.asarray(np.rint(255 * curve), np.uint8)


def _light_of_codes() -> NDArray[np.float32]:
    code = np.arange(256) / 255
    light = np.where(code <= 0.04045, code / 12.92, ((code + 0.055) / 1.055) ** 2.4)
    return light.astype(np.float32).reshape(1, 256, 1)


_LIGHT = _light_of_codes()
