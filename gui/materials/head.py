"""Material head: what can be done with the medium of the chosen cell, and the limits that all must keep.

In    the name of a medium, how many trays are grown a week
Out   `test_wanted`, `numbers_wanted`, `feed_wanted`, `trust_wanted`, `limits_wanted`, `weekly_set`,
      `medium_named`
Not   doing it (`screen.py`)
"""

from collections.abc import Sequence

from PySide6.QtCore import Signal, Slot
from PySide6.QtGui import QAction, QResizeEvent
from PySide6.QtWidgets import QLabel, QMenu, QPushButton, QWidget

from data.medium.benchtest import BenchKind
from gui.controls.flow import Flow
from gui.controls.namefield import NameField
from gui.controls.numberfield import NumberField
from gui.language.plainhint import plain_hint
from gui.style.palette import set_role

__all__ = ["MaterialHead"]

LONGEST = 20  # letters of a name for which room is held


class MaterialHead(QWidget):
    """Buttons in reading order; where there is little room they stand in two rows."""

    test_wanted = Signal(str)  # a `BenchKind`
    numbers_wanted = Signal()
    feed_wanted = Signal()
    trust_wanted = Signal()  # the others are held against it from now on
    limits_wanted = Signal()
    weekly_set = Signal(float)  # trays a week
    medium_named = Signal(str)  # one more stands in the table

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.name = QLabel(self)  # whose numbers, tests and feed the buttons are
        set_role(self.name, "title")
        self.tests = QPushButton(self.tr("Test"), self)
        self.tests.setMenu(self._make_menu())
        self.tests.setProperty("has-menu", True)
        self.numbers = QPushButton(self.tr("Numbers..."), self)
        self.numbers.clicked.connect(self.numbers_wanted)
        self.feed = QPushButton(self.tr("Feed..."), self)
        self.feed.clicked.connect(self.feed_wanted)
        self.trust = QPushButton(self.tr("Call it trusted"), self)
        self.trust.clicked.connect(self.trust_wanted)
        self.must = QPushButton(self.tr("Limits..."), self)
        self.must.setToolTip(self.tr("What a medium must keep"))
        self.must.clicked.connect(self.limits_wanted)
        self.weekly = NumberField(
            self.tr("Trays a week"), self.tr("trays a week"), least=1, most=10_000, parent=self
        )
        self.weekly.changed.connect(self.weekly_set)
        self.another = NameField(self.tr("Another medium"), self)
        self.another.named.connect(self.medium_named)
        row = self._row = Flow(self)
        parts = (self.name, self.tests, self.numbers, self.feed, self.trust, self.must, self.weekly)
        for part in (*parts, self.another):
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

    def show_media(self, media: Sequence[str]) -> None:
        """Room for each name, so that no button moves from cell to cell."""
        self.name.ensurePolished()
        wide = self.name.fontMetrics().horizontalAdvance
        most = LONGEST * self.fontMetrics().averageCharWidth()
        self.name.setMinimumWidth(min(most, max((wide(name) for name in media), default=0)))
        self._make_room()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """The name follows the width."""
        super().resizeEvent(event)
        self._make_room()

    def _make_room(self) -> None:
        """Without a row of its own for it the name is left to the panel beside the table."""
        needed = self._row.sizeHint().width()
        if self.name.isHidden():
            needed += self._row.spacing() + max(self.name.sizeHint().width(), self.name.minimumWidth())
        self.name.setVisible(needed <= self.width())

    def name_medium(self, medium: str) -> None:
        """Say of which medium the buttons are."""
        self.name.setText(medium)
        for button, words in (
            (self.tests, self.tr("Test {medium}")),
            (self.numbers, self.tr("Numbers about {medium}")),
            (self.feed, self.tr("Feed of {medium}")),
        ):
            button.setToolTip(plain_hint(words.format(medium=medium)))
            button.setAccessibleName(words.format(medium=medium))

    def show_trust(self, medium: str, trusted: str | None) -> None:
        """Whether the chosen medium is the one that the others are held against."""
        self.trust.setEnabled(medium != trusted)
        words = self.tr("Hold the others against {medium}: here, and in trials without a plan")
        if medium == trusted:
            words = self.tr("{medium} is the trusted one: the others are held against it")
        self.trust.setToolTip(plain_hint(words.format(medium=medium)))
        self.trust.setAccessibleDescription(words.format(medium=medium))
