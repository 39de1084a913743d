"""Verdict: the place where a trial is answered, crop by crop and measure by measure.

In    the open book
Out   the sentence of each medium and all that stands behind it; charts as files; weights; rounds by eye;
      `next_wanted`, the trial that would settle what is not shown
Not   the statistics (`data/verdict`), reading (`desk.py`), the page itself (`page.py`), what
      stands there without one (`verdictempty.py`)
"""

from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QT_TRANSLATE_NOOP, Qt, Slot
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QStackedWidget, QVBoxLayout, QWidget

from data.desirability import ScoreRule, rule_text
from data.errors import BookError
from data.trial import MeasureKind
from data.verdict.nexttrial import NextTrial, next_trial
from gui.answer.drawnchart import DrawnChart
from gui.answer.reading import VerdictReading
from gui.answer.view import VerdictState, chosen_state
from gui.controls.asking import show_over
from gui.controls.choosing import ask_new_file
from gui.language.spoken import in_figures
from gui.screen import Screen
from gui.style.palette import Space
from gui.verdict.desk import VerdictDesk
from gui.verdict.eyerounds import EyeRounds
from gui.verdict.foot import VerdictFoot
from gui.verdict.head import VerdictHead
from gui.verdict.marginask import MarginAsk
from gui.verdict.page import VerdictPage
from gui.verdict.rulepage import RulePage
from gui.verdict.verdictempty import VerdictEmpty
from gui.work import Work

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["Verdict"]

PAGE, EMPTY, RULE = range(3)
KINDS = "SVG (*.svg);;PNG (*.png)"


