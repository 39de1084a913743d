"""Window: the frame around all places: the row on top, bands, the screen in front, progress, the foot.

In    `Work`, `Memory`, `Wardrobe`, the screens by name
Out   a book opened and handed to every screen; undo; what a screen wants is done here
Not   what the places show (each screen), the first start (`app.py`)
"""

from collections.abc import Callable, Mapping, Sequence
from functools import partial
from pathlib import Path
from typing import TypeVar

from PySide6.QtCore import QCoreApplication, QTimer, QUrl, Signal, Slot
from PySide6.QtGui import QAction, QCloseEvent, QDragEnterEvent, QDropEvent, QKeySequence, QShortcut
from PySide6.QtWidgets import (
    QDialog,
    QFrame,
    QHBoxLayout,
    QLabel,
    QMainWindow,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from data.book import Book
from data.errors import BookError
from data.units import UnitSystem
from gui.actions import ACTIONS, PLACES
from gui.bands import Band, TroubleBand
from gui.bookdesk import BookDesk, is_demo
from gui.choosing import LOG_SUFFIXES, ask_folder, ask_log
from gui.helpwindow import HelpWindow
from gui.home import Memory, books_folder
from gui.keysheet import KeySheet
from gui.newbook import NewBook
from gui.newtray import NewTrayDialog
from gui.palette import Space, set_role
from gui.progress import ProgressStrip
from gui.screen import Screen
from gui.spoken import DAY, day_words, spoken
from gui.toprow import TopRow
from gui.wardrobe import Wardrobe
from gui.work import Work

__all__ = ["Window"]

D = TypeVar("D", bound=QDialog)

LEAST_SIZE = (1024, 700)
FIRST_SIZE = (1366, 768)
RENEWED_EVERY_MS = 250
LOOKED_EVERY_MS = 3000  # whether another window or the command line has written into the book
TOLD_FOR_MS = 8000


class Window(QMainWindow):
    """The one window of the program."""

    demo_wanted = Signal()

    def __init__(
        self,
        work: Work,
        memory: Memory,
        wardrobe: Wardrobe,
        screens: Mapping[str, Screen],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.work, self.memory, self.wardrobe = work, memory, wardrobe
        self.screens = dict(screens)
        self.desk = BookDesk(work, memory, self)
        self._stale: set[str] = set()
        self._been: list[str] = []
        self._help: HelpWindow | None = None
        self.setMinimumSize(*LEAST_SIZE)
        self.setAcceptDrops(True)
        self._dropped_logs: list[Path] = []
        self.actions_by_name = self._make_actions()
        self._build()
        self._connect()
        self._renewing = QTimer(self, singleShot=True, interval=RENEWED_EVERY_MS)
        self._renewing.timeout.connect(self._renew_if_stale)
        self._hushing = QTimer(self, singleShot=True, interval=TOLD_FOR_MS)
        self._hushing.timeout.connect(self.told.clear)
        self._looking = QTimer(self, interval=LOOKED_EVERY_MS)
        self._looking.timeout.connect(self._look_for_news)
        self._looking.start()
        if not self.restoreGeometry(memory.geometry):
            self.resize(*FIRST_SIZE)
        self._use_units()
        self._show_book_words()
        self.go_to("bench")

    # --- making

    def _make_actions(self) -> dict[str, QAction]:
        made = {}
        for action in ACTIONS:
            words = QCoreApplication.translate("Action", action.words)
            one = QAction(words, self)
            one.setProperty("words", words)
            one.setShortcut(QKeySequence(action.key))
            one.setToolTip(f"{words.removesuffix('...')} ({one.shortcut().toString()})")
            does: Callable[[], object] = getattr(self, action.name)
            one.triggered.connect(does)
            self.addAction(one)
            made[action.name] = one
        for place in PLACES:
            QShortcut(QKeySequence(place.key), self, partial(self.go_to, place.name))
        return made

    def _build(self) -> None:
        self.top = TopRow(self.actions_by_name, self)
        self.demo_band = Band("band-calm", self.tr("Start my own book"), self)
        self.demo_band.hide()
        self.trouble = TroubleBand(self)
        self.stack = QStackedWidget(self)
        for name, screen in self.screens.items():
            screen.setObjectName(name)
            self.stack.addWidget(screen)
        self.progress = ProgressStrip(self.work, self)
        column = QVBoxLayout()
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        for part in (self.top, self.demo_band, self.trouble):
            column.addWidget(part)
        column.addWidget(self.stack, 1)
        column.addWidget(self.progress)
        column.addWidget(self._make_foot())
        whole = QWidget(self)
        whole.setLayout(column)
        self.setCentralWidget(whole)

    def _make_foot(self) -> QFrame:
        foot = QFrame(self)
        set_role(foot, "foot")
        self.told = QLabel(foot)
        self.about_book = QLabel(foot)
        set_role(self.about_book, "small")
        row = QHBoxLayout(foot)
        row.setContentsMargins(Space.L, Space.XS, Space.L, Space.XS)
        row.addWidget(self.told, 1)
        row.addWidget(self.about_book)
        return foot

    def _connect(self) -> None:
        self.top.place_chosen.connect(self.go_to)
        self.top.book_chosen.connect(self._open_recent)
        self.top.scheme_chosen.connect(self._choose_scheme)
        self.top.text_chosen.connect(self.wardrobe.resize_text)
        self.top.units_chosen.connect(self._choose_units)
        self.top.language_chosen.connect(self._choose_language)
        self.demo_band.pressed.connect(self.new_book)
        self.wardrobe.changed.connect(self._redress)
        self.desk.opened.connect(self._show_book)
        self.desk.trouble.connect(self.tell_trouble)
        for screen in self.screens.values():
            screen.tray_wanted.connect(self.open_tray)
            screen.place_wanted.connect(self.go_to)
            screen.told.connect(self.tell)
            screen.troubled.connect(self.tell_trouble)
            screen.book_changed.connect(self._book_changed)
        self.screens["bench"].trays_wanted.connect(self.add_trays)  # type: ignore[attr-defined]

    @property
    def book(self) -> Book | None:
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
        if name in self._stale:
            self._stale.discard(name)
            screen.renew()
        screen.arrive()

    @Slot()
    def go_back(self) -> None:
        """Back to the place before."""
        if len(self._been) > 1:
            self._been.pop()
            self.go_to(self._been.pop())

    @Slot(int)
    def open_tray(self, tray_id: int) -> None:
        """Open the sheet of a tray."""
        self.screens["traysheet"].open_tray(tray_id)  # type: ignore[attr-defined]
        self.go_to("traysheet")

    # --- books

    @Slot()
    def new_book(self) -> None:
        """Let the grower start a book of their own."""
        NewBook(books_folder(), self._make_book, self).exec()

    def _make_book(self, folder: Path) -> None:
        """Make a book and open it; raises `BookError`."""
        self.desk.make(folder)
        self.tell(self.tr("Your book stands in {folder}.").format(folder=folder))

    @Slot()
    def choose_book(self) -> None:
        """Let the grower choose the folder of a book."""
        folder = ask_folder(self, self.tr("Open the folder of a book"), books_folder())
        if folder is not None:
            self.open_folder(folder)

    @Slot(str)
    def _open_recent(self, folder: str) -> None:
        self.open_folder(Path(folder))

    def open_folder(self, folder: Path) -> bool:
        """Open the book in a folder; False, with a sentence on top, if that cannot be."""
        opened = self.desk.open_folder(folder)
        self.top.show_recent(self.desk.other_books())
        return opened

    @Slot()
    def open_demo(self) -> None:
        """Open the demonstration; it is made where it is not there yet."""
        self.demo_wanted.emit()

    @Slot(object)
    def _show_book(self, book: Book) -> None:
        """Hand an opened book to every screen."""
        self._stale.clear()
        for screen in self.screens.values():
            screen.open_book(book)
        self._show_book_words()
        self.go_to("bench")

    def _show_book_words(self) -> None:
        book = self.book
        self.top.show_recent(self.desk.other_books())
        self.top.show_choices(self.memory.scheme, self.memory.text_percent, self.memory.language)
        self._show_undo()
        for name in (
            "add_trays", "bring_in", "bring_in_log", "print_tags", "tray_types", "check_station",
            "write_report",
        ):  # fmt: skip
            self.actions_by_name[name].setEnabled(book is not None)
        if book is None:
            self.setWindowTitle("Evenstand")
            self.about_book.clear()
            self.demo_band.hide()
            return
        demo = is_demo(book)
        name = self.tr("The demonstration") if demo else book.folder.name
        self.setWindowTitle(f"{name} – Evenstand")
        today = book.today()
        self.about_book.setText(f"{name} · {day_words(today)}")
        self.about_book.setToolTip(str(book.folder))
        self.demo_band.setVisible(demo)
        if demo:
            self.demo_band.say(
                self.tr(
                    "This is the demonstration: an invented trial of {count} trays with drawn photos, "
                    "scored on this computer. It stands still on {day}."
                ).format(count=len(book.trays()), day=day_words(today, DAY))
            )

    # --- changes, undo

    @Slot()
    def _book_changed(self) -> None:
        self._stale = set(self.screens)
        if not self._renewing.isActive():
            self._renew_if_stale()

    @Slot()
    def _renew_if_stale(self) -> None:
        """The screen in front follows, at most four times a second; the others as they come to the front."""
        name = self.place
        if name not in self._stale:
            return
        self._stale.discard(name)
        self.screens[name].renew()
        self._show_undo()
        self._renewing.start()

    @Slot()
    def _look_for_news(self) -> None:
        """What came into the book from outside is shown as if it had come from here."""
        if self.book is not None and self.desk.has_news():
            self._book_changed()

    def _show_undo(self) -> None:
        undo, redo = (text if text is None else spoken(text) for text in self.desk.undo_texts())
        self.top.show_undo(undo, redo)

    @Slot()
    def undo(self) -> None:
        """Take back the last change."""
        self._turned(self.desk.undo(), self.tr("Taken back: {what}"))

    @Slot()
    def redo(self) -> None:
        """Do again what was taken back."""
        self._turned(self.desk.redo(), self.tr("Done again: {what}"))

    def _turned(self, text: str | None, words: str) -> None:
        if text is not None:
            self.tell(words.format(what=spoken(text)))
            self._renewing.stop()
            self._book_changed()

    # --- trays and photos

    @Slot()
    def add_trays(self) -> None:
        """Let the grower add trays."""
        if self.book is not None:
            model = self.screens["bench"].chosen_tray if self.place == "bench" else None  # type: ignore[attr-defined]
            dialog = NewTrayDialog(self.book, self, model)
            dialog.added.connect(self._book_changed)
            dialog.exec()

    @Slot()
    def print_tags(self) -> None:
        """Let the grower print tags of all trays and the cards of the station."""
        from gui.tagsdialog import TagsDialog

        dialog = self._about_book(lambda book: TagsDialog(book, self))
        if dialog is not None and dialog.exec():
            self.tell(dialog.told)

    def _about_book(self, make: Callable[[Book], D]) -> D | None:
        """A dialog about the open book; None without one, or where it cannot be read, which is told."""
        if self.book is None:
            return None
        try:
            return make(self.book)
        except BookError as error:
            self.tell_trouble(spoken(error))
            return None

    @Slot()
    def tray_types(self) -> None:
        """Let the grower measure a kind of tray, or add one."""
        from gui.traytypes import TrayTypes

        dialog = self._about_book(lambda book: TrayTypes(book, self))
        if dialog is not None:
            dialog.changed.connect(self._book_changed)
            dialog.exec()

    @Slot()
    def check_station(self) -> None:
        """Show where the cards of the station go, and check them in a photo."""
        from gui.stationhelper import StationHelper

        dialog = self._about_book(lambda book: StationHelper(book, self.work, self))
        if dialog is not None:
            dialog.exec()

    @Slot()
    def write_report(self) -> None:
        """Let the grower look at the report of a trial and save it."""
        from gui.reportdialog import ReportDialog

        dialog = self._about_book(lambda book: ReportDialog(book, self.work, self))
        if dialog is not None and dialog.exec():
            self.tell(dialog.told)

    @Slot()
    def bring_in(self) -> None:
        """Let the grower choose photos."""
        self.go_to("intake")
        self.screens["intake"].choose_photos()  # type: ignore[attr-defined]

    def bring_in_files(self, paths: Sequence[Path]) -> None:
        """Hand photos or folders to Intake."""
        if paths and self.book is not None:
            self.go_to("intake")
            self.screens["intake"].bring_in(paths)  # type: ignore[attr-defined]

    @Slot()
    def bring_in_log(self) -> None:
        """Let the grower choose a file of a logger or a scale."""
        if self.book is not None:
            path = ask_log(self, self.tr("Bring in the file of a logger or a scale"), Path.home())
            if path is not None:
                self.open_log(path)

    def open_log(self, path: Path) -> None:
        """Show a file of readings, and how it is read."""
        from gui.logassistant import LogAssistant

        dialog = self._about_book(lambda book: LogAssistant(book, self.work, path, self))
        if dialog is not None:
            dialog.kept.connect(self._book_changed)
            if dialog.exec():
                self.tell(dialog.told)

    @Slot()
    def _open_dropped_logs(self) -> None:
        """Each file of readings that was dropped, one after the other."""
        while self._dropped_logs:
            self.open_log(self._dropped_logs.pop(0))

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        """Files may be dropped anywhere."""
        if self.book is not None and _files_in(event.mimeData().urls()):
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        """Bring in what was dropped."""
        event.acceptProposedAction()
        paths = _files_in(event.mimeData().urls())
        logs = [path for path in paths if path.suffix.casefold() in LOG_SUFFIXES]
        self.bring_in_files([path for path in paths if path not in logs])
        if logs:
            self._dropped_logs += logs
            QTimer.singleShot(0, self._open_dropped_logs)  # whoever drags is free again before

    # --- words and looks

    @Slot(str)
    def tell(self, sentence: str) -> None:
        """Say something at the foot, for a while."""
        self.told.setText(spoken(sentence))
        self._hushing.start()

    @Slot(str)
    def tell_trouble(self, sentence: str) -> None:
        """Say what went wrong, until it has been read."""
        self.trouble.say(spoken(sentence))

    @Slot()
    def show_help(self) -> None:
        """Show the help, opened at the page of the place the grower is at."""
        if self._help is None:
            self._help = HelpWindow(self)
        self._help.show_page(self.place)
        self._help.show()
        self._help.raise_()
        self._help.activateWindow()

    @Slot()
    def show_keys(self) -> None:
        """Show the sheet of keys."""
        KeySheet(self.screens.values(), self).exec()

    @Slot(str)
    def _choose_scheme(self, scheme: str) -> None:
        self.wardrobe.choose(scheme)

    @Slot(str)
    def _choose_language(self, language: str) -> None:
        self.memory.language = language
        self.tell(self.tr("The language changes at the next start."))

    @Slot(str)
    def _choose_units(self, system: str) -> None:
        self.memory.units = UnitSystem(system)
        self._use_units()

    def _use_units(self) -> None:
        self.top.show_units(self.memory.units)
        for screen in self.screens.values():
            screen.use_units(self.memory.units)

    @Slot()
    def larger_text(self) -> None:
        """Larger letters."""
        self._tell_text(self.wardrobe.step_text(+1))

    @Slot()
    def smaller_text(self) -> None:
        """Smaller letters."""
        self._tell_text(self.wardrobe.step_text(-1))

    def _tell_text(self, percent: int) -> None:
        self.tell(self.tr("Text {n} %").format(n=percent))

    @Slot()
    def _redress(self) -> None:
        self.top.redress()
        self.top.show_choices(self.memory.scheme, self.memory.text_percent, self.memory.language)
        for screen in self.screens.values():
            screen.redress()

    # --- closing

    def closeEvent(self, event: QCloseEvent) -> None:
        """Stop the work, wait for it, close the book: nothing is half written."""
        self.memory.geometry = self.saveGeometry()
        self.memory.keep()
        self.work.close()
        self.desk.close()
        super().closeEvent(event)


def _files_in(urls: Sequence[QUrl]) -> list[Path]:
    return [Path(url.toLocalFile()) for url in urls if url.isLocalFile()]
