"""Bench view: what the Bench says, read from the book, no Qt.

In    a book; the words of the filter field
Out   `BenchState`, from which all that can be seen on the Bench follows
Not   the words themselves (`bench.py`), what needs a look (`data.watch`)
"""

from dataclasses import dataclass, field

from data.book import Book
from data.records import Look, LookKind, Tile
from data.watch import read_looks
from gui.rack import RackState, rack_state

__all__ = ["BenchState", "Reading", "bench_state", "read_bench"]

ROWS_AT_FIRST = 3  # of the look list; the rest on demand, so that the rack stays in sight


@dataclass(frozen=True, slots=True, kw_only=True)
class Reading:
    """What was read from the book at one moment."""

    tiles: tuple[Tile, ...] = ()
    looks: tuple[Look, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class BenchState:
    """All that the Bench shows."""

    looks: tuple[Look, ...] = ()
    rack: RackState = field(default_factory=RackState)
    all_looks: bool = False  # the grower wants to see the whole look list
    coming: bool = False  # photos are being scored, so that nobody can say yet which are missing

    @property
    def trays_to_look_at(self) -> int:
        """How many trays need a look."""
        return len({look.tray_id for look in self.looks})

    @property
    def caution(self) -> str | None:
        """The caution that goes with an entry of the list, if one has any."""
        return next((look.caution for look in self.looks if look.caution), None)

    @property
    def no_trays(self) -> bool:
        """Whether the book has no growing tray at all."""
        return self.rack.all_trays == 0

    @property
    def no_photos(self) -> bool:
        """Whether no tray has a photo yet."""
        return self.rack.with_photo == 0

    @property
    def hidden_looks(self) -> int:
        """How many rows of the look list are folded away."""
        return 0 if self.all_looks else max(0, len(self.looks) - ROWS_AT_FIRST)


def read_bench(book: Book) -> Reading:
    """Read the growing trays and what needs a look; for a worker."""
    return Reading(tiles=book.tiles(), looks=read_looks(book))


def bench_state(
    reading: Reading, wanted: str = "", *, all_looks: bool = False, coming: bool = False
) -> BenchState:
    """What to show of a reading, with the rack narrowed to the trays that have the wanted words."""
    looks = tuple(look for look in reading.looks if not (coming and look.what is LookKind.NO_PHOTO))
    return BenchState(
        looks=looks,
        rack=rack_state(reading.tiles, looks, wanted),
        all_looks=all_looks,
        coming=coming,
    )
