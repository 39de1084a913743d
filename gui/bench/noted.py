"""Noted: what was typed last at the foot of the Bench, read back in words.

In    entries that were asked about and entries that were kept
Out   one sentence: the last few, and those that were asked about and are not kept
Not   keeping them (`quickentry.py`), what a line means (`quickline.py`)
"""

from collections import deque

from data.entry.units import UnitSystem
from data.events import EventKind
from gui.bench.quickline import QuickEntry, figure_words
from gui.language.words import translate
from gui.notes.view import event_words

__all__ = ["Noted", "what_words", "where_words"]

SHOWN = 3


class Noted:
    """The last few, as long as none of them is taken back."""

    def __init__(self) -> None:
        self._last: deque[str] = deque(maxlen=SHOWN)
        self._asked: QuickEntry | None = None  # until it or another one is kept

    def __bool__(self) -> bool:
        return bool(self._last)

    def clear(self) -> None:
        """Nothing was noted that could be read back."""
        self._last.clear()

    def ask(self, entry: QuickEntry) -> None:
        """This one is asked about."""
        self._asked = entry

    def keep(self, entry: QuickEntry, value: float | None, system: UnitSystem) -> str:
        """This one is kept: the sentence; what was asked about before it, of other trays, was not kept."""
        if self._asked is not None and self._asked.trays != entry.trays:
            self._last.append(self.unkept_words(self._asked, system))
        self._asked = None
        self._last.append(f"{where_words(entry)} {what_words(entry, value, system)}")
        return translate("QuickLine", "Noted: {what}").format(what=" · ".join(self._last))

    def unkept_words(self, entry: QuickEntry, system: UnitSystem) -> str:
        """That one was asked about and not kept."""
        what = f"{where_words(entry)} {what_words(entry, entry.value, system)}"
        return translate("QuickLine", "{what} not kept").format(what=what.strip())


def where_words(entry: QuickEntry) -> str:
    """The code of its tray, or how many there are."""
    if len(entry.trays) == 1:
        return entry.trays[0].code
    return translate("QuickLine", "{count} trays").format(count=len(entry.trays))


def what_words(entry: QuickEntry, value: float | None, system: UnitSystem) -> str:
    """What was done, or the number with its unit."""
    if isinstance(entry.kind, EventKind):
        return event_words(entry.kind)
    return figure_words(entry.kind, value, system)
