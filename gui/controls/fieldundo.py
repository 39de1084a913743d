"""Field undo: in a field that has nothing of its own to take back, Ctrl+Z is the book's.

In    the window; whichever of its fields has the focus
Out   the keys of undo and of doing again, let through to the window
Not   what they do there (`frame/following.py`)

A field of Qt keeps these keys for itself even when it is empty; "Ctrl+Z takes it back" would then be untrue
right after something was kept, for the focus stays in the field. What the program sets by `setText` leaves a
field nothing to take back; `clear` does not.
"""

from PySide6.QtCore import QEvent, QObject, Slot
from PySide6.QtGui import QKeyEvent, QKeySequence
from PySide6.QtWidgets import QAbstractSpinBox, QApplication, QComboBox, QLineEdit, QWidget

__all__ = ["FieldUndo"]


class FieldUndo(QObject):
    """Watches the fields of one window, each from when it first has the focus; dialogs have no undo."""

    def __init__(self, window: QWidget) -> None:
        super().__init__(window)
        self._window = window
        app = QApplication.instance()
        assert isinstance(app, QApplication)
        app.focusChanged.connect(self._came)

    @Slot(QWidget, QWidget)
    def _came(self, _left: QWidget | None, now: QWidget | None) -> None:
        if now is not None and now.window() is self._window and _line_of(now) is not None:
            now.installEventFilter(self)  # once more moves it to the front

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Undo and redo of a field that has neither go on to the window."""
        if event.type() == QEvent.Type.ShortcutOverride and isinstance(event, QKeyEvent):
            line = _line_of(watched)
            undo = event.matches(QKeySequence.StandardKey.Undo)
            redo = event.matches(QKeySequence.StandardKey.Redo)
            if line is not None and (
                (undo and not line.isUndoAvailable()) or (redo and not line.isRedoAvailable())
            ):
                event.ignore()
                return True
        return super().eventFilter(watched, event)


def _line_of(field: QObject) -> QLineEdit | None:
    """Where it is typed; None where nothing is."""
    if isinstance(field, QComboBox | QAbstractSpinBox):
        return field.lineEdit()
    return field if isinstance(field, QLineEdit) else None
