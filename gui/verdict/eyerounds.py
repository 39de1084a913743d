"""Eye rounds: from the button to scored pictures: asks who scores, draws the round, shows it, goes on later.

In    a `VerdictState`; the open book
Out   rounds and scores in the book; `changed`, `trouble`
Not   the window with the pictures (`blindwindow.py`), what a round says (`data/verdict/blindwords.py`)
"""

from secrets import randbelow
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal, Slot
from PySide6.QtWidgets import QWidget

from data.chapters.drawbook import SEEDS
from data.errors import BookError
from data.trial import MeasureKind
from gui.answer.view import VerdictState
from gui.controls.asking import show_over
from gui.verdict.blindstart import BlindStart
from gui.verdict.blindview import BlindState, first_open
from gui.verdict.blindwindow import BlindWindow
from gui.work import Work

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["EyeRounds"]


class EyeRounds(QObject):
    """One round at a time."""

    changed = Signal()
    trouble = Signal(str)

    def __init__(self, work: Work, parent: QWidget) -> None:
        super().__init__(parent)
        self._work, self._over = work, parent
        self.book: Book | None = None
        self.state = VerdictState()
        self.window: BlindWindow | None = None
        self._start: BlindStart | None = None
        self._waits = False  # for photos that are being scored, and then for what the book says of them

    def show_state(self, state: VerdictState) -> None:
        """The crop that is looked at."""
        self.state = state
        self._follow()

    @property
    def may_begin(self) -> bool:
        """Whether there is anything to be scored."""
        return bool(self.state.reading.photos.get(self.state.crop))

    @Slot()
    def ask(self) -> None:
        """Ask who scores, and whether to go on with the round that was left."""
        reading, crop = self.state.reading, self.state.crop
        if self.may_begin:
            start = BlindStart(crop, len(reading.photos[crop]), reading.last_round(crop), self._over)
            start.begun.connect(self.begin)
            start.resumed.connect(self.resume)
            start.finished.connect(self._left)
            self._start, self._waits = start, False
            self._work.changed.connect(self._follow)
            self._follow()
            show_over(start)

    @Slot()
    def _left(self) -> None:
        self._start = None
        self._work.changed.disconnect(self._follow)

    @Slot()
    def _follow(self) -> None:
        """No round is drawn before all photos of the day are there."""
        work = self._work
        self._waits = work.is_scoring or (self._waits and work.is_reading)
        if self._start is not None:
            photos = self.state.reading.photos.get(self.state.crop, ())
            self._start.show_photos(len(photos), more=self._waits)

    @Slot(str)
    def begin(self, rater: str) -> None:
        """Draw a round of the crop that is looked at, and show it."""
        reading = self.state.reading
        if self.book is None:
            return
        try:
            photos = reading.photos[self.state.crop]
            drawn = self.book.begin_eye_round(reading.trial, rater, photos, 1 + randbelow(SEEDS))
        except BookError as error:
            self.trouble.emit(str(error))
            return
        self.changed.emit()
        self._show(first_open(drawn, {}))

    @Slot()
    def resume(self) -> None:
        """Go on with the newest round of the crop."""
        last = self.state.reading.last_round(self.state.crop)
        if last is not None:
            self._show(first_open(last.round, last.given))

    def _show(self, state: BlindState) -> None:
        found = self.state.reading.verdict(self.state.crop, MeasureKind.SCORE)
        if self.book is None or found is None:
            return
        by_photo = {one.tray.id: one.value for one in found.numbers if one.value is not None}
        self.window = BlindWindow(self.book, self._work, state, by_photo, self._over)
        self.window.over.connect(self._is_over)
        self.window.showFullScreen()

    @Slot()
    def _is_over(self) -> None:
        if self.window is not None:
            self.window.deleteLater()
            self.window = None
            self.changed.emit()
