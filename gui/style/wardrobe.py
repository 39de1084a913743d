"""Wardrobe: light or dark, and how large the letters are, for the whole program.

In    what the grower has chosen (`Memory`), what the system wears
Out   the program dressed accordingly; `changed` afterwards
Not   the colours (`tokens.py`), the menu (`window.py`)
"""

from PySide6.QtCore import QObject, Qt, Signal, Slot
from PySide6.QtWidgets import QApplication

from gui.home import TEXT_SIZES, Memory
from gui.style.palette import dress
from gui.style.tokens import Scheme

__all__ = ["Wardrobe"]


class Wardrobe(QObject):
    """Dresses the program now, and again whenever the grower or the system wants it otherwise."""

    changed = Signal()

    def __init__(self, app: QApplication, memory: Memory, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._app, self._memory = app, memory
        app.styleHints().colorSchemeChanged.connect(self.wear)

    @property
    def scheme(self) -> Scheme:
        """What is worn: the choice, else what the system says, else light."""
        chosen = self._memory.scheme
        if chosen != "system":
            return Scheme(chosen)
        dark = self._app.styleHints().colorScheme() == Qt.ColorScheme.Dark
        return Scheme.DARK if dark else Scheme.LIGHT

    @Slot()
    def wear(self) -> None:
        """Dress the program."""
        dress(self._app, self.scheme, self._memory.text_percent)
        self.changed.emit()

    def choose(self, scheme: str) -> None:
        """Wear "system", "light" or "dark" from now on."""
        self._memory.scheme = scheme
        self.wear()

    def resize_text(self, percent: int) -> None:
        """Letters of this size from now on, %."""
        self._memory.text_percent = percent
        self.wear()

    def step_text(self, steps: int) -> int:
        """Larger or smaller by so many steps, as far as it goes; returns the size in %."""
        place = TEXT_SIZES.index(self._memory.text_percent) + steps
        percent = TEXT_SIZES[min(len(TEXT_SIZES) - 1, max(0, place))]
        if percent != self._memory.text_percent:
            self.resize_text(percent)
        return percent
