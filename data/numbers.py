"""Numbers: what the book keeps of one scored photo.

In    rows, turned into records by `data/tables/rows.py`
Out   `KeptScore` with its gaps and suspects; the ids of trays, photos, scores and suspects
Not   trays and photos (`records.py`), measuring (`vision`)

Shares are % of the inner area where not of the bed, lengths mm from its top left corner, areas cm2. A number
that cannot be had is None, with a `Reason` under its name in `reasons`.
"""

import math
from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime
from enum import StrEnum
from typing import NewType

from vision.reason import RETAKE, Reason

__all__ = [
    "BedCells", "Cells", "KeptGap", "KeptScore", "KeptSuspect", "Outline", "PhotoId", "Said", "ScoreId",
    "SuspectId", "TrayId",
]  # fmt: skip

TrayId = NewType("TrayId", int)
PhotoId = NewType("PhotoId", int)
ScoreId = NewType("ScoreId", int)
SuspectId = NewType("SuspectId", int)

Cells = tuple[tuple[float, ...], ...]  # 6 rows of 12 cells, %
BedCells = tuple[tuple[float | None, ...], ...]  # 6 rows of 12, %; None where too little of the bed shows
Outline = tuple[tuple[float, float], ...]  # (x, y) in mm


class Said(StrEnum):
    """A person's word on a suspect."""

    MOLD = "mold"
    NOT_MOLD = "not mold"


@dataclass(frozen=True, slots=True, kw_only=True)
class KeptGap:
    """A connected piece without canopy."""

    x_mm: float
    y_mm: float
    area_cm2: float
    outline_mm: Outline = ()  # of earlier scores alone: labels have it


@dataclass(frozen=True, slots=True, kw_only=True)
class KeptSuspect:
    """A patch that may be mold; open until a person has said what it is."""

    id: SuspectId
    x_mm: float | None
    y_mm: float | None
    area_cm2: float | None
    confidence: float  # 0-1
    why: str
    outline_mm: Outline = ()
    said: Said | None = None
    closed_at: datetime | None = None  # it closed itself: the next day's photo no longer showed it
    closed_why: str = ""

    @property
    def is_open(self) -> bool:
        """Whether nobody has said what it is, and it has not closed itself."""
        return self.said is None and self.closed_at is None


@dataclass(frozen=True, slots=True, kw_only=True)
class KeptScore:
    """All numbers of one photo by one version of the method."""

    id: ScoreId
    photo_id: PhotoId
    method: str
    sure: bool  # False: the frame is not sure, so the numbers feed no comparison and no look list
    coverage: float | None
    green: float | None
    pale: float | None
    red: float | None
    cells: Cells
    uniformity: float | None
    low_quarter: float | None
    variation: float | None
    clumping: float | None
    edge_deficit: float | None
    gradient_x: float | None
    gradient_y: float | None
    gap_share: float | None
    gaps: tuple[KeptGap, ...]
    bed_share: float | None  # canopy in % of the growing bed, for comparing media at different heights
    bed_uniformity: float | None
    bed_cells: BedCells | None  # None where it was scored before the bed was measured
    lightness: float | None
    a: float | None
    b: float | None
    chroma: float | None
    hue: float | None
    dark_green: float | None
    dark_green_clipped: float | None  # green canopy whose hue lay outside the index, %
    spread: float | None
    suspects: tuple[KeptSuspect, ...]
    corners_from: str | None  # "station", "frame", "hand", "whole"
    frame_confidence: float | None
    corners_px: tuple[tuple[float, float], ...]  # in the upright photo; TL, TR, BR, BL of the top view
    px_per_mm: float | None
    tilt_deg: float | None
    exposure: float | None
    clipped_pct: float | None
    dark_pct: float | None
    glare_pct: float | None
    sharpness: float | None
    blur_mm: float | None
    cast: float | None
    corrected_by: str | None
    seconds: float | None
    reasons: Mapping[str, Reason | str] = field(default_factory=dict)
    notes: tuple[Reason | str, ...] = ()  # what was odd about the file or is doubtful about the score
    inner_long_mm: float = 508.0  # that all mm and cm2 rest on
    inner_short_mm: float = 254.0
    mended: bool = False  # a person has drawn its canopy
    coverage_sd: float | None = None  # how far coverage may be off, one standard deviation, points

    @property
    def doubts(self) -> tuple[Reason, ...]:
        """Those of its notes that another photo would be free of; none once a person has drawn the canopy."""
        notes = () if self.mended else self.notes
        return tuple(note for note in notes if isinstance(note, Reason) and note in RETAKE)

    @property
    def top_px_per_mm(self) -> float:
        """Pixels of the top view (1016 x 508) per mm: geometric mean of both directions, as areas have it."""
        return math.sqrt(1016.0 * 508.0 / (self.inner_long_mm * self.inner_short_mm))
