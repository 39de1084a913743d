"""Tray sheet: one tray with its picture, its days, its numbers, and what only a person can say.

In    a tray's id; the open book
Out   mold or not mold, how a tray ended, kept in the book; `book_changed` when something was said
Not   reading (`view.py`), laying out (`body.py`), the views of the tray (`views.py`)
"""

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Slot
from PySide6.QtGui import QKeyEvent, QResizeEvent
from PySide6.QtWidgets import QStackedLayout, QWidget

from data.errors import BookError
from data.events import EventKind
from data.records import PhotoId, Said, SuspectId, TrayId
from gui.photo.thumbnails import Thumbnails
from gui.screen import Screen
from gui.style.palette import set_role
from gui.traysheet.body import SheetBody
from gui.traysheet.empty import SheetEmpty
from gui.traysheet.fitting import Fitting
from gui.traysheet.keys import SHEET_KEYS
from gui.traysheet.past.benchlists import BenchLists
from gui.traysheet.view import TrayState, read_tray
from gui.traysheet.views import KEYS as VIEW_KEYS
from gui.traysheet.views import WITH_DAYS, View
from gui.work import Work

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["TraySheet"]


class TraySheet(Screen):
    """The picture is the largest thing; numbers lie beside it."""

    KEYS = SHEET_KEYS

    def __init__(self, work: Work, parent: QWidget | None = None) -> None:
        super().__init__(work, parent)
        self._tray: TrayId | None = None
        self._photo: PhotoId | None = None
        self._state: TrayState | None = None
        self.thumbnails = Thumbnails(work, self)
        self.fitting = Fitting(work, self)
        self._ended = BenchLists(work, self)
        self.empty = SheetEmpty(self)
        self.body = SheetBody(work, self.thumbnails, self)
        self._stack = QStackedLayout(self)
        self._stack.addWidget(self.empty)
        self._stack.addWidget(self.body)
        self._name_parts()
        self._connect()
        self.redress()

    def _name_parts(self) -> None:
        """What is asked for by name."""
        body = self.body
        self.views, self.strip, self.side = body.views, body.strip, body.side
        self.picture, self.bar = body.views.picture.view, body.views.picture.bar
        self.title, self.about, self.roll = body.title, body.about, body.roll
        self.before, self.after = body.before, body.after
        self.to_bench = self.empty.button

    def _connect(self) -> None:
        self.empty.pressed.connect(self._want_bench)
        self.empty.other_pressed.connect(self.choose_ended)
        self.strip.day_chosen.connect(self._choose_day)
        self.before.clicked.connect(self._go_before)
        self.after.clicked.connect(self._go_after)
        self.fitting.fitted.connect(self.side.growth.show_fit)
        self.fitting.fitted.connect(self.side.show_fit)
        self.fitting.fitted.connect(self.views.growth.show_fit)
        self.body.bar.chosen.connect(self.show_view)
        self.views.view_changed.connect(self._view_changed)
        self.views.book_changed.connect(self._changed)
        self.views.told.connect(self.told)
        self.views.troubled.connect(self.troubled)
        side = self.side
        side.suspects.said.connect(self._say)
        side.suspects.looked_at.connect(self._look_at)
        side.cut_wanted.connect(self._cut)
        side.throw_wanted.connect(self._throw_away)
        side.reopen_wanted.connect(self._reopen)
        side.change_wanted.connect(self._want_conditions)
        side.swap_wanted.connect(self._swap)
        side.ended_wanted.connect(self.choose_ended)
        self._ended.tray_chosen.connect(self._open_ended)
        self._ended.troubled.connect(self.troubled)

    # --- which tray, which day, which view

    def open_book(self, book: "Book | None") -> None:
        """Another book: no tray is open."""
        self._tray = self._photo = self._state = None
        self.thumbnails.clear()
        self.fitting.forget()
        self.body.colours.forget()
        self.views.open_book(book)
        super().open_book(book)

    def unkept(self) -> str:
        """Strokes and conditions."""
        return self.views.unkept()

    def open_tray(self, tray_id: int, photo_id: int | None = None) -> None:
        """Show the picture of this tray at a photo, else at its newest day that can be used."""
        self.views.go_to(View.PICTURE)
        self._turn_to(tray_id, photo_id)

    def _turn_to(self, tray_id: int, photo_id: int | None = None) -> None:
        """Another tray, looked at in the same way."""
        self._tray, self._photo = TrayId(tray_id), None if photo_id is None else PhotoId(photo_id)
        self.roll.verticalScrollBar().setValue(0)
        self.renew()

    @Slot(int)
    def _choose_day(self, photo_id: int) -> None:
        self._photo = PhotoId(photo_id)
        self.renew()

    @Slot()
    def _go_before(self) -> None:
        if self._state is not None and self._state.before is not None:
            self._turn_to(self._state.before)

    @Slot()
    def _go_after(self) -> None:
        if self._state is not None and self._state.after is not None:
            self._turn_to(self._state.after)

    @Slot()
    def _want_bench(self) -> None:
        self.place_wanted.emit("bench")

    @Slot()
    def choose_ended(self) -> None:
        """Let the grower open a tray that grows no more."""
        self._ended.show_ended(self.book)

    @Slot(int)
    def _open_ended(self, tray_id: int) -> None:
        self.open_tray(tray_id)
        self.strip.setFocus()

    @Slot(object)
    def show_view(self, view: View) -> None:
        """Bring one way to look at the tray to the front, ready for the keyboard."""
        self.views.go_to(view)
        self.views.page.take_focus()

    @Slot(object)
    def _view_changed(self, view: View) -> None:
        self.body.bar.show_view(view)
        state = self._state
        # the other views have a main action of their own
        set_role(self.after, "rack-main" if view in WITH_DAYS else "rack")
        self.strip.setVisible(view in WITH_DAYS and bool(state and state.days))
        self.body.order_stops()
        if state is not None and self.book is not None:
            self.fitting.ask(self.book, state)

    @Slot()
    def _want_conditions(self) -> None:
        self.show_view(View.CONDITIONS)

    # --- reading and showing

    def renew(self) -> None:
        """Read the tray again (6 ms) and show what has changed."""
        state = None
        if self.book is not None and self._tray is not None:
            try:
                state = read_tray(self.book, self._tray, self._photo)
            except KeyError:
                self._tray = None  # its adding was undone
            except BookError as error:
                self.troubled.emit(str(error))
                return
        self.show_state(state)

    def show_state(self, state: TrayState | None) -> None:
        """Show this, whatever was shown before."""
        same = state == self._state
        self._state = state
        self._stack.setCurrentWidget(self.empty if state is None else self.body)
        if state is None or self.book is None:
            return
        self.body.colours.ask(self.book, state)
        if same:
            self.views.growth.renew()
            return
        self.body.show_state(state)
        self.strip.setVisible(self.views.view in WITH_DAYS and bool(state.days))
        self.views.show_state(state)
        self.body.order_stops()
        self.fitting.ask(self.book, state)

    @Slot(int)
    def _look_at(self, number: int) -> None:
        self.views.go_to(View.PICTURE)
        self.views.picture.look_at_suspect(number)

    # --- what a person says

    @Slot(int, object)
    def _say(self, suspect_id: int, said: Said | None) -> None:
        self.keep(lambda book: book.say(SuspectId(suspect_id), said))
        self._changed()

    @Slot()
    def _cut(self) -> None:
        """The tray was harvested."""
        state = self._state
        if state is None:
            return
        if self.keep(lambda book: book.add_event([state.tray.id], EventKind.CUT, book.now())):
            from data.growing.croptable import doubt_of_cut

            words = self.tr("{code} has left the rack; its photos stay in the book.")
            doubt = doubt_of_cut(state.tray.crop, state.today) or ""
            self.told.emit(f"{words.format(code=state.tray.code)} {doubt}".strip())
            self.strip.setFocus()
        self._changed()

    @Slot()
    def _throw_away(self) -> None:
        """Ask why, where it is noted with its time."""
        self.views.go_to(View.GROWTH)
        self.views.growth.begin_event(EventKind.THROWN_AWAY)

    @Slot()
    def _reopen(self) -> None:
        """The tray grows after all."""
        state = self._state
        if state is not None:
            self.keep(lambda book: book.reopen_tray(state.tray.id))
            self._changed()

    @Slot()
    def _swap(self) -> None:
        """It was taken for another tray since some day."""
        from gui.traysheet.swapdialog import SwapDialog

        state, book = self._state, self.book
        if state is not None and book is not None:
            day = book.today() if state.day is None else state.day.taken_at.date()
            dialog = SwapDialog(book, state.tray, day, self)
            if dialog.exec() and self.keep(dialog.keep):
                self.told.emit(dialog.done_words)
                self._changed()

    @Slot()
    def _changed(self) -> None:
        self.renew()
        self.book_changed.emit()

    # --- the window

    def arrive(self) -> None:
        """The days have the focus, so that left and right work at once."""
        if self._state is None:
            self.to_bench.setFocus()
        elif self.strip.isVisible():
            self.strip.setFocus()
        else:
            self.views.page.take_focus()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Keys that work wherever the focus is on the sheet."""
        key = Qt.Key(event.key())
        plain = event.modifiers() in (Qt.KeyboardModifier.NoModifier, Qt.KeyboardModifier.KeypadModifier)
        if key == Qt.Key.Key_T and plain:
            self.choose_ended()
        elif self._state is None:
            super().keyPressEvent(event)
        elif key == Qt.Key.Key_PageUp:
            self._go_before()
        elif key == Qt.Key.Key_PageDown:
            self._go_after()
        elif key in VIEW_KEYS and plain:
            self.show_view(VIEW_KEYS[key])
        elif key == Qt.Key.Key_N and plain:
            self.show_view(View.GROWTH)
        elif key in (Qt.Key.Key_Left, Qt.Key.Key_Right) and plain and self.strip.isVisible():
            self.strip.step(-1 if key == Qt.Key.Key_Left else 1)
        elif self.views.view is View.PICTURE and key == Qt.Key.Key_V and plain:
            self.bar.photo.toggle()
        elif not self.views.page.take_key(event):
            super().keyPressEvent(event)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """The side column grows with the letters, the picture takes the rest."""
        super().resizeEvent(event)
        self.body.fit(self.width(), self.height())

    def redress(self) -> None:
        """Drawings and sizes for the new scheme and text size."""
        self.empty.redress()
        self.body.redress()
        self.body.fit(self.width(), self.height())
