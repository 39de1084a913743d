"""Tissue: top view -> what each pixel shows.

In    top view, uint8 (rows, columns, 3), sRGB; scale in px/mm, None when it is not known
Out   `TissueMap`: one `Label` a pixel
Not   shares and gaps (`stand.py`), which fuzz is a suspect (`suspects.py`)

`PlainTissue` is the plain method: thresholds on CIELAB colour and on local texture. It is the fallback of a
learned model and the yardstick that such a model has to beat.
"""

from dataclasses import dataclass
from enum import IntEnum
from typing import Protocol

import cv2
import numpy as np
from numpy.typing import NDArray

from vision.cielab import lab

__all__ = ["Label", "Labels", "Mask", "PlainTissue", "Tissue", "TissueMap", "canopy"]

Pixels = NDArray[np.uint8]
Labels = NDArray[np.uint8]
Mask = NDArray[np.bool_]
_Plane = NDArray[np.float32]


class Label(IntEnum):
    """What a pixel shows."""

    OUTSIDE = 0
    RIM = 1
    MEDIUM = 2
    HULL = 3
    PALE = 4
    GREEN = 5
    RED = 6
    ROOT_HAIR = 7
    FUZZ = 8
    OTHER = 9


@dataclass(frozen=True, slots=True, kw_only=True)
class TissueMap:
    """The labels of one top view."""

    labels: Labels
    """uint8 (rows, columns), values of `Label`."""
    fuzz: NDArray[np.float32] | None = None
    """Chance of fuzz, 0-1, (rows, columns); None when the method gives none."""


class Tissue(Protocol):
    """A method that tells tissues apart. Its name and version travel with every score."""

    @property
    def name(self) -> str:
        """Short name of the method."""

    @property
    def version(self) -> str:
        """Changes whenever labels may change."""

    def label(self, top: Pixels, px_per_mm: float | None) -> TissueMap:
        """Labels of a top view, (rows, columns) as `top`; without a scale nothing is taken for rim."""


def canopy(labels: Labels) -> Mask:
    """Where pale shoots, green or red canopy stand."""
    return np.asarray((labels >= Label.PALE) & (labels <= Label.RED), np.bool_)


class PlainTissue:
    """Thresholds on colour and texture, the same for every crop and medium.

    Two tones carry the method: `redness` = 100 a*/(L* + 16) and `yellowness` = 100 b*/(L* + 16). As L* + 16, a* and
    b* all grow with the cube root of the light (ISO/CIE 11664-4), a leaf keeps its tones in half the light.
    """

    name = "plain"
    version = "1"

    def label(self, top: Pixels, px_per_mm: float | None) -> TissueMap:
        """Labels of a top view, uint8 (rows, columns); rim only when the scale is known.

        Raises
        ------
        ValueError
            If `top` is no uint8 picture with three channels, or the scale is not positive.
        """
        _at_the_door(top, px_per_mm)
        look = _look(top, px_per_mm)
        red, grown = _canopy(look)
        labels = np.full(red.shape, Label.MEDIUM, np.uint8)
        labels[_foreign(look, grown)] = Label.OTHER
        labels[grown] = Label.PALE
        labels[grown & (look.redness < LEAST_GREEN)] = Label.GREEN
        labels[red] = Label.RED
        if px_per_mm is not None:
            labels[_rim(look, grown, px_per_mm)] = Label.RIM
        return TissueMap(labels=labels)


# Tones, L* and shares below: found by walking one threshold at a time over 131 rendered trays in white light, each
# also with its white balance and exposure changed at random (sd 10 % red, 15 % blue, 40 % light), towards the least
# error of coverage by crop colour and age; then rounded. Only `GREEN` was set on real photographs instead (wheat and
# peanut on soil, where -8 to -12 are alike), as rendered leaves are yellower than many real ones.
GREEN = -11.0  # redness below this is a green leaf ...
GREEN_IN_SHADE = (
    3.2  # ... and lower by this for each % of local lightness under `SHADE`: leaves light the soil green
)
SHADE = 56.0  # %, lightness of a pixel of that of its surroundings
YELLOW = (53.0, 1.9, 11.0)  # yellowness above 53 + 1.9 redness, redness under 11: pale shoot or young leaf
YELLOW_LEAST_LOCAL = 52.0  # %, darker than this against its surroundings it is shaded mat
RED = (8.5, 1.9, 5.5)  # redness over 8.5, yellowness under 1.9 (redness - 5.5): red leaf; brown is yellower
SURE_RED = (20.0, 1.9, 8.0)  # as `RED`, where soil and stones are no longer
LEAST_RED_SHARE = 0.03  # surely red, of the picture, before the weaker red of `RED` is believed
RED_IN_DARK = 0.9  # redness asked for more for each L* under `DARK`, where a camera's colour is noise
RED_LEAST_LOCAL = 58.0  # %
DARK = 35.0  # L*
STEM = (
    11.0,
    0.5,
    19.0,
)  # L* above the surroundings, share of canopy around, greatest tone: white stem among leaves
GREY_LEAF = (
    0.8,
    45.0,
    -5.5,
)  # share of canopy around, local lightness %, redness under: dull blade among leaves
LEAST_GREEN = -15.0  # redness: paler is a pale shoot
AROUND_MM = 20.0  # width of "surroundings"
AROUND_SHARE = 1 / 25  # of the longer side, where the scale is not known


