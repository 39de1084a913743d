"""Places: the six screens of the program, each of its own kind.

In    `Work`, which each is made with
Out   `places.bench`, `places.intake`, ...: made, and its modules brought in, when it is first wanted
Not   what the window does with a new one (`window.py`)
"""

from typing import TYPE_CHECKING

from gui.frame.actions import PLACES
from gui.frame.screens import Screens
from gui.work import Work

if TYPE_CHECKING:
    from gui.bench.screen import Bench
    from gui.intake.screen import Intake
    from gui.materials.screen import Materials
    from gui.plan.screen import Plan
    from gui.traysheet.screen import TraySheet
    from gui.verdict.screen import Verdict

__all__ = ["Places"]


class Places(Screens):
    """Where a grower can be."""

    def __init__(self, work: Work) -> None:
        super().__init__([place.name for place in PLACES], work)

    @property
    def bench(self) -> "Bench":
        """The rack, and what needs a look."""
        from gui.bench.screen import Bench

        return self.once("bench", Bench)

    @property
    def intake(self) -> "Intake":
        """Photos come in."""
        from gui.intake.screen import Intake

        return self.once("intake", Intake)

    @property
    def traysheet(self) -> "TraySheet":
        """One tray."""
        from gui.traysheet.screen import TraySheet

        return self.once("traysheet", TraySheet)

    @property
    def plan(self) -> "Plan":
        """A trial before it is sown."""
        from gui.plan.screen import Plan

        return self.once("plan", Plan)

    @property
    def verdict(self) -> "Verdict":
        """The answer of a trial."""
        from gui.verdict.screen import Verdict

        return self.once("verdict", Verdict)

    @property
    def materials(self) -> "Materials":
        """All media side by side."""
        from gui.materials.screen import Materials

        return self.once("materials", Materials)
