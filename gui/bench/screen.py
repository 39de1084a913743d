"""Bench: the rack as it stands, and above it what needs a look now.

In    the open book
Out   `tray_wanted` by a click on a tile, `photo_wanted` by one on a look; `place_wanted` and `trays_wanted`
      by the buttons
Not   reading the book (`view.py`), what is seen where there are trays (`page.py`)
"""

from typing import TYPE_CHECKING

from PySide6.QtCore import QT_TRANSLATE_NOOP, Qt, Slot
from PySide6.QtGui import QKeySequence, QResizeEvent, QShortcut
from PySide6.QtWidgets import QStackedLayout, QWidget

from data.cancel import CancelToken
from data.entry.units import UnitSystem
from data.records import Look, LookKind, Tray
from gui.bench.aftertheend import AfterTheEnd
from gui.bench.lostpictures import LostPictures
from gui.bench.page import BenchPage
from gui.bench.quickline import Nameable
from gui.bench.view import BenchState, Reading, bench_state, read_bench
from gui.bench.words import empty_words
from gui.bookreading import BookReading
from gui.controls.teaching import Teaching
from gui.mishap import trouble_words
from gui.photo.thumbnails import Thumbnails
from gui.screen import Screen
from gui.style.palette import set_role
from gui.traysheet.past.benchlists import BenchLists
from gui.work import Work

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["Bench"]


