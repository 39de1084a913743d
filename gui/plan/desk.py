"""Plan desk: what the place Plan asks of the book, and slow arithmetic off the window's thread.

In    the open book; drafts; what the grower wants kept, drawn, sown
Out   `was_read`, `was_reckoned`, `has_learned`; the sentence that tells of a change, or `trouble`
Not   showing anything (`screen.py`)
"""

from collections.abc import Callable, Mapping
from datetime import date
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Signal, Slot

from data.cancel import CancelToken, Progress
from data.errors import BookError
from data.plan.draft import Draft
from data.plan.drafttext import SETTING, draft_text
from data.plan.drawing import DrawId, Filled
from data.trial import MeasureKind, Plan, PlanId, Spread
from gui.bookreading import BookReading
from gui.mishap import trouble_words
from gui.plan.reading import PlanReading, read_plans
from gui.plan.view import Chances, chances_of
from gui.work import Work

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["PlanDesk"]

RECKONED_AFTER_MS = 150  # quiet in the fields
KEPT_AFTER_MS = 800


class PlanDesk(QObject):
    """Answers of another book or draft are dropped."""

    was_read = Signal(object)  # PlanReading
    was_reckoned = Signal(object, object)  # Draft, Chances or None
    has_learned = Signal(object)  # spreads by measure
    trouble = Signal(str)

    def __init__(self, work: Work, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._work = work
        self.book: Book | None = None
        self._plans, self._spreads = BookReading(work, self), BookReading(work, self)
        self._plans.came.connect(self._was_read)
        self._spreads.came.connect(self.has_learned)
        for reading in (self._plans, self._spreads):
            reading.failed.connect(self._failed)
        self._changes = 0  # made here: what was read before one of them is no news
        self._draft: Draft | None = None
        self._reckoning = QTimer(self, singleShot=True, interval=RECKONED_AFTER_MS)
        self._reckoning.timeout.connect(self._reckon)
        self._unfinished: Draft | None = None
        self._keeping = QTimer(self, singleShot=True, interval=KEPT_AFTER_MS)
        self._keeping.timeout.connect(self._keep_draft)

    # --- reading

    def read(self) -> None:
        """Read the trials."""
        changes = self._changes
        self._plans.ask(lambda book, _cancel: (changes, read_plans(book)))

    @Slot(object)
    def _was_read(self, answer: tuple[int, PlanReading]) -> None:
        changes, reading = answer
        if changes == self._changes:
            self.was_read.emit(reading)
        else:
            self.read()

    @Slot(object)
    def _failed(self, error: Exception) -> None:
        self.trouble.emit(trouble_words(error))

    # --- reckoning

    def reckon(self, draft: Draft) -> None:
        """Reckon the chances of a draft once the fields are quiet."""
        self._draft = draft
        self._reckoning.start()

    @Slot()
    def _reckon(self) -> None:
        draft = self._draft
        if draft is None:
            return

        def reckon(_token: CancelToken, _report: Progress) -> tuple[Draft, Chances | None]:
            return draft, chances_of(draft)

        job = self._work.start(reckon)
        job.finished.connect(self._was_reckoned)
        job.failed.connect(self._failed)

    @Slot(object)
    def _was_reckoned(self, answer: tuple[Draft, Chances | None]) -> None:
        draft, chances = answer
        if draft == self._draft:
            self.was_reckoned.emit(draft, chances)

    def learn(self) -> None:
        """Ask the grower's own trays how far they lie apart."""
        self._spreads.ask(_spreads)

    # --- an unfinished draft

    def keep_draft(self, draft: Draft | None) -> None:
        """Write the draft into the book once the fields are quiet, or None at once that there is none."""
        self._unfinished = draft
        if draft is None:
            self._changes += 1
            self._keeping.stop()
            self._keep_draft()
        else:
            self._keeping.start()

    def follow(self, draft: Draft | None, written: Draft | None) -> None:
        """Write a draft again where Undo or Redo of a kept plan has put something else in its place."""
        if draft is None:
            self._keeping.stop()
            self._unfinished = None
        elif draft == self._unfinished != written:
            self._keeping.start()

    def open(self, book: "Book | None") -> None:
        """Another book from now on."""
        self.close()
        self.book = book
        self._plans.open(book)
        self._spreads.open(book)

    def close(self) -> None:
        """Write what is still to be written."""
        if self._keeping.isActive():
            self._keeping.stop()
            self._keep_draft()

    @Slot()
    def _keep_draft(self) -> None:
        text = "" if self._unfinished is None else draft_text(self._unfinished)
        if self.book is None:
            return
        try:
            if text != (self.book.setting(SETTING) or ""):
                self.book.set_setting(SETTING, text)
        except BookError as error:
            self.trouble.emit(str(error))

    # --- changing the book: each a few milliseconds

    def keep(self, draft: Draft, plan: Plan, why: str) -> PlanReading | None:
        """Keep a plan in place of its draft and draw its places, as one step; None with trouble told.

        The draft is written first, so that Undo brings it back.
        """
        self._keeping.stop()
        self._unfinished = draft
        self._keep_draft()

        def does(book: "Book") -> None:
            with book.together():
                book.draw_places(book.keep_plan(plan, why))
                before = book.setting(SETTING)
                book.in_one_step("", lambda recorder: recorder.set(SETTING, "", before))

        return self._ask(does)

    def draw(self, plan_id: PlanId, why: str = "") -> PlanReading | None:
        """Draw the places of a kept plan."""
        return self._ask(lambda book: book.draw_places(plan_id, why=why))

    def enter(self, plan_id: PlanId, filled: Filled, why: str) -> PlanReading | None:
        """Keep places that were drawn on paper."""
        return self._ask(lambda book: book.enter_places(plan_id, filled, why=why))

    def sow(self, draw_id: DrawId, day: date) -> PlanReading | None:
        """Add the trays of the next round, sown on that day; today that is now."""

        def does(book: "Book") -> object:
            sown_at = book.now() if day == book.today() else book.morning_of(draw_id, day)
            with book.together():
                book.sow_trial(draw_id, sown_at=sown_at.replace(microsecond=0))
                return book.match_by_tag()  # photos that were faster than the word that these are sown

        return self._ask(does)

    def say_kind(self, medium: str, kind: str) -> PlanReading | None:
        """Keep which kind a medium is of, planned or sown."""
        return self._ask(lambda book: book.set_medium(medium, kind=kind))

    def _ask(self, does: "Callable[[Book], object]") -> PlanReading | None:
        if self.book is None:
            return None
        self._changes += 1
        try:
            does(self.book)
            return read_plans(self.book)
        except BookError as error:
            self.trouble.emit(str(error))
            return None


def _spreads(book: "Book", _cancel: CancelToken) -> "Mapping[MeasureKind, Spread]":
    from data.verdict.trialspread import learned_spreads

    return learned_spreads(book)
