"""Rack filters: which trays are shown, by crop, medium, trial, day, and whether a photo is missing.

In    `Choices`: what there is to choose from
Out   `changed` with the `Narrowing` that is chosen
Not   the words that are searched (`screen.py`), which trays that leaves (`rack.py`)
"""

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QCheckBox, QComboBox, QPushButton, QWidget

from gui.bench.rack import Choices, Narrowing
from gui.controls.flow import Flow
from gui.language.age import age_words
from gui.style.palette import set_role

__all__ = ["RackFilters"]

LETTERS, MOST_LETTERS = 11, 30  # that a choice shows; a longer name would push the rack away


class RackFilters(QWidget):
    """A row of choices; the first of each is "all"."""

    changed = Signal()
    ended_wanted = Signal()
    left = Signal()  # by Esc

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._choices = Choices()
        self.crop = self._make_choice(self.tr("Crop"))
        self.medium = self._make_choice(self.tr("Medium"))
        self.trial = self._make_choice(self.tr("Trial"))
        self.day = self._make_choice(self.tr("Day since sowing"))
        self.missing = QCheckBox(self.tr("Not photographed today"), self)
        set_role(self.missing, "rack")
        self.missing.toggled.connect(self.changed)
        self.ended = QPushButton(self.tr("Trays that have ended..."), self)
        self.ended.setToolTip(self.tr("Find a tray that was cut or thrown away, and open its sheet"))
        set_role(self.ended, "rack")
        self.ended.clicked.connect(self.ended_wanted)
        row = Flow(self)
        for part in (self.crop, self.medium, self.trial, self.day, self.missing, self.ended):
            row.addWidget(part)
        self._fill()

    def _make_choice(self, name: str) -> QComboBox:
        made = QComboBox(self)
        made.setAccessibleName(name)
        made.setToolTip(name)
        made.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        set_role(made, "rack")
        made.currentIndexChanged.connect(self.changed)
        return made

    def show_choices(self, choices: Choices) -> None:
        """Offer these; what was chosen stays chosen where it is still there."""
        if choices != self._choices:
            self._choices = choices
            self._fill()

    def _fill(self) -> None:
        kept, choices = self.narrowing, self._choices
        days = [age_words(day) for day in choices.days]
        for box, every, words, values, chosen in (
            (self.crop, self.tr("All crops"), choices.crops, choices.crops, kept.crop),
            (self.medium, self.tr("All media"), choices.media, choices.media, kept.medium),
            (self.trial, self.tr("All trials"), choices.trials, choices.trials, kept.trial),
            (self.day, self.tr("All days"), days, choices.days, kept.day),
        ):
            self._fill_one(box, every, words, values, chosen)
        self.trial.setVisible(bool(choices.trials))
        if self.narrowing != kept:
            self.changed.emit()

    @staticmethod
    def _fill_one(
        box: QComboBox, every: str, words: Sequence[str], values: Sequence[object], chosen: object
    ) -> None:
        box.blockSignals(True)
        box.clear()
        box.addItem(every, None)
        for word, value in zip(words, values, strict=True):
            box.addItem(word, value)
        longest = max(len(one) for one in (every, *words))
        box.setMinimumContentsLength(min(MOST_LETTERS, max(LETTERS, longest)))
        box.setCurrentIndex(1 + values.index(chosen) if chosen in values else 0)
        box.blockSignals(False)

    @property
    def narrowing(self) -> Narrowing:
        """What is chosen."""
        return Narrowing(
            crop=self.crop.currentData(),
            medium=self.medium.currentData(),
            trial=self.trial.currentData(),
            day=self.day.currentData(),
            missing=self.missing.isChecked(),
        )

    @Slot()
    def clear(self) -> None:
        """Show all trays."""
        self.blockSignals(True)
        for box in (self.crop, self.medium, self.trial, self.day):
            box.setCurrentIndex(0)
        self.missing.setChecked(False)
        self.blockSignals(False)
        self.changed.emit()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Esc shows all trays again."""
        if event.key() == Qt.Key.Key_Escape:
            self.left.emit()
        else:
            super().keyPressEvent(event)
