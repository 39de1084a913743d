"""Doubted: today's photo of a tray cannot be trusted -> a look that asks for another one.

In    a tray, the numbers of its photos, today
Out   a `Look`: what is wrong with the photo and how to take it; which of several such looks say the same
Not   seeing it in the photo (`vision`), photos that are not used at all (`missing.py`), photos that only the
      tray's other days speak against (`badphoto.py`)

One photo of the day without doubt is enough. Where it goes on day after day it is one reason since its first
day, so that *seen* puts it away: a lamp that stays where it is is no news. A lens that is not clean spoils
the whole walk: that is said once and not of each tray.
"""

from collections import Counter
from collections.abc import Sequence
from datetime import date
from itertools import groupby

from data.look import Look, LookKind, Urgency
from data.records import DayNumbers, Tray
from data.sentence import Sentence
from vision.reason import Reason

__all__ = ["look_at_doubted", "told_of_many"]

FIRST = Sentence("Photograph the tray again; what the list says of it rests on this photo until then.")
LEAST_TRAYS = 3  # of which the same is said: then it is the camera or the light


def look_at_doubted(tray: Tray, photos: Sequence[DayNumbers], today: date) -> Look | None:
    """What is doubtful about every usable photo of today; `photos` are the tray's, oldest first."""
    since, last = None, None
    usable = [photo for photo in photos if photo.sure and photo.refusal is None]
    for day, group in groupby(reversed(usable), key=lambda photo: photo.taken_at.date()):
        of_day = list(group)
        if not all(photo.doubts for photo in of_day) or (last is None and day != today):
            break
        since, last = day, last or of_day[0]
    if since is None or last is None:
        return None
    return Look(
        tray_id=tray.id,
        code=tray.code,
        what=LookKind.DOUBTED,
        urgency=Urgency.TODAY,
        since=since,
        sentence=Sentence("Today's photo is in doubt: {why}.", why=_words(last.doubts)),
        first=FIRST,
        photo_id=last.photo_id,
    )


def told_of_many(found: Sequence[Look]) -> tuple[list[Look], list[Look]]:
    """Those that are to be said once for many trays, and all others."""
    times = Counter(look.sentence for look in found if look.what is LookKind.DOUBTED)
    many: list[Look] = []
    others: list[Look] = []
    for look in found:
        shared = look.what is LookKind.DOUBTED and times[look.sentence] >= LEAST_TRAYS
        (many if shared else others).append(look)
    return many, others


def _words(doubts: Sequence[Reason]) -> Reason | Sentence:
    """All of them."""
    first, *others = doubts
    return Sentence("{one}; {other}", one=first, other=_words(others)) if others else first
