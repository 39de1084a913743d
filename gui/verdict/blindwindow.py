"""Blind window: one picture after the other, without names, and a number from 0 to 100 for each.

In    a round that was drawn, the scores given so far
Out   scores in the book, each one step of undo; `over` when it is left or done
Not   the order (`data/blind.py`), loading (`blindload.py`), where the round stands (`blindview.py`)

Colours are judged against a neutral grey, the same in light and dark.
"""

from collections.abc import Mapping
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QDialog, QStackedWidget, QVBoxLayout, QWidget

from data.blind import agreement_of
from data.cancel import CancelToken, Progress
from data.errors import BookError
from data.records import PhotoId, TrayId
from data.verdict.blindwords import eye_words, whom_to_trust
from gui.language.spoken import spoken
from gui.mishap import trouble_words
from gui.style.palette import Space
from gui.verdict.blindload import BlindPicture, load_blind
from gui.verdict.blindpage import SOFT, ResultPage, ScoringPage
from gui.verdict.blindview import BlindState
from gui.work import Work

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["BlindWindow"]

GREY, WHITE, GROOVE = "#4A4A4A", "#FFFFFF", "#9C9C9C"
HELD = 8  # pictures, 1.5 MB each: some back, one ahead
SHEET = (
    f"#blind {{ background: {GREY}; }} #blind QLabel {{ color: {WHITE}; }}"
    f" #blind QLabel[role='small'] {{ color: {SOFT}; }}"
    f" #blind QProgressBar {{ background: {GROOVE}; }} #blind QProgressBar::chunk {{ background: {WHITE}; }}"
    f" #blind QSlider {{ min-height: 34px; }}"
    f" #blind QSlider::groove:horizontal {{ background: {GROOVE}; height: 6px; border-radius: 3px; }}"
    f" #blind QSlider::handle:horizontal {{ background: {WHITE}; width: 20px; margin: -7px 0;"
    f" border-radius: 10px; border: 2px solid {WHITE}; }}"
    f" #blind QSlider[unset='true']::handle:horizontal {{ background: {GREY}; border: 2px solid {GROOVE}; }}"
    f" #blind QSlider:focus {{ border-bottom: 1px solid {SOFT}; }}"
)


class BlindWindow(QDialog):
    """The whole screen; nothing else to look at."""

    over = Signal()

    def __init__(
        self,
        book: "Book",
        work: Work,
        state: BlindState,
        by_photo: Mapping[TrayId, float],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._book, self._work, self._by_photo = book, work, by_photo
        self.state = state
        self._pictures: dict[PhotoId, BlindPicture] = {}
        self._awaited: set[PhotoId] = set()
        self.setWindowTitle(self.tr("Score by eye"))
        self.setModal(True)
        self.setObjectName("blind")
        self.setStyleSheet(SHEET)
        self.page, self.ending = ScoringPage(self), ResultPage(self)
        self.page.chose.connect(self._chose)
        self.page.went_on.connect(self.go_on)
        self.page.left.connect(self.reject)
        self.ending.done.connect(self.accept)
        for one in (self.page, self.ending):
            one.went_back.connect(self.go_back)
        self.pages = QStackedWidget(self)
        self.pages.addWidget(self.page)
        self.pages.addWidget(self.ending)
        column = QVBoxLayout(self)
        column.setContentsMargins(Space.XL, Space.L, Space.XL, Space.L)
        column.addWidget(self.pages)
        self.finished.connect(self.over)
        self.show_state(state)

    # --- showing

    def show_state(self, state: BlindState) -> None:
        """Everything that can be seen follows from the state."""
        self.state = state
        self.pages.setCurrentIndex(1 if state.result else 0)
        if state.result:
            self._show_result()
            return
        self._show_picture()
        self.page.slider.setFocus()
        for showing in (state.showing, state.following):
            if showing is not None:
                self._load(showing.photo_id)

    def _show_picture(self) -> None:
        self.page.show_state(self.state, self._pictures.get(self.state.showing.photo_id))

    def _show_result(self) -> None:
        first, again = self._book.scores_of_round(self.state.round)
        found = agreement_of(first, again, self._by_photo)
        self.ending.show_words(spoken(whom_to_trust(found)), [spoken(line) for line in eye_words(found)[:-1]])
        self.ending.to_verdict.setFocus()

    # --- pictures

    def _load(self, photo_id: PhotoId) -> None:
        """Now or ahead, once."""
        if photo_id in self._awaited or photo_id in self._pictures:
            return
        self._awaited.add(photo_id)
        book = self._book

        def load(_token: CancelToken, _report: Progress) -> BlindPicture:
            return load_blind(book, photo_id)

        job = self._work.start(load)
        job.finished.connect(self._loaded)
        job.failed.connect(self._failed)

    @Slot(object)
    def _loaded(self, picture: BlindPicture) -> None:
        self._awaited.discard(picture.photo_id)
        self._pictures[picture.photo_id] = picture
        while len(self._pictures) > HELD:
            self._pictures.pop(next(iter(self._pictures)))
        if not self.state.result and picture.photo_id == self.state.showing.photo_id:
            self._show_picture()

    @Slot(object)
    def _failed(self, error: Exception) -> None:
        self.page.say(trouble_words(error))

    # --- hands

    @Slot(int)
    def _chose(self, value: int) -> None:
        self.state = self.state.chosen(value)
        self._show_picture()

    @Slot()
    def go_on(self) -> None:
        """Keep the score, and show the next picture."""
        state = self.state
        if not self.page.next.isEnabled():
            return
        if state.value is not None and state.given.get(state.place) != state.value:
            try:
                self._book.give_eye_score(state.round, state.place, state.value)
            except BookError as error:
                self.page.say(spoken(error))
                return
        self.show_state(state.kept())

    @Slot()
    def go_back(self) -> None:
        """The picture before, to be scored otherwise."""
        state = self.state
        self.show_state(state.at(state.total if state.result else max(1, state.place - 1)))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Digits are tens; Enter goes on; Backspace goes back."""
        key = Qt.Key(event.key())
        if self.state.result:
            super().keyPressEvent(event)
        elif Qt.Key.Key_0 <= key <= Qt.Key.Key_9:
            self._chose(10 * (key - Qt.Key.Key_0))
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.go_on()
        elif key == Qt.Key.Key_Backspace:
            self.go_back()
        else:
            super().keyPressEvent(event)
