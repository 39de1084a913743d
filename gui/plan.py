"""Plan: the place where a fair trial is planned, step by step, kept, drawn, sown and printed.

In    the open book
Out   plans and drawings in the book, trays on the bench, sheets as PDF
Not   the steps themselves (`planquestion.py` and its neighbours), the book and reckoning (`plandesk.py`)

A draft lives in the window until it is kept; a kept plan is shown as it was kept, and changed only as a new
version.
"""

from collections.abc import Mapping
from dataclasses import replace
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QT_TRANSLATE_NOOP, Slot
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QStackedWidget, QVBoxLayout, QWidget

from data.draft import Draft, Step
from data.trial import MeasureKind, Spread
from gui.choosing import ask_new_file
from gui.palette import Space, set_role
from gui.planblocks import BlocksPage
from gui.plandesk import PlanDesk
from gui.plankept import KeptPlanPage
from gui.planplaces import PlacesPage
from gui.planprint import PrintPage
from gui.planquestion import QuestionPage
from gui.planreading import PlanReading
from gui.planrow import PlanRow, StepRow
from gui.plantrays import TraysPage
from gui.plantreatments import TreatmentsPage
from gui.planview import (
    Chances,
    KeptPage,
    PlanState,
    draft_to_change,
    draft_to_copy,
    empty_draft,
)
from gui.screen import Screen
from gui.teaching import Teaching
from gui.work import Work

