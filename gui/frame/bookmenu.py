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

from gui.language.plainbutton import plain_button

__all__ = ["BookMenu"]

BOOKS = ("new_book", "choose_book", "open_pack", "open_demo")
INTO_IT = ("add_trays", "bring_in", "bring_in_log")
MORE_INTO_IT = ("bring_in_notes", "bring_in_book")
ABOUT_IT = ("print_tags", "tray_types", "check_station")
OUT_OF_IT = ("write_report", "export_book", "pack_book")


class BookMenu(QMenu):
    """The entries as a grower meets them: no more than fit a small screen in large letters."""

    book_chosen = Signal(str)  # folder

    def __init__(self, actions: Mapping[str, QAction], parent: QWidget) -> None:
        super().__init__(parent)
        self.recent = QMenu(self.tr("Opened of late"), self)
        more = QMenu(self.tr("Bring in more"), self)
        self._fill(self, actions, BOOKS)
        self.addMenu(self.recent)
        self.addSeparator()
        self._fill(self, actions, INTO_IT)
        self._fill(more, actions, MORE_INTO_IT)
        self.addMenu(more)
        for names in (ABOUT_IT, OUT_OF_IT, ("close",)):
            self.addSeparator()
            self._fill(self, actions, names)

    @staticmethod
    def _fill(menu: QMenu, actions: Mapping[str, QAction], names: Sequence[str]) -> None:
        for name in names:
            menu.addAction(actions[name])

    def show_recent(self, books: Sequence[Path]) -> None:
        """Offer the books opened of late."""
        for action in self.recent.actions():
            self.recent.removeAction(action)
            action.deleteLater()  # one of them may be the one that was just chosen
        for book in books:
            action = self.recent.addAction(plain_button(book.name))
            action.setToolTip(str(book))
            action.setStatusTip(str(book))
            action.setData(str(book))
            action.triggered.connect(self._choose)
        self.recent.setToolTipsVisible(True)
        self.recent.menuAction().setVisible(bool(books))

    @Slot()
    def _choose(self) -> None:
        sender = self.sender()
        if isinstance(sender, QAction):
            self.book_chosen.emit(sender.data())
