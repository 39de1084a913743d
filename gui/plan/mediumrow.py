"""Medium row: one medium of a trial, whether it is the trusted one, and which kind it is of.

In    its name, whether it is in the trial, its kind as the book has it
Out   the parts to stand in a grid; they tell when they are pressed
Not   which media there are (`treatments.py`), keeping the kind (`desk.py`)
"""

from collections.abc import Callable

from PySide6.QtWidgets import QCheckBox, QRadioButton, QWidget

from gui.controls.kindfield import KindField
from gui.controls.namelabel import cut_name
from gui.language.plainbutton import plain_button
from gui.language.plainhint import plain_hint

__all__ = ["MediumRow"]

MOST_LETTERS = 36  # of its name


class MediumRow(QWidget):
    """One medium."""

    def __init__(
        self,
        name: str,
        taken: Callable[[], None],
        trusted: Callable[[], None],
        kind_said: Callable[[str, str], None],  # medium, kind
        parent: QWidget,
    ) -> None:
        super().__init__(parent)
        self.taken, self.trusted = QCheckBox(self), QRadioButton(self)
        self.taken.setText(plain_button(cut_name(name, self.taken.fontMetrics(), MOST_LETTERS)))
        self.taken.setToolTip(plain_hint(name))
        self.taken.setAccessibleName(name)
        self.trusted.setAccessibleName(self.tr("{medium} is the one I trust").format(medium=name))
        self.trusted.setAutoExclusive(False)
        self.kind = KindField(self.tr("Kind of {medium}").format(medium=name), self)
        self.taken.toggled.connect(taken)
        self.trusted.clicked.connect(trusted)
        self.kind.said.connect(lambda kind: kind_said(name, kind))

    @property
    def parts(self) -> tuple[QWidget, ...]:
        """In reading order."""
        return self.taken, self.trusted, self.kind

    def show_medium(self, kind: str, *, taken: bool, trusted: bool) -> None:
        """Show what is planned with it."""
        for button, checked in ((self.taken, taken), (self.trusted, trusted)):
            button.blockSignals(True)
            button.setChecked(checked)
            button.blockSignals(False)
        self.kind.set(kind)
