"""Medium kind: mat, loose mix or something else, in words, and what the program makes of it.

In    the kind of a medium as the book has it; empty until a grower has said it
Out   its words, what they stand for, what follows; which media are taken to lie alike
Not   keeping it (`chapters/traybook.py`), asking for it (`gui/controls/kindfield.py`)

A kind is never told from a medium's name. What follows from it is common practice.
"""

from collections.abc import Mapping
from enum import StrEnum
from types import MappingProxyType

from data.sentence import Sentence

__all__ = ["ALIKE", "MediumKind", "kind_follows", "kind_stands_for", "kind_words", "lies_alike"]


class MediumKind(StrEnum):
    """What a grower can say; the values are what the book and its export hold."""

    MAT = "mat"
    LOOSE = "loose"
    OTHER = "other"


WORDS: Mapping[str, Sentence] = MappingProxyType(
    {
        "": Sentence("not said yet"),
        MediumKind.MAT: Sentence("mat"),
        MediumKind.LOOSE: Sentence("loose mix"),
        MediumKind.OTHER: Sentence("something else"),
    }
)
STANDS_FOR: Mapping[str, Sentence] = MappingProxyType(
    {
        MediumKind.MAT: Sentence("A mat: one piece of felt, fibre, paper or foam"),
        MediumKind.LOOSE: Sentence("A loose mix that is filled in: peat, coir, soil, perlite"),
        MediumKind.OTHER: Sentence("Something else, such as a grid over water"),
        "": Sentence("Not said yet"),
    }
)
FOLLOWS: Mapping[str, Sentence] = MappingProxyType(
    {
        MediumKind.MAT: Sentence(
            "At a thin edge the look list says: a mat that has dried does not rewet by itself, so wet it "
            "from above."
        ),
        MediumKind.LOOSE: Sentence(
            "At a thin edge the look list says: loose mix that has dried shrinks from the wall and water "
            "runs past it, so wet it slowly from above."
        ),
    }
)
FOR_ANY = Sentence("At a thin edge the look list gives the advice that holds for any medium.")
ALIKE = Sentence(
    "A verdict takes two media to lie at one height where both are mats or both are loose mixes, seated "
    "alike; all others it takes to lie at different heights."
)


def kind_words(kind: str) -> str:
    """In a word or two; a word that came in with a table stays as it is."""
    return WORDS.get(kind, kind)


def kind_stands_for() -> Mapping[str, Sentence]:
    """What can be said, as a grower would choose it; "" takes it back."""
    return STANDS_FOR


def kind_follows(kind: str) -> Sentence:
    """What the look list makes of it, or assumes until it is said."""
    return FOLLOWS.get(kind, FOR_ANY)


def lies_alike(one: str, other: str) -> bool:
    """Whether two kinds lie at one height in a tray: two things that are something else may not."""
    return one == other and one in (MediumKind.MAT, MediumKind.LOOSE)
