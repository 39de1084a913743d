"""Clocks: the times of a batch of photos -> which camera's clock is wrong, and by how much.

In    photos that came in together: camera, its time, time of the file, time of coming in; when trays grew
Out   `ClockDoubt`s: photos, what is wrong, the shift that would mend them, a sentence; a person decides
Not   mending (`chapters/clockbook.py`), reading EXIF (`vision`), the sentence (`photos/clockwords.py`)

Times are local times of the rack. What speaks against a clock: files that keep a steady distance from the
camera's times through the walk (a phone writes the file as it takes the photo; a copy would bring all files
to one moment); a day before the first sowing of the trays that grew when the photo came in; a time after it
came in. Files that agree with a camera that is months off do not speak for it: it writes them by its own
clock. A photo that fits its tray is from an older day and was brought in late, unless only its year is wrong.
A steady distance of whole quarters of an hour is a time zone or summer time, any other a clock that runs
wrong. A camera that was not told of the change to summer time differs for a part of the batch only, so
photos with the same distance are taken together.

Each camera is judged by itself: where two phones bring one batch, the right one says nothing of the wrong
one. Photos of one walk by one camera share its clock, for nobody sets it on the way: where some of them are
wrong, all are. Photos that do not name their camera are judged together, and only what speaks for itself is
doubted.
"""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta
from itertools import chain, pairwise
from statistics import median

from data.numbers import PhotoId
from data.photos.clockwords import ClockFault, in_words, is_night, photos_by
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
FAR = timedelta(days=60)  # before a sowing: nearer than that the day of sowing may be noted wrongly
LATE = timedelta(days=2)  # after its cut the photos of a tray may still come in
HOUR = timedelta(hours=1)
LEAST_WALK = 3  # photos
ON_ONE_WALK = timedelta(hours=1)  # between two photos of it


@dataclass(frozen=True, slots=True, kw_only=True)
class ClockPhoto:
    """The times of one photo."""

    id: PhotoId
    taken_at: datetime  # by the camera
    file_at: datetime | None  # of the file, where it is known
    added_at: datetime
    fits: bool = False  # it has a tray that grew at the camera's time
    camera: str | None = None  # maker and model; None where the photo does not say


@dataclass(frozen=True, slots=True, kw_only=True)
class Grown:
    """When a tray grew."""

    sown: date
    done: date | None = None  # None while it grows


@dataclass(frozen=True, slots=True, kw_only=True)
class ClockDoubt:
    """Photos of one batch whose times are wrong together."""

    photo_ids: tuple[PhotoId, ...]
    camera: str | None  # that took them; None where they do not say
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
    for batch in _runs(photos, lambda photo: photo.added_at, TOGETHER):
        first_sown = _first_sown(grown, batch[0].added_at.date())
        for camera in dict.fromkeys(photo.camera for photo in batch):
            own = [photo for photo in batch if photo.camera == camera]
            found += _of_one_camera(own, first_sown, usual)
    return tuple(found)


def _of_one_camera(
    photos: Sequence[ClockPhoto], first_sown: date | None, usual: time | None
) -> list[ClockDoubt]:
    """What is wrong with the clock of one camera; with those of several where they are not named."""
    found: list[ClockDoubt] = []
    groups = _steady(photos)
    agreed = [photo for group in groups if abs(_steady_shift(group)) < LEAST_OFF for photo in group]
    rest = _without(photos, chain.from_iterable(groups))
    for group in groups:
        shift = _steady_shift(group)
        walk = [p for p in _same_walk(group, rest) if p.taken_at + shift <= p.added_at]
        rest = _without(rest, walk)
        found += _off_by_file(group, walk, shift)
    unlikely = [p for p in agreed if _is_far(p, first_sown) or p.taken_at > p.added_at + SLACK]
    return found + (_impossible([*rest, *unlikely], first_sown) or _by_night(rest, usual))


def _is_far(photo: ClockPhoto, first_sown: date | None) -> bool:
    """Whether it may be from long before any tray; where none grew, nobody knows."""
    return first_sown is None or photo.taken_at.date() < first_sown - FAR


def _runs(
    photos: Iterable[ClockPhoto], at: Callable[[ClockPhoto], datetime], gap: timedelta
) -> list[list[ClockPhoto]]:
    """The photos in the order of a time, parted where nothing was for longer than `gap`."""
    ordered = sorted(photos, key=lambda photo: (at(photo), photo.id))
    runs = [ordered[:1]] if ordered else []
    for before, photo in pairwise(ordered):
        if at(photo) - at(before) > gap:
            runs.append([])
        runs[-1].append(photo)
    return runs


def _without(photos: Iterable[ClockPhoto], those: Iterable[ClockPhoto]) -> list[ClockPhoto]:
    told = {photo.id for photo in those}
    return [photo for photo in photos if photo.id not in told]


