"""Margin book: the margin of a trial that has no plan, kept with its date.

In    the name of a trial, points of the canopy score
Out   the same, kept; a later margin takes its place with its own date
Not   the margin of a plan (`planbook.py`), what a verdict says of the date (`verdict/beforehand.py`)
"""

from data.chapters.planreader import PlanReader
from data.errors import MarginOfPlan, NoLongerThere
from data.tables import trialrows
from data.tables.rows import time_text

__all__ = ["MOST_POINTS", "MarginBook"]

MOST_POINTS = 100.0  # by more no two canopy scores differ


class MarginBook(PlanReader):
    """Margins without a plan."""

    def set_margin(self, trial: str, points: float) -> None:
        """Set how much lower a canopy score still counts as good; one step of undo.

        The same margin again keeps its date.

        Raises
        ------
        NoLongerThere
            If there is no such trial.
        MarginOfPlan
            If the trial has a plan: its margin is changed there, with a reason.
        ValueError
            If the margin does not lie above 0 and up to 100 points.
        """
        if not 0.0 < points <= MOST_POINTS:
            raise ValueError(f"a margin lies above 0 and up to {MOST_POINTS:g} points; got {points}")
        row = self._row(trialrows.TRIAL, trial=trial)
        if row is None:
            raise NoLongerThere(self.folder)
        if self.plans(trial):
            raise MarginOfPlan(self.folder, trial=trial)
        if row["margin_points"] == points:
            return
        values = {"margin_points": float(points), "margin_set_at": time_text(self.now())}
        self._change(
            f"margin of {trial}: {points:g} points",
            lambda recorder: recorder.update("trial", row["id"], values),
        )
