"""Rack steps: from one tile of the rack to the one that a key leads to.

In    the laid out rack, what the key says, the tile of now, how many rows are seen at once
Out   the number of the tile
Not   which key says what (Qt), showing the tile (`rackview.py`)
"""

from PySide6.QtWidgets import QAbstractItemView

from gui.bench.shelves import ShelfPlan

__all__ = ["Move", "stepped"]

Move = QAbstractItemView.CursorAction


def stepped(plan: ShelfPlan, action: Move, tile: int, count: int, rows: int) -> int:
    """The tile of `count` ones, at least one, to which `action` leads from `tile`."""
    match action:
        case Move.MoveLeft | Move.MovePrevious:
            return max(0, tile - 1)
        case Move.MoveRight | Move.MoveNext:
            return min(count - 1, tile + 1)
        case Move.MoveUp:
            return plan.above(tile)
        case Move.MoveDown:
            return plan.below(tile)
        case Move.MoveHome:
            return 0
        case Move.MoveEnd:
            return count - 1
        case _:
            return _page(plan, tile, rows, up=action is Move.MovePageUp)


def _page(plan: ShelfPlan, tile: int, rows: int, *, up: bool) -> int:
    step = plan.above if up else plan.below
    for _ in range(rows):
        tile = step(tile)
    return tile
