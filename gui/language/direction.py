"""Direction: what a person wrote from right to left, within a line that runs from left to right.

In    words of a person
Out   the same words; those that run from right to left keep their own order (Unicode first strong isolate)
Not   words in a field, which Qt turns by itself

UAX #9 (Unicode Standard Annex 9, bidirectional algorithm): without the isolate the pieces of such a sentence
around a number or a code stand in the wrong order.
"""

from unicodedata import bidirectional

__all__ = ["own_direction"]

BEGIN, END = "\u2068", "\u2069"
FROM_THE_RIGHT = frozenset({"R", "AL"})


def own_direction(words: str) -> str:
    """The words in their own direction; untouched where all of them run from left to right."""
    turned = any(bidirectional(letter) in FROM_THE_RIGHT for letter in words)
    return f"{BEGIN}{words}{END}" if turned else words
