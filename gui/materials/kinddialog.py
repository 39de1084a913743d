"""Kind dialog: whether a medium is a mat, a loose mix or something else, and what follows from it.

In    the medium, its kind as the book has it
Out   `kind` as it was chosen, once accepted
Not   keeping it (`screen.py`, `bench/screen.py`), choosing it among other fields (`controls/kindfield.py`)
"""

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QButtonGroup, QDialog, QPushButton, QRadioButton, QWidget

from data.growing.mediumkind import ALIKE, kind_follows, kind_stands_for
from gui.controls.form import fields, fit, lay_out
from gui.language.spoken import spoken
from gui.style.palette import set_role
from gui.style.words import heading, soft

__all__ = ["KindDialog"]


class KindDialog(QDialog):
    """What follows is told for the kind that is chosen."""

    def __init__(self, medium: str, kind: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.kind = kind
        title = self.tr("Which kind of medium is {medium}?").format(medium=medium)
        self.setWindowTitle(self.tr("Kind of medium"))
        self._group = QButtonGroup(self)
        self._group.buttonClicked.connect(self._choose)
        self.buttons: dict[str, QRadioButton] = {}
        for value, words in kind_stands_for().items():
            button = self.buttons[value] = QRadioButton(spoken(words), self)
            button.setChecked(value == kind)
            self._group.addButton(button)
        self.follows, alike = soft("", self), soft(spoken(ALIKE), self)
        close, self.keep = QPushButton(self.tr("Leave"), self), QPushButton(self.tr("Keep"), self)
        close.clicked.connect(self.reject)
        set_role(self.keep, "main")
        self.keep.setDefault(True)
        self.keep.clicked.connect(self.accept)
        above = [heading(title, self), *self.buttons.values(), self.follows]
        lay_out(self, above, fields(), alike, [close, self.keep], 64)
        self._tell()

    @Slot()
    def _choose(self) -> None:
        self.kind = next(value for value, button in self.buttons.items() if button.isChecked())
        self._tell()

    def _tell(self) -> None:
        self.follows.setText(spoken(kind_follows(self.kind)))
        fit(self)
