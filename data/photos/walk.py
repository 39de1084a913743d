"""Walk: photos without a tag -> the tray that each one probably shows, by the order along the rack.

In    one day's photos in the order in which they were taken, those with a known tray among them; the rack
Out   proposals, for a person to confirm; never a match
Not   reading tags (`vision`), storing (`book.py`)

A grower photographs shelf by shelf. Between two photos whose trays are known, as many unknown photos as
there are trays in between are those trays, in order. Where the numbers do not fit, the times are asked: a
long pause parts two walks of one day, and two photos within seconds show the same tray. A photo that could
not be used shows a tray of its own, or was taken again at once: nobody says which. Where it still does not
fit nothing is proposed.
"""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from itertools import pairwise

from data.photos.succession import rack_at
from data.records import PhotoId, Tray, TrayId

__all__ = ["RackTray", "WalkPhoto", "by_shelf", "proposals", "proposals_of_day"]

PAUSE = timedelta(minutes=45)  # between two walks of one day
DOUBLE = timedelta(seconds=4)  # nobody gets to the next tray so fast


@dataclass(frozen=True, slots=True, kw_only=True)
class WalkPhoto:
    """One photo of the walk."""

    id: PhotoId
    tray: TrayId | None  # None where no tag was read
    at: datetime | None = None  # when it was taken
    refused: bool = False  # or left out: it may have its place in the walk, and is proposed for no tray


@dataclass(frozen=True, slots=True, kw_only=True)
class RackTray:
    """One tray on its place of the rack."""

    id: TrayId
    code: str
    shelf: str
    position: int
    sown_at: datetime
    done_at: datetime | None  # None while it grows


def proposals_of_day(walk: Sequence[WalkPhoto], trays: Sequence[RackTray]) -> dict[PhotoId, TrayId]:
    """The same for a whole day; where trays ended on it, each walk has the rack of its own time.

    Parameters
    ----------
    trays : all that grew on that day, in the order in which they stand.
    """
    day = next((photo.at.date() for photo in walk if photo.at is not None), None)
    if not any(tray.done_at is not None and tray.done_at.date() == day for tray in trays):
        return proposals(walk, [tray.id for tray in trays])
    found: dict[PhotoId, TrayId] = {}
    for part in _walks(walk):
        began = part[0].at
        rack = trays if began is None else rack_at(trays, began)
        found |= proposals(part, [tray.id for tray in rack])
    return found


def proposals(walk: Sequence[WalkPhoto], rack: Sequence[TrayId]) -> dict[PhotoId, TrayId]:
    """The tray that each photo without one probably shows; photos that cannot be placed are left out.

    Parameters
    ----------
    walk : the photos of one day, in the order in which they were taken.
    rack : the trays that grew on that day, in the order in which they stand.
    """
    used = _proposed([photo for photo in walk if not photo.refused], rack)
    refused = {photo.id for photo in walk if photo.refused}
    if not refused:
        return used
    whole = _proposed([replace(photo, tray=None) if photo.refused else photo for photo in walk], rack)
    fills = set(rack) <= {*whole.values(), *(photo.tray for photo in walk if not photo.refused)}
    whole = {photo: tray for photo, tray in whole.items() if photo not in refused}
    doubted = {photo for photo in used.keys() & whole.keys() if used[photo] != whole[photo]}
    both = used | whole
    return both if fills else {photo: tray for photo, tray in both.items() if photo not in doubted}


def _proposed(walk: Sequence[WalkPhoto], rack: Sequence[TrayId]) -> dict[PhotoId, TrayId]:
    """The same where every photo of the walk counts."""
    found = _placed(walk, rack)
    for part in _walks(walk):
        for photos in (part, _without_doubles(part)):
            if any(photo.tray is None and photo.id not in found for photo in photos):
                found = _placed(photos, rack) | found
    stood = set(rack)  # a photo matched by hand may show a tray that did not stand there by its dates
    return found | {photo: tray for photo, tray in _doubles(walk, found).items() if tray in stood}


