"""Walk view: what the order of the walk proposes, a shelf of the rack at a time; no Qt.

In    the photos without a tray that have a proposal, and the trays proposed
Out   `WalkShelf`s, day by day in rack order, each with its words
Not   proposing (`data/photos/walk.py`), the band (`walkband.py`)
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import date

from data.photos.walk import by_shelf
from data.records import PhotoId, PhotoRow, PhotoState, Tray, TrayId
from gui.language.spoken import DAY, day_words, filled
from gui.language.words import translate

__all__ = ["WalkShelf", "walk_shelves"]

NAMED = 4  # codes that are all named; of more the first and the last


@dataclass(frozen=True, slots=True, kw_only=True)
class WalkShelf:
    """The photos of one day that probably show the trays of one shelf, in the order of the rack."""

    day: date
    shelf: str  # "" where the trays have none
    photos: tuple[tuple[PhotoId, TrayId], ...]
    codes: tuple[str, ...]  # of their trays, each once; of one that has ended with its last day

    @property
    def key(self) -> tuple[date, str]:
        """By which it is known again when the book was read anew."""
        return self.day, self.shelf

    @property
    def name(self) -> str:
        """The shelf in words."""
        if not self.shelf:
            return translate("WalkBand", "trays without a shelf")
        return translate("WalkBand", "shelf {name}").format(name=self.shelf)

    @property
    def words(self) -> str:
        """Which photos are which trays."""
        codes = ", ".join(self.codes)
        if len(self.codes) > NAMED:
            codes = translate("WalkBand", "{first} to {last}").format(
                first=self.codes[0], last=self.codes[-1]
            )
        words = translate("WalkBand", "{count} photos of {day} show {codes}.")
        if len(self.photos) == 1:
            words = translate("WalkBand", "1 photo of {day} shows {codes}.")
        return filled(words, count=len(self.photos), day=day_words(self.day, DAY), codes=codes)


def walk_shelves(photos: Iterable[PhotoRow], trays: Mapping[TrayId, Tray]) -> tuple[WalkShelf, ...]:
    """All proposals, oldest day first, in each day as the shelves stand."""
    days: dict[date, dict[PhotoId, TrayId]] = {}
    for photo in sorted(photos, key=lambda one: (one.taken_at, one.id)):
        tray = photo.proposal_id
        if photo.state is PhotoState.NEEDS_TRAY and tray is not None and tray in trays:
            days.setdefault(photo.taken_at.date(), {})[photo.id] = tray
    rack = sorted(trays.values(), key=lambda tray: (tray.shelf, tray.position, tray.id))
    return tuple(
        _shelf(day, name, found, trays)
        for day, proposed in days.items()
        for name, found in by_shelf(proposed, rack)
    )


def _shelf(day: date, name: str, found: Mapping[PhotoId, TrayId], trays: Mapping[TrayId, Tray]) -> WalkShelf:
    codes = tuple(dict.fromkeys(_name(trays[tray]) for tray in found.values()))
    return WalkShelf(day=day, shelf=name, photos=tuple(found.items()), codes=codes)


def _name(tray: Tray) -> str:
    if tray.done_at is None:
        return tray.code
    words = translate("WalkBand", "{code} (until {day})")
    return words.format(code=tray.code, day=day_words(tray.done_at, DAY))
