"""Print page: what is printed for a trial, on which paper, as it will look.

In    a kept plan with drawn places
Out   pages of what is chosen
Not   what stands on the sheets (`sheets.py`), saving them (`screen.py`)
"""

from typing import TYPE_CHECKING

from PySide6.QtCore import QT_TRANSLATE_NOOP, QCoreApplication, Slot
from PySide6.QtWidgets import QCheckBox, QComboBox, QHBoxLayout, QVBoxLayout, QWidget

from data.errors import BookError
from gui.paper.pages import Page, Paper
from gui.paper.preview import PagePreview
from gui.plan.page import Roll
from gui.plan.view import PlanState
from gui.sheets import Printed, SheetKind, pages_for, printed_of_trial
from gui.style.palette import Space
from gui.style.words import heading, soft

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["PrintPage"]

ABOUT = {
    SheetKind.SOWING: str(QT_TRANSLATE_NOOP("PrintPage", "Sowing sheet: what goes into which tray")),
    SheetKind.MAP: str(QT_TRANSLATE_NOOP("PrintPage", "Bench map: where each tray stands")),
    SheetKind.STATION: str(
        QT_TRANSLATE_NOOP("PrintPage", "Station cards: once, for the place where you take photos")
    ),
    SheetKind.TAGS: str(
        QT_TRANSLATE_NOOP("PrintPage", "Tags: one for each tray, so that photos find their tray")
    ),
    SheetKind.READINGS: str(QT_TRANSLATE_NOOP("PrintPage", "Reading sheets: blank, without the media")),
}


class PrintPage(QWidget):
    """The last step."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._printed: Printed | None = None
        self._of: tuple[Book | None, bool] = (None, False)  # the book, and whether it is its first trial
        half = QWidget(self)
        left = QVBoxLayout(half)
        left.setContentsMargins(0, 0, Space.S, 0)  # a bar may stand beside it
        left.setSpacing(Space.S)
        left.addWidget(heading(self.tr("What do you want to print?"), self))
        self.kinds: dict[SheetKind, QCheckBox] = {}
        for kind in SheetKind:
            box = QCheckBox(QCoreApplication.translate("PrintPage", ABOUT[kind]), half)
            box.setChecked(kind is not SheetKind.STATION)
            box.toggled.connect(self._chosen)
            self.kinds[kind] = box
            left.addWidget(box)
        self.paper = QComboBox(self)
        self.paper.setAccessibleName(self.tr("Paper"))
        for paper in Paper:
            self.paper.addItem(str(paper), str(paper))
        self.paper.activated.connect(self._chosen)
        row = QHBoxLayout()
        row.addWidget(self.paper)
        row.addStretch(1)
        left.addLayout(row)
        self.words = soft("", self)
        left.addWidget(self.words)
        left.addStretch(1)
        self.preview = PagePreview(self)
        across = QHBoxLayout(self)
        across.setContentsMargins(0, Space.S, 0, 0)
        across.setSpacing(Space.XL)
        across.addWidget(Roll(half, self), 4)
        across.addWidget(self.preview, 5)

    def show_trial(self, state: PlanState, book: "Book | None") -> None:
        """The sheets of the trial that is shown; whoever sows for the first time needs the cards, too."""
        trial = state.trial
        draw = None if trial is None else trial.draw
        printed = None
        if book is not None and trial is not None and draw is not None:
            try:
                printed = printed_of_trial(book, trial.kept.plan, draw.draw.places)
            except (BookError, KeyError):
                printed = None
        if self._of != (book, state.reading.is_first):
            self._of = (book, state.reading.is_first)
            self.kinds[SheetKind.STATION].setChecked(state.reading.is_first)
        self.show_printed(printed)

    def show_printed(self, printed: Printed | None) -> None:
        """What there is to print; without a plan only tags and cards."""
        self._printed = printed
        planned = printed is not None and printed.plan is not None
        for kind, box in self.kinds.items():
            box.setVisible(planned or kind in (SheetKind.TAGS, SheetKind.STATION))
        self._chosen()

    @property
    def chosen_paper(self) -> Paper:
        """The paper."""
        return Paper(self.paper.currentData())

    @property
    def title(self) -> str:
        """Of the file."""
        return "" if self._printed is None else self._printed.title

    def pages(self) -> tuple[Page, ...]:
        """What is chosen."""
        if self._printed is None:
            return ()
        chosen = {kind for kind, box in self.kinds.items() if box.isChecked()}
        return pages_for(self._printed, chosen, self.chosen_paper)

    @Slot()
    def _chosen(self) -> None:
        pages = self.pages()
        self.preview.show_pages(pages, self.chosen_paper)
        count = self.tr("1 page.") if len(pages) == 1 else self.tr("{n} pages.").format(n=len(pages))
        hint = self.tr("Print at 100 % (no fitting to the page), and measure the bar at the foot of a page.")
        self.words.setText(f"{count} {hint}")
