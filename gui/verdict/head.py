"""Verdict head: which trial, crop and measure are looked at; the ways to weights and to scoring by eye.

In    a `VerdictState`
Out   `trial_chosen`, `crop_chosen`, `kind_chosen`, `rule_wanted`, `margin_wanted`
Not   what is shown then (`screen.py`)
"""

from PySide6.QtCore import QSignalBlocker, Signal, Slot
from PySide6.QtWidgets import QButtonGroup, QComboBox, QPushButton, QWidget

from data.trial import MeasureKind
from data.verdict.measurewords import kind_words
from gui.answer.view import VerdictState
from gui.controls.flow import Flow
from gui.controls.namelabel import NameLabel
from gui.language.plainhint import plain_hint
from gui.language.spoken import spoken

__all__ = ["VerdictHead"]

MOST_LETTERS = 44  # the row breaks; a name is cut only where it alone would be wider


class VerdictHead(QWidget):
    """The top of the place."""

    trial_chosen = Signal(str)
    crop_chosen = Signal(str)
    kind_chosen = Signal(object)  # MeasureKind
    rule_wanted = Signal()
    margin_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        row = Flow(self)
        self.trials = self._box(self.tr("Trial"))
        self.trials.activated.connect(self._chose_trial)
        self.only_trial = NameLabel(self)
        self.crops = self._box(self.tr("Crop"))
        self.crops.activated.connect(self._chose_crop)
        self.only_crop = NameLabel(self)
        for part in (self.trials, self.only_trial, self.crops, self.only_crop):
            row.addWidget(part)
        self.kinds: dict[MeasureKind, QPushButton] = {}
        group = QButtonGroup(self)
        for kind in MeasureKind:
            button = QPushButton(spoken(kind_words(kind)), self)
            button.setCheckable(True)
            button.setProperty("kind", str(kind))
            button.clicked.connect(self._chose_kind)
            group.addButton(button)
            self.kinds[kind] = button
            row.addWidget(button)
        self.rule = QPushButton(self.tr("Limits and weights"), self)
        self.rule.setToolTip(self.tr("What the canopy score is made of, tried on your own trays"))
        self.rule.clicked.connect(self.rule_wanted)
        row.addWidget(self.rule)
        self.margin = QPushButton(self.tr("Margin..."), self)
        self.margin.setToolTip(
            self.tr("This trial has no plan: say here how much less you would still call as good")
        )
        self.margin.clicked.connect(self.margin_wanted)
        row.addWidget(self.margin)

    def _box(self, name: str) -> QComboBox:
        box = QComboBox(self)
        box.setAccessibleName(name)
        box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        return box

    def show_state(self, state: VerdictState) -> None:
        """Lists only where there is a choice."""
        reading = state.reading
        self._fill(self.trials, self.only_trial, reading.trials, reading.trial)
        self._fill(self.crops, self.only_crop, reading.crops, state.crop)
        if len(reading.trials) == len(reading.crops) == 1:  # two names beside each other would read as one
            self.only_trial.show_name(f"{reading.trial}:")
        kinds = reading.kinds(state.crop)
        for kind, button in self.kinds.items():
            button.setVisible(len(kinds) > 1 and kind in kinds)
            button.setChecked(kind is state.kind)
        self.rule.setVisible(bool(reading.found))
        self.margin.setVisible(bool(reading.found) and reading.kept is None)

    @staticmethod
    def _fill(box: QComboBox, alone: NameLabel, names: tuple[str, ...], shown: str) -> None:
        box.setVisible(len(names) > 1)
        alone.setVisible(len(names) == 1)
        alone.show_name(shown)
        with QSignalBlocker(box):
            if [box.itemText(number) for number in range(box.count())] != list(names):
                box.clear()
                box.addItems(list(names))
            box.setCurrentText(shown)
        longest = max((len(name) for name in names), default=8)
        box.setMinimumContentsLength(min(longest, MOST_LETTERS))
        box.setToolTip(plain_hint(shown))

    @Slot()
    def _chose_trial(self) -> None:
        self.trial_chosen.emit(self.trials.currentText())

    @Slot()
    def _chose_crop(self) -> None:
        self.crop_chosen.emit(self.crops.currentText())

    @Slot()
    def _chose_kind(self) -> None:
        self.kind_chosen.emit(MeasureKind(self.sender().property("kind")))
