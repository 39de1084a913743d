"""Photo source: files and folders that a person chooses, and the folder that is watched.

In    the open book, which remembers its watched folder
Out   `brought` with paths; `watched` with the folder, None for none; `failed`, `lost` in words
Not   bringing them in (`bringing.py`), the buttons (`droparea.py`), when a file is whole (`folderwatch.py`)
"""

from collections.abc import Sequence
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal, Slot
from PySide6.QtWidgets import QWidget

from data.errors import BookError
from gui.controls.choosing import ask_folder, ask_photos
from gui.home import photos_folder
from gui.intake.folderwatch import FolderWatch
from gui.work import Work

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["PhotoSource"]

WATCHED = "watched folder"  # the book's setting


class PhotoSource(QObject):
    """Asks for photos, and watches."""

    brought = Signal(object)  # paths, in the order in which they shall come in
    watched = Signal(object)  # the folder, None for none
    lost = Signal(str)
    failed = Signal(object)

    def __init__(self, work: Work, parent: QWidget) -> None:
        super().__init__(parent)
        self._widget = parent
        self._book: Book | None = None
        self._photos_from = photos_folder()
        self.watch = FolderWatch(work, self)
        self.watch.arrived.connect(self.brought)
        self.watch.lost.connect(self._folder_lost)
        self.watch.silent.connect(self._folder_silent)

    def open_book(self, book: "Book | None") -> None:
        """The watched folder of this book."""
        self._book = book
        wanted = book.setting(WATCHED) if book is not None else None
        self._watch(Path(wanted) if wanted else None)

    # --- asked for

    @Slot()
    def choose_photos(self) -> None:
        """Ask for files."""
        if self._book is not None:
            self._bring(ask_photos(self._widget, self.tr("Choose photos"), self._photos_from))

    @Slot()
    def choose_folder(self) -> None:
        """Ask for a folder."""
        folder = ask_folder(self._widget, self.tr("Choose a folder with photos"), self._photos_from)
        self._bring([folder] if folder else [])

    def _bring(self, paths: Sequence[Path]) -> None:
        """Bring these in; the next question begins where they lay."""
        if paths:
            self._photos_from = paths[0].parent
            self.brought.emit(list(paths))

    # --- watched

    @Slot()
    def choose_watched(self) -> None:
        """Ask for the folder that the phone copies to."""
        words = self.tr("Choose the folder that your phone copies to")
        folder = ask_folder(self._widget, words, self._photos_from)
        if folder:
            self.set_watched(folder)

    @Slot()
    def end_watch(self) -> None:
        """Watch no more."""
        self.set_watched(None)

    def set_watched(self, folder: Path | None) -> None:
        """Bring in what arrives in this folder, now and after the next start; None: in none."""
        if self._book is None:
            return
        try:
            self._book.set_setting(WATCHED, "" if folder is None else str(folder))
        except BookError as error:
            self.failed.emit(error)
            return
        self._watch(folder)

    def _watch(self, folder: Path | None) -> None:
        if folder is None or self._book is None:
            self.watch.stop()
        else:
            self.watch.is_known = partial(_is_known, self._book)
            self.watch.start(folder)
        self.watched.emit(self.watch.folder)

    @Slot(object)
    def _folder_lost(self, folder: Path) -> None:
        self._watch(None)
        words = self.tr(
            "{folder} is not there, so no photo comes in from it: "
            "connect it again, then choose it with Watch a folder."
        )
        self.lost.emit(words.format(folder=folder))

    @Slot(object)
    def _folder_silent(self, folder: Path) -> None:
        words = self.tr(
            "{folder} does not answer, so no photo comes in from it: look at the drive or the network it "
            "lies on. Once it answers, photos come in again."
        )
        self.lost.emit(words.format(folder=folder))


def _is_known(book: "Book", path: Path) -> bool:
    try:
        return book.known_file(path) is not None
    except OSError:
        return True  # gone again, or not yet readable: the next look tells
