"""Number field: a number with a smaller and a larger button, for wet hands and for keys.

In    a number, its limits, its step, its unit
Out   `changed` when the person has set another number
Not   what the number means (each page)

With `unsaid` nought means that nobody has said it, and those words stand in the field.
"""

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QLineEdit, QPushButton, QWidget

from gui.language.spoken import in_figures
from gui.style.palette import Space

__all__ = ["NumberField"]


class NumberField(QWidget):
    """Up and Down step, too; text that is no number goes back to what stood there."""

    changed = Signal(float)

    def __init__(
        self,
        name: str,
        unit: str = "",
        *,
        least: float = 0.0,
        most: float = 1e6,
        step: float = 1.0,
        unsaid: str = "",
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._least, self._most, self._step = least, most, step
        self._value = least
        self._unsaid = unsaid
        self.unit = QLabel(unit, self)
        self._make_field(name)
        self._make_buttons(name)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(Space.XS)
        for part in (self.less, self.field, self.more):
            row.addWidget(part)
        row.addSpacing(Space.XS)
        row.addWidget(self.unit)
        row.addStretch(1)
        self.setFocusProxy(self.field)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)  # else no order of Tab could be given to it
        self.set(least)

    def _make_field(self, name: str) -> None:
        self.field = QLineEdit(self)
        self.field.setAccessibleName(name)
        self.field.setAlignment(Qt.AlignmentFlag.AlignRight)
        self.field.setFixedWidth(self.fontMetrics().horizontalAdvance("0") * 8)
        self.field.setPlaceholderText(self._unsaid)
        self.field.editingFinished.connect(self._typed)

    def _make_buttons(self, name: str) -> None:
        self.less, self.more = QPushButton("\u2212", self), QPushButton("+", self)
        self.less.setAccessibleName(self.tr("{what}, less").format(what=name))
        self.more.setAccessibleName(self.tr("{what}, more").format(what=name))
        self.less.clicked.connect(self._step_down)
        self.more.clicked.connect(self._step_up)
        for button in (self.less, self.more):
            button.setFixedWidth(button.fontMetrics().height() * 2 + 4)
            button.setStyleSheet("padding-left: 2px; padding-right: 2px;")
            button.setFocusPolicy(Qt.FocusPolicy.NoFocus)  # Up and Down do the same
            button.setAutoRepeat(True)

    @property
    def value(self) -> float:
        """The number."""
        return self._value

    def set(self, value: float) -> None:
        """Show a number, without telling."""
        self._value = min(max(value, self._least), self._most)
        text = "" if self._unsaid and self._value == 0 else in_figures(self._value)
        if self.field.text() != text:
            self.field.setText(text)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Up and Down step; the field lets both through."""
        if event.key() == Qt.Key.Key_Up:
            self._step_up()
        elif event.key() == Qt.Key.Key_Down:
            self._step_down()
        else:
            super().keyPressEvent(event)

    @Slot()
    def _step_up(self) -> None:
        self._tell(self._said() + self._step)

    @Slot()
    def _step_down(self) -> None:
        self._tell(self._said() - self._step)

    @Slot()
    def _typed(self) -> None:
        self._tell(self._said())

    def _said(self) -> float:
        """The number that is typed, also before it is left; that of before where it is none."""
        if self._unsaid and not self.field.text().strip():
            return 0.0
        try:
            wanted = float(self.field.text().replace(",", "."))
        except ValueError:
            return self._value
        return wanted if wanted == wanted else self._value  # not a number is no number

    def _tell(self, value: float) -> None:
        before = self._value
        self.set(value)
        if self._value != before:
            self.changed.emit(self._value)
