"""Corner desk: a photo whose corners a person sets: loaded, shown, and scored again with them.

In    the open book, a row of Intake
Out   the photo scored with these corners and kept, one step of undo; `opened`, `left`, `scored` with its
      fate; corners that were moved and left come back with the photo
Not   dragging the corners (`corners.py`), scoring (`data.intake`)
"""

from typing import TYPE_CHECKING

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QVBoxLayout, QWidget

from data.cancel import CancelToken, Progress
from data.records import Fate, PhotoId
from gui.intake.corners import LONGEST_LIVE, CornerPage
from gui.intake.cornerview import Quad
from gui.intake.view import IntakeRow
from gui.photo.photoload import LoadedPhoto, load_for_corners
from gui.style.palette import Space
from gui.work import Work

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["CornerDesk"]


class CornerDesk(QWidget):
    """One photo at a time."""

    opened = Signal()  # the photo is there: show this page
    left = Signal()
    scored = Signal(object)  # Fate
    failed = Signal(object)

    def __init__(self, work: Work, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._work = work
        self._book: Book | None = None
        self._asked: PhotoId | None = None
        self._moved: dict[PhotoId, Quad] = {}  # corners that were not scored with
        self.page = CornerPage(self)
        self.page.decided.connect(self._decided)
        self.page.left.connect(self._put_off)
        inner = QVBoxLayout(self)
        inner.setContentsMargins(Space.L, Space.L, Space.L, Space.M)
        inner.addWidget(self.page)

    @property
    def is_asked(self) -> bool:
        """Whether a photo is looked at, or on its way here."""
        return self._asked is not None

    def open_book(self, book: "Book | None") -> None:
        """No photo of the book before."""
        self._book, self._asked = book, None
        self._moved.clear()
        self.page.clear()

    @Slot(object)
    def ask(self, row: IntakeRow) -> None:
        """Load the photo of this row."""
        if self._book is None or row.photo_id is None:
            return
        book, photo, name = self._book, row.photo_id, row.name
        self._asked = photo

        def load(_token: CancelToken, _report: Progress) -> LoadedPhoto:
            return load_for_corners(book, photo, name, LONGEST_LIVE)

        job = self._work.start(load)
        job.finished.connect(self._loaded)
        job.failed.connect(self.failed)

    @Slot(object)
    def _loaded(self, loaded: LoadedPhoto) -> None:
        if loaded.photo_id == self._asked:
            self.opened.emit()
            self.page.show_photo(loaded.photo_id, loaded.name, loaded.mips, loaded.small, loaded.guess)
            if loaded.photo_id in self._moved:
                self.page.photo.put(self._moved[loaded.photo_id])

    @Slot(object, object)
    def _decided(self, photo: PhotoId, corners: Quad) -> None:
        book = self._book
        if book is None:
            return

        def rescore(_token: CancelToken, _report: Progress) -> Fate:
            from data import intake

            return intake.rescore(book, photo, corners)

        job = self._work.start(rescore, self.tr("Scoring the photo again"), brief=True, scores=True)
        job.finished.connect(self._scored)
        job.failed.connect(self.failed)
        self._moved[photo] = corners
        self._leave()

    @Slot(object)
    def _scored(self, fate: Fate) -> None:
        if fate.photo_id is not None:
            self._moved.pop(fate.photo_id, None)
        self.scored.emit(fate)

    @Slot()
    def _put_off(self) -> None:
        """Left by Esc, perhaps by mistake."""
        if self._asked is not None and self.page.photo.can_take_back:
            self._moved[self._asked] = self.page.photo.corners
        self._leave()

    @Slot()
    def _leave(self) -> None:
        self._asked = None
        self.page.clear()
        self.left.emit()
