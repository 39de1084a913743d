"""Report desk: reads, lays out and writes a report in the background.

In    the book, what is wanted
Out   signals: pages to look at, the file that was saved, trouble in words, how far it is
Not   the dialog (`dialog.py`), the file (`report`)
"""

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal, Slot
from PySide6.QtGui import QImage

from data.cancel import CancelToken, Progress
from data.errors import BookError
from data.report.reading import read_report
from gui.language.spoken import spoken
from gui.paper.pages import Paper
from gui.report import page_image, write_report
from gui.report.pages import lay_out
from gui.work import Job, Work

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["PAGE_WIDTH", "Looked", "ReportDesk", "Wanted"]

PAGE_WIDTH = 760  # px; letters of 10 pt can be read


@dataclass(frozen=True, slots=True, kw_only=True)
class Wanted:
    """One choice of the dialog; no trial means the book has none."""

    trial: str | None
    short: bool
    paper: Paper


@dataclass(frozen=True, slots=True, kw_only=True)
class Looked:
    """Pages as pictures, and what they were made for."""

    wanted: Wanted
    pages: tuple[QImage, ...]


class ReportDesk(QObject):
    """One job at a time; a new one ends the one before."""

    looked = Signal(object)  # Looked
    saved = Signal(object)  # Path
    trouble = Signal(str)
    progressed = Signal(int, int)

    def __init__(self, book: "Book", work: Work, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._book, self._work = book, work
        self._job: Job | None = None
        self._wanted: object = None

    def look(self, wanted: Wanted) -> None:
        """Make pictures of the pages."""
        book = self._book

        def task(cancel: CancelToken, progress: Progress) -> Looked:
            report = read_report(book, wanted.trial, short=wanted.short, cancel=cancel, progress=progress)
            sheets = lay_out(report, wanted.paper, cancel.check)
            pages = []
            for number in range(len(sheets.pages)):
                cancel.check()
                pages.append(page_image(sheets, number, PAGE_WIDTH))
            return Looked(wanted=wanted, pages=tuple(pages))

        self._begin(task, wanted)

    def save(self, wanted: Wanted, path: Path) -> None:
        """Write the file."""
        book = self._book

        def task(cancel: CancelToken, progress: Progress) -> Path:
            report = read_report(book, wanted.trial, short=wanted.short, cancel=cancel, progress=progress)
            write_report(path, report, wanted.paper, cancel=cancel, progress=progress)
            return path

        self._begin(task, path)

    @property
    def job(self) -> Job | None:
        """What runs."""
        return self._job

    def stop(self) -> None:
        """End what runs."""
        if self._job is not None:
            self._job.cancel()
            self._job = None

    def _begin(self, task: Callable[..., object], wanted: object) -> None:
        self.stop()
        self._wanted = wanted
        self._job = self._work.start(task)
        self._job.progressed.connect(self.progressed)
        self._job.finished.connect(self._done)
        self._job.failed.connect(self._failed)

    @Slot(object)
    def _done(self, result: object) -> None:
        if isinstance(result, Looked) and result.wanted == self._wanted:
            self._job = None
            self.looked.emit(result)
        elif isinstance(result, Path) and result == self._wanted:
            self._job = None
            self.saved.emit(result)

    @Slot(object)
    def _failed(self, error: object) -> None:
        self._job = None
        if isinstance(error, BookError):
            self.trouble.emit(spoken(str(error)))
        elif isinstance(error, OSError):
            words = self.tr("The report was not saved: {why}. Choose another folder.")
            self.trouble.emit(words.format(why=error.strerror or str(error)))
        else:
            self.trouble.emit(self.tr("The report could not be made. The book is as it was."))
