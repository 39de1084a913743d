"""Frame doubt: by how much a tray that was found may be off, and so whether it may be used unasked.

In    `Finding` (what the search knows of its own finding), `Closer` (what the closer look knows)
Out   the worst corner's expected error in mm; a confidence, 0 to 1
Not   finding the tray (`frame.py`), fitting the constants (`training/judge_frame.py`)

Views that disagree, sides that are seen dimly and a rigid tray that does not suit them are signs of a wrong
place. Each look is judged by itself first: the search by four signs, then both together by three.
"""

import math
from dataclasses import dataclass

from vision.corners import plausible
from vision.framefit import Pose

__all__ = ["Closer", "Finding", "confidence", "expected_mm", "guessed_mm"]

# Logarithm of the worst corner's error in mm: constant, then by logarithm of discord, misfit, spread and the
# worst side's sight. Fitted on trays that the networks had not seen, as are those below.
CALIBRATED = (-1.37, 0.08, 0.67, 1.62, -0.33)
# The same after the closer look: constant, then by logarithm of what the search alone expects, of the closer
# look's spread and of its misfit.
CALIBRATED_CLOSER = (0.37, 0.33, 1.45, 0.55)
LEAST_MISFIT = 0.4  # after the closer look: below it a side is hidden rather than well suited
HALF_SURE_MM = 4.0
STEEPNESS = 3.3
MOST_GUESSED_MM = 7.0  # the closer look sees no side that the search has laid far from its place
MOST_BEYOND = 0.01  # of the photo's longer side
UNSURE = 0.4


@dataclass(frozen=True, slots=True, kw_only=True)
class Finding:
    """A tray fitted to what the networks say, and what tells how far it can be trusted."""

    pose: Pose  # in the reduced photo
    spread_mm: float  # standard error of the least certain corner, from the fit
    discord_mm: float  # by how much the views disagree about the worst corner
    misfit: float  # of a rigid tray, in expected errors
    sight: tuple[
        float, float, float, float
    ]  # how sharply each side is seen: top, bottom, left, right; 1 is well
    rim: float  # share of the rim seen
    peak: float  # highest chance in the map of the whole photo


@dataclass(frozen=True, slots=True, kw_only=True)
class Closer:
    """The same tray after the closer look."""

    pose: Pose  # in the photo reduced less
    misfit: float  # of a rigid tray to the last view, in expected errors


def confidence(finding: Finding, closer: Closer) -> float:
    """Chance, 0 to 1, that no corner is off by more than 4 mm.

    A corner beyond the photo's edge keeps it below 0.5, and so does a search that was too unsure. How often
    it is right stands in `training/NOTES.md`.
    """
    chance = 1 / (1 + (expected_mm(finding, closer) / HALF_SURE_MM) ** STEEPNESS)
    usable = guessed_mm(finding) < MOST_GUESSED_MM and _within(closer.pose)
    return round(float(chance if usable else min(chance, UNSURE)), 3)


def expected_mm(finding: Finding, closer: Closer) -> float:
    """By how much the worst corner may be off after the closer look, mm."""
    constant, before, spread, misfit = CALIBRATED_CLOSER
    return math.exp(
        constant
        + before * math.log(max(guessed_mm(finding), 0.5))
        + spread * math.log(closer.pose.spread_mm)
        + misfit * math.log(max(closer.misfit, LEAST_MISFIT))
    )


def guessed_mm(finding: Finding) -> float:
    """By how much the worst corner may be off after the search alone, mm."""
    constant, discord, misfit, spread, sight = CALIBRATED
    return math.exp(
        constant
        + discord * math.log(max(finding.discord_mm, 0.3))
        + misfit * math.log(max(finding.misfit, 0.2))
        + spread * math.log(finding.spread_mm)
        + sight * math.log(max(min(finding.sight), 1e-3))
    )


def _within(pose: Pose) -> bool:
    """True where the corners can be a tray's and none lies beyond the photo."""
    beyond = MOST_BEYOND * max(pose.size)
    inside = all(
        -beyond < x < pose.size[0] + beyond and -beyond < y < pose.size[1] + beyond for x, y in pose.corners
    )
    points = [(float(x), float(y)) for x, y in pose.corners]
    return inside and plausible(points, pose.size)
