"""Missing: today's photos of the rack -> looks at trays without one that can be used.

In    trays, the numbers of their photos, today
Out   `Look`s: no photo today, photo to confirm, photo not used
Not   what the photos show (`standing.py`), proposing a match (`photos/walk.py`)

Before the walk of the morning nothing is missing yet: a tray is missed once half of the rack has its photo,
or where it has had none for more than a day.
"""

from collections.abc import Collection, Iterator, Mapping, Sequence
from datetime import date, datetime, time, timedelta
from operator import attrgetter

from data.look import Look, LookKind, Urgency, day_name
from data.numbers import TrayId
from data.records import DayNumbers, Tray
from data.sentence import Sentence
from vision.reason import Reason

__all__ = ["looks_for_missing", "looks_for_unusable"]

NONE_LATELY = Sentence("Soon: its last one is older than yesterday, and most trays have none of today yet.")
NOON = time(12)
TAKEN_AT = attrgetter("taken_at")  # of every photo of the rack
Photos = Mapping[TrayId, Sequence[DayNumbers]]


def looks_for_unusable(tray: Tray, photos: Sequence[DayNumbers], today: date) -> Iterator[Look]:
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
        sentence=Sentence(
            "Today's photo is not used: {why}.", why=str(Reason.UNSURE_FRAME if corners else last.refusal)
        ),
        first=Sentence("Set the four corners in Intake.")
        if corners
        else Sentence("Photograph the tray again."),
        photo_id=last.photo_id,
    )


def looks_for_missing(
    trays: Sequence[Tray], photos: Photos, today: date, proposed: Collection[TrayId]
) -> Iterator[Look]:
    """Trays that the walk has left out: today where most others have a photo, or before."""
    open_now = [tray for tray in trays if tray.sown_at.date() < today and not is_covered(tray, today)]
    last = {
        tray.id: max(map(TAKEN_AT, photos[tray.id])).date() if photos[tray.id] else None for tray in open_now
    }
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
        yield Look(
            tray_id=tray.id,
            code=tray.code,
            what=LookKind.NO_PHOTO,
            urgency=Urgency.TODAY if late and walk_is_on else Urgency.SOON,
            since=tray.sown_at.date() if day is None else day + timedelta(days=1),
            sentence=Sentence("No photo yet.")
            if day is None
            else Sentence("No photo since {day}.", day=day_name(day)),
            first=Sentence("Photograph the tray, with its tag in the picture."),
            why_urgent=NONE_LATELY if late and not walk_is_on else "",
        )


def _to_confirm(tray: Tray, today: date) -> Look:
    return Look(
        tray_id=tray.id,
        code=tray.code,
        what=LookKind.UNMATCHED,
        urgency=Urgency.SOON,
        since=today,
        sentence=Sentence("No tag was read on what is probably today's photo, by the order of the walk."),
        first=Sentence("Confirm the photo in Intake, and free the tag from leaves."),
    )


def is_covered(tray: Tray, today: date) -> bool:
    """Whether the tray is still in its blackout, when nobody photographs it.

    One that was sown in the evening is covered until an evening: on that morning's walk, too.
    """
    if tray.blackout_to is None or tray.blackout_to <= datetime.combine(today, NOON):
        return False
    return tray.blackout_from is None or tray.blackout_from.date() <= today
