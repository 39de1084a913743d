"""Guest table: the trays of another book, and which of them stand here already.

In    a `GuestLook`, the trays that are known
Out   a table
Not   bringing them in (`guestdialog.py`)
"""

from collections.abc import Set

from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QTableWidget, QTableWidgetItem, QWidget

from data.travel.guestlook import GuestLook, GuestTray
from gui.language.spoken import DAY_YEAR_SHORT, day_words
from gui.style.palette import Space, set_role

__all__ = ["GuestTable"]

MOST_ROWS = 300  # that are listed
LINES = 7  # seen at once


class GuestTable(QTableWidget):
    """A line a tray."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        heads = (
            self.tr("Tray"), self.tr("Crop"), self.tr("Medium"), self.tr("Sown"), self.tr("Photos"),
            self.tr("In this book"),
        )  # fmt: skip
        self.setColumnCount(len(heads))
        self.setHorizontalHeaderLabels(heads)
        self.setAccessibleName(self.tr("Trays of the other book"))
        self.setTabKeyNavigation(False)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.verticalHeader().hide()
        self.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Fixed)  # not for every cell
        self.horizontalHeader().setStretchLastSection(True)
        self._shown: tuple[GuestLook, Set[GuestTray]] | None = None
        set_role(self, "plain")

    def show_trays(self, look: GuestLook, known: Set[GuestTray]) -> None:
        """Show the trays, those that would be added first."""
        if self._shown == (look, known):
            return
        self._shown = look, known
        trays = sorted(look.trays, key=lambda tray: tray in known)
        shown = trays[:MOST_ROWS]
        more = len(trays) - len(shown)
        self.setRowCount(len(shown) + bool(more))
        for row, tray in enumerate(shown):
            here = self.tr("known already") if tray in known else self.tr("new")
            sown = day_words(tray.sown_at, DAY_YEAR_SHORT)
            for at, words in enumerate((tray.code, tray.crop, tray.medium, sown, str(tray.photos), here)):
                self.setItem(row, at, QTableWidgetItem(words))
        if more:
            self.setItem(len(shown), 0, QTableWidgetItem(self.tr("... and {n} more").format(n=more)))
        self.resizeColumnsToContents()
        self.resizeRowsToContents()
        rows = sum(self.rowHeight(row) for row in range(min(self.rowCount(), LINES)))
        self.setFixedHeight(rows + self.horizontalHeader().sizeHint().height() + Space.M)
