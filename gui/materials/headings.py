"""Headings: what stands over a column and before a row, broken into lines that fit.

In    words, a width, how wide a text is
Out   the same words with line breaks
Not   painting them (`table.py`)
"""

from collections.abc import Callable

__all__ = ["broken"]


def broken(words: str, width: int, wide: Callable[[str], int]) -> str:
    """Break between words where the next one would not fit; one that is too long has a line of its own."""
    return "\n".join(line for part in words.split("\n") for line in _lines(part, width, wide))


def _lines(part: str, width: int, wide: Callable[[str], int]) -> list[str]:
    lines: list[str] = []
    for word in part.split(" "):
        longer = f"{lines[-1]} {word}" if lines else word
        if lines and wide(longer) <= width:
            lines[-1] = longer
        else:
            lines.append(word)
    return lines
