"""Verdict: the place where a trial is answered, crop by crop and measure by measure.

In    the open book
Out   the sentence of each medium and all that stands behind it; charts as files; weights; rounds by eye
Not   the statistics (`data/verdict.py`), reading (`verdictdesk.py`), the page itself (`verdictpage.py`)
"""

from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QT_TRANSLATE_NOOP, Slot
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QStackedWidget, QVBoxLayout, QWidget

from data.trial import MeasureKind
from gui.choosing import ask_new_file
from gui.drawnchart import DrawnChart
from gui.palette import Space, set_role
from gui.screen import Screen
from gui.teaching import Teaching
from gui.verdictdesk import VerdictDesk
from gui.verdicthead import VerdictHead
from gui.verdictpage import VerdictPage
from gui.verdictreading import VerdictReading
from gui.verdictview import VerdictState, chosen_state
from gui.work import Work

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["Verdict"]

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
        self.empty = Teaching("verdict", self.tr("Plan a trial"), self)
        self.empty.pressed.connect(self._go_on)
        self._awaited = False
        self._whole = QStackedWidget(self)
        self._whole.addWidget(self._make_content())
        self._whole.addWidget(self.empty)
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
        self.page = VerdictPage(content)
        self.page.save_wanted.connect(self._save_chart)
        self.by_eye = QPushButton(self.tr("Score by eye"), content)
        set_role(self.by_eye, "main")
        self.by_eye.hide()
        foot = QHBoxLayout()
        foot.addStretch(1)
        foot.addWidget(self.by_eye)
        column = QVBoxLayout(content)
        column.setContentsMargins(Space.L, Space.M, Space.L, Space.M)
        column.setSpacing(Space.M)
        column.addWidget(self.head)
        column.addWidget(self.page, 1)
        column.addLayout(foot)
        return content

    # --- the book

    def open_book(self, book: "Book | None") -> None:
        """Another book: nothing of the one before."""
        self.desk.open(book)
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
        if self._whole.currentIndex():
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
        self.show_state(chosen_state(reading, self.state))
        if self._awaited and self.isVisible():
            self._awaited = False
            self._take_focus()

    # --- showing

    def show_state(self, state: VerdictState) -> None:
        """Everything that can be seen follows from the state."""
        self.state = state
        self._whole.setCurrentIndex(0 if state.found is not None else 1)
        if state.found is None:
            self._teach()
            return
        self.head.show_state(state)
        self.page.show_state(state)

    def _teach(self) -> None:
        reading = self.state.reading
        self.empty.button.setEnabled(self.book is not None)
        if not self.state.read:
            self.empty.teach(self.tr("The verdict is being read"), "")
        elif not reading.trials:
            self.empty.teach(
                self.tr("No trial yet, so there is no verdict"),
                self.tr(
                    "Here stands one sentence for each new medium: better than the one you trust, as good "
                    "within your margin, worse, or not shown, and what would settle it. It takes a trial "
                    "with at least two trays of each medium, photographed on the same day after sowing."
                ),
            )
        else:
            self.empty.teach(
                self.tr("No tray of {trial} is sown yet").format(trial=reading.trial),
                self.tr(
                    "Sow its trays in Plan and photograph them on the day that the plan names; the answer "
                    "comes here."
                ),
            )
        first = self.state.read and not reading.trials
        self.empty.button.setText(self.tr("Plan a trial") if first else self.tr("Go to the plan"))

    @Slot()
    def _go_on(self) -> None:
        self.place_wanted.emit("plan")

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
