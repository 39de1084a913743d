"""Repeats: what a trial has several of, its trays or whole shelves.

In    trays with their numbers and shelves
Out   one number for each tray, or one for each shelf
Not   when a shelf is what repeats (`splitplot`), the comparison (`comparison.py`)
"""

from collections.abc import Sequence

from data.statistics.splitplot import Plot, medium_is_the_shelfs, shelf_means
from data.verdict import Measured

__all__ = ["what_repeats"]


def what_repeats(table: Sequence[Measured]) -> tuple[Sequence[Measured], bool]:
    """The trays, or one number a shelf where each shelf holds one medium."""
    plots = _plots(table)
    if not medium_is_the_shelfs(plots):
        return table, False
    return [
        Measured(block=block, shelf=shelf, medium=medium, value=value)
        for block, shelf, medium, value in shelf_means(plots)
    ], True


def _plots(table: Sequence[Measured]) -> list[Plot]:
    """The trays with their shelves; none where too few are known.

    A tray of which nobody noted the shelf joins its mates: one gap does not make whole shelves many trays.
    """
    noted = [row for row in table if row.shelf is not None]
    of_mates = {(row.block, row.medium): row.shelf for row in reversed(noted)}
    if 2 * len(noted) <= len(table) or any((row.block, row.medium) not in of_mates for row in table):
        return []
    return [
        (row.block, row.shelf or of_mates[row.block, row.medium] or "", row.medium, row.value)
        for row in table
    ]
