"""Measure words: what is compared, and which part of the canopy score moves it, as sentences.

In    a kind of measure, a part of the score, `Mover`s
Out   `Sentence`s
Not   whether two measures agree (`together.py`)
"""

from collections.abc import Sequence
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


def mover_words(movers: Sequence[Mover], counted: CountedOf | None = None) -> tuple[Sentence, ...]:
    """For each medium the part that moves its score most."""
    found = []
    for medium, group in groupby(movers, key=lambda mover: mover.medium):
        first = next(iter(group))
        found.append(
            Sentence(
                "What moves the score of {medium} most is {part}, {value:.1f} against {trusted:.1f} %: worth "
                "{points:+.1f} points.",
                medium=medium,
                part=part_words(first.part, counted),
                value=first.value,
                trusted=first.trusted_value,
                points=first.points + 0.0,
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
