"""Quick field: the line of the quick entry, with keys that lie under one hand on a number pad.

In    what is typed
Out   `entered`, `stepped` by one kind
Not   what the line means (`quickline.py`), keeping it (`quickentry.py`)
"""

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QLineEdit, QWidget

__all__ = ["QuickField"]

ENTERS = (Qt.Key.Key_Return, Qt.Key.Key_Enter)
STEPS = {Qt.Key.Key_Asterisk: 1, Qt.Key.Key_Slash: -1}


class QuickField(QLineEdit):
    """Enter notes the line, * and / go through the kinds."""

    entered = Signal()
    stepped = Signal(int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.takes_words = False  # a note may hold a / or * of its own

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """A key of ours, or one that types."""
        step = STEPS.get(Qt.Key(event.key()))
        if event.key() in ENTERS:
            self.entered.emit()
        elif step is not None and not self._belongs_to_note(event):
            self.stepped.emit(step)
        else:
            super().keyPressEvent(event)

    def _belongs_to_note(self, event: QKeyEvent) -> bool:
        """Whether it is typed within the words of an event: "A1 1/2 litre"."""
        from_pad = bool(event.modifiers() & Qt.KeyboardModifier.KeypadModifier)
        return self.takes_words and bool(self.text()) and not from_pad
