"""App: from nothing to a window with a book in it.

In    the folder of a book, or None: the last one, or the demonstration
Out   an exit code: 0 closed by the grower, 2 no display
Not   the window itself (`window.py`)

The window is painted first, with the Bench alone; the book is opened behind it. What is heavy is loaded a
second later in a background thread, and then the other places are made one by one, so that no click waits.
"""

import logging
import os
import shutil
import sys
from collections.abc import Iterable
from importlib import import_module
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Slot
from PySide6.QtWidgets import QApplication

import gui.unread  # noqa: F401
from data.cancel import CancelToken, Progress
from gui.frame.bookdesk import is_demo
from gui.garbage import uncleared
from gui.hands.choicename import ChoiceNames
from gui.hands.enters import Enters
from gui.hands.fingers import Fingers
from gui.hands.focusinsight import FocusInSight
from gui.hands.wheels import Wheels
from gui.home import Memory, demo_folder, log_file
from gui.language.language import speak
from gui.mishap import catch_mishaps, keep_log, trouble_words
from gui.places import Places
from gui.style.icon import icon
from gui.style.wardrobe import Wardrobe
from gui.window import Window
from gui.work import Task, Work

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["Start", "make_window", "run", "show_whole"]

LOOKED_AFTER_MS = 500  # a book's first look list is read and painted by then
WARMED_AFTER_MS = 1000
MADE_EVERY_MS = 100  # one place takes some 50 ms of the window's time: hands and mouse come between
NO_DISPLAY = 2
TITLE_BAR = 40  # px, about; how high it is nobody says before it is there

log = logging.getLogger(__name__)


def run(book: Path | None = None, *, demo: bool = False, farm: str | None = None) -> int:
    """Open the window on a book (by default the last one) or the demonstration; return when it is closed.

    `farm` is the address of a farm that scores the photos in place of this machine.
    """
    if not _has_display():
        print(
            "evenstand: there is no screen to open a window on. Start it in a desktop session; "
            "`evenstand score` needs none.",
            file=sys.stderr,
        )
        return NO_DISPLAY
    app = QApplication.instance() or QApplication(sys.argv[:1])
    assert isinstance(app, QApplication)
    app.setApplicationName("Evenstand")
    app.setDesktopFileName("evenstand")
    window = make_window(app, farm=farm)
    keep_log(log_file())
    catch_mishaps(window.sayings.tell_trouble, log_file())
    show_whole(window)
    start = Start(window)
    QTimer.singleShot(0, start.open_demo if demo else lambda: start.open(book))
    code = int(app.exec())
    if window.work.only_apart_runs:  # Qt would wait for its threads before the process ends, for ever perhaps
        logging.shutdown()
        os._exit(code)
    return code


def show_whole(window: Window) -> None:
    """Show the window; where it and its frame would not fit the screen, as large as the screen is."""
    free = window.screen().availableGeometry().size()
    fits = window.width() <= free.width() and window.height() + TITLE_BAR <= free.height()
    if fits:
        window.show()
    else:
        # or the main action lies below the screen
        window.setMinimumSize(window.minimumSize().boundedTo(free))
        window.showMaximized()


