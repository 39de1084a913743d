"""Bench conditions: what is asked once, before the first reading of a test of a medium.

In    the kind of the test, the tray types, the medium and what is usual for it
Out   the fields, filled with what is usual; the `NewBenchTest` that they say
Not   the steps and readings (`benchassistant.py`)
"""

from collections.abc import Sequence
from datetime import datetime

from PySide6.QtWidgets import QComboBox, QFormLayout, QLineEdit, QWidget

from data.growing.conditions import Medium, TrayType
from data.medium.benchtest import BenchKind, NewBenchTest
from gui.style.palette import Space

__all__ = ["BenchConditions"]


class BenchConditions(QWidget):
    """Where a heap lies; else tray type, seating and watering."""

    def __init__(
        self,
        kind: BenchKind,
        tray_types: Sequence[TrayType],
        medium: Medium | None,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._kind = kind
        self.kind_of_tray = QComboBox(self)  # made in the order in which Tab comes by
        self.seating, self.watering = QComboBox(self), QComboBox(self)
        self.place = QLineEdit(self)
        self._offer(tray_types)
        if medium is not None:
            self.seating.setCurrentIndex(max(0, self.seating.findData(medium.seating)))
            self.watering.setCurrentIndex(max(0, self.watering.findData(medium.watering or "bottom")))
        self._name()
        self._lay_out()

    def _offer(self, tray_types: Sequence[TrayType]) -> None:
        for value, words in (
            ("in the tray", self.tr("in the tray")),
            ("on an upturned tray", self.tr("on an upturned tray")),
        ):
            self.seating.addItem(words, value)
        for value, words in (
            ("top", self.tr("watered from top")),
            ("bottom", self.tr("watered from below")),
            ("both", self.tr("watered from both sides")),
        ):
            self.watering.addItem(words, value)
        for one in tray_types:
            self.kind_of_tray.addItem(one.name, one.name)

    def _name(self) -> None:
        self.place.setPlaceholderText(self.tr("garden, compost, pile"))
        self.place.setAccessibleName(self.tr("Where it breaks down"))
        self.seating.setAccessibleName(self.tr("Seating"))
        self.watering.setAccessibleName(self.tr("Watering"))
        self.kind_of_tray.setAccessibleName(self.tr("Tray type"))

    def _lay_out(self) -> None:
        form = QFormLayout(self)
        form.setContentsMargins(0, 0, 0, 0)
        form.setVerticalSpacing(Space.S)
        if self._kind is BenchKind.BREAKDOWN:
            form.addRow(self.tr("Where"), self.place)
            for part in (self.kind_of_tray, self.seating, self.watering):
                part.hide()
            return
        self.place.hide()
        form.addRow(self.tr("Tray type"), self.kind_of_tray)
        form.addRow(self.tr("Seating"), self.seating)
        form.addRow(self.tr("Watering"), self.watering)

    def new_test(self, medium: str, at: datetime) -> NewBenchTest:
        """A test of this medium that begins then, under these conditions."""
        return NewBenchTest(
            kind=self._kind,
            medium=medium,
            begun_at=at,
            tray_type=self.kind_of_tray.currentData(),
            seating=self.seating.currentData(),
            watering=self.watering.currentData(),
            place=self.place.text().strip(),
        )
