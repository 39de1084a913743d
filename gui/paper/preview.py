"""Page preview: pages of paper on the screen, one under the other.

In    pages and the paper
Out   the same drawing as on paper, as large as the width allows
Not   printing (`pages.py`)
"""

from collections.abc import Sequence

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen, QResizeEvent
from PySide6.QtWidgets import QFrame, QScrollArea, QSizePolicy, QWidget

from gui.paper.pages import Page, Paper, paint
from gui.style.palette import Space, set_role, tokens_now

__all__ = ["PagePreview"]

WIDEST = 620  # px


class _Pages(QWidget):
    """All pages; only those in sight are painted."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.pages: tuple[Page, ...] = ()
        self.paper = Paper.A4
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)

    @property
    def scale(self) -> float:
        """px a mm."""
        return max(1.0, min(self.width() - 2 * Space.S, WIDEST)) / self.paper.size_mm[0]

    def lay(self) -> None:
        """As high as the pages are at this width."""
        step = self.paper.size_mm[1] * self.scale + Space.M
        self.setFixedHeight(max(1, round(step * len(self.pages) + Space.M)))
        self.update()

    def sizeHint(self) -> QSize:
        """Any."""
        return QSize(320, 100)

    def paintEvent(self, event: QPaintEvent) -> None:
        """White paper, whatever the scheme."""
        painter = QPainter(self)
        width, height = (side * self.scale for side in self.paper.size_mm)
        left = (self.width() - width) / 2
        for number, page in enumerate(self.pages):
            top = Space.M + number * (height + Space.M)
            room = QRectF(left, top, width, height)
            if not room.intersects(QRectF(event.rect())):
                continue
            painter.setPen(QPen(QColor(tokens_now().line), 1))
            painter.setBrush(QColor("#FFFFFF"))
            painter.drawRect(room)
            painter.save()
            painter.setClipRect(room)
            painter.translate(left, top)
            painter.scale(self.scale, self.scale)
            paint(painter, page, self.paper)
            painter.restore()


class PagePreview(QScrollArea):
    """Pages to look at, with the keys of any scrolled place."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._pages = _Pages(self)
        self.setWidget(self._pages)
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setAccessibleName(self.tr("Preview of the pages"))
        set_role(self, "read")

    def show_pages(self, pages: Sequence[Page], paper: Paper) -> None:
        """Show these."""
        self._pages.pages, self._pages.paper = tuple(pages), paper
        self.setAccessibleDescription(", ".join(dict.fromkeys(page.title for page in pages)))
        self._pages.lay()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Pages follow the width."""
        super().resizeEvent(event)
        self._pages.lay()
