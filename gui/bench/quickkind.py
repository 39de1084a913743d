"""Quick kind: what kind of thing is noted in the line at the foot of the Bench.

In    a choice from the list, or a step of one from the line's keys
Out   the kind; what the empty line asks for then, and what is to be known of that kind
Not   the line (`quickentry.py`), which kinds there are (`quickline.py`)
"""

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QComboBox, QWidget

from data.entry.units import UnitSystem
from data.events import EventKind
from data.readings import ReadingKind
from gui.bench.quickline import KINDS, Kind
from gui.language.words import translate
from gui.notes.unitwords import counts_words, heed_words, number_words, scale_words
from gui.notes.view import event_words, kind_words
from gui.style.palette import set_role

__all__ = ["QuickKind"]


class QuickKind(QComboBox):
    """The kinds by name, the most usual first."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(translate("QuickLine", "What is noted"))
        self.setToolTip(translate("QuickLine", "What is noted; in the line * is the next, / the one before"))
        set_role(self, "rack")
        for kind in KINDS:
            self.addItem(kind_words(kind) if isinstance(kind, ReadingKind) else event_words(kind), kind)

    @property
    def chosen(self) -> Kind:
        """What is noted."""
        return KINDS[max(0, self.currentIndex())]

    @Slot(int)
    def step(self, by: int) -> None:
        """The next kind, or the one before; after the last comes the first."""
        self.setCurrentIndex((self.currentIndex() + by) % len(KINDS))

    def asks_for(self, system: UnitSystem) -> str:
        """What stands in the empty line."""
        kind = self.chosen
        if isinstance(kind, ReadingKind):
            return number_words(kind, system)
        if kind is EventKind.THROWN_AWAY:
            return translate("QuickLine", "Tray and why")
        if kind is EventKind.NOTE:
            return translate("QuickLine", "Tray and what you saw")
        return translate("QuickLine", "Tray, and a note if you like")

    def about(self) -> str:
        """Which end of a scale is which, or what follows of a deed; "" where there is nothing to say."""
        kind = self.chosen
        if isinstance(kind, ReadingKind):
            words = ". ".join(part for part in (scale_words(kind), heed_words(kind)) if part)
        else:
            words = counts_words(kind)
        return f"{self.currentText()}: {words}" if words else ""
