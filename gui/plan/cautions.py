"""Cautions: what has to be said beside a trial of heat or feed, where it is planned; no Qt.

In    a draft
Out   the cautions in words; empty where nothing in it can hurt
Not   the cautions themselves (`data/heat.py`, `data/medium/feeds.py`), where they are shown (`treatments.py`)
"""

from data.heat import CAUTION
from data.medium.feeds import feed_caution
from data.plan.draft import Draft
from gui.language.spoken import spoken

__all__ = ["caution_words"]

HEAT, FEED = "heat mat", "feed"


def caution_words(draft: Draft) -> str:
    """Of the electric heat and of every feed of a draft, each said once."""
    other = draft.other
    fed = other.levels if other is not None and other.name == FEED else (draft.same.get(FEED, ""),)
    found = [caution for feed in fed if (caution := feed_caution(feed)) is not None]
    if other is not None and other.name == HEAT:
        found.append(CAUTION)
    return "\n".join(dict.fromkeys(spoken(caution) for caution in found))
