"""Intake: photos come in, and each one's fate stands in a row.

In    files and folders, dropped, chosen or watched; the open book
Out   photos in the book; `book_changed` as each is stored; `tray_wanted` when a tray's sheet is asked for
Not   the rows (`intakeview.py`), the list and the photo beside it (`photolist.py`), corners (`corners.py`)
"""

from collections import deque
from collections.abc import Callable, Sequence
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QT_TRANSLATE_NOOP, Qt, Slot
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QStackedLayout, QVBoxLayout, QWidget

from data.cancel import CancelToken
from data.errors import BookError
from data.records import Fate, PhotoId, PhotoRow, Tray, TrayId
from gui.choosing import ask_folder, ask_photos
from gui.corners import LONGEST_LIVE, CornerPage
from gui.cornerview import Quad
from gui.droparea import DropArea
from gui.folderwatch import FolderWatch
from gui.home import photos_folder
from gui.intakeview import Batch, IntakeRow, IntakeState, intake_state
from gui.palette import Space
from gui.photolist import PhotoList
from gui.photoload import LoadedPhoto, load_for_corners
from gui.screen import Screen
from gui.spoken import spoken
from gui.thumbnails import Thumbnails
from gui.work import Job, Report, Work

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["Intake"]

WATCHED = "watched folder"  # the book's setting
Answer = tuple["Book", tuple[PhotoRow, ...], tuple[Tray, ...]]


