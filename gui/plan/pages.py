"""Plan pages: every page of the place Plan, one of them in front.

In    a `PlanState`, the open book
Out   `edited` with another draft, `kind_said` of a medium, `drawing_wanted` with a reason, `places_entered`,
      `reason_edited`; `done` on Enter
Not   which page is asked for (`screen.py`), the pages themselves
"""

from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QStackedWidget, QWidget

from gui.plan.blocks import BlocksPage
from gui.plan.kept import KeptPlanPage
from gui.plan.places import PlacesPage
from gui.plan.printing import PrintPage
from gui.plan.question import QuestionPage
from gui.plan.sow import SowPage
from gui.plan.trays import TraysPage
from gui.plan.treatments import TreatmentsPage
from gui.plan.view import KeptPage, PlanState

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["PlanPages"]


class PlanPages(QStackedWidget):
    """Four steps of a draft; what is kept, its places, printing, sowing."""

    edited = Signal(object)  # Draft
    kind_said = Signal(str, str)  # medium, kind
    drawing_wanted = Signal(str)  # reason
    places_entered = Signal(object, str)  # the order on each shelf, how it was drawn
    reason_edited = Signal()
    done = Signal()  # Enter in a field does the main thing

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.question, self.treatments = QuestionPage(self), TreatmentsPage(self)
        self.trays, self.blocks = TraysPage(self), BlocksPage(self)
        self.places, self.print_page = PlacesPage(self), PrintPage(self)
        self.sow, self.kept = SowPage(self), KeptPlanPage(self)
        self.steps = (self.question, self.treatments, self.trays, self.blocks)
        for page in self.steps:
            page.edited.connect(self.edited)
        self.treatments.kind_said.connect(self.kind_said)
        self.places.drawing_wanted.connect(self.drawing_wanted)
        self.places.places_entered.connect(self.places_entered)
        self.places.reason.textChanged.connect(self.reason_edited)
        for field in (self.question.name, self.question.own_words):
            field.returnPressed.connect(self.done)
        self.places.done.connect(self.done)
        for part in (*self.steps, self.places, self.print_page, self.sow, self.kept):
            self.addWidget(part)

    def show_state(self, state: PlanState, book: "Book | None") -> None:
        """Every page as the state wants it, and the right one in front."""
        for page in (*self.steps, self.places, self.sow, self.kept):
            page.show_state(state)
        if state.draft is not None:
            self.setCurrentIndex(state.step)
            return
        if state.page is KeptPage.PRINT:
            self.print_page.show_trial(state, book)
        in_front: dict[KeptPage, QWidget] = {
            KeptPage.PLACES: self.places,
            KeptPage.PRINT: self.print_page,
            KeptPage.SOW: self.sow,
        }
        self.setCurrentWidget(in_front.get(state.page, self.kept))
