"""Rolling: the parts of a dialog one below the other, in an area that rolls when they do not fit.

In    widgets, the space between them
Out   a `QScrollArea` without a frame, and out of the way of Tab
"""

from collections.abc import Iterable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QScrollArea, QVBoxLayout, QWidget

from gui.style.palette import Space

__all__ = ["rolling"]


def rolling(parent: QWidget, parts: Iterable[QWidget], spacing: int = Space.M) -> QScrollArea:
    """The parts, pushed together at the top."""
    area = QScrollArea(parent)
    area.setWidgetResizable(True)
    area.setFrameShape(QFrame.Shape.NoFrame)
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
