"""Scored: all that is told of one photo, with the reason for each number that is missing.

In    the numbers of the parts
Out   `Score`, `Scored`; `Refused`, which says why there is none
Not   measuring (`score.py`), what of it the book keeps (`data`)
"""

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from datetime import datetime, timedelta

from vision.colour import Colour
from vision.corners import Corners, CornersFrom
from vision.light import Light
from vision.photo import Pixels, Point
from vision.place import SURE
from vision.reason import Reason
from vision.stand import Stand
from vision.suspect import Suspect
from vision.tissue import Labels
from vision.topview import LONG_MM, SHORT_MM

__all__ = ["Refused", "Score", "Scored", "explained"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Score:
    """All numbers of one photo. A number that cannot be had is None and named in `missing`."""

    name: str
    digest: str
    taken_at: datetime | None
    tag_number: int | None
    corners: Corners | None  # of the stored photo; None where the picture is a top view already
    corners_px: tuple[Point, Point, Point, Point] | None  # of the upright photo
    light: Light
    stand: Stand
    colour: Colour
    suspects: tuple[Suspect, ...]
    px_per_mm: float | None  # of the photo, least over the inner area
    tilt_deg: float | None
    method: str  # tissue method and pipeline with their versions; scores of two methods are never mixed
    seconds: float
    inner_mm: tuple[float, float] = (LONG_MM, SHORT_MM)  # long and short side that all mm and cm2 rest on
    coverage_sd: float | None = None  # standard deviation of coverage, points; None where not told
    camera: str | None = None  # maker and model; None where the photo does not say
    utc_offset: timedelta | None = None  # of the camera's clock, likewise
    notes: tuple[Reason, ...] = ()  # what was found odd about the file or doubtful about the labels
    missing: Mapping[str, Reason] = field(default_factory=dict)  # by name of the number, parts included

    @property
    def corners_from(self) -> CornersFrom:
        """How the corners were had."""
        return CornersFrom.WHOLE if self.corners is None else self.corners.found_by

    @property
    def frame_confidence(self) -> float:
        """0 to 1: how sure the corners are; 1 where a person gave them or said that the picture is a top
        view."""
        return 1.0 if self.corners is None else self.corners.confidence

    @property
    def is_sure(self) -> bool:
        """Whether the corners may be used without asking a person."""
        return self.frame_confidence >= SURE


@dataclass(frozen=True, slots=True, kw_only=True)
class Scored:
    """A score with the pictures that it was measured on."""

    score: Score
    top: Pixels  # sRGB, corrected for the light where a patch was seen
    labels: Labels


@dataclass(frozen=True, slots=True, kw_only=True)
class Refused:
    """A photo that cannot be used, and why."""

    name: str
    digest: str | None  # None where the file could not be read
    reason: Reason
    tag_number: int | None = None
    taken_at: datetime | None = None
    camera: str | None = None
    utc_offset: timedelta | None = None


def explained(score: Score) -> Score:
    """The score with every missing number named, its own and those of its parts."""
    missing: dict[str, Reason] = dict(score.light.reasons)
    missing |= score.stand.reasons
    missing |= score.colour.reasons
    if score.taken_at is None:
        missing["taken_at"] = Reason.NO_TIME
    if score.tag_number is None:
        missing["tag_number"] = Reason.TWO_TAGS if Reason.TWO_TAGS in score.notes else Reason.NO_TAG
    if score.coverage_sd is None:
        missing["coverage_sd"] = next(iter(score.light.doubts), Reason.NO_DOUBT)
    if score.tilt_deg is None:
        missing["tilt_deg"] = Reason.NO_SCALE if score.corners is None else Reason.NO_FOCAL_LENGTH
    if score.corners is None:
        missing |= dict.fromkeys(("corners", "corners_px", "px_per_mm", "suspects"), Reason.NO_SCALE)
    return replace(score, missing=missing)
