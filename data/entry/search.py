"""Search: words that a person types -> the trays that they mean.

In    trays or tiles of them; what is said of each; some words
Out   those of which each word is the beginning of a word that is said of them
Not   what is said of a tray, and showing them (`gui/bench/rack.py`)

A word that stands somewhere as a whole means that alone: "pea" is the pea and not the peat, while "pe" is
both. Small and capital letters and accents are all one.
"""

import re
import unicodedata
from collections.abc import Callable, Iterable
from typing import TypeVar

__all__ = ["meant"]

T = TypeVar("T")

WORD = re.compile(r"[^\W_]+")


def meant(things: Iterable[T], text: str, said_of: Callable[[T], str]) -> tuple[T, ...]:
    """The things that a text means, in the order given; all of them where the text is empty."""
    asked = _words(text)
    kept = [(one, _words(said_of(one)) if asked else []) for one in things]
    for word in asked:
        whole = [(one, said) for one, said in kept if word in said]
        kept = whole or [(one, said) for one, said in kept if any(other.startswith(word) for other in said)]
    return tuple(one for one, _ in kept)


def _words(text: str) -> list[str]:
    plain = text.casefold()
    if not plain.isascii():
        plain = "".join(c for c in unicodedata.normalize("NFKD", plain) if not unicodedata.combining(c))
    return WORD.findall(plain)
