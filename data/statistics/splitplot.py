"""Split plot: when a setting belongs to a whole shelf, shelves are what repeats.

In    trays with block, shelf and medium
Out   whether the medium is the shelf's; then one number a shelf
Not   the comparison itself (`verdict`), how many shelves it takes (`power.py`)

Light, heat, stacking or watering set per shelf is tested against shelves within blocks, never against trays
(Yates 1935, Complex experiments, JRSS Supplement 2, 181-247). One shelf a setting leaves no error at all.
"""

from collections.abc import Iterable, Sequence
from itertools import groupby

import numpy as np

__all__ = ["Plot", "medium_is_the_shelfs", "shelf_means"]

Plot = tuple[str, str, str, float]  # block, shelf, medium, value


def medium_is_the_shelfs(trays: Iterable[Plot]) -> bool:
    """Whether every shelf of every block holds one medium, and at least one shelf holds several trays."""
    media: dict[tuple[str, str], list[str]] = {}
    for block, shelf, medium, _ in trays:
        media.setdefault((block, shelf), []).append(medium)
    one_each = all(len(set(there)) == 1 for there in media.values())
    several_media = len({medium for there in media.values() for medium in there}) > 1
    return one_each and several_media and any(len(there) > 1 for there in media.values())


def shelf_means(trays: Sequence[Plot]) -> tuple[Plot, ...]:
    """One number for each shelf of each block: the mean of its trays."""
    ordered = sorted(trays, key=lambda tray: tray[:3])
    return tuple(
        (*place, float(np.mean([tray[3] for tray in there])))
        for place, there in ((key, list(group)) for key, group in groupby(ordered, key=lambda tray: tray[:3]))
    )
