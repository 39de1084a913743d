"""Records: what the book hands out. Each is frozen and light: no numpy, no picture, no database.

In    rows, turned into records by `data/rows.py` and nowhere else
Out   `Tray`, `Tile`, `Day`, `KeptScore`, `PhotoRow`, `Look` and the fates of a photo
Not   reading or writing the book (`book.py`), measuring (`vision`)

Shares are % of the inner area, lengths mm from its top left corner, areas cm2. A number that cannot be had is
None, with a `Reason` under its name in `reasons`. Times are local times of the rack, without a zone.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date, datetime
from enum import IntEnum, StrEnum
from pathlib import Path
from typing import NewType

from vision.reason import Reason

__all__ = [
    "Cells", "Change", "Day", "DayNumbers", "Fate", "GrowthPoint", "KeptGap", "KeptScore", "KeptSuspect",
    "Known", "Look", "LookKind", "NeedsCorners", "NeedsTray", "NewTray", "PhotoId", "PhotoRow", "PhotoState",
    "Pictures", "Refused", "Said", "ScoreId", "SeenSuspect", "Shelf", "Stored", "SuspectId", "TakenFrom",
    "Tile", "Tray", "TrayId", "TrayType", "Urgency", "fate_of",
]  # fmt: skip

TrayId = NewType("TrayId", int)
PhotoId = NewType("PhotoId", int)
ScoreId = NewType("ScoreId", int)
SuspectId = NewType("SuspectId", int)

Cells = tuple[tuple[float, ...], ...]  # 6 rows of 12 cells, %
Outline = tuple[tuple[float, float], ...]  # (x, y) in mm


class Said(StrEnum):
    """A person's word on a suspect."""

    MOLD = "mold"
    NOT_MOLD = "not mold"


class TakenFrom(StrEnum):
    """How the time of a photo is known."""

    CAMERA = "camera"
    FILE = "file"


class PhotoState(StrEnum):
    """Where a photo stands."""

    STORED = "stored"  # matched to a tray and scored
    NEEDS_TRAY = "needs a tray"
    NEEDS_CORNERS = "needs corners"
    REFUSED = "refused"
    LEFT_OUT = "left out"  # by a person


# --- trays


@dataclass(frozen=True, slots=True, kw_only=True)
class TrayType:
    """The measures of one kind of tray, mm."""

    id: int
    name: str
    outer_long_mm: float
    outer_short_mm: float
    inner_long_mm: float
    inner_short_mm: float
    rim_height_mm: float


@dataclass(frozen=True, slots=True, kw_only=True)
class NewTray:
    """A tray that is to be added. Crop and medium are named; unknown names are added to the book."""

    code: str
    crop: str
    medium: str
    sown_at: datetime
    tag_number: int | None = None
    shelf: str = ""
    position: int | None = None  # counted along the shelf from 1; None: after the last one
    block: str | None = None
    trial: str | None = None
    tray_type: str = "10 x 20 inch"
    seed_lot: str | None = None
    seating: str = "in the tray"  # or "on an upturned tray"
    sowing_rate_g: float | None = None  # dry seed per tray
    soak_hours: float | None = None
    blackout_from: datetime | None = None
    blackout_to: datetime | None = None
    stacked: bool | None = None
    watering: str | None = None  # "top", "bottom" or "both"
    feed: str | None = None
    heat_mat: bool | None = None
    light: str | None = None
    note: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Tray:
    """One physical tray and what grows in it, with its growing conditions; None where nobody noted it."""

    id: TrayId
    code: str
    crop: str
    medium: str
    sown_at: datetime
    done_at: datetime | None  # harvested or thrown away; None while it grows
    tag_number: int | None
    shelf: str
    position: int
    trial: str | None
    block: str | None
    tray_type: str
    seed_lot: str | None
    seating: str
    sowing_rate_g: float | None
    soak_hours: float | None
    blackout_from: datetime | None
    blackout_to: datetime | None
    stacked: bool | None
    watering: str | None
    feed: str | None
    heat_mat: bool | None
    light: str | None
    note: str

    def day(self, at: date) -> int:
        """Whole days since sowing by the rack's calendar; the day of sowing is 0."""
        return (at - self.sown_at.date()).days


