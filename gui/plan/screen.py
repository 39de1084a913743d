"""Plan: the place where a fair trial is planned, step by step, kept, drawn, sown and printed.

In    the open book
Out   plans and drawings in the book, trays on the bench, sheets as PDF
Not   the pages (`pages.py`), what stands on them (`view.py`), the book and reckoning (`desk.py`), saving
      sheets (`saving.py`)

A draft lives in the window until it is kept; a kept plan is shown as it was kept, and changed only as a new
version.
"""

from collections.abc import Mapping
from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtCore import QT_TRANSLATE_NOOP, Slot
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QStackedWidget, QVBoxLayout, QWidget

from data.plan.draft import Draft, Step
from data.trial import MeasureKind, Spread
from gui.plan.body import PlanBody
from gui.plan.desk import PlanDesk
from gui.plan.empty import PlanEmpty
from gui.plan.keeper import Done, PlanKeeper
from gui.plan.moves import (
    stepped_back,
    stepped_on,
    with_first_reading,
    with_reading,
    with_spreads,
    without_draft,
)
from gui.plan.reading import PlanReading
from gui.plan.saving import SheetSaving
from gui.plan.view import Chances, KeptPage, PlanState, draft_to_change, draft_to_copy, empty_draft
from gui.screen import Screen
from gui.work import Work

if TYPE_CHECKING:
    from data.book import Book
    from data.plan.drawing import Filled

__all__ = ["Plan"]


