"""Margin ask: how much lower than the trusted medium a canopy score still counts as good, without a plan.

In    a `VerdictState` of a trial without a plan
Out   `wanted` with the trial and the points
Not   keeping it (`desk.py`), the margin of a plan (`plan/question.py`), what the verdict says of its date
      (`data/verdict/beforehand.py`)
"""

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QDialog, QLabel, QPushButton, QWidget

from data.chapters.marginbook import MOST_POINTS
from data.trial import MeasureKind
from gui.answer.view import VerdictState
from gui.controls.form import fields, fit, lay_out
from gui.controls.numberfield import NumberField
from gui.style.palette import set_role
from gui.style.words import wrapped

__all__ = ["MarginAsk"]

STEP = 0.5


class MarginAsk(QDialog):
    """One number."""

    wanted = Signal(str, float)

    def __init__(self, state: VerdictState, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._trial = state.reading.trial
        self.setWindowTitle(self.tr("Margin"))
        title = QLabel(self.tr("How much less would you still call as good?"), self)
        set_role(title, "title")
        words = self.tr(
            "The margin of the canopy score of {trial}, for all its crops. It is kept with its date, and the "
            "verdict says whether it was set before sowing, before the photos that are compared, or after "
            "them. What is set after looking at the answer proves nothing. Yield and score by eye keep the "
            "usual margin unless the trial is planned."
        )
        about = wrapped(words.format(trial=state.reading.trial), self, "soft")
        self.points = NumberField(
            self.tr("Margin"), self.tr("points"), least=STEP, most=MOST_POINTS, step=STEP, parent=self
        )
        found = state.reading.verdict(state.crop, MeasureKind.SCORE)
        self.points.set(None if found is None else found.verdict.margin)
        form = fields()
        form.addRow(self.tr("&Margin"), self.points)
        trouble = QLabel(self)
        trouble.hide()
        leave = QPushButton(self.tr("Leave"), self)
        leave.clicked.connect(self.reject)
        self.keep = QPushButton(self.tr("Keep"), self)
        set_role(self.keep, "main")
        self.keep.setDefault(True)
        self.keep.clicked.connect(self._keep)
        lay_out(self, (title, about), form, trouble, (leave, self.keep), 80)
        fit(self)

    @Slot()
    def _keep(self) -> None:
        self.wanted.emit(self._trial, self.points.value)
        self.accept()
