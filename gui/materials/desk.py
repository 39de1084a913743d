"""Material desk: what the place Materials asks of the book, off the window's thread.

In    the open book; what a grower types
Out   `was_read` with a `MaterialReading`; `kept` after a change; `trouble`
Not   showing anything (`screen.py`)
"""

from collections.abc import Callable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal, Slot

from data.cancel import CancelToken
from data.errors import BookError
from gui.language.spoken import spoken
from gui.mishap import trouble_words
from gui.photo.thumbnails import Thumbnails
from gui.work import Report, Work

if TYPE_CHECKING:
    from data.book import Book
    from data.materials.reading import MaterialReading
    from data.readings import BenchTestId

__all__ = ["MaterialDesk"]


class MaterialDesk(QObject):
    """Answers of another book are dropped."""

    was_read = Signal(object)  # MaterialReading
    kept = Signal()
    trouble = Signal(str)

    def __init__(self, work: Work, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._work = work
        self.pictures = Thumbnails(work, self)
        self.book: Book | None = None
        self._reading = self._again = False

    def read(self) -> None:
        """Read everything; a wish that comes meanwhile is one more reading."""
        if self.book is None:
            return
        if self._reading:
            self._again = True
            return
        self._reading = True
        book = self.book

        def read(_token: CancelToken, _report: Report) -> "tuple[object, MaterialReading]":
            from data.materials.reading import read_materials

            return book, read_materials(book)

        job = self._work.start(read)
        job.finished.connect(self._was_read)
        job.failed.connect(self._failed)
        job.cancelled.connect(self._ended)

    @Slot(object)
    def _was_read(self, answer: "tuple[object, MaterialReading]") -> None:
        book, reading = answer
        self._reading = False
        if book is self.book:
            self.was_read.emit(reading)
        else:
            self._again = True
        self._once_more()

    @Slot(object)
    def _failed(self, error: Exception) -> None:
        self._reading = False
        self.trouble.emit(trouble_words(error))
        self._once_more()

    @Slot()
    def _ended(self) -> None:
        self._reading = False
        self._once_more()  # another book may have been opened meanwhile

    def _once_more(self) -> None:
        if self._again:
            self._again = False
            self.read()

    def keep(self, change: "Callable[[Book], object]") -> bool:
        """Change the book, as one step of undo; False where that could not be and trouble was told."""
        if self.book is None:
            return False
        try:
            with self.book.together():
                change(self.book)
        except BookError as error:
            self.trouble.emit(spoken(error))
            return False
        self.kept.emit()
        return True

    def keep_photos(self, test: "BenchTestId", paths: Sequence[Path]) -> None:
        """Copy photographs of the heap, in the background."""
        book = self.book
        if book is None or not paths:
            return

        def copy(_token: CancelToken, _report: Report) -> int:
            return book.keep_heap_photos(test, paths, book.now())

        job = self._work.start(copy, self.tr("Copying photos of the heap"), brief=True)
        job.finished.connect(self._copied)
        job.failed.connect(self._failed)

    @Slot(object)
    def _copied(self, _number: object) -> None:
        self.kept.emit()
