"""Number field: a number with a smaller and a larger button, for wet hands and for keys.

In    a number, its limits, its step, its unit
Out   `changed` when the person has set another number
Not   what the number means (each page)

With `unsaid` nought means that nobody has said it, and those words stand in the field; where 0 itself can be
meant (`nought`) only an empty field is unsaid, a step below 0.
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
        nought: bool = False,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._least, self._most, self._step = least, most, step
        self._value = least
        self._unsaid, self._nought = unsaid, nought
        self._is_said = False
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
        self.set(None if nought else least)

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
        """The number; 0 where nothing is said."""
        return self._value

    @property
    def said(self) -> float | None:
        """The number, or None where nothing is said."""
        return self._value if self._is_said else None

    def set(self, value: float | None) -> None:
        """Show a number, or None for nothing said, without telling."""
        self._value = min(max(value or 0.0, self._least), self._most)
        self._is_said = value is not None and not (self._unsaid and self._value == 0 and not self._nought)
        text = in_figures(self._value) if self._is_said else ""
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
        self._tell((self._typed_number() or 0.0) + self._step)

    @Slot()
    def _step_down(self) -> None:
        number = self._typed_number()
        below = self._nought and (number or 0.0) <= self._least
        self._tell(None if below else (number or 0.0) - self._step)

    @Slot()
    def _typed(self) -> None:
        self._tell(self._typed_number())

    def _typed_number(self) -> float | None:
        """The number that is typed, also before it is left; that of before where it is none."""
        if self._unsaid and not self.field.text().strip():
            return None
        try:
            wanted = float(self.field.text().replace(",", ".").replace("−", "-"))
        except ValueError:
            return self.said
        return wanted if wanted == wanted else self.said  # not a number is no number

    def _tell(self, value: float | None) -> None:
        before = self.said
        self.set(value)
        if self.said != before:
            self.changed.emit(self._value)
