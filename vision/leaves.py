"""Leaves: tones -> where green, pale and red canopy stands, by plain thresholds.

In    `Tones` of a top view
Out   masks (rows, columns): all that has grown, and what of it is red or green
Not   the ground between (`ground.py`), labels (`tissue.py`)

How the thresholds were had. Those for yellow, red, stems and dull blades: each was walked alone, in turns,
over 133 rendered trays in white light (and again with white balance and exposure changed at random: sd 10 %
red, 15 % blue, 40 % light) towards the least error of coverage by crop colour and age, then rounded; `YELLOW`
and `BLADE_REDNESS` once more on the trays as they are, so far as felt between leaves stayed to be seen.
`GREEN` and `SURE_RED` come from real photographs of wheat and peanut on soil instead: rendered leaves are
yellower than many real ones (-8 to -12 do alike there), and bluish soil is redder than any rendered medium.
"""

from dataclasses import dataclass

import cv2
import numpy as np

from vision.tones import Mask, Plane, Tones, colourfulness, plane

__all__ = ["Leaves", "find_leaves"]

GREEN = -11.0  # redness below this is a green leaf ...
SHADE = 56.0  # ... but soil between leaves is lit green by them: below this local lightness, in %,
GREEN_IN_SHADE = 3.2  # so much less redness is asked for with each %

YELLOW = 50.0  # yellowness above this plus 1.9 redness is a pale shoot or young leaf; a mat is redder
YELLOW_SLOPE = 1.9
YELLOW_REDDEST = 11.0
YELLOW_LEAST_LOCAL = 52.0  # %
YELLOW_DARKEST = 5.0  # L*

RED = 8.5  # redness above this, where it
BROWN = 5.5  # exceeds this by more than
BROWN_SLOPE = 1.9  # yellowness / 1.9, is a red leaf; brown media are yellower
SURE_RED, SURE_BROWN = 20.0, 8.0  # the same, beyond soil and stones
LEAST_RED_SHARE = 0.03  # of the picture surely red, before the weaker red is believed
DARK, RED_IN_DARK = (
    35.0,
    0.9,
)  # with each L* under 35 so much more redness is asked for: there colour is noise
RED_LEAST_LOCAL = 58.0  # %

STEM_ABOVE = 11.0  # L* above the surroundings,
STEM_CANOPY = 0.5  # with so much canopy around,
STEM_TONE = 19.0  # and hardly any colour: a white stem between leaves

BLADE_CANOPY = 0.8  # with so much canopy around,
BLADE_LOCAL = 45.0  # not dark, %,
BLADE_REDNESS = -2.0  # and a little green: a dull blade between leaves

PALE = -15.0  # redness above which what has grown is pale: leaves that saw no light, stems


@dataclass(frozen=True, slots=True, kw_only=True)
class Leaves:
    """Masks, (rows, columns)."""

    grown: Mask
    """All canopy: pale, green, red."""
    green: Mask
    red: Mask


def find_leaves(tones: Tones) -> Leaves:
    """Canopy by colour, then what stands between coloured leaves and is lighter or duller than they."""
    green = _green(tones)
    red = _red(tones, green)
    coloured = green | red | _yellow(tones)
    near = plane(cv2.blur(coloured.astype(np.float32), tones.around))
    grown = coloured | _stem(tones, near) | _dull_blade(tones, near)
    return Leaves(grown=grown, green=grown & ~red & (tones.redness < PALE), red=red)


def _green(tones: Tones) -> Mask:
    shade = np.maximum(0, SHADE - tones.local)
    return np.asarray(tones.redness < GREEN - GREEN_IN_SHADE * shade)


def _yellow(tones: Tones) -> Mask:
    return np.asarray(
        (tones.yellowness > YELLOW + YELLOW_SLOPE * tones.redness)
        & (tones.redness < YELLOW_REDDEST)
        & (tones.local > YELLOW_LEAST_LOCAL)
        & (tones.lightness > YELLOW_DARKEST)
    )


def _red(tones: Tones, green: Mask) -> Mask:
    """Red leaves. A tray holds one crop: where green outweighs what is surely red, only that is taken."""
    sure = _redder(tones, SURE_RED, SURE_BROWN)
    believed = float(sure.mean()) > max(LEAST_RED_SHARE, float(green.mean()))
    return _redder(tones, RED, BROWN) if believed else sure


def _redder(tones: Tones, red: float, brown: float) -> Mask:
    dark = np.maximum(0, DARK - tones.lightness)
    return np.asarray(
        (tones.redness > red + RED_IN_DARK * dark)
        & (tones.yellowness < BROWN_SLOPE * (tones.redness - brown))
        & (tones.local > RED_LEAST_LOCAL)
    )


def _stem(tones: Tones, near: Plane) -> Mask:
    colourless = colourfulness(tones.redness, tones.yellowness) < STEM_TONE
    return np.asarray((tones.above > STEM_ABOVE) & (near > STEM_CANOPY) & colourless)


def _dull_blade(tones: Tones, near: Plane) -> Mask:
    return np.asarray((near > BLADE_CANOPY) & (tones.local > BLADE_LOCAL) & (tones.redness < BLADE_REDNESS))
