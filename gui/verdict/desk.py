"""Verdict desk: what the place Verdict asks of the book, off the window's thread.

In    the open book; the name of a trial
Out   `was_read`, or `trouble`; weights and the margin kept in the book
Not   showing anything (`screen.py`)
"""

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QObject, Signal, Slot

from data.errors import BookError
from gui.answer.reading import VerdictReading, read_verdict
from gui.bookreading import BookReading
from gui.mishap import trouble_words
from gui.work import Work

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["VerdictDesk"]


class VerdictDesk(QObject):
    """Reading, and what is kept."""

    was_read = Signal(object)  # VerdictReading
    trouble = Signal(str)

    def __init__(self, work: Work, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.book: Book | None = None
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
        self.book, self._trial = book, ""
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
        self._trial = self._trial or reading.trial  # it stays in front, though a newer one comes in
        self.was_read.emit(reading)

    @Slot(object)
    def _failed(self, error: Exception) -> None:
        self.trouble.emit(trouble_words(error))

    # --- changing the book: a few milliseconds

    def keep_rule(self, trial: str, score: Mapping[str, Any], why: str) -> bool:
        """Keep limits and weights; False with trouble told."""
        if self.book is None:
            return False
        try:
            self.book.keep_score_rule(trial, score, why)
        except BookError as error:
            self.trouble.emit(str(error))
            return False
        return True

    def set_margin(self, trial: str, points: float) -> bool:
        """Keep the margin of a trial without a plan; False with trouble told."""
        if self.book is None:
            return False
        try:
            self.book.set_margin(trial, points)
        except BookError as error:
            self.trouble.emit(str(error))
            return False
        return True
