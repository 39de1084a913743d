"""Bench switch: what needs a look or the rack, where the window has no room for both.

In    how many trays need a look, how many stand on the rack
Out   `turned` when the other one is wanted
Not   when there is room for both (`screen.py`)
"""

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QButtonGroup, QHBoxLayout, QPushButton, QWidget

from gui.style.palette import Space, set_role

__all__ = ["BenchSwitch"]


class BenchSwitch(QWidget):
    """Two buttons of which one is down."""

    turned = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.looks, self.rack = QPushButton(self), QPushButton(self)
        group = QButtonGroup(self)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(Space.S)
        for button in (self.looks, self.rack):
            button.setCheckable(True)
            button.setToolTip(self.tr("The window has no room for both; F6 turns to the other"))
            set_role(button, "rack")
            group.addButton(button)
            row.addWidget(button)
        row.addStretch(1)
        self.looks.setChecked(True)
        self.looks.toggled.connect(self._turned)
        self.show_counts(0, 0)

    @Slot()
    def _turned(self) -> None:
        self.turned.emit()

    @property
    def at_looks(self) -> bool:
        """Whether what needs a look is shown."""
        return self.looks.isChecked()

    def turn(self, *, to_looks: bool) -> None:
        """Show this or that."""
        (self.looks if to_looks else self.rack).setChecked(True)

    def show_counts(self, looks: int, trays: int) -> None:
        """How many there are of each."""
        self.looks.setText(self.tr("Needs a look ({count})").format(count=looks))
        self.rack.setText(self.tr("The rack ({count})").format(count=trays))
