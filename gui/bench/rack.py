"""Rack: the tiles of the Bench with what needs a look, shelf by shelf, no Qt.

In    tiles and looks of a book, the words of the search field, what the filters say
Out   `RackState`: the standings in rack order, how many on each shelf
Not   where a tile stands on the screen (`shelves.py`), the words on it (`tilemodel.py`)
"""

from collections.abc import Collection, Iterable, Mapping, Sequence
from dataclasses import dataclass
from itertools import groupby

from data.entry.search import meant
from data.records import Look, Tile, Tray, TrayId

__all__ = ["Choices", "Narrowing", "RackState", "Standing", "choices_of", "rack_state"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Narrowing:
    """Which trays are shown; None: all of them."""

    crop: str | None = None
    medium: str | None = None
    trial: str | None = None
    day: int | None = None  # since sowing
    missing: bool = False  # only those without a photo of today that should have one

    @property
    def count(self) -> int:
        """How many of the filters are on."""
        chosen = (self.crop, self.medium, self.trial, self.day)
        return sum(one is not None for one in chosen) + self.missing


@dataclass(frozen=True, slots=True, kw_only=True)
class Choices:
    """What the filters can choose from, in the order of the alphabet or of the days."""

    crops: tuple[str, ...] = ()
    media: tuple[str, ...] = ()
    trials: tuple[str, ...] = ()
    days: tuple[int, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Standing:
    """One tray on the rack, and the most urgent thing that is to be seen of it."""

    tile: Tile
    look: Look | None = None

    @property
    def id(self) -> int:
        """The tray's id in the book."""
        return int(self.tile.tray_id)


@dataclass(frozen=True, slots=True, kw_only=True)
class RackState:
    """All that the rack shows."""

    standings: tuple[Standing, ...] = ()
    shelves: tuple[tuple[str, int], ...] = ()  # name, trays shown on it
    all_trays: int = 0
    with_photo: int = 0

    @property
    def filtered(self) -> bool:
        """Whether the filter hides some trays."""
        return len(self.standings) < self.all_trays


def rack_state(
    tiles: Sequence[Tile],
    looks: Iterable[Look] = (),
    wanted: str = "",
    narrowed: Narrowing | None = None,
    trays: Mapping[TrayId, Tray] | None = None,
    missing: Collection[TrayId] = (),
) -> RackState:
    """Tiles in the order given, each with its most urgent look; only those that are wanted.

    Parameters
    ----------
    wanted : words of which each begins a word that is said of the tray.
    trays : what else is known of them: trial, tag, block, notes.
    missing : those that should have a photo of today and have none.
    """
    urgent: dict[int, Look] = {}
    for look in looks:
        for tray in look.trays or (look.tray_id,):
            known = urgent.get(tray)
            if known is None or look.urgency < known.urgency:
                urgent[tray] = look
    by_id = trays or {}
    fitting = [tile for tile in tiles if _fits(tile, narrowed or Narrowing(), by_id, missing)]
    shown = meant(fitting, wanted, lambda tile: _said_of(tile, urgent, by_id.get(tile.tray_id)))
    return RackState(
        standings=tuple(Standing(tile=tile, look=urgent.get(tile.tray_id)) for tile in shown),
        shelves=tuple(
            (name, len(list(those))) for name, those in groupby(shown, key=lambda tile: tile.shelf)
        ),
        all_trays=len(tiles),
        with_photo=sum(tile.photo_id is not None for tile in tiles),
    )


def choices_of(tiles: Iterable[Tile], trays: Mapping[TrayId, Tray]) -> Choices:
    """What the trays on the rack can be narrowed to."""
    rack = tuple(tiles)
    return Choices(
        crops=tuple(sorted({tile.crop for tile in rack})),
        media=tuple(sorted({tile.medium for tile in rack})),
        trials=tuple(sorted({tray.trial for tray in trays.values() if tray.trial})),
        days=tuple(sorted({tile.day for tile in rack})),
    )


def _fits(tile: Tile, by: Narrowing, trays: Mapping[TrayId, Tray], missing: Collection[TrayId]) -> bool:
    tray = trays.get(tile.tray_id)
    return (
        by.crop in (None, tile.crop)
        and by.medium in (None, tile.medium)
        and by.day in (None, tile.day)
        and (by.trial is None or (tray is not None and tray.trial == by.trial))
        and (not by.missing or tile.tray_id in missing)
    )


def _said_of(tile: Tile, looks: Mapping[int, Look], tray: Tray | None) -> str:
    look = looks.get(tile.tray_id)
    words: list[object] = [tile.code, tile.crop, tile.medium, tile.shelf, "" if look is None else look.what]
    if tray is not None:
        words += [tray.tag_number, tray.block, tray.trial, tray.seed_lot, tray.note]
    return " ".join(str(word) for word in words if word)
