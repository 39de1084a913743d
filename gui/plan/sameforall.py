"""Same for all: what every tray of a trial gets alike, said once.

In    what is said so far, by the names of factors; which factor varies instead
Out   `changed` with what a person has said
Not   what varies (`treatments.py`), blackout of each crop (`croprow.py`), giving it to the trays
      (`data/plan/sowntray.py`)

What is not said is as with the last tray of its kind.
"""

from collections.abc import Mapping

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QLabel, QLineEdit, QWidget

from data.trial import WATERINGS, YES_NO
from gui.controls.flow import Flow
from gui.language.levels import kept_level, shown_level
from gui.language.spoken import spoken
from gui.style.palette import Space

__all__ = ["SameForAll"]


class SameForAll(QWidget):
    """Fields with their words, as many in a row as there is room for."""

    changed = Signal(object)  # factor -> level, of those that are said

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._same: dict[str, str] = {}
        self._varies = ""
        self.feed, self.light = QLineEdit(self), QLineEdit(self)
        self.watering = self._choice({spoken(way): way for way in WATERINGS})
        self.stacking, self.heat_mat = self._yes_no("stacking"), self._yes_no("heat mat")
        row = Flow(self)
        self._pairs: dict[str, QWidget] = {}
        for factor, words, field in (
            ("feed", self.tr("Feed"), self.feed),
            ("watering", self.tr("Watering"), self.watering),
            ("stacking", self.tr("In blackout"), self.stacking),
            ("heat mat", self.tr("Heat mat"), self.heat_mat),
            ("light", self.tr("Light"), self.light),
        ):
            self._pairs[factor] = self._pair(words, field)
            row.addWidget(self._pairs[factor])

    def _choice(self, levels: Mapping[str, str]) -> QComboBox:
        box = QComboBox(self)
        for words, level in levels.items():
            box.addItem(words, level)
        box.activated.connect(self._edited)
        return box

    def _yes_no(self, factor: str) -> QComboBox:
        yes, no = YES_NO[factor]
        return self._choice({self.tr("as usual"): "", spoken(yes): yes, spoken(no): no})

    def _pair(self, words: str, field: QLineEdit | QComboBox) -> QWidget:
        pair = QWidget(self)
        label = QLabel(f"{words}:", pair)
        field.setParent(pair)
        field.setAccessibleName(words)
        if isinstance(field, QLineEdit):
            field.textEdited.connect(self._edited)
        row = QHBoxLayout(pair)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(Space.S)
        row.addWidget(label)
        row.addWidget(field)
        return pair

    def show_same(self, same: Mapping[str, str], varies: str) -> None:
        """What is said; what varies has no place here."""
        self._same, self._varies = dict(same), varies
        for line, factor in ((self.feed, "feed"), (self.light, "light")):
            if kept_level(factor, line.text()) != same.get(factor, ""):
                line.setText(shown_level(factor, same.get(factor)))
        self.watering.setCurrentIndex(self.watering.findData(same.get("watering")))  # blank: not said
        for box, factor in ((self.stacking, "stacking"), (self.heat_mat, "heat mat")):
            box.setCurrentIndex(max(0, box.findData(same.get(factor, ""))))
        for factor, pair in self._pairs.items():
            pair.setVisible(factor != varies)

    @Slot()
    def _edited(self) -> None:
        said = {
            "feed": kept_level("feed", self.feed.text()),
            "watering": self.watering.currentData(),
            "stacking": self.stacking.currentData(),
            "heat mat": self.heat_mat.currentData(),
            "light": kept_level("light", self.light.text()),
        }
        for factor, level in said.items():
            if factor == self._varies:
                continue
            if level:
                self._same[factor] = level
            else:
                self._same.pop(factor, None)
        self.changed.emit(dict(self._same))
