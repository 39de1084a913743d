"""Note entry: one row in which a reading or an event of a tray is typed.

In    the time that it is now for the book
Out   `reading_wanted`, `event_wanted` with what was typed
Not   keeping it (`traysheet/growthpage.py`), many trays at once (the Bench)
"""

from datetime import datetime

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QComboBox, QLabel, QLineEdit, QPushButton, QVBoxLayout, QWidget

from data.entry.units import parse, quantity_of
from data.events import EventKind
from data.readings import ReadingKind
from gui.controls.bounce import Bounce
from gui.controls.flow import Flow
from gui.controls.telling import tell
from gui.language.spoken import spoken
from gui.notes.moments import MomentEdit, moment_in, show_moment
from gui.notes.table import number_in
from gui.notes.unitwords import counts_words, heed_words, scale_words, unit_words
from gui.notes.view import event_words, kind_words
from gui.style.palette import Space, set_role
from gui.style.words import wrapped

__all__ = ["NoteEntry"]

Kind = ReadingKind | EventKind
ENTERS = (Qt.Key.Key_Return, Qt.Key.Key_Enter)
READINGS = tuple(kind for kind in ReadingKind if kind is not ReadingKind.BREAKDOWN_EYE)  # of a test only
NOT_OFFERED = (EventKind.SOWED, EventKind.SET_UP)
EVENTS = (EventKind.NOTE, *(kind for kind in EventKind if kind not in (*NOT_OFFERED, EventKind.NOTE)))


