"""More trays: conditions of one tray given to all of its trial, of a medium or of a shelf.

In    a tray, what its fields say, which of them were changed
Out   the same conditions in the book for the trays that were chosen, one step of undo; `given`
Not   which trays and what would change (`sharing.py`), the dialog (`sharedialog.py`)
"""

from collections.abc import Collection, Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal, Slot
from PySide6.QtWidgets import QWidget

from data.cancel import CancelToken, Progress
from data.growing.conditions import SHARED
from data.records import NewTray, Tray, TrayId
from gui.trays.sharing import Group, groups_of
from gui.work import Work

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["MoreTrays"]


class MoreTrays(QObject):
    """Asks which conditions and which trays, then keeps them in the background."""

    given = Signal(object, int)  # names of the fields, how many trays were changed
    stopped = Signal()
    failed = Signal(object)  # the exception

    def __init__(self, work: Work, over: QWidget) -> None:
        super().__init__(over)
        self._work, self._over = work, over

    def ask(self, book: "Book", tray: Tray, said: NewTray, changed: Collection[str]) -> bool:
        """Ask; False where there is no other tray. Raises `BookError`."""
        from gui.trays.sharedialog import ShareDialog

        of_trial = () if tray.trial is None else book.trial_trays(tray.trial)
        groups = groups_of(tray, of_trial, book.trays())
        varied = _varied(book, groups)
        if not groups:
            return False
        names = {name for name, its_fields in SHARED.items() if set(changed) & set(its_fields)}
        dialog = ShareDialog(said, names, groups, varied, self._over)
        if dialog.exec():
            self._give(book, said, dialog.names, [one.id for one in dialog.trays])
        return True

    def _give(self, book: "Book", said: NewTray, names: Collection[str], trays: Sequence[TrayId]) -> None:
        """In the background: half a second a thousand trays."""

        def task(token: CancelToken, report: Progress) -> tuple[frozenset[str], int]:
            given = frozenset(field for name in names for field in SHARED[name])
            return given, len(book.share_conditions(said, names, trays, token.at_each(report)))

        job = self._work.start(task, self.tr("Conditions for more trays"), whole=True)
        job.finished.connect(self._given)
        job.failed.connect(self.failed)
        job.cancelled.connect(self.stopped)

    @Slot(object)
    def _given(self, answer: tuple[frozenset[str], int]) -> None:
        self.given.emit(*answer)


def _varied(book: "Book", groups: Sequence[Group]) -> dict[str, frozenset[str]]:
    """What the plan of each trial varies."""
    trials = {tray.trial for group in groups for tray in group.trays if tray.trial is not None}
    plans = {trial: kept[-1].plan for trial in trials if (kept := book.plans(trial))}
    return {trial: frozenset(factor.name for factor in plan.factors) for trial, plan in plans.items()}
