"""Verdict table: media by mean, difference, interval, answer and rank; or the parts of the score.

In    rows of text
Out   a table as high as its rows, read cell by cell with the arrow keys
Not   rounding (`answer/view.py`)
"""

from collections.abc import Sequence

from PySide6.QtCore import QSize, Qt
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHeaderView,
    QSizePolicy,
    QTableWidget,
    QTableWidgetItem,
    QWidget,
)

from gui.style.palette import Space, set_role

__all__ = ["VerdictTable"]

LEAST_LETTERS, MOST_LETTERS = 9, 26  # of the first column, before its names are cut
ROW_LINES = 1.7  # lines of text that a row is high


class VerdictTable(QTableWidget):
    """Plain; nothing in it can be changed."""

    def __init__(
        self, name: str, headings: Sequence[str], texts: Sequence[int], parent: QWidget | None = None
    ) -> None:
        """`texts` are the columns that hold words; the others hold numbers and stand right."""
        super().__init__(0, len(headings), parent)
        self._texts = frozenset(texts)
        self.setAccessibleName(name)
        set_role(self, "plain")
        for column, heading in enumerate(headings):
            item = QTableWidgetItem(heading)
            item.setTextAlignment(self._align(column))
            self.setHorizontalHeaderItem(column, item)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setTabKeyNavigation(False)
        self.setShowGrid(False)
        self.setStyleSheet(f"QTableView::item {{ padding: 0px {Space.S}px; }}")
        self.setWordWrap(False)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.verticalHeader().hide()
        header = self.horizontalHeader()
        header.setHighlightSections(False)
        header.setSectionsClickable(False)
        header.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)  # `fit` does it once, not for every cell
        header.setSectionResizeMode(0, QHeaderView.ResizeMode.Stretch)

    def _align(self, column: int) -> Qt.AlignmentFlag:
        side = Qt.AlignmentFlag.AlignLeft if column in self._texts else Qt.AlignmentFlag.AlignRight
        return side | Qt.AlignmentFlag.AlignVCenter

    def show_rows(self, rows: Sequence[Sequence[str]]) -> None:
        """Show these."""
        self.setRowCount(len(rows))
        for number, row in enumerate(rows):
            for column, text in enumerate(row):
                item = QTableWidgetItem(text)
                item.setTextAlignment(self._align(column))
                item.setToolTip(text)
                self.setItem(number, column, item)
        self.fit()

    def fit(self) -> None:
        """Rows and the whole table as high as the letters need."""
        self.verticalHeader().setDefaultSectionSize(round(ROW_LINES * self.fontMetrics().height()))
        for number in range(self.rowCount()):
            self.setRowHeight(number, round(ROW_LINES * self.fontMetrics().height()))
        for column in range(1, self.columnCount()):
            self.resizeColumnToContents(column)
        self.setFixedHeight(self.sizeHint().height())
        self.updateGeometry()

    def sizeHint(self) -> QSize:
        """All rows."""
        rows = self.rowCount() * round(ROW_LINES * self.fontMetrics().height())
        return QSize(self.minimumSizeHint().width(), self.horizontalHeader().sizeHint().height() + rows + 4)

    def minimumSizeHint(self) -> QSize:
        """Numbers are never cut; names may be, their tooltip has them."""
        return QSize(self._across(LEAST_LETTERS), 2 * self.fontMetrics().height())

    @property
    def wanted(self) -> int:
        """The width at which names are whole, unless they are very long, px."""
        return self._across(MOST_LETTERS)

    def _across(self, letters: int) -> int:
        """All columns, the first as wide as its names or as so many letters."""
        head = self.horizontalHeader()
        wide = [
            max(self.sizeHintForColumn(c), head.sectionSizeHint(c)) if self.rowCount() else 0
            for c in range(self.columnCount())
        ]
        return sum(wide[1:]) + min(wide[0], letters * self.fontMetrics().averageCharWidth()) + 2 * Space.XS