class Bench(Screen):
    """The first place: most of the benefit with one look a day."""

    KEYS = (
        ("Ctrl+F", str(QT_TRANSLATE_NOOP("Bench", "Find a tray, a crop or a medium"))),
        ("Ctrl+E", str(QT_TRANSLATE_NOOP("Bench", "Note a weight, a watering or something else"))),
        ("F6", str(QT_TRANSLATE_NOOP("Bench", "From what needs a look to the rack, and back"))),
        ("S", str(QT_TRANSLATE_NOOP("Bench", "In the look list: seen, put it away until it gets worse"))),
        ("T", str(QT_TRANSLATE_NOOP("Bench", "In the look list: until tomorrow"))),
        ("Space", str(QT_TRANSLATE_NOOP("Bench", "On the rack: choose several trays"))),
    )

    def __init__(self, work: Work, parent: QWidget | None = None) -> None:
        super().__init__(work, parent)
        self._reading = Reading()
        self._state = BenchState()
        self._awaited = False
        self._trouble = ""  # why the book could not be read
        self.answers = BookReading(work, self)
        self.answers.came.connect(self._read)
        self.answers.failed.connect(self._not_read)
        self.thumbnails = Thumbnails(work, self)
        self.lost = LostPictures(work, self.thumbnails, self)
        self.lost.made.connect(self._look_again)
        self.lists = BenchLists(work, self)
        self.lists.tray_chosen.connect(self.tray_wanted)
        self.lists.troubled.connect(self.troubled)
        work.changed.connect(self._work_changed)
        self.page = BenchPage(self.thumbnails, self)
        self.panel, self.switch, self.head = self.page.panel, self.page.switch, self.page.head
        self.rack, self.quick, self.bring = self.page.rack, self.page.quick, self.page.bring
        self.after = AfterTheEnd(self)
        self._connect()
        self._empty = Teaching("bench", self.tr("Add a tray"), self, other=self.tr("Plan a trial"))
        self._empty.other.setToolTip(self.tr("Go to Plan (Ctrl+4)"))
        self._empty.other_pressed.connect(self._want_plan)
        self._empty.button.setToolTip(self.tr("Add a tray (Ctrl+T)"))
        self._empty.pressed.connect(self.trays_wanted)
        self._stack = QStackedLayout(self)
        self._stack.addWidget(self.page)
        self._stack.addWidget(self.after.below(self._empty))
        QShortcut(QKeySequence("Ctrl+F"), self, self.page.search, context=Qt.ShortcutContext.WindowShortcut)
        QShortcut(QKeySequence("Ctrl+E"), self, self.page.note, context=Qt.ShortcutContext.WindowShortcut)
        QShortcut(QKeySequence("F6"), self, self.page.change_over, context=Qt.ShortcutContext.WindowShortcut)
        self.show_state(self._state)

    def _connect(self) -> None:
        self.panel.opened.connect(self._open)
        self.panel.fold_wanted.connect(self._fold)
        self.panel.answered.connect(self._answer)
        self.panel.history_wanted.connect(self._want_history)
        self.panel.kind_wanted.connect(self.ask_kind)
        self.head.changed.connect(self._refresh)
        self.head.ended_wanted.connect(self._want_ended)
        self.rack.tray_chosen.connect(self.tray_wanted)
        for line in (self.quick, self.after.line):
            line.kept.connect(self._noted)
            line.troubled.connect(self.troubled)
        self.bring.clicked.connect(self._want_intake)

    # --- reading

    def open_book(self, book: "Book | None") -> None:
        """Show this book's rack."""
        self.thumbnails.clear()
        self.head.clear()
        self._reading, self._state, self._trouble = Reading(), BenchState(), ""
        self.answers.open(book)
        super().open_book(book)

    def renew(self) -> None:
        """Read the book again in the background."""
        if self.book is None:
            self._reading = Reading()
            self._refresh()
        self.answers.ask(_read)

    @Slot(object)
    def _read(self, reading: Reading) -> None:
        self._forget_changed_pictures(reading)
        self._reading, self._trouble = reading, ""
        assert self.book is not None
        shown = {tile.thumbnail: tile.photo_id for tile in reading.tiles if tile.thumbnail and tile.photo_id}
        self.lost.know(self.book, shown)
        self._refresh()
        if reading.taken_back and not self.answers.waits:
            self.quick.forget()
            self.after.line.forget()
        if self._awaited and self.isVisible():
            self.arrive()

    @Slot(object)
    def _not_read(self, error: Exception) -> None:
        """Nothing of the book before stays, and no "nothing needs a look" takes the place of the alarm."""
        self._trouble = trouble_words(error)
        self._refresh()

    def _forget_changed_pictures(self, reading: Reading) -> None:
        """A picture keeps its path when its corners are set anew."""
        before = {tile.tray_id: tile for tile in self._reading.tiles}
        changed = [
            tile.thumbnail
            for tile in reading.tiles
            if tile.thumbnail is not None and before.get(tile.tray_id) != tile
        ]
        self.thumbnails.forget(changed)

    # --- showing

    @Slot()
    def _refresh(self) -> None:
        self.show_state(self._state_of(all_looks=self._state.all_looks))

    def _state_of(self, *, all_looks: bool) -> BenchState:
        coming = bool(self.work.shown())
        return bench_state(
            self._reading, self.head.wanted, self.head.narrowing, all_looks=all_looks, coming=coming
        )

    @Slot()
    def _work_changed(self) -> None:
        """What is still coming in cannot be missing: look again when it is in."""
        if bool(self.work.shown()) != self._state.coming:
            self._refresh()

    def show_state(self, state: BenchState) -> None:
        """Show this, whatever was shown before."""
        self._state = state
        empty = state.no_trays and not self._trouble
        self._stack.setCurrentIndex(int(empty))
        if empty:
            self._show_empty()
            return
        self.page.show_state(state)
        if self._trouble:
            self.panel.say_trouble(self._trouble)
            if state.no_trays:  # none that was read
                self.head.soft.clear()
        read = self._reading
        self.quick.show_trays(self.book, Nameable(tiles=read.tiles, tags=read.tags, ended=read.after))

    def _show_empty(self) -> None:
        self.after.show_trays(self.book, self._reading.after)
        to_sow = self._reading.to_sow
        has_book, ended = self.book is not None, self._reading.ended
        self._empty.teach(*empty_words(has_book=has_book, to_sow=to_sow, ended=ended))
        self._empty.other.setText(self.tr("Go to the plan") if to_sow else self.tr("Plan a trial"))
        set_role(self._empty.other, "rack-main" if to_sow else "rack")
        set_role(self._empty.button, "rack" if to_sow else "rack-main")
        for button in (self._empty.button, self._empty.other):
            button.setVisible(self.book is not None)

    @Slot()
    def _look_again(self) -> None:
        self.rack.viewport().update()

    @Slot()
    def _want_ended(self) -> None:
        self.lists.show_ended(self.book)

    @Slot()
    def _want_history(self) -> None:
        self.lists.show_history(self.book)

    @Slot()
    def _fold(self) -> None:
        self.show_state(self._state_of(all_looks=not self._state.all_looks))

    # --- what is said and noted

    @property
    def chosen_tray(self) -> Tray | None:
        """The tray that is chosen on the rack, if it is one alone: new ones can be like it."""
        chosen = self.rack.chosen
        return self._reading.trays.get(chosen[0].tray_id) if len(chosen) == 1 else None

    @Slot(str)
    def _noted(self, sentence: str) -> None:
        self.told.emit(sentence)
        self.book_changed.emit()

    @Slot(object)
    def _open(self, look: Look) -> None:
        """Go where it can be judged: the photo that shows it, or Intake where that waits."""
        if look.what is LookKind.UNMATCHED:
            self.place_wanted.emit("intake")
        elif look.photo_id is None:
            self.tray_wanted.emit(int(look.tray_id))
        else:
            self.photo_wanted.emit(int(look.tray_id), int(look.photo_id))

    @Slot(object, str)
    def _answer(self, look: Look, answer: str) -> None:
        if not self.keep(lambda book: book.answer_look(look, answer)):
            return
        words = (
            self.tr("{code} is put away until tomorrow. Ctrl+Z takes it back.")
            if answer == "tomorrow"
            else self.tr("{code} is put away until it gets worse. Ctrl+Z takes it back.")
        )
        self.told.emit(words.format(code=look.code))
        self.book_changed.emit()

    @Slot(str)
    def ask_kind(self, medium: str) -> None:
        """Which kind a medium is of, where what to do first depends on it."""
        from gui.materials.kinddialog import KindDialog

        dialog = KindDialog(medium, "", self)
        if not dialog.exec() or not dialog.kind:
            return
        if not self.keep(lambda book: book.set_medium(medium, kind=dialog.kind)):
            return
        self.told.emit(self.tr("The kind of {medium} is kept; Ctrl+Z takes it back.").format(medium=medium))
        self.book_changed.emit()

    # --- hands and eyes

    @Slot()
    def _want_plan(self) -> None:
        self.place_wanted.emit("plan")

    @Slot()
    def _want_intake(self) -> None:
        self.place_wanted.emit("intake")

    def arrive(self) -> None:
        """Put the focus on what is most urgent, as soon as that is known."""
        self._awaited = self.answers.is_running
        if self._awaited:
            return
        if self._stack.currentIndex():
            (self._empty.other if self._reading.to_sow else self._empty.button).setFocus()
        else:
            self.page.take_focus()

    def use_units(self, system: UnitSystem) -> None:
        """Of numbers typed without a unit."""
        self.quick.use_units(system)
        self.after.line.use_units(system)

    def redress(self) -> None:
        """Icons, words and line lengths follow."""
        self.page.fit()
        self.quick.redress()
        self.after.line.redress()
        self._empty.redress()
        self._refresh()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """The look list takes its share of the new height."""
        super().resizeEvent(event)
        self.page.fit()


def _read(book: "Book", _cancel: CancelToken) -> Reading:
    return read_bench(book)
