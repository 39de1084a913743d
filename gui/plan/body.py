"""Plan body: head, steps, pages and foot of the place Plan, laid out.

In    a `PlanState`, the open book
Out   the parts, by name
Not   what their signals do (`screen.py`)
"""

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QApplication, QVBoxLayout, QWidget

from gui.controls.tabstops import order_stops, stops_of
from gui.plan.foot import PlanFoot
from gui.plan.pages import PlanPages
from gui.plan.row import PlanRow, StepRow
from gui.plan.view import PlanState
from gui.style.palette import Space

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["PlanBody"]


class PlanBody(QWidget):
    """From above to below, as one reads and as Tab goes."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.head, self.steps = PlanRow(self), StepRow(self)
        self.pages, self.foot = PlanPages(self), PlanFoot(self)
        self.pages.reason_edited.connect(self._show_foot)
        self._state = PlanState()
        column = self._column = QVBoxLayout(self)
        column.setContentsMargins(Space.L, Space.M, Space.L, Space.M)
        column.setSpacing(Space.M)
        column.addWidget(self.head)
        column.addWidget(self.steps)
        column.addWidget(self.pages, 1)
        column.addWidget(self.foot)

    def show_state(self, state: PlanState, book: "Book | None") -> None:
        """Everything that can be seen follows from the state."""
        before, focused = self.pages.currentWidget(), QApplication.focusWidget()
        self._state = state
        self.head.show_state(state)
        self.steps.show_state(state)
        self.pages.show_state(state, book)
        self._show_foot()
        order_stops(self._column)  # rows were made as they were needed
        page = self.pages.currentWidget()
        lost = focused is not None and self.isAncestorOf(focused) and not focused.hasFocus()
        if page is not None and page is not before and lost:  # with its page, or it cannot be pressed yet
            (_first_stop(page) or self.foot.forward).setFocus()

    def _show_foot(self) -> None:
        """The reason in the field decides whether one may go on."""
        self.foot.show_foot(self._state.foot(self.pages.places.why))


def _first_stop(page: QWidget) -> QWidget | None:
    """Where Tab comes first on a page; None where nothing can be typed or chosen on it.

    By the page's layouts: to follow the window's own chain of focus ended now and then in a crash later on.
    """
    stops = (part for part in stops_of(page) if part is not page)
    return next((part for part in stops if part.isEnabled() and part.isVisibleTo(page)), None)
