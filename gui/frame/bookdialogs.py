"""Book dialogs: each dialog about the open book, brought in when it is first wanted.

In    the desk with the open book; `Work`; the window above which they stand
Out   `changed` after something was kept, `told` with a sentence for the foot, `troubled`
Not   what stands in a dialog (one module each), other books (`travel/desk.py`)
"""

from collections.abc import Callable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING, TypeVar

from PySide6.QtCore import QObject, QTimer, Signal, Slot
from PySide6.QtWidgets import QDialog, QWidget

from data.errors import BookError
from gui.controls.choosing import ask_log, ask_notes
from gui.frame.bookdesk import BookDesk
from gui.home import documents_folder
from gui.language.spoken import spoken
from gui.work import Work

if TYPE_CHECKING:
    from data.book import Book
    from data.records import Tray

__all__ = ["BookDialogs"]

D = TypeVar("D", bound=QDialog)


class BookDialogs(QObject):
    """One dialog at a time; none without a book."""

    changed = Signal()
    told = Signal(str)
    troubled = Signal(str)

    def __init__(
        self, desk: BookDesk, work: Work, chosen_tray: Callable[[], "Tray | None"], over: QWidget
    ) -> None:
        super().__init__(over)
        self._desk, self._work, self._chosen_tray, self._over = desk, work, chosen_tray, over
        self._tables: list[Path] = []  # dropped, waiting for the one before

    def about_book(self, make: "Callable[[Book], D]") -> D | None:
        """A dialog about the open book; None without one, or where it cannot be read, which is told."""
        if self._desk.book is None:
            return None
        try:
            return make(self._desk.book)
        except BookError as error:
            self.troubled.emit(spoken(error))
            return None

    @Slot()
    def add_trays(self) -> None:
        """Let the grower add trays."""
        from gui.trays.newtray import NewTrayDialog

        dialog = self.about_book(lambda book: NewTrayDialog(book, self._over, self._chosen_tray()))
        if dialog is not None:
            dialog.added.connect(self.changed)
            dialog.exec()

    @Slot()
    def print_tags(self) -> None:
        """Let the grower print tags of all trays and the cards of the station."""
        from gui.trays.tagsdialog import TagsDialog

        dialog = self.about_book(lambda book: TagsDialog(book, self._work, self._over))
        if dialog is not None and dialog.exec():
            self.told.emit(dialog.told)

    @Slot()
    def tray_types(self) -> None:
        """Let the grower measure a kind of tray, or add one."""
        from gui.trays.traytypes import TrayTypes

        dialog = self.about_book(lambda book: TrayTypes(book, self._over))
        if dialog is not None:
            dialog.changed.connect(self.changed)
            dialog.exec()

    @Slot()
    def check_station(self) -> None:
        """Show where the cards of the station go, and check them in a photo."""
        from gui.trays.stationsetup import StationSetup

        dialog = self.about_book(lambda book: StationSetup(book, self._work, self._over))
        if dialog is not None:
            dialog.changed.connect(self.changed)
            dialog.exec()

    @Slot()
    def write_report(self) -> None:
        """Let the grower look at the report of a trial and save it."""
        from gui.report.dialog import ReportDialog

        dialog = self.about_book(lambda book: ReportDialog(book, self._work, self._over))
        if dialog is not None and dialog.exec():
            self.told.emit(dialog.told)

    @Slot()
    def bring_in_log(self) -> None:
        """Let the grower choose a file of a logger or a scale."""
        if self._desk.book is not None:
            title = self.tr("Bring in the file of a logger or a scale")
            path = ask_log(self._over, title, Path.home())
            if path is not None:
                self.open_log(path)

    def open_log(self, path: Path) -> None:
        """Show a file of readings, and how it is read."""
        from gui.logs.assistant import LogAssistant

        dialog = self.about_book(lambda book: LogAssistant(book, self._work, path, self._over))
        if dialog is not None:
            dialog.kept.connect(self.changed)
            if dialog.exec():
                self.told.emit(dialog.told)

    @Slot()
    def bring_in_notes(self) -> None:
        """Let the grower choose a table of trays of before."""
        if self._desk.book is not None:
            path = ask_notes(self._over, self.tr("Bring in old notes of trays"), documents_folder())
            if path is not None:
                self.open_notes(path)

    def open_notes(self, path: Path) -> None:
        """Show a table of trays, and how it is read."""
        from gui.oldnotes.assistant import OldNotesAssistant

        dialog = self.about_book(lambda book: OldNotesAssistant(book, self._work, path, self._over))
        if dialog is not None:
            dialog.kept.connect(self.changed)
            if dialog.exec():
                self.told.emit(dialog.told)

    def open_tables(self, paths: Sequence[Path]) -> None:
        """Show dropped files one after the other, once whoever dragged them is free again."""
        if paths:
            self._tables += paths
            QTimer.singleShot(0, self._open_waiting)

    @Slot()
    def _open_waiting(self) -> None:
        from gui.frame.dropping import is_old_notes

        while self._tables:
            path = self._tables.pop(0)
            (self.open_notes if is_old_notes(path) else self.open_log)(path)
