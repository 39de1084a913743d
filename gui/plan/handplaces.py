"""Hand places: the places of all trays that a grower drew on paper, typed or pasted.

In    a kept plan, the blocks whose trays stand already, whether a reason is wanted
Out   `filled`, the order on each shelf; `why`, how they were drawn
Not   what is wrong with a place (`data/plan/handplaces.py`), keeping it (`keeper.py`)
"""

from collections.abc import Sequence

from PySide6.QtCore import QSignalBlocker, QSize, Qt, Signal, Slot
from PySide6.QtGui import QGuiApplication, QKeyEvent, QKeySequence
from PySide6.QtWidgets import (
    QDialog,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from data.plan.drawing import Filled
from data.plan.handplaces import HandPlaces, Seat, read_places, seats
from data.trial import Plan
from gui.controls.rolling import rolling
from gui.language.spoken import begun, spoken
from gui.language.words import translate
from gui.style.palette import Space, set_role
from gui.style.words import soft, wrapped

__all__ = ["HandPlacesDialog", "column_in", "seat_words"]

FIELD_LETTERS = 8
LETTERS_WIDE, LINES_HIGH = 90, 34


class PlaceField(QLineEdit):
    """The place of one tray; a column that is pasted goes on in the fields below."""

    pasted = Signal(object)  # lines
    left_down = Signal()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter goes to the next field, as it does in a list."""
        lines = (
            column_in(QGuiApplication.clipboard().text())
            if event.matches(QKeySequence.StandardKey.Paste)
            else []
        )
        if len(lines) > 1:
            self.pasted.emit(lines)
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Down):
            self.left_down.emit()
        else:
            super().keyPressEvent(event)


class HandPlacesDialog(QDialog):
    """A line for each tray; it can be kept once each place is taken once."""

    def __init__(
        self, plan: Plan, standing: Sequence[str], *, drawn_before: bool, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Places drawn on paper"))
        self._plan, self._seats = plan, seats(plan, standing)
        self._drawn_before = drawn_before
        self.read: HandPlaces | None = None
        self.fields: list[PlaceField] = []
        self.signs: list[QLabel] = []
        self.words = wrapped(
            self.tr(
                "Type for each tray where it stands: the number of its place along the shelf, as the lot "
                "said. A whole column can be pasted. Keep to the lots: trays put where they look best make a "
                "trial that proves nothing."
            ),
            self,
        )
        self.paste = QPushButton(self.tr("Paste a column"), self)
        self.paste.setToolTip(self.tr("One place a line, in the order of this list, from the top"))
        self.paste.clicked.connect(self._paste)
        self.why_field = QLineEdit(self.tr("lots drawn from a hat"), self)
        self.why_field.setAccessibleName(self.tr("How were they drawn?"))
        self.why_field.textChanged.connect(self._read)
        self.told = wrapped("", self)
        self.keep = QPushButton(self.tr("Keep these places"), self)
        set_role(self.keep, "main")
        self.keep.clicked.connect(self.accept)
        self._lay_out()
        self._read()

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(Space.XL, Space.L, Space.XL, Space.L)
        column.setSpacing(Space.M)
        column.addWidget(self.words)
        column.addWidget(self.paste, 0, Qt.AlignmentFlag.AlignLeft)
        column.addWidget(rolling(self, [self._make_lines()]), 1)
        asked = QHBoxLayout()
        asked.addWidget(QLabel(self.tr("How were they drawn?"), self))
        asked.addWidget(self.why_field, 1)
        column.addLayout(asked)
        column.addWidget(self.told)
        column.addLayout(self._make_buttons())
        letter, line = self.fontMetrics().averageCharWidth(), self.fontMetrics().lineSpacing()
        size = QSize(LETTERS_WIDE * letter, LINES_HIGH * line)
        self.resize(size.boundedTo(self.screen().availableSize()))
        self.fields[0].setFocus()

    def _make_lines(self) -> QWidget:
        body = QWidget(self)
        grid = QGridLayout(body)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(Space.M)
        grid.setVerticalSpacing(Space.XS)
        grid.setColumnStretch(2, 1)
        for line, seat in enumerate(self._seats):
            label = QLabel(seat_words(seat), body)
            label.setTextFormat(Qt.TextFormat.PlainText)
            field = PlaceField(body)
            field.setAccessibleName(self.tr("Place of {tray}").format(tray=label.text()))
            field.setFixedWidth(FIELD_LETTERS * field.fontMetrics().averageCharWidth() + 2 * Space.M)
            field.textChanged.connect(self._read)
            field.pasted.connect(self._pasted)
            field.left_down.connect(self.focusNextChild)
            sign = soft("", body)
            for place, part in enumerate((label, field, sign)):
                grid.addWidget(part, line, place)
            self.fields.append(field)
            self.signs.append(sign)
        return body

    def _make_buttons(self) -> QHBoxLayout:
        close = QPushButton(self.tr("Leave"), self)
        close.setAutoDefault(False)
        close.clicked.connect(self.reject)
        for button in (self.paste, self.keep):
            button.setAutoDefault(False)  # Enter goes to the next field
        row = QHBoxLayout()
        row.setSpacing(Space.S)
        row.addStretch(1)
        row.addWidget(close)
        row.addWidget(self.keep)
        return row

    # --- what was typed

    @property
    def filled(self) -> Filled | None:
        """Who stands where; None until every tray has its own place."""
        return None if self.read is None else self.read.filled

    @property
    def why(self) -> str:
        """How they were drawn, in the grower's words."""
        return self.why_field.text().strip()

    def fill(self, lines: Sequence[str], first: int = 0) -> None:
        """Set the fields from one on; what is more than there are fields is left."""
        for field, text in zip(self.fields[first:], lines, strict=False):
            with QSignalBlocker(field):  # each would be read with all others
                field.setText(text)
        self._read()

    @Slot()
    def _paste(self) -> None:
        self.fill(column_in(QGuiApplication.clipboard().text()))

    @Slot(object)
    def _pasted(self, lines: Sequence[str]) -> None:
        field = self.sender()
        assert isinstance(field, PlaceField)
        self.fill(lines, self.fields.index(field))

    @Slot()
    def _read(self) -> None:
        """Say of each line what is wrong with it, and whether all can be kept."""
        read = self.read = read_places(self._plan, self._seats, [field.text() for field in self.fields])
        wrong = {problem.line: spoken(problem.words) for problem in read.problems}
        for line, sign in enumerate(self.signs):
            sign.setText(begun(wrong.get(line, "")))
            self.fields[line].setAccessibleDescription(sign.text())
            set_role(sign, "alarm" if line in wrong else "soft")
        wanted = self._drawn_before and not self.why
        self.told.setText(self._told(read, why_wanted=wanted))
        self.keep.setEnabled(read.filled is not None and not wanted)

    def _told(self, read: HandPlaces, *, why_wanted: bool) -> str:
        if len(read.problems) == 1:
            return self.tr("One place has to be mended.")
        if read.problems:
            return self.tr("{n} places have to be mended.").format(n=len(read.problems))
        if read.open == 1:
            return self.tr("One tray has no place yet.")
        if read.open:
            return self.tr("{n} trays have no place yet.").format(n=read.open)
        if why_wanted:
            return self.tr("Say how they were drawn: the drawing before is kept beside this one.")
        return self.tr("Every tray has its place.")


def seat_words(seat: Seat) -> str:
    """Which tray is asked for."""
    words = translate("HandPlacesDialog", "{block}: {crop}, {treatment}")
    told = words.format(
        block=begun(spoken(seat.block.name)), crop=seat.crop, treatment=spoken(seat.treatment)
    )
    return f"{told} ({seat.number})" if seat.of > 1 else told


def column_in(text: str) -> list[str]:
    """The last cell of each line of what was copied from a table; empty lines at the end are none."""
    lines = text.rstrip().splitlines()
    return [line.replace(";", "\t").split("\t")[-1].strip() for line in lines]
