"""Material desk: what the place Materials asks of the book, off the window's thread.

In    the open book; what a grower types
Out   `was_read` with a `MaterialReading`; `kept` after a change; `trouble`
Not   showing anything (`screen.py`)
"""

from collections.abc import Callable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal, Slot

from data.cancel import CancelToken, Progress
from data.errors import BookError
from gui.bookreading import BookReading
from gui.language.spoken import spoken
from gui.mishap import trouble_words
from gui.photo.thumbnails import Thumbnails
from gui.work import Work

if TYPE_CHECKING:
    from data.book import Book
    from data.materials.reading import MaterialReading
    from data.readings import BenchTestId

__all__ = ["MaterialDesk"]


class MaterialDesk(QObject):
    """Reading, and what is kept."""

    was_read = Signal(object)  # MaterialReading
    kept = Signal()
    trouble = Signal(str)

    def __init__(self, work: Work, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._work = work
        self.pictures = Thumbnails(work, self)
        self.book: Book | None = None
        self._reading = BookReading(work, self)
        self._reading.came.connect(self.was_read)
        self._reading.failed.connect(self._failed)

    def open(self, book: "Book | None") -> None:
        """Another book from now on."""
        self.book = book
        self._reading.open(book)

    def read(self) -> None:
        """Read everything."""
        self._reading.ask(_read)

    @Slot(object)
    def _failed(self, error: Exception) -> None:
        self.trouble.emit(trouble_words(error))

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

        def copy(_token: CancelToken, _report: Progress) -> int:
            return book.keep_heap_photos(test, paths, book.now())

        job = self._work.start(copy, self.tr("Copying photos of the heap"), brief=True)
        job.finished.connect(self._copied)
        job.failed.connect(self._failed)

    @Slot(object)
    def _copied(self, _number: object) -> None:
        self.kept.emit()


def _read(book: "Book", _cancel: CancelToken) -> "MaterialReading":
    from data.materials.reading import read_materials

    return read_materials(book)
