"""Colour apart: how far a tray's canopy is in colour from the photo before, and from its trusted mates.

In    a book, a tray, one of its photos
Out   `ColourApart`: differences as the eye sees them (CIEDE2000), or why there is none
Not   the arithmetic (`vision/colourdifference.py`), paling (`looklist/paling.py`)

Slow the first time (some 0.3 s, a library is loaded): for a worker.
"""

from dataclasses import dataclass
from datetime import datetime

from data.chapters.reader import Reader
from data.records import Day, KeptScore, PhotoId, PhotoState, TrayId
from data.tables.colourrows import MateColour
from vision.colourdifference import CanopyColour, ColourDifference, colour_difference, mean_colour
from vision.reason import Reason

__all__ = ["ColourApart", "colour_apart"]


@dataclass(frozen=True, slots=True, kw_only=True)
class ColourApart:
    """The colour of one photo's canopy beside that of others; `lighter` is this photo less the others."""

    photo_id: PhotoId
    before: ColourDifference
    before_at: datetime | None  # when the photo before was taken
    mates: ColourDifference | None  # None where no mate on the trusted medium has a photo of that day
    mate_codes: tuple[str, ...] = ()
    medium: str = ""  # the trusted one


def colour_apart(book: Reader, tray_id: TrayId, photo_id: PhotoId) -> ColourApart | None:
    """How far the photo's canopy is in colour from others; None where it has no score.

    Raises
    ------
    KeyError
        If there is no such tray.
    """
    days = [day for day in book.days(tray_id) if day.score is not None and day.state != PhotoState.LEFT_OUT]
    at = next((number for number, day in enumerate(days) if day.photo_id == photo_id), None)
    if at is None:
        return None
    now, score = days[at], days[at].score
    assert score is not None
    if not score.sure:
        unsure = ColourDifference(value=None, reason=Reason.UNSURE_FRAME)
        return ColourApart(photo_id=photo_id, before=unsure, before_at=None, mates=None)
    colour = _colour_of(score)
    earlier = _newest_sure(days[:at])
    mates = _comparable(colour, book.mate_colours(tray_id, now.taken_at.date(), score.method))
    return ColourApart(
        photo_id=photo_id,
        before=ColourDifference(value=None, reason=Reason.FIRST_PHOTO)
        if earlier is None or earlier.score is None
        else colour_difference(colour, _colour_of(earlier.score)),
        before_at=None if earlier is None else earlier.taken_at,
        mates=_beside(colour, [mate.colour for mate in mates]) if mates else None,
        mate_codes=tuple(mate.code for mate in mates),
        medium=mates[0].medium if mates else "",
    )


def _newest_sure(days: list[Day]) -> Day | None:
    return next((day for day in reversed(days) if day.score is not None and day.score.sure), None)


def _colour_of(score: KeptScore) -> CanopyColour:
    return CanopyColour(
        lightness=score.lightness,
        a=score.a,
        b=score.b,
        corrected_by=score.corrected_by,
        method=score.method,
    )


def _comparable(colour: CanopyColour, mates: tuple[MateColour, ...]) -> list[MateColour]:
    """The newest photo of each tray: those to compare with, else one that tells why there are none."""
    newest = list({mate.tray_id: mate for mate in mates}.values())
    alike = [mate for mate in newest if mate.colour.lab is not None and mate.colour.means == colour.means]
    return alike or newest[:1]


def _beside(colour: CanopyColour, mates: list[CanopyColour]) -> ColourDifference:
    return colour_difference(colour, mates[0] if len(mates) == 1 else mean_colour(mates))
