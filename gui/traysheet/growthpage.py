"""Growth page: the growth of a tray, its readings and events on one time axis; noting and correcting them.

In    the tray that is looked at
Out   readings and events added, corrected, taken out of the book, each one step of undo
Not   painting (`timechart.py`), reading (`notes/view.py`), fitting (`growthfit.py`), what a correction does
      to the book (`notechanges.py`)
"""

from collections.abc import Callable
from datetime import datetime, timedelta
from typing import TYPE_CHECKING

from PySide6.QtCore import QRect, Signal, Slot
from PySide6.QtWidgets import QFrame, QScrollArea, QVBoxLayout, QWidget

from data.errors import BookError
from data.events import EventKind
from data.readings import NewReading, ReadingKind
from gui.bookreading import BookReading
from gui.controls.rolling import roll_down
from gui.language.spoken import spoken
from gui.mishap import trouble_words
from gui.notes.entry import NoteEntry
from gui.notes.table import NoteTable
from gui.notes.view import NoteRow, Notes, read_notes
from gui.style.palette import Space, set_role
from gui.style.words import wrapped
from gui.traysheet.growthfit import Fitted
from gui.traysheet.notechanges import change_value, delete, doubt_of, move, renote
from gui.traysheet.page import SheetPage
from gui.traysheet.timechart import TimeChart
from gui.traysheet.view import TrayState
from gui.work import Work

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["GrowthPage"]


