"""Log preview: the first rows of a file, with a choice of its meaning over each column.

In    a `LogSheet`
Out   `column_chosen` (number, `ColumnAs`)
Not   reading the file again (`assistant.py`), the words (`view.py`)
"""

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import (
    QAbstractItemView,
    QComboBox,
    QHeaderView,
    QTableWidget,
    QTableWidgetItem,
    QWidget,
)

from data.logs.sheet import LogSheet
from gui.logs.view import column_choices, column_words, stored_words
from gui.style.palette import Space, set_role

__all__ = ["LogPreview"]


class LogPreview(QTableWidget):
    """Row 0 holds the choices; the last column says what will be stored."""

    column_chosen = Signal(int, object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.choices: list[QComboBox] = []
        self.setAccessibleName(self.tr("First rows of the file, and what each column is"))
        self.setTabKeyNavigation(False)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.verticalHeader().hide()
        self.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        set_role(self, "plain")

    def show_sheet(self, sheet: LogSheet) -> None:
        """Show the first rows as they stand, and as they will be stored."""
        width = len(sheet.headings)
        self.clear()
        self.setColumnCount(width + 1)
        self.setRowCount(len(sheet.cells) + 1)
        heads = [
            heading or self.tr("column {n}").format(n=at + 1) for at, heading in enumerate(sheet.headings)
        ]
        self.setHorizontalHeaderLabels(heads)
        stored = QTableWidgetItem(self.tr("Will be stored"))
        stored.setTextAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        self.setHorizontalHeaderItem(width, stored)
        self.choices = [self._choice(sheet, at, head) for at, head in enumerate(heads)]
        for at, choice in enumerate(self.choices):
            self.setCellWidget(0, at, choice)
        for row, (line, cells) in enumerate(zip(sheet.lines, sheet.cells, strict=True), start=1):
            for at in range(width):
                self.setItem(row, at, QTableWidgetItem(cells[at] if at < len(cells) else ""))
            words = stored_words(sheet, line)
            self.setItem(row, width, QTableWidgetItem(words or "–"))
        self.resizeRowsToContents()
        if self.choices:
            self.setRowHeight(0, self.choices[0].sizeHint().height() + Space.XS)
        self.resizeColumnsToContents()
        rows = sum(self.rowHeight(row) for row in range(self.rowCount()))
        head, bar = (
            self.horizontalHeader().sizeHint().height(),
            self.horizontalScrollBar().sizeHint().height(),
        )
        self.setFixedHeight(rows + head + bar + Space.XS)  # the page scrolls, not the table in it

    def _choice(self, sheet: LogSheet, at: int, head: str) -> QComboBox:
        column = sheet.read_as.columns[at]
        choice = QComboBox(self)
        choice.setAccessibleName(self.tr("What the column {heading} is").format(heading=head))
        choice.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        choice.setProperty("column", at)
        choice.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        choice.setMinimumContentsLength(max(6, len(column_words(column)) - 1))
        for one in column_choices(column):
            choice.addItem(column_words(one), one)
            if one == column:
                choice.setCurrentIndex(choice.count() - 1)
        choice.view().setMinimumWidth(choice.view().sizeHintForColumn(0) + Space.XL)
        choice.activated.connect(self._choose)
        return choice

    @Slot(int)
    def _choose(self, index: int) -> None:
        choice = self.sender()
        if isinstance(choice, QComboBox):
            self.column_chosen.emit(choice.property("column"), choice.itemData(index))
