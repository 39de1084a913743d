"""Sensitivity: whether a verdict would be another with a little less, or read another way.

In    the trays of a verdict, and a verdict made of them
Out   for each question one `Otherwise`: the range of each difference, and whose outcome changes
Not   the verdict itself (`verdict`), which questions are asked (`rechecks.py`), words (`surewords.py`)

Asked: any one block left out; the error from each medium's own trays in place of one spread; without the
trays on which an open suspect lies, or that were lost to mold; counted as a share of the inner area, or,
where only that is known, as media at different heights may look; another version of the method where the book
has its scores. While a trial runs nothing is shown either way.
"""

from collections.abc import Callable, Container, Iterable, Sequence
from dataclasses import dataclass, replace
from enum import StrEnum

from data.verdict import Measured, MediumResult, Verdict, verdict_of
from data.verdict.outcome import ErrorFrom, Outcome

__all__ = ["Otherwise", "What", "otherwise", "reader_of", "shifted", "without_each_block", "without_suspects"]


class What(StrEnum):
    """What is done otherwise."""

    ANY_BLOCK = "any one block left out"
    OWN_TRAYS = "error from each medium's own trays"
    NO_SUSPECTS = "without trays with an open suspect"
    NO_LOST = "without trays lost to mold"
    HEIGHTS = "as media at different heights may look"
    OTHER_AREA = "counted as a share of the inner area"
    OTHER_METHOD = "scores of the other version of the method"


TREATS_TRAYS = frozenset({What.NO_SUSPECTS, What.NO_LOST})  # leave trays out, perhaps all of a medium


@dataclass(frozen=True, slots=True, kw_only=True)
class Otherwise:
    """One medium under one question."""

    what: What
    medium: str
    least: float | None  # difference from the trusted medium; None where nothing is left to compare
    most: float | None
    usual: Outcome
    changes: tuple[tuple[str, Outcome | None], ...]  # under what name (a block, say), and to what; None: none
    trays: int  # left, of all media, at the fewest


def otherwise(
    what: What,
    tables: Iterable[tuple[str, Sequence[Measured]]],
    verdict: Verdict,
    again: Callable[[Sequence[Measured]], Verdict],
) -> tuple[Otherwise, ...]:
    """Read each named table again and hold it against the verdict."""
    others = [(name, again(table)) for name, table in tables]
    found = []
    for line in verdict.compared:
        there = [(name, other, _line(other, line.medium)) for name, other in others]
        told = [(name, other, one) for name, other, one in there if one and one.difference is not None]
        usual = line.outcome
        if usual is None or not others:
            continue
        if not told:
            if what in TREATS_TRAYS and usual.is_shown:
                found.append(_nothing_left(what, line.medium, usual, others))
            continue
        differences = [one.difference for _, _, one in told if one.difference is not None]
        found.append(
            Otherwise(
                what=what,
                medium=line.medium,
                least=min(differences),
                most=max(differences),
                usual=usual,
                changes=_changes(usual, [(name, one.outcome) for name, _, one in told]),
                trays=min(other.trays for _, other, _ in told),
            )
        )
    return tuple(found)


def _changes(
    usual: Outcome, told: Iterable[tuple[str, Outcome | None]]
) -> tuple[tuple[str, Outcome | None], ...]:
    """Answers that are others, then those that cannot be had; where nothing is shown that is no change."""
    others = [(name, now) for name, now in told if (now or Outcome.NOT_SHOWN) is not usual]
    return tuple(sorted(others, key=lambda one: one[1] is None))


def _nothing_left(
    what: What, medium: str, usual: Outcome, others: Sequence[tuple[str, Verdict]]
) -> Otherwise:
    return Otherwise(
        what=what,
        medium=medium,
        least=None,
        most=None,
        usual=usual,
        changes=((others[0][0], None),),
        trays=min(other.trays for _, other in others),
    )


def _line(verdict: Verdict, medium: str) -> MediumResult | None:
    return next((line for line in verdict.compared if line.medium == medium), None)


def reader_of(
    verdict: Verdict, *, by_shelf: bool = False, own_trays: bool = False
) -> Callable[[Sequence[Measured]], Verdict]:
    """Asks another table exactly what was asked for a verdict."""

    def again(table: Sequence[Measured]) -> Verdict:
        return verdict_of(
            table,
            verdict.trusted,
            verdict.margin,
            lower_is_better=verdict.lower_is_better,
            so_far=verdict.so_far,
            camera_sd=verdict.camera_sd,
            by_shelf=by_shelf,
            own_trays=own_trays or verdict.error_from is ErrorFrom.OWN_TRAYS,
            quick=True,
        )

    return again


def without_each_block(table: Sequence[Measured]) -> list[tuple[str, list[Measured]]]:
    """The table as often as it has blocks, each time without one; nothing where two are left or fewer."""
    blocks = tuple(dict.fromkeys(row.block for row in table))
    if len(blocks) < 3:
        return []
    return [(block, [row for row in table if row.block != block]) for block in blocks]


def shifted(table: Sequence[Measured], media: Container[str], by: float) -> list[tuple[str, list[Measured]]]:
    """The table twice, with the numbers of some media lower and higher."""
    if by == 0:
        return []
    return [
        (
            f"{sign * by:+.1f}",
            [replace(row, value=row.value + sign * by) if row.medium in media else row for row in table],
        )
        for sign in (-1, 1)
    ]


def without_suspects(table: Sequence[Measured]) -> list[tuple[str, list[Measured]]]:
    """The table without trays on which an open suspect lies; nothing where there are none."""
    kept = [row for row in table if not row.suspect]
    return [] if len(kept) == len(table) else [("", kept)]
