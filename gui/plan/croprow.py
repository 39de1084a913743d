"""Crop row: one crop of a trial, when it is read, how much seed goes on a tray, how long it is covered.

In    a `CropPlan`, whether it is in the trial
Out   the same as the grower has changed it
Not   which crops there are (`treatments.py`)
"""

from collections.abc import Callable
from dataclasses import replace

from PySide6.QtWidgets import QCheckBox, QWidget

from data.trial import CropPlan
from gui.controls.namelabel import cut_name
from gui.controls.numberfield import NumberField
from gui.language.plainbutton import plain_button
from gui.language.plainhint import plain_hint

__all__ = ["CropRow"]

MOST_BLACKOUT = 20  # days
MOST_LETTERS = 18  # of a crop's name


class CropRow(QWidget):
    """One crop: whether it is in the trial, when it is read, how much seed, how many days of blackout."""

    def __init__(self, crop: CropPlan, changed: Callable[[], None], parent: QWidget) -> None:
        super().__init__(parent)
        self.crop = crop
        self.taken = QCheckBox(self)
        self.taken.setText(plain_button(cut_name(crop.name, self.taken.fontMetrics(), MOST_LETTERS)))
        self.taken.setToolTip(plain_hint(crop.name))
        self.taken.setAccessibleName(crop.name)
        self.day = NumberField(
            self.tr("{crop}, read on day").format(crop=crop.name), least=1, most=60, parent=self
        )
        self.seed = NumberField(
            self.tr("{crop}, dry seed a tray").format(crop=crop.name),
            self.tr("g"),
            most=500,
            unsaid="?",
            parent=self,
        )
        self.blackout = NumberField(
            self.tr("{crop}, days of blackout").format(crop=crop.name),
            most=MOST_BLACKOUT,
            unsaid="?",
            nought=True,
            parent=self,
        )
        self.taken.toggled.connect(changed)
        for field in (self.day, self.seed, self.blackout):
            field.changed.connect(changed)

    @property
    def parts(self) -> tuple[QWidget, ...]:
        """In reading order."""
        return self.taken, self.day, self.seed, self.blackout

    def show_crop(self, crop: CropPlan, *, taken: bool) -> None:
        """Show what is planned for it."""
        self.crop = crop
        self.taken.blockSignals(True)
        self.taken.setChecked(taken)
        self.taken.blockSignals(False)
        self.day.set(crop.read_on_day)
        self.seed.set(crop.sowing_rate_g or 0.0)
        self.blackout.set(crop.blackout_days)
        for field in (self.day, self.seed, self.blackout):
            field.setEnabled(taken)

    @property
    def planned(self) -> CropPlan:
        """The crop as it stands here; no seed and an empty blackout mean that nobody has said."""
        return replace(
            self.crop,
            read_on_day=round(self.day.value),
            sowing_rate_g=self.seed.value or None,
            blackout_days=self.blackout.said,
        )
