"""Unbroken: a number stays beside its unit when a line ends.

In    a sentence
Out   the same with a space between number and unit that no line breaks at
Not   how numbers and units are written (`spoken.py`)
"""

import re

__all__ = ["unbroken"]

UNITS = (
    "%", "g", "kg", "mm", "cm", "cm²", "ml", "l", "°C", "°F", "oz", "lb", "h", "K", "points?", "Punkte?",
)  # fmt: skip
BETWEEN = re.compile(rf"(?<=\d) (?=(?:{'|'.join(UNITS)})(?!\w))")


def unbroken(text: str) -> str:
    """The text with every number kept beside its unit."""
    return BETWEEN.sub("\u00a0", text)
