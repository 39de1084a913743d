"""Sheet page: what every view of a tray's sheet has in common.

In    the book, the `TrayState` that is looked at
Out   `book_changed`, `told`, `troubled`, as a screen says them
Not   which page is in front (`screen.py`), what is shown (each page)
"""

from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QWidget

from gui.traysheet.view import TrayState
from gui.work import Work

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["SheetPage"]


class SheetPage(QWidget):
    """One view. Only the one in front is shown anything, so that nothing is loaded in vain."""

    book_changed = Signal()
    told = Signal(str)
    troubled = Signal(str)

    def __init__(self, work: Work, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.work = work
        self.book: Book | None = None
        self.state: TrayState | None = None

    def open_book(self, book: "Book | None") -> None:
        """Another book: forget what belongs to the one before."""
        self.book, self.state = book, None

    def show_state(self, state: TrayState) -> None:
        """Show this; called again whenever anything of it has changed, and on coming to the front."""
        self.state = state

    def take_key(self, event: QKeyEvent) -> bool:
        """A key that was pressed anywhere on the sheet; False where it says nothing here."""
        return False

    def stops(self) -> list[QWidget]:
        """What Tab comes by, in reading order."""
        return []

    def take_focus(self) -> None:
        """The page was asked for: put the focus where the hands expect it."""
        self.setFocus()

    def redress(self) -> None:
        """Another scheme or text size."""
