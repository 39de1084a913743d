"""Plan empty: what stands in Plan while no trial is planned.

In    nothing
Out   a heading, a sentence, the words of the button
Not   beginning a trial (`screen.py`), the look of an empty state (`controls/teaching.py`)
"""

from PySide6.QtWidgets import QWidget

from gui.controls.teaching import Teaching

__all__ = ["PlanEmpty"]


class PlanEmpty(Teaching):
    """It says what will be here, and starts it."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__("plan", "", parent)  # a class can say its own words only once it is made
        self.button.setText(self.tr("Plan a trial"))
        self.teach(
            self.tr("No trial is planned yet"),
            self.tr(
                "Here you say what you want to know, which media you compare and on which crops. The program "
                "says how many trays that takes, draws which tray stands where, and prints tags and sheets."
            ),
        )
