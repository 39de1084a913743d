"""Places: the cells of one photo -> how much thinner the sides and corners of the tray are than its middle.

In    the 72 cells of a score, packed as the book keeps them (6 rows of 12, 1/100 %, far side first)
Out   shares of cells in %; for each side and corner the points that it lacks; an earlier day the way round
      that the tray stands now
Not   whether that needs a look (`evenness.py`), measuring (`vision.stand`)

Light on purpose, no numpy: the look list of a morning asks this of every growing tray.
"""

import struct
from functools import lru_cache
from itertools import compress
from operator import le
from statistics import median

__all__ = ["COLUMNS", "PLACES", "ROWS", "as_now", "bare_share", "cells_in", "lacks", "lost_patch"]

ROWS, COLUMNS = 6, 12
Shares = tuple[float, ...]  # of the 72 cells, %
CELL = struct.Struct(f"<{ROWS * COLUMNS}H")

PLACES: dict[str, tuple[int, ...]] = {
    "far": tuple(range(COLUMNS)),
    "near": tuple(range((ROWS - 1) * COLUMNS, ROWS * COLUMNS)),
    "left": tuple(range(0, ROWS * COLUMNS, COLUMNS)),
    "right": tuple(range(COLUMNS - 1, ROWS * COLUMNS, COLUMNS)),
} | {
    f"{side} {end}": tuple(row * COLUMNS + column for row in rows for column in columns)
    for side, rows in (("far", (0, 1, 2)), ("near", (3, 4, 5)))
    for end, columns in (("left", (0, 1, 2)), ("right", (9, 10, 11)))
}
TURNED = 0.7  # of the difference that there is straight: a tray that stands as it did fits as well either way
MIDDLE = tuple(row * COLUMNS + column for row in range(1, ROWS - 1) for column in range(1, COLUMNS - 1))


@lru_cache(maxsize=4096)
def cells_in(packed: bytes) -> Shares:
    """The 72 shares in %, row by row from the far left."""
    return tuple(value / 100.0 for value in CELL.unpack(packed))


@lru_cache(maxsize=4096)
def lacks(packed: bytes) -> dict[str, float]:
    """Points by which each side (one cell deep, 42 mm) and corner is thinner than the middle."""
    cells = cells_in(packed)
    middle = median(cells[n] for n in MIDDLE)
    return {place: middle - sum(cells[n] for n in inside) / len(inside) for place, inside in PLACES.items()}


@lru_cache(maxsize=4096)
def as_now(before: bytes, now: bytes) -> bytes:
    """The cells of an earlier day, turned round where they clearly fit those of now that way.

    Trays are turned end for end so that all of them gets the light (common practice).
    """
    old, new = (_from_mean(cells_in(packed)) for packed in (before, now))
    straight, turned = (sum(abs(a - b) for a, b in zip(way, new, strict=True)) for way in (old, old[::-1]))
    return CELL.pack(*CELL.unpack(before)[::-1]) if turned < TURNED * straight else before


def _from_mean(cells: Shares) -> Shares:
    mean = sum(cells) / len(cells)
    return tuple(value - mean for value in cells)


@lru_cache(maxsize=4096)
def bare_share(packed: bytes) -> float:
    """Share of cells, %, with less than a third of what the middle one of all cells has."""
    cells = cells_in(packed)
    limit = median(cells) / 3.0
    return 100.0 * len([value for value in cells if value < limit]) / len(cells)


def lost_patch(before: bytes, now: tuple[bytes, bytes], least: float) -> tuple[int, ...]:
    """The largest connected patch of cells that lack at least `least` points on both days of `now`.

    A tray may have been turned round meanwhile: the way round that shows the smaller loss counts.
    """
    old, days = cells_in(before), tuple(map(cells_in, now))
    patch = _largest(_lost(old, days, least))
    return min(patch, _largest(_lost(old[::-1], days, least)), key=len) if patch else ()


def _lost(old: Shares, days: tuple[Shares, ...], least: float) -> set[int]:
    """Cells that lack it on each of the days; on most trays none does on the first."""
    limits = [had - least for had in old]
    lost: set[int] | None = None
    for now in days:
        here = compress(range(len(old)), map(le, now, limits))
        lost = set(here) if lost is None else lost.intersection(here)
        if not lost:
            break
    return lost or set()


def _largest(cells: set[int]) -> tuple[int, ...]:
    """The largest group of cells that touch along a side."""
    rest = set(cells)
    best: list[int] = []
    while rest:
        group, edge = [], [rest.pop()]
        while edge:
            cell = edge.pop()
            group.append(cell)
            row, column = divmod(cell, COLUMNS)
            beside = (
                (row - 1, column), (row + 1, column), (row, column - 1), (row, column + 1),
            )  # fmt: skip
            for r, c in beside:
                other = r * COLUMNS + c
                if 0 <= r < ROWS and 0 <= c < COLUMNS and other in rest:
                    rest.remove(other)
                    edge.append(other)
        best = max(best, group, key=len)
    return tuple(sorted(best))
