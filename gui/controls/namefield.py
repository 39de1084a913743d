"""Name field: a name to be added to a list: taken on Enter, by its button, and on going on to another field.

In    what is named
Out   `named` with the name; the field is empty again then
Not   the list (`plan/treatments.py`)
"""

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QFocusEvent
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QPushButton, QWidget

from gui.style.palette import Space, set_role

__all__ = ["NameField"]

LEFT_BY = (
    Qt.FocusReason.TabFocusReason,
    Qt.FocusReason.BacktabFocusReason,
    Qt.FocusReason.MouseFocusReason,
)  # not by another window in front: half a name would be taken


class _Line(QLineEdit):
    left = Signal()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        if event.reason() in LEFT_BY:
            self.left.emit()


class NameField(QWidget):
    """A line and its button, which calls for attention while a name waits in the line."""

    named = Signal(str)

    def __init__(self, words: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.line = _Line(self)
        self.line.setPlaceholderText(words)
        self.line.setAccessibleName(words)
        self.line.returnPressed.connect(self._take)
        self.line.left.connect(self._take)
        self.line.textChanged.connect(self._show_waiting)
        self.add = QPushButton(self.tr("Add"), self)
        self.add.setAccessibleName(self.tr("Add: {what}").format(what=words))
        self.add.clicked.connect(self._take)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(Space.S)
        row.addWidget(self.line, 1)
        row.addWidget(self.add)
        self.setFocusProxy(self.line)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)  # else no order of Tab could be given to it

    @Slot()
    def _take(self) -> None:
        name = " ".join(self.line.text().split())
        self.line.setText("")  # leaves nothing to take back: Ctrl+Z is for what was named
        if name:
            self.named.emit(name)

    @Slot(str)
    def _show_waiting(self, text: str) -> None:
        set_role(self.add, "main" if text.strip() else "")
