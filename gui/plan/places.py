"""Places page: the draft is kept, places are drawn, and drawn again where that has a reason.

In    a draft that lacks nothing, or a kept plan with its drawings
Out   `drawing_wanted` with a reason; `places_entered`, drawn on paper; the reason of a changed plan
Not   keeping and drawing (`screen.py` asks the book), sowing (`sow.py`)
"""

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QPushButton, QVBoxLayout, QWidget

from gui.paper.pages import Paper
from gui.paper.preview import PagePreview
from gui.paper.trialsheets import map_pages
from gui.plan.kept import KeptPlanPage
from gui.plan.page import Roll
from gui.plan.reading import TrialReading
from gui.plan.summary import draw_words
from gui.plan.view import PlanState
from gui.style.palette import Space
from gui.style.words import heading, soft, wrapped

__all__ = ["PlacesPage"]


class PlacesPage(QWidget):
    """Where everything stands."""

    drawing_wanted = Signal(str)  # reason
    places_entered = Signal(object, str)  # the order on each shelf, how it was drawn
    done = Signal()  # the reason for a change of the plan is given

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.title = heading(self.tr("Which tray stands where?"), self)
        self.words = wrapped("", self)
        self.reason = QLineEdit(self)
        self.reason.setAccessibleName(self.tr("Reason"))
        self.reason.textChanged.connect(self._reason_edited)
        self.reason.returnPressed.connect(self._reason_given)
        self.again = QPushButton(self.tr("Draw again"), self)
        self.again.clicked.connect(self._draw_again)
        self.by_hand = QPushButton(self.tr("Enter places drawn on paper..."), self)
        self.by_hand.setToolTip(self.tr("Lots from a hat, say: type or paste the place of each tray"))
        self.by_hand.clicked.connect(self._enter)
        self._trial: TrialReading | None = None
        self.history = soft("", self)
        self.preview = PagePreview(self)
        self.plan = KeptPlanPage(self)
        half = QWidget(self)
        left = QVBoxLayout(half)
        left.setContentsMargins(0, 0, 0, 0)
        left.setSpacing(Space.M)
        for part in (self.title, self.words, self.history):
            left.addWidget(part)
        left.addWidget(self.reason)
        left.addWidget(self.again, 0, Qt.AlignmentFlag.AlignLeft)
        left.addWidget(self.by_hand, 0, Qt.AlignmentFlag.AlignLeft)
        left.addStretch(1)
        across = QHBoxLayout(self)
        across.setContentsMargins(0, Space.S, 0, 0)
        across.setSpacing(Space.XL)
        across.addWidget(Roll(half, self), 4)
        across.addWidget(self.preview, 5)
        across.addWidget(self.plan, 5)

    @property
    def why(self) -> str:
        """The reason that stands in the field."""
        return self.reason.text().strip()

    def show_state(self, state: PlanState) -> None:
        """Before keeping: what will happen. After: the map, drawing again."""
        trial = self._trial = state.trial
        draw = None if trial is None or state.draft is not None else trial.draw
        self.preview.setVisible(draw is not None)
        self.plan.setVisible(draw is None)
        self.plan.show_state(state)
        self.again.setVisible(draw is not None)
        self.by_hand.setVisible(state.draft is None and trial is not None and trial.may_be_drawn)
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
            self.history.setText(self.tr("All {n} trays are sown.").format(n=len(draw.draw.places)))
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
            "treatment stands at the window more often than its share. The number that the lot began with is "
            "kept, so the drawing can be checked."
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
    def _reason_given(self) -> None:
        """Enter does what the reason was asked for."""
        if self.again.isHidden():
            self.done.emit()
        elif self.why:
            self._draw_again()

    @Slot()
    def _enter(self) -> None:
        from gui.plan.handplaces import HandPlacesDialog

        trial = self._trial
        assert trial is not None
        dialog = HandPlacesDialog(
            trial.kept.plan, trial.sown_blocks, drawn_before=bool(trial.draws), parent=self
        )
        if dialog.exec() and dialog.filled is not None:
            self.places_entered.emit(dialog.filled, dialog.why)

    @Slot()
    def _draw_again(self) -> None:
        why = self.why
        self.reason.setText("")
        self.drawing_wanted.emit(why)
