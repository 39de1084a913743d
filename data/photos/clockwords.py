"""Clock words: what is wrong with a camera's clock -> the sentence that a person reads.

In    the fault, how many photos by which camera, what the camera says of the first one, the shift
Out   `Sentence`s
Not   finding out what is wrong (`photos/clocks.py`)
"""

from datetime import datetime, timedelta
from enum import StrEnum

from data.look import day_name
from data.sentence import Sentence

__all__ = ["ClockFault", "in_words", "is_night", "photos_by"]

HOUR = timedelta(hours=1)
NIGHT = (22, 5)  # from and to, hours of the day


class ClockFault(StrEnum):
    """What is wrong with a clock."""

    ZONE = "time zone or summer time"
    YEAR = "wrong year"
    RESET = "reset to a default date"
    RUNS_WRONG = "runs wrong"


def is_night(at: datetime) -> bool:
    """Whether nobody walks along the rack at this time of day."""
    return at.hour >= NIGHT[0] or at.hour < NIGHT[1]


def photos_by(count: int, camera: str | None) -> Sentence:
    """How many photos, and by which camera where they say so."""
    if camera is None:
        return Sentence("1 photo") if count == 1 else Sentence("{n} photos", n=count)
    if count == 1:
        return Sentence("1 photo by {camera}", camera=camera)
    return Sentence("{n} photos by {camera}", n=count, camera=camera)


def in_words(
    fault: ClockFault, photos: Sentence, first: datetime, shift: timedelta, *, ahead: bool, exact: bool
) -> Sentence:
    """Why a clock is doubted.

    Parameters
    ----------
    photos : how many, as `photos_by` says it.
    first : what the camera says of the first one.
    ahead : some were taken after they came in, says the camera.
    exact : the time of day is sure too.
    """
    values = {
        "photos": photos,
        "wrong": _moment(first),
        "right": _moment(first + shift),
    }
    if fault is ClockFault.ZONE:
        return _zone_words(shift, values, ahead=ahead, exact=exact)
    if fault is ClockFault.YEAR:
        return Sentence(
            "{photos}: the camera says another year. The first one says {wrong}, that would be {right}.",
            **values,
        )
    if exact:
        return Sentence(
            "{photos}: the camera's clock is wrong. The first one says {wrong}, its file {right}.", **values
        )
    if ahead:
        return Sentence(
            "{photos}: from days to come, says the camera; its clock is wrong. The first one says {wrong}; "
            "by the time of coming in it is about {right}.", **values,
        )  # fmt: skip
    return Sentence(
        "{photos}: from before the first sowing, says the camera; its clock was probably reset. The "
        "first one says {wrong}; by the time of coming in it is about {right}.", **values,
    )  # fmt: skip


def _zone_words(shift: timedelta, values: dict[str, Sentence], *, ahead: bool, exact: bool) -> Sentence:
    """Of another time zone, or summer time."""
    if exact:
        return Sentence(
            "{photos}: the camera's clock must go {hours:+g} h to agree with the files: it has another "
            "time zone, or missed the change to summer time. The first one says {wrong}, its file {right}.",
            hours=shift / HOUR, **values,
        )  # fmt: skip
    if not ahead:
        return Sentence(
            "{photos}: taken in the night, says the camera, at {wrong}; the walks of other days were by day. "
            "Moved by whole hours that would be {right}.", **values,
        )  # fmt: skip
    return Sentence(
        "{photos}: taken after coming in, says the camera; its clock is ahead by {hours:.0f} h or "
        "more. The first one says {wrong}, that would be {right}.",
        hours=-shift / HOUR, **values,
    )  # fmt: skip


def _moment(at: datetime) -> Sentence:
    return Sentence("{day} {year}, {time}", day=day_name(at.date()), year=at.year, time=f"{at:%H:%M}")
