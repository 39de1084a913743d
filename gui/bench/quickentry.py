"""Quick entry: one line at the foot of the Bench in which the morning's numbers are typed.

In    the growing trays, those that are chosen on the rack, the book
Out   readings and events kept; `kept` with a sentence; `next_wanted` so that the next tray is chosen
Not   what a line means (`quickline.py`), its keys (`quickfield.py`), the kinds (`quickkind.py`), one tray
      with all its notes (`traysheet/growthpage.py`)

A number that looks like another unit is asked about here, before anything is kept.
"""

from collections.abc import Callable, Sequence
from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QLabel, QPushButton, QVBoxLayout, QWidget

from data.entry.units import UnitSystem
from data.errors import BookError
from data.events import EventKind
from data.readings import NewReading, ReadingKind
from data.records import Tile
from gui.bench.lately import Lately, lately_kept
from gui.bench.noted import Noted, what_words, where_words
from gui.bench.quickfield import QuickField
from gui.bench.quickkind import QuickKind
from gui.bench.quickline import Kind, Nameable, QuickEntry, figure_words, quick_entry
from gui.bench.typingon import TypingOn
from gui.controls.bounce import Bounce
from gui.controls.flow import Flow
from gui.controls.telling import tell
from gui.language.spoken import spoken
from gui.style.palette import set_role
from gui.style.words import wrapped

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["QuickLine"]