class GrowthPage(SheetPage):
    """Chart, sentences and table scroll; the row for noting stays."""

    notes_read = Signal()

    def __init__(self, work: Work, parent: QWidget | None = None) -> None:
        super().__init__(work, parent)
        self._reading = BookReading(work, self)
        self._reading.came.connect(self._show_notes)
        self._reading.failed.connect(self._not_read)
        self._make_roll()
        self.entry = NoteEntry(self)
        self.entry.reading_wanted.connect(self._add_reading)
        self.entry.event_wanted.connect(self._add_event)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(Space.S)
        column.addWidget(self.roll, 1)
        column.addWidget(self.entry)

    def _make_roll(self) -> None:
        """What scrolls: the chart, its words, the table."""
        self.roll = QScrollArea(self)
        roll_down(self.roll)
        sheet = QFrame(self.roll)
        set_role(sheet, "sheet")
        self.chart = TimeChart(sheet)
        self.words = wrapped("", sheet)
        self.air = wrapped("", sheet)
        self.table = NoteTable(sheet)
        set_role(self.table, "plain")
        self.table.corrected.connect(self._correct)
        self.table.renoted.connect(self._renote)
        self.table.moved.connect(self._move)
        self.table.deleted.connect(self._delete)
        self.table.looked_at.connect(self._show_row)
        self.about_rows = wrapped("", sheet, "soft")
        inner = QVBoxLayout(sheet)
        inner.setContentsMargins(Space.M, Space.M, Space.M, Space.M)
        inner.setSpacing(Space.S)
        for part in (self.chart, self.words, self.air, self.table, self.about_rows):
            inner.addWidget(part)
        inner.addStretch(1)
        self.roll.setWidget(sheet)

    # --- showing

    def open_book(self, book: "Book | None") -> None:
        """Nothing of the book before."""
        super().open_book(book)
        self._reading.open(book)
        self.chart.show_notes(None)
        self.table.show_rows(())

    def show_state(self, state: TrayState) -> None:
        """Show this tray; its notes come from the background."""
        another = self.state is None or self.state.tray.id != state.tray.id
        super().show_state(state)
        self.chart.show_curves(state.curves, state.day_looked_at)
        if another:
            self.chart.show_notes(None)
            self.table.show_rows(())
            for words in (self.words, self.air, self.about_rows):
                words.clear()
            self.roll.verticalScrollBar().setValue(0)
            if self.book is not None:
                self.entry.begin(self.book.now())
            self.entry.say("")
        elif self.book is not None:
            self.entry.moment(self.book.now())
        self._read()

    @Slot(QRect)
    def _show_row(self, row: QRect) -> None:
        middle = self.table.mapTo(self.roll.widget() or self.table, row.center())
        self.roll.ensureVisible(0, middle.y(), 0, row.height())

    def show_fit(self, fitted: Fitted) -> None:
        """The curve, and what it says in words."""
        self.chart.show_fit(fitted)
        legend = self.tr(
            "Dots are photos; the line is the curve through them; the band holds it in 19 of 20 cases."
        )
        words = (*fitted.words, legend if fitted.line else "", self._media_words())
        self.words.setText("\n".join(line for line in words if line))

    def _media_words(self) -> str:
        """What coverage does not tell of mates on other media; empty where all are on one."""
        curves = () if self.state is None else self.state.curves
        if len({curve.medium for curve in curves}) < 2:
            return ""
        return self.tr(
            "Block mates on other media are drawn too. Coverage counts the whole inner area: a mat that lies "
            "deep comes out some points lower than a loose mix. The look list and the verdict count the "
            "growing bed."
        )

    def take_focus(self) -> None:
        """Where a number is typed at once."""
        self.entry.value.setFocus() if self.entry.value.isVisible() else self.entry.what.setFocus()

    def begin_event(self, kind: EventKind) -> None:
        """Ready to note this: the kind is chosen, the note has the focus."""
        self.entry.choose(kind)
        self.entry.note.setFocus()

    def renew(self) -> None:
        """Something was noted elsewhere, or taken back."""
        if self.isVisible():
            self._read()

    def stops(self) -> list[QWidget]:
        """What Tab comes by, in reading order."""
        return [self.chart, self.table, *self.entry.stops()]

    def redress(self) -> None:
        """Rows as high as the letters need."""
        self.table.fit_to_text()
        self.chart.updateGeometry()

    def _read(self) -> None:
        state = self.state
        if state is not None:
            self._reading.ask(lambda book, _cancel: read_notes(book, state.tray))

    @Slot(object)
    def _show_notes(self, notes: Notes) -> None:
        if self.state is None or notes.tray_id != self.state.tray.id:
            return
        self.chart.show_notes(notes)
        self.air.setText(" ".join(map(spoken, notes.air)))
        self.air.setVisible(bool(notes.air))
        self.table.show_rows(notes.rows)
        self.table.setVisible(bool(notes.rows))
        self.about_rows.setText(self._about(notes))
        self.notes_read.emit()

    def _about(self, notes: Notes) -> str:
        if notes.unknown:
            return self.tr(
                "{count} of a kind that this program does not know, as of a newer Evenstand: kept, not shown."
            ).format(count=notes.unknown)
        if notes.left_out:
            return self.tr("{count} readings of loggers are drawn above and not listed here.").format(
                count=notes.left_out
            )
        if not notes.rows:
            return self.tr(
                "Nothing is noted of this tray yet. Type its weight, a watering or what you did into the row "
                "below."
            )
        return ""

    @Slot(object)
    def _not_read(self, error: Exception) -> None:
        self.about_rows.setText(trouble_words(error))

    # --- what a person notes

    @Slot(object, float, str)
    def _add_reading(self, kind: ReadingKind, value: float, note: str) -> None:
        state, book = self.state, self.book
        if state is None or book is None:
            return
        at = self.entry.moment(book.now())
        if not self._is_possible(at):
            return
        doubt = doubt_of(book, state.tray, kind, value)
        new = NewReading(kind=kind, value=value, taken_at=at, tray_id=state.tray.id, note=note)
        if self._do(lambda book: book.add_readings([new])):
            self.entry.empty()
            self.entry.value.setFocus()
            if doubt:
                self.entry.say(self.tr("Kept. {doubt}").format(doubt=spoken(doubt)), "notice")

    @Slot(object, str)
    def _add_event(self, kind: EventKind, note: str) -> None:
        state, book = self.state, self.book
        if state is None or book is None:
            return
        at = self.entry.moment(book.now())
        if not self._is_possible(at):
            return
        if self._do(lambda book: book.add_event([state.tray.id], kind, at, note)):
            self.entry.empty()
            if kind in (EventKind.CUT, EventKind.THROWN_AWAY):
                words = self.tr("{code} has left the rack; its photos stay in the book.")
                self.told.emit(words.format(code=state.tray.code))

    def _is_possible(self, at: datetime) -> bool:
        state, book = self.state, self.book
        if state is None or book is None:
            return False
        if at < state.tray.sown_at - timedelta(days=3):
            self.entry.say(self.tr("That was before the tray was sown. Is the date right?"))
            return False
        if at > book.now() + timedelta(days=1):
            self.entry.say(self.tr("That is still to come. Is the date right?"))
            return False
        return True

    @Slot(object, float)
    def _correct(self, row: NoteRow, value: float) -> None:
        self._do(lambda book: change_value(book, row, value))

    @Slot(object, str)
    def _renote(self, row: NoteRow, note: str) -> None:
        self._do(lambda book: renote(book, row, note))

    @Slot(object, object)
    def _move(self, row: NoteRow, at: datetime) -> None:
        if self._is_possible(at):
            self._do(lambda book: move(book, row, at))

    @Slot(object)
    def _delete(self, row: NoteRow) -> None:
        state = self.state
        if state is not None:
            self._do(lambda book: delete(book, row, state.tray))

    def _do(self, change: Callable[["Book"], object]) -> bool:
        """Change the book; where it says no, its sentence stands below the row."""
        if self.book is None:
            return False
        try:
            change(self.book)
        except BookError as error:
            self.entry.say(spoken(error))
            return False
        self.entry.say("")
        self.book_changed.emit()
        return True
