"""After the end: a line for what is noted of trays that have left the rack, where no other grows.

In    trays that ended of late, the book
Out   readings and notes kept, as at the foot of the rack
Not   the line itself (`quickentry.py`), beside growing trays (`page.py`: there the same line takes both)
"""

from collections.abc import Sequence
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QVBoxLayout, QWidget

from data.readings import ReadingKind
from data.records import Tile
from gui.bench.quickentry import QuickLine
from gui.bench.quickline import KINDS, Nameable
from gui.style.palette import Space
from gui.style.words import wrapped

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["AfterTheEnd"]


class AfterTheEnd(QWidget):
    """A sentence and the line; gone where no tray has ended of late."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        words = self.tr(
            "After the cut: minutes of cleaning, days that it keeps, taste, sweepings, what was forgotten. "
            "Type the code of the tray first."
        )
        self.line = QuickLine(tuple, self)
        self.line.kind.setCurrentIndex(KINDS.index(ReadingKind.LABOUR))
        column = QVBoxLayout(self)
        column.setContentsMargins(Space.L, 0, Space.L, Space.M)
        column.addWidget(wrapped(words, self, "soft"))
        column.addWidget(self.line)
        self.hide()

    def below(self, teaching: QWidget) -> QWidget:
        """The place as a whole: what teaches, and this below it."""
        whole = QWidget(self.parentWidget())
        column = QVBoxLayout(whole)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(teaching, 1)
        column.addWidget(self)
        return whole

    def show_trays(self, book: "Book | None", ended: Sequence[Tile]) -> None:
        """The trays that can be named."""
        self.line.show_trays(book, Nameable(ended=ended))
        self.setVisible(bool(ended))
