"""Verdict desk: what the place Verdict asks of the book, off the window's thread.

In    the open book; the name of a trial
Out   `was_read`, or `trouble`
Not   showing anything, keeping weights and the margin (`screen.py`)
"""

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal, Slot

from gui.answer.reading import VerdictReading, read_verdict
from gui.bookreading import BookReading
from gui.mishap import trouble_words
from gui.work import Work

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["VerdictDesk"]


class VerdictDesk(QObject):
    """Reads one trial; it stays in front, though a newer one comes in."""

    was_read = Signal(object)  # VerdictReading
    trouble = Signal(str)

    def __init__(self, work: Work, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._trial = ""
        self._reading = BookReading(work, self)
        self._reading.came.connect(self._was_read)
        self._reading.failed.connect(self._failed)

    @property
    def is_reading(self) -> bool:
        """Whether an answer is on its way."""
        return self._reading.is_running

    def open(self, book: "Book | None") -> None:
        """Another book from now on."""
        self._trial = ""
        self._reading.open(book)

    def read(self, trial: str = "") -> None:
        """Read a trial, or the same as before."""
        if trial:
            self._trial = trial
            self._reading.stop()
        wanted = self._trial
        self._reading.ask(lambda book, cancel: read_verdict(book, wanted, cancel))

    @Slot(object)
    def _was_read(self, reading: VerdictReading) -> None:
        self._trial = self._trial or reading.trial
        self.was_read.emit(reading)

    @Slot(object)
    def _failed(self, error: Exception) -> None:
        self.trouble.emit(trouble_words(error))
