"""Together: whether the measures of one crop say the same, tray by tray and medium by medium.

In    the verdicts of one crop by each measure
Out   `Sentence`s
Not   which measure decides (`terms.py`)
"""

from collections.abc import Iterator, Mapping, Sequence
from itertools import combinations
from typing import TYPE_CHECKING

from data.sentence import Sentence
from data.verdict.measurewords import kind_words
from data.verdict.outcome import Outcome
from data.verdict.words import outcome_words

if TYPE_CHECKING:
    from data.verdict.verdicts import CropVerdict

__all__ = ["measures_together"]

LEAST_TRAYS = 5  # for a rank correlation of two measures


def measures_together(found: Sequence["CropVerdict"], *, planned: bool) -> tuple[Sentence, ...]:
    """Whether the measures of one crop say the same; `planned`: whether a plan names the one that decides."""
    return tuple(_together(found, planned=planned))


def _together(found: Sequence["CropVerdict"], *, planned: bool) -> Iterator[Sentence]:
    for one, other in combinations(found, 2):
        rank = _rank_correlation(one, other)
        values: dict[str, Sentence | str] = {"one": kind_words(one.kind), "other": kind_words(other.kind)}
        if rank is not None:
            yield Sentence(
                "{one} and {other}: rank correlation {rho:+.2f} over {trays} trays (1 the same order, 0 "
                "unrelated, -1 the other way round).",
                trays=rank[1],
                rho=rank[0],
                **values,
            )
        for line in one.verdict.compared:
            twin = next((m for m in other.verdict.compared if m.medium == line.medium), None)
            if twin is None or not _contrary(line.outcome, twin.outcome):
                continue
            values |= {
                "medium": line.medium,
                "first": outcome_words(line.outcome or Outcome.NOT_SHOWN),
                "second": outcome_words(twin.outcome or Outcome.NOT_SHOWN),
            }
            yield _contrary_words(values, planned=planned)


def _contrary_words(values: Mapping[str, Sentence | str], *, planned: bool) -> Sentence:
    if planned:
        return Sentence(
            "{one} and {other} say different things of {medium}: {first} and {second}. The one that was "
            "named beforehand decides.",
            **values,
        )
    return Sentence(
        "{one} and {other} say different things of {medium}: {first} and {second}. None was named beforehand "
        "as the one that decides.",
        **values,
    )


def _contrary(one: Outcome | None, other: Outcome | None) -> bool:
    """Whether one says worse and the other does not, or one lower and the other better."""
    told = {one, other}
    if Outcome.WORSE in told:
        return bool(told & {Outcome.BETTER, Outcome.AS_GOOD, Outcome.AS_GOOD_LOWER})
    return told == {Outcome.BETTER, Outcome.AS_GOOD_LOWER}


def _rank_correlation(one: "CropVerdict", other: "CropVerdict") -> tuple[float, int] | None:
    from data.statistics.agreement import spearman

    first = {n.tray.id: n.value for n in one.numbers if n.value is not None}
    second = {n.tray.id: n.value for n in other.numbers if n.value is not None}
    both = sorted(first.keys() & second.keys())
    if len(both) < LEAST_TRAYS:
        return None
    rank = spearman([first[tray] for tray in both], [second[tray] for tray in both])
    return None if rank is None else (rank.rho, rank.n)
