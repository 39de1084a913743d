"""Field undo: in a field that has nothing of its own to take back, Ctrl+Z is the book's.

In    a field of which what is typed is kept while the focus stays in it
Out   the keys of undo and of doing again, let through to the window
Not   what they do there (`frame/following.py`)

A field of Qt keeps these keys for itself even when it is empty; "Ctrl+Z takes it back" would then be untrue
right after a note was kept, for the focus stays in the field.
"""

from PySide6.QtCore import QEvent, QObject
from PySide6.QtGui import QKeyEvent, QKeySequence
from PySide6.QtWidgets import QComboBox, QDateTimeEdit, QLineEdit, QWidget

__all__ = ["leave_undo_to_the_book"]


def leave_undo_to_the_book(field: QLineEdit | QComboBox | QDateTimeEdit) -> None:
    """From now on; what the program sets in the field by `setText` leaves it nothing to take back."""
    line = field if isinstance(field, QLineEdit) else field.lineEdit()
    if line is not None:  # a list of choices types nothing
        field.installEventFilter(_Keys(field, line))


class _Keys(QObject):
    def __init__(self, field: QWidget, line: QLineEdit) -> None:
        super().__init__(field)
        self._line = line

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.ShortcutOverride and isinstance(event, QKeyEvent):
            undo = event.matches(QKeySequence.StandardKey.Undo) and not self._line.isUndoAvailable()
            redo = event.matches(QKeySequence.StandardKey.Redo) and not self._line.isRedoAvailable()
            if undo or redo:
                event.ignore()
                return True
        return super().eventFilter(watched, event)
