"""Look: one line of the look list.

In    nothing
Out   `Look`, `LookKind`, `Urgency`; the name of a day in words
Not   what is worth a look (`watch.py` and its neighbours), how soon (`looklist/urgency.py`)
"""

from dataclasses import dataclass
from datetime import date
from enum import IntEnum, StrEnum
from functools import lru_cache

from data.numbers import PhotoId, TrayId
from data.sentence import Sentence

__all__ = ["Look", "LookKind", "Urgency", "day_name"]


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
    """What is wrong, in a few words; in the order of the list among what is equally urgent."""

    MOLD = "mold"
    SUSPECT = "possible mold"
    VANISHED = "canopy vanishes"
    DRY = "drying out"
    STACK = "warm and wet under the stack"
    EDGE = "thin edge"
    PATCHY = "comes up patchy"
    GAPS = "gaps stay"
    LATE = "late to come up"
    LAGGING = "lags behind"
    UNEVEN = "uneven"
    PALING = "turns pale"
    UNMATCHED = "photo to confirm"
    NO_PHOTO = "no photo today"
    UNUSABLE = "photo not used"
    DOUBTED = "photo in doubt"
    READY = "ready to cut"


@dataclass(frozen=True, slots=True, kw_only=True)
class Look:
    """One line of the look list; further reasons of the same tray stand in `also`, less grave ones later."""

    tray_id: TrayId
    code: str
    what: LookKind
    urgency: Urgency
    since: date
    sentence: str  # with the numbers behind it
    first: str  # what to do first
    caution: str | None = None  # to be shown with it, never left out
    photo_id: PhotoId | None = None
    why_urgent: str = ""  # how soon, in words, and why
    size: float | None = None  # how bad, in the unit of its sentence: an answered look that grows comes back
    also: tuple["Look", ...] = ()
    asks_kind_of: str = ""  # a medium: what to do first depends on its kind, and nobody has said it
    trays: tuple[TrayId, ...] = ()  # of an entry for several trays, all of them; else empty

    @property
    def whole(self) -> tuple["Look", ...]:
        """This reason and the others of the same tray."""
        return (self, *self.also)


MONTHS = (
    Sentence("January"), Sentence("February"), Sentence("March"), Sentence("April"), Sentence("May"),
    Sentence("June"), Sentence("July"), Sentence("August"), Sentence("September"), Sentence("October"),
    Sentence("November"), Sentence("December"),
)  # fmt: skip


@lru_cache(256)  # those of one morning are few
def day_name(day: date) -> Sentence:
    """ "7 March"."""
    return Sentence("{day} {month}", day=day.day, month=MONTHS[day.month - 1])
