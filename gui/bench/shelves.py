"""Shelves: where each tile of the rack stands, shelf by shelf.

In    how many trays stand on each shelf, the width to fill, the size of a tile; px
Out   `ShelfPlan`: boxes of heads and tiles, what lies at a point or between two heights, who stands below
Not   painting (`tilepainter.py`), Qt
"""

from bisect import bisect_right
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import accumulate

__all__ = ["Box", "ShelfPlan", "TileSize", "plan_shelves"]


@dataclass(frozen=True, slots=True)
class Box:
    """A rectangle, px."""

    x: int
    y: int
    width: int
    height: int


@dataclass(frozen=True, slots=True, kw_only=True)
class TileSize:
    """What a tile needs, px."""

    least_width: int
    most_width: int
    text_height: int  # below the picture, which is half as high as it is wide
    head_height: int  # the line with the shelf's name
    gap: int


@dataclass(frozen=True, slots=True, kw_only=True)
class ShelfPlan:
    """The rack laid out; tiles are numbered along the shelves from 0."""

    counts: tuple[int, ...]
    firsts: tuple[int, ...]  # number of the first tile of each shelf
    tops: tuple[int, ...]  # where the head of each shelf begins
    columns: int
    tile_width: int
    tile_height: int
    head_height: int
    gap: int
    width: int
    height: int

    def head(self, shelf: int) -> Box:
        """The line with the shelf's name."""
        return Box(0, self.tops[shelf], self.width, self.head_height)

    def tile(self, number: int) -> Box:
        """The place of a tile."""
        shelf = self.shelf_of(number)
        row, column = divmod(number - self.firsts[shelf], self.columns)
        top = self.tops[shelf] + self.head_height
        return Box(
            column * (self.tile_width + self.gap),
            top + row * (self.tile_height + self.gap),
            self.tile_width,
            self.tile_height,
        )

    def shelf_of(self, number: int) -> int:
        """The shelf on which a tile stands."""
        return bisect_right(self.firsts, number) - 1

    def at(self, x: int, y: int) -> int | None:
        """The tile at a point, or None between tiles."""
        shelf = bisect_right(self.tops, y) - 1
        if shelf < 0:
            return None
        row, below = divmod(y - self.tops[shelf] - self.head_height, self.tile_height + self.gap)
        column, beside = divmod(x, self.tile_width + self.gap)
        number = row * self.columns + column
        inside = below < self.tile_height and beside < self.tile_width and 0 <= column < self.columns
        return self.firsts[shelf] + number if row >= 0 and inside and number < self.counts[shelf] else None

    def between(self, top: int, bottom: int) -> range:
        """The tiles of which something lies between two heights (and at most a row more)."""
        if not self.counts:
            return range(0)
        return range(self._first_from(top), self._first_after(bottom))

    def shelves_between(self, top: int, bottom: int) -> range:
        """The shelves of which something lies between two heights."""
        return range(max(0, bisect_right(self.tops, top) - 1), bisect_right(self.tops, bottom))

    def _first_from(self, y: int) -> int:
        shelf = max(0, bisect_right(self.tops, y) - 1)
        row = max(0, (y - self.tops[shelf] - self.head_height) // (self.tile_height + self.gap))
        return self.firsts[shelf] + min(row * self.columns, self.counts[shelf])

    def _first_after(self, y: int) -> int:
        shelf = bisect_right(self.tops, y) - 1
        if shelf < 0:
            return 0
        rows = max(0, (y - self.tops[shelf] - self.head_height) // (self.tile_height + self.gap) + 1)
        return self.firsts[shelf] + min(rows * self.columns, self.counts[shelf])

    def below(self, number: int) -> int:
        """The tile under this one, also on the next shelf; the same where there is none."""
        shelf = self.shelf_of(number)
        place = number - self.firsts[shelf]
        if place + self.columns < self.counts[shelf]:
            return number + self.columns
        last_row = (self.counts[shelf] - 1) // self.columns
        if place // self.columns < last_row:
            return self.firsts[shelf] + self.counts[shelf] - 1
        if shelf + 1 == len(self.counts):
            return number
        return self.firsts[shelf + 1] + min(place % self.columns, self.counts[shelf + 1] - 1)

    def above(self, number: int) -> int:
        """The tile over this one, also on the shelf before; the same where there is none."""
        shelf = self.shelf_of(number)
        place = number - self.firsts[shelf]
        if place >= self.columns:
            return number - self.columns
        if shelf == 0:
            return number
        count = self.counts[shelf - 1]
        last_row = (count - 1) // self.columns * self.columns
        return self.firsts[shelf - 1] + min(last_row + place % self.columns, count - 1)


def plan_shelves(counts: Sequence[int], width: int, size: TileSize) -> ShelfPlan:
    """Lay the rack out in `width` px.

    As many columns as fit, yet no more than the longest shelf has trays; tiles share the width evenly, up to
    their greatest width. Every shelf must hold a tray: an empty one is no shelf of the rack.
    """
    if any(count < 1 for count in counts):
        raise ValueError(f"every shelf holds at least one tray; got {tuple(counts)}")
    fitting = max(1, (width + size.gap) // (size.least_width + size.gap))
    columns = max(1, min(fitting, max(counts, default=1)))
    tile_width = max(1, min(size.most_width, (width - (columns - 1) * size.gap) // columns))
    tile_height = tile_width // 2 + size.text_height
    heights = [
        size.head_height + -(-count // columns) * (tile_height + size.gap) + size.gap for count in counts
    ]
    ends = list(accumulate(heights, initial=0))
    return ShelfPlan(
        counts=tuple(counts),
        firsts=tuple(accumulate(counts[:-1], initial=0)) if counts else (),
        tops=tuple(ends[:-1]),
        columns=columns,
        tile_width=tile_width,
        tile_height=tile_height,
        head_height=size.head_height,
        gap=size.gap,
        width=width,
        height=ends[-1],
    )
