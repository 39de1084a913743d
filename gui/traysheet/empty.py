"""Sheet empty: what stands on the tray sheet before a tray is chosen.

In    nothing
Out   a heading, a sentence; `pressed` to go to the Bench, `other_pressed` for trays that have ended
Not   the sheet itself (`screen.py`), the look of an empty state (`controls/teaching.py`)
"""

from PySide6.QtWidgets import QWidget

from gui.controls.teaching import Teaching

__all__ = ["SheetEmpty"]


class SheetEmpty(Teaching):
    """Teaches, and leads on."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__("traysheet", "", parent, other=" ")  # it says its own words once it is made
        self.button.setText(self.tr("Go to the Bench"))
        self.button.setToolTip(self.tr("Go to the Bench (Ctrl+1)"))
        self.other.setText(self.tr("Trays that have ended"))
        self.other.setToolTip(self.tr("Find a tray that was cut or thrown away (T)"))
        self.teach(
            self.tr("Here one tray is shown at a time"),
            self.tr(
                "Its picture with everything that was found in it, its days side by side, its numbers, and "
                "how it grew beside its mates. Choose a tray on the Bench."
            ),
        )
