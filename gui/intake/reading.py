"""Intake reading: what the screen reads of the book at once, in the background.

In    a book
Out   `IntakeReading`: photos, trays that can be chosen, doubts about clocks, the walk shelf by shelf
Not   how it is shown (`view.py`, `bands.py`)
"""

from dataclasses import dataclass
from datetime import date

from data.book import Book
from data.photos.clocks import ClockDoubt
from data.records import PhotoRow, Tray, TrayId
from gui.intake.walkview import WalkShelf, walk_shelves

__all__ = ["IntakeReading", "read_intake"]

ENDED_SHOWN = 300  # trays that ended last: a photo of their days may still want one of them


@dataclass(frozen=True, slots=True, kw_only=True)
class IntakeReading:
    """One state of the book."""

    photos: tuple[PhotoRow, ...] = ()
    trays: tuple[Tray, ...] = ()  # those that grow, then those that ended of late
    doubts: tuple[ClockDoubt, ...] = ()
    shelves: tuple[WalkShelf, ...] = ()

    @property
    def ended(self) -> dict[TrayId, date]:
        """Trays that grow no more, with their last day."""
        return {tray.id: tray.done_at.date() for tray in self.trays if tray.done_at is not None}


def read_intake(book: Book) -> IntakeReading:
    """Read all of it; raises `BookError`."""
    photos = book.photos()
    proposed = {photo.proposal_id for photo in photos if photo.proposal_id is not None}
    return IntakeReading(
        photos=photos,
        trays=(*book.trays(), *book.ended_trays(ENDED_SHOWN)),
        doubts=book.clock_doubts(),
        shelves=walk_shelves(photos, {tray: book.tray(tray) for tray in proposed}),
    )
