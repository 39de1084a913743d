"""Plan reader: the plans of trials, the drawings of their places and their trays, as the book has them.

In    a book; the name of a trial
Out   kept versions and drawings, oldest first; trays
Not   keeping plans (`planbook.py`), drawing and sowing (`drawbook.py`)
"""

from collections.abc import Iterable, Iterator
from contextlib import contextmanager
from datetime import datetime
from typing import TYPE_CHECKING

from data.chapters.traybook import TrayBook
from data.errors import BookIsNewer, NoLongerThere
from data.records import Tray
from data.tables import planrows
from data.tables.planrows import kept_draws, kept_plans
from data.tables.rows import time_text, tray_of

if TYPE_CHECKING:
    from data.plan.drawing import KeptDraw
    from data.trial import KeptPlan, PlanId

__all__ = ["PlanReader", "in_order"]


class PlanReader(TrayBook):
    """What is known of the trials of a book."""

    def trials(self) -> tuple[str, ...]:
        """Names of all trials, by their first plan or tray."""
        return tuple(row["name"] for row in self._rows(planrows.TRIAL_NAMES))

    def plans(self, trial: str | None = None) -> "tuple[KeptPlan, ...]":
        """All versions of a trial's plan, or of all trials, oldest first; raises `BookIsNewer`."""
        with self._of_a_known_form():
            return kept_plans(self._rows(planrows.PLANS, trial=trial))

    def plan(self, plan_id: "PlanId") -> "KeptPlan":
        """One kept version; raises `NoLongerThere`."""
        for kept in self.plans():
            if kept.id == plan_id:
                return kept
        raise NoLongerThere(self.folder)

    def draws(self, trial: str) -> "tuple[KeptDraw, ...]":
        """All drawings of a trial, whichever version they belong to, oldest first; raises `BookIsNewer`."""
        with self._of_a_known_form():
            return kept_draws(self._rows(planrows.DRAWS, trial=trial))

    @contextmanager
    def _of_a_known_form(self) -> Iterator[None]:
        """What a newer program has planned in a book of the same tables is not guessed at."""
        try:
            yield
        except (ValueError, KeyError, TypeError) as error:
            raise BookIsNewer(self.folder) from error

    def trial_trays(self, trial: str) -> tuple[Tray, ...]:
        """All trays of a trial, done ones too, in rack order."""
        return tuple(tray_of(row) for row in self._rows(planrows.TRAYS_OF_TRIAL, trial=trial))

    def standing_blocks(self, trial: str) -> tuple[str, ...]:
        """The blocks of a trial whose trays are sown: they stay as they stand."""
        return tuple(sorted({tray.block for tray in self.trial_trays(trial) if tray.block is not None}))


def in_order(at: datetime, before: Iterable[datetime]) -> str:
    """A time after those before: what is kept last counts, also where the clock was set back meanwhile."""
    return time_text(max((at, *before)))
