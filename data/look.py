"""Look: one line of the look list.

In    nothing
Out   `Look`, `LookKind`, `Urgency`
Not   what is worth a look (`watch.py`, `standing.py`)
"""

from dataclasses import dataclass
from datetime import date
from enum import IntEnum, StrEnum

from data.numbers import PhotoId, TrayId

__all__ = ["Look", "LookKind", "Urgency"]


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
