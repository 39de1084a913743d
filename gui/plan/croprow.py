"""Crop row: one crop of a trial, when it is read and how much seed goes on a tray.

In    a `CropPlan`, whether it is in the trial
Out   the same as the grower has changed it
Not   which crops there are (`treatments.py`)
"""

from collections.abc import Callable
from dataclasses import replace

from PySide6.QtWidgets import QCheckBox, QWidget

from data.trial import CropPlan
from gui.controls.numberfield import NumberField
from gui.language.plainbutton import plain_button

__all__ = ["CropRow"]


class CropRow(QWidget):
    """One crop: whether it is in the trial, when it is read, how much seed."""

    def __init__(self, crop: CropPlan, changed: Callable[[], None], parent: QWidget) -> None:
        super().__init__(parent)
        self.crop = crop
        self.taken = QCheckBox(plain_button(crop.name), self)
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
        self.taken.toggled.connect(changed)
        self.day.changed.connect(changed)
        self.seed.changed.connect(changed)

    def show_crop(self, crop: CropPlan, *, taken: bool) -> None:
        """Show what is planned for it."""
        self.crop = crop
        self.taken.blockSignals(True)
        self.taken.setChecked(taken)
        self.taken.blockSignals(False)
        self.day.set(crop.read_on_day)
        self.seed.set(crop.sowing_rate_g or 0.0)
        self.day.setEnabled(taken)
        self.seed.setEnabled(taken)

    @property
    def planned(self) -> CropPlan:
        """The crop as it stands here; no seed means that nobody has said."""
        return replace(self.crop, read_on_day=round(self.day.value), sowing_rate_g=self.seed.value or None)