@dataclass(frozen=True, slots=True, kw_only=True)
class Shelf:
    """One shelf of the rack and its growing trays in order of position."""

    name: str
    trays: tuple[Tray, ...]


# --- scores


@dataclass(frozen=True, slots=True, kw_only=True)
class KeptGap:
    """A connected piece without canopy."""

    x_mm: float
    y_mm: float
    area_cm2: float
    outline_mm: Outline = ()


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

    @property
    def is_open(self) -> bool:
        """Whether nobody has said yet what it is."""
        return self.said is None


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
    notes: tuple[Reason | str, ...] = ()  # what was odd about the file


@dataclass(frozen=True, slots=True, kw_only=True)
class Pictures:
    """Where the pictures of one score lie in the cache; they may be missing and can be made again."""

    top_view: Path  # JPEG 1016 x 508
    labels: Path  # PNG, tissue numbers 0-9
    thumbnail: Path  # JPEG 320 x 160


@dataclass(frozen=True, slots=True, kw_only=True)
class Day:
    """One photo of one tray on its day."""

    photo_id: PhotoId
    taken_at: datetime
    taken_from: TakenFrom
    day: int  # days since sowing
    state: PhotoState
    reason: Reason | str | None  # why it is refused or unsure
    photo: Path  # the original
    pictures: Pictures | None  # None where nothing was scored
    score: KeptScore | None


@dataclass(frozen=True, slots=True, kw_only=True)
class GrowthPoint:
    """Coverage of one tray at one day."""

    tray_id: TrayId
    code: str
    day: float  # days since sowing, with the time of day
    coverage: float
    method: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Tile:
    """What the Bench shows of one growing tray."""

    tray_id: TrayId
    code: str
    crop: str
    medium: str
    shelf: str
    position: int
    day: int  # today's day since sowing
    photo_id: PhotoId | None  # the newest usable photo
    taken_at: datetime | None
    thumbnail: Path | None
    coverage: float | None
    growth: tuple[tuple[int, float], ...]  # (day, coverage %), oldest first, one a day
    open_suspects: int  # of the newest photo
    mold: bool  # a person has said so of this tray
    photographed_today: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class DayNumbers:
    """What the look list asks of one photo of a growing tray; numbers None where the photo gave none."""

    tray_id: TrayId
    photo_id: PhotoId
    taken_at: datetime
    refusal: Reason | str | None
    needs_corners: bool
    method: str | None
    sure: bool
    coverage: float | None
    uniformity: float | None
    edge_deficit: float | None
    gap_share: float | None


@dataclass(frozen=True, slots=True, kw_only=True)
class SeenSuspect:
    """A suspect of a growing tray, with the photo on which it was seen."""

    tray_id: TrayId
    photo_id: PhotoId
    taken_at: datetime
    x_mm: float | None
    y_mm: float | None
    area_cm2: float | None
    confidence: float
    said: Said | None


# --- photos


@dataclass(frozen=True, slots=True, kw_only=True)
class PhotoRow:
    """One row of Intake."""

    id: PhotoId
    name: str
    added_at: datetime
    taken_at: datetime
    taken_from: TakenFrom
    tag_number: int | None
    state: PhotoState
    tray_id: TrayId | None
    tray_code: str | None
    matched_by: str | None  # "tag", "walk" or "person"
    proposal_id: TrayId | None  # by the order of the walk; a person has to confirm it
    proposal_code: str | None
    reason: Reason | str | None
    photo: Path | None  # the original; None where nothing of it could be kept
    thumbnail: Path | None
    coverage: float | None

    @property
    def sentence(self) -> str:
        """The photo's fate in words."""
        return fate_of(self).sentence


@dataclass(frozen=True, slots=True, kw_only=True)
class Stored:
    """Matched to a tray, scored and kept."""

    photo_id: PhotoId
    name: str
    tray_id: TrayId
    tray_code: str
    matched_by: str
    coverage: float | None

    @property
    def sentence(self) -> str:
        """The fate in words."""
        how = {"tag": "by its tag", "walk": "by the order of the walk", "person": "by you"}[self.matched_by]
        number = "" if self.coverage is None else f", coverage {self.coverage:.0f} %"
        return f"{self.tray_code}, matched {how}{number}"


