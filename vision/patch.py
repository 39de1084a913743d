"""Patch: what was measured on one patch that may be mold -> how sure that is, and why, in words.

In    `Patch`
Out   `Suspect`
Not   finding and measuring patches (`suspects.py`), what day and medium say to it (`suspect.py`)
"""

from dataclasses import dataclass

import numpy as np

from vision.suspect import LEAST_CONFIDENCE, MAY_BE_HAIRS, UNKNOWN_WHITE, Suspect

__all__ = ["LEAST_OF_PLAIN", "WHITE", "Patch", "believed", "judged"]

LEAST_OF_PLAIN = 0.25  # confidence by the plain rule, which raises more false ones
COMMON = 0.25  # of all fuzz: many small patches are hulls of that colour
WHITE = 75.0  # L*: root hairs and burnt spots are lighter, felt is grey
ALIKE = 3.0  # L* and tone: nearer to the medium than that nobody sees a difference on a grainy ground
HALF_SURE_CM2 = 2.1  # of mold expected in a patch, its cells' chances added up
# No less: bright felt looks like glare in a photo a stop too light (one of five patches so made).
IN_GLARE = 0.5
AT_WALL = 0.5  # times the confidence: a wall between leaves is grey and bare, too


@dataclass(frozen=True, slots=True, kw_only=True)
class Patch:
    """What was measured on one patch."""

    x_mm: float
    y_mm: float
    area_cm2: float
    width_mm: float
    outline_mm: tuple[tuple[float, float], ...]
    at_wall: bool
    in_glare: bool
    """False of what is white itself, as glare is."""
    on_thing: bool
    in_one: float
    """Share of its convex hull: felt spreads in one piece, a chain of hulls does not."""
    of_all: float
    """Share of all fuzz in the top view."""
    among_leaves: bool
    greyer: float | None
    """Tone of the bare ground around less the patch's own (0 is grey); None where no ground is seen."""
    lighter: float | None
    """L* of the patch less that of the bare ground around."""
    lightness: float
    across_hulls: bool
    dull: float
    """1 for a patch that is dull as felt is, less for one that glitters (`sparkle.py`)."""
    expected_cm2: float | None
    """Chances of its cells added up; None where only the plain rule has marked it."""


def judged(patch: Patch) -> Suspect:
    """By the plain rule: from size and from how far the patch stands out; less at a wall."""
    size = patch.area_cm2 / (patch.area_cm2 + 1.0)
    apart = 0.5 if patch.greyer is None or patch.lighter is None else _apart(patch.greyer, patch.lighter)
    spread = min(1.0, max(0.0, (patch.in_one - 0.3) / 0.4))
    rare = min(1.0, patch.of_all / COMMON)
    return _told(patch, size * apart * spread * rare * (0.4 if patch.at_wall else 1.0), LEAST_OF_PLAIN)


def believed(patch: Patch) -> Suspect:
    """By its cells' chances: the more mold is expected, the surer; less at a wall, less where it glitters."""
    expected = patch.expected_cm2 or 0.0
    wall = AT_WALL if patch.at_wall else 1.0
    return _told(patch, expected / (expected + HALF_SURE_CM2) * wall * patch.dull, LEAST_CONFIDENCE)


def _told(patch: Patch, confidence: float, least: float) -> Suspect:
    """Half as sure of burnt white, which may be root hairs, of what lies in glare, and of smooth things.

    Glare and things take none off the list that was on it: it would pass for mold that is no longer there.
    """
    white = patch.lightness > WHITE
    confidence *= MAY_BE_HAIRS if white else 1.0
    if patch.in_glare or patch.on_thing:
        confidence = max(confidence * IN_GLARE, min(confidence, least))
    return Suspect(
        x_mm=patch.x_mm,
        y_mm=patch.y_mm,
        area_cm2=patch.area_cm2,
        confidence=round(confidence, 3),
        why=_why(patch, white),
        outline_mm=patch.outline_mm,
        white=white,
    )


def _apart(greyer: float, lighter: float) -> float:
    """0-1: a tone 20 greyer than the ground, or 20 in L* off, is as far as it goes."""
    return min(1.0, float(np.hypot(max(0.0, greyer), lighter)) / 20)


def _why(patch: Patch, white: bool) -> str:
    where = "" if patch.greyer is None else " on the bare medium"
    if patch.across_hulls or patch.among_leaves:
        where = " across hulls" if patch.across_hulls else " between leaves"
    parts = [f"{'white' if white else 'grey'} web {patch.width_mm:.0f} mm wide{where}"]
    if patch.greyer is None or patch.lighter is None:
        parts.append("no bare medium beside it to compare with")
    else:
        parts.append(_beside(patch.greyer, patch.lighter))
    parts.append(UNKNOWN_WHITE if white else "not white fans along roots")
    if patch.dull < 1:
        parts.append("it glitters a little, as wet ground does")
    if patch.at_wall:
        parts.append("beside the tray's wall, so it may be the wall")
    if patch.on_thing:
        parts.append("smooth as a glove, a tool or a drop on the lens, so it may be that")
    if patch.in_glare:
        parts.append("in the glare of a lamp, so it may be that")
    return "; ".join(parts)


def _beside(greyer: float, lighter: float) -> str:
    shade = "as light as" if abs(lighter) <= ALIKE else "lighter than" if lighter > 0 else "darker than"
    return f"{'greyer and ' if greyer > ALIKE else ''}{shade} the medium around"
