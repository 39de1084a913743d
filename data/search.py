"""Search: words that a person types -> the trays that they mean.

In    trays; some words
Out   the trays of whose code, crop, medium, place or notes each word is the beginning of a word
Not   asking the book (`reader.py`), showing them (window)

A word that stands somewhere as a whole means that alone: "pea" is the pea and not the peat, while "pe" is
both. Small and capital letters and accents are all one.
"""

import unicodedata
from collections.abc import Iterable, Sequence

from data.records import Tray

__all__ = ["found"]


def found(trays: Iterable[Tray], text: str) -> tuple[Tray, ...]:
    """The trays that a text means, in the order given; all of them where the text is empty."""
    kept = tuple(trays)
    for word in _words(text):
        said = [(tray, _said_of(tray)) for tray in kept]
        whole = tuple(tray for tray, words in said if word in words)
        kept = whole or tuple(tray for tray, words in said if any(one.startswith(word) for one in words))
    return kept


def _said_of(tray: Tray) -> Sequence[str]:
    tag = "" if tray.tag_number is None else str(tray.tag_number)
    texts = (
        tray.code, tray.crop, tray.medium, tray.shelf, tray.block, tray.trial, tray.seed_lot, tray.note, tag,
    )  # fmt: skip
    return _words(" ".join(text for text in texts if text))


def _words(text: str) -> list[str]:
    plain = unicodedata.normalize("NFKD", text.casefold())
    return "".join(c if c.isalnum() else " " for c in plain if not unicodedata.combining(c)).split()
