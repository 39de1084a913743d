"""Column table: the first rows of a file, with a choice over each column of what it is.

In    headings, rows as they stand in the file, a choice for each column
Out   `column_chosen` (number, the chosen item)
Not   what can be chosen (`logs/preview.py`, `oldnotes/preview.py`)
"""

from collections.abc import Sequence
from itertools import pairwise

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import (
    QAbstractItemView,
    QComboBox,
    QHeaderView,
    QTableWidget,
    QTableWidgetItem,
    QWidget,
)

from gui.style.palette import Space, set_role

__all__ = ["ColumnTable"]

LEAST_ROWS = 4  # the choices and three of the file
ROOM, LINES_ABOVE = 560, 10  # px of an assistant on a low screen; lines of text that stand above the table


class ColumnTable(QTableWidget):
    """Row 0 holds the choices."""

    column_chosen = Signal(int, object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.choices: list[QComboBox] = []
        self.setTabKeyNavigation(False)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.verticalHeader().hide()
        left = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
        self.horizontalHeader().setDefaultAlignment(left)
        self.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        set_role(self, "plain")

    def choice_over(self, column: int, about: str) -> QComboBox:
        """An empty choice for a column."""
        choice = QComboBox(self)
        choice.setAccessibleName(about)
        choice.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        choice.setProperty("column", column)
        choice.activated.connect(self._choose)
        return choice

    def show_rows(
        self, heads: Sequence[str], rows: Sequence[Sequence[str]], choices: Sequence[QComboBox]
    ) -> None:
        """The rows as they stand; one that is shorter than the headings leaves its last cells empty."""
        self.clear()
        self.setRowCount(0)  # none is hidden from before
        self.setColumnCount(len(heads))
        self.setRowCount(len(rows) + 1)
        self.setHorizontalHeaderLabels(list(heads))
        self.choices = list(choices)
        for at, choice in enumerate(self.choices):
            self.setCellWidget(0, at, choice)
        for stop, following in pairwise((self, *self.choices)):  # younger than what follows the table
            self.setTabOrder(stop, following)
        for row, cells in enumerate(rows, start=1):
            for at in range(len(heads)):
                self.setItem(row, at, QTableWidgetItem(cells[at] if at < len(cells) else ""))
        self._fit()

    def _fit(self) -> None:
        """The page scrolls, not the table in it; in large letters fewer rows, so that its bar is seen."""
        self.resizeRowsToContents()
        if self.choices:
            self.setRowHeight(0, self.choices[0].sizeHint().height() + Space.XS)
        self.resizeColumnsToContents()
        head, bar = self.horizontalHeader(), self.horizontalScrollBar()
        high = head.sizeHint().height() + bar.sizeHint().height() + Space.XS
        most = ROOM - LINES_ABOVE * self.fontMetrics().height()
        for row in range(self.rowCount()):
            kept = row < LEAST_ROWS or high + self.rowHeight(row) <= most
            self.setRowHidden(row, not kept)
            high += self.rowHeight(row)  # of a hidden one nothing
        self.setFixedHeight(high)

    @Slot(int)
    def _choose(self, index: int) -> None:
        choice = self.sender()
        if isinstance(choice, QComboBox):
            self.column_chosen.emit(choice.property("column"), choice.itemData(index))
