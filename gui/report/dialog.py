"""Report dialog: choose trial, version and paper, look at the pages, save as PDF or HTML.

In    the book, where work is done
Out   the file where the person wants it; a sentence for the foot
Not   reading and drawing (`desk.py`), the content (`data/report/reading.py`)
"""

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Slot
from PySide6.QtGui import QImage, QPixmap, QResizeEvent
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QProgressBar,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from gui.controls.choosing import ask_new_file
from gui.controls.form import open_within_screen
from gui.controls.telling import tell
from gui.controls.timeleft import seconds_left
from gui.language.plainhint import plain_hint
from gui.paper.pages import Paper
from gui.report.desk import PAGE_WIDTH, Looked, ReportDesk, Wanted
from gui.style.palette import Space, set_role
from gui.style.words import wrapped
from gui.work import Work

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["ReportDialog"]

KINDS = "PDF (*.pdf);;HTML (*.html)"
ROUND_THE_PAGE = 80  # px: edges of the dialog, the scroll bar
ROUND_A_NAME = 60  # px: edges of a box, its arrow


class ReportDialog(QDialog):
    """What goes into the report above, its pages below."""

    _apart: bool | None = None  # whether trials have a row of their own; None before the first laying out

    def __init__(self, book: "Book", work: Work, parent: QWidget | None = None, trial: str = "") -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Report"))
        self.told = self._words = ""
        self.desk = ReportDesk(book, work, self)
        self.desk.looked.connect(self._show_pages)
        self.desk.saved.connect(self._saved)
        self.desk.trouble.connect(self._trouble)
        self.desk.progressed.connect(self._progressed)
        self.trial = self._box(self.tr("Trial"), [(name, name) for name in reversed(book.trials())])
        self.version = self._box(
            self.tr("Version"),
            [(self.tr("Full, for an inspector"), False), (self.tr("Two pages, for a customer"), True)],
        )
        longest = max(len(self.version.itemText(at)) for at in range(self.version.count()))
        self.version.setMinimumContentsLength(longest)  # the name of a trial may be cut, this not
        self.paper = self._box(self.tr("Paper"), [(str(paper), paper) for paper in Paper])
        at = self.trial.findData(trial)
        self.trial.setCurrentIndex(max(at, 0))
        self._lay_out()
        self.trial.currentIndexChanged.connect(self._show_name)
        for box in (self.trial, self.version, self.paper):
            box.currentIndexChanged.connect(self.look)
        self.setMinimumWidth(PAGE_WIDTH + ROUND_THE_PAGE)
        self._show_name()
        open_within_screen(self, 960 + self._lacking(), 660)
        self.look()

    def _box(self, name: str, items: list[tuple[str, object]]) -> QComboBox:
        box = QComboBox(self)
        box.setAccessibleName(name)
        box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        box.setMinimumContentsLength(6)
        for words, data in items:
            box.addItem(words, data)
        return box

    def _lacking(self) -> int:
        """By how much the dialog has to be wider for the longest name of a trial to be read whole, px."""
        return max(0, self._beside_each_other() - 960)

    def _beside_each_other(self) -> int:
        """How wide the dialog is with the three boxes in one row and the longest name whole, px."""
        wide = self.trial.fontMetrics().horizontalAdvance
        longest = max((wide(self.trial.itemText(at)) for at in range(self.trial.count())), default=0)
        beside = self.version.sizeHint().width() + self.paper.sizeHint().width()
        return longest + ROUND_A_NAME + beside + 2 * Space.XL + 2 * Space.M

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Where the names of trials have no room beside the rest they have a row of their own."""
        super().resizeEvent(event)
        self._place_choices(apart=self._beside_each_other() > self.width())

    def _place_choices(self, *, apart: bool) -> None:
        if apart == self._apart:
            return
        self._apart = apart
        places = ((0, 0, 2), (2, 0, 1), (2, 1, 1)) if apart else ((0, 0, 1), (0, 1, 1), (0, 2, 1))
        for (label, box), (row, column, columns) in zip(self._choices, places, strict=True):
            self._grid.addWidget(label, row, column, 1, columns)
            self._grid.addWidget(box, row + 1, column, 1, columns)
        for column, room in enumerate((2, 1, 0) if apart else (3, 2, 1)):
            self._grid.setColumnStretch(column, room)

    @Slot()
    def _show_name(self) -> None:
        self.trial.setToolTip(plain_hint(self.trial.currentText()))

    def _lay_out(self) -> None:
        self._grid = QGridLayout()
        self._grid.setHorizontalSpacing(Space.M)
        self._grid.setVerticalSpacing(Space.XS)
        self._choices = [
            (QLabel(box.accessibleName(), self), box) for box in (self.trial, self.version, self.paper)
        ]
        for label, box in self._choices:
            label.setBuddy(box)
        self._place_choices(apart=False)
        self.pages = QScrollArea(self)
        self.pages.setWidgetResizable(True)
        self.pages.setAccessibleName(self.tr("Preview of the pages"))
        set_role(self.pages, "read")
        self.trouble = wrapped("", self, "alarm")
        self.trouble.hide()
        column = QVBoxLayout(self)
        column.setContentsMargins(Space.XL, Space.L, Space.XL, Space.L)
        column.setSpacing(Space.M)
        column.addLayout(self._grid)
        column.addWidget(self.pages, 1)
        column.addWidget(self.trouble)
        column.addLayout(self._lay_out_foot())

    def _lay_out_foot(self) -> QHBoxLayout:
        self.about = wrapped("", self, "soft")
        self.bar = QProgressBar(self)
        self.bar.setAccessibleName(self.tr("Progress"))
        self.bar.setTextVisible(False)
        self.close_button = QPushButton(self.tr("Close"), self)
        self.close_button.clicked.connect(self.reject)
        self.save = QPushButton(self.tr("Save as PDF or HTML..."), self)
        set_role(self.save, "main")
        self.save.setDefault(True)
        self.save.clicked.connect(self._ask)
        row = QHBoxLayout()
        row.setSpacing(Space.M)
        row.addWidget(self.about, 2)
        row.addWidget(self.bar, 1)
        row.addWidget(self.close_button)
        row.addWidget(self.save)
        return row

    @property
    def wanted(self) -> Wanted:
        """What is chosen."""
        return Wanted(
            trial=self.trial.currentData(),
            short=bool(self.version.currentData()),
            paper=Paper(self.paper.currentData()),
        )

    @Slot()
    def look(self) -> None:
        """Read and lay out what is chosen, in the background."""
        self._busy(self.tr("The pages are being laid out."))
        self.desk.look(self.wanted)

    def _busy(self, words: str) -> None:
        self._words = words
        self.about.setText(words)
        self.trouble.hide()
        self.bar.setRange(0, 0)
        self.bar.show()
        self.close_button.setText(self.tr("Cancel"))

    def _rest(self) -> None:
        self.bar.hide()
        self.close_button.setText(self.tr("Close"))

    @Slot(int, int)
    def _progressed(self, done: int, whole: int) -> None:
        self.bar.setRange(0, max(whole, 1))
        self.bar.setValue(done)
        job = self.desk.job
        left = None if job is None else seconds_left(done, whole, job.seconds())
        if left is not None:
            words = self.tr("{doing} About {seconds} s left.")
            self.about.setText(words.format(doing=self._words, seconds=left))

    @Slot(object)
    def _show_pages(self, looked: Looked) -> None:
        self._rest()
        inner = QWidget(self.pages)
        column = QVBoxLayout(inner)
        column.setSpacing(Space.M)
        for number, image in enumerate(looked.pages, 1):
            column.addWidget(self._page(image, number))
        column.addStretch(1)
        self.pages.setWidget(inner)
        if len(looked.pages) == 1:
            self.about.setText(self.tr("One page."))
        else:
            self.about.setText(self.tr("{n} pages.").format(n=len(looked.pages)))

    def _page(self, image: QImage, number: int) -> QLabel:
        label = QLabel(self.pages)
        label.setPixmap(QPixmap.fromImage(image))
        label.setAlignment(Qt.AlignmentFlag.AlignHCenter)
        label.setAccessibleName(self.tr("Page {n}").format(n=number))
        return label

    @Slot()
    def _ask(self) -> None:
        name = f"{self.wanted.trial} {self.tr('report')}.pdf"
        path = ask_new_file(self, self.tr("Save the report"), name, KINDS)
        if path is not None:
            self.save_to(path)

    def save_to(self, path: Path) -> None:
        """Write what is chosen, in the background; the ending says PDF or HTML."""
        self._busy(self.tr("The report is being written."))
        self.desk.save(self.wanted, path)

    @Slot(object)
    def _saved(self, path: Path) -> None:
        self._rest()
        self.told = self.tr("Saved: {file}").format(file=path)
        self.accept()

    @Slot(str)
    def _trouble(self, words: str) -> None:
        self._rest()
        self.about.clear()
        tell(self.trouble, words)
        self.trouble.show()

    def done(self, result: int) -> None:
        """Leaving ends what still runs; no half file stays."""
        self.desk.stop()
        super().done(result)
