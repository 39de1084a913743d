"""Measure words: what is compared, and which part of the canopy score moves it, as sentences.

In    a kind of measure, a part of the score, `Mover`s
Out   `Sentence`s
Not   whether two measures agree (`together.py`)
"""

from collections.abc import Container, Sequence
from itertools import groupby

from data.desirability import PartName
from data.sentence import Sentence
from data.trial import MeasureKind
from data.verdict.countedof import CountedOf
from data.verdict.movers import Mover

__all__ = ["kind_words", "mover_words", "part_words"]


def kind_words(kind: MeasureKind) -> Sentence:
    """A measure."""
    match kind:
        case MeasureKind.SCORE:
            return Sentence("Canopy score")
        case MeasureKind.YIELD:
            return Sentence("Yield")
        case MeasureKind.EYE:
            return Sentence("Score by eye")


def mover_words(
    movers: Sequence[Mover], counted: CountedOf | None = None, *, moldy: Container[str] = ()
) -> tuple[Sentence, ...]:
    """For each medium the part that moves its score most.

    Parameters
    ----------
    moldy : media of whose difference mold is a part that movers do not tell: trays that score nothing for it.
    """
    found = []
    for medium, group in groupby(movers, key=lambda mover: mover.medium):
        first = next(iter(group))
        values = {
            "medium": medium,
            "part": part_words(first.part, counted),
            "value": first.value,
            "trusted": first.trusted_value,
            "points": first.points + 0.0,
        }
        if medium in moldy:
            found.append(
                Sentence(
                    "Apart from mold, for which trays score nothing here, what moves the score of {medium} "
                    "most is {part}, {value:.1f} against {trusted:.1f} %: worth {points:+.1f} points.",
                    **values,
                )
            )
            continue
        found.append(
            Sentence(
                "What moves the score of {medium} most is {part}, {value:.1f} against {trusted:.1f} %: worth "
                "{points:+.1f} points.",
                **values,
            )
        )
    return tuple(found)


def part_words(part: PartName, counted: CountedOf | None = None) -> Sentence:
    """A part of the canopy score; `counted` names what it is a share of where that is not the inner area."""
    match part:
        case PartName.COVERAGE if counted is CountedOf.BED:
            return Sentence("coverage of the growing bed")
        case PartName.UNIFORMITY if counted is CountedOf.BED:
            return Sentence("uniformity on the growing bed")
        case PartName.COVERAGE:
            return Sentence("coverage")
        case PartName.UNIFORMITY:
            return Sentence("uniformity")
        case PartName.COLOUR:
            return Sentence("colour (canopy that is not pale)")
        case PartName.MOLD:
            return Sentence("mold")
