"""Placing: which blocks of a trial stand where a grower said, and which where the program drew.

In    all drawings of a trial, oldest first
Out   the blocks of the newest one that were entered by hand, each with the grower's words
Not   drawing (`drawing.py`), reading what was entered (`handplaces.py`)

A later drawing leaves blocks that stand as they were, and other limits of the canopy score copied the whole
drawing with a reason of their own in older books: so each block is told by the first of those drawings that
have it alike.
Where lots gave a block that waits the very order that was entered before, it is called entered, too.
"""

from collections.abc import Sequence

from data.plan.drawing import KeptDraw, Place

__all__ = ["entered_blocks"]


def entered_blocks(draws: Sequence[KeptDraw]) -> dict[str, str]:
    """Words by block; empty words where the grower gave none."""
    if not draws:
        return {}
    blocks = dict.fromkeys(place.block for place in draws[-1].draw.places)
    first = {block: _first_alike(draws, block) for block in blocks}
    return {block: one.why for block, one in first.items() if one.draw.seed == 0}


def _first_alike(draws: Sequence[KeptDraw], block: str) -> KeptDraw:
    """The first of the newest drawings that agree about a block."""
    found = draws[-1]
    for earlier in reversed(draws[:-1]):
        if _of_block(earlier, block) != _of_block(found, block):
            break
        found = earlier
    return found


def _of_block(kept: KeptDraw, block: str) -> set[Place]:
    return {place for place in kept.draw.places if place.block == block}
