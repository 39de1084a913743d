"""Noted: what was typed last at the foot of the Bench, read back in words.

In    entries that were asked about and entries that were kept
Out   one sentence: the last few, and those that were asked about and are not kept
Not   keeping them (`quickentry.py`), what a line means (`quickline.py`)
"""

from collections import deque
from collections.abc import Iterator

from data.entry.units import UnitSystem
from data.events import EventKind
from gui.bench.quickline import QuickEntry, figure_words
from gui.language.words import translate
from gui.notes.view import event_words

__all__ = ["Noted", "what_words", "where_words"]

SHOWN = 3
UNKEPT_SHOWN = 6


class Noted:
    """The last few, as long as none of them is taken back; what was not kept, until it is."""

    def __init__(self) -> None:
        self._last: deque[str] = deque(maxlen=SHOWN)
        self._asked: QuickEntry | None = None  # until it or another one is kept
        self._unkept: dict[object, str] = {}

    def __bool__(self) -> bool:
        return bool(self._last)

    def clear(self) -> None:
        """Nothing was noted that could be read back."""
        self._last.clear()

    def begin_anew(self) -> None:
        """Another book."""
        self._last.clear()
        self._asked = None
        self._unkept.clear()

    def ask(self, entry: QuickEntry) -> None:
        """This one is asked about."""
        self._asked = entry

    def keep(self, entry: QuickEntry, value: float | None, system: UnitSystem) -> str:
        """This one is kept: the sentence; what was asked about before it, of other trays, was not kept."""
        if self._asked is not None and _of(self._asked) != _of(entry):
            self._unkept[_of(self._asked)] = _named(self._asked, system)
        self._asked = None
        self._unkept.pop(_of(entry), None)
        self._last.append(f"{where_words(entry)} {what_words(entry, value, system)}")
        words = translate("QuickLine", "Noted: {what}").format(what=" · ".join(self._last))
        return " · ".join([words, *self._not_kept()])

    def _not_kept(self) -> Iterator[str]:
        """What was asked about and typed over, until it is typed again: nothing may get lost on the way."""
        if not self._unkept:
            return
        shown, more = list(self._unkept.values())[:UNKEPT_SHOWN], len(self._unkept) - UNKEPT_SHOWN
        words = translate("QuickLine", "Not kept, since a question stood open: {what}")
        if more > 0:
            words = translate("QuickLine", "Not kept, since a question stood open: {what} and {n} more")
        yield words.format(what=", ".join(shown), n=more)

    @property
    def misses(self) -> bool:
        """Whether something was not kept that nobody has typed again."""
        return bool(self._unkept)

    def unkept_words(self, entry: QuickEntry, system: UnitSystem) -> str:
        """That one was asked about and not kept."""
        return translate("QuickLine", "{what} not kept").format(what=_named(entry, system))


def _of(entry: QuickEntry) -> object:
    return entry.kind, tuple(tile.tray_id for tile in entry.trays)


def _named(entry: QuickEntry, system: UnitSystem) -> str:
    return f"{where_words(entry)} {what_words(entry, entry.value, system)}".strip()


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
