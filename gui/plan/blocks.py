"""Blocks page: which shelves the trial may use, when it is sown, and what it takes.

In    the draft
Out   shelves with their places, first day of sowing, days between rounds
Not   which tray stands where (`places.py`)
"""

from dataclasses import replace

from PySide6.QtCore import QDate, Slot
from PySide6.QtWidgets import (
    QComboBox,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from data.plan.blocks import ShelfPlaces
from data.plan.draft import layout_of
from gui.controls.dayfield import DayField
from gui.controls.numberfield import NumberField
from gui.language.spoken import DAY, day_words, spoken
from gui.plan.page import PlanPage
from gui.plan.reading import PLACES
from gui.plan.view import PlanState
from gui.style.palette import Space
from gui.style.words import heading, soft, wrapped

__all__ = ["BlocksPage"]

MOST_NAMED = 14  # blocks that are listed; the rest is counted


class BlocksPage(PlanPage):
    """The fourth step."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.rows: list[tuple[QLineEdit, NumberField, QComboBox, QPushButton]] = []
        self._showing = False
        self.put_side_by_side(self._make_shelves(), self._make_days(), (5, 4))
        self.column.addStretch(1)

    def _make_shelves(self) -> QVBoxLayout:
        column = QVBoxLayout()
        column.setSpacing(Space.S)
        column.addWidget(heading(self.tr("On which shelves?"), self.body))
        column.addWidget(
            soft(
                self.tr(
                    "Trays that stand on one shelf and are sown on one day make a block. Every block holds "
                    "every treatment, so that light and warmth of a shelf favour none."
                ),
                self.body,
            )
        )
        self._grid = QGridLayout()
        self._grid.setHorizontalSpacing(Space.S)
        self._grid.setVerticalSpacing(Space.S)
        self._grid.setColumnStretch(4, 1)
        for number, words in enumerate(
            (self.tr("Shelf"), self.tr("Places for trays"), self.tr("Window or draught"))
        ):
            self._grid.addWidget(soft(words, self.body), 0, number)
        column.addLayout(self._grid)
        self.add = QPushButton(self.tr("Another shelf"), self.body)
        self.add.clicked.connect(self._add_shelf)
        foot = QHBoxLayout()
        foot.addWidget(self.add)
        foot.addStretch(1)
        column.addLayout(foot)
        self.in_use = wrapped("", self.body, "notice")
        column.addWidget(self.in_use)
        column.addStretch(1)
        return column

    def _make_days(self) -> QVBoxLayout:
        column = QVBoxLayout()
        column.setSpacing(Space.S)
        column.addWidget(heading(self.tr("When?"), self.body))
        self.begins = DayField(self.body)
        self.begins.setAccessibleName(self.tr("First day of sowing"))
        self.begins.dateChanged.connect(self._begins_set)
        self.every = NumberField(
            self.tr("Days from one sowing to the next"), self.tr("days"), least=1, most=90, parent=self.body
        )
        self.every.changed.connect(self._every_set)
        self._every_word = QLabel(self.tr("Next round after"), self.body)
        grid = QGridLayout()
        grid.setHorizontalSpacing(Space.M)
        grid.addWidget(QLabel(self.tr("First sowing"), self.body), 0, 0)
        grid.addWidget(self.begins, 0, 1)
        grid.addWidget(self._every_word, 1, 0)
        grid.addWidget(self.every, 1, 1)
        grid.setColumnStretch(2, 1)
        column.addLayout(grid)
        column.addWidget(heading(self.tr("What it takes"), self.body))
        self.costs = wrapped("", self.body)
        self.blocks = soft("", self.body)
        column.addWidget(self.costs)
        column.addWidget(self.blocks)
        column.addStretch(1)
        return column

    def show_state(self, state: PlanState) -> None:
        """Shelves, days, cost and the blocks that follow."""
        super().show_state(state)
        draft = state.draft
        if draft is None:
            return
        self._showing = True
        self._show_shelves(draft.shelves)
        self.begins.setDate(QDate(draft.begins.year, draft.begins.month, draft.begins.day))
        self.every.set(draft.round_days)
        self.in_use.setText(state.shelves_in_use)
        self.in_use.setVisible(bool(state.shelves_in_use))
        self._showing = False
        layout = layout_of(draft)
        self.every.setEnabled(layout.rounds > 1)
        self._every_word.setEnabled(layout.rounds > 1)
        self.costs.setText("\n".join(state.costs) or self.tr("This stands here once nothing is lacking."))
        names = [
            self.tr("{block}: {day}").format(block=spoken(block.name), day=day_words(block.sow_on, DAY))
            for block in layout.blocks[:MOST_NAMED]
        ]
        if len(layout.blocks) > MOST_NAMED:
            names.append(self.tr("and {n} more").format(n=len(layout.blocks) - MOST_NAMED))
        self.blocks.setText("\n".join(names))

    def _show_shelves(self, shelves: tuple[ShelfPlaces, ...]) -> None:
        while len(self.rows) < len(shelves):
            self._make_row()
        for number, parts in enumerate(self.rows):
            for part in parts:
                part.setVisible(number < len(shelves))
        for shelf, (name, places, window, _) in zip(shelves, self.rows, strict=False):
            if name.text() != shelf.name:
                name.setText(shelf.name)
            places.set(shelf.places)
            window.setCurrentIndex(max(0, window.findData(shelf.window_end)))

    def _make_row(self) -> None:
        line = len(self.rows) + 1
        name = QLineEdit(self.body)
        name.setAccessibleName(self.tr("Name of shelf {n}").format(n=line))
        name.setFixedWidth(self.fontMetrics().averageCharWidth() * 14)
        name.editingFinished.connect(self._edited)
        places = NumberField(
            self.tr("Places on shelf {n}").format(n=line), least=1, most=60, parent=self.body
        )
        places.changed.connect(self._edited)
        window = QComboBox(self.body)
        window.setAccessibleName(self.tr("Window of shelf {n}").format(n=line))
        for words, end in (
            (self.tr("at place 1"), "first"),
            (self.tr("at the last place"), "last"),
            (self.tr("at neither end"), ""),
        ):
            window.addItem(words, end)
        window.activated.connect(self._edited)
        less = QPushButton(self.tr("Leave out"), self.body)
        less.setAccessibleName(self.tr("Leave out shelf {n}").format(n=line))
        less.clicked.connect(self._left_out)
        self.rows.append((name, places, window, less))
        for number, part in enumerate((name, places, window, less)):
            self._grid.addWidget(part, line, number)

    # --- editing

    @Slot()
    def _edited(self) -> None:
        if self._showing or self._draft is None:
            return
        shelves = tuple(
            ShelfPlaces(
                name=name.text().strip() or old.name,
                places=round(places.value),
                window_end=window.currentData(),
            )
            for old, (name, places, window, _) in zip(self._draft.shelves, self.rows, strict=False)
        )
        self.change(shelves=shelves)

    @Slot()
    def _left_out(self) -> None:
        for number, (_, _, _, less) in enumerate(self.rows):
            if less is self.sender() and self._draft is not None:
                shelves = self._draft.shelves
                self.change(shelves=(*shelves[:number], *shelves[number + 1 :]))

    @Slot()
    def _add_shelf(self) -> None:
        if self._draft is None:
            return
        taken = {shelf.name for shelf in self._draft.shelves}
        name = next(chr(code) for code in range(ord("A"), 0x110000) if chr(code) not in taken)
        last = self._draft.shelves[-1] if self._draft.shelves else ShelfPlaces(name=name, places=PLACES)
        self.change(shelves=(*self._draft.shelves, replace(last, name=name)))

    @Slot(QDate)
    def _begins_set(self, day: QDate) -> None:
        if not self._showing:
            self.change(begins=day.toPython())

    @Slot(float)
    def _every_set(self, value: float) -> None:
        self.change(round_days=round(value))
