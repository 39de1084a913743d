"""Plan keeper: what the grower decides about a trial, done in the book: kept, drawn, entered, sown.

In    a `PlanState`, a reason, a day
Out   `was_done` with the plans as the book has them then, what to show of them, and a sentence
Not   asking the book (`desk.py`), showing it (`screen.py`)
"""

from dataclasses import dataclass
from datetime import date

from PySide6.QtCore import QObject, Signal

from data.plan.drawing import Filled
from gui.plan.desk import PlanDesk
from gui.plan.reading import PlanReading
from gui.plan.view import KeptPage, PlanState

__all__ = ["Done", "PlanKeeper"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Done:
    """What was done, and where one goes on."""

    reading: PlanReading
    trial: str
    page: KeptPage
    words: str


class PlanKeeper(QObject):
    """Each takes a few milliseconds; trouble is told by the desk, and nothing is done then."""

    was_done = Signal(object)  # Done

    def __init__(self, desk: PlanDesk, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._desk = desk

    def keep(self, state: PlanState, why: str) -> None:
        """Keep the draft as a plan, or as its next version, and draw its places."""
        draft, plan = state.draft, state.plan
        if draft is not None and plan is not None:
            words = self.tr("{trial}: the plan is kept, the places are drawn.").format(trial=plan.trial)
            self._tell(self._desk.keep(draft, plan, why), plan.trial, words)

    def draw(self, state: PlanState, why: str = "") -> None:
        """Draw the places of the kept plan, or draw them again."""
        trial = state.trial
        if trial is not None:
            first = self.tr("The places are drawn.")
            again = self.tr("The places are drawn again; the drawing before is kept.")
            drawn = self._desk.draw(trial.kept.id, why)
            self._tell(drawn, state.shown, first if trial.draw is None else again)

    def enter(self, state: PlanState, filled: Filled, why: str) -> None:
        """Keep places that were drawn on paper."""
        trial = state.trial
        if trial is not None:
            words = self.tr("The places are kept as they were drawn on paper.")
            self._tell(self._desk.enter(trial.kept.id, filled, why), state.shown, words)

    def sow(self, state: PlanState, day: date) -> None:
        """Put the trays of the next round on the bench."""
        trial = state.trial
        if trial is not None and trial.draw is not None:
            words = self.tr("{n} trays stand on the bench.").format(n=trial.next_round)
            self._tell(self._desk.sow(trial.draw.id, day), state.shown, words, KeptPage.SOW)

    def _tell(
        self, reading: PlanReading | None, trial: str, words: str, page: KeptPage = KeptPage.PLACES
    ) -> None:
        if reading is not None:
            self.was_done.emit(Done(reading=reading, trial=trial, page=page, words=words))
