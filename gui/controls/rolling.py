"""Rolling: what rolls when it does not fit.

In    an area, or the parts of a dialog with the space between them
Out   a `QScrollArea` that is out of the way of Tab: keys go to what is in it
"""

from collections.abc import Iterable

from PySide6.QtCore import QSize, Qt
from PySide6.QtWidgets import QFrame, QScrollArea, QVBoxLayout, QWidget

from gui.style.palette import Space

__all__ = ["LowRoll", "roll_down", "rolling"]

LEAST_LINES = 6


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


class LowRoll(QScrollArea):
    """As high as what is in it, and rolls only where the screen is too low for that.

    It asks for little and takes what is left over, up to all of it: nothing beside it is pressed flat.
    """

    def __init__(self, body: QWidget, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._body = body
        self.setFrameShape(QFrame.Shape.NoFrame)
        roll_down(self)
        self.setWidget(body)

    def sizeHint(self) -> QSize:
        """As wide as its body and a bar; some lines high."""
        wide = self._body.minimumSizeHint().width() + self.verticalScrollBar().sizeHint().width()
        return QSize(wide, LEAST_LINES * self.fontMetrics().height())

    def minimumSizeHint(self) -> QSize:
        """The same."""
        return self.sizeHint()

    def measure(self) -> None:
        """What is in it has changed."""
        layout = self._body.layout()
        if layout is not None:
            layout.activate()
        self.updateGeometry()

    def grow_to(self, width: int) -> int:
        """Be at most as high as what is in it at this width; how much more that is than it asks for, px."""
        layout = self._body.layout()
        whole = self._body.sizeHint().height()
        if layout is not None and layout.hasHeightForWidth():
            whole = layout.totalHeightForWidth(width)
        self.setMaximumHeight(max(whole, self.sizeHint().height()))
        return self.maximumHeight() - self.sizeHint().height()