def _has_display() -> bool:
    if not sys.platform.startswith("linux"):
        return True
    return any(os.environ.get(name) for name in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"))


def make_window(app: QApplication, memory: Memory | None = None, *, farm: str | None = None) -> Window:
    """The window with its screens, dressed, without a book yet."""
    memory = memory or Memory()
    speak(app, memory)
    wardrobe = Wardrobe(app, memory)
    wardrobe.wear()
    work = Work(farm=farm)
    with uncleared():
        window = Window(work, memory, wardrobe, Places(work))
    work.setParent(window)
    for help_of_hands in (Fingers, Wheels, Enters, ChoiceNames, FocusInSight):
        help_of_hands(window)
    wardrobe.setParent(window)
    window.setWindowIcon(icon("traysheet"))
    app.aboutToQuit.connect(work.close)
    return window


class Start(QObject):
    """What happens after the first paint: a book is opened, the demonstration made and scored."""

    def __init__(self, window: Window) -> None:
        super().__init__(window)
        self._window = window
        self._making_demo = False
        window.demo_wanted.connect(self.open_demo)
        window.desk.none_opened.connect(self.open_demo)
        window.desk.new_day.connect(self._back_up)
        self._looking = QTimer(self, singleShot=True, interval=LOOKED_AFTER_MS)
        self._looking.timeout.connect(self._look_after)
        window.desk.opened.connect(self._looking.start)
        self._warming = QTimer(self, singleShot=True, interval=WARMED_AFTER_MS)
        self._warming.timeout.connect(self._warm)
        self._warming.start()
        self._making = QTimer(self, interval=MADE_EVERY_MS)
        self._making.timeout.connect(self._make_next)

    @property
    def looked_after(self) -> bool:
        """Whether the work that an opened book asks for has begun."""
        return not self._looking.isActive()

    def open(self, book: Path | None) -> None:
        """Open the book wanted, else the last one, else the demonstration."""
        window = self._window
        wanted = book or window.memory.last_book
        if wanted is None or not window.open_folder(wanted):
            self.open_demo()

    @Slot()
    def open_demo(self) -> None:
        """Open the demonstration; make it first where it is not there."""
        folder = demo_folder()
        if not self._making_demo and (folder / "book.sqlite").exists():
            self._window.open_folder(folder)
            return
        self._window.desk.expect(folder)
        if self._making_demo:
            return

        def make(_token: CancelToken, _report: Progress) -> "Book":
            return _whole_demo(folder)

        self._making_demo = True
        job = self._window.work.start(make, self.tr("Making the demonstration"), brief=True)
        job.finished.connect(self._made)
        job.failed.connect(self._not_made)
        job.cancelled.connect(self._made_no_more)

    @Slot(object)
    def _made(self, book: "Book") -> None:
        self._making_demo = False
        self._window.desk.take_expected(book)

    @Slot()
    def _made_no_more(self) -> None:
        self._making_demo = False

    @Slot(object)
    def _not_made(self, error: Exception) -> None:
        self._making_demo = False
        self._window.sayings.tell_trouble(trouble_words(error))

    @Slot()
    def _look_after(self) -> None:
        """The open book is seen: score what the demonstration lacks, newest day first, or back it up."""
        window, book = self._window, self._window.book
        if book is None:
            return
        if not is_demo(book):
            self._back_up()
            return
        from data.demo import demo_photos

        photos = demo_photos()
        have = {row.name for row in book.photos(most=len(photos) + 1)}
        missing = [path for path in photos if path.name not in have]
        if missing:
            window.screens.intake.bring_in(missing)

    @Slot()
    def _back_up(self) -> None:
        """The backup of the day; a window may stay open for weeks."""
        book = self._window.book
        if book is None or is_demo(book):
            return

        def back_up(_token: CancelToken, _report: Progress) -> None:
            book.back_up()

        self._window.work.start(back_up)

    @Slot()
    def _warm(self) -> None:
        """Load what the other places, the first photo and the first change will need."""

        work, places = self._window.work, self._window.screens
        work.start(_loading(f"gui.{place}.screen" for place in places)).finished.connect(self._making.start)
        work.start(_loading(("sqlite_utils", "vision.photo")))

    @Slot()
    def _make_next(self) -> None:
        """Make one more place in a moment when nothing else is wanted."""
        self._making.stop()  # one that cannot be made is told of once, not ten times a second
        if self._window.isVisible() and self._window.screens.make_next():
            self._making.start()


def _loading(modules: Iterable[str]) -> Task:
    """A task that imports modules, so that whoever needs them later waits no more."""

    def load(_token: CancelToken, _report: Progress) -> None:
        for name in modules:
            import_module(name)

    return load


def _whole_demo(folder: Path) -> "Book":
    """The demonstration, made beside its place: a program that is ended on the way leaves no half of it."""
    from data.book import Book
    from data.demo import make_demo

    if folder.exists():
        return make_demo(folder)
    beside = folder.with_name(f"{folder.name}.part")
    shutil.rmtree(beside, ignore_errors=True)
    make_demo(beside).close()
    beside.rename(folder)
    return Book.open(folder)
