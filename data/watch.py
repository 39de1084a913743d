"""Watch: what is known of the growing trays -> what needs a look, most urgent first.

In    trays, the numbers of their photos, suspects, today
Out   `Look`s: tray, what, how soon, since when, one sentence with the numbers, what to do first
Not   measuring (`vision`), comparing media (a verdict is no matter of one morning)

A list that cries every day is not read. Nothing is raised on one number alone where the tray's own days or
its block mates can be asked: numbers of the stand have to be out of line on the two newest days
(`standing.py`). The exception is possible mold (`mold.py`), where waiting may cost more than a look. Limits
without another source are common practice, chosen so that an ordinary tray stays quiet.
"""

from collections import defaultdict
from collections.abc import Collection, Iterable, Iterator, Sequence
from datetime import date, timedelta

from data.mold import MOLD_CAUTION, looks_at_mold
from data.reader import Reader
from data.records import DayNumbers, Look, LookKind, SeenSuspect, Tray, TrayId, Urgency
from data.standing import by_day, looks_at_stand
from vision.reason import Reason

__all__ = ["MOLD_CAUTION", "look_list", "looks"]


def look_list(book: Reader, today: date | None = None) -> tuple[Look, ...]:
    """What needs a look in this book now; empty where nothing does."""
    day = today or book.today()
    return looks(book.trays(), book.day_numbers(), book.seen_suspects(), day, book.proposed(day))


def looks(
    trays: Sequence[Tray],
    numbers: Iterable[DayNumbers],
    suspects: Iterable[SeenSuspect],
    today: date,
    proposed: Collection[TrayId] = (),
) -> tuple[Look, ...]:
    """The same from records alone; `proposed` are trays whose photo of today waits to be confirmed."""
    sown = [tray for tray in trays if tray.sown_at.date() <= today]
    photos: dict[TrayId, list[DayNumbers]] = defaultdict(list)
    for one in numbers:
        if one.taken_at.date() <= today:
            photos[one.tray_id].append(one)
    seen: dict[TrayId, list[SeenSuspect]] = defaultdict(list)
    for suspect in suspects:
        if suspect.taken_at.date() <= today:
            seen[suspect.tray_id].append(suspect)
    days = {tray.id: by_day(photos[tray.id]) for tray in sown}
    mates = _alike(sown)

    found: list[Look] = []
    for tray in sown:
        found += looks_at_mold(tray, seen[tray.id], photos[tray.id])
        found += looks_at_stand(tray, mates[tray.id], days, today)
        found += _unusable(tray, photos[tray.id], today)
    found += _without_photo(sown, photos, today, proposed)
    place = {tray.id: n for n, tray in enumerate(sown)}
    order = list(LookKind)
    return tuple(sorted(found, key=lambda look: (look.urgency, order.index(look.what), place[look.tray_id])))


def _alike(trays: Iterable[Tray]) -> dict[TrayId, tuple[Tray, ...]]:
    """The mates of each tray: same crop, sowing day and block (or shelf, where no block is named)."""
    groups: dict[tuple[object, ...], list[Tray]] = defaultdict(list)
    for tray in trays:
        place = (tray.trial, tray.block) if tray.block is not None else (None, tray.shelf)
        groups[(tray.crop, tray.sown_at.date(), place)].append(tray)
    return {
        tray.id: tuple(mate for mate in group if mate.id != tray.id)
        for group in groups.values()
        for tray in group
    }


# --- photos


def _unusable(tray: Tray, photos: Sequence[DayNumbers], today: date) -> Iterator[Look]:
    """Today's photo could not be used, and no other one of today could."""
    mine = [photo for photo in photos if photo.taken_at.date() == today]
    bad = [photo for photo in mine if photo.refusal is not None or photo.needs_corners]
    if not bad or any(photo.sure for photo in mine):
        return
    last = bad[-1]
    corners = last.needs_corners
    yield Look(
        tray_id=tray.id,
        code=tray.code,
        what=LookKind.UNUSABLE,
        urgency=Urgency.TODAY,
        since=today,
        sentence=f"Today's photo is not used: {Reason.UNSURE_FRAME if corners else last.refusal}.",
        first="Set the four corners in Intake." if corners else "Photograph the tray again.",
        photo_id=last.photo_id,
    )


def _without_photo(
    trays: Sequence[Tray],
    photos: dict[TrayId, list[DayNumbers]],
    today: date,
    proposed: Collection[TrayId],
) -> Iterator[Look]:
    """Trays that the walk has left out: today where most others have a photo, or before."""
    open_now = [tray for tray in trays if tray.sown_at.date() < today and not _covered(tray, today)]
    last = {tray.id: max((p.taken_at.date() for p in photos[tray.id]), default=None) for tray in open_now}
    done = sum(day == today for day in last.values())
    walk_is_on = 2 * done >= len(open_now) and done > 0
    yesterday = today - timedelta(days=1)
    any_photo = any(day is not None for day in last.values())
    for tray in open_now:
        day = last[tray.id]
        if day == today or not any_photo or (not walk_is_on and (day is None or day >= yesterday)):
            continue
        if tray.id in proposed:
            yield _to_confirm(tray, today)
            continue
        late = day is None or day < yesterday
        since = tray.sown_at.date() if day is None else day + timedelta(days=1)
        yield Look(
            tray_id=tray.id,
            code=tray.code,
            what=LookKind.NO_PHOTO,
            urgency=Urgency.TODAY if late and walk_is_on else Urgency.SOON,
            since=since,
            sentence="No photo yet." if day is None else f"No photo since {_day(day)}.",
            first="Photograph the tray, with its tag in the picture.",
        )


def _to_confirm(tray: Tray, today: date) -> Look:
    return Look(
        tray_id=tray.id,
        code=tray.code,
        what=LookKind.UNMATCHED,
        urgency=Urgency.SOON,
        since=today,
        sentence="No tag was read on what is probably today's photo, by the order of the walk.",
        first="Confirm the photo in Intake, and free the tag from leaves.",
    )


def _covered(tray: Tray, today: date) -> bool:
    """Whether the tray is still in its blackout, when nobody photographs it."""
    if tray.blackout_to is None or tray.blackout_to.date() <= today:
        return False
    return tray.blackout_from is None or tray.blackout_from.date() <= today


def _day(day: date) -> str:
    return f"{day.day} {day:%B}"
