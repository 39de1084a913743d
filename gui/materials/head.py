"""Material head: what can be done with the medium of the chosen cell, and the limits that all must keep.

In    the name of a medium, how many trays are grown a week
Out   `test_wanted`, `numbers_wanted`, `feed_wanted`, `limits_wanted`, `weekly_set`
Not   doing it (`screen.py`)
"""

from PySide6.QtCore import Signal, Slot
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QMenu, QPushButton, QWidget

from data.medium.benchtest import BenchKind
from gui.controls.flow import Flow
from gui.controls.numberfield import NumberField
from gui.language.plainhint import plain_hint

__all__ = ["MaterialHead"]


class MaterialHead(QWidget):
    """Buttons in reading order; where there is little room they stand in two rows."""

    test_wanted = Signal(str)  # a `BenchKind`
    numbers_wanted = Signal()
    feed_wanted = Signal()
    limits_wanted = Signal()
    weekly_set = Signal(float)  # trays a week

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.tests = QPushButton(self.tr("Test it"), self)
        self.tests.setMenu(self._make_menu())
        self.numbers = QPushButton(self.tr("Its numbers..."), self)
        self.numbers.clicked.connect(self.numbers_wanted)
        self.feed = QPushButton(self.tr("Its feed..."), self)
        self.feed.clicked.connect(self.feed_wanted)
        self.must = QPushButton(self.tr("Limits..."), self)
        self.must.setToolTip(self.tr("What a medium must keep"))
        self.must.clicked.connect(self.limits_wanted)
        self.weekly = NumberField(
            self.tr("Trays a week"), self.tr("trays a week"), least=1, most=10_000, parent=self
        )
        self.weekly.changed.connect(self.weekly_set)
        row = Flow(self)
        for part in (self.tests, self.numbers, self.feed, self.must, self.weekly):
            row.addWidget(part)

    def _make_menu(self) -> QMenu:
        menu = QMenu(self.tests)
        for kind, words in (
            (BenchKind.WETTING, self.tr("Wetting test...")),
            (BenchKind.COOLING, self.tr("Cooling test...")),
            (BenchKind.BREAKDOWN, self.tr("Break-down...")),
        ):
            action = QAction(words, menu)
            action.setData(kind)
            action.triggered.connect(self._test_chosen)
            menu.addAction(action)
        return menu

    @Slot()
    def _test_chosen(self) -> None:
        action = self.sender()
        if isinstance(action, QAction):
            self.test_wanted.emit(str(action.data()))

    def name_medium(self, medium: str) -> None:
        """Say of which medium the buttons are."""
        for button, words in (
            (self.tests, self.tr("Test {medium}")),
            (self.numbers, self.tr("Numbers about {medium}")),
            (self.feed, self.tr("Feed of {medium}")),
        ):
            button.setToolTip(plain_hint(words.format(medium=medium)))
            button.setAccessibleName(words.format(medium=medium))
