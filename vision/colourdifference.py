"""Colour difference: the mean canopy colours of two photos -> how far apart they look to the eye.

In    two `CanopyColour`s: mean L*, a*, b* (D65, 2 degrees) as `colour.py` measures them, how they were had
Out   `ColourDifference`: CIEDE2000, 0 for equal colours, or None with a `Reason`
Not   measuring the colour (`colour.py`), setting it right (`light.py`), which photos to compare

CIEDE2000 (Sharma, Wu & Dalal 2005, Color Res. Appl. 30, 21-30) is taken from scikit-image. Its first use
loads for some 0.3 s: ask in the background, never on the way of a score.

The patch sets right the colour of the light, not how much of it there was. On five rendered trays a warmer or
cooler lamp moved a corrected colour by 0.2 to 0.5, a third of a stop of exposure by 3.4 to 4.8. So the
difference is told a second time with both made equally light: less light takes L* + 16, a* and b* down alike
(the cube root of CIELAB), and of that third of a stop 0.05 to 0.2 are left.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from enum import Enum
from statistics import fmean

from vision.reason import Reason

__all__ = ["CanopyColour", "ColourDifference", "Seen", "colour_difference", "mean_colour", "seen"]

BLACK = -16.0  # L* at which the cube root of CIELAB would begin
BY_PATCH = "patch"  # `Light.corrected_by`


@dataclass(frozen=True, slots=True, kw_only=True)
class CanopyColour:
    """The mean colour of one canopy, in CIELAB; L*, a* and b* are None where there is no canopy."""

    lightness: float | None
    a: float | None
    b: float | None
    corrected_by: str | None  # "patch", "none"; None where nobody kept it
    method: str  # that told canopy from the rest

    @property
    def lab(self) -> tuple[float, float, float] | None:
        """L*, a*, b*; None where there is no canopy."""
        if self.lightness is None or self.a is None or self.b is None:
            return None
        return self.lightness, self.a, self.b

    @property
    def means(self) -> tuple[bool, str]:
        """How it was had: set right by a patch or not, and by which method."""
        return self.corrected_by == BY_PATCH, self.method


@dataclass(frozen=True, slots=True, kw_only=True)
class ColourDifference:
    """How far apart two colours look; `reason` says why all else is None."""

    value: float | None
    even: float | None = None  # the same, both made equally light
    lighter: float | None = None  # L* of the one less that of the other
    reason: Reason | None = None


class Seen(Enum):
    """From which difference on the eye sees it.

    Bounds of Mokrzycki & Tatol (2011) Colour difference: a survey, as a library's manual quotes them (colour
    0.4.7, `JND_CIE1976`), there for the older formula; that they serve for CIEDE2000 is common practice.
    """

    NOT = 0.0
    CLOSELY = 1.0  # by a practised eye
    BESIDE = 2.0  # by anybody, side by side
    PLAINLY = 3.5


def seen(difference: float) -> Seen:
    """What the eye makes of a difference (CIEDE2000, 0 and above)."""
    return max((one for one in Seen if difference >= one.value), key=lambda one: one.value)


def colour_difference(one: CanopyColour, other: CanopyColour) -> ColourDifference:
    """CIEDE2000 between two canopies; None where one has none, or their means differ or are no patch."""
    reason = _why_not(one, other)
    if reason is not None:
        return ColourDifference(value=None, reason=reason)
    import numpy as np
    from skimage.color import deltaE_ciede2000

    this, that = np.array(one.lab, np.float64), np.array(other.lab, np.float64)
    black = np.array((BLACK, 0.0, 0.0))
    as_light = black + (that - black) * (this[0] - BLACK) / (that[0] - BLACK)
    return ColourDifference(
        value=float(deltaE_ciede2000(this, that)),
        even=float(deltaE_ciede2000(this, as_light)),
        lighter=float(this[0] - that[0]),
    )


def _why_not(one: CanopyColour, other: CanopyColour) -> Reason | None:
    if one.lab is None or other.lab is None:
        return Reason.NO_CANOPY
    if one.method != other.method:
        return Reason.OTHER_METHODS
    patches = {colour.corrected_by == BY_PATCH for colour in (one, other)}
    if patches == {True}:
        return None
    return Reason.NO_PATCH if patches == {False} else Reason.ONE_PATCH


def mean_colour(colours: Sequence[CanopyColour]) -> CanopyColour:
    """The mean of canopies that were had by the same means.

    Raises
    ------
    ValueError
        If there is none, one has no colour, or their means differ.
    """
    if len({colour.means for colour in colours}) != 1:
        raise ValueError("a mean colour needs canopies whose colours were had by the same means")
    had = [colour.lab for colour in colours if colour.lab is not None]
    if len(had) < len(colours):
        raise ValueError("a mean colour needs canopies")
    lightness, a, b = (fmean(axis) for axis in zip(*had, strict=True))
    return replace(colours[0], lightness=lightness, a=a, b=b)
