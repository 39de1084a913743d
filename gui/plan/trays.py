"""Trays page: how many trays of each, and what they can show.

In    the draft, its chances
Out   trays of each, the spread that is assumed
Not   reckoning the chances (`planview.chances_of`)
"""

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from data.plan.draft import GUESS_SOURCE, unit_of
from data.trial import Spread
from gui.charts import Line, LineChart
from gui.controls.numberfield import NumberField
from gui.language.spoken import spoken
from gui.plan.page import PlanPage
from gui.plan.view import WANTED, Chances, PlanState
from gui.style.palette import Space
from gui.style.words import heading, soft, wrapped

__all__ = ["TraysPage"]


class TraysPage(PlanPage):
    """The third step."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.column.addWidget(heading(self.tr("How many trays of each, on each crop?"), self.body))
        self.trays = NumberField(
            self.tr("Trays of each"), self.tr("trays"), least=1, most=60, parent=self.body
        )
        self.trays.changed.connect(self._trays_set)
        self.spread = NumberField(self.tr("Spread"), most=100, step=0.5, least=0.5, parent=self.body)
        self.spread.changed.connect(self._spread_set)
        self.learn = QPushButton(self.tr("Take it from my trays"), self.body)
        self.learn.clicked.connect(self._learn)
        self.sentences = wrapped("", self.body)
        self.spread_words = soft("", self.body)
        self.chart = LineChart(self.tr("Chance to show it; 80 % is usual"), self.body)
        self.chart.setAccessibleName(self.tr("Chance by number of trays"))
        across = QHBoxLayout()
        across.setSpacing(Space.XL)
        across.addLayout(self._make_left(), 4)
        across.addWidget(self.chart, 5)
        self.column.addLayout(across, 1)
        self._learned: Spread | None = None

    def _make_left(self) -> QVBoxLayout:
        """The two numbers, and below them what they mean."""
        grid = QGridLayout()
        grid.setHorizontalSpacing(Space.M)
        grid.setVerticalSpacing(Space.S)
        rows = (
            (self.tr("Trays of each"), self.trays),
            (self.tr("Trays of one kind lie apart by"), self.spread),
        )
        for row, (words, field) in enumerate(rows):
            grid.addWidget(wrapped(words, self.body), row, 0)
            grid.addWidget(field, row, 1)
        grid.addWidget(self.learn, 2, 1)
        left = QVBoxLayout()
        left.setSpacing(Space.M)
        left.addLayout(grid)
        left.addWidget(self.sentences)
        left.addWidget(self.spread_words)
        left.addStretch(1)
        return left

    def show_state(self, state: PlanState) -> None:
        """The numbers of the draft; curves once they are reckoned."""
        super().show_state(state)
        draft = state.draft
        if draft is None:
            return
        self.trays.set(draft.trays)
        self.spread.set(draft.spread.sd)
        self.spread.unit.setText(spoken(unit_of(draft.measure)))
        self._learned = state.reading.spreads.get(draft.measure)
        self.learn.setVisible(self._learned is not None and self._learned != draft.spread)
        chances = state.chances
        if chances is None:
            self.sentences.setText(self.tr("Choose crops and media first: then the chances stand here."))
            self.spread_words.clear()
            self.chart.show_lines((), chosen=None, wanted=None, words="", across="")
            return
        late = chances.draft != draft
        self.sentences.setEnabled(not late)
        self.sentences.setText("\n\n".join(chances.sentences))
        self.spread_words.setText(chances.spread)
        self._show_chart(chances, draft.trays)

    def _show_chart(self, chances: Chances, trays: int) -> None:
        names = {
            0.7: self.tr("closer together"),
            1.0: self.tr("as assumed"),
            1.4: self.tr("further apart"),
        }
        across = self.tr("Sets of shelves") if chances.of_shelves else self.tr("Trays of each, on each crop")
        lines = [Line(name=names[times], points=points) for times, points in chances.curves]
        self.chart.show_lines(
            lines, chosen=trays, wanted=WANTED, words=" ".join(chances.sentences), across=across
        )

    @Slot(float)
    def _trays_set(self, value: float) -> None:
        self.change(trays=round(value))

    @Slot(float)
    def _spread_set(self, value: float) -> None:
        self.change(spread=Spread(sd=value, source=GUESS_SOURCE))

    @Slot()
    def _learn(self) -> None:
        if self._learned is not None:
            self.change(spread=self._learned)
