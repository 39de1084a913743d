"""Records: what the book hands out. Each is frozen and light: no numpy, no picture, no database.

In    rows, turned into records by `data/tables/rows.py` and nowhere else
Out   `Tray`, `Tile`, `Day`, `PhotoRow`, ...; with them, so that one place is enough to ask, the numbers of a
      score (`numbers.py`), the fates of a photo (`fates.py`) and the look list (`look.py`)
Not   reading or writing the book (`book.py`), measuring (`vision`)

Shares are % of the inner area, lengths mm from its top left corner, areas cm2. A number that cannot be had is
None, with a `Reason` under its name in `reasons`. Times are local times of the rack, without a zone.
"""

from dataclasses import dataclass
from datetime import date, datetime
from enum import StrEnum
from pathlib import Path
from typing import NamedTuple

from data.fates import Fate, Known, NeedsCorners, NeedsTray, Refused, Stored
from data.look import Look, LookKind, Urgency
from data.numbers import (
    BedCells,
    Cells,
    KeptGap,
    KeptScore,
    KeptSuspect,
    PhotoId,
    Said,
    ScoreId,
    SuspectId,
    TrayId,
)
from vision.reason import Reason

__all__ = [
    "BedCells", "Cells", "Change", "Day", "DayNumbers", "EarlierDay", "Fate", "GrowthPoint", "KeptGap",
    "KeptScore", "KeptSuspect", "Known", "Look", "LookKind", "NeedsCorners", "NeedsTray", "NewTray",
    "PhotoId", "PhotoRow", "PhotoState", "Pictures", "Refused", "Said", "ScoreId", "SeenSuspect", "Shelf",
    "Stored", "SuspectId", "TakenFrom", "Tile", "Tray", "TrayId", "Urgency", "fate_of",
]  # fmt: skip


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
    ended: str | None = None  # "cut" or "thrown away"; None while it grows, or where nobody said
    ended_why: str = ""

    def day(self, at: date) -> int:
        """Whole days since sowing by the rack's calendar; the day of sowing is 0."""
        return (at - self.sown_at.date()).days


@dataclass(frozen=True, slots=True, kw_only=True)
class Shelf:
    """One shelf of the rack and its growing trays in order of position."""

    name: str
    trays: tuple[Tray, ...]


# --- days of a tray


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
    medium: str
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
    mold: bool  # a person has said so of this tray


class DayNumbers(NamedTuple):
    """What the look list asks of one photo of a growing tray; numbers None where the photo gave none.

    A tuple: thousands are made each morning, in a third of a frozen dataclass's time.
    """

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
    lightness: float | None = None
    dark_green: float | None = None
    corrected: bool = False  # colours set right by a patch, so that days can be compared
    cells: bytes = b""  # packed: `places.cells_in`
    bed_share: float | None = None  # canopy in % of the growing bed, to be held against other media
    doubts: tuple[Reason, ...] = ()  # why another photo would be better; none once a person drew the outline


@dataclass(frozen=True, slots=True, kw_only=True)
class EarlierDay:
    """One day of an earlier tray of a crop, to hold a new one against."""

    crop: str
    day: int  # days since sowing
    method: str
    coverage: float
    bare: float | None = None  # share of cells that are nearly bare, %
    bed_share: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class SeenSuspect:
    """A suspect of a growing tray, with the photo on which it was seen."""

    id: SuspectId
    tray_id: TrayId
    photo_id: PhotoId
    taken_at: datetime
    x_mm: float | None
    y_mm: float | None
    area_cm2: float | None
    confidence: float
    said: Said | None
    since: PhotoId | None = None  # the earlier photo that its own was laid on; None where that was not done
    was: tuple[SuspectId, ...] = ()  # which suspects of that photo it is; none: it is new
    closed: bool = False  # it closed itself, the next day's photo no longer showed it


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
    doubts: tuple[Reason, ...] = ()  # why another photo would be better; none once a person drew the outline
    two_tags: bool = False  # more than one hangs on its tray

    @property
    def sentence(self) -> str:
        """The photo's fate in words."""
        return fate_of(self).sentence


def fate_of(row: PhotoRow) -> Fate:
    """The fate that a photo in the book has now."""
    if row.state is PhotoState.STORED and row.tray_id is not None and row.tray_code is not None:
        return Stored(
            photo_id=row.id, name=row.name, tray_id=row.tray_id, tray_code=row.tray_code,
            matched_by=row.matched_by or "person", coverage=row.coverage, doubts=row.doubts,
        )  # fmt: skip
    if row.state is PhotoState.NEEDS_TRAY:
        return NeedsTray(
            photo_id=row.id, name=row.name, tag_number=row.tag_number,
            proposal_id=row.proposal_id, proposal_code=row.proposal_code, two_tags=row.two_tags,
        )  # fmt: skip
    if row.state is PhotoState.NEEDS_CORNERS:
        return NeedsCorners(photo_id=row.id, name=row.name, tray_id=row.tray_id, tray_code=row.tray_code)
    reason = row.reason or "left out by you"
    return Refused(
        photo_id=row.id, name=row.name, reason=reason, tray_id=row.tray_id, tray_code=row.tray_code
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Change:
    """A person's change that can be taken back."""

    id: int
    text: str  # "mold on A5"
    made_at: datetime
