"""Book menu: books opened and begun, what comes into the open one, and what leaves it.

In    the actions of the window by name; books opened of late
Out   `book_chosen` with the folder of a recent book
Not   what an entry does (`keys.py` finds the part of the window)
"""

from collections.abc import Mapping, Sequence
from pathlib import Path

from PySide6.QtCore import Signal, Slot
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QMenu, QWidget

__all__ = ["BookMenu"]

BOOKS = ("new_book", "choose_book", "open_pack", "open_demo")
INTO_IT = ("add_trays", "bring_in", "bring_in_log", "bring_in_notes", "bring_in_book")
ABOUT_IT = ("print_tags", "tray_types", "check_station")
OUT_OF_IT = ("write_report", "export_book", "pack_book")


class BookMenu(QMenu):
    """The entries in the order in which a grower meets them."""

    book_chosen = Signal(str)  # folder

    def __init__(self, actions: Mapping[str, QAction], parent: QWidget) -> None:
        super().__init__(parent)
        self._recent: list[QAction] = []
        for names in (BOOKS, INTO_IT, ABOUT_IT, OUT_OF_IT):
            for name in names:
                self.addAction(actions[name])
            separator = self.addSeparator()
            if names is BOOKS:
                self._before_recent = separator
        self.addAction(actions["close"])

    def show_recent(self, books: Sequence[Path]) -> None:
        """Offer the books opened of late."""
        for action in self._recent:
            self.removeAction(action)
            action.deleteLater()
        self._recent = []
        for book in books:
            action = QAction(book.name.replace("&", "&&"), self)
            action.setToolTip(str(book))
            action.setStatusTip(str(book))
            action.setData(str(book))
            action.triggered.connect(self._choose)
            self._recent.append(action)
        if self._recent:
            heading = QAction(self.tr("Opened of late"), self)
            heading.setEnabled(False)
            separator = QAction(self)
            separator.setSeparator(True)
            self._recent = [separator, heading, *self._recent]
        self.insertActions(self._before_recent, self._recent)

    @Slot()
    def _choose(self) -> None:
        sender = self.sender()
        if isinstance(sender, QAction):
            self.book_chosen.emit(sender.data())