@dataclass(frozen=True, slots=True, kw_only=True)
class _Look:
    """What the thresholds ask for, float32 (rows, columns) each."""

    lightness: _Plane
    redness: _Plane
    yellowness: _Plane
    above: _Plane
    """L* above the mean of the surroundings."""
    local: _Plane
    """Lightness in % of that of the surroundings (L* + 16 of both)."""
    window: tuple[int, int]
    """Width and height of the surroundings, px."""


def _look(top: Pixels, px_per_mm: float | None) -> _Look:
    lightness, a, b = cv2.split(lab(top))
    window = _window(top.shape[1], top.shape[0], px_per_mm)
    mean = cv2.blur(lightness, window)
    light = lightness + 16
    return _Look(
        lightness=lightness,
        redness=cv2.divide(a, light, scale=100),
        yellowness=cv2.divide(b, light, scale=100),
        above=cv2.subtract(lightness, mean),
        local=cv2.divide(light, mean + 16, scale=100),
        window=window,
    )


def _window(columns: int, rows: int, px_per_mm: float | None) -> tuple[int, int]:
    width = max(columns, rows) * AROUND_SHARE if px_per_mm is None else AROUND_MM * px_per_mm
    side = max(3, int(width) | 1)
    return side, side


def _canopy(look: _Look) -> tuple[Mask, Mask]:
    """Red leaves, and all that has grown."""
    green = _is_green(look)
    red = _is_red(look, green)
    coloured = green | _is_yellow(look) | red
    near = cv2.blur(coloured.astype(np.float32), look.window)
    return red, coloured | _is_stem(look, near) | _is_dull_blade(look, near)


def _is_green(look: _Look) -> Mask:
    shade = np.maximum(0, SHADE - look.local)
    return np.asarray(look.redness < GREEN - GREEN_IN_SHADE * shade)


def _is_yellow(look: _Look) -> Mask:
    start, slope, reddest = YELLOW
    return np.asarray(
        (look.yellowness > start + slope * look.redness)
        & (look.redness < reddest)
        & (look.local > YELLOW_LEAST_LOCAL)
        & (look.lightness > 5)
    )


def _is_red(look: _Look, green: Mask) -> Mask:
    """Red leaves. A tray holds one crop: where green outweighs what is surely red, only the sure is taken."""
    sure = _redder(look, *SURE_RED)
    share = float(sure.mean())
    return _redder(look, *RED) if share > max(LEAST_RED_SHARE, float(green.mean())) else sure


def _redder(look: _Look, least: float, slope: float, brown: float) -> Mask:
    dark = np.maximum(0, DARK - look.lightness)
    return np.asarray(
        (look.redness > least + RED_IN_DARK * dark)
        & (look.yellowness < slope * (look.redness - brown))
        & (look.local > RED_LEAST_LOCAL)
    )


def _is_stem(look: _Look, near: _Plane) -> Mask:
    above, share, tone = STEM
    neutral = cv2.magnitude(look.redness, look.yellowness) < tone
    return np.asarray((look.above > above) & (near > share) & neutral)


def _is_dull_blade(look: _Look, near: _Plane) -> Mask:
    share, local, reddest = GREY_LEAF
    return np.asarray((near > share) & (look.local > local) & (look.redness < reddest))


def _foreign(look: _Look, grown: Mask) -> Mask:
    """Labels, cards and tools: burnt white of one piece."""
    white = ((look.lightness > 92) & ~grown).astype(np.uint8)
    return np.asarray(cv2.morphologyEx(white, cv2.MORPH_OPEN, np.ones((9, 9), np.uint8)) > 0)


def _rim(look: _Look, grown: Mask, px_per_mm: float) -> Mask:
    """Rim and inner walls."""
    return np.zeros(grown.shape, np.bool_)


def _at_the_door(top: Pixels, px_per_mm: float | None) -> None:
    if top.dtype != np.uint8 or top.ndim != 3 or top.shape[2] != 3:
        raise ValueError(f"a top view is uint8 (rows, columns, 3), not {top.dtype} {top.shape}")
    if px_per_mm is not None and not px_per_mm > 0:
        raise ValueError(f"px_per_mm must be positive, not {px_per_mm}")
