"""Words: labels of plain sentences, which break their lines where the width ends.

In    the text, the widget they stand on, their role (`gui/style/palette.py`)
Out   a `QLabel`
"""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QWidget

from gui.style.palette import set_role

__all__ = ["heading", "soft", "wrapped"]


def wrapped(words: str, parent: QWidget, role: str = "") -> QLabel:
    """A sentence."""
    label = QLabel(words, parent)
    label.setWordWrap(True)
    label.setTextFormat(Qt.TextFormat.PlainText)  # a name like <b>1 may stand in it
    if role:
        set_role(label, role)
    return label


def heading(words: str, parent: QWidget) -> QLabel:
    """A title within a page."""
    return wrapped(words, parent, "title")


def soft(words: str, parent: QWidget) -> QLabel:
    """An explanation."""
    return wrapped(words, parent, "soft")
