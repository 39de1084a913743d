"""Cautions: what has to be said beside heat or feed, where it is planned or noted; no Qt.

In    a draft; feeds by their names, whether there is heat
Out   the cautions in words; empty where nothing in it can hurt
Not   the cautions themselves (`data/heat.py`, `data/medium/feeds.py`), where they are shown (`treatments.py`,
      `traysheet/conditionspage.py`)
"""

from collections.abc import Iterable

from data.heat import CAUTION
from data.medium.feeds import feed_caution
from data.plan.draft import Draft
from data.trial import YES_NO
from gui.language.spoken import spoken

__all__ = ["caution_words", "grown_cautions"]

HEAT, FEED = "heat mat", "feed"


def caution_words(draft: Draft) -> str:
    """Of the electric heat and of every feed of a draft, each said once."""
    other = draft.other
    fed = other.levels if other is not None and other.name == FEED else (draft.same.get(FEED, ""),)
    heated = (other is not None and other.name == HEAT) or draft.same.get(HEAT) == YES_NO[HEAT][0]
    return grown_cautions(fed, heated=heated)


def grown_cautions(feeds: Iterable[str | None], *, heated: bool) -> str:
    """Of feeds and of electric heat, each said once, a line each."""
    found = [caution for feed in feeds if (caution := feed_caution(feed)) is not None]
    if heated:
        found.append(CAUTION)
    return "\n".join(dict.fromkeys(spoken(caution) for caution in found))
