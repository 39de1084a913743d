"""Fitting: the curve of the tray that is looked at, asked for once and in the background.

In    a book, a `TrayState`
Out   `fitted` with a `Fitted`, soon or at once
Not   fitting (`growthfit.py`), painting (`growthchart.py`)
"""

from datetime import timedelta
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal, Slot

from data.cancel import CancelToken, Progress
from data.records import Tray
from gui.traysheet.growthfit import Fitted, Points, fit_tray
from gui.traysheet.view import TrayState
from gui.work import Work

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["Fitting"]

Question = tuple[Tray, Points]


class Fitting(QObject):
    """Remembers the last answer."""

    fitted = Signal(object)  # Fitted

    def __init__(self, work: Work, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._work = work
        self._asked: Question | None = None
        self._answer: Fitted | None = None

    def forget(self) -> None:
        """Another book."""
        self._asked = self._answer = None

    def ask(self, book: "Book", state: TrayState) -> None:
        """Say when it is known; what is known already is said at once."""
        points = state.curves[0].points if state.curves else ()
        question = (state.tray, points)
        if question == self._asked:
            if self._answer is not None:
                self.fitted.emit(self._answer)
            return
        self._asked, self._answer = question, None
        if not points:
            return
        tray = state.tray
        now = (book.now() - tray.sown_at) / timedelta(days=1)

        def fit(_token: CancelToken, _report: Progress) -> Fitted:
            return fit_tray(book, tray, points, now)

        job = self._work.start(fit)
        job.finished.connect(self._came)

    @Slot(object)
    def _came(self, answer: Fitted) -> None:
        if self._asked is not None and (answer.tray_id, answer.points) == (self._asked[0].id, self._asked[1]):
            self._answer = answer
            self.fitted.emit(answer)
