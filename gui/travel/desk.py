"""Travel: a book packed, exported, unpacked; another grower's book brought into the open one.

In    the desk with the open book; `Work`; the window above which the dialogs stand
Out   `made` with what was made and where it lies; `told`, `troubled`; `changed` after trays came in
Not   doing it (`data/travel/packing.py`, `data/export.py`, `data/travel/merging.py`), one errand's course
      (`errand.py`)
"""

from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Signal, Slot
from PySide6.QtWidgets import QApplication, QWidget

from data.cancel import CancelToken, Progress
from data.errors import BookError
from gui.controls.choosing import ask_pack
from gui.frame.bookdesk import BookDesk, is_demo
from gui.home import books_folder, documents_folder
from gui.language.spoken import spoken
from gui.work import Work

if TYPE_CHECKING:
    from data.book import Book
    from gui.travel.errand import Made
    from gui.work import Task

__all__ = ["Travel"]


class Travel(QObject):
    """What leaves the book, and what comes from other ones."""

    made = Signal(str, object)  # a sentence; the folder where it lies, or None
    told = Signal(str)
    troubled = Signal(str)
    changed = Signal()

    def __init__(self, desk: BookDesk, work: Work, over: QWidget) -> None:
        super().__init__(over)
        self._desk, self._work, self._over = desk, work, over
        self._dropped: list[Path] = []  # dropped, waiting for the one before

    def _send(self, task: "Task", words: str, made: "Made") -> None:
        from gui.travel.errand import Errand

        errand = Errand(self._work, task, words, made, self)
        errand.made.connect(self.made)
        errand.told.connect(self.told)
        errand.troubled.connect(self.troubled)

    # --- out of the book

    @Slot()
    def pack_book(self) -> None:
        """Let the grower pack the book into one file."""
        from data.travel.packing import PACK_SUFFIX, pack_size
        from gui.travel.places import PackPlace
        from gui.travel.view import free_name

        book = self._desk.book
        if book is not None:
            where = documents_folder()
            name = free_name(where, book.folder.name, book.today(), PACK_SUFFIX)
            dialog = PackPlace(name, where, self._over)
            size = self._work.start(lambda _cancel, _report: pack_size(book.folder))
            size.finished.connect(dialog.show_size)
            if dialog.exec():
                self.pack_to(book, dialog.path)

    def pack_to(self, book: "Book", target: Path) -> None:
        """Pack a book into a file, in the background."""

        def task(cancel: CancelToken, report: Progress) -> tuple[Path, tuple[str, ...]]:
            from data.travel.packing import pack

            lacking: list[str] = []
            return pack(book, target, cancel, report, lacking.append), tuple(lacking)

        self._send(task, self.tr("Packing the book"), _packed)

    @Slot()
    def export_book(self) -> None:
        """Let the grower write all numbers as open files."""
        from gui.travel.places import ExportPlace
        from gui.travel.view import free_name

        book = self._desk.book
        if book is not None:
            where = documents_folder()
            dialog = ExportPlace(free_name(where, book.folder.name, book.today()), where, self._over)
            if dialog.exec():
                self.export_to(book, dialog.path, top_views=dialog.top_views.isChecked())

    def export_to(self, book: "Book", target: Path, *, top_views: bool) -> None:
        """Write open files into a folder, in the background."""

        def task(cancel: CancelToken, report: Progress) -> Path:
            from data.export import export

            return export(book, target, cancel, report, top_views=top_views)

        self._send(task, self.tr("Exporting the book"), self._exported)

    def _exported(self, folder: Path) -> tuple[str, Path]:
        words = self.tr("Exported to {folder}; README.md there says how to read the files.")
        return words.format(folder=folder), folder

    # --- other books

    @Slot()
    def open_pack(self) -> None:
        """Let the grower choose a packed book, and a place for it."""
        source = ask_pack(self._over, self.tr("Open a packed book"), documents_folder())
        if source is not None:
            self.open_pack_of(source)

    def open_pack_of(self, source: Path) -> None:
        """Ask where a packed book shall stand, and open it there."""
        from gui.travel.places import UnpackPlace

        dialog = UnpackPlace(source, books_folder(), self._over)
        if dialog.exec():
            self.unpack_to(source, dialog.path)

    def unpack_to(self, source: Path, folder: Path) -> None:
        """Unpack a book into a folder in the background, then open it."""

        def task(cancel: CancelToken, report: Progress) -> Path:
            from data.travel.packing import unpack

            return unpack(source, folder, cancel, report)

        self._send(task, self.tr("Unpacking the book"), self._unpacked)

    def _unpacked(self, folder: Path) -> tuple[str, Path]:
        if QApplication.activeModalWidget() is not None:  # a dialog about the book that is open now
            return self.tr("Unpacked: {folder}. Open it with Open a book.").format(folder=folder), folder
        if not self._desk.open_folder(folder):  # the one that is open has something to keep first
            return self.tr("Unpacked: {folder}. Open it with Open a book.").format(folder=folder), folder
        return self.tr("Unpacked and opened: {folder}").format(folder=folder), folder

    @Slot()
    def bring_in_book(self) -> None:
        """Let the grower choose another book, packed or not, or an export, to be brought into this one."""
        from gui.travel.guestsource import GuestSource

        if self._desk.book is None:
            return
        dialog = GuestSource(self._over)
        if dialog.exec() and dialog.chosen is not None:
            self.bring_in_guest(dialog.chosen)

    def bring_in_guest(self, source: Path) -> None:
        """Show what another book holds, and bring it into the open one."""
        from gui.travel.guestdialog import GuestDialog

        book = self._desk.book
        if book is None:
            return
        try:
            dialog = GuestDialog(book, self._work, source, self._over)
        except BookError as error:
            self.troubled.emit(spoken(error))
            return
        dialog.changed.connect(self.changed)
        if dialog.exec():
            self.made.emit(dialog.told, None)

    def take_dropped(self, sources: Sequence[Path]) -> None:
        """Dropped books one after the other, once whoever dragged them is free again."""
        if sources:
            self._dropped += sources
            QTimer.singleShot(0, self._take_waiting)

    @Slot()
    def _take_waiting(self) -> None:
        while self._dropped:
            self._take(self._dropped.pop(0))

    def _take(self, source: Path) -> None:
        """A folder is brought in; of a packed book that is asked where a book of the grower's own is open."""
        from gui.travel.packways import PackWay, PackWays

        book = self._desk.book
        if source.is_dir():
            self.bring_in_guest(source)
        elif book is None or is_demo(book):
            self.open_pack_of(source)
        else:
            dialog = PackWays(source.name, self._over)
            dialog.exec()
            if dialog.wanted is PackWay.OPEN:
                self.open_pack_of(source)
            elif dialog.wanted is PackWay.BRING_IN:
                self.bring_in_guest(source)


def _packed(packed: tuple[Path, tuple[str, ...]]) -> tuple[str, Path]:
    from gui.travel.view import packed_words

    path, lacking = packed
    return packed_words(path, path.stat().st_size, lacking), path.parent