class QuickLine(QWidget):
    """Kind, line, what it is for; below it the question or what was kept."""

    kept = Signal(str)  # one sentence
    troubled = Signal(str)
    next_wanted = Signal()  # one chosen tray is done: choose the next on the rack

    def __init__(self, chosen: Callable[[], Sequence[Tile]], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._chosen = chosen
        self._book: Book | None = None
        self._trays = Nameable()
        self._open: QuickEntry | None = None  # asked about
        self._noted = Noted()
        self.system = UnitSystem.METRIC
        self.kind = QuickKind(self)
        self.kind.currentIndexChanged.connect(self._another_kind)
        self.line = self._make_line()
        self.target = QLabel(self)
        set_role(self.target, "soft")
        self._bounce = Bounce()  # the answers come to stand where the button was
        self.keep = self._make_keep()
        self.said = wrapped("", self)
        self.typing_on = TypingOn(self)
        self.typing_on.typed.connect(self._type_on)
        self.typing_on.left.connect(self._type_again)
        self.as_typed = self._make_answer(self._keep_as_typed)
        self.instead = self._make_answer(self._keep_instead)
        self._lay_out()
        self._say("")
        self._fit_to_kind()

    def _lay_out(self) -> None:
        row = Flow()
        for part in (self.kind, self.line, self.keep, self.as_typed, self.instead, self.target):
            row.addWidget(part)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.said)
        column.addLayout(row)

    def _make_line(self) -> QuickField:
        made = QuickField(self)
        made.setAccessibleName(self.tr("Tray and number"))
        set_role(made, "rack")
        made.setMinimumWidth(30 * self.fontMetrics().averageCharWidth())
        made.textChanged.connect(self._typing)
        made.entered.connect(self.note_it)
        made.stepped.connect(self.kind.step)
        return made

    def _make_keep(self) -> QPushButton:
        made = QPushButton(self.tr("Note it"), self)
        set_role(made, "rack")
        made.setToolTip(self.tr("Keep it in the book (Enter); Ctrl+Z takes it back"))
        made.clicked.connect(self._bounce.once(self.note_it))
        return made

    def _make_answer(self, does: Callable[[], None]) -> QPushButton:
        made = QPushButton(self)
        made.setAutoDefault(True)  # so that Enter of the number pad presses it, too
        set_role(made, "rack")
        made.clicked.connect(self._bounce.once(does))
        self.typing_on.watch(made)
        return made

    # --- what it is about

    def show_trays(self, book: "Book | None", trays: Nameable) -> None:
        """The trays that can be named from now on; those that ended of late for what follows the cut."""
        if book is not self._book:
            self._noted.begin_anew()
            self._say("")
        self._book, self._trays = book, trays
        self.show_chosen()

    def forget(self) -> None:
        """Say no more what was noted: it was taken back."""
        if self._noted and self._open is None:
            self._noted.clear()
            self._say("")

    @Slot()
    def show_chosen(self) -> None:
        """Say for which trays a line without a tray is."""
        chosen = self._chosen()
        if not chosen:
            words = ""
        elif len(chosen) == 1:
            words = self.tr("for {code}, where no tray is typed").format(code=chosen[0].code)
        else:
            words = self.tr("for the {count} chosen trays, where no tray is typed").format(count=len(chosen))
        self.target.setText(words)
        self._show_target()

    def _show_target(self) -> None:
        """Without words it is gone: an empty label would begin a row of its own."""
        self.target.setVisible(bool(self.target.text()) and not self.keep.isHidden())

    @property
    def what(self) -> Kind:
        """What is noted."""
        return self.kind.chosen

    def _fit_to_kind(self) -> None:
        self.line.setPlaceholderText(self.kind.asks_for(self.system))
        self.line.takes_words = isinstance(self.what, EventKind)

    @Slot()
    def _another_kind(self) -> None:
        self._fit_to_kind()
        self._say(self.kind.about())

    @Slot()
    def _typing(self) -> None:
        if self._open is not None:
            self._open = None
            self._say("")

    def use_units(self, system: UnitSystem) -> None:
        """Numbers without a unit are in these from now on."""
        self.system = system
        self._fit_to_kind()

    # --- keeping

    @Slot()
    def note_it(self) -> None:
        """Keep what the line says, or say what is missing, or ask."""
        if self._book is None:
            return
        try:
            entry = self._read()
        except BookError as error:
            self.troubled.emit(str(error))
            return
        if entry.problem:
            self._say(spoken(entry.problem), "alarm")
            self.line.selectAll()
        elif entry.doubt is not None or entry.odd:
            self._ask(entry)
        else:
            self._keep(entry, entry.value)

    def _read(self) -> QuickEntry:
        book, trays = self._book, self._trays
        assert book is not None

        def lately(tile: Tile, kind: ReadingKind) -> Lately:
            return lately_kept(book, tile, kind, trays.all)

        return quick_entry(self.line.text(), self.what, trays, self._chosen(), self.system, lately=lately)

    def _ask(self, entry: QuickEntry) -> None:
        self._open = entry
        self._noted.ask(entry)
        self._say(entry.odd if entry.doubt is None else spoken(entry.doubt.sentence), "notice")
        self.as_typed.setText(
            self.tr("Keep {number}").format(number=figure_words(entry.kind, entry.value, self.system))
        )
        self.as_typed.setVisible(entry.value is not None)
        self.keep.hide()  # its place is taken by the answers
        self.target.hide()
        if entry.doubt is None:
            self.instead.setText(self.tr("Type it again"))
        else:
            number = figure_words(entry.kind, entry.doubt.instead, self.system)
            self.instead.setText(self.tr("It was {number}").format(number=number))
        self.instead.show()
        self.instead.setFocus()

    @Slot(str)
    def _type_on(self, letter: str) -> None:
        """The next line is begun without an answer: what was asked about is not kept, and that stays said."""
        asked, self._open = self._open, None
        self.line.setText(letter)
        self.line.setFocus()
        self._say("" if asked is None else self._noted.unkept_words(asked, self.system), "alarm")

    @Slot()
    def _keep_as_typed(self) -> None:
        if self._open is not None:
            self._keep(self._open, self._open.value)

    @Slot()
    def _keep_instead(self) -> None:
        if self._open is None:
            return
        if self._open.doubt is not None:
            self._keep(self._open, self._open.doubt.instead)
        else:
            self._type_again()

    @Slot()
    def _type_again(self) -> None:
        """Nothing is kept; what was typed stands there to be typed over."""
        self._open = None
        self._say("")
        self.line.selectAll()
        self.line.setFocus()

    def _keep(self, entry: QuickEntry, value: float | None) -> None:
        book = self._book
        assert book is not None
        trays = [tile.tray_id for tile in entry.trays]
        try:
            if isinstance(entry.kind, EventKind):
                book.add_event(trays, entry.kind, book.now(), entry.note)
            elif value is not None:
                new = NewReading(kind=entry.kind, value=value, taken_at=book.now())
                book.add_readings([replace(new, tray_id=tray) for tray in trays])
        except BookError as error:
            self._say(spoken(error), "alarm")
            return
        named = len(self._chosen()) == 1 and self._chosen()[0].tray_id in trays
        self._open = None
        self._tell(entry, value)
        self.line.setText("")
        self.line.setFocus()
        if named:
            self.next_wanted.emit()

    def _tell(self, entry: QuickEntry, value: float | None) -> None:
        words = self._noted.keep(entry, value, self.system)
        self._say(words, "notice" if self._noted.misses else "soft")
        where, what = where_words(entry), what_words(entry, value, self.system)
        self.kept.emit(self.tr("{where}: {what}. Ctrl+Z takes it back.").format(where=where, what=what))

    def _say(self, words: str, role: str = "soft") -> None:
        if role == "soft":  # what was kept is heard from the foot
            set_role(self.said, role)
            self.said.setText(words)
        else:
            tell(self.said, words, role)
        self.said.setVisible(bool(words))
        self.as_typed.hide()
        self.instead.hide()
        self.keep.show()
        self._show_target()

    def redress(self) -> None:
        """Words in the language and letters of now."""
        self._fit_to_kind()
