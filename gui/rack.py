"""Rack: the tiles of the Bench with what needs a look, shelf by shelf, no Qt.

In    tiles and looks of a book, the words of the filter field
Out   `RackState`: the standings in rack order, how many on each shelf
Not   where a tile stands on the screen (`shelves.py`), the words on it (`tilemodel.py`)
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import groupby

from data.records import Look, Tile
from data.search import meant

__all__ = ["RackState", "Standing", "rack_state"]


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


def rack_state(tiles: Sequence[Tile], looks: Iterable[Look] = (), wanted: str = "") -> RackState:
    """Tiles in the order given, each with its most urgent look; only those that `wanted` means."""
    urgent: dict[int, Look] = {}
    for look in looks:
        known = urgent.get(look.tray_id)
        if known is None or look.urgency < known.urgency:
            urgent[look.tray_id] = look
    shown = meant(tiles, wanted, lambda tile: _said_of(tile, urgent))
    return RackState(
        standings=tuple(Standing(tile=tile, look=urgent.get(tile.tray_id)) for tile in shown),
        shelves=tuple(
            (name, len(list(those))) for name, those in groupby(shown, key=lambda tile: tile.shelf)
        ),
        all_trays=len(tiles),
        with_photo=sum(tile.photo_id is not None for tile in tiles),
    )


def _said_of(tile: Tile, looks: dict[int, Look]) -> str:
    look = looks.get(tile.tray_id)
    words = (tile.code, tile.crop, tile.medium, tile.shelf, "" if look is None else str(look.what))
    return " ".join(words)
