"""Field undo: in a field that has nothing of its own to take back, Ctrl+Z is the book's.

In    a field in which one note after the other is typed
Out   the keys of undo and of doing again, let through to the window
Not   what they do there (`frame/following.py`)

A field of Qt keeps these keys for itself even when it is empty; "Ctrl+Z takes it back" would then be untrue
right after a note was kept, for the focus stays in the field.
"""

from PySide6.QtCore import QEvent, QObject
from PySide6.QtGui import QKeyEvent, QKeySequence
from PySide6.QtWidgets import QLineEdit

__all__ = ["leave_undo_to_the_book"]


def leave_undo_to_the_book(field: QLineEdit) -> None:
    """From now on; the field is to be emptied by `setText("")`, which leaves it nothing to take back."""
    field.installEventFilter(_Keys(field))


class _Keys(QObject):
    def __init__(self, field: QLineEdit) -> None:
        super().__init__(field)
        self._field = field

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.ShortcutOverride and isinstance(event, QKeyEvent):
            undo = event.matches(QKeySequence.StandardKey.Undo) and not self._field.isUndoAvailable()
            redo = event.matches(QKeySequence.StandardKey.Redo) and not self._field.isRedoAvailable()
            if undo or redo:
                event.ignore()
                return True
        return super().eventFilter(watched, event)
