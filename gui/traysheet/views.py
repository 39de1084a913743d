"""Sheet views: the ways to look at a tray, one in front of the others, and the buttons that choose.

In    which one is wanted, by button or key
Out   `view_changed`; the page in front is shown the state
Not   the pages themselves
"""

from enum import StrEnum
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QPushButton, QStackedWidget, QWidget

from gui.controls.flow import Flow
from gui.style.palette import set_role
from gui.traysheet.comparepage import ComparePage
from gui.traysheet.conditionspage import ConditionsPage
from gui.traysheet.growthpage import GrowthPage
from gui.traysheet.mendpage import MendPage
from gui.traysheet.page import SheetPage
from gui.traysheet.picturepage import PicturePage
from gui.traysheet.view import TrayState
from gui.work import Work

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["SheetViews", "View", "ViewBar"]


class View(StrEnum):
    """What can stand in front."""

    PICTURE = "picture"
    TWO_DAYS = "two days"
    MEND = "mend"
    GROWTH = "growth"
    CONDITIONS = "conditions"


KEYS = {
    Qt.Key.Key_P: View.PICTURE,
    Qt.Key.Key_D: View.TWO_DAYS,
    Qt.Key.Key_M: View.MEND,
    Qt.Key.Key_G: View.GROWTH,
    Qt.Key.Key_C: View.CONDITIONS,
}
WITH_DAYS = frozenset({View.PICTURE, View.TWO_DAYS})  # the strip of days stands below these


class ViewBar(QWidget):
    """A button a view."""

    chosen = Signal(object)  # View

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        row = self._row = Flow(self)
        self.buttons: dict[View, QPushButton] = {}
        for view, words, about in (
            (View.PICTURE, self.tr("Picture"), self.tr("The picture of the day with its layers (P)")),
            (View.TWO_DAYS, self.tr("Two days"), self.tr("Two days, and a line that wipes between them (D)")),
            (View.MEND, self.tr("Mend"), self.tr("Mend the canopy with a brush (M)")),
            (View.GROWTH, self.tr("Growth"), self.tr("Growth, readings and events; note something (G)")),
            (View.CONDITIONS, self.tr("Conditions"), self.tr("How it grows, to be corrected (C)")),
        ):
            button = QPushButton(words, self)
            button.setCheckable(True)
            button.setToolTip(about)
            button.setProperty("view", str(view))
            set_role(button, "switch")
            button.clicked.connect(self._clicked)
            row.addWidget(button)
            self.buttons[view] = button
        self.show_view(View.PICTURE)

    def show_view(self, view: View) -> None:
        """Press its button. (Each is a stop of Tab: a group of Qt's would let Tab reach one of them only.)"""
        for one, button in self.buttons.items():
            button.setChecked(one is view)

    def wide(self) -> int:
        """Of all buttons in one row, px."""
        return self._row.sizeHint().width()

    @Slot()
    def _clicked(self) -> None:
        button = self.sender()
        if isinstance(button, QPushButton):
            button.setChecked(True)
            self.chosen.emit(View(str(button.property("view"))))


class SheetViews(QStackedWidget):
    """The pages; what they say goes up through here."""

    view_changed = Signal(object)  # View
    book_changed = Signal()
    told = Signal(str)
    troubled = Signal(str)

    def __init__(self, work: Work, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.picture = PicturePage(work, self)
        self.two_days = ComparePage(work, self)
        self.mend = MendPage(work, self)
        self.growth = GrowthPage(work, self)
        self.conditions = ConditionsPage(work, self)
        self._state: TrayState | None = None
        self.pages: dict[View, SheetPage] = {
            View.PICTURE: self.picture,
            View.TWO_DAYS: self.two_days,
            View.MEND: self.mend,
            View.GROWTH: self.growth,
            View.CONDITIONS: self.conditions,
        }
        for page in self.pages.values():
            page.book_changed.connect(self.book_changed)
            page.told.connect(self.told)
            page.troubled.connect(self.troubled)
            self.addWidget(page)

    @property
    def view(self) -> View:
        """What is in front."""
        return next(view for view, page in self.pages.items() if page is self.currentWidget())

    @property
    def page(self) -> SheetPage:
        """The page in front."""
        return self.pages[self.view]

    def unkept(self) -> str:
        """What was painted or typed and not kept, in a sentence; "" where nothing was."""
        words = (
            (self.mend.desk.strokes_wait, self.tr("What was painted on a photo is not kept.")),
            (self.conditions.is_typed, self.tr("Conditions that were typed are not kept.")),
        )
        return " ".join(sentence for lost, sentence in words if lost)

    def open_book(self, book: "Book | None") -> None:
        """Another book."""
        self._state = None
        for page in self.pages.values():
            page.open_book(book)

    def show_state(self, state: TrayState) -> None:
        """Show this in the page in front; the others follow when they come to the front."""
        self._state = state
        self.page.show_state(state)

    def go_to(self, view: View) -> None:
        """Bring a page to the front."""
        if view is self.view:
            return
        self.setCurrentWidget(self.pages[view])
        if self._state is not None:
            self.page.show_state(self._state)
        self.view_changed.emit(view)

    def redress(self) -> None:
        """Another scheme or text size."""
        for page in self.pages.values():
            page.redress()
