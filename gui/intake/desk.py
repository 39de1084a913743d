"""Intake desk: what a person says of photos that have come in, kept in the book.

In    photos and the trays they show, photos left out, clocks mended or believed
Out   the book changed in the background, each one step of undo; `done` with what is told of it, `failed`
Not   asking (`photopanel.py`, `bands.py`), corners (`cornerdesk.py`)
"""

from collections.abc import Callable, Mapping
from datetime import timedelta
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal, Slot

from data.cancel import CancelToken, Progress
from data.records import PhotoId, TrayId
from gui.intake.view import IntakeRow
from gui.work import Job, Work

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["IntakeDesk"]


class IntakeDesk(QObject):
    """One change at a time: while one is kept, a second press does nothing."""

    done = Signal(str)  # told at the foot of the window; empty where the rows say enough
    failed = Signal(object)

    def __init__(self, work: Work, parent: QObject) -> None:
        super().__init__(parent)
        self._work = work
        self._book: Book | None = None
        self._job: Job | None = None

    def open_book(self, book: "Book | None") -> None:
        """Of which book the photos are."""
        self._book, self._job = book, None

    @Slot(object, int)
    def match(self, row: IntakeRow, tray: int) -> None:
        """This photo shows that tray."""
        if row.photo_id is not None:
            self.match_all({row.photo_id: TrayId(tray)})

    @Slot(object)
    def match_all(self, trays: Mapping[PhotoId, TrayId]) -> None:
        """These photos show these trays."""
        self._change(lambda book: book.match_all(trays))

    @Slot(object)
    def leave_out(self, row: IntakeRow) -> None:
        """Count this photo for no tray."""
        photo = row.photo_id
        if photo is not None:
            self._change(lambda book: book.leave_out(photo))

    @Slot(object, object)
    def mend_clock(self, photos: tuple[PhotoId, ...], shift: timedelta) -> None:
        """These photos were really taken so much later."""
        words = self.tr("The time of the photo is mended. Ctrl+Z takes it back.")
        if len(photos) > 1:
            words = self.tr("The times of {count} photos are mended. Ctrl+Z takes it back.")
        self._change(lambda book: book.mend_clock(photos, shift), words.format(count=len(photos)))

    @Slot(object)
    def believe_clock(self, photos: tuple[PhotoId, ...]) -> None:
        """The camera's clock was right."""
        words = self.tr("The times stay as they are, and nobody asks again. Ctrl+Z takes it back.")
        self._change(lambda book: book.believe_clock(photos), words)

    def _change(self, change: "Callable[[Book], object]", words: str = "") -> None:
        book = self._book
        if book is None or self._job is not None:
            return

        def task(_token: CancelToken, _report: Progress) -> str:
            change(book)
            return words

        self._job = self._work.start(task)
        self._job.finished.connect(self._finished)
        self._job.failed.connect(self._failed)

    @Slot(object)
    def _finished(self, words: str) -> None:
        if self.sender() is self._job:
            self._job = None
            self.done.emit(words)

    @Slot(object)
    def _failed(self, error: Exception) -> None:
        if self.sender() is self._job:
            self._job = None
            self.done.emit("")
            self.failed.emit(error)
