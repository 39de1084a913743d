"""Book desk: which book is open, how another one is opened, and what can be taken back in it.

In    folders; `Work`, which must stop before a book is left; `Memory`, which keeps the recent ones; whether
      the open book may be left
Out   `opened` with the book; `trouble` with a sentence; `new_day`; the text of what was undone
Not   dialogs and words on the screen (`window.py`), what is kept in a book (`data`)
"""

from collections.abc import Callable, Sequence
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Signal, Slot
from PySide6.QtWidgets import QApplication

from data.cancel import CancelToken, Progress
from data.errors import BookError, NotABook, PerhapsABook
from gui.home import Memory
from gui.mishap import trouble_words
from gui.work import Work

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["BookDesk", "is_demo"]

LOOKED_EVERY_MS = 200  # whether a dialog is closed at last


class BookDesk(QObject):
    """One book lies open at a time, or none."""

    opened = Signal(object)  # the book, handed to every screen before the one before is closed
    trouble = Signal(str)  # what stands in the way, and what to do
    none_opened = Signal()  # nor lies one open
    new_day = Signal()  # the rack's calendar has gone on while the book lay open

    def __init__(
        self, work: Work, memory: Memory, may_leave: Callable[[], bool], parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._work, self._memory = work, memory
        self.may_leave = may_leave  # False, with a sentence, where something would be lost
        self.book: Book | None = None
        self._day: date | None = None  # of the open book, when it was asked last
        self._expected: Path | None = None  # folder of the book asked for last that is still being made ready
        self._ready: list[Book] = []  # made ready, not yet laid open
        self._waiting = QTimer(self, singleShot=True, interval=LOOKED_EVERY_MS)
        self._waiting.timeout.connect(self._take_ready)

    def open_folder(self, folder: Path) -> bool:
        """Open the book in a folder; False, with a sentence, if that cannot be."""
        from data.book import Book  # a third of all imports; the window is painted before it is wanted

        if self.book is not None and self.book.folder.resolve() == folder.resolve():
            return True
        if not self.may_leave():
            return False
        if Book.is_of_before(folder):
            self._bring_up(folder)
            return True
        try:
            book = Book.open(folder)
        except BookError as error:
            if isinstance(error, NotABook) and not isinstance(error, PerhapsABook):
                self._memory.forget_book(folder)
            self.trouble.emit(str(error))
            return False
        self.take(book)
        return True

    def _bring_up(self, folder: Path) -> None:
        """Open a book of before in the background: bringing it up to date takes seconds."""
        from data.book import Book

        def bring_up(_token: CancelToken, _report: Progress) -> "Book":
            return Book.open(folder)

        self.expect(folder)
        job = self._work.start(bring_up, self.tr("Bringing the book up to date"), brief=True)
        job.finished.connect(self.take_expected)
        job.failed.connect(self._not_brought_up)

    def expect(self, folder: Path) -> None:
        """A book is made ready in this folder, to be laid open unless another one is wanted meanwhile."""
        self._expected = folder

    @Slot(object)
    def take_expected(self, book: "Book") -> None:
        """Lay open a book that is ready now, as soon as no dialog about the open one is in the way."""
        self._ready.append(book)
        self._take_ready()

    @Slot()
    def _take_ready(self) -> None:
        if QApplication.activeModalWidget() is not None:
            self._waiting.start()
            return
        ready, self._ready = self._ready, []
        for book in ready:
            if book.folder == self._expected and self.may_leave():
                self.take(book)
            else:  # the grower has opened another one meanwhile, or has something to keep first
                book.close()

    @Slot(object)
    def _not_brought_up(self, error: Exception) -> None:
        self.trouble.emit(trouble_words(error))
        if self.book is None:
            self.none_opened.emit()

    def make(self, folder: Path) -> None:
        """Make a book in a folder and open it; raises `BookError`."""
        from data.book import Book

        self.take(Book.create(folder))

    def take(self, book: "Book") -> None:
        """Lay this book open; work on the one before is stopped first, so that it stays whole."""
        before = self.book
        if before is not None:
            self._work.stop_all()
        self.book, self._day, self._expected = book, None, None
        self.has_news()  # from here on
        self._memory.remember_book(book.folder)
        self.opened.emit(book)
        if before is not None:
            before.close()

    def has_news(self) -> bool:
        """Whether someone has written into the book, or the day has changed, since this was asked last."""
        if self.book is None:
            return False
        try:
            written, today = self.book.written_elsewhere(), self.book.today()
        except BookError:
            return False  # told as soon as something is wanted of the book
        before, self._day = self._day, today
        if before in (None, today):
            return written
        self.new_day.emit()
        return True

    def other_books(self) -> Sequence[Path]:
        """Books opened of late, without the one that is open."""
        open_now = None if self.book is None else self.book.folder
        return [book for book in self._memory.recent if book != open_now]

    def undo_texts(self) -> tuple[str | None, str | None]:
        """What could be taken back and what done again, each None where there is nothing."""
        if self.book is None:
            return None, None
        try:
            return self.book.undo_text(), self.book.redo_text()
        except BookError as error:
            self.trouble.emit(str(error))
            return None, None

    def undo_takes_long(self) -> bool:
        """Whether taking back the last change is work for the background."""
        try:
            return self.book is not None and self.book.undo_takes_long()
        except BookError:
            return False  # told as soon as it is taken back

    def undo(self) -> str | None:
        """Take back the last change; its text, or None where nothing was taken back."""
        return self._turned(back=True)

    def redo(self) -> str | None:
        """Do again what was taken back; its text, or None where nothing was done."""
        return self._turned(back=False)

    def _turned(self, *, back: bool) -> str | None:
        if self.book is None:
            return None
        try:
            return self.book.undo() if back else self.book.redo()
        except BookError as error:
            self.trouble.emit(str(error))
            return None

    def close(self) -> None:
        """Close the book; whoever calls has stopped the work."""
        self._expected = None
        while self._ready:
            self._ready.pop().close()
        if self.book is not None:
            self.book.close()
            self.book = None


def is_demo(book: "Book") -> bool:
    """Whether a book is the demonstration."""
    return book.setting("demonstration") is not None
