"""Fates: what becomes of a photo that is brought in; a value for each, none is an error.

In    nothing
Out   `Stored`, `NeedsTray`, `NeedsCorners`, `Refused`, `Known`, each with its sentence
Not   how a photo comes to its fate (`book.py`, `intake.py`)
"""

from dataclasses import dataclass

from data.numbers import PhotoId, TrayId
from vision.reason import Reason

__all__ = ["Fate", "Known", "NeedsCorners", "NeedsTray", "Refused", "Stored"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Stored:
    """Matched to a tray, scored and kept."""

    photo_id: PhotoId
    name: str
    tray_id: TrayId
    tray_code: str
    matched_by: str
    coverage: float | None
    doubts: tuple[Reason, ...] = ()  # why another photo would be better, and how to take it

    @property
    def sentence(self) -> str:
        """The fate in words."""
        how = {"tag": "by its tag", "walk": "by the order of the walk", "person": "by you"}[self.matched_by]
        number = "" if self.coverage is None else f", coverage {self.coverage:.0f} %"
        return "; ".join((f"{self.tray_code}, matched {how}{number}", *self.doubts))


@dataclass(frozen=True, slots=True, kw_only=True)
class NeedsTray:
    """Scored and kept, but nobody knows yet which tray it shows."""

    photo_id: PhotoId
    name: str
    tag_number: int | None
    proposal_id: TrayId | None
    proposal_code: str | None
    two_tags: bool = False  # more than one hangs on the tray, so that none names it

    @property
    def sentence(self) -> str:
        """The fate in words."""
        if self.proposal_code is not None:
            asked = f"probably {self.proposal_code}, by the order of the walk: confirm it or choose the tray"
            return f"{asked}; {Reason.TWO_TAGS}" if self.two_tags else asked
        if self.two_tags:
            return "more than one tag hangs on this tray: choose the tray, and leave only its own tag there"
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
    was: str = ""  # what became of it then

    @property
    def sentence(self) -> str:
        """The fate in words."""
        return f"already in the book: {self.was}" if self.was else "already in the book"


Fate = Stored | NeedsTray | NeedsCorners | Refused | Known
