"""Mold reason: the words with which a tray was thrown away -> whether they say that mold took it.

In    what a person typed as the reason, in English or German
Out   yes or no
Not   what follows of it (`verdict/traynumbers.py`), patches that a person called mold

A reason is free text in the grower's own language, and a verdict counts on it: a medium must not look better
because its moldy trays were called by another spelling. "No mold" says the opposite.
"""

import re

__all__ = ["says_mold"]

MOLD = re.compile(
    r"(?:\b(?P<none>no|not|non|never|without|kein\w*|ohne|nicht|nie|\w+n['’]t)[\s-]+"
    r"(?:(?:signs?\s+of|traces?\s+of|because\s+of|due\s+to|(?:spur|anzeichen|zeichen)\s+von)\s+)?"
    r"(?:(?!(?:und|and|but|aber|only|just|nur|doubt|zweifel)\b)\w+\s+)?)?"
    r"(?:\bmou?ld(?![\s-]?free|ed\b|ing\b)\w*|\b\w*schimm(?:el(?![\s-]?frei)|l)\w*)"
)
FREE = re.compile(r"\b(?:free\s+(?:of|from)|frei\s+von)\s+(?:any\s+)?(?:mou?ld|schimmel)\b")


def says_mold(why: str) -> bool:
    """Whether a reason names mold, and does not say that there was none."""
    words = FREE.sub("", why.casefold())
    return any(found["none"] is None for found in MOLD.finditer(words))