def _same_walk(some: Sequence[ClockPhoto], others: Iterable[ClockPhoto]) -> list[ClockPhoto]:
    """Those of the others that the same camera took on the walk of `some`: they share its clock."""
    told = {photo.id for photo in some}
    known = [photo for photo in others if photo.camera is not None and photo.id not in told]
    walks = _runs([*some, *known], lambda photo: photo.taken_at, ON_ONE_WALK)
    return [p for walk in walks if any(o.id in told for o in walk) for p in _without(walk, some)]


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


def _steady_shift(group: Sequence[ClockPhoto]) -> timedelta:
    return timedelta(seconds=round(median(_distance(photo).total_seconds() for photo in group)))


def _off_by_file(
    group: Sequence[ClockPhoto], walk: Sequence[ClockPhoto], shift: timedelta
) -> list[ClockDoubt]:
    """What a steady distance tells of a clock, for its photos and those of the same walk."""
    if abs(shift) < LEAST_OFF:
        return []
    quarters = round(shift / QUARTER) * QUARTER
    years = _by_year(group, group[0].taken_at + shift)
    fault = ClockFault.RESET if abs(shift) > 2 * DAY else ClockFault.RUNS_WRONG
    if abs(shift - quarters) <= SAME and abs(quarters) <= ZONES:
        fault, shift = ClockFault.ZONE, quarters
    elif years is not None and abs(years - shift) <= SLACK:
        fault, shift = ClockFault.YEAR, years
    return [_doubt((*group, *walk), fault, shift, exact=True)]


# --- by what cannot be


def _impossible(photos: Sequence[ClockPhoto], first_sown: date | None) -> list[ClockDoubt]:
    """Photos from before the first sowing, or from after they came in, where no file tells the time."""
    before = [p for p in photos if first_sown is not None and p.taken_at.date() < first_sown - DAY]
    after = [p for p in photos if p.taken_at > p.added_at + SLACK]
    found: list[ClockDoubt] = []
    told: list[ClockPhoto] = []
    for group in ([p for p in before if not p.fits], after, [p for p in before if p.fits]):
        own = _without(group, told)
        if own and (group is after or not own[0].fits or _is_of_another_year(own)):
            own += _same_walk(own, _without(photos, told))
            told += own
            found.append(_guess(own))
    return found


def _is_of_another_year(photos: Sequence[ClockPhoto]) -> bool:
    """Whether photos that found a tray of an earlier year may show today's under the same tag."""
    return _by_year(photos, _known(photos)) is not None


def _first_sown(trays: Sequence[Grown], came_in: date) -> date | None:
    """The first sowing day of the trays that grew when the photos came in, or had just ended."""
    return min(
        (t.sown for t in trays if t.sown <= came_in and (t.done is None or t.done >= came_in - LATE)),
        default=None,
    )


def _by_night(photos: Sequence[ClockPhoto], usual: time | None) -> list[ClockDoubt]:
    """A walk in the night where all others were by day: by whole hours back to the usual time."""
    if usual is None or len(photos) < LEAST_WALK or not all(is_night(p.taken_at) for p in photos):
        return []
    if is_night(datetime.combine(date.min, usual)):
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


def _known(group: Sequence[ClockPhoto]) -> datetime:
    """When the last photo was there for certain."""
    return _there(max(group, key=lambda photo: photo.taken_at))


def _there(photo: ClockPhoto) -> datetime:
    """When it was there for certain; a file written by the clock that is doubted says nothing of it."""
    if photo.file_at is None or abs(_distance(photo)) < LEAST_OFF:
        return photo.added_at
    return min(photo.added_at, photo.file_at)


def _guess(group: Sequence[ClockPhoto]) -> ClockDoubt:
    """What makes no photo younger than its file or its coming in; the last one need not be the worst."""
    years = _by_year(group, _known(group))
    if years is not None:
        return _doubt(group, ClockFault.YEAR, years, exact=True)
    ahead = max(photo.taken_at - photo.added_at for photo in group)
    if timedelta(0) < ahead <= ZONES:
        hours = -(-ahead // HOUR) * HOUR
        return _doubt(group, ClockFault.ZONE, -hours, exact=False)
    shift = min(_there(photo) - photo.taken_at for photo in group)
    return _doubt(group, ClockFault.RESET, timedelta(seconds=round(shift.total_seconds())), exact=False)


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
    first = ordered[0]
    return ClockDoubt(
        photo_ids=tuple(photo.id for photo in ordered),
        camera=first.camera,
        fault=fault,
        shift=shift,
        exact=exact,
        first=first.taken_at,
        last=ordered[-1].taken_at,
        most=min(photo.added_at - photo.taken_at for photo in ordered) + SLACK,
        sentence=in_words(
            fault,
            photos_by(len(ordered), first.camera),
            first.taken_at,
            shift,
            ahead=any(photo.taken_at > photo.added_at + SLACK for photo in ordered),
            exact=exact,
        ),
    )
