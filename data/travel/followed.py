"""Followed: which suspects are which of the day before, of another book -> the same under ids of this one.

In    both books' tables; their ids of photos and suspects -> ours
Out   what laying their photos on each other has shown, kept here too
Not   laying photos on each other (`chapters/closing.py`), what is kept of it (`photos/carried.py`)

Their photos come without being laid on each other again: that takes their pictures, and a second a pair. A
suspect that was one which this book does not have is left out, not called new: then its place decides. What
this book knows of a photo stays.
"""

from collections.abc import Iterator, Mapping
from collections.abc import Set as AbstractSet
from typing import TYPE_CHECKING

from data.photos.carried import Carried, carried_name, carried_of, carried_photo, carried_text
from data.records import PhotoId, SuspectId

if TYPE_CHECKING:
    from sqlite_utils import Database

__all__ = ["bring_followed", "translated"]

Ids = Mapping[int, int]  # theirs -> ours


def bring_followed(
    ours: "Database", theirs: "Database", photos: Ids, suspects: Ids, fresh: AbstractSet[int]
) -> None:
    """Keep in this book what theirs knows of suspects from day to day.

    Parameters
    ----------
    fresh : their ids of photos that have only come with their book.
    """
    known = {row["name"] for row in ours.table("setting").rows_where("name LIKE 'carried %'")}
    found = (
        {"name": carried_name(PhotoId(photos[photo])), "value": carried_text(carried)}
        for photo, carried in _kept(theirs, photos, suspects)
        if photo in fresh or carried_name(PhotoId(photos[photo])) not in known
    )
    ours.table("setting").insert_all(found, pk="name", replace=True)


def _kept(theirs: "Database", photos: Ids, suspects: Ids) -> Iterator[tuple[int, Carried]]:
    """Their ids of photos, each with what is known of its suspects in our ids."""
    for row in theirs.table("setting").rows_where("name LIKE 'carried %'"):
        photo, carried = carried_photo(row["name"]), carried_of(row["value"])
        if photo is not None and photo in photos and carried is not None:
            ours = translated(carried, photos, suspects)
            if ours is not None:
                yield photo, ours


def translated(carried: Carried, photos: Ids, suspects: Ids) -> Carried | None:
    """The same in other ids; None where nothing is left of it."""
    was = {
        SuspectId(suspects[one]): tuple(SuspectId(suspects[earlier]) for earlier in before)
        for one, before in carried.was.items()
        if one in suspects and all(earlier in suspects for earlier in before)
    }
    if carried.since not in photos or not was:
        return None
    return Carried(since=PhotoId(photos[carried.since]), was=was)
