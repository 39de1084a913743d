"""Look history: what stood on the look list, from when to when, and why it went away.

In    `PastLook`s of a book
Out   a window with a table; `tray_chosen` by Enter or a double click
Not   reading them (`data/chapters/lookbook.py`)
"""

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QResizeEvent, QShowEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QDialog,
    QDialogButtonBox,
    QHeaderView,
    QTableWidget,
    QTableWidgetItem,
    QVBoxLayout,
    QWidget,
)

from data.tables.lookrows import PastLook
from gui.controls.form import open_within_screen
from gui.language.spoken import DAY_SHORT, day_words, spoken
from gui.style.marks import kind_words
from gui.style.palette import Space
from gui.style.words import wrapped

__all__ = ["LookHistory"]

TRAY = Qt.ItemDataRole.UserRole
SENTENCES = (4, 5)  # columns that wrap
TEXT_EDGE = 3  # px that Qt leaves beside the text of a cell, and not beside that of a heading
MOST_HIGH = 10_000  # px of a row


class LookHistory(QDialog):
    """The table: what went away, newest first, then what is still there."""

    tray_chosen = Signal(int)

    def __init__(self, past: Sequence[PastLook], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("What stood on the look list"))
        column = QVBoxLayout(self)
        column.setContentsMargins(Space.L, Space.L, Space.L, Space.L)
        column.setSpacing(Space.M)
        still = [one for one in past if one.gone_on is None]
        gone = [one for one in past if one.gone_on is not None]
        column.addWidget(wrapped(self._told(len(gone), len(still)), self, "soft"))
        self.table = self._make_table([*gone, *still])
        self.table.setVisible(bool(past))
        column.addWidget(self.table, 1)
        close = QDialogButtonBox(QDialogButtonBox.StandardButton.Close, self)
        close.rejected.connect(self.reject)
        column.addWidget(close)
        width = self.fontMetrics().averageCharWidth()
        open_within_screen(self, width * 120, self.fontMetrics().height() * 26)

    def _told(self, gone: int, still: int) -> str:
        if not gone and not still:
            return self.tr("Nothing has stood on the look list of this book yet.")
        if not gone:
            return self.tr("Nothing has gone away from the look list yet. Still there: {still}.").format(
                still=still
            )
        return self.tr("Went away: {gone}. Still there, below: {still}.").format(gone=gone, still=still)

    def _make_table(self, past: Sequence[PastLook]) -> QTableWidget:
        heads = (
            self.tr("Tray"), self.tr("What"), self.tr("From"), self.tr("To"), self.tr("The numbers"),
            self.tr("Why it went away"),
        )  # fmt: skip
        table = QTableWidget(len(past), len(heads), self)
        table.setHorizontalHeaderLabels(heads)
        table.setAccessibleName(self.windowTitle())
        table.setShowGrid(False)
        table.setStyleSheet(f"QTableView::item {{ padding: {Space.XS}px {Space.S - TEXT_EDGE}px; }}")
        table.setTabKeyNavigation(False)
        table.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        table.verticalHeader().hide()
        table.setWordWrap(True)
        for row, one in enumerate(past):
            for place, words in enumerate(self._cells(one)):
                item = QTableWidgetItem(words)
                item.setData(TRAY, int(one.tray_id))
                item.setTextAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop)
                table.setItem(row, place, item)
        header = table.horizontalHeader()
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft)
        for place in range(4):
            header.setSectionResizeMode(place, QHeaderView.ResizeMode.ResizeToContents)
        for place in SENTENCES:
            header.setSectionResizeMode(place, QHeaderView.ResizeMode.Stretch)
        table.verticalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        table.itemActivated.connect(self._choose)
        return table

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Sentences take more lines where there is less width."""
        super().resizeEvent(event)
        self._fit_rows()

    def showEvent(self, event: QShowEvent) -> None:
        """Only now the columns have their width."""
        super().showEvent(event)
        self._fit_rows()

    def _fit_rows(self) -> None:
        """As high as the sentences; Qt reckons without the space beside them, and cuts their last line."""
        metrics, wrapped = self.table.fontMetrics(), int(Qt.TextFlag.TextWordWrap)
        rooms = {at: self.table.columnWidth(at) - 2 * Space.S - Space.XS for at in SENTENCES}
        for row in range(self.table.rowCount()):
            texts = {at: item.text() for at in SENTENCES if (item := self.table.item(row, at)) is not None}
            high = max(
                metrics.boundingRect(0, 0, rooms[at], MOST_HIGH, wrapped, text).height()
                for at, text in texts.items()
            )
            self.table.setRowHeight(row, max(high, metrics.height()) + 2 * Space.XS + 2)

    def _cells(self, one: PastLook) -> tuple[str, ...]:
        until = self.tr("still there") if one.gone_on is None else day_words(one.last_on, DAY_SHORT)
        why = spoken(one.gone_why) if one.gone_why else ""
        if not why and one.answer is not None:
            why = self.tr("You said: seen") if one.answer == "seen" else self.tr("You said: tomorrow")
        return (
            one.code, kind_words(one.what), day_words(one.since, DAY_SHORT), until, spoken(one.sentence), why,
        )  # fmt: skip

    @Slot(QTableWidgetItem)
    def _choose(self, item: QTableWidgetItem) -> None:
        self.tray_chosen.emit(item.data(TRAY))
        self.accept()
