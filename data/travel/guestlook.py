"""Guest look: what another grower's book would bring, before anything is brought in.

In    the open book and the guest; what names that both have mean
Out   `GuestLook`: their trays, how much hangs on them, the names to be asked about; which trays are known
Not   bringing it in (`merging.py`)
"""

from collections import Counter
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime
from typing import TYPE_CHECKING, Any

from data.book import Book
from data.numbers import TrayId
from data.records import Tray
from data.travel.samenames import Answer, SameName, same_names
from data.travel.twins import twins

if TYPE_CHECKING:
    from sqlite_utils import Database

__all__ = ["GuestLook", "GuestTray", "look_at_guest"]

Thing = tuple[str, str, str, datetime]


@dataclass(frozen=True, slots=True, kw_only=True)
class GuestTray:
    """A tray of the other book."""

    code: str
    crop: str
    medium: str
    sown_at: datetime
    photos: int
    called_otherwise: bool = False  # a tray of this book by another code, crop or medium, as its photos say

    @property
    def thing(self) -> Thing:
        """By what it is known again."""
        return self.code, self.crop, self.medium, self.sown_at


@dataclass(frozen=True, slots=True, kw_only=True)
class GuestLook:
    """What there is to bring in."""

    trays: tuple[GuestTray, ...]
    photos: int
    readings: int
    asked: tuple[SameName, ...]
    here: Mapping[SameName, int]  # trays of this name in this book
    there: Mapping[SameName, int]  # and in the other one
    ours: frozenset[Thing]

    def known(self, answers: Mapping[SameName, Answer]) -> frozenset[GuestTray]:
        """Their trays that stand here already, as far as names mean the same."""
        return frozenset(
            tray
            for tray in self.trays
            if tray.called_otherwise
            or (
                tray.thing in self.ours
                and answers.get(SameName(kind="crop", name=tray.crop)) is Answer.SAME
                and answers.get(SameName(kind="medium", name=tray.medium)) is Answer.SAME
            )
        )


def look_at_guest(book: Book, guest: Book) -> GuestLook:
    """Read what both books have; raises `BookError`. For a worker."""
    ours, theirs = book.trays(growing=False), guest.trays(growing=False)
    things = {tray.id: _thing(tray) for tray in ours}, {tray.id: _thing(tray) for tray in theirs}
    with book.whole_tables() as here, guest.whole_tables() as db:
        photos = Counter(row["tray"] for row in db.table("photo").rows)
        readings = db.table("reading").count
        called_otherwise = twins(
            _rows_without(here, things[0], things[1]),
            _rows_without(db, things[1], things[0]),
            here.table("photo").rows,
            db.table("photo").rows,
        )
    asked = same_names(book, guest)
    return GuestLook(
        trays=tuple(
            GuestTray(
                code=tray.code,
                crop=tray.crop,
                medium=tray.medium,
                sown_at=tray.sown_at,
                photos=photos[tray.id],
                called_otherwise=tray.id in called_otherwise,
            )
            for tray in theirs
        ),
        photos=photos.total(),
        readings=readings,
        asked=asked,
        here=_trays_of(asked, book),
        there=_trays_of(asked, guest),
        ours=frozenset(things[0].values()),
    )


def _thing(tray: Tray) -> Thing:
    return tray.code, tray.crop, tray.medium, tray.sown_at


def _rows_without(
    db: "Database", mine: Mapping[TrayId, Thing], others: Mapping[TrayId, Thing]
) -> list[dict[str, Any]]:
    """The trays of one book that the other does not know."""
    known = set(others.values())
    return [row for row in db.table("tray").rows if mine[row["id"]] not in known]


def _trays_of(asked: tuple[SameName, ...], book: Book) -> Mapping[SameName, int]:
    counts: Counter[SameName] = Counter()
    for tray in book.trays(growing=False):
        for kind in {one.kind for one in asked}:
            counts[SameName(kind=kind, name=getattr(tray, kind) or "")] += 1
    return {one: counts[one] for one in asked}
