"""Book reading: what a place reads of the open book in the background, one reading at a time.

In    the open book; a question to it, which knows no Qt
Out   `came` with the answer, or `failed`; answers of a book that is open no more are dropped
Not   the thread (`work.py`), what is asked and shown (each place)

A question that comes while another is on its way waits for it; of several that wait the newest is enough,
for the book is read as it is then.
"""

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal, Slot

from data.cancel import CancelToken, Progress
from gui.work import Job, Work

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["BookReading"]

Question = Callable[["Book", CancelToken], object]


class BookReading(QObject):
    """Of one place."""

    came = Signal(object)  # the answer
    failed = Signal(object)  # the exception

    def __init__(self, work: Work, parent: QObject) -> None:
        super().__init__(parent)
        self._work = work
        self._book: Book | None = None
        self._job: Job | None = None
        self._asked_of: Book | None = None
        self._next: Question | None = None

    def open(self, book: "Book | None") -> None:
        """Questions are for this book from now on."""
        if book is not self._book:
            self._book = book
            self.stop()

    def stop(self) -> None:
        """Ask the reading on its way to end, and forget the question that waits."""
        self._next = None
        if self._job is not None:
            self._job.cancel()

    @property
    def is_running(self) -> bool:
        """Whether an answer of the open book is on its way."""
        return self._next is not None or (self._job is not None and self._asked_of is self._book)

    @property
    def waits(self) -> bool:
        """Whether it will be read once more: what comes first is out of date."""
        return self._next is not None

    def ask(self, question: Question) -> None:
        """Read as soon as nothing else of this place is read; without a book nothing."""
        if self._job is not None:
            self._next = question
            return
        book = self._asked_of = self._book
        if book is None:
            return

        def read(token: CancelToken, _report: Progress) -> object:
            return question(book, token)

        self._job = self._work.start(read)
        self._job.finished.connect(self._finished)
        self._job.failed.connect(self._failed)
        self._job.cancelled.connect(self._cancelled)

    @Slot(object)
    def _finished(self, answer: object) -> None:
        self._job = None
        if self._asked_of is self._book:
            self.came.emit(answer)
        self._go_on()

    @Slot(object)
    def _failed(self, error: Exception) -> None:
        self._job = None
        if self._asked_of is self._book:
            self.failed.emit(error)
        self._go_on()

    @Slot()
    def _cancelled(self) -> None:
        self._job = None
        self._go_on()

    def _go_on(self) -> None:
        question, self._next = self._next, None
        if question is not None:
            self.ask(question)
