"""Rolling: what rolls when it does not fit.

In    an area, or the parts of a dialog with the space between them
Out   a `QScrollArea` that is out of the way of Tab: keys go to what is in it
"""

from collections.abc import Iterable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QScrollArea, QVBoxLayout, QWidget

from gui.style.palette import Space

__all__ = ["roll_down", "rolling"]


def rolling(parent: QWidget, parts: Iterable[QWidget], spacing: int = Space.M) -> QScrollArea:
    """The parts, pushed together at the top."""
    area = QScrollArea(parent)
    area.setFrameShape(QFrame.Shape.NoFrame)
    area.setWidgetResizable(True)
    area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
    inner = QWidget(area)
    column = QVBoxLayout(inner)
    column.setContentsMargins(0, 0, Space.S, 0)
    column.setSpacing(spacing)
    for part in parts:
        column.addWidget(part)
    column.addStretch(1)
    area.setWidget(inner)
    return area


def roll_down(area: QScrollArea) -> None:
    """Up and down only: what is in it is as wide as the area."""
    area.setWidgetResizable(True)
    area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
    area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