class NoteEntry(QWidget):
    """What, how much, when, a note; Enter anywhere in it keeps it."""

    reading_wanted = Signal(object, float, str)  # kind, value, note
    event_wanted = Signal(object, str)  # kind, note

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._now = datetime.now()
        self.what = self._make_what()
        self.value = QLineEdit(self)
        self.value.setAccessibleName(self.tr("How much"))
        self.value.setFixedWidth(10 * self.fontMetrics().averageCharWidth() + Space.XL)
        self.unit = QLabel(self)
        self.at = MomentEdit(self)
        self.at.setAccessibleName(self.tr("When it was"))
        self.note = QLineEdit(self)
        self.note.setAccessibleName(self.tr("Note"))
        self.note.setPlaceholderText(self.tr("Note"))
        self.note.setMinimumWidth(18 * self.fontMetrics().averageCharWidth())
        self.add = QPushButton(self.tr("Note it"), self)
        self.add.setToolTip(self.tr("Keep it in the book (Enter); Ctrl+Z takes it back"))
        self._bounce = Bounce()
        self.add.clicked.connect(self._bounce.once(self._add))
        self.said = wrapped("", self)
        self.said.hide()
        self._lay_out()
        self._fit_to_kind()

    def _make_what(self) -> QComboBox:
        made = QComboBox(self)
        made.setAccessibleName(self.tr("What is noted"))
        for reading in READINGS:
            made.addItem(kind_words(reading), reading)
        made.insertSeparator(made.count())
        for event in EVENTS:
            made.addItem(event_words(event), event)
        made.currentIndexChanged.connect(self._fit_to_kind)
        return made

    def _lay_out(self) -> None:
        set_role(self.add, "rack-main")
        for field in (self.what, self.value, self.at, self.note):
            set_role(field, "rack")
        row = Flow()
        for part in (self.what, self.value, self.unit, self.at, self.note, self.add):
            row.addWidget(part)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(Space.XS)
        column.addLayout(row)
        column.addWidget(self.said)

    def stops(self) -> list[QWidget]:
        """What Tab comes by, in reading order."""
        return [self.what, self.value, self.at, self.note, self.add]

    def begin(self, now: datetime) -> None:
        """Nothing typed yet, at this time."""
        self._show_now(now)
        self.empty()

    def moment(self, now: datetime) -> datetime:
        """When it was: now, however long the page stands open; or the time that a person has set."""
        if moment_in(self.at) == self._now:
            self._show_now(now)
        return moment_in(self.at)

    def _show_now(self, now: datetime) -> None:
        show_moment(self.at, now)
        self._now = moment_in(self.at)

    def empty(self) -> None:
        """Nothing typed, and nothing in the fields to take back: Ctrl+Z is the book's."""
        self.value.setText("")
        self.note.setText("")

    def choose(self, kind: Kind) -> None:
        """What is to be noted."""
        self.what.setCurrentIndex(self.what.findData(kind))

    def say(self, words: str, role: str = "alarm") -> None:
        """A sentence below the row; empty: none."""
        tell(self.said, words, role)
        self.said.setVisible(bool(words))

    @property
    def kind(self) -> Kind:
        """What is chosen."""
        kind = self.what.currentData()
        return ReadingKind(kind) if kind in [str(one) for one in ReadingKind] else EventKind(kind)

    @Slot()
    def _fit_to_kind(self) -> None:
        kind = self.kind
        reads = isinstance(kind, ReadingKind)
        self.value.setVisible(reads)
        self.unit.setVisible(reads)
        if isinstance(kind, ReadingKind):
            self.unit.setText(unit_words(kind.unit))
            self.value.setToolTip(self._number_words(kind))
        asked = {EventKind.THROWN_AWAY: self.tr("Why?"), EventKind.NOTE: self.tr("What you saw")}
        words = asked.get(kind, self.tr("Note")) if isinstance(kind, EventKind) else self.tr("Note")
        self.note.setPlaceholderText(words)
        self._hint()

    def _number_words(self, kind: ReadingKind) -> str:
        scale = scale_words(kind)
        if scale:
            return self.tr("A number {scale}").format(scale=scale)
        return self.tr("A number in {unit}").format(unit=unit_words(kind.unit))

    def _hint(self) -> None:
        """What the ends of a scale mean, where there is one, and what is to be heeded."""
        kind = self.kind
        if not isinstance(kind, ReadingKind):
            self.say(counts_words(kind), "soft")
            return
        scale, heed = scale_words(kind) and self._number_words(kind), heed_words(kind)
        self.say(". ".join(filter(None, (scale, heed))), "notice" if heed else "soft")

    @Slot()
    def _add(self) -> None:
        kind, note = self.kind, self.note.text().strip()
        if isinstance(kind, EventKind):
            if kind is EventKind.THROWN_AWAY and not note:
                self.say(self.tr("Say why it was thrown away: it stays in its trial, and the reason counts."))
                self.note.setFocus()
                return
            if kind is EventKind.NOTE and not note:
                self.say(self.tr("Type what you saw."))
                self.note.setFocus()
                return
            self.say("")
            self.event_wanted.emit(kind, note)
            return
        value, why = typed(self.value.text(), kind)
        if value is None:
            self.say(why or self._wanted_words(kind))
            self.value.setFocus()
            self.value.selectAll()
            return
        self._hint()
        self.reading_wanted.emit(kind, value, note)

    def _wanted_words(self, kind: ReadingKind) -> str:
        scale = scale_words(kind)
        words = (
            self.tr("Type a number {scale}, for example {example}.")
            if scale
            else self.tr("Type a number in {unit}, for example {example}.")
        )
        example = EXAMPLES.get(kind, "4" if scale else "20")
        return words.format(scale=scale, unit=unit_words(kind.unit), example=example)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter keeps it; other keys that a field has no use for go no further than here."""
        if event.key() in ENTERS:
            self._add()
        elif event.key() == Qt.Key.Key_Escape:
            event.ignore()


def typed(text: str, kind: ReadingKind) -> tuple[float | None, str]:
    """The number in the book's unit, or None and why: "28.6 oz" is a weight, "68 F" a temperature."""
    if not text.strip():
        return None, ""
    quantity = quantity_of(kind.unit)
    if quantity is None:
        return number_in(text), ""
    found = parse(text, quantity)
    return found.value, spoken(found.reason or "")


EXAMPLES = {
    ReadingKind.WEIGHT: "812",
    ReadingKind.HUMIDITY: "65",
    ReadingKind.WATER: "250",
    ReadingKind.FEED: "250",
    ReadingKind.SHELF_LIFE: "9",
}
