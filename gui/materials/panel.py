"""Material panel: one cell of the table of media, with its numbers, its sources and what can be done.

In    a reading, the row and the medium
Out   `action_wanted`: a kind of test, "factor NAME", "note", "log", "feed" or "kind"; `trial_wanted`
Not   doing it (`screen.py`)
"""

from collections.abc import Iterator

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QPushButton, QScrollArea, QVBoxLayout, QWidget

from data.materials.reading import MaterialReading
from data.materials.table import Origin, Row
from data.medium.feeds import ASK_FIRST, COMPARE
from gui.language.spoken import spoken
from gui.materials.cellpainter import DOT, draw_origin
from gui.materials.view import origin_words, panel_words, row_of
from gui.style.palette import Space, set_role
from gui.style.words import wrapped

__all__ = ["MaterialPanel", "OriginMark"]


class OriginMark(QWidget):
    """The dot of a source."""

    def __init__(self, origin: Origin, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._origin = origin
        self.setFixedSize(int(DOT) + 3, int(DOT) + 3)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw it."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        draw_origin(painter, 1, 1, self._origin)
        painter.end()


class MaterialPanel(QScrollArea):
    """Scrolls where the words are many."""

    action_wanted = Signal(str, str)  # what, medium
    trial_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setAccessibleName(self.tr("The chosen cell"))  # arrow keys scroll what is long
        set_role(self, "read")
        self._action, self._medium = "", ""
        self._cell = ("", "")

    def show_cell(self, reading: MaterialReading, key: str, medium: str) -> None:
        """Show one cell."""
        row = row_of(key)
        cell = reading.table.cell(key, medium)
        focused, rolled = self._focused(), self.verticalScrollBar().value()
        same, self._cell = (key, medium) == self._cell, (key, medium)
        self._action, self._medium = row.action, medium
        body = QFrame()
        set_role(body, "sheet")
        column = QVBoxLayout(body)
        column.setContentsMargins(Space.L, Space.M, Space.L, Space.M)
        column.setSpacing(Space.S)
        title = wrapped(f"{spoken(row.words)}, {medium}", body, "title")
        column.addWidget(title)
        if cell.gap is None:
            mark = QHBoxLayout()
            mark.setSpacing(Space.S)
            mark.addWidget(OriginMark(cell.origin, body))
            mark.addWidget(QLabel(origin_words(cell.origin), body), 1)
            column.addLayout(mark)
        said = list(panel_words(reading.table, row, medium, reading))
        if row.action == "feed":
            said += [("", spoken(sentence)) for sentence in (ASK_FIRST, COMPARE)]
        for role, text in said:
            column.addWidget(_said(text, role, body))
        for button in self._buttons(row, body, gap=cell.gap is not None):
            column.addWidget(button)
        column.addStretch(1)
        self.setWidget(body)
        if same:
            self.verticalScrollBar().setValue(rolled)
        if focused is not None:  # the dialog that it opened has been answered: the hands are there still
            buttons = body.findChildren(QPushButton)
            (buttons[focused] if focused < len(buttons) else self).setFocus()

    def _focused(self) -> int | None:
        """Which button has the focus, or had it when a dialog came over it."""
        body = self.widget()
        buttons = [] if body is None else body.findChildren(QPushButton)
        now = self.window().focusWidget()
        return next((n for n, button in enumerate(buttons) if button is now), None)

    def _buttons(self, row: Row, body: QWidget, *, gap: bool) -> Iterator[QPushButton]:
        """What fills the cell or changes its numbers."""
        words = self._button_words(row, gap=gap)
        if words:
            button = QPushButton(self._folded(words), body)
            button.clicked.connect(self._wanted)
            yield button
        if row.action == "feed":
            trial = QPushButton(self._folded(self.tr("Plan a trial with and without feed")), body)
            trial.clicked.connect(self.trial_wanted)
            yield trial

    def _folded(self, words: str) -> str:
        """In two lines where one is too wide: a button would push all words out of sight."""
        room = self.viewport().width() - 2 * Space.L - 4 * Space.M
        if self.fontMetrics().horizontalAdvance(words) <= room:
            return words
        spaces = [at for at, letter in enumerate(words) if letter == " "]
        if not spaces:
            return words
        middle = min(spaces, key=lambda at: abs(at - len(words) / 2))
        return f"{words[:middle]}\n{words[middle + 1 :]}"

    def _button_words(self, row: Row, *, gap: bool) -> str:
        if row.action.startswith("factor "):
            return self.tr("Type it in...") if gap else self.tr("Look at its numbers...")
        return {
            "wetting": self.tr("Wetting test..."),
            "cooling": self.tr("Cooling test..."),
            "breakdown": self.tr("Break-down..."),
            "feed": self.tr("Say what it is fed..."),
            "kind": self.tr("Say which kind it is..."),
            "note": self.tr("Go to a tray sheet"),
            "log": self.tr("Bring in a logger's file"),
        }.get(row.action, "")

    @Slot()
    def _wanted(self) -> None:
        self.action_wanted.emit(self._action, self._medium)


def _said(text: str, role: str, body: QWidget) -> QLabel:
    label = wrapped(text, body)
    label.setTextFormat(Qt.TextFormat.PlainText)
    label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
    if role:
        set_role(label, role)
    return label
