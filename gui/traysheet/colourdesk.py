"""Colour desk: how far a canopy's colour is from others, asked of the book in the background.

In    a book, a `TrayState`
Out   `told` with the lines of its day: at once that they are coming, soon what they say
Not   comparing (`data/chapters/colourapart.py`), the words (`notes/colourlines.py`)
"""

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal, Slot

from data.cancel import CancelToken, Progress
from data.records import PhotoId
from gui.notes.colourlines import colour_lines, coming_line
from gui.traysheet.view import TrayState
from gui.work import Work

if TYPE_CHECKING:
    from data.book import Book
    from data.chapters.colourapart import ColourApart

__all__ = ["ColourDesk"]


class ColourDesk(QObject):
    """Asks again whenever the sheet is read again: a mate may have been photographed meanwhile."""

    told = Signal(object)  # tuple[NumberLine, ...]

    def __init__(self, work: Work, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._work = work
        self._asked: PhotoId | None = None

    def forget(self) -> None:
        """Another book."""
        self._asked = None

    def ask(self, book: "Book", state: TrayState) -> None:
        """Say that it is coming where another photo is looked at; then what it is."""
        day = state.day
        asked = None if day is None or day.score is None else day.photo_id
        if asked is None or asked != self._asked:
            self._asked = asked
            self.told.emit(() if asked is None else (coming_line(),))
        if asked is None:
            return
        tray = state.tray.id

        def compare(_token: CancelToken, _report: Progress) -> "ColourApart | None":
            from data.chapters.colourapart import colour_apart

            return colour_apart(book, tray, asked)

        job = self._work.start(compare)
        job.finished.connect(self._came)
        job.failed.connect(self._failed)

    @Slot(object)
    def _came(self, apart: "ColourApart | None") -> None:
        if apart is not None and apart.photo_id == self._asked:
            self.told.emit(colour_lines(apart))

    @Slot(object)
    def _failed(self, _error: Exception) -> None:
        self.told.emit(())
