"""Half way: a medium that was written under another name from some block on.

In    block and medium of each tray
Out   pairs of names that may be one medium
Not   joining them: only a person knows
"""

from collections.abc import Iterable
from itertools import combinations

__all__ = ["renamed_half_way"]


def renamed_half_way(trays: Iterable[tuple[str, str]]) -> tuple[tuple[str, str], ...]:
    """Names that never share a block, while together they stand in every block and all others in each.

    Such a table comes about by a change of name much more often than by a plan.
    """
    where: dict[str, set[str]] = {}
    for block, medium in trays:
        where.setdefault(medium, set()).add(block)
    blocks = set().union(*where.values()) if where else set()
    partial = [medium for medium, there in where.items() if there != blocks]
    return tuple(
        (one, other)
        for one, other in combinations(partial, 2)
        if not where[one] & where[other] and where[one] | where[other] == blocks
    )
