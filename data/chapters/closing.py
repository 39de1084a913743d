"""Closing: what became of the suspects of the day before, once a photo is kept.

In    a book, a photo that was just kept
Out   the suspects that close themselves, each with a note why; which suspects are those of the day before
Not   what became of them in words (`between.py`), what a person says (`book.py`), what is urgent
      (`looklist/mold.py`)

The photos are laid on each other here, once, while their pictures are at hand; the look list then asks the
book alone. Root hairs fade within days, mold seldom does. A suspect closes only where both photos are sure
and scored by the same method, nobody has said anything of it, and its place lies bare: one that leaves have
grown over may still be there, and so may one on a photo with glare, a hand or faded colours: the next photo
without doubts closes it. No decision of a person, so undo leaves it alone; one that comes back is new.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from datetime import date

from data.chapters.between import SuspectBetween, between_kept
from data.chapters.reader import Reader
from data.photos.carried import Carried
from data.records import KeptScore, PhotoId, SuspectId
from data.sentence import Sentence
from vision.history import Became
from vision.reason import RETAKE

__all__ = ["SuspectsSince", "suspects_since"]


@dataclass(frozen=True, slots=True, kw_only=True)
class SuspectsSince:
    """What a photo told of the suspects of the day before, and the next day's photo of its own."""

    closing: Mapping[SuspectId, Sentence] = field(default_factory=dict)
    """Those that are gone, each with its note."""
    carried: Mapping[PhotoId, Carried] = field(default_factory=dict)
    """By the later photo: which of its suspects are which of the earlier one's."""


def suspects_since(book: Reader, photo_id: PhotoId) -> SuspectsSince:
    """What this photo, or the next day's, shows of the suspects of the day before."""
    photos = book.sure_photos_beside(photo_id)
    here = next((day for photo, day in photos if photo == photo_id), None)
    if here is None:
        return SuspectsSince()
    before = [photo for photo, day in photos if day < here]
    next_day = min((day for _, day in photos if day > here), default=None)
    after = [photo for photo, day in photos if day == next_day]
    found = [_told(book, photo_id, later, dict(photos)[later]) for later in after[-1:]]
    for earlier in reversed(before):
        found.append(_told(book, earlier, photo_id, here))
        if not _in_doubt(book.score(earlier)):
            break  # what a photo in doubt may have hidden is asked of the one before it
    return _together(found)


def _told(book: Reader, earlier: PhotoId, later: PhotoId, day: date) -> SuspectsSince:
    """What the later of two photos, taken on that day, shows of the suspects of the earlier one."""
    was = book.score(earlier)
    if was is None or all(one.closed_at is not None for one in was.suspects):
        return SuspectsSince()  # nearly always there are none at all: then no picture is opened
    now = book.score(later)
    courses = None if now is None else _courses(book, was, now)
    if courses is None:
        return SuspectsSince()
    return SuspectsSince(
        closing={} if _in_doubt(now) else _closing(was, courses, day),
        carried={later: _carried(earlier, courses)},
    )


def _together(found: list[SuspectsSince]) -> SuspectsSince:
    """All of them; of two that are carried to one photo the first, which is the nearer."""
    closing: dict[SuspectId, Sentence] = {}
    carried: dict[PhotoId, Carried] = {}
    for one in found:
        closing |= one.closing
        carried = {**one.carried, **carried}
    return SuspectsSince(closing=closing, carried=carried)


def _in_doubt(score: KeptScore | None) -> bool:
    return score is not None and not RETAKE.isdisjoint(score.notes)


def _courses(book: Reader, was: KeptScore, now: KeptScore) -> tuple[SuspectBetween, ...] | None:
    if now.method != was.method or not _asks(was, now):
        return None
    found = between_kept(book, was, now)
    return None if found is None else found.suspects


def _closing(was: KeptScore, courses: tuple[SuspectBetween, ...], day: date) -> dict[SuspectId, Sentence]:
    """Those that are gone, if nobody has said a word of them."""
    still_open = {one.id for one in was.suspects if one.is_open}
    return {
        suspect: _note(course, day)
        for course in _bare(courses)
        for suspect in course.earlier
        if suspect in still_open
    }


def _asks(was: KeptScore, now: KeptScore) -> bool:
    """Whether one may have gone, or be another."""
    return bool(now.suspects) or any(one.is_open for one in was.suspects)


def _carried(earlier: PhotoId, courses: tuple[SuspectBetween, ...]) -> Carried:
    return Carried(since=earlier, was={one: course.earlier for course in courses for one in course.later})


def _bare(suspects: tuple[SuspectBetween, ...]) -> Iterator[SuspectBetween]:
    """Those that are gone although no leaves hide their place."""
    return (one for one in suspects if one.became is Became.GONE and not one.under_leaves)


def _note(gone: SuspectBetween, day: date) -> Sentence:
    return Sentence(
        "No longer seen on {day:%d %B}, {was:.1f} cm² before. Root hairs fade, mold seldom does.",
        day=day,
        was=gone.earlier_cm2,
    )
