"""Materials: the media side by side on everything that a photograph cannot see.

In    the book
Out   the table with a panel for the chosen cell; `log_wanted` where a logger's file fills a gap
Not   the buttons above the table (`head.py`), what is typed in (`dialogs.py`), the arithmetic
      (`data/materials/table.py` and its neighbours)
"""

from typing import TYPE_CHECKING

from PySide6.QtCore import Slot
from PySide6.QtWidgets import (
    QHBoxLayout,
    QLabel,
    QPushButton,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from data.entry.units import UnitSystem
from data.materials.reading import MaterialReading
from data.materials.table import Origin, Table
from data.medium.benchtest import BenchKind
from data.readings import BenchTestId
from gui.controls.flow import Flow
from gui.controls.namefield import NameField
from gui.controls.tabstops import order_stops
from gui.controls.teaching import Teaching
from gui.language.plainbutton import plain_button
from gui.materials.desk import MaterialDesk
from gui.materials.dialogs import MaterialDialogs
from gui.materials.head import MaterialHead
from gui.materials.panel import MaterialPanel, OriginMark
from gui.materials.table import MaterialTable
from gui.materials.view import due_words, kept_words, origin_words
from gui.screen import Screen
from gui.style.palette import Space, set_role
from gui.style.words import wrapped
from gui.work import Work

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["Materials"]

MOST_DUE = 3
NOTHING = MaterialReading(table=Table(media=(), trusted=None, cells={}))


class Materials(Screen):
    """The place Materials."""

    def __init__(self, work: Work, parent: QWidget | None = None) -> None:
        super().__init__(work, parent)
        self.reading = NOTHING
        self._shown = ("", "")
        self._due_shown: list[tuple[BenchTestId, str]] = []
        self.desk = MaterialDesk(work, self)
        self.desk.was_read.connect(self._was_read)
        self.desk.trouble.connect(self.troubled)
        self.desk.kept.connect(self._kept)
        self.dialogs = MaterialDialogs(self.desk, lambda: self.reading, self)
        self._stale = True
        self._whole = QStackedWidget(self)
        self._whole.addWidget(self._make_content())
        self._whole.addWidget(self._make_empty())
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._whole)
        self._show()

    # --- making

    def _make_empty(self) -> QWidget:
        """A wetting test needs no tray of seed: a medium can be named before the first is sown."""
        self._empty = Teaching("materials", self.tr("Go to the Bench"), self)
        self._empty.teach(
            self.tr("No media yet"),
            self.tr(
                "Add a tray on the Bench: its medium then stands here, with all that a photograph cannot "
                "see. A medium that is only to be tested, without seed, is named below."
            ),
        )
        self._empty.pressed.connect(self._to_bench)
        self.first = NameField(self.tr("Name of a medium"), self._empty)
        self.first.named.connect(self._medium_named)
        self._empty.foot.insertWidget(0, self.first, 2)
        QWidget.setTabOrder(self.first.add, self._empty.button)
        return self._empty

    def _make_content(self) -> QWidget:
        content = QWidget(self)
        self.due = QWidget(content)
        self._due_row = Flow(self.due)
        self.table = MaterialTable(content)
        self.panel = MaterialPanel(content)
        self.table.cell_chosen.connect(self._show_cell)
        self.table.cellActivated.connect(self._activated)
        self.panel.action_wanted.connect(self.do)
        self.panel.trial_wanted.connect(self._to_plan)
        body = QHBoxLayout()
        body.setSpacing(Space.M)
        body.addWidget(self.table, 3)
        body.addWidget(self.panel, 1)
        self.standing = wrapped("", content)
        self.note = wrapped("", content, "small")
        self.note.setText(
            self.tr("CO2e is a screening estimate: no certified assessment. There is no grand total.")
        )
        column = self._column = QVBoxLayout(content)
        column.setContentsMargins(Space.L, Space.M, Space.L, Space.M)
        column.setSpacing(Space.S)
        self.head = MaterialHead(content)
        self.head.test_wanted.connect(self._test_chosen)
        self.head.numbers_wanted.connect(self._numbers_chosen)
        self.head.feed_wanted.connect(self._feed_chosen)
        self.head.trust_wanted.connect(self._trust_chosen)
        self.head.limits_wanted.connect(self.dialogs.limits)
        self.head.weekly_set.connect(self._weekly_set)
        self.head.medium_named.connect(self._medium_named)
        column.addWidget(self.head)
        column.addWidget(self.due)
        column.addLayout(body, 1)
        column.addWidget(self.standing)
        column.addLayout(self._make_foot(content))
        return content

    def _make_foot(self, content: QWidget) -> QHBoxLayout:
        foot = QHBoxLayout()
        foot.setSpacing(Space.S)
        foot.addWidget(self.note, 1)
        for origin in Origin:
            foot.addWidget(OriginMark(origin, content))
            label = QLabel(origin_words(origin), content)
            set_role(label, "small")
            foot.addWidget(label)
        return foot

    # --- the book

    def open_book(self, book: "Book | None") -> None:
        """Another book."""
        self.desk.open(book)
        self.reading = NOTHING
        self._shown = ("", "")
        self._show()
        super().open_book(book)

    def renew(self) -> None:
        """Read again, where it is seen; else when it comes to the front."""
        self._stale = True
        if self.isVisible():
            self._read()

    def _read(self) -> None:
        if self._stale and self.book is not None:
            self._stale = False
            self.desk.read()

    def arrive(self) -> None:
        """Into the table."""
        self._read()
        (self._empty.button if self._whole.currentIndex() else self.table).setFocus()

    def redress(self) -> None:
        """New ink and letters."""
        self.table.fit()
        self._empty.redress()

    def use_units(self, system: UnitSystem) -> None:
        """Weights and temperatures of tests are typed in these."""
        self.dialogs.system = system

    @Slot(object)
    def _was_read(self, reading: MaterialReading) -> None:
        self.reading = reading
        self._show()

    @Slot()
    def _kept(self) -> None:
        self._stale = True
        self._read()
        self.book_changed.emit()

    # --- showing

    def _show(self) -> None:
        reading = self.reading
        empty = not reading.table.media
        self._whole.setCurrentIndex(1 if empty else 0)
        if empty:
            return
        self.head.weekly.set(reading.trays_a_week)
        self.head.show_media(reading.table.media)
        self.table.show_reading(reading)
        self._show_due()
        told = [f"{one.medium}: {kept_words(one.all_in_all)}" for one in reading.standing if reading.limits]
        self.standing.setText("   ".join(told))
        self.standing.setVisible(bool(told))

    def _show_due(self) -> None:
        now = self.reading.now
        shown = [(one.test.id, due_words(one, now or one.due.at)) for one in self.reading.due[:MOST_DUE]]
        if shown == self._due_shown:
            return  # made anew they would lose the focus
        self._due_shown = shown
        while (item := self._due_row.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None:
                widget.deleteLater()
        for test, words in shown:
            button = QPushButton(plain_button(words), self.due)
            button.setProperty("test", test)
            button.clicked.connect(self._due_chosen)
            self._due_row.addWidget(button)
        self.due.setVisible(bool(self.reading.due))
        order_stops(self._column)

    @Slot(str, str)
    def _show_cell(self, row: str, medium: str) -> None:
        self._shown = (row, medium)
        self.head.name_medium(medium)
        self.head.show_trust(medium, self.reading.table.trusted)
        self.panel.show_cell(self.reading, row, medium)
        order_stops(self._column)

    # --- doing

    @Slot(str, str)
    def do(self, action: str, medium: str) -> None:
        """What a cell's button wants."""
        if action in list(BenchKind):
            self.dialogs.test(BenchKind(action), medium)
        elif action.startswith("factor "):
            self.dialogs.numbers(medium, action.removeprefix("factor "))
        elif action == "feed":
            self.dialogs.feed(medium)
        elif action == "kind":
            self.dialogs.kind(medium)
        elif action == "note":
            self.place_wanted.emit("traysheet")
        elif action == "log":
            self.log_wanted.emit()

    @Slot()
    def _activated(self) -> None:
        """Enter on a cell does what its button does."""
        from gui.materials.view import row_of

        row, medium = self._shown
        if row:
            self.do(row_of(row).action, medium)

    @Slot(str)
    def _test_chosen(self, kind: str) -> None:
        self.dialogs.test(BenchKind(kind), self._shown[1])

    @Slot()
    def _due_chosen(self) -> None:
        wanted = self.sender().property("test")
        for one in self.reading.due:
            if one.test.id == wanted:
                self.dialogs.test(one.test.kind, one.test.medium, one.test)
                return

    @Slot()
    def _numbers_chosen(self) -> None:
        self.dialogs.numbers(self._shown[1])

    @Slot()
    def _feed_chosen(self) -> None:
        self.dialogs.feed(self._shown[1])

    @Slot()
    def _trust_chosen(self) -> None:
        medium = self._shown[1]
        self.desk.keep(lambda book: book.set_trusted(medium))

    @Slot(float)
    def _weekly_set(self, trays: float) -> None:
        self.desk.keep(lambda book: book.set_trays_a_week(trays))

    @Slot(str)
    def _medium_named(self, name: str) -> None:
        def add(book: "Book") -> None:
            if name.casefold() not in {one.name.casefold() for one in book.media_known()}:
                book.set_medium(name)

        self.desk.keep(add)

    @Slot()
    def _to_bench(self) -> None:
        self.place_wanted.emit("bench")

    @Slot()
    def _to_plan(self) -> None:
        self.place_wanted.emit("plan")
