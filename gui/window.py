"""Window: the frame around all places: the row on top, bands, the screen in front, progress, the foot.

In    `Work`, `Memory`, `Wardrobe`, the screens by name
Out   an opened book handed to every screen; what a screen wants is done here
Not   what the places show (each screen), when they are made (`frame/screens.py`), how they follow the book
      (`frame/following.py`), how sentences are said (`frame/sayings.py`), what the menus do
      (`frame/bookdialogs.py`, `frame/otherbooks.py`, `frame/viewchoices.py`), the help (`frame/guide.py`),
      the first start (`app.py`)
"""

from collections.abc import Sequence
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QUrl, Signal, Slot
from PySide6.QtGui import QCloseEvent, QDragEnterEvent, QDropEvent, QKeySequence, QShortcut
from PySide6.QtWidgets import QMainWindow, QStackedWidget, QVBoxLayout, QWidget

from gui.controls.fieldundo import FieldUndo
from gui.controls.progress import ProgressStrip
from gui.frame.actions import ACTIONS, PLACES
from gui.frame.bands import DemoBand, DoneBand, TroubleBand
from gui.frame.bookdesk import BookDesk, is_demo
from gui.frame.bookdialogs import BookDialogs
from gui.frame.dropping import sort_dropped
from gui.frame.following import Following
from gui.frame.foot import Foot
from gui.frame.guide import Guide
from gui.frame.keys import connect_actions, make_actions
from gui.frame.leaving import Leaving
from gui.frame.otherbooks import OtherBooks
from gui.frame.sayings import Sayings
from gui.frame.toprow import TopRow
from gui.frame.viewchoices import ViewChoices
from gui.home import Memory
from gui.places import Places
from gui.screen import Screen
from gui.style.wardrobe import Wardrobe
from gui.travel.desk import Travel
from gui.work import Work

if TYPE_CHECKING:
    from data.book import Book
    from data.records import Tray

__all__ = ["Window"]

LEAST_SIZE = (1024, 700)
FIRST_SIZE = (1366, 768)


