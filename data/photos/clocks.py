"""Clocks: the times of a batch of photos -> which camera's clock is wrong, and by how much.

In    photos that came in together: time by the camera, time of the file, time of coming in; when trays grew
Out   `ClockDoubt`s: photos, what is wrong, the shift that would mend them, a sentence; a person decides
Not   mending (`chapters/clockbook.py`), reading EXIF (`vision`)

Times are local times of the rack. What speaks against a clock: files that keep a steady distance from the
camera's times through the walk (a phone writes the file as it takes the photo; a copy would bring all files
to one moment); a day before the first sowing of the trays that grew when the photo came in; a time after it
came in. A photo that fits its tray is from an older day and was brought in late, unless only its year is
wrong. A steady distance of whole
quarters of an hour is a time zone or summer time, any other a clock that runs wrong. A camera that was not
told of the change to summer time differs for a part of the batch only, so photos with the same distance are
taken together.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta
from enum import StrEnum
from itertools import pairwise
from statistics import median

from data.look import day_name
from data.numbers import PhotoId
from data.sentence import Sentence

__all__ = ["ClockDoubt", "ClockFault", "ClockPhoto", "Grown", "clock_doubts"]

TOGETHER = timedelta(minutes=30)  # between two photos of one batch coming in
SAME = timedelta(minutes=2)  # around the middle distance of photos that belong together
LEAST_SPAN = timedelta(seconds=60)  # of a walk whose files can be told from copies
ROUNDING = timedelta(seconds=2)  # of times in files
STEADY = 0.1  # of the walk's span
LEAST_OFF = timedelta(minutes=10)  # less harms nothing
QUARTER = timedelta(minutes=15)
ZONES = timedelta(hours=14)
SLACK = timedelta(minutes=5)
DAY = timedelta(days=1)
LATE = timedelta(days=2)  # after its cut the photos of a tray may still come in
HOUR = timedelta(hours=1)
NIGHT = (22, 5)  # from and to, hours of the day
LEAST_WALK = 3  # photos


class ClockFault(StrEnum):
    """What is wrong with a clock."""

    ZONE = "time zone or summer time"
    YEAR = "wrong year"
    RESET = "reset to a default date"
    RUNS_WRONG = "runs wrong"


@dataclass(frozen=True, slots=True, kw_only=True)
class ClockPhoto:
    """The times of one photo."""

    id: PhotoId
    taken_at: datetime  # by the camera
    file_at: datetime | None  # of the file, where it is known
    added_at: datetime
    fits: bool = False  # it has a tray that grew at the camera's time


@dataclass(frozen=True, slots=True, kw_only=True)
class Grown:
    """When a tray grew."""

    sown: date
    done: date | None = None  # None while it grows


@dataclass(frozen=True, slots=True, kw_only=True)
class ClockDoubt:
    """Photos of one batch whose times are wrong together."""

    photo_ids: tuple[PhotoId, ...]
    fault: ClockFault
    shift: timedelta  # to be added to the times of the camera
    exact: bool  # False: only the day is sure, the time of day is a guess
    first: datetime  # of the first and the last photo, by the camera
    last: datetime
    most: timedelta  # a larger shift would put a photo after the time at which it came in
    sentence: Sentence


def clock_doubts(
    photos: Iterable[ClockPhoto], trays: Iterable[Grown] = (), usual: time | None = None
) -> tuple[ClockDoubt, ...]:
    """What is wrong with the clocks of some photos, oldest batch first.

    Parameters
    ----------
    trays : all that ever grew; a photo of a tray is younger than its sowing.
    usual : when the walks of other days were, where they were at one time of day.
    """
    found: list[ClockDoubt] = []
    grown = tuple(trays)
    for batch in _batches(photos):
        rest = list(batch)
        for group in _steady(batch):
            rest = [photo for photo in rest if photo not in group]
            found += _off_by_file(group)
        impossible = _impossible(rest, _first_sown(grown, batch[0].added_at.date()))
        found += impossible or _by_night(rest, usual)
    return tuple(found)


def _batches(photos: Iterable[ClockPhoto]) -> list[list[ClockPhoto]]:
    ordered = sorted(photos, key=lambda photo: (photo.added_at, photo.id))
    batches = [ordered[:1]] if ordered else []
    for before, photo in pairwise(ordered):
        if photo.added_at - before.added_at > TOGETHER:
            batches.append([])
        batches[-1].append(photo)
    return batches


# --- by the files


def _steady(batch: Sequence[ClockPhoto]) -> list[list[ClockPhoto]]:
    """Photos whose files keep one distance from the camera's times through the walk."""
    rest = sorted((photo for photo in batch if photo.file_at is not None), key=_distance)
    groups: list[list[ClockPhoto]] = []
    while rest:
        first = _distance(rest[0])
        near = [photo for photo in rest if _distance(photo) - first <= 2 * SAME]
        rest = rest[len(near) :]
        taken = [photo.taken_at for photo in near]
        span = max(taken) - min(taken)
        spread = _distance(near[-1]) - first
        if len(near) >= 2 and span >= LEAST_SPAN and spread <= STEADY * span + ROUNDING:
            groups.append(near)
    return groups


