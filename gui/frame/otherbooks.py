"""Other books: a new one begun, another one opened by its folder.

In    what the grower chooses
Out   the desk with another book on it; `told` with a sentence for the foot
Not   opening a folder (`bookdesk.py`), books that come as one file or as open files (`travel/desk.py`)
"""

from pathlib import Path

from PySide6.QtCore import QObject, Signal, Slot
from PySide6.QtWidgets import QWidget

from gui.controls.choosing import ask_folder
from gui.frame.bookdesk import BookDesk
from gui.home import books_folder

__all__ = ["OtherBooks"]


class OtherBooks(QObject):
    """What the first entries of the Book menu do."""

    told = Signal(str)

    def __init__(self, desk: BookDesk, over: QWidget) -> None:
        super().__init__(over)
        self._desk, self._over = desk, over

    @Slot()
    def new_book(self) -> None:
        """Let the grower start a book of their own."""
        from gui.frame.newbook import NewBook

        if not self._desk.may_leave():
            return
        NewBook(books_folder(), self._make_book, self._over).exec()

    def _make_book(self, folder: Path) -> None:
        """Make a book and open it; raises `BookError`."""
        self._desk.make(folder)
        self.told.emit(self.tr("Your book stands in {folder}.").format(folder=folder))

    @Slot()
    def choose_book(self) -> None:
        """Let the grower choose the folder of a book."""
        folder = ask_folder(self._over, self.tr("Open the folder of a book"), books_folder())
        if folder is not None:
            self._desk.open_folder(folder)

    @Slot(str)
    def open_recent(self, folder: str) -> None:
        """Open a book that was open of late."""
        self._desk.open_folder(Path(folder))