class Window(QMainWindow):
    """The one window of the program."""

    demo_wanted = Signal()

    def __init__(self, work: Work, memory: Memory, wardrobe: Wardrobe, screens: Places) -> None:
        super().__init__()
        self.work, self.memory, self.wardrobe, self.screens = work, memory, wardrobe, screens
        self.leaving = Leaving(screens, self)
        self.desk = BookDesk(work, memory, self.leaving.may_leave, self)
        self.dialogs = BookDialogs(self.desk, work, self._chosen_tray, self)
        self.books = OtherBooks(self.desk, self)
        self.travel = Travel(self.desk, work, self)
        self.following = Following(self.desk, work, self.screens, self)
        self.guide = Guide(self.screens, lambda: self.place, self)
        self.field_undo = FieldUndo(self)
        self._been: list[str] = []
        self.setMinimumSize(*LEAST_SIZE)
        self.setAcceptDrops(True)
        self.actions_by_name = make_actions(self)
        self._build()
        self._connect()
        if not self.restoreGeometry(memory.geometry):
            self.resize(*FIRST_SIZE)
        self.choices.show_choices()
        self.following.show_undo()
        self._show_book_words()
        self.go_to("bench")

    # --- making

    def _build(self) -> None:
        self.top = TopRow(self.actions_by_name, self)
        self.choices = ViewChoices(self.top.view_menu, self.memory, self.wardrobe, self)
        self.demo_band = DemoBand(self)
        self.trouble, self.done = TroubleBand(self), DoneBand(self)
        self.stack = QStackedWidget(self)
        self.progress = ProgressStrip(self.work, self)
        self.foot = Foot(self)
        self.sayings = Sayings(self.foot, self.trouble, self.done, self.leaving, self)
        column = QVBoxLayout()
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        for part in (self.top, self.demo_band, self.trouble, self.done):
            column.addWidget(part)
        column.addWidget(self.stack, 1)
        column.addWidget(self.progress)
        column.addWidget(self.foot)
        whole = QWidget(self)
        whole.setLayout(column)
        self.setCentralWidget(whole)

    def _connect(self) -> None:
        parts = (self, self.following, self.dialogs, self.books, self.travel, self.choices, self.guide)
        connect_actions(self.actions_by_name, parts)
        for place in PLACES:
            QShortcut(QKeySequence(place.key), self, partial(self.go_to, place.name))
        self.top.place_chosen.connect(self.go_to)
        self.top.book_menu.book_chosen.connect(self.books.open_recent)
        self.demo_band.pressed.connect(self.books.new_book)
        self.choices.told.connect(self.sayings.tell)
        self.choices.units_changed.connect(self._use_units)
        self.wardrobe.changed.connect(self._redress)
        self.leaving.told.connect(self._tell_lost)
        self.desk.opened.connect(self._show_book)
        self.desk.new_day.connect(self._show_book_words)
        self.desk.trouble.connect(self.sayings.tell_trouble)
        self.desk.trouble.connect(self._show_recent)  # a book that is gone is forgotten
        self.following.turned.connect(self.sayings.tell_turned)
        self.following.undo_shown.connect(self.top.show_undo)
        for part in (self.dialogs, self.travel):
            part.changed.connect(self.following.book_changed)
            part.told.connect(self.sayings.tell)
            part.troubled.connect(self.sayings.tell_trouble)
        self.books.told.connect(self.sayings.tell)
        self.travel.made.connect(self.sayings.tell_made)
        self.screens.welcome_with(self._welcome)

    def _welcome(self, name: str, screen: Screen) -> None:
        """Take in a screen that has just been made, and give it what the others have."""
        screen.setObjectName(name)
        self.stack.addWidget(screen)
        screen.tray_wanted.connect(self.open_tray)
        screen.photo_wanted.connect(self.open_tray)
        screen.place_wanted.connect(self.go_to)
        screen.trays_wanted.connect(self.dialogs.add_trays)
        screen.log_wanted.connect(self.dialogs.bring_in_log)
        screen.next_wanted.connect(self.repeat_trial)
        screen.told.connect(self.sayings.tell)
        screen.troubled.connect(self.sayings.tell_trouble)
        screen.book_changed.connect(self.following.book_changed)
        screen.book_changed.connect(self.leaving.look_again)
        screen.use_units(self.memory.units)
        if self.book is not None:
            screen.open_book(self.book)

    @property
    def book(self) -> "Book | None":
        """The book that is open."""
        return self.desk.book

    # --- places

    @property
    def place(self) -> str:
        """Where we are."""
        screen = self.stack.currentWidget()
        return "" if screen is None else screen.objectName()

    @Slot(str)
    def go_to(self, name: str) -> None:
        """Bring a place to the front."""
        if name not in self.screens:
            return
        if self._been[-1:] != [name]:
            self._been = [*self._been[-19:], name]
        screen = self.screens[name]
        self.stack.setCurrentWidget(screen)
        self.top.show_place(name)
        self.following.bring_to_front(name)
        screen.arrive()

    @Slot()
    def go_back(self) -> None:
        """Back to the place before."""
        if len(self._been) > 1:
            self._been.pop()
            self.go_to(self._been.pop())

    @Slot(int)
    @Slot(int, int)
    def open_tray(self, tray_id: int, photo_id: int | None = None) -> None:
        """Open the sheet of a tray, at its newest photo or at this one."""
        self.screens.traysheet.open_tray(tray_id, photo_id)
        self.go_to("traysheet")

    @Slot(str, int)
    def repeat_trial(self, trial: str, trays: int) -> None:
        """Plan a trial that repeats this one, with so many trays of each."""
        self.screens.plan.repeat_trial(trial, trays)
        self.go_to("plan")

    def _chosen_tray(self) -> "Tray | None":
        return self.screens.bench.chosen_tray if self.place == "bench" else None

    # --- the book

    def open_folder(self, folder: Path) -> bool:
        """Open the book in a folder; False, with a sentence on top, if that cannot be."""
        return self.desk.open_folder(folder)

    @Slot()
    def open_demo(self) -> None:
        """Open the demonstration; it is made where it is not there yet."""
        self.demo_wanted.emit()

    @Slot(object)
    def _show_book(self, book: "Book") -> None:
        """Hand an opened book to every screen."""
        for screen in self.screens.made.values():
            screen.open_book(book)
        self.following.show_book()
        self._show_book_words()
        self.go_to("bench")

    @Slot()
    def _show_recent(self) -> None:
        self.top.book_menu.show_recent(self.desk.other_books())

    @Slot()
    def _show_book_words(self) -> None:
        book = self.book
        self._show_recent()
        for action in ACTIONS:
            if action.of_book:
                self.actions_by_name[action.name].setEnabled(book is not None)
        demo = book is not None and is_demo(book)
        name = "" if book is None else self.tr("The demonstration") if demo else book.folder.name
        self.setWindowTitle(f"{name} – Evenstand" if name else "Evenstand")
        self.foot.show_book(book, name)
        self.demo_band.show_demo(book if demo else None)

    # --- photos and dropped files

    @Slot()
    def bring_in(self) -> None:
        """Let the grower choose photos."""
        self.go_to("intake")
        self.screens.intake.choose_photos()

    def bring_in_files(self, paths: Sequence[Path]) -> None:
        """Hand photos or folders to Intake."""
        if paths and self.book is not None:
            self.go_to("intake")
            self.screens.intake.bring_in(paths)

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        """Files may be dropped anywhere; without a book only another book."""
        files = _files_in(event.mimeData().urls())
        if files and (self.book is not None or sort_dropped(files).books):
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        """Bring in what was dropped."""
        event.acceptProposedAction()
        dropped = sort_dropped(_files_in(event.mimeData().urls()))
        self.bring_in_files(dropped.photos)
        self.dialogs.open_tables(dropped.tables)
        self.travel.take_dropped(dropped.books)

    # --- words and looks

    @Slot(str)
    def _tell_lost(self, sentence: str) -> None:
        self.go_to("traysheet")  # where all of it is
        self.sayings.tell_trouble(sentence)

    @Slot()
    def _use_units(self) -> None:
        for screen in self.screens.made.values():
            screen.use_units(self.memory.units)

    @Slot()
    def _redress(self) -> None:
        self.top.redress()
        for screen in self.screens.made.values():
            screen.redress()

    # --- closing

    def closeEvent(self, event: QCloseEvent) -> None:
        """Stop the work, wait for it, close the book: nothing is half written, and nothing lost unsaid."""
        if not self.leaving.may_close():
            event.ignore()
            return
        self.memory.geometry = self.saveGeometry()
        self.memory.keep()
        self.work.close()
        self.desk.close()
        super().closeEvent(event)


def _files_in(urls: Sequence[QUrl]) -> list[Path]:
    return [Path(url.toLocalFile()) for url in urls if url.isLocalFile()]
