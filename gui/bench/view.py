"""Bench view: what the Bench says, read from the book, no Qt.

In    a book; the words of the filter field
Out   `BenchState`, from which all that can be seen on the Bench follows
Not   the words themselves (`screen.py`), what needs a look (`data.watch`)
"""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date
from pathlib import Path

from data.book import Book
from data.looklist.missing import is_covered
from data.records import Look, LookKind, PhotoId, Tile, Tray, TrayId
from data.watch import read_looks
from gui.bench.rack import Choices, Narrowing, RackState, choices_of, rack_state
from gui.language.spoken import spoken

__all__ = ["BenchState", "Reading", "bench_state", "read_bench"]

LATELY_D = 30  # days after its end in which a tray can be named at the foot of the Bench
MOST_ENDED = 200
ROWS_AT_FIRST = 3  # of the look list; the rest on demand, so that the rack stays in sight


@dataclass(frozen=True, slots=True, kw_only=True)
class Reading:
    """What was read from the book at one moment."""

    tiles: tuple[Tile, ...] = ()
    looks: tuple[Look, ...] = ()
    trays: Mapping[TrayId, Tray] = field(default_factory=dict)
    tags: Mapping[int, TrayId] = field(default_factory=dict)
    today: date | None = None
    to_sow: int = 0  # trays that are planned and drawn, where none stands on the rack
    ended: int = 0  # trays that stood on it, where none does
    after: tuple[Tile, ...] = ()  # trays that ended of late: minutes, marks and days to keep follow the cut
    taken_back: bool = False  # what was done last
    seen_today: frozenset[TrayId] = frozenset()  # also where a photo of another day stands on the tile
    covered: frozenset[TrayId] = frozenset()  # still in the dark, or sown today: nobody photographs them

    @property
    def open_now(self) -> tuple[Tile, ...]:
        """Trays that should have a photo of today."""
        return tuple(tile for tile in self.tiles if tile.tray_id not in self.covered)

    @property
    def pictures(self) -> Mapping[Path, PhotoId]:
        """Thumbnails and the photos that they show."""
        return {
            tile.thumbnail: tile.photo_id
            for tile in self.tiles
            if tile.thumbnail is not None and tile.photo_id is not None
        }

    @property
    def missing(self) -> tuple[Tile, ...]:
        """Those of them that have none yet."""
        return tuple(
            tile
            for tile in self.open_now
            if tile.tray_id not in self.seen_today
            and (tile.taken_at is None or (self.today is not None and tile.taken_at.date() != self.today))
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class BenchState:
    """All that the Bench shows."""

    looks: tuple[Look, ...] = ()
    rack: RackState = field(default_factory=RackState)
    all_looks: bool = False  # the grower wants to see the whole look list
    choices: Choices = field(default_factory=Choices)
    to_photograph: int = 0  # trays that should have a photo of today
    missing: tuple[str, ...] = ()  # codes of those that have none yet
    coming: bool = False  # photos are being scored, so that nobody can say yet which are missing

    @property
    def trays_to_look_at(self) -> int:
        """How many trays need a look."""
        return len({look.tray_id for look in self.looks})

    @property
    def caution(self) -> str | None:
        """The caution that goes with an entry of the list, if one has any."""
        return next((spoken(look.caution) for look in self.looks if look.caution), None)

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
    morning = book.morning()
    trays, today = morning.trays, morning.today
    return Reading(
        tiles=book.tiles(morning),
        looks=read_looks(book, morning),
        trays={tray.id: tray for tray in trays},
        tags={tray.tag_number: tray.id for tray in trays if tray.tag_number is not None},
        today=today,
        to_sow=0 if trays else book.trays_to_sow(),
        ended=0 if trays else len(book.trays(growing=False)),
        after=_ended_of_late(book, today),
        taken_back=book.redo_text() is not None,
        seen_today=frozenset(
            one.tray_id
            for one in morning.numbers
            if one.sure and one.refusal is None and one.taken_at.date() == today
        ),
        covered=frozenset(
            tray.id for tray in trays if is_covered(tray, today) or tray.sown_at.date() >= today
        ),
    )


def _ended_of_late(book: Book, today: date) -> tuple[Tile, ...]:
    """Last ended first."""
    return tuple(
        Tile(
            tray_id=tray.id, code=tray.code, crop=tray.crop, medium=tray.medium, shelf=tray.shelf,
            position=tray.position, day=tray.day(today), photo_id=None, taken_at=None, thumbnail=None,
            coverage=None, growth=(), mold=False,
        )
        for tray in book.ended_trays(MOST_ENDED)
        if tray.done_at is not None and (today - tray.done_at.date()).days <= LATELY_D
    )  # fmt: skip


def bench_state(
    reading: Reading,
    wanted: str = "",
    narrowed: Narrowing | None = None,
    *,
    all_looks: bool = False,
    coming: bool = False,
) -> BenchState:
    """What to show of a reading, with the rack narrowed to the trays that are wanted."""
    looks = tuple(look for look in reading.looks if not (coming and look.what is LookKind.NO_PHOTO))
    missing = reading.missing
    ids = frozenset(tile.tray_id for tile in missing)
    return BenchState(
        looks=looks,
        rack=rack_state(reading.tiles, looks, wanted, narrowed, reading.trays, ids),
        choices=choices_of(reading.tiles, reading.trays),
        all_looks=all_looks,
        to_photograph=len(reading.open_now),
        missing=tuple(tile.code for tile in missing),
        coming=coming,
    )