@dataclass(frozen=True, slots=True, kw_only=True)
class NeedsTray:
    """Scored and kept, but nobody knows yet which tray it shows."""

    photo_id: PhotoId
    name: str
    tag_number: int | None
    proposal_id: TrayId | None
    proposal_code: str | None

    @property
    def sentence(self) -> str:
        """The fate in words."""
        if self.proposal_code is not None:
            return f"probably {self.proposal_code}, by the order of the walk: confirm it or choose the tray"
        if self.tag_number is None:
            return "no tag read: choose the tray"
        return f"tag {self.tag_number} belongs to no tray that grew at that time: choose the tray"


@dataclass(frozen=True, slots=True, kw_only=True)
class NeedsCorners:
    """Kept, but the tray's rim is not sure, so its numbers count only once the corners are set."""

    photo_id: PhotoId
    name: str
    tray_id: TrayId | None
    tray_code: str | None

    @property
    def sentence(self) -> str:
        """The fate in words."""
        tray = "" if self.tray_code is None else f"{self.tray_code}: "
        return f"{tray}{Reason.UNSURE_FRAME}"


@dataclass(frozen=True, slots=True, kw_only=True)
class Refused:
    """Not used. `photo_id` is None where the file could not even be read, so that nothing is remembered."""

    photo_id: PhotoId | None
    name: str
    reason: Reason | str
    tray_id: TrayId | None = None
    tray_code: str | None = None

    @property
    def sentence(self) -> str:
        """The fate in words."""
        tray = "" if self.tray_code is None else f"{self.tray_code}: "
        return f"{tray}not used: {self.reason}"


@dataclass(frozen=True, slots=True, kw_only=True)
class Known:
    """Brought in before: nothing was done."""

    photo_id: PhotoId
    name: str

    @property
    def sentence(self) -> str:
        """The fate in words."""
        return "already in the book"


Fate = Stored | NeedsTray | NeedsCorners | Refused | Known


def fate_of(row: PhotoRow) -> Fate:
    """The fate that a photo in the book has now."""
    if row.state is PhotoState.STORED and row.tray_id is not None and row.tray_code is not None:
        return Stored(
            photo_id=row.id, name=row.name, tray_id=row.tray_id, tray_code=row.tray_code,
            matched_by=row.matched_by or "person", coverage=row.coverage,
        )  # fmt: skip
    if row.state is PhotoState.NEEDS_TRAY:
        return NeedsTray(
            photo_id=row.id, name=row.name, tag_number=row.tag_number,
            proposal_id=row.proposal_id, proposal_code=row.proposal_code,
        )  # fmt: skip
    if row.state is PhotoState.NEEDS_CORNERS:
        return NeedsCorners(photo_id=row.id, name=row.name, tray_id=row.tray_id, tray_code=row.tray_code)
    reason = row.reason or "left out by you"
    return Refused(
        photo_id=row.id, name=row.name, reason=reason, tray_id=row.tray_id, tray_code=row.tray_code
    )


# --- what needs a look


class Urgency(IntEnum):
    """How soon; `words` for the screen. The list is sorted by it, 1 first."""

    NOW = 1
    TODAY = 2
    SOON = 3

    @property
    def words(self) -> str:
        """How soon, in words."""
        return {1: "now", 2: "today", 3: "soon"}[int(self)]


class LookKind(StrEnum):
    """What is wrong, in a few words."""

    MOLD = "mold"
    SUSPECT = "possible mold"
    VANISHED = "canopy vanishes"
    LAGGING = "lags behind"
    UNEVEN = "uneven"
    GAPS = "gaps stay"
    EDGE = "thin edge"
    UNMATCHED = "photo to confirm"
    NO_PHOTO = "no photo today"
    UNUSABLE = "photo not used"


@dataclass(frozen=True, slots=True, kw_only=True)
class Look:
    """One line of the look list."""

    tray_id: TrayId
    code: str
    what: LookKind
    urgency: Urgency
    since: date
    sentence: str  # with the numbers behind it
    first: str  # what to do first
    caution: str | None = None  # to be shown with it, never left out
    photo_id: PhotoId | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Change:
    """A person's change that can be taken back."""

    id: int
    text: str  # "mold on A5"
    made_at: datetime
