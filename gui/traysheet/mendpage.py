"""Mend page: the canopy of the day that is looked at, loaded, mended, and measured again.

In    the day that is looked at
Out   a mended canopy kept in the book, one step of undo
Not   the brush and the decision (`mend/desk.py`), measuring (`data/upkeep/mending.py`)
"""

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Slot
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QApplication, QPushButton, QVBoxLayout, QWidget

from data.cancel import CancelToken, Progress
from data.records import Fate, PhotoId, Stored
from gui.language.spoken import spoken
from gui.mend.desk import MendDesk
from gui.mishap import trouble_words
from gui.photo.scoringagain import scoring_again
from gui.style.palette import Space, set_role
from gui.traysheet.dayload import DayCanopy, load_canopy
from gui.traysheet.page import SheetPage
from gui.traysheet.view import TrayState
from gui.work import Job, Work

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    from data.book import Book

__all__ = ["MendPage"]

Question = tuple[PhotoId, float | None, str]  # a photo, its coverage and method: others, another canopy


class MendPage(SheetPage):
    """One desk."""

    def __init__(self, work: Work, parent: QWidget | None = None) -> None:
        super().__init__(work, parent)
        self._asked: Question | None = None
        self._shown: Question | None = None
        self._keeping: Job | None = None
        self._kept_photo: PhotoId | None = None  # the one that is measured again
        self._sent_to: QWidget | None = None  # where the focus went as the desk became busy
        self.desk = MendDesk(self)
        self.desk.kept.connect(self._keep)
        self.again = QPushButton(self.tr("Score this book's photos again"), self)
        self.again.setToolTip(
            self.tr("By the present version of the program, in the background; what you have said stays")
        )
        set_role(self.again, "rack-main")
        self.again.clicked.connect(self._score_again)
        self._scoring = scoring_again(work)
        self._scoring.changed.connect(self._show_scoring)
        self._scoring.ended.connect(self._scored_again)
        self._scoring.failed.connect(self._not_scored_again)
        self.again.hide()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(Space.S)
        column.addWidget(self.desk, 1)
        column.addWidget(self.again, 0, Qt.AlignmentFlag.AlignRight)

    def open_book(self, book: "Book | None") -> None:
        """No strokes of the book before."""
        super().open_book(book)
        self._asked = self._shown = self._keeping = self._kept_photo = None
        self.desk.forget_all()

    def show_state(self, state: TrayState) -> None:
        """The canopy of this day."""
        super().show_state(state)
        day, book = state.day, self.book
        if day is None or day.score is None or book is None:
            self._asked = self._shown = None
            self._show_stale(False)
            self.desk.show_none(self.tr("This day has no canopy to mend: its photo was not used."))
            return
        question = (day.photo_id, day.score.coverage, day.score.method)
        if question in (self._asked, self._shown):
            return
        self._asked = question

        def load(_token: CancelToken, _report: Progress) -> DayCanopy:
            return load_canopy(book, day)

        job = self.work.start(load)
        job.finished.connect(self._loaded)
        job.failed.connect(self._load_failed)

    def take_key(self, event: QKeyEvent) -> bool:
        """The keys of the picture."""
        return self.desk.view.take_key(event)

    def stops(self) -> list[QWidget]:
        """What Tab comes by, in reading order."""
        return [*self.desk.stops(), self.again]

    def take_focus(self) -> None:
        """The brush."""
        self.desk.view.setFocus()

    @Slot(object)
    def _loaded(self, answer: DayCanopy) -> None:
        if self._asked is None or (answer.photo_id, answer.coverage) != self._asked[:2]:
            return  # another day is looked at by now
        self._asked, self._shown = None, self._asked
        self._show_stale(answer.stale)
        if answer.stale:
            self.desk.show_none(
                self.tr(
                    "This photo was scored by an older version of the program. A mended canopy is measured "
                    "by the present one, and the two are never mixed: let the photos be scored again first."
                )
            )
        elif answer.mips is None or answer.canopy is None:
            self.desk.show_none(answer.trouble)
        else:
            self.desk.show_photo(answer.photo_id, answer.mips, answer.canopy, answer.veil, answer.px_per_mm)

    @Slot(object)
    def _load_failed(self, error: Exception) -> None:
        self._asked = self._shown = None
        self.desk.show_none(trouble_words(error))

    def _show_stale(self, stale: bool) -> None:
        self.again.setVisible(stale)
        self.desk.show_decision(not stale)

    @Slot()
    def _score_again(self) -> None:
        """All photos of the book that lack a whole score by the present version."""
        if self.book is not None:
            self._scoring.begin(self.book)

    @Slot()
    def _show_scoring(self) -> None:
        self.again.setEnabled(self._scoring.job is None)

    @Slot(str)
    def _scored_again(self, words: str) -> None:
        self._asked = self._shown = None
        if self.again.isVisible() and words:  # else another screen tells it
            self.told.emit(words)
        self.book_changed.emit()

    @Slot(object)
    def _not_scored_again(self, error: Exception) -> None:
        if self.again.isVisible():
            self.troubled.emit(trouble_words(error))

    @Slot(int, object)
    def _keep(self, photo_id: int, canopy: "NDArray[np.bool_]") -> None:
        """Measure the tray again with this canopy and keep that."""
        book = self.book
        if book is None or self._keeping is not None:
            return

        def keep(_token: CancelToken, _report: Progress) -> Fate:
            from data.upkeep.mending import mend_canopy

            return mend_canopy(book, PhotoId(photo_id), canopy)

        now = QApplication.focusWidget()
        had_focus = now is not None and self.desk.isAncestorOf(now)
        self.desk.busy(True)
        self._sent_to = QApplication.focusWidget() if had_focus else None
        self._kept_photo = PhotoId(photo_id)
        self._keeping = self.work.start(keep)
        self._keeping.finished.connect(self._kept)
        self._keeping.failed.connect(self._not_kept)
        self._keeping.cancelled.connect(self._stopped)

    @Slot(object)
    def _kept(self, fate: Fate) -> None:
        self._stopped()
        if self._kept_photo is not None:  # another day may be looked at by now, with strokes of its own
            self.desk.forget_photo(self._kept_photo)
        if isinstance(fate, Stored) and fate.coverage is not None:
            words = self.tr("Canopy of {code} kept: coverage {coverage:.0f} %, mended by hand.")
            self.told.emit(words.format(code=fate.tray_code, coverage=fate.coverage))
        else:
            self.told.emit(spoken(fate.sentence))
        self.book_changed.emit()

    @Slot(object)
    def _not_kept(self, error: Exception) -> None:
        self._stopped()
        self.troubled.emit(trouble_words(error))

    @Slot()
    def _stopped(self) -> None:
        """The focus comes back to the brush, from where the busy desk has sent it."""
        self._keeping = None
        self.desk.busy(False)
        if self._sent_to is not None and QApplication.focusWidget() is self._sent_to:
            self.take_focus()
