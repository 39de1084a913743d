"""Verdict desk: what the place Verdict asks of the book, off the window's thread.

In    the open book; the name of a trial
Out   `was_read`, or `trouble`; weights and the margin kept in the book
Not   showing anything (`screen.py`)

Reading runs at most once at a time: what changes meanwhile is read once more when it ends.
"""

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QObject, Signal, Slot

from data.cancel import CancelToken
from data.errors import BookError
from gui.answer.reading import VerdictReading, read_verdict
from gui.mishap import trouble_words
from gui.work import Job, Report, Work

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["VerdictDesk"]


class VerdictDesk(QObject):
    """Answers name their book: those of another one are dropped."""

    was_read = Signal(object)  # VerdictReading
    trouble = Signal(str)

    def __init__(self, work: Work, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._work = work
        self.book: Book | None = None
        self._trial = ""
        self._job: Job | None = None
        self._again = False

    @property
    def is_reading(self) -> bool:
        """Whether an answer is on its way."""
        return self._job is not None

    def close(self) -> None:
        """Stop reading; the book goes."""
        self._again = False
        if self._job is not None:
            self._job.cancel()
        self.book = None

    def read(self, trial: str = "") -> None:
        """Read a trial, or the same as before."""
        self._trial = trial or self._trial
        if self.book is None:
            return
        if self._job is not None:
            self._again = True
            if trial:
                self._job.cancel()
            return
        book, wanted = self.book, self._trial

        def read(token: CancelToken, _report: Report) -> tuple[object, VerdictReading]:
            return book, read_verdict(book, wanted, token)

        self._job = self._work.start(read)
        self._job.finished.connect(self._was_read)
        self._job.failed.connect(self._failed)
        self._job.cancelled.connect(self._was_stopped)

    @Slot(object)
    def _was_read(self, answer: tuple[object, VerdictReading]) -> None:
        self._job = None
        book, reading = answer
        if self._again or book is not self.book:
            self._read_again()
            if book is not self.book:
                return
        self._trial = self._trial or reading.trial  # it stays in front, though a newer one comes in
        self.was_read.emit(reading)

    @Slot(object)
    def _failed(self, error: Exception) -> None:
        self._job = None
        self.trouble.emit(trouble_words(error))
        self._read_again()

    @Slot()
    def _was_stopped(self) -> None:
        self._job = None
        self._read_again()

    def _read_again(self) -> None:
        if self._again and self.book is not None:
            self._again = False
            self.read()

    def open(self, book: "Book | None") -> None:
        """Another book from now on."""
        self.close()
        self._trial = ""
        self.book = book
        self._again = book is not None and self._job is not None

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