def _distance(photo: ClockPhoto) -> timedelta:
    assert photo.file_at is not None
    return photo.file_at - photo.taken_at


def _off_by_file(group: Sequence[ClockPhoto]) -> list[ClockDoubt]:
    shift = timedelta(seconds=round(median(_distance(photo).total_seconds() for photo in group)))
    if abs(shift) < LEAST_OFF:
        return []
    quarters = round(shift / QUARTER) * QUARTER
    if abs(shift - quarters) <= SAME and abs(quarters) <= ZONES:
        return [_doubt(group, ClockFault.ZONE, quarters, exact=True)]
    years = _by_year(group, group[0].taken_at + shift)
    if years is not None and abs(years - shift) <= SLACK:
        return [_doubt(group, ClockFault.YEAR, years, exact=True)]
    fault = ClockFault.RESET if abs(shift) > 2 * DAY else ClockFault.RUNS_WRONG
    return [_doubt(group, fault, shift, exact=True)]


# --- by what cannot be


def _impossible(photos: Sequence[ClockPhoto], first_sown: date | None) -> list[ClockDoubt]:
    """Photos from before the first sowing, or from after they came in, whose files are copies."""
    before = [p for p in photos if first_sown is not None and p.taken_at.date() < first_sown - DAY]
    after = [p for p in photos if p.taken_at > p.added_at + SLACK]
    groups = [[p for p in before if not p.fits], after]
    groups += _of_another_year([p for p in before if p.fits])
    return [_guess(group) for group in groups if group]


def _of_another_year(photos: list[ClockPhoto]) -> list[list[ClockPhoto]]:
    """Photos that found a tray of an earlier year, though it may have been today under the same tag."""
    return [photos] if photos and _by_year(photos, _known(photos)) is not None else []


def _first_sown(trays: Sequence[Grown], came_in: date) -> date | None:
    """The first sowing day of the trays that grew when the photos came in, or had just ended."""
    return min(
        (t.sown for t in trays if t.sown <= came_in and (t.done is None or t.done >= came_in - LATE)),
        default=None,
    )


