"""Verdict empty: what stands in the place of a verdict where there is none yet, and what leads to one.

In    `VerdictState` without an answer; whether a book is open
Out   a heading, a sentence, the words of the button
Not   going there (`screen.py`), the look of an empty state (`controls/teaching.py`)
"""

from PySide6.QtWidgets import QWidget

from gui.answer.view import VerdictState
from gui.controls.teaching import Teaching

__all__ = ["VerdictEmpty"]


class VerdictEmpty(Teaching):
    """No trial, nothing sown, or still being read."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__("verdict", "", parent)  # a class can say its own words only once it is made
        self.button.setText(self.tr("Plan a trial"))

    def show_state(self, state: VerdictState, *, has_book: bool) -> None:
        """Say why there is no verdict, and what leads to one."""
        reading = state.reading
        self.button.setEnabled(has_book)
        if not state.read:
            self.teach(self.tr("The verdict is being read"), "")
        elif not reading.trials:
            self.teach(
                self.tr("No trial yet, so there is no verdict"),
                self.tr(
                    "Here stands one sentence for each new medium: better than the one you trust, as good "
                    "within your margin, worse, or not shown, and what would settle it. It takes a trial "
                    "with at least two trays of each medium, photographed on the same day after sowing."
                ),
            )
        else:
            self.teach(
                self.tr("No tray of {trial} is sown yet").format(trial=reading.trial),
                self.tr(
                    "Sow its trays in Plan and photograph them on the day that the plan names; the answer "
                    "comes here."
                ),
            )
        first = state.read and not reading.trials
        self.button.setText(self.tr("Plan a trial") if first else self.tr("Go to the plan"))
