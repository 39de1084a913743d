"""Feeds: what a tray is fed with, and the caution that belongs to it.

In    the name of a feed as a person writes it
Out   whether it needs the caution of manure, urine and waste; the sentences
Not   keeping it (`Medium.feed`, factors "feed dilution", "feed every", "feed odour")

Names are known in English and in German; one in another language gets the caution of every feed.

US: biological soil amendments of animal origin, 21 CFR 112 subpart F (from memory). No legal judgement.
"""

import re

from data.sentence import Sentence

__all__ = ["ASK_FIRST", "COMPARE", "feed_caution", "is_of_waste", "is_plain"]

OF_WASTE = re.compile(
    r"\b(manures?|dung|guano|urine|pee|f(ae|e)ces|slurry|sewage|sludge|droppings|waste|worm\w*|vermi\w*"
    r"|compost\w*|digestate|fish|blood|bones?|humanure|night soil"
    # in German
    r"|^mist$|(stall|hühner|pferde|kuh|rinder|schaf|ziegen|tauben|kaninchen)mist|\w*jauche|\w*kot"
    r"|gülle\w*|urin|kompost\w*|wurm\w*|gärrest\w*|klärschlamm\w*|\w*abfall\w*"
    r"|fisch\w*|blutmehl|knochenmehl|horn(mehl|späne|gries|grieß))\b",
    re.IGNORECASE,
)
PLAIN = frozenset(
    {"", "none", "no", "no feed", "without feed", "plain", "water", "plain water"}
    | {"ohne", "kein", "keine", "keiner", "nein", "ungedüngt", "wasser", "nur wasser", "klares wasser"}
)

ASK_FIRST = Sentence(
    "What a feed for food may be made of is ruled by local law; "
    "ask your local food authority before you sell."
)
COMPARE = Sentence(
    "A plain medium and a fed one are two treatments: let the feed be what varies in a trial, then the table "
    "and the verdict tell them apart."
)


def is_plain(feed: str | None) -> bool:
    """Whether nothing is fed."""
    return (feed or "").strip().lower() in PLAIN


def is_of_waste(feed: str | None) -> bool:
    """Whether a feed's name speaks of manure, urine, waste or what is made from them."""
    return OF_WASTE.search(feed or "") is not None


def feed_caution(feed: str | None) -> Sentence | None:
    """What must be said beside a feed; None where nothing is fed."""
    if is_plain(feed):
        return None
    if not is_of_waste(feed):
        return ASK_FIRST
    return Sentence(
        "{feed}: feeds from manure, urine or waste can carry germs to what is eaten raw. They are not for "
        "food that is sold unless local rules allow it: ask your local food authority first. Keep them off "
        "leaves, wear gloves, wash your hands.",
        feed=feed,
    )