def by_shelf(
    proposed: Mapping[PhotoId, TrayId], trays: Iterable[Tray]
) -> tuple[tuple[str, dict[PhotoId, TrayId]], ...]:
    """Proposals shelf by shelf in rack order, so that a row of the rack can be confirmed at a time."""
    photos: dict[TrayId, list[PhotoId]] = {}
    for photo, place in proposed.items():
        photos.setdefault(place, []).append(photo)
    rows: dict[str, dict[PhotoId, TrayId]] = {}
    for tray in trays:
        for photo in photos.get(tray.id, ()):
            rows.setdefault(tray.shelf, {})[photo] = tray.id
    return tuple(rows.items())


def _placed(walk: Sequence[WalkPhoto], rack: Sequence[TrayId]) -> dict[PhotoId, TrayId]:
    """The same for one walk, each photo another tray."""
    seen = {photo.tray for photo in walk if photo.tray is not None}
    order = list(rack) if _walked_forward(walk, rack) else list(reversed(rack))
    place = {tray: n for n, tray in enumerate(order)}

    found: dict[PhotoId, TrayId] = {}
    before: int | None = None
    waiting: list[PhotoId] = []
    for photo in walk:
        if photo.tray is None:
            waiting.append(photo.id)
        elif photo.tray in place:
            after = place[photo.tray]
            found |= _between(waiting, order, seen, before, after)
            before, waiting = after, []
    return found | _between(waiting, order, seen, before, None)


def _walked_forward(walk: Sequence[WalkPhoto], rack: Sequence[TrayId]) -> bool:
    place = {tray: n for n, tray in enumerate(rack)}
    known = [place[photo.tray] for photo in walk if photo.tray in place]
    steps = [later - earlier for earlier, later in pairwise(known)]
    return sum(step > 0 for step in steps) >= sum(step < 0 for step in steps)


def _walks(walk: Sequence[WalkPhoto]) -> list[list[WalkPhoto]]:
    """The walks of a day, parted by long pauses."""
    parts = [list(walk[:1])]
    for before, photo in pairwise(walk):
        if _apart(before, photo) > PAUSE:
            parts.append([])
        parts[-1].append(photo)
    return parts


def _without_doubles(walk: Sequence[WalkPhoto]) -> list[WalkPhoto]:
    """The walk with one photo in place of several that were taken within seconds."""
    return [photo for before, photo in pairwise([None, *walk]) if photo and not _is_double(before, photo)]


def _doubles(walk: Sequence[WalkPhoto], found: dict[PhotoId, TrayId]) -> dict[PhotoId, TrayId]:
    """What was left over because its tray has a photo from seconds before."""
    more: dict[PhotoId, TrayId] = {}
    for before, photo in pairwise(walk):
        tray = before.tray or found.get(before.id) or more.get(before.id)
        if _is_double(before, photo) and photo.id not in found and tray is not None:
            more[photo.id] = tray
    return more


def _is_double(before: WalkPhoto | None, photo: WalkPhoto) -> bool:
    return before is not None and photo.tray is None and _apart(before, photo) <= DOUBLE


def _apart(before: WalkPhoto, photo: WalkPhoto) -> timedelta:
    """Time between two photos; where nobody knows it, neither a pause nor seconds."""
    return timedelta(minutes=1) if before.at is None or photo.at is None else photo.at - before.at


def _between(
    waiting: Sequence[PhotoId],
    order: Sequence[TrayId],
    seen: set[TrayId],
    before: int | None,
    after: int | None,
) -> dict[PhotoId, TrayId]:
    """Pair `waiting` with the trays between two known places; None is an open end of the walk."""
    first = 0 if before is None else before + 1
    last = len(order) if after is None else after
    free = [tray for tray in order[first:last] if tray not in seen]
    if before is None and after is not None:
        free = free[-len(waiting) :] if waiting else []  # the walk may have begun further along
    elif before is not None and after is None:
        free = free[: len(waiting)]  # the walk may not be over yet
    return dict(zip(waiting, free, strict=True)) if len(free) == len(waiting) else {}
