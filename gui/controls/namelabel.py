"""Name label: a name that a person typed, as a title; a very long one loses its middle.

In    the words
Out   a label no wider than a window; the hint and a screen reader say all of it; `cut_name` for buttons
Not   lists of names (a combo box cuts by itself)
"""

from PySide6.QtCore import Qt
from PySide6.QtGui import QFontMetrics
from PySide6.QtWidgets import QLabel, QWidget

from gui.language.plainhint import plain_hint
from gui.style.palette import set_role

__all__ = ["NameLabel", "cut_name"]

MOST_LETTERS = 60  # wide ones: some 70 of a name, and all that the least window has room for at large letters


class NameLabel(QLabel):
    """Uncut it would make the window wider than the screen: a row can break, a name cannot."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        set_role(self, "title")

    def show_name(self, words: str) -> None:
        """Show it, as much as the least window has room for."""
        self.ensurePolished()
        shown = cut_name(words, self.fontMetrics(), MOST_LETTERS)
        self.setText(shown)
        self.setToolTip("" if shown == words else plain_hint(words))
        self.setAccessibleName(words)


def cut_name(words: str, metrics: QFontMetrics, letters: int) -> str:
    """The name, without its middle where it is longer than so many wide letters."""
    return metrics.elidedText(words, Qt.TextElideMode.ElideMiddle, letters * metrics.averageCharWidth())
