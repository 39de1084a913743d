"""Screen: what every place of the window has in common.

In    `Work` at its making; a `Book` when one is opened, None when it is closed
Out   values go up by signal (a tray is wanted, a sentence is told, the book has changed); calls go down
Not   what is shown (each screen), who is in front (`window.py`)
"""

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from data.entry.units import UnitSystem
from data.errors import BookError
from gui.work import Work

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["Screen"]


class Screen(QWidget):
    """One place of the window. A screen never knows its parent and never another screen."""

    tray_wanted = Signal(int)  # id of the tray whose sheet shall be opened
    photo_wanted = Signal(int, int)  # ids of a tray and of the photo that its sheet shall show
    place_wanted = Signal(str)  # name of the place to go to: "bench", "intake", "traysheet"
    trays_wanted = Signal()  # trays shall be added
    log_wanted = Signal()  # the file of a logger shall be brought in
    next_wanted = Signal(str, int)  # a trial shall be repeated with so many trays of each
    told = Signal(str)  # one sentence for the foot of the window
    troubled = Signal(str)  # what stands in the way, on top of the window until it has been read
    book_changed = Signal()  # something was kept, said or undone: all screens and the undo words follow

    KEYS: tuple[tuple[str, str], ...] = ()  # keys of this screen and what they do, for the sheet of keys

    def __init__(self, work: Work, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.work = work
        self.book: Book | None = None

    def open_book(self, book: "Book | None") -> None:
        """Show this book from now on; with None forget the one that was open."""
        self.book = book
        self.renew()

    def renew(self) -> None:
        """Read again what is shown; the book has changed. Cheap, called often while photos come in."""

    def keep(self, change: "Callable[[Book], object]") -> bool:
        """Change the open book; False where that could not be, and what stands in the way is told."""
        if self.book is None:
            return False
        try:
            change(self.book)
        except BookError as error:
            self.troubled.emit(str(error))
            return False
        return True

    def unkept(self) -> str:
        """What would be lost if the window closed now, in a sentence; "" where nothing would."""
        return ""

    def arrive(self) -> None:
        """The screen has come to the front: put the focus where the hands expect it."""

    def redress(self) -> None:
        """The scheme or the text size has changed: renew icons and whatever was drawn for the old one."""

    def use_units(self, system: UnitSystem) -> None:
        """Numbers typed without a unit are in those of this system from now on."""
