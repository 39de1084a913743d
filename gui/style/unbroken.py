"""Unbroken: a number stays beside its unit, a day beside its month or its number, when a line ends.

In    a sentence
Out   the same with a space between the two that no line breaks at
Not   how numbers and units are written (`language/spoken.py`)
"""

import re

__all__ = ["UNBREAKING", "unbroken"]

UNBREAKING = "\u00a0"  # a space that no line ends at
UNITS = (
    "%", "g", "kg", "mm", "cm", "cm²", "ml", "l", "°C", "°F", "oz", "lb", "h", "min", "K",
    "points?", "Punkte?", "minutes?", "Minuten?",
)  # fmt: skip
MONTHS = "Jan|Feb|M[aä]r|Apr|Ma[iy]|Jun|Jul|Aug|Sep|O[ck]t|Nov|De[cz]"  # how they begin, in both languages
BETWEEN = re.compile(
    rf"(?<=\d) (?=(?:{'|'.join(UNITS)})(?!\w))|(?:(?<=\d)|(?<=\d\.)) (?={MONTHS})|(?<=\bday|\bTag) (?=\d)"
)


def unbroken(text: str) -> str:
    """The text with every number kept beside its unit, every day beside its month or number."""
    return BETWEEN.sub(UNBREAKING, text)
