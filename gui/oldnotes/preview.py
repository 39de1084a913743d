"""Old notes preview: the first lines of a table, with a choice of the meaning over each column.

In    a `NotesLooked`
Out   `column_chosen` (number, `Field` or None)
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

from data.logs.oldcolumns import Field
from gui.oldnotes.view import NotesLooked, field_words
from gui.style.palette import Space, set_role

__all__ = ["OldNotesPreview"]

LINES = 6


class OldNotesPreview(QTableWidget):
    """Row 0 holds the choices."""

    column_chosen = Signal(int, object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.choices: list[QComboBox] = []
        self.setAccessibleName(self.tr("First lines of the file, and what each column is"))
        self.setTabKeyNavigation(False)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.verticalHeader().hide()
        self.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        set_role(self, "plain")

    def show_notes(self, looked: NotesLooked) -> None:
        """Show the first lines as they stand."""
        table = looked.table
        if table is None:
            return
        width, rows = len(table.headings), table.rows[:LINES]
        self.clear()
        self.setColumnCount(width)
        self.setRowCount(len(rows) + 1)
        heads = [head or self.tr("column {n}").format(n=at + 1) for at, head in enumerate(table.headings)]
        self.setHorizontalHeaderLabels(heads)
        self.choices = [self._choice(looked.fields[at], at, head) for at, head in enumerate(heads)]
        for at, choice in enumerate(self.choices):
            self.setCellWidget(0, at, choice)
        for row, (_line, cells) in enumerate(rows, start=1):
            for at in range(width):
                self.setItem(row, at, QTableWidgetItem(cells[at] if at < len(cells) else ""))
        self._fit()

    def _fit(self) -> None:
        """The page scrolls, not the table in it."""
        self.resizeRowsToContents()
        if self.choices:
            self.setRowHeight(0, self.choices[0].sizeHint().height() + Space.XS)
        self.resizeColumnsToContents()
        rows = sum(self.rowHeight(row) for row in range(self.rowCount()))
        head, bar = self.horizontalHeader(), self.horizontalScrollBar()
        self.setFixedHeight(rows + head.sizeHint().height() + bar.sizeHint().height() + Space.XS)

    def _choice(self, field: Field | None, at: int, head: str) -> QComboBox:
        choice = QComboBox(self)
        choice.setAccessibleName(self.tr("What the column {heading} is").format(heading=head))
        choice.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        choice.setProperty("column", at)
        for one in (None, *Field):
            choice.addItem(field_words(one), one)
            if one is field:
                choice.setCurrentIndex(choice.count() - 1)
        choice.activated.connect(self._choose)
        return choice

    @Slot(int)
    def _choose(self, index: int) -> None:
        choice = self.sender()
        if isinstance(choice, QComboBox):
            value = choice.itemData(index)
            self.column_chosen.emit(choice.property("column"), None if value is None else Field(value))
