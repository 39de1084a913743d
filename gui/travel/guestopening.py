"""Guest opening: another book is opened in the background, and let go where nobody waits for it any more.

In    the open book, `Work`, the file or folder of another book
Out   exactly one of `opened`, `failed`, `stopped`; after `leave` none, and nothing of the guest is left
Not   what is shown of it (`guestdialog.py`), opening it (`data/travel/guestbook.py`)

It belongs to the work: a dialog that is left is gone before a guest that was all but open comes.
"""

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal, Slot

from data.cancel import CancelToken, Progress
from data.travel.guestbook import GuestBook
from data.travel.guestlook import GuestLook, look_at_guest
from gui.work import Work

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["GuestOpening", "let_go"]


class GuestOpening(QObject):
    """One guest on its way."""

    opened = Signal(object)  # (GuestBook, GuestLook)
    failed = Signal(object)  # the exception
    stopped = Signal()

    def __init__(self, book: "Book", work: Work, source: Path) -> None:
        super().__init__(work)
        self._work, self._left = work, False

        def task(cancel: CancelToken, report: Progress) -> tuple[GuestBook, GuestLook]:
            guest = GuestBook.open(source, book.folder / "cache", cancel, report)
            try:
                cancel.check()
                return guest, look_at_guest(book, guest.book)
            except BaseException:
                guest.close()
                raise

        self.job = work.start(task, self.tr("Opening the book"), whole=True)
        self.job.finished.connect(self._came)
        self.job.failed.connect(self._failed)
        self.job.cancelled.connect(self._stopped)

    def leave(self) -> None:
        """Nobody waits for it any more."""
        self._left = True
        self.job.cancel()

    @Slot(object)
    def _came(self, opened: tuple[GuestBook, GuestLook]) -> None:
        if self._left:
            let_go(self._work, opened[0])
        else:
            self.opened.emit(opened)
        self.deleteLater()

    @Slot(object)
    def _failed(self, error: Exception) -> None:
        if not self._left:
            self.failed.emit(error)
        self.deleteLater()

    @Slot()
    def _stopped(self) -> None:
        if not self._left:
            self.stopped.emit()
        self.deleteLater()


def let_go(work: Work, guest: GuestBook) -> None:
    """Delete what was copied or unpacked, in the background: it takes a while for a book of many photos."""
    work.start(lambda _cancel, _report: guest.close())
