"""Closing: suspects of the day before that the newest photo shows no more.

In    a book, a photo that was just kept
Out   the suspects that close themselves, each with a note why
Not   what became of the others (`between.py`), what a person says (`book.py`), what is urgent (`mold.py`)

Root hairs fade within days, mold seldom does. A suspect closes only where both photos are sure and scored by
the same method, nobody has said anything of it, and its place lies bare: one that leaves have grown over may
still be there. No decision of a person, so undo leaves it alone; one that comes back is a new suspect.
"""

from collections.abc import Iterator
from datetime import date

from data.between import SuspectBetween, between_kept
from data.reader import Reader
from data.records import PhotoId, SuspectId
from data.sentence import Sentence
from vision.history import Became

__all__ = ["vanished"]


def vanished(book: Reader, photo_id: PhotoId) -> dict[SuspectId, Sentence]:
    """The suspects that this photo, or the next day's, shows to be gone, with the note of each."""
    photos = book.sure_photos_beside(photo_id)
    here = next((day for photo, day in photos if photo == photo_id), None)
    if here is None:
        return {}
    before = [photo for photo, day in photos if day < here]
    next_day = min((day for _, day in photos if day > here), default=None)
    after = [photo for photo, day in photos if day == next_day]
    notes: dict[SuspectId, Sentence] = {}
    for earlier, later in ((before[-1:], [photo_id]), ([photo_id], after[-1:])):
        if earlier and later:
            notes |= _gone(book, earlier[0], later[0])
    return notes


def _gone(book: Reader, earlier: PhotoId, later: PhotoId) -> dict[SuspectId, Sentence]:
    was = book.score(earlier)
    still_open = set() if was is None else {one.id for one in was.suspects if one.is_open}
    if was is None or not still_open:  # nearly always: then no picture is opened
        return {}
    now = book.score(later)
    found = None if now is None or now.method != was.method else between_kept(book, was, now)
    if found is None:
        return {}
    day = dict(book.sure_photos_beside(later))[later]
    return {
        suspect: _note(course, day)
        for course in _bare(found.suspects)
        for suspect in course.earlier
        if suspect in still_open
    }


def _bare(suspects: tuple[SuspectBetween, ...]) -> Iterator[SuspectBetween]:
    """Those that are gone although no leaves hide their place."""
    return (one for one in suspects if one.became is Became.GONE and not one.under_leaves)


def _note(gone: SuspectBetween, day: date) -> Sentence:
    return Sentence(
        "No longer seen on {day:%d %B}, {was:.1f} cm² before. Root hairs fade, mold seldom does.",
        day=day,
        was=gone.earlier_cm2,
    )