class Intake(Screen):
    """Drop photos, and see what became of each."""

    KEYS = (("N", str(QT_TRANSLATE_NOOP("Intake", "Go to the next photo that needs you"))),)

    def __init__(self, work: Work, parent: QWidget | None = None) -> None:
        super().__init__(work, parent)
        self._batch = Batch()
        self._photos: tuple[PhotoRow, ...] = ()
        self._state = IntakeState()
        self._news: deque[Callable[[], None]] = deque()  # filled by the worker, worked off here
        self._queue: list[Path] = []
        self._job: Job | None = None
        self._only_needing = self._reading = self._stale = False
        self._asked_corners: PhotoId | None = None
        self._photos_from = photos_folder()
        self.thumbnails = Thumbnails(work, self)
        self.watch = FolderWatch(work, self)
        self.watch.arrived.connect(self._folder_brought)
        self.watch.lost.connect(self._folder_lost)
        self.empty = DropArea(self, large=True)
        self.list = PhotoList(work, self.thumbnails, self)
        self.corners = CornerPage(self)
        self._corner_page = QWidget(self)
        inner = QVBoxLayout(self._corner_page)
        inner.setContentsMargins(Space.L, Space.L, Space.L, Space.M)
        inner.addWidget(self.corners)
        self._stack = QStackedLayout(self)
        for page in (self.empty, self.list, self._corner_page):
            self._stack.addWidget(page)
        self._connect()
        self.redress()
        self.show_state(self._state)

    def _connect(self) -> None:
        for area in (self.empty, self.list.drop):
            area.files_wanted.connect(self.choose_photos)
            area.folder_wanted.connect(self.choose_folder)
            area.watch_wanted.connect(self.choose_watched)
            area.watch_ended.connect(self.end_watch)
        self.list.photos_wanted.connect(self.choose_photos)
        self.list.confirm_all_wanted.connect(self._confirm_all)
        self.list.filter_changed.connect(self._filter)
        self.list.panel.tray_chosen.connect(self._match)
        self.list.panel.corners_wanted.connect(self._ask_corners)
        self.list.panel.sheet_wanted.connect(self.tray_wanted)
        self.list.panel.left_out.connect(self._leave_out)
        self.corners.decided.connect(self._corners_decided)
        self.corners.left.connect(self._corners_left)

    # --- bringing in

    def bring_in(self, paths: Sequence[Path]) -> Job | None:
        """Score and keep these files and folders, in this order; while others come in, these wait."""
        if self.book is None or not paths:
            return None
        if self._job is not None:
            self._queue.extend(paths)
            return None
        book, news, batch, work = self.book, self._news, self._batch, self.work

        def bring(token: CancelToken, report: Report) -> None:
            from data.intake import found_photos, intake

            files = found_photos(paths)
            news.append(partial(batch.add, files))
            report(0, len(files))
            scorers = work.scorers  # here: a farm is called on the first time
            for done, (path, fate) in enumerate(intake(files, book, scorers, token), start=1):
                news.append(partial(batch.arrived, path, fate))
                report(done, len(files))

        job = self.work.start(bring, self.tr("Scoring photos"))
        job.progressed.connect(self._progressed)
        job.finished.connect(self._brought)
        job.failed.connect(self._bring_failed)
        job.cancelled.connect(self._bring_cancelled)
        self._job = job
        return job

    @Slot()
    def _progressed(self) -> None:
        if self.sender() is not self._job:
            return  # of a book that is closed by now
        self._work_off()
        self.book_changed.emit()

    def _work_off(self) -> None:
        while self._news:
            self._news.popleft()()
        self._refresh()

    @Slot()
    def _brought(self) -> None:
        if self.sender() is not self._job:
            return
        self._job = None
        self._work_off()
        self.book_changed.emit()
        queue, self._queue = self._queue, []
        self.bring_in(queue)

    @Slot()
    def _bring_cancelled(self) -> None:
        if self.sender() is not self._job:
            return
        self._job, self._queue = None, []
        self._work_off()
        self._batch.drop_waiting()
        self.told.emit(
            self.tr("Stopped. What was stored by then stays; bring the rest in whenever you like.")
        )
        self._refresh()
        self.book_changed.emit()

    @Slot(object)
    def _bring_failed(self, error: Exception) -> None:
        if self.sender() is self._job:
            self._bring_cancelled()
            self._tell(error)

    # --- where photos come from

    @Slot()
    def choose_photos(self) -> None:
        """Ask for files."""
        if self.book is not None:
            self._bring_chosen(ask_photos(self, self.tr("Choose photos"), self._photos_from))

    @Slot()
    def choose_folder(self) -> None:
        """Ask for a folder."""
        folder = ask_folder(self, self.tr("Choose a folder with photos"), self._photos_from)
        self._bring_chosen([folder] if folder else [])

    def _bring_chosen(self, paths: Sequence[Path]) -> None:
        """Bring these in; the next question begins where they lay."""
        if paths:
            self._photos_from = paths[0].parent
            self.bring_in(paths)

    @Slot()
    def choose_watched(self) -> None:
        """Ask for the folder that the phone copies to."""
        folder = ask_folder(self, self.tr("Choose the folder that your phone copies to"), self._photos_from)
        if folder:
            self.begin_watch(folder)

    def begin_watch(self, folder: Path) -> None:
        """Bring in what arrives in this folder, now and after the next start."""
        self._set_watched(folder)

    @Slot()
    def end_watch(self) -> None:
        """Watch no more."""
        self._set_watched(None)

    def _set_watched(self, folder: Path | None) -> None:
        if self.book is None:
            return
        try:
            self.book.set_setting(WATCHED, "" if folder is None else str(folder))
        except BookError as error:
            self._tell(error)
            return
        self._watch(folder)

    def _watch(self, folder: Path | None) -> None:
        if folder is None or self.book is None:
            self.watch.stop()
        else:
            book = self.book
            self.watch.is_known = partial(_is_known, book)
            self.watch.start(folder)
        for area in (self.empty, self.list.drop):
            area.show_watched(folder)

    @Slot(object)
    def _folder_brought(self, paths: list[Path]) -> None:
        self.bring_in(paths)

    @Slot(object)
    def _folder_lost(self, folder: Path) -> None:
        self._watch(None)
        self._tell_lost(folder)

    def _tell_lost(self, folder: Path) -> None:
        words = self.tr(
            "{folder} is not there, so no photo comes in from it: "
            "connect it again, then choose it with Watch a folder."
        )
        self.troubled.emit(words.format(folder=folder))

    # --- what a person says of a photo

    @Slot(object, int)
    def _match(self, row: IntakeRow, tray: int) -> None:
        if row.photo_id is not None:
            photo = row.photo_id
            self._change(lambda book: book.match(photo, TrayId(tray)))

    @Slot()
    def _confirm_all(self) -> None:
        proposals = dict(self._state.proposals)
        self._change(lambda book: book.match_all(proposals))

    @Slot(object)
    def _leave_out(self, row: IntakeRow) -> None:
        if row.photo_id is not None:
            photo = row.photo_id
            self._change(lambda book: book.leave_out(photo))

    def _change(self, change: "Callable[[Book], object]") -> None:
        """A short change of the book; it is undone with the window's undo."""
        if self.book is None:
            return
        try:
            change(self.book)
        except (BookError, KeyError) as error:
            self._tell(error)
        self.renew()
        self.book_changed.emit()

    def _tell(self, error: Exception) -> None:
        if isinstance(error, BookError):
            self.troubled.emit(str(error))
        else:
            self.told.emit(self.tr("That did not work, and nothing was changed. Try it once more."))

    # --- corners

    @Slot(object)
    def _ask_corners(self, row: IntakeRow) -> None:
        if self.book is None or row.photo_id is None:
            return
        book, photo, name = self.book, row.photo_id, row.name
        self._asked_corners = photo

        def load(_token: CancelToken, _report: Report) -> LoadedPhoto:
            return load_for_corners(book, photo, name, LONGEST_LIVE)

        job = self.work.start(load)
        job.finished.connect(self._corners_loaded)
        job.failed.connect(self._tell)

    @Slot(object)
    def _corners_loaded(self, loaded: LoadedPhoto) -> None:
        if loaded.photo_id == self._asked_corners:
            self._stack.setCurrentWidget(self._corner_page)
            self.corners.show_photo(loaded.photo_id, loaded.name, loaded.mips, loaded.small, loaded.guess)

    @Slot(object, object)
    def _corners_decided(self, photo: PhotoId, corners: Quad) -> None:
        book = self.book
        if book is None:
            return

        def rescore(_token: CancelToken, _report: Report) -> Fate:
            from data import intake

            return intake.rescore(book, photo, corners)

        job = self.work.start(rescore, self.tr("Scoring the photo again"))
        job.finished.connect(self._rescored)
        job.failed.connect(self._tell)
        self._corners_left()

    @Slot(object)
    def _rescored(self, fate: Fate) -> None:
        self.told.emit(f"{fate.name}: {spoken(fate.sentence)}")
        self.thumbnails.clear()
        self.renew()
        self.book_changed.emit()

    @Slot()
    def _corners_left(self) -> None:
        self._asked_corners = None
        self.corners.clear()
        self._refresh()
        self.list.table.setFocus()

    # --- reading and showing

    def open_book(self, book: "Book | None") -> None:
        """Another book: another list, and its own watched folder."""
        self._batch, self._photos, self._only_needing = Batch(), (), False
        self._news.clear()
        self._queue = []
        self._job = None
        self._asked_corners = None
        self.thumbnails.clear()
        super().open_book(book)
        wanted = book.setting(WATCHED) if book is not None else None
        folder = Path(wanted) if wanted else None
        if folder is not None and not folder.is_dir():
            self._tell_lost(folder)
            folder = None
        self._watch(folder)

    def renew(self) -> None:
        """Read the photos of the book in the background; asked again meanwhile, once more."""
        book = self.book
        if book is None:
            self._refresh()
            return
        if self._reading:
            self._stale = True
            return
        self._reading, self._stale = True, False

        def read(_token: CancelToken, _report: Report) -> Answer:
            return book, book.photos(), book.trays()

        job = self.work.start(read)
        job.finished.connect(self._read)
        job.failed.connect(self._not_read)
        job.cancelled.connect(self._not_read)

    @Slot(object)
    def _read(self, answer: Answer) -> None:
        self._reading = False
        book, photos, trays = answer
        if book is self.book:
            self._photos = photos
            self.list.panel.show_trays(trays)
            self._refresh()
        if self._stale or book is not self.book:
            self.renew()

    @Slot()
    def _not_read(self) -> None:
        self._reading = False

    @Slot(bool)
    def _filter(self, only_needing: bool) -> None:
        self._only_needing = only_needing
        self._refresh()

    def _refresh(self) -> None:
        self.show_state(intake_state(self._batch, self._photos, only_needing=self._only_needing))

    def show_state(self, state: IntakeState) -> None:
        """Show this, whatever was shown before."""
        self._state = state
        self.list.show_state(state)
        if self._asked_corners is None or self._stack.currentWidget() is not self._corner_page:
            self._stack.setCurrentWidget(self.list if state.total else self.empty)

    # --- the window

    def arrive(self) -> None:
        """Put the focus where the hands expect it."""
        page = self._stack.currentWidget()
        if page is self.empty:
            self.empty.files.setFocus()
        elif page is self.list:
            self.list.table.setFocus()
        else:
            self.corners.photo.setFocus()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """N goes to the next photo that needs a person."""
        if event.key() == Qt.Key.Key_N and self._stack.currentWidget() is self.list:
            self.list.go_to_next()
        else:
            super().keyPressEvent(event)

    def redress(self) -> None:
        """Icons and row heights for the new scheme and text size."""
        if hasattr(self, "_stack"):
            self.empty.redress()
            self.list.fit_to_text()


def _is_known(book: "Book", path: Path) -> bool:
    try:
        return book.known_file(path) is not None
    except OSError:
        return True  # gone again, or not yet readable: the next look tells