class Verdict(Screen):
    """Sentence, table, charts, why, how sure."""

    KEYS = (
        ("Alt+Down", str(QT_TRANSLATE_NOOP("Verdict", "Next crop"))),
        ("Alt+Up", str(QT_TRANSLATE_NOOP("Verdict", "Crop before"))),
        ("Ctrl+S", str(QT_TRANSLATE_NOOP("Verdict", "Save the chart that has the focus"))),
    )

    def __init__(self, work: Work, parent: QWidget | None = None) -> None:
        super().__init__(work, parent)
        self.state = VerdictState()
        self.desk = VerdictDesk(work, self)
        self.desk.was_read.connect(self._was_read)
        self.desk.trouble.connect(self.troubled)
        self.empty = VerdictEmpty(self)
        self.empty.pressed.connect(self._go_on)
        self._awaited = False
        self.rounds = EyeRounds(work, self)
        self.rounds.changed.connect(self._changed)
        self.rounds.trouble.connect(self.troubled)
        self._whole = QStackedWidget(self)
        self._whole.addWidget(self._make_content())
        self._whole.addWidget(self.empty)
        self._whole.addWidget(self._make_rule_page())
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._whole)
        QShortcut(QKeySequence("Alt+Down"), self, self._next_crop)
        QShortcut(QKeySequence("Alt+Up"), self, self._crop_before)
        self.show_state(self.state)

    def _make_content(self) -> QWidget:
        content = QWidget(self)
        self.head = VerdictHead(content)
        self.head.trial_chosen.connect(self.show_trial)
        self.head.crop_chosen.connect(self.show_crop)
        self.head.kind_chosen.connect(self.show_kind)
        self.head.rule_wanted.connect(self.open_rule)
        self.head.margin_wanted.connect(self.ask_margin)
        self.page = VerdictPage(content)
        self.page.save_wanted.connect(self._save_chart)
        self.foot = VerdictFoot(content)
        self.foot.next_wanted.connect(self._want_next)
        self.foot.report_wanted.connect(self.open_report)
        self.foot.eye_wanted.connect(self.rounds.ask)
        self.next, self.report, self.by_eye = self.foot.next, self.foot.report, self.foot.by_eye
        column = QVBoxLayout(content)
        column.setContentsMargins(Space.L, Space.M, Space.L, Space.M)
        column.setSpacing(Space.M)
        column.addWidget(self.head)
        column.addWidget(self.page, 1)
        column.addWidget(self.foot)
        return content

    def _make_rule_page(self) -> QWidget:
        whole = QWidget(self)
        self.rule_page = RulePage(whole)
        self.rule_page.keep_wanted.connect(self._keep_rule)
        self.rule_page.left.connect(self._leave_rule)
        column = QVBoxLayout(whole)
        column.setContentsMargins(Space.L, Space.M, Space.L, Space.M)
        column.addWidget(self.rule_page)
        leave = QShortcut(QKeySequence("Esc"), self.rule_page, self._leave_rule)
        leave.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        return whole

    @Slot()
    def open_report(self) -> None:
        """Let the grower look at the report of this trial and save it."""
        from gui.report.dialog import ReportDialog

        if self.book is None:
            return
        try:
            dialog = ReportDialog(self.book, self.work, self, self.state.reading.trial)
            if dialog.exec():
                self.told.emit(dialog.told)
        except BookError as error:
            self.troubled.emit(str(error))

    # --- the book

    def open_book(self, book: "Book | None") -> None:
        """Another book: nothing of the one before."""
        self._whole.setCurrentIndex(EMPTY)
        self.page.verticalScrollBar().setValue(0)
        self.desk.open(book)
        self.rounds.book = book
        self.show_state(VerdictState())
        super().open_book(book)

    def renew(self) -> None:
        """Read again, in the background; while nobody looks, not before the next arrival."""
        if self.isVisible():
            self.desk.read()

    def arrive(self) -> None:
        """The focus to where one goes on, as soon as the book is read."""
        if not self.state.read:
            self._awaited = True
            if not self.desk.is_reading:
                self.desk.read()
        self._take_focus()

    def _take_focus(self) -> None:
        if self._whole.currentIndex() == RULE:
            return
        if self._whole.currentIndex() == EMPTY:
            self.empty.button.setFocus()
        elif len(self.state.reading.crops) > 1:
            self.head.crops.setFocus()
        else:
            self.by_eye.setFocus()

    def redress(self) -> None:
        """New ink, other letters."""
        self.empty.redress()
        self.page.fit()

    @Slot(object)
    def _was_read(self, reading: VerdictReading) -> None:
        state = chosen_state(reading, self.state)
        if state != self.state:
            self.show_state(state)
        if self._awaited and self.isVisible():
            self._awaited = False
            self._take_focus()

    # --- showing

    def show_state(self, state: VerdictState) -> None:
        """Everything that can be seen follows from the state."""
        self.state = state
        if state.found is None:
            self._whole.setCurrentIndex(EMPTY)
            self.empty.show_state(state, has_book=self.book is not None)
            return
        self.rounds.show_state(state)
        self.foot.show_may(score=self.rounds.may_begin, then=self.next_trial, crop=state.crop)
        self.head.show_state(state)
        self.page.show_state(state)
        if self._whole.currentIndex() == RULE:
            self.rule_page.follow(state)
        else:  # only now: each part that comes or goes on a page in front lays all of it out anew
            self._whole.setCurrentIndex(PAGE)

    @Slot()
    def _go_on(self) -> None:
        self.place_wanted.emit("plan")

    @property
    def next_trial(self) -> NextTrial | None:
        """What would probably settle what is not shown; None without a plan to repeat."""
        reading = self.state.reading
        return None if reading.kept is None else next_trial(reading.found)

    @Slot()
    def _want_next(self) -> None:
        then = self.next_trial
        if then is not None:
            self.next_wanted.emit(self.state.reading.trial, then.trays)

    @Slot(str)
    def show_trial(self, trial: str) -> None:
        """Read and show another trial."""
        self.desk.read(trial)

    @Slot(str)
    def show_crop(self, crop: str) -> None:
        """Show another crop; the measure stays where the crop has it."""
        self.show_state(chosen_state(self.state.reading, replace(self.state, crop=crop)))
        self.page.verticalScrollBar().setValue(0)

    @Slot(object)
    def show_kind(self, kind: MeasureKind) -> None:
        """Show another measure."""
        self.show_state(replace(self.state, kind=kind))

    @Slot()
    def _next_crop(self) -> None:
        self._step(1)

    @Slot()
    def _crop_before(self) -> None:
        self._step(-1)

    def _step(self, by: int) -> None:
        crops = self.state.reading.crops
        if self.state.crop in crops:
            self.show_crop(crops[(crops.index(self.state.crop) + by) % len(crops)])

    # --- limits and weights

    @Slot()
    def open_rule(self) -> None:
        """Show the limits and weights of the canopy score, to be tried."""
        self.rule_page.open_rule(self.state)
        self._whole.setCurrentIndex(RULE)
        self.rule_page.take_focus()

    @Slot()
    def _leave_rule(self) -> None:
        self._whole.setCurrentIndex(PAGE)
        self.head.rule.setFocus()

    @Slot(object, str)
    def _keep_rule(self, rule: ScoreRule, why: str) -> None:
        trial = self.state.reading.trial
        if self.keep(lambda book: book.keep_score_rule(trial, rule_text(rule), why)):
            self._leave_rule()
            self._changed()
            words = self.tr("Limits and weights are kept with the plan of {trial}.")
            self.told.emit(words.format(trial=trial))

    @Slot()
    def ask_margin(self) -> None:
        """Ask for the margin of a trial without a plan."""
        ask = MarginAsk(self.state, self)
        ask.wanted.connect(self._set_margin)
        show_over(ask)

    @Slot(str, float)
    def _set_margin(self, trial: str, points: float) -> None:
        if self.keep(lambda book: book.set_margin(trial, points)):
            self._changed()
            words = self.tr("The margin of {trial} is {points} points; its date is kept.")
            self.told.emit(words.format(trial=trial, points=in_figures(points)))

    @Slot()
    def _changed(self) -> None:
        self.desk.read()
        self.book_changed.emit()

    # --- files

    @Slot(object)
    def _save_chart(self, chart: DrawnChart) -> None:
        found = self.state.found
        if found is None:
            return
        name = f"{found.trial} {found.crop} {chart.title}.svg"
        path = ask_new_file(self, self.tr("Save the chart"), name, KINDS)
        if path is not None:
            self.save_chart(chart, path)

    def save_chart(self, chart: DrawnChart, path: Path) -> None:
        """Write a chart as SVG or PNG."""
        if path.suffix.lower() not in (".svg", ".png"):
            path = path.with_name(path.name + ".svg")
        try:
            chart.save(path)
        except OSError as error:
            words = self.tr("The chart was not saved: {why}. Choose another folder.")
            self.troubled.emit(words.format(why=error.strerror or str(error)))
            return
        self.told.emit(self.tr("Saved: {file}").format(file=path))
