"""Again offer: how many photos of the book can be scored again, counted once a person comes to look.

In    the open book; that a person has come here, or wants it not today
Out   `stale`, `changed` when it is another; the job begun
Not   the job (`photo/scoringagain.py`), counting (`data/upkeep/rescoring.py`), the band (`againband.py`)

Counting loads the model, so it waits until Intake is looked at, and runs in the background.
"""

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal, Slot

from data.upkeep.rescoring import Stale
from gui.photo.scoringagain import count_stale, scoring_again
from gui.work import Work

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["AgainOffer"]


class AgainOffer(QObject):
    """Of one book at a time."""

    changed = Signal()
    told = Signal(str)  # how the job ended
    failed = Signal(object)

    def __init__(self, work: Work, parent: QObject) -> None:
        super().__init__(parent)
        self._work = work
        self._book: Book | None = None
        self._looked_at = self._put_off = False
        self.stale = Stale()
        self.scoring = scoring_again(work)
        self.scoring.changed.connect(self.changed)
        self.scoring.ended.connect(self._ended)
        self.scoring.failed.connect(self.failed)

    def open_book(self, book: "Book | None") -> None:
        """Another book is asked about anew."""
        self._book, self._put_off, self.stale = book, False, Stale()
        self._count()

    def look(self) -> None:
        """A person is here."""
        self._looked_at = True
        self._count()

    def _count(self) -> None:
        """In a book of years that takes a second, so not after each photo: new ones need it not."""
        wanted = self._looked_at and not self._put_off and self.scoring.job is None
        if wanted and self._book is not None:
            self._work.start(count_stale(self._book)).finished.connect(self._counted)

    @Slot(object)
    def _counted(self, answer: "tuple[Book, Stale]") -> None:
        if answer[0] is self._book and not self._put_off and answer[1] != self.stale:
            self.stale = answer[1]
            self.changed.emit()

    @Slot()
    def begin(self) -> None:
        """Score them again."""
        if self._book is not None:
            self.scoring.begin(self._book)

    @Slot()
    def put_off(self) -> None:
        """Not before the book is opened again."""
        self._put_off, self.stale = True, Stale()
        self.changed.emit()

    @Slot(str)
    def _ended(self, words: str) -> None:
        self.stale = Stale()
        self.changed.emit()
        self.told.emit(words)
        self._count()
