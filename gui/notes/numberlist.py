"""Number list: lines of a name and a value; each tells on hovering and on focus how it was had.

In    `NumberLine`s, or plain pairs of words
Out   nothing
Not   the words (`numberwords.py`)
"""

from collections.abc import Sequence

from PySide6.QtCore import QEvent, QPoint, Qt
from PySide6.QtGui import QColor, QFocusEvent, QPainter, QPaintEvent
from PySide6.QtWidgets import QGridLayout, QLabel, QToolTip, QWidget

from gui.language.plainhint import plain_hint
from gui.notes.numberwords import NumberLine
from gui.style.palette import Space, set_role, tokens_now

__all__ = ["NumberList"]

LINE = 2  # px, below what has the focus


class _Value(QLabel):
    """A value that can be reached by Tab, and then says how it was had."""

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        if self.hasFocus():
            painter = QPainter(self)
            painter.fillRect(0, self.height() - LINE, self.width(), LINE, QColor(tokens_now().accent))
            painter.end()

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        by_key = event.reason() in (Qt.FocusReason.TabFocusReason, Qt.FocusReason.BacktabFocusReason)
        if by_key and self.toolTip():
            QToolTip.showText(self.mapToGlobal(QPoint(0, self.height())), self.toolTip(), self)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        QToolTip.hideText()
        super().focusOutEvent(event)


class NumberList(QWidget):
    """Rows that are made once and then only change their words."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._rows: list[tuple[QLabel, QLabel, QLabel]] = []
        self._lines: tuple[NumberLine, ...] = ()
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(Space.M)
        self._grid.setVerticalSpacing(Space.XS)
        self._grid.setColumnStretch(1, 1)

    def show_lines(self, lines: Sequence[NumberLine]) -> None:
        """Show these."""
        if tuple(lines) == self._lines:
            return
        self._lines = tuple(lines)
        while len(self._rows) < len(lines):
            self._add_row()
        for number, row in enumerate(self._rows):
            line = lines[number] if number < len(lines) else None
            for part in row:
                part.setVisible(line is not None)
            if line is not None:
                self._fill(row, line)

    def _add_row(self) -> None:
        label, value, why = QLabel(self), _Value(self), QLabel(self)
        set_role(label, "soft")
        set_role(why, "small")
        for part in (label, value, why):
            part.setTextFormat(Qt.TextFormat.PlainText)
            part.setWordWrap(True)
        at = 2 * len(self._rows)
        self._grid.addWidget(label, at, 0, Qt.AlignmentFlag.AlignTop)
        self._grid.addWidget(value, at, 1)
        self._grid.addWidget(why, at + 1, 0, 1, 2)
        self._rows.append((label, value, why))

    def _fill(self, row: tuple[QLabel, QLabel, QLabel], line: NumberLine) -> None:
        label, value, why = row
        label.setText(line.label)
        value.setText(line.value)
        for part in (label, value):
            part.setToolTip(plain_hint(line.how))
        value.setAccessibleName(": ".join(filter(None, (line.label, line.value, line.means))))
        value.setAccessibleDescription(line.how)
        value.setFocusPolicy(Qt.FocusPolicy.TabFocus if line.how else Qt.FocusPolicy.NoFocus)
        below = line.how if line.missing else line.means
        why.setText(below)
        why.setVisible(bool(below))

    def stops(self) -> list[QWidget]:
        """What Tab comes by, in reading order."""
        return [value for _, value, _ in self._rows if value.focusPolicy() & Qt.FocusPolicy.TabFocus]

    def show_pairs(self, pairs: Sequence[tuple[str, str]]) -> None:
        """Show words without a story behind them."""
        self.show_lines([NumberLine(name=name, label=name, value=value, how="") for name, value in pairs])

    def changeEvent(self, event: QEvent) -> None:
        """Columns follow the letters."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            self._grid.invalidate()
