"""Material table: media as columns, rows in groups; the names stay in sight while it scrolls.

In    a `MaterialReading`
Out   `cell_chosen` with row and medium, by mouse and arrow keys
Not   the words (`view.py`), painting a cell (`cellpainter.py`)
"""

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QFont, QFontMetrics, QResizeEvent
from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QTableWidget, QTableWidgetItem, QWidget

from data.materials.reading import MaterialReading
from data.materials.table import Table
from gui.language.plainhint import plain_hint
from gui.language.spoken import spoken
from gui.materials.cellpainter import WORDS, CellPainter
from gui.materials.headings import broken
from gui.materials.view import Line, cell_words, lines_of
from gui.style.palette import Space

__all__ = ["MaterialTable"]

EDGES = 2 * Space.S + Space.XS  # px beside the words of a heading
HEADS = 0.29  # of the width for the headings of rows, at most


class MaterialTable(QTableWidget):
    """Nothing in it is typed; a cell's panel leads on."""

    cell_chosen = Signal(str, str)  # row, medium

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(self.tr("Media side by side"))
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setTabKeyNavigation(False)
        self.setShowGrid(False)
        self.setCornerButtonEnabled(False)
        self.setStyleSheet("QTableCornerButton::section { background: transparent; border: none; }")
        self.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setItemDelegate(CellPainter(self))
        self.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Stretch)
        self.horizontalHeader().setDefaultAlignment(
            Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter  # as the cells below
        )
        self.horizontalHeader().setHighlightSections(False)
        self.horizontalHeader().setSectionsClickable(False)
        self.verticalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        self.verticalHeader().setSectionsClickable(False)
        self.verticalHeader().setHighlightSections(False)
        self.verticalHeader().setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        self.currentCellChanged.connect(self._moved)
        self._lines: tuple[Line, ...] = lines_of()
        self._media: tuple[str, ...] = ()
        self._names: tuple[str, ...] = ()
        self.setRowCount(len(self._lines))
        for number in range(len(self._lines)):
            self.setVerticalHeaderItem(number, QTableWidgetItem())

    def show_reading(self, reading: MaterialReading) -> None:
        """Show it; the same cell stays chosen, wherever its medium stands now."""
        row, column = self.currentRow(), self.currentColumn()
        table = reading.table
        if 0 <= column < len(self._media) and self._media[column] in table.media:
            column = table.media.index(self._media[column])
        self.blockSignals(True)
        self.clearSpans()
        self._media = table.media
        self.setColumnCount(len(table.media))
        trusted = self.tr("{medium}\ntrusted")
        self._names = tuple(
            trusted.format(medium=name) if name == table.trusted else name for name in table.media
        )
        for at in range(len(self._names)):
            if self.horizontalHeaderItem(at) is None:
                self.setHorizontalHeaderItem(at, QTableWidgetItem())
        for number, line in enumerate(self._lines):
            for at, medium in enumerate(table.media):
                _tell(self._cell(number, at), line, table, medium)
        self.fit()
        if table.media:
            self.setCurrentCell(max(row, 1), min(max(column, 0), len(table.media) - 1))
        self.blockSignals(False)
        self._moved()

    def _cell(self, number: int, at: int) -> QTableWidgetItem:
        """The one that is there already: replacing cells has crashed under hands that click meanwhile."""
        kept = self.item(number, at)
        if kept is not None:
            return kept
        made = QTableWidgetItem()
        self.setItem(number, at, made)
        return made

    def _row_words(self, line: Line) -> str:
        if line.row is None:
            return line.heading
        unit = f"\n{spoken(line.row.unit)}" if line.row.unit else ""
        return spoken(line.row.words) + unit

    def fit(self) -> None:
        """Headings in as many lines as they need, beside and above."""
        least = 13 * self.fontMetrics().averageCharWidth()  # px of a column
        wide = self._fit_rows(least)
        room = self.width() - wide - self.verticalScrollBar().sizeHint().width()
        section = max(least, room // max(1, len(self._names))) - EDGES
        self.horizontalHeader().setMinimumSectionSize(least)
        for at, name in enumerate(self._names):
            head = self.horizontalHeaderItem(at)
            if head is not None:
                head.setText(broken(name, section, self.fontMetrics().horizontalAdvance))

    def _fit_rows(self, least: int) -> int:
        """Rows as high as their headings, or as two lines and their edges; how wide the headings are, px."""
        bold = QFont(self.font())
        bold.setBold(True)
        measure, line = QFontMetrics(bold).horizontalAdvance, self.fontMetrics().height()
        words = [self._row_words(one) for one in self._lines]
        longest = max(measure(part) for one in words for part in one.split("\n"))
        wide = min(longest + EDGES, max(least, round(HEADS * self.width())))
        self.verticalHeader().setFixedWidth(wide)
        for number, one in enumerate(self._lines):
            text = broken(words[number], wide - EDGES, measure)
            lines = 1.6 if one.row is None else max(2.8, 1.5 + text.count("\n"))
            self.setRowHeight(number, round(lines * line))
            head = self.verticalHeaderItem(number)
            if head is not None:
                head.setText(text)
                if one.row is None:
                    head.setFont(bold)
        return wide

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Headings follow the width."""
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():
            self.fit()

    @Slot()
    def _moved(self) -> None:
        line = self._lines[self.currentRow()] if 0 <= self.currentRow() < len(self._lines) else None
        if line is not None and line.row is not None and 0 <= self.currentColumn() < len(self._media):
            self.cell_chosen.emit(line.row.key, self._media[self.currentColumn()])

    def choose(self, row: str, medium: str) -> None:
        """Go to a cell."""
        number = next(n for n, line in enumerate(self._lines) if line.row is not None and line.row.key == row)
        self.setCurrentCell(number, self._media.index(medium))


def _tell(cell: QTableWidgetItem, line: Line, table: Table, medium: str) -> None:
    if line.row is None:
        cell.setFlags(Qt.ItemFlag.NoItemFlags)
        return
    words = cell_words(line.row, medium, table.cell(line.row.key, medium))
    cell.setData(WORDS, words)
    cell.setData(Qt.ItemDataRole.AccessibleTextRole, words.spoken)
    cell.setToolTip(plain_hint(words.spoken))
