"""Search: words that a person types -> the trays that they mean.

In    trays; some words
Out   the trays of whose code, crop, medium, place or notes each word is the beginning of a word
Not   asking the book (`chapters/reader.py`), showing them (window)

A word that stands somewhere as a whole means that alone: "pea" is the pea and not the peat, while "pe" is
both. Small and capital letters and accents are all one.
"""

import re
import unicodedata
from collections.abc import Callable, Iterable
from typing import TypeVar

from data.records import Tray

__all__ = ["found", "meant"]

T = TypeVar("T")

WORD = re.compile(r"[^\W_]+")


def found(trays: Iterable[Tray], text: str) -> tuple[Tray, ...]:
    """The trays that a text means, in the order given; all of them where the text is empty."""
    return meant(trays, text, _said_of)


def meant(things: Iterable[T], text: str, said_of: Callable[[T], str]) -> tuple[T, ...]:
    """The same for whatever words are said of."""
    asked = _words(text)
    kept = [(one, _words(said_of(one)) if asked else []) for one in things]
    for word in asked:
        whole = [(one, said) for one, said in kept if word in said]
        kept = whole or [(one, said) for one, said in kept if any(other.startswith(word) for other in said)]
    return tuple(one for one, _ in kept)


def _said_of(tray: Tray) -> str:
    tag = "" if tray.tag_number is None else str(tray.tag_number)
    texts = (
        tray.code, tray.crop, tray.medium, tray.shelf, tray.block, tray.trial, tray.seed_lot, tray.note, tag,
    )  # fmt: skip
    return " ".join(text for text in texts if text)


def _words(text: str) -> list[str]:
    plain = text.casefold()
    if not plain.isascii():
        plain = "".join(c for c in unicodedata.normalize("NFKD", plain) if not unicodedata.combining(c))
    return WORD.findall(plain)
