"""Mend page: the canopy of the day that is looked at, loaded, mended, and measured again.

In    the day that is looked at
Out   a mended canopy kept in the book, one step of undo
Not   the brush and the decision (`menddesk.py`), measuring (`data/mending.py`)
"""

from typing import TYPE_CHECKING

from PySide6.QtCore import Slot
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from data.cancel import CancelToken
from data.records import Fate, PhotoId
from gui.dayload import DayCanopy, load_canopy
from gui.menddesk import MendDesk
from gui.sheetpage import SheetPage
from gui.trayview import TrayState
from gui.work import Job, Report, Work

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    from data.book import Book

__all__ = ["MendPage"]

Question = tuple[PhotoId, float | None]  # a photo, and its coverage: another one has another canopy


class MendPage(SheetPage):
    """One desk."""

    def __init__(self, work: Work, parent: QWidget | None = None) -> None:
        super().__init__(work, parent)
        self._asked: Question | None = None
        self._shown: Question | None = None
        self._keeping: Job | None = None
        self.desk = MendDesk(self)
        self.desk.kept.connect(self._keep)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.desk)

    def open_book(self, book: "Book | None") -> None:
        """No strokes of the book before."""
        super().open_book(book)
        self._asked = self._shown = self._keeping = None
        self.desk.forget_all()

    def show_state(self, state: TrayState) -> None:
        """The canopy of this day."""
        super().show_state(state)
        day, book = state.day, self.book
        if day is None or day.score is None or book is None:
            self._asked = self._shown = None
            self.desk.show_none(self.tr("This day has no canopy to mend: its photo was not used."))
            return
        question = (day.photo_id, day.score.coverage)
        if question in (self._asked, self._shown):
            return
        self._asked = question

        def load(_token: CancelToken, _report: Report) -> DayCanopy:
            return load_canopy(book, day)

        job = self.work.start(load)
        job.finished.connect(self._loaded)
        job.failed.connect(self._load_failed)

    def take_key(self, event: QKeyEvent) -> bool:
        """The keys of the picture."""
        return self.desk.view.take_key(event)

    def stops(self) -> list[QWidget]:
        """What Tab comes by, in reading order."""
        return self.desk.stops()

    def take_focus(self) -> None:
        """The brush."""
        self.desk.view.setFocus()

    @Slot(object)
    def _loaded(self, answer: DayCanopy) -> None:
        question = (answer.photo_id, answer.coverage)
        if question != self._asked:
            return  # another day is looked at by now
        self._asked, self._shown = None, question
        if answer.mips is None or answer.canopy is None:
            self.desk.show_none(answer.trouble)
        else:
            self.desk.show_photo(answer.photo_id, answer.mips, answer.canopy, answer.veil, answer.px_per_mm)

    @Slot(object)
    def _load_failed(self, error: Exception) -> None:
        self._asked = self._shown = None
        self.desk.show_none(str(error))

    @Slot(int, object)
    def _keep(self, photo_id: int, canopy: "NDArray[np.bool_]") -> None:
        """Measure the tray again with this canopy and keep that."""
        book = self.book
        if book is None or self._keeping is not None:
            return

        def keep(_token: CancelToken, _report: Report) -> Fate:
            from data.mending import mend_canopy

            return mend_canopy(book, PhotoId(photo_id), canopy)

        self.desk.busy(True)
        self._keeping = self.work.start(keep)
        self._keeping.finished.connect(self._kept)
        self._keeping.failed.connect(self._not_kept)
        self._keeping.cancelled.connect(self._stopped)

    @Slot(object)
    def _kept(self, fate: Fate) -> None:
        self._stopped()
        self.desk.forget()
        self.told.emit(fate.sentence)
        self.book_changed.emit()

    @Slot(object)
    def _not_kept(self, error: Exception) -> None:
        self._stopped()
        self.troubled.emit(str(error))

    @Slot()
    def _stopped(self) -> None:
        self._keeping = None
        self.desk.busy(False)
