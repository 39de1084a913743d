"""Tray names: the code after this one, and tag numbers as a person types them; no Qt.

In    text
Out   text, numbers
Not   whether a tag is free (`data.book`)
"""

import re

__all__ = ["FIRST_TAG", "LAST_TAG", "next_code", "tag_of"]

FIRST_TAG, LAST_TAG = 10, 586  # the mark family has 587 numbers, the first ten are the station's


def next_code(code: str) -> str:
    """The code that follows.

    Examples
    --------
    >>> next_code("A9"), next_code("pea-007"), next_code("window sill")
    ('A10', 'pea-008', 'window sill 2')
    """
    found = re.search(r"\d+$", code)
    if found is None:
        return f"{code} 2"
    digits = found.group()
    return code[: found.start()] + str(int(digits) + 1).zfill(len(digits))


def tag_of(text: str) -> int | None:
    """The tag number in a text, or None where there is none from 10 to 586."""
    words = text.strip()
    number = int(words) if words.isascii() and words.isdigit() and len(words) <= 4 else 0
    return number if FIRST_TAG <= number <= LAST_TAG else None
