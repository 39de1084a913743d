"""Bench lists: two lists of the past: trays that have ended, what stood on the look list.

In    the book; read in the background, since a book of years has thousands
Out   `tray_chosen` with the id of the one that is to be opened; `troubled` where the book cannot be read
Not   what the lists look like (`endedtrays.py`, `lookhistory.py`, each brought in when it is first wanted)
"""

from collections.abc import Callable
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QObject, Signal, Slot
from PySide6.QtWidgets import QWidget

from data.cancel import CancelToken, Progress
from gui.controls.asking import show_over
from gui.mishap import trouble_words
from gui.work import Task, Work

if TYPE_CHECKING:
    from data.book import Book
    from data.records import Tray
    from data.tables.lookrows import PastLook

__all__ = ["BenchLists"]


class BenchLists(QObject):
    """Reads a list and shows it over the Bench or a tray's sheet."""

    tray_chosen = Signal(int)
    troubled = Signal(str)

    def __init__(self, work: Work, over: QWidget) -> None:
        super().__init__(over)
        self._work, self._over = work, over
        self._book: Book | None = None
        self._busy = False  # a list is being read or shown: a second click opens no second one

    def show_ended(self, book: "Book | None") -> None:
        """Trays that were cut or thrown away."""
        self._book = book
        if book is None:
            return

        def read(_token: CancelToken, _report: Progress) -> "tuple[Book, tuple[Tray, ...]]":
            return book, book.ended_trays()

        self._begin(read, self._ended)

    def _begin(self, read: Task, show: Callable[[Any], None]) -> None:
        if self._busy:
            return
        self._busy = True
        job = self._work.start(read)
        job.finished.connect(show)
        job.failed.connect(self._not_read)
        job.cancelled.connect(self._over_with)

    @Slot(object)
    def _not_read(self, error: Exception) -> None:
        self._over_with()
        self.troubled.emit(trouble_words(error))

    @Slot()
    def _over_with(self) -> None:
        self._busy = False

    @Slot(object)
    def _ended(self, answer: "tuple[Book, tuple[Tray, ...]]") -> None:
        from gui.traysheet.past.endedtrays import EndedTrays

        book, trays = answer
        dialog = EndedTrays(trays, self._over) if book is self._book else None
        accepted = dialog is not None and dialog.exec()
        self._over_with()
        if accepted and dialog is not None and dialog.chosen is not None:
            self.tray_chosen.emit(int(dialog.chosen))

    def show_history(self, book: "Book | None") -> None:
        """What stood on the look list, and why it went away."""
        self._book = book
        if book is None:
            return

        def read(_token: CancelToken, _report: Progress) -> "tuple[Book, tuple[PastLook, ...]]":
            return book, book.look_history()

        self._begin(read, self._history)

    @Slot(object)
    def _history(self, answer: "tuple[Book, tuple[PastLook, ...]]") -> None:
        from gui.traysheet.past.lookhistory import LookHistory

        book, past = answer
        if book is not self._book:
            self._over_with()
            return
        dialog = LookHistory(past, self._over)
        dialog.tray_chosen.connect(self.tray_chosen)
        dialog.finished.connect(self._over_with)
        show_over(dialog)