if TYPE_CHECKING:
    from data.book import Book

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
        self.desk = PlanDesk(work, self)
        self.desk.was_read.connect(self._was_read)
        self.desk.was_reckoned.connect(self._was_reckoned)
        self.desk.has_learned.connect(self._has_learned)
        self.desk.trouble.connect(self.troubled)
        self._empty = Teaching("plan", self.tr("Plan a trial"), self)
        self._empty.teach(
            self.tr("No trial is planned yet"),
            self.tr(
                "Here you say what you want to know, which media you compare and on which crops. The program "
                "says how many trays that takes, draws which tray stands where, and prints tags and sheets."
            ),
        )
        self._empty.pressed.connect(self.new_trial)
        self._whole = QStackedWidget(self)
        self._whole.addWidget(self._make_content())
        self._whole.addWidget(self._empty)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._whole)
        QShortcut(QKeySequence("Alt+Right"), self, self._next)
        QShortcut(QKeySequence("Alt+Up"), self, self._back)
        self.show_state(self.state)

    # --- making

    def _make_pages(self) -> None:
        self.question, self.treatments = QuestionPage(self), TreatmentsPage(self)
        self.trays, self.blocks = TraysPage(self), BlocksPage(self)
        self.places, self.print_page = PlacesPage(self), PrintPage(self)
        self.kept_page = KeptPlanPage(self)
        self.steps_pages = (self.question, self.treatments, self.trays, self.blocks)
        for page in self.steps_pages:
            page.edited.connect(self.edit_draft)
        self.places.drawing_wanted.connect(self._draw_again)
        self.places.sowing_wanted.connect(self._sow)
        self.places.reason.textChanged.connect(self._show_foot)
        for field in (self.question.name, self.question.own_words):
            field.returnPressed.connect(self._next)  # Enter does the main thing
        self.pages = QStackedWidget(self)
        for part in (*self.steps_pages, self.places, self.print_page, self.kept_page):
            self.pages.addWidget(part)

    def _make_content(self) -> QWidget:
        content = QWidget(self)
        self.head = PlanRow(content)
        self.head.trial_chosen.connect(self._show_trial)
        self.head.new_wanted.connect(self.new_trial)
        self.head.change_wanted.connect(self.change_trial)
        self.head.copy_wanted.connect(self.copy_trial)
        self.head.leave_wanted.connect(self.leave_draft)
        self.steps = StepRow(content)
        self.steps.step_chosen.connect(self.go_to_step)
        self.steps.page_chosen.connect(self.go_to_page)
        self._make_pages()  # after head and steps: Tab goes as one reads
        self.missing = QLabel(content)
        self.missing.setWordWrap(True)
        set_role(self.missing, "notice")
        self.back = QPushButton(self.tr("Back"), content)
        self.back.setToolTip(self.tr("Step before (Alt+Up)"))
        self.back.clicked.connect(self._back)
        self.forward = QPushButton(content)
        self.forward.setToolTip(self.tr("Next step (Alt+Right)"))
        set_role(self.forward, "main")
        self.forward.clicked.connect(self._next)
        foot = QHBoxLayout()
        foot.setSpacing(Space.S)
        foot.addWidget(self.missing, 1)
        foot.addWidget(self.back)
        foot.addWidget(self.forward)
        column = QVBoxLayout(content)
        column.setContentsMargins(Space.L, Space.M, Space.L, Space.M)
        column.setSpacing(Space.M)
        column.addWidget(self.head)
        column.addWidget(self.steps)
        column.addWidget(self.pages, 1)
        column.addLayout(foot)
        return content

    # --- the book

    def open_book(self, book: "Book | None") -> None:
        """Another book: its trials, no draft."""
        self.treatments.forget()
        self.desk.close()
        self.desk.book = book
        self._first = True
        self.show_state(PlanState())
        super().open_book(book)

    def renew(self) -> None:
        """Read the trials; the draft stays. While nobody looks, not before the next arrival."""
        self._stale = not self.isVisible()
        if not self._stale:
            self.desk.read()

    @Slot(object)
    def _was_read(self, reading: PlanReading) -> None:
        state = self._with(reading)
        if self._first and state.draft is None and reading.draft is not None:
            state = replace(state, draft=reading.draft, step=Step.QUESTION)
        self._first = False
        if state.draft is None and reading.trial(state.shown) is None:
            last = reading.trials[-1].kept.plan.trial if reading.trials else ""
            state = replace(state, shown=last, page=KeptPage.PLAN)
        self.show_state(state)
        if self._awaited and self.isVisible():
            self._awaited = False
            self.arrive()

    def _with(self, reading: PlanReading) -> PlanState:
        """Another reading; what the trays have taught stays."""
        return replace(self.state, reading=replace(reading, spreads=self.state.reading.spreads))

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
        self.head.show_state(state)
        self.steps.show_state(state)
        for page in (*self.steps_pages, self.places, self.kept_page):
            page.show_state(state)
        self._show_page()
        self._show_foot()
        if state.draft is not None and (state.chances is None or state.chances.draft != state.draft):
            self.desk.reckon(state.draft)

    def _show_page(self) -> None:
        state = self.state
        if state.draft is not None:
            self.pages.setCurrentIndex(state.step)
            return
        widget: QWidget = self.kept_page
        if state.page is KeptPage.PLACES:
            widget = self.places
        elif state.page is KeptPage.PRINT:
            self.print_page.show_trial(state, self.book)
            widget = self.print_page
        self.pages.setCurrentWidget(widget)

    @Slot()
    def _show_foot(self) -> None:
        foot = self.state.foot(self.places.why)
        self.missing.setText(foot.missing)
        self.forward.setText(foot.forward)
        self.forward.setEnabled(foot.may_go_on)
        self.back.setVisible(foot.may_go_back)

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
        if self.state.draft is not None:
            self.go_to_step(max(0, self.state.step - 1))
        else:
            pages = list(KeptPage)
            self.go_to_page(pages[max(0, pages.index(self.state.page) - 1)])

    @Slot()
    def _next(self) -> None:
        """The main action, whatever it is here."""
        state = self.state
        if state.is_empty or not self.forward.isEnabled():
            return
        if state.draft is not None:
            self._keep() if state.step == Step.DRAW else self.go_to_step(state.step + 1)
        elif state.page is KeptPage.PRINT:
            self._save()
        elif state.page is KeptPage.PLAN and state.trial is not None and state.trial.draw is None:
            self._show_drawn(self.desk.draw(state.trial.kept.id), self.tr("The places are drawn."))
        else:
            pages = list(KeptPage)
            self.go_to_page(pages[pages.index(state.page) + 1])

    # --- drafts

    @Slot(object)
    def edit_draft(self, draft: Draft) -> None:
        """Show another draft, and keep it in the book until it becomes a plan."""
        self.desk.keep_draft(draft)
        self.show_state(replace(self.state, draft=draft))

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

    def _begin(self, draft: Draft) -> None:
        self.places.reason.clear()
        self.show_state(replace(self.state, draft=draft, step=Step.QUESTION, chances=None))
        self.question.name.setFocus()
        self.desk.learn()

    @Slot()
    def leave_draft(self) -> None:
        """Back to the kept plans; the draft is given up."""
        self.desk.keep_draft(None)
        self.show_state(replace(self.state, draft=None, page=KeptPage.PLAN))

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
        reading = replace(self.state.reading, spreads=spreads)
        draft = self.state.draft
        if draft is not None and draft.spread.df is None and draft.measure in spreads:
            draft = replace(draft, spread=spreads[draft.measure])
        self.show_state(replace(self.state, reading=reading, draft=draft))

    # --- what is kept

    def _keep(self) -> None:
        plan = self.state.plan
        if plan is not None:
            reading = self.desk.keep(plan, self.places.why)
            words = self.tr("{trial}: the plan is kept, the places are drawn.").format(trial=plan.trial)
            self._show_drawn(reading, words, plan.trial)

    @Slot(str)
    def _draw_again(self, why: str) -> None:
        trial = self.state.trial
        if trial is not None:
            words = self.tr("The places are drawn again; the drawing before is kept.")
            self._show_drawn(self.desk.draw(trial.kept.id, why), words)

    @Slot(object)
    def _sow(self, day: date) -> None:
        trial = self.state.trial
        if trial is not None and trial.draw is not None:
            words = self.tr("{n} trays stand on the bench.").format(n=trial.next_round)
            self._show_drawn(self.desk.sow(trial.draw.id, day), words)

    def _show_drawn(self, reading: PlanReading | None, words: str, trial: str | None = None) -> None:
        """The places as the book has them now, and a sentence at the foot."""
        if reading is None:  # trouble was told
            return
        self.desk.keep_draft(None)
        self.places.reason.clear()
        shown = self.state.shown if trial is None else trial
        self.show_state(replace(self._with(reading), draft=None, shown=shown, page=KeptPage.PLACES))
        self.book_changed.emit()
        self.told.emit(words)

    # --- printing

    def _save(self) -> None:
        page = self.print_page
        if not page.pages():
            self.told.emit(self.tr("Choose something to print first."))
            return
        path = ask_new_file(self, self.tr("Save the sheets"), f"{page.title}.pdf", "PDF (*.pdf)")
        if path is not None:
            self.save_sheets(path)

    def save_sheets(self, path: Path) -> None:
        """Write what is chosen as a PDF."""
        page = self.print_page
        if self.desk.save(path, page.pages(), page.chosen_paper, page.title):
            self.told.emit(self.tr("Saved: {file}. Print at 100 %.").format(file=path))
