"""Clock band: asks whether a camera's clock was right, and what time it was really.

In    the doubts of the book about the clocks of its photos
Out   `mended` with the photos and the shift, `believed` with the photos, `only` with those to be shown
Not   finding doubts (`data/photos/clocks.py`), words (`clockview.py`), changing the book (`screen.py`)
"""

from collections.abc import Sequence

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QGridLayout, QLabel, QWidget

from data.photos.clocks import ClockDoubt
from gui.controls.questionband import QuestionBand
from gui.intake.clockview import ClockQuestion, shift_words
from gui.language.spoken import spoken
from gui.notes.moments import MomentEdit, moment_in, show_moment
from gui.style.palette import Space, set_role
from gui.style.words import wrapped

__all__ = ["ClockBand"]

ARROW = "→"


class ClockBand(QuestionBand):
    """One doubt at a time, the oldest first."""

    mended = Signal(object, object)  # photo ids, timedelta
    believed = Signal(object)  # photo ids
    only = Signal(object)  # photo ids, None for all

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__("ask-notice", parent)
        self.question: ClockQuestion | None = None
        self._more = 0
        self.add_matter(self._make_times())
        self.mend = self.add_answer("", self._mend, main=True)
        self.believe = self.add_answer(self.tr("The clock was right"), self._believe)
        self.believe.setToolTip(
            self.tr("Leave the times as they are, and do not ask again; Ctrl+Z takes it back")
        )
        self.look = self.add_answer(self.tr("Show only these photos"), self._look)
        self.look.setCheckable(True)
        set_role(self.look, "switch")
        self.mend.setToolTip(
            self.tr("Move all these photos by as much; those with a tag find their tray anew (undo: Ctrl+Z)")
        )

    def _make_times(self) -> QWidget:
        """First and last photo, before and after."""
        box = QWidget(self)
        self.first_words, self.last_words = QLabel(box), QLabel(self.tr("Last photo"), box)
        self.first_before, self.last_before, self.last_after = QLabel(box), QLabel(box), QLabel(box)
        self.arrows = QLabel(ARROW, box), QLabel(ARROW, box)
        self.moved = wrapped("", box, "soft")
        self.first_after = MomentEdit(box)
        self.first_after.setToolTip(
            self.tr("When the first photo was really taken: change it if you know better, the others follow")
        )
        self.first_after.dateTimeChanged.connect(self._typed)
        grid = QGridLayout(box)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(Space.M)
        grid.setVerticalSpacing(Space.XS)
        for row, parts in enumerate((
            (self.first_words, self.first_before, self.arrows[0], self.first_after, self.moved),
            (self.last_words, self.last_before, self.arrows[1], self.last_after),
        )):  # fmt: skip
            for place, part in enumerate(parts):
                grid.addWidget(part, row, place)
        grid.setColumnStretch(4, 1)
        return box

    def show_doubts(self, doubts: Sequence[ClockDoubt]) -> bool:
        """Ask about the first of them; whether there is one. What was typed of the same one stays."""
        if not doubts:
            self.question = None
            self._stop_looking()
            return False
        if self.question is None or self.question.doubt != doubts[0] or self._more != len(doubts) - 1:
            if self.question is None or self.question.doubt.photo_ids != doubts[0].photo_ids:
                self._stop_looking()
            self.question, self._more = ClockQuestion.of(doubts[0]), len(doubts) - 1
            self._show(self.question)
        return True

    def _show(self, question: ClockQuestion) -> None:
        title = self.tr("What time was it really?")
        if self._more:
            title = self.tr("What time was it really? ({n} more clocks after this one)").format(n=self._more)
        words = spoken(question.doubt.sentence)
        if not question.doubt.exact:
            words += " " + self.tr("The time of day is a guess: set it if you know better.")
        self.say(title, words)
        several = question.count > 1
        self.first_words.setText(self.tr("First photo") if several else self.tr("The photo"))
        for part in (self.last_words, self.last_before, self.arrows[1], self.last_after):
            part.setVisible(several)
        before, last = question.before
        self.first_before.setText(before)
        self.last_before.setText(last)
        self.first_after.setAccessibleName(
            self.tr("First photo: the camera says {before}. Really taken at").format(before=before)
        )
        self.first_after.blockSignals(True)
        self.first_after.clearMaximumDateTime()
        show_moment(self.first_after, question.first)
        self.first_after.blockSignals(False)
        self._follow()

    @Slot()
    def _typed(self) -> None:
        if self.question is not None:
            moment = moment_in(self.first_after, self.question.doubt.first + self.question.doubt.shift)
            self.question = self.question.with_first(moment)
            self._follow()

    def _follow(self) -> None:
        """The last photo and the button for what the field says."""
        question = self.question
        assert question is not None
        late = question.first > question.latest
        self.last_after.setText(question.last_after)
        self.last_after.setAccessibleName(
            self.tr("Last photo: {before} becomes {after}").format(
                before=question.before[1], after=question.last_after
            )
        )
        too_late = self.tr("That would be after the photos came in.")
        self.moved.setText(too_late if late else shift_words(question.shift))
        set_role(self.moved, "alarm" if late else "soft")
        self.mend.setText(question.mend_words)
        self.mend.setEnabled(question.can_mend and not late)

    # --- answers

    @Slot()
    def _mend(self) -> None:
        if self.question is not None:
            self.mended.emit(self.question.doubt.photo_ids, self.question.shift)

    @Slot()
    def _believe(self) -> None:
        if self.question is not None:
            self.believed.emit(self.question.doubt.photo_ids)

    @Slot(bool)
    def _look(self, looks: bool) -> None:
        ids = None if self.question is None or not looks else frozenset(self.question.doubt.photo_ids)
        self.only.emit(ids)

    def _stop_looking(self) -> None:
        if self.look.isChecked():
            self.look.setChecked(False)
            self.only.emit(None)
