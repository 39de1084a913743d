"""Verdict table: media by mean, difference, interval, answer and rank; or the parts of the score.

In    rows of text
Out   a table as high as its rows, read cell by cell with the arrow keys; words break where it is narrow
Not   rounding (`answer/view.py`)
"""

from collections.abc import Sequence

from PySide6.QtCore import QRect, QSize, Qt
from PySide6.QtGui import QResizeEvent
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
AROUND = 2 * (Space.S + Space.XS)  # what a cell leaves free beside its text, px


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
        self.setWordWrap(True)  # words break where the width is small; numbers have no room to break in
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
        """Columns, rows and the whole table as large as the letters need."""
        self.verticalHeader().setDefaultSectionSize(self._row_height(1))
        self._lay_out()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Words break otherwise in another width."""
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():
            self._lay_out()

    def _lay_out(self) -> None:
        wide = self._wide()
        spare = self.viewport().width() - sum(wide) + wide[0] - self._first(wide, MOST_LETTERS)
        for column in range(1, self.columnCount()):
            width = wide[column]
            if column in self._texts and spare < 0:
                width = max(self._least(column), width + spare)
                spare += wide[column] - width
            self.setColumnWidth(column, width)
        for number in range(self.rowCount()):
            self.setRowHeight(number, self._row_height(self._lines(number)))
        self.setFixedHeight(self.sizeHint().height())
        self.updateGeometry()

    def _lines(self, row: int) -> int:
        """How many lines the longest words of a row take."""
        letters, most = self.fontMetrics(), 1
        for column in self._texts - {0}:
            box = QRect(0, 0, max(1, self.columnWidth(column) - AROUND + 1), 0)
            high = letters.boundingRect(box, Qt.TextFlag.TextWordWrap, self._text(row, column)).height()
            most = max(most, round(high / letters.height()))
        return most

    def _text(self, row: int, column: int) -> str:
        item = self.item(row, column)
        return "" if item is None else item.text()

    def _row_height(self, lines: int) -> int:
        return round((lines - 1 + ROW_LINES) * self.fontMetrics().height())

    def sizeHint(self) -> QSize:
        """All rows."""
        rows = sum(self.rowHeight(number) for number in range(self.rowCount()))
        return QSize(self.minimumSizeHint().width(), self.horizontalHeader().sizeHint().height() + rows + 4)

    def minimumSizeHint(self) -> QSize:
        """Numbers are never cut; words break, names may be cut: their tooltip has them."""
        wide = self._wide()
        least = [self._least(c) if c in self._texts else wide[c] for c in range(1, len(wide))]
        across = self._first(wide, LEAST_LETTERS) + sum(least) + 2 * Space.XS
        return QSize(across, 2 * self.fontMetrics().height())

    @property
    def wanted(self) -> int:
        """The width at which names and words are whole, unless names are very long, px."""
        wide = self._wide()
        return self._first(wide, MOST_LETTERS) + sum(wide[1:]) + 2 * Space.XS

    def _wide(self) -> list[int]:
        """The columns as wide as what stands in them, px."""
        if not self.rowCount():
            return [0] * self.columnCount()
        head = self.horizontalHeader()
        return [max(self._whole(c), head.sectionSizeHint(c)) for c in range(self.columnCount())]

    def _whole(self, column: int) -> int:
        """The widest text of a column in one line, px."""
        letters = self.fontMetrics()
        rows = range(self.rowCount())
        return max(letters.horizontalAdvance(self._text(row, column)) for row in rows) + AROUND

    def _first(self, wide: Sequence[int], letters: int) -> int:
        return min(wide[0], letters * self.fontMetrics().averageCharWidth())

    def _least(self, column: int) -> int:
        """As wide as the longest single word of a column, px."""
        if not self.rowCount():
            return 0
        letters = self.fontMetrics()
        words = [word for row in range(self.rowCount()) for word in self._text(row, column).split()]
        widest = max((letters.horizontalAdvance(word) for word in words), default=0)
        return max(widest + AROUND, self.horizontalHeader().sectionSizeHint(column))
