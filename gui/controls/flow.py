"""Flow: a layout that puts widgets in a row and begins another row where there is no more room.

In    widgets
Out   their places; height follows width
Not   anything about what the widgets are
"""

from PySide6.QtCore import QPoint, QRect, QSize, Qt
from PySide6.QtWidgets import QLayout, QLayoutItem, QWidget

from gui.style.palette import GAP

__all__ = ["Flow"]


class Flow(QLayout):
    """For buttons that must not be cut off at 150 % text or in a narrow window."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._items: list[QLayoutItem] = []
        self.setContentsMargins(0, 0, 0, 0)
        self.setSpacing(GAP)

    def addItem(self, item: QLayoutItem) -> None:
        """Append."""
        self._items.append(item)

    def count(self) -> int:
        """How many."""
        return len(self._items)

    def itemAt(self, index: int) -> QLayoutItem | None:
        """One of them, None beyond the last."""
        return self._items[index] if 0 <= index < len(self._items) else None

    def takeAt(self, index: int) -> QLayoutItem | None:
        """Take one out."""
        return self._items.pop(index) if 0 <= index < len(self._items) else None

    def expandingDirections(self) -> Qt.Orientation:
        """None: rows are as high as they must be."""
        return Qt.Orientation(0)

    def hasHeightForWidth(self) -> bool:
        """A narrow window needs more rows."""
        return True

    def heightForWidth(self, width: int) -> int:
        """Of all rows at this width."""
        return self._arranged(QRect(0, 0, width, 0), move=False)

    def setGeometry(self, rect: QRect) -> None:
        """Put every widget in its place."""
        super().setGeometry(rect)
        self._arranged(rect, move=True)

    def sizeHint(self) -> QSize:
        """All in one row."""
        shown = [item.sizeHint() for item in self._items if not item.isEmpty()]
        across = sum(size.width() for size in shown) + self.spacing() * max(0, len(shown) - 1)
        return QSize(across, max((size.height() for size in shown), default=0))

    def minimumSize(self) -> QSize:
        """The widest widget."""
        smallest = QSize()
        for item in self._items:
            if not item.isEmpty():
                smallest = smallest.expandedTo(item.minimumSize())
        return smallest

    def _arranged(self, rect: QRect, *, move: bool) -> int:
        """Rows from top to bottom, each as high as its highest, with the others in the middle of it."""
        y = rect.y()
        for row in self._rows(rect.width()):
            high = max(size.height() for _, size in row)
            x = rect.x()
            for item, size in row:
                if move:
                    item.setGeometry(QRect(QPoint(x, y + (high - size.height()) // 2), size))
                x += size.width() + self.spacing()
            y += high + self.spacing()
        return max(0, y - self.spacing() - rect.y())

    def _rows(self, width: int) -> list[list[tuple[QLayoutItem, QSize]]]:
        rows: list[list[tuple[QLayoutItem, QSize]]] = []
        x = 0
        for item in self._items:
            if item.isEmpty():
                continue
            size = item.sizeHint()
            if not rows or x + size.width() > width:
                rows.append([])
                x = 0
            rows[-1].append((item, size))
            x += size.width() + self.spacing()
        return rows
