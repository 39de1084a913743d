"""Fold: a heading that shows and hides what lies below it.

In    words, what is said below them
Out   a button with a mark for open or folded, and the lines
Not   what the lines say
"""

from collections.abc import Sequence

from PySide6.QtCore import Qt, QTimer, Slot
from PySide6.QtWidgets import QScrollArea, QSizePolicy, QToolButton, QVBoxLayout, QWidget

from gui.style.palette import Space, set_role
from gui.style.words import quotable

__all__ = ["Fold"]


class Fold(QWidget):
    """Folded at first."""

    def __init__(self, words: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.button = QToolButton(self)
        self.button.setText(words)
        self.button.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextBesideIcon)
        self.button.setArrowType(Qt.ArrowType.RightArrow)
        self.button.setSizePolicy(QSizePolicy.Policy.Maximum, QSizePolicy.Policy.Fixed)
        self.button.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        set_role(self.button, "quiet")
        self.button.clicked.connect(self._turn)
        self.lines = quotable(self, "soft")
        self.lines.hide()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(Space.S)
        column.addWidget(self.button)
        column.addWidget(self.lines)

    def say(self, lines: Sequence[str]) -> None:
        """Show these when it is open; without any the whole fold goes."""
        self.setVisible(bool(lines))
        self.lines.setText("\n\n".join(lines))

    @Slot()
    def _turn(self) -> None:
        self.open_up(self.lines.isHidden())
        if self.lines.isVisible():
            QTimer.singleShot(0, self, self._roll_there)  # they have no height yet

    @Slot()
    def _roll_there(self) -> None:
        """At the lower end of what rolls they would open out of sight."""
        around = self.parentWidget()
        while around is not None and not isinstance(around, QScrollArea):
            around = around.parentWidget()
        if around is not None:
            around.ensureWidgetVisible(self.lines, 0, Space.S)
            around.ensureWidgetVisible(self.button, 0, Space.S)

    def open_up(self, is_open: bool) -> None:
        """Show or hide the lines."""
        self.lines.setVisible(is_open)
        self.button.setArrowType(Qt.ArrowType.DownArrow if is_open else Qt.ArrowType.RightArrow)
