"""Rechecks: a verdict asked again in every way that could change it.

In    a verdict, its trays, and what of them may be doubted
Out   `Otherwise`s, all questions of one kind after the other; none while the trial runs
Not   asking one table again (`sensitivity.py`), words (`surewords.py`)
"""

from collections.abc import Container, Iterable, Iterator, Sequence

from data.verdict import Measured, Verdict
from data.verdict.outcome import ErrorFrom
from data.verdict.sensitivity import (
    Otherwise,
    What,
    otherwise,
    reader_of,
    shifted,
    without_each_block,
    without_suspects,
)

__all__ = ["rechecks"]


def rechecks(
    verdict: Verdict,
    table: Sequence[Measured],
    *,
    by_shelf: bool = False,
    moldy: Container[str] = (),
    shift: float = 0.0,
    other_height: Container[str] = (),
    other_area: Iterable[tuple[str, Sequence[Measured]]] = (),
    other_method: Iterable[tuple[str, Sequence[Measured]]] = (),
) -> Iterator[Otherwise]:
    """Ask again.

    Parameters
    ----------
    moldy : codes of trays that were lost to mold.
    shift : by which media of `other_height` may come out too high or too low to the camera.
    other_area : the same trays counted the other way.
    other_method : the same trays by another version of the method.
    """
    if verdict.so_far or not any(line.outcome for line in verdict.compared):
        return
    again = reader_of(verdict, by_shelf=by_shelf)
    if verdict.error_from is ErrorFrom.ALL_MEDIA:
        own = reader_of(verdict, own_trays=True)
        yield from otherwise(What.OWN_TRAYS, [("", table)], verdict, own)
    yield from otherwise(What.ANY_BLOCK, without_each_block(table), verdict, again)
    yield from otherwise(What.NO_SUSPECTS, without_suspects(table), verdict, again)
    kept = [row for row in table if row.tray not in moldy]
    if len(kept) < len(table):
        yield from otherwise(What.NO_LOST, [("", kept)], verdict, again)
    for one in otherwise(What.HEIGHTS, shifted(table, other_height, shift), verdict, again):
        if one.medium in other_height:
            yield one
    yield from otherwise(What.OTHER_AREA, other_area, verdict, again)
    yield from otherwise(What.OTHER_METHOD, other_method, verdict, again)
