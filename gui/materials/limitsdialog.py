"""Limits dialog: what a medium must keep, row by row; there is no total.

In    limits as they are
Out   `limits`: least and most by row, where a person has said one
Not   keeping them (`screen.py`), who keeps them (`data/materials/table.py`)
"""

from collections.abc import Mapping

from PySide6.QtCore import Slot
from PySide6.QtWidgets import (
    QDialog,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from data.materials.table import ROWS
from gui.controls.form import open_within_screen
from gui.controls.rolling import roll_down
from gui.controls.telling import tell
from gui.language.spoken import in_figures, spoken
from gui.notes.table import number_in
from gui.style.palette import Space, set_role
from gui.style.words import wrapped

__all__ = ["LimitsDialog"]

Limits = Mapping[str, tuple[float | None, float | None]]


class LimitsDialog(QDialog):
    """Least and most for every row of numbers."""

    def __init__(self, limits: Limits, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("What a medium must keep"))
        self._fields: dict[str, tuple[QLineEdit, QLineEdit]] = {}
        scroll = QScrollArea(self)
        roll_down(scroll)
        body = self._rows(limits)
        scroll.setWidget(body)
        self.trouble = wrapped("", self, "alarm")
        column = QVBoxLayout(self)
        column.setContentsMargins(Space.L, Space.L, Space.L, Space.L)
        about = self.tr(
            "Type a limit where one matters to you: the table then says which media keep "
            "all of them. A field left empty asks nothing."
        )
        column.addWidget(wrapped(about, self, "soft"))
        column.addWidget(scroll, 1)
        column.addWidget(self.trouble)
        column.addLayout(self._buttons())
        bar = scroll.verticalScrollBar().sizeHint().width()
        wide = body.sizeHint().width() + bar + 2 * Space.L + Space.S
        open_within_screen(self, max(560, wide), max(560, 24 * self.fontMetrics().height()))

    def _rows(self, limits: Limits) -> QWidget:
        """A row of two fields for each row of the table that has a unit."""
        body = QWidget(self)
        grid = QGridLayout(body)
        grid.setContentsMargins(0, 0, Space.S, 0)
        grid.setHorizontalSpacing(Space.M)
        grid.setVerticalSpacing(Space.S)
        for column, words in enumerate(("", self.tr("at least"), self.tr("at most"))):
            grid.addWidget(QLabel(words, body), 0, column)
        for number, row in enumerate((one for one in ROWS if one.unit), start=1):
            name = f"{spoken(row.words)}, {spoken(row.unit)}"
            grid.addWidget(QLabel(name, body), number, 0)
            least, most = limits.get(row.key, (None, None))
            pair = (
                self._field(body, least, f"{name}, {self.tr('at least')}"),
                self._field(body, most, f"{name}, {self.tr('at most')}"),
            )
            grid.addWidget(pair[0], number, 1)
            grid.addWidget(pair[1], number, 2)
            self._fields[row.key] = pair
        return body

    def _field(self, body: QWidget, value: float | None, name: str) -> QLineEdit:
        field = QLineEdit("" if value is None else in_figures(value), body)
        field.setAccessibleName(name)
        field.setMaximumWidth(12 * self.fontMetrics().averageCharWidth())
        return field

    def _buttons(self) -> QHBoxLayout:
        close = QPushButton(self.tr("Leave"), self)
        close.clicked.connect(self.reject)
        keep = QPushButton(self.tr("Keep"), self)
        set_role(keep, "main")
        keep.setDefault(True)
        keep.clicked.connect(self._keep)
        row = QHBoxLayout()
        row.setSpacing(Space.S)
        row.addStretch(1)
        row.addWidget(close)
        row.addWidget(keep)
        return row

    @property
    def limits(self) -> dict[str, tuple[float | None, float | None]]:
        """What stands in the fields."""
        found = {}
        for key, (least, most) in self._fields.items():
            ends = number_in(least.text()), number_in(most.text())
            if ends != (None, None):
                found[key] = ends
        return found

    @Slot()
    def _keep(self) -> None:
        for key, pair in self._fields.items():
            typed = [field.text().strip() for field in pair]
            numbers = [number_in(text) for text in typed]
            words = spoken(next(row for row in ROWS if row.key == key).words)
            if any(text and number is None for text, number in zip(typed, numbers, strict=True)):
                tell(self.trouble, self.tr("{row}: type a number, or leave it empty.").format(row=words))
                return
            least, most = numbers
            if least is not None and most is not None and least > most:
                tell(self.trouble, self.tr("{row}: the least is above the most.").format(row=words))
                return
        self.accept()
