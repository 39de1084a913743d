"""Places page: the draft is kept, places are drawn, trays are added to the bench.

In    a draft that lacks nothing, or a kept plan with its drawings
Out   `drawing_wanted` with a reason, `sowing_wanted`; the reason of a changed plan
Not   keeping and drawing (`plan.py` asks the book)
"""

from datetime import date

from PySide6.QtCore import QDate, Signal, Slot
from PySide6.QtWidgets import QDateEdit, QHBoxLayout, QLabel, QLineEdit, QPushButton, QVBoxLayout, QWidget

from gui.pagepreview import PagePreview
from gui.palette import Space
from gui.paper import Paper
from gui.plankept import KeptPlanPage
from gui.planpage import heading, soft
from gui.plansummary import draw_words
from gui.planview import PlanState
from gui.spoken import DAY_YEAR
from gui.trialsheets import map_pages
from gui.words import translate

__all__ = ["PlacesPage"]


class PlacesPage(QWidget):
    """Where everything stands."""

    drawing_wanted = Signal(str)  # reason
    sowing_wanted = Signal(object)  # date

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._today: date | None = None
        self.title = heading(self.tr("Which tray stands where?"), self)
        self.words = QLabel(self)
        self.words.setWordWrap(True)
        self.reason = QLineEdit(self)
        self.reason.setAccessibleName(self.tr("Reason"))
        self.reason.textChanged.connect(self._reason_edited)
        self.again = QPushButton(self.tr("Draw again"), self)
        self.again.clicked.connect(self._draw_again)
        self.sow = QPushButton(self.tr("Add the trays to the bench"), self)
        self.sow.clicked.connect(self._sow)
        self.sown_on = QDateEdit(self)
        self.sown_on.setCalendarPopup(True)
        self.sown_on.setDisplayFormat(translate("Date", DAY_YEAR))
        self.sown_on.setAccessibleName(self.tr("Sown on"))
        self._sown_word = QLabel(self.tr("Sown on"), self)
        sowing = QHBoxLayout()
        sowing.addWidget(self._sown_word)
        sowing.addWidget(self.sown_on)
        sowing.addStretch(1)
        self.history = soft("", self)
        self.preview = PagePreview(self)
        self.plan = KeptPlanPage(self)
        left = QVBoxLayout()
        left.setSpacing(Space.M)
        for part in (self.title, self.words, self.history):
            left.addWidget(part)
        left.addLayout(sowing)
        below: tuple[QWidget, ...] = (self.sow, self.reason, self.again)
        for one in below:
            left.addWidget(one)
        left.addStretch(1)
        across = QHBoxLayout(self)
        across.setContentsMargins(0, Space.S, 0, 0)
        across.setSpacing(Space.XL)
        across.addLayout(left, 4)
        across.addWidget(self.preview, 5)
        across.addWidget(self.plan, 5)

    @property
    def why(self) -> str:
        """The reason that stands in the field."""
        return self.reason.text().strip()

    def show_state(self, state: PlanState) -> None:
        """Before keeping: what will happen. After: the map, drawing again, adding the trays."""
        trial = state.trial
        draw = None if trial is None or state.draft is not None else trial.draw
        self.preview.setVisible(draw is not None)
        self.plan.setVisible(draw is None)
        self.plan.show_state(state)
        self.again.setVisible(draw is not None)
        waits = draw is not None and trial is not None and trial.waiting > 0
        for part in (self.sow, self.sown_on, self._sown_word):
            part.setVisible(waits)
        today = state.reading.today
        if self._today != today:
            self._today = today
            self.sown_on.setDate(QDate(today.year, today.month, today.day))
        changes = state.draft is not None and state.needs_reason
        self.reason.setVisible(draw is not None or changes)
        self.reason.setPlaceholderText(
            self.tr("Why is the plan changed?") if changes else self.tr("Why are the places drawn again?")
        )
        if trial is None or draw is None:
            self.history.clear()
            self.words.setText(self._before(changes))
            return
        pages = map_pages(trial.kept.plan, draw.draw.places, Paper.A4)
        self.preview.show_pages(pages, Paper.A4)
        self.words.setText(draw_words(trial, draw))
        if trial.waiting == 0:
            self.history.setText(self.tr("All {n} trays stand on the bench.").format(n=len(draw.draw.places)))
        else:
            self.history.setText(
                self.tr("Sown so far: {sown} of {all} trays. Next: {next} trays.").format(
                    sown=len(draw.draw.places) - trial.waiting,
                    all=len(draw.draw.places),
                    next=trial.next_round,
                )
            )
        self.again.setVisible(trial.waiting > 0)
        self.reason.setVisible(trial.waiting > 0)
        self._reason_edited()

    def _before(self, changes: bool) -> str:
        first = self.tr(
            "The plan is kept with today's date, then places are drawn by lot within each block: no "
            "treatment stands at the window more often than its share. The seed is kept, so the drawing can "
            "be checked."
        )
        if not changes:
            return first
        return self.tr(
            "This trial was kept before. What you changed becomes a new version with its date and your "
            "reason; the old one stays, and the verdict tells of both."
        )

    @Slot()
    def _reason_edited(self) -> None:
        self.again.setEnabled(bool(self.why))

    @Slot()
    def _sow(self) -> None:
        self.sowing_wanted.emit(self.sown_on.date().toPython())

    @Slot()
    def _draw_again(self) -> None:
        why = self.why
        self.reason.clear()
        self.drawing_wanted.emit(why)