class Plan(Screen):
    """Question, what varies, trays, shelves, places, print."""

    KEYS = (
        ("Alt+Right", str(QT_TRANSLATE_NOOP("Plan", "Next step"))),
        ("Alt+Up", str(QT_TRANSLATE_NOOP("Plan", "Step before"))),
    )

    def __init__(self, work: Work, parent: QWidget | None = None) -> None:
        super().__init__(work, parent)
        self.state = PlanState()
        self._awaited = self._stale = False
        self._first = True  # of this book's readings
        self._repeated: tuple[str, int] | None = None  # a trial and its trays, until the book is read
        self.desk = PlanDesk(work, self)
        self.desk.was_read.connect(self._was_read)
        self.desk.was_reckoned.connect(self._was_reckoned)
        self.desk.has_learned.connect(self._has_learned)
        self.desk.trouble.connect(self.troubled)
        self.keeper = PlanKeeper(self.desk, self)
        self.keeper.was_done.connect(self._was_done)
        self._empty = PlanEmpty(self)
        self._empty.pressed.connect(self.new_trial)
        self._whole = QStackedWidget(self)
        self.body = PlanBody(self)
        self._name_parts()
        self.saving = SheetSaving(work, self.print_page, self)
        self.saving.begun.connect(self.told)
        self.saving.told.connect(self.told)
        self.saving.trouble.connect(self.troubled)
        self._connect()
        self._whole.addWidget(self.body)
        self._whole.addWidget(self._empty)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._whole)
        QShortcut(QKeySequence("Alt+Right"), self, self._next)
        QShortcut(QKeySequence("Alt+Up"), self, self._back)
        self.show_state(self.state)

    # --- making

    def _connect(self) -> None:
        head, pages, foot = self.body.head, self.body.pages, self.body.foot
        head.trial_chosen.connect(self._show_trial)
        head.new_wanted.connect(self.new_trial)
        head.change_wanted.connect(self.change_trial)
        head.copy_wanted.connect(self.copy_trial)
        head.leave_wanted.connect(self.leave_draft)
        self.body.steps.step_chosen.connect(self.go_to_step)
        self.body.steps.page_chosen.connect(self.go_to_page)
        pages.edited.connect(self.edit_draft)
        pages.kind_said.connect(self._say_kind)
        pages.drawing_wanted.connect(self._draw_again)
        pages.places_entered.connect(self._enter_places)
        pages.done.connect(self._next)
        foot.back_wanted.connect(self._back)
        foot.also_wanted.connect(self._sow_next)
        foot.forward_wanted.connect(self._next)

    def _name_parts(self) -> None:
        """What is asked for by name."""
        pages, foot = self.body.pages, self.body.foot
        self.pages = pages
        self.question, self.treatments, self.trays, self.blocks = pages.steps
        self.places, self.print_page, self.sow = pages.places, pages.print_page, pages.sow
        self.forward, self.missing = foot.forward, foot.missing

    # --- the book

    def open_book(self, book: "Book | None") -> None:
        """Another book: its trials, no draft."""
        self.treatments.forget()
        self.desk.open(book)
        self._first, self._repeated = True, None
        self.show_state(PlanState())
        super().open_book(book)

    def renew(self) -> None:
        """Read the trials; the draft stays. While nobody looks, not before the next arrival."""
        self._stale = not self.isVisible()
        if not self._stale:
            self.desk.read()

    @Slot(object)
    def _was_read(self, reading: PlanReading) -> None:
        read = with_first_reading if self._first else with_reading
        self._first = False
        self.show_state(read(self.state, reading))
        self.desk.follow(self.state.draft, reading.draft)
        if self._awaited and self.isVisible():
            self._awaited = False
            self.arrive()
        if self._repeated is not None:
            self._begin_repeated(*self._repeated)

    def unkept(self) -> str:
        """Nothing: what was typed a moment ago is written into the book now."""
        self.desk.close()
        return super().unkept()

    def arrive(self) -> None:
        """The focus to where one goes on."""
        if self._stale:
            self.renew()
        if self.state.is_empty:
            self._awaited = True  # until the book is read
            self._empty.button.setFocus()
        else:
            self.forward.setFocus()

    def redress(self) -> None:
        """New ink for icons."""
        self._empty.redress()

    # --- showing

    def show_state(self, state: PlanState) -> None:
        """Everything that can be seen follows from the state."""
        self.state = state
        self._whole.setCurrentIndex(1 if state.is_empty else 0)
        self._empty.button.setEnabled(self.book is not None or self.desk.book is not None)
        if state.is_empty:
            return
        self.body.show_state(state, self.book)
        if state.draft is not None and (state.chances is None or state.chances.draft != state.draft):
            self.desk.reckon(state.draft)

    # --- moving

    @Slot(int)
    def go_to_step(self, step: int) -> None:
        """Show a step of the draft."""
        self.show_state(replace(self.state, step=step))

    @Slot(str)
    def go_to_page(self, page: str) -> None:
        """Show a page of the kept trial."""
        self.show_state(replace(self.state, page=KeptPage(page)))

    @Slot()
    def _back(self) -> None:
        if not self.state.is_empty:
            self.show_state(stepped_back(self.state))

    @Slot()
    def _next(self) -> None:
        """The main action, whatever it is here."""
        state = self.state
        if state.is_empty or not self.forward.isEnabled():
            return
        drafting = state.draft is not None
        if drafting and state.step == Step.DRAW:
            self.keeper.keep(state, self.places.why)
        elif not drafting and state.page is KeptPage.PRINT:
            self.saving.ask()
        elif not drafting and state.page is KeptPage.SOW:
            self._sow()
        elif state.waits_for_draw:
            self.keeper.draw(state)
        else:
            self.show_state(stepped_on(state))

    @Slot()
    def _sow_next(self) -> None:
        self.go_to_page(KeptPage.SOW)

    # --- drafts

    @Slot(object)
    def edit_draft(self, draft: Draft) -> None:
        """Show another draft, and keep it in the book until it becomes a plan."""
        self.desk.keep_draft(draft)
        self.show_state(replace(self.state, draft=draft))

    @Slot(str, str)
    def _say_kind(self, medium: str, kind: str) -> None:
        """It is the book's, not the draft's: all trays on it have it."""
        reading = self.desk.say_kind(medium, kind)
        if reading is not None:
            self.show_state(with_reading(self.state, reading))
            self.book_changed.emit()
            self.told.emit(
                self.tr("The kind of {medium} is kept; Ctrl+Z takes it back.").format(medium=medium)
            )

    @Slot()
    def new_trial(self) -> None:
        """Begin with nothing but what the book knows."""
        self._begin(empty_draft(self.state.reading))

    @Slot()
    def change_trial(self) -> None:
        """Begin with the kept plan; it will be a new version."""
        if self.state.trial is not None:
            self._begin(draft_to_change(self.state.trial, self.state.reading))

    @Slot()
    def copy_trial(self) -> None:
        """Begin a second trial that repeats this one."""
        if self.state.trial is not None:
            self._begin(draft_to_copy(self.state.trial, self.state.reading))

    @Slot(str, int)
    def repeat_trial(self, trial: str, trays: int) -> None:
        """Begin a trial that repeats a kept one with so many trays of each, as soon as the book is read."""
        self._repeated = (trial, trays)
        self.desk.read()

    def _begin_repeated(self, trial: str, trays: int) -> None:
        self._repeated = None
        kept = self.state.reading.trial(trial)
        if self.state.draft is not None:
            self.told.emit(self.tr("Another plan is being made here: keep it or give it up first."))
        elif kept is not None:
            self._begin(draft_to_copy(kept, self.state.reading, trays))
            words = self.tr("A copy of {trial} with {n} trays of each; change in it what you like.")
            self.told.emit(words.format(trial=trial, n=trays))

    def _begin(self, draft: Draft) -> None:
        self.places.reason.setText("")  # `clear` would leave Ctrl+Z something to type again
        self.show_state(replace(self.state, draft=draft, step=Step.QUESTION, chances=None))
        self.question.name.setFocus()
        self.desk.learn()

    @Slot()
    def leave_draft(self) -> None:
        """Back to the kept plans; the draft is given up."""
        self.desk.keep_draft(None)
        self.show_state(without_draft(self.state))

    @Slot(str)
    def _show_trial(self, name: str) -> None:
        self.show_state(replace(self.state, draft=None, shown=name, page=KeptPage.PLAN))

    @Slot(object, object)
    def _was_reckoned(self, draft: Draft, chances: Chances | None) -> None:
        if draft == self.state.draft:
            self.state = replace(self.state, chances=chances)
            self.trays.show_state(self.state)

    @Slot(object)
    def _has_learned(self, spreads: Mapping[MeasureKind, Spread]) -> None:
        self.show_state(with_spreads(self.state, spreads))

    # --- what is kept

    @Slot(str)
    def _draw_again(self, why: str) -> None:
        self.keeper.draw(self.state, why)

    @Slot(object, str)
    def _enter_places(self, filled: "Filled", why: str) -> None:
        self.keeper.enter(self.state, filled, why)

    def _sow(self) -> None:
        """The trays of the next round stand on the bench; once all do, that is where one goes on."""
        if self.state.trial is not None and self.state.trial.waiting == 0:
            self.place_wanted.emit("bench")
        else:
            self.keeper.sow(self.state, self.sow.day)

    @Slot(object)
    def _was_done(self, done: Done) -> None:
        """The trial as the book has it now, and a sentence at the foot."""
        self.desk.keep_draft(None)
        self.places.reason.setText("")  # `clear` would leave Ctrl+Z something to type again
        state = replace(self.state, draft=None, shown=done.trial, page=done.page)
        self.show_state(with_reading(state, done.reading))
        self.book_changed.emit()
        self.told.emit(done.words)
