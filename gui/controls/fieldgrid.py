"""Field grid: labelled fields side by side, as many as there is room for.

In    fields with their labels, in reading order
Out   their places; rows follow the width
Not   what is asked (`traysheet/conditionspage.py`)
"""

from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QGridLayout, QLabel, QSizePolicy, QVBoxLayout, QWidget

from gui.style.palette import TARGET, Space, set_role

__all__ = ["FieldGrid"]

CELL_CHARACTERS = 30


class FieldGrid(QWidget):
    """Each cell: a label above, the field below."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._cells: list[QWidget] = []
        self.fields: list[QWidget] = []
        self._columns = 0
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(Space.L)
        self._grid.setVerticalSpacing(Space.M)

    def add(self, words: str, field: QWidget) -> None:
        """One more field."""
        cell = QWidget(self)
        label = QLabel(words, cell)
        set_role(label, "soft")
        label.setBuddy(field)
        if not field.accessibleName():
            field.setAccessibleName(words.replace("&", ""))
        field.setParent(cell)
        field.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        column = QVBoxLayout(cell)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(2)
        column.addWidget(label)
        column.addWidget(field)
        column.addStretch(1)
        self._cells.append(cell)
        self.fields.append(field)
        self._columns = 0
        self._arrange()

    def say_below(self, field: QWidget, words: QLabel) -> None:
        """Words that belong to a field, right below it; hidden they take no room."""
        column = self._cells[self.fields.index(field)].layout()
        assert isinstance(column, QVBoxLayout)
        column.insertWidget(2, words)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """More columns where there is more room."""
        super().resizeEvent(event)
        self._arrange()
        high = max((field.sizeHint().height() for field in self.fields), default=TARGET)
        for field in self.fields:  # Qt makes fields of different kinds differ by some pixels
            field.setFixedHeight(max(TARGET, high))

    def _arrange(self) -> None:
        wide = CELL_CHARACTERS * self.fontMetrics().averageCharWidth() + Space.L
        columns = max(1, min(4, (self.width() + Space.L) // wide))
        if columns == self._columns:
            return
        for column in range(max(columns, self._columns)):
            self._grid.setColumnStretch(column, 1 if column < columns else 0)
        self._columns = columns
        for number, cell in enumerate(self._cells):
            self._grid.addWidget(cell, number // columns, number % columns)