def _by_night(photos: Sequence[ClockPhoto], usual: time | None) -> list[ClockDoubt]:
    """A walk in the night where all others were by day: by whole hours back to the usual time."""
    if usual is None or len(photos) < LEAST_WALK or not all(_is_night(p.taken_at) for p in photos):
        return []
    if _is_night(datetime.combine(date.min, usual)):
        return []
    middle = sorted(photo.taken_at for photo in photos)[len(photos) // 2]
    latest = min(photo.added_at for photo in photos)
    wanted = datetime.combine(latest.date(), usual)
    if wanted > latest + SLACK:
        wanted -= DAY
    hours = round((wanted - middle) / HOUR) * HOUR
    if not HOUR <= abs(hours) <= ZONES or max(p.taken_at for p in photos) + hours > latest + SLACK:
        return []
    return [_doubt(photos, ClockFault.ZONE, hours, exact=False)]


def _is_night(at: datetime) -> bool:
    return at.hour >= NIGHT[0] or at.hour < NIGHT[1]


def _known(group: Sequence[ClockPhoto]) -> datetime:
    """When the last photo was there for certain."""
    last = max(group, key=lambda photo: photo.taken_at)
    return min(last.added_at, last.file_at or last.added_at)


def _guess(group: Sequence[ClockPhoto]) -> ClockDoubt:
    last = max(group, key=lambda photo: photo.taken_at)
    known = _known(group)
    years = _by_year(group, known)
    if years is not None:
        return _doubt(group, ClockFault.YEAR, years, exact=True)
    ahead = last.taken_at - last.added_at
    if timedelta(0) < ahead <= ZONES:
        hours = -(-ahead // HOUR) * HOUR
        return _doubt(group, ClockFault.ZONE, -hours, exact=False)
    shift = timedelta(seconds=round((known - last.taken_at).total_seconds()))
    return _doubt(group, ClockFault.RESET, shift, exact=False)


def _by_year(group: Sequence[ClockPhoto], known: datetime) -> timedelta | None:
    """The shift that only changes the year, where the last photo is then at most two days before `known`."""
    last = max(photo.taken_at for photo in group)
    for year in (known.year, known.year - 1):
        try:
            moved = last.replace(year=year)
        except ValueError:  # 29 February
            continue
        if last.year != year and timedelta(0) <= known - moved + SLACK <= 2 * DAY:
            return moved - last
    return None


def _doubt(group: Sequence[ClockPhoto], fault: ClockFault, shift: timedelta, *, exact: bool) -> ClockDoubt:
    ordered = sorted(group, key=lambda photo: (photo.taken_at, photo.id))
    first = ordered[0].taken_at
    return ClockDoubt(
        photo_ids=tuple(photo.id for photo in ordered),
        fault=fault,
        shift=shift,
        exact=exact,
        first=first,
        last=ordered[-1].taken_at,
        most=min(photo.added_at - photo.taken_at for photo in ordered) + SLACK,
        sentence=_in_words(fault, first, shift, len(ordered), ordered[0].added_at, exact=exact),
    )


def _in_words(
    fault: ClockFault, first: datetime, shift: timedelta, count: int, came_in: datetime, *, exact: bool
) -> Sentence:
    """Why the clock of `count` photos is doubted; `first` and `came_in` are the first one's."""
    values = {
        "photos": Sentence("1 photo") if count == 1 else Sentence("{n} photos", n=count),
        "wrong": _moment(first),
        "right": _moment(first + shift),
    }
    if fault is ClockFault.ZONE and exact:
        return Sentence(
            "{photos}: the camera's clock must go {hours:+g} hours to agree with the files: it has another "
            "time zone, or missed the change to summer time. The first one says {wrong}, its file {right}.",
            hours=shift / HOUR, **values,
        )  # fmt: skip
    if fault is ClockFault.ZONE and _is_night(first):
        return Sentence(
            "{photos}: taken in the night, says the camera, at {wrong}; the walks of other days were by day. "
            "Moved by whole hours that would be {right}.", **values,
        )  # fmt: skip
    if fault is ClockFault.ZONE:
        return Sentence(
            "{photos}: taken after coming in, says the camera; its clock is ahead by {hours:.0f} hours or "
            "more. The first one says {wrong}, that would be {right}.",
            hours=-shift / HOUR, **values,
        )  # fmt: skip
    if fault is ClockFault.YEAR:
        return Sentence(
            "{photos}: the camera says another year. The first one says {wrong}, that would be {right}.",
            **values,
        )
    if exact:
        return Sentence(
            "{photos}: the camera's clock is wrong. The first one says {wrong}, its file {right}.", **values
        )
    if first > came_in:
        return Sentence(
            "{photos}: from days to come, says the camera; its clock is wrong. The first one says {wrong}; "
            "by the time of coming in it is about {right}.", **values,
        )  # fmt: skip
    return Sentence(
        "{photos}: from before the first sowing, says the camera; its clock was probably reset. The "
        "first one says {wrong}; by the time of coming in it is about {right}.", **values,
    )  # fmt: skip


def _moment(at: datetime) -> Sentence:
    return Sentence("{day} {year}, {time}", day=day_name(at.date()), year=at.year, time=f"{at:%H:%M}")
