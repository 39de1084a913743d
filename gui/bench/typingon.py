"""Typing on: letters and figures typed on a button, told to whoever has a line for them.

In    buttons that answer a question and have taken the focus
Out   `typed` with the letter; `left` where the question is to be answered by none of them
Not   the line that it goes into (`quickentry.py`)

Who types the morning's numbers looks at the scale, not at the screen: the next number must not be lost in a
button, and its Enter must not answer a question that was not read.
"""

from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QPushButton

__all__ = ["TypingOn"]


class TypingOn(QObject):
    """Watches the buttons that it is given."""

    typed = Signal(str)
    left = Signal()

    def watch(self, button: QPushButton) -> None:
        """From now on."""
        button.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """A letter or figure goes on, Esc goes back; all else is the button's."""
        if event.type() == QEvent.Type.KeyPress and isinstance(event, QKeyEvent):
            if event.text().isalnum():
                self.typed.emit(event.text())
                return True
            if event.key() == Qt.Key.Key_Escape:
                self.left.emit()
                return True
        return super().eventFilter(watched, event)
