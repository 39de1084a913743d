"""Carried: which suspects of a photo are which of the day before, as the book keeps it.

In    what laying the two photos on each other has shown (`chapters/closing.py`); suspects of one tray
Out   text for the book and back; whether two suspects of different photos are one patch
Not   laying photos on each other (`vision/alignment.py`), what is urgent (`looklist/mold.py`)

Places are those of the tray as it stood: one that was put in turned round has all of them elsewhere, and
corners that a hand has set may be a centimetre off. So where two photos were laid on each other, what that
showed holds, and only where they were not, two patches are one if they lie near each other.
"""

import json
import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from data.numbers import PhotoId, SuspectId
from data.records import SeenSuspect
from vision.history import same_place

__all__ = ["Carried", "Patches", "carried_name", "carried_of", "carried_photo", "carried_text"]

NAME = "carried "


@dataclass(frozen=True, slots=True, kw_only=True)
class Carried:
    """Suspects of one photo, each with those of the earlier photo that it was; none: it is new."""

    since: PhotoId
    was: Mapping[SuspectId, tuple[SuspectId, ...]]


def carried_name(photo: PhotoId) -> str:
    """Under which name the settings of the book keep what is carried to a photo."""
    return f"{NAME}{photo}"


def carried_photo(name: str) -> PhotoId | None:
    """The photo of such a name; None where it is none."""
    found = re.fullmatch(rf"{NAME}(\d{{1,18}})", name, re.ASCII)
    return None if found is None else PhotoId(int(found[1]))


def carried_text(carried: Carried) -> str:
    """As the book keeps it."""
    return json.dumps(
        {"since": carried.since, "was": {str(one): list(was) for one, was in carried.was.items()}}
    )


def carried_of(text: str) -> Carried | None:
    """The same read again; None where it is something else: a packed book may come from anywhere."""
    try:
        kept = json.loads(text)
        return Carried(
            since=PhotoId(int(kept["since"])),
            was={
                SuspectId(int(one)): tuple(SuspectId(int(earlier)) for earlier in was)
                for one, was in kept["was"].items()
            },
        )
    except (ValueError, KeyError, TypeError, AttributeError, OverflowError):
        return None


class Patches:
    """The suspects of one tray, of all its photos, put together to patches."""

    def __init__(self, seen: Iterable[SeenSuspect]) -> None:
        self._first: dict[SuspectId, SuspectId] = {}
        for one in seen:
            for earlier in one.was:
                self._join(one.id, earlier)

    def _root(self, one: SuspectId) -> SuspectId:
        while (first := self._first.get(one, one)) != one:
            one = first
        return one

    def _join(self, one: SuspectId, other: SuspectId) -> None:
        self._first[self._root(one)] = self._root(other)

    def same(self, one: SeenSuspect, other: SeenSuspect) -> bool:
        """Whether two suspects are one patch."""
        if self._root(one.id) == self._root(other.id):
            return True
        compared = one.since == other.photo_id or other.since == one.photo_id
        return not compared and same_place(one, other)
