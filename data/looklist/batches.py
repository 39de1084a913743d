"""Batches: what is the same for many trays of a shelf -> one line of the look list in place of many.

In    lines of the look list, one a tray
Out   the same, with trays that are merely ready to cut, or merely under the same warm stack, or whose photos
      are in doubt for the same reason, in one line
Not   lines with other reasons in them: those stay by themselves
"""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import replace

from data.look import Look, LookKind
from data.numbers import TrayId
from data.records import Tray
from data.sentence import Sentence

__all__ = ["together"]

CODES_NAMED = 6


def together(looks: Iterable[Look], trays: Mapping[TrayId, Tray]) -> Iterator[Look]:
    """One line for all trays of a shelf that were sown together and need the same."""
    batches: dict[tuple[object, ...], list[Look]] = {}
    for look in looks:
        if look.what not in (LookKind.READY, LookKind.STACK, LookKind.DOUBTED) or look.also:
            yield look
            continue
        batches.setdefault((look.what, look.urgency, *_alike(look, trays[look.tray_id])), []).append(look)
    for batch in batches.values():
        yield batch[0] if len(batch) == 1 else _one_line(batch)


def _alike(look: Look, tray: Tray) -> tuple[object, ...]:
    """What trays of one line share; a camera goes from shelf to shelf."""
    if look.what is LookKind.DOUBTED:
        return (look.sentence,)
    return (tray.shelf, tray.crop, tray.sown_at.date()) if look.what is LookKind.READY else (tray.shelf,)


def _one_line(batch: Sequence[Look]) -> Look:
    codes, what = [look.code for look in batch], _of_all([look.sentence for look in batch])
    named = ", ".join(codes[:CODES_NAMED])
    sentence = (
        Sentence("{codes}: {what}", codes=named, what=what)
        if len(codes) <= CODES_NAMED
        else Sentence(
            "{codes} and {more} more: {what}", codes=named, more=len(codes) - CODES_NAMED, what=what
        )
    )
    return replace(batch[0], sentence=sentence, trays=tuple(look.tray_id for look in batch))


def _of_all(sentences: Sequence[str]) -> str:
    """The first, with the coverage of all where it names one."""
    first = sentences[0]
    if not isinstance(first, Sentence) or "now" not in first.values:
        return first
    covered = [one.values["now"] for one in sentences if isinstance(one, Sentence)]
    least, most = min(covered), max(covered)
    return first if least == most else first.but(now=f"{least}-{most}")
