"""Bringing: photos on their way into the book, one batch at a time, each with its fate once it has one.

In    files and folders, the open book
Out   `batch`, which grows, and names what is missing where it broke off; `stepped` with each fate, `told` and
      `failed` where it ends early
Not   which files (`photosource.py`), what is shown of them (`view.py`), scoring (`data.intake`)
"""

from collections import deque
from collections.abc import Callable, Sequence
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal, Slot

from data.cancel import CancelToken, Progress
from gui.intake.view import Batch
from gui.work import Job, Work

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["Bringing"]


class Bringing(QObject):
    """One job after the other; what comes meanwhile waits."""

    stepped = Signal()  # the batch and the book have changed
    told = Signal(str)
    failed = Signal(object)

    def __init__(self, work: Work, parent: QObject) -> None:
        super().__init__(parent)
        self._work = work
        self._book: Book | None = None
        self._news: deque[Callable[[], None]] = deque()  # filled by the worker, worked off here
        self._queue: list[Path] = []
        self._given: list[Path] = []  # files and folders in which photos are still being looked for
        self._job: Job | None = None
        self.batch = Batch()

    @property
    def is_busy(self) -> bool:
        """Whether photos are on their way."""
        return self._job is not None

    def open_book(self, book: "Book | None") -> None:
        """Another book: another batch."""
        self._book, self._job, self._queue, self._given = book, None, [], []
        self._news.clear()
        self.batch = Batch()

    def bring_in(self, paths: Sequence[Path]) -> Job | None:
        """Score and keep these files and folders, in this order; while others come in, these wait."""
        if self._book is None or not paths:
            return None
        if self._job is not None:
            self._queue.extend(paths)
            return None
        book, news, batch, work = self._book, self._news, self.batch, self._work
        self._given = list(paths)
        batch.asked_again(paths)

        def bring(token: CancelToken, report: Progress) -> None:
            from data.intake import found_photos, intake, without_pictures

            files = found_photos(paths)
            news.append(partial(self._found, files))
            news.append(partial(self._tell_empty, without_pictures(paths)))
            report(0, len(files))
            scorers = work.scorers  # here: a farm is called on the first time
            for done, (path, fate) in enumerate(intake(files, book, scorers, token), start=1):
                news.append(partial(batch.arrived, path, fate))
                report(done, len(files))

        job = self._work.start(bring, self.tr("Scoring photos"), scores=True)
        job.progressed.connect(self._progressed)
        job.finished.connect(self._brought)
        job.failed.connect(self._broke_off)
        job.cancelled.connect(self._cancelled)
        self._job = job
        return job

    def _found(self, files: Sequence[Path]) -> None:
        self._given = []
        self.batch.add(files)

    def _tell_empty(self, folders: Sequence[Path]) -> None:
        if folders:
            names = ", ".join(str(folder) for folder in folders)
            self.told.emit(self.tr("There is no picture in {folders}.").format(folders=names))

    @Slot()
    def _progressed(self) -> None:
        if self.sender() is self._job:  # else of a book that is closed by now
            self._work_off()
            self.stepped.emit()

    def _work_off(self) -> None:
        while self._news:
            self._news.popleft()()

    @Slot()
    def _brought(self) -> None:
        if self.sender() is not self._job:
            return
        self._job = None
        self._work_off()
        queue, self._queue = self._queue, []
        self.bring_in(queue)
        self.stepped.emit()

    @Slot()
    def _cancelled(self) -> None:
        if self.sender() is not self._job:
            return
        self._end()
        self.batch.drop_waiting()
        self.told.emit(
            self.tr("Stopped. What was stored by then stays; bring the rest in whenever you like.")
        )
        self.stepped.emit()

    @Slot(object)
    def _broke_off(self, error: Exception) -> None:
        """What did not come in stays listed."""
        if self.sender() is self._job:
            self.batch.break_off(self._end())
            self.stepped.emit()
            self.failed.emit(error)

    def _end(self) -> list[Path]:
        """No job any more; what was to come after it."""
        self._work_off()
        later = [*self._given, *self._queue]
        self._given, self._queue, self._job = [], [], None
        return later
