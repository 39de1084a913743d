"""Colour: top view and labels -> the canopy's colour in CIELAB and its dark green colour index.

In    sRGB pixels, uint8 (rows, columns, 3), corrected for the light where a patch was seen; labels as large
Out   `Colour`: L*, a*, b* (D65, 2 degrees), chroma, hue in degrees, spread; dark green colour index 0-1
Not   the correction itself (`light.py`), which pixels are canopy (`tissue.py`)

L*, a* and b* are averaged; chroma and hue are taken of the averages, never averaged themselves. The index is
that of Karcher & Richardson (2003) Quantifying turfgrass color using digital image analysis. Crop Science 43,
943-951 (abstract read; the formula as quoted by a secondary page).
"""

import math
from collections.abc import Mapping
from dataclasses import dataclass, field

import cv2
import numpy as np

from vision.cielab import lab
from vision.planes import Pixels
from vision.reason import Reason
from vision.tissue import Label, Labels, Mask, canopy

__all__ = ["Colour", "dark_green_index", "measure_colour", "no_colour"]

LEAST_CHROMA = 2.0  # common practice: below it a hue is noise
LEAST_GREEN_SHARE = 0.5  # of the canopy; below it the dark green index would speak of the smaller part
HUE_RANGE = (60.0, 120.0)  # degrees between which the dark green index is defined: yellow to green


@dataclass(frozen=True, slots=True, kw_only=True)
class Colour:
    """The canopy's colour."""

    lightness: float | None  # L*, 0-100
    a: float | None
    b: float | None
    chroma: float | None  # of the mean a*, b*
    hue: float | None  # degrees 0-360, of the mean a*, b*
    spread: float | None  # root mean square distance of the pixels from the mean colour, in CIELAB units
    dark_green: float | None  # dark green colour index, mean over the green canopy; higher = darker green
    dark_green_clipped: float | None  # green canopy whose hue lay outside 60-120 degrees and was clipped, %
    reasons: Mapping[str, Reason] = field(default_factory=dict)  # by name of the field that is None


def measure_colour(pixels: Pixels, labels: Labels) -> Colour:
    """The canopy's colour.

    Parameters
    ----------
    pixels : uint8 (rows, columns, 3), sRGB
    labels : uint8 (rows, columns), values of `Label`

    Returns
    -------
    Colour
        Without canopy all None; hue None under a chroma of 2; the index None where less than half the canopy
        is green.

    Raises
    ------
    ValueError
        If the two do not have the same size.
    """
    if pixels.shape[:2] != labels.shape:
        raise ValueError(f"pixels {pixels.shape} and labels {labels.shape} differ in size")
    mask = canopy(labels)
    if not mask.any():
        return no_colour(Reason.NO_CANOPY)
    mean, deviation = cv2.meanStdDev(lab(pixels), mask=mask.view(np.uint8))
    lightness, a, b = (float(value) for value in mean[:, 0])
    chroma = math.hypot(a, b)
    reasons: dict[str, Reason] = {}
    hue = dark_green = clipped = None
    if chroma < LEAST_CHROMA:
        reasons["hue"] = Reason.NO_HUE
    else:
        hue = math.degrees(math.atan2(b, a)) % 360.0
    green = labels == Label.GREEN
    if np.count_nonzero(green) < LEAST_GREEN_SHARE * np.count_nonzero(mask):
        reasons |= dict.fromkeys(("dark_green", "dark_green_clipped"), Reason.NOT_GREEN)
    else:
        dark_green, clipped = dark_green_index(pixels, green)
    return Colour(
        lightness=lightness,
        a=a,
        b=b,
        chroma=chroma,
        hue=hue,
        spread=float(np.sqrt((deviation**2).sum())),
        dark_green=dark_green,
        dark_green_clipped=clipped,
        reasons=reasons,
    )


def dark_green_index(pixels: Pixels, where: Mask) -> tuple[float, float]:
    """Mean dark green colour index of the pixels that are True in `where`; share of clipped hues, %.

    `((H - 60) / 60 + (1 - S) + (1 - B)) / 3` of the encoded values, H clipped to 60-120 degrees,
    S and B in 0-1. It rises where a photo is darker: compare it only among photos that were corrected by the
    same means.

    Raises
    ------
    ValueError
        If no pixel is True.
    """
    if not where.any():
        raise ValueError("the dark green index needs at least one pixel")
    codes = (pixels[where].astype(np.float32) / np.float32(255.0)).reshape(1, -1, 3)
    hue, saturation, brightness = cv2.split(cv2.cvtColor(codes, cv2.COLOR_RGB2HSV))
    low, high = HUE_RANGE
    clipped = np.clip(hue, low, high)
    index = ((clipped - low) / (high - low) + (1 - saturation) + (1 - brightness)) / 3
    return float(index.mean(dtype=np.float64)), float(100.0 * np.mean(clipped != hue))


def no_colour(reason: Reason) -> Colour:
    """All None for one reason."""
    names = ("lightness", "a", "b", "chroma", "hue", "spread", "dark_green", "dark_green_clipped")
    return Colour(**dict.fromkeys(names), reasons=dict.fromkeys(names, reason))
