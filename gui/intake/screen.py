"""Intake: photos come in, and each one's fate stands in a row.

In    files and folders, dropped, chosen or watched; the open book
Out   photos in the book; `book_changed` as each is stored; `tray_wanted` when a tray's sheet is asked for
Not   where photos come from (`photosource.py`), bringing them in (`bringing.py`), the list and a photo of it
      (`photolist.py`), questions about many photos (`bands.py`), keeping the answers (`desk.py`)
"""

from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QT_TRANSLATE_NOOP, Qt, Slot
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QStackedLayout, QWidget

from data.cancel import CancelToken
from data.errors import BookError
from data.photos.farmerrors import FarmLost, FarmMissing
from data.records import Fate, PhotoId
from gui.bookreading import BookReading
from gui.intake.againoffer import AgainOffer
from gui.intake.bands import Asked
from gui.intake.bringing import Bringing
from gui.intake.cornerdesk import CornerDesk
from gui.intake.desk import IntakeDesk
from gui.intake.droparea import DropArea
from gui.intake.photolist import PhotoList
from gui.intake.photosource import PhotoSource
from gui.intake.reading import IntakeReading, read_intake
from gui.intake.view import IntakeState, intake_state
from gui.language.spoken import spoken
from gui.photo.thumbnails import Thumbnails
from gui.screen import Screen
from gui.work import Job, Work

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["Intake"]


class Intake(Screen):
    """Drop photos, and see what became of each."""

    KEYS = (
        ("N", str(QT_TRANSLATE_NOOP("Intake", "Go to the next photo that needs you"))),
        ("Q", str(QT_TRANSLATE_NOOP("Intake", "Go to the question above the photos"))),
    )

    def __init__(self, work: Work, parent: QWidget | None = None) -> None:
        super().__init__(work, parent)
        self.reading: IntakeReading | None = None
        self._state = IntakeState()
        self._only_needing = False
        self.answers = BookReading(work, self)
        self.answers.came.connect(self._read)
        self.answers.failed.connect(self._tell)
        self._only: frozenset[PhotoId] | None = None
        self.thumbnails = Thumbnails(work, self)
        self.source = PhotoSource(work, self)
        self.bringing = Bringing(work, self)
        self.desk = IntakeDesk(work, self)
        self.offer = AgainOffer(work, self)
        self.empty = DropArea(self, large=True)
        self.list = PhotoList(work, self.thumbnails, self.offer.scoring, self)
        self.corners = CornerDesk(work, self)
        self._stack = QStackedLayout(self)
        for page in (self.empty, self.list, self.corners):
            self._stack.addWidget(page)
        self._connect()
        self._connect_questions()
        self.redress()
        self.show_state(self._state)

    def _connect(self) -> None:
        source = self.source
        for area in (self.empty, self.list.drop):
            area.files_wanted.connect(source.choose_photos)
            area.folder_wanted.connect(source.choose_folder)
            area.watch_wanted.connect(source.choose_watched)
            area.watch_ended.connect(source.end_watch)
            source.watched.connect(area.show_watched)
        source.brought.connect(self.bring_in)
        source.lost.connect(self.troubled)
        source.failed.connect(self._tell)
        self.bringing.stepped.connect(self._stepped)
        self.bringing.told.connect(self.told)
        self.bringing.failed.connect(self._tell)
        self.bringing.failed.connect(source.watch.offer_again)
        self.list.photos_wanted.connect(source.choose_photos)
        self.list.missing_wanted.connect(self._bring_missing)
        self.list.confirm_all_wanted.connect(self._confirm_all)
        self.list.filter_changed.connect(self._filter)
        self.list.panel.tray_chosen.connect(self.desk.match)
        self.list.panel.corners_wanted.connect(self.corners.ask)
        self.list.panel.sheet_wanted.connect(self.tray_wanted)
        self.list.panel.left_out.connect(self.desk.leave_out)
        self.corners.opened.connect(self._show_corners)
        self.corners.scored.connect(self._rescored)
        self.corners.left.connect(self._corners_left)
        self.corners.failed.connect(self._tell)

    def _connect_questions(self) -> None:
        bands, desk, offer = self.list.bands, self.desk, self.offer
        bands.only.connect(self._show_only)
        bands.clock.mended.connect(desk.mend_clock)
        bands.clock.believed.connect(desk.believe_clock)
        bands.walk.confirmed.connect(desk.match_all)
        bands.again.begun.connect(offer.begin)
        bands.again.put_off.connect(offer.put_off)
        desk.done.connect(self._changed)
        desk.failed.connect(self._tell)
        offer.changed.connect(self._show_bands)
        offer.told.connect(self._changed)
        offer.failed.connect(self._tell)

    # --- bringing in

    @Slot(object)
    def bring_in(self, paths: Sequence[Path]) -> Job | None:
        """Score and keep these files and folders, in this order; while others come in, these wait."""
        return self.bringing.bring_in(paths)

    @Slot()
    def choose_photos(self) -> None:
        """Ask for files."""
        self.source.choose_photos()

    @Slot()
    def _stepped(self) -> None:
        self._refresh()
        self.book_changed.emit()

    @Slot()
    def _bring_missing(self) -> None:
        self.bring_in(self._state.missing)

    @Slot()
    def _confirm_all(self) -> None:
        self.desk.match_all(dict(self._state.proposals))

    @Slot(str)
    def _changed(self, words: str) -> None:
        """The book has changed in the background."""
        if words:
            self.told.emit(words)
        self.renew()
        self.book_changed.emit()

    @Slot(object)
    def _tell(self, error: Exception) -> None:
        if isinstance(error, (BookError, FarmLost, FarmMissing)):
            self.troubled.emit(spoken(error))
        else:
            self.told.emit(self.tr("That did not work, and nothing was changed. Try it once more."))

    # --- corners

    @Slot()
    def _show_corners(self) -> None:
        self._stack.setCurrentWidget(self.corners)

    @Slot(object)
    def _rescored(self, fate: Fate) -> None:
        self.thumbnails.clear()
        self._changed(f"{fate.name}: {spoken(fate.sentence)}")

    @Slot()
    def _corners_left(self) -> None:
        self._refresh()
        self.list.table.setFocus()

    # --- reading and showing

    def open_book(self, book: "Book | None") -> None:
        """Another book: another list, and its own watched folder."""
        self.reading, self._only, self._only_needing = None, None, False
        for part in (self.bringing, self.corners, self.desk, self.offer):
            part.open_book(book)
        self.thumbnails.clear()
        self.answers.open(book)
        self._refresh()
        super().open_book(book)
        self.source.open_book(book)

    def renew(self) -> None:
        """Read the photos of the book in the background."""
        self.answers.ask(_read)

    @Slot(object)
    def _read(self, reading: IntakeReading) -> None:
        self.reading = reading
        self.list.panel.show_trays(reading.trays)
        self._refresh()

    @Slot(bool)
    def _filter(self, only_needing: bool) -> None:
        self._only_needing = only_needing
        self._refresh()

    @Slot(object)
    def _show_only(self, photos: frozenset[PhotoId] | None) -> None:
        if photos != self._only:
            self._only = photos
            self._refresh()

    def _refresh(self) -> None:
        reading = self.reading
        state = intake_state(
            self.bringing.batch,
            () if reading is None else reading.photos,
            only_needing=self._only_needing,
            only=self._only,
            ended=None if reading is None else reading.ended,
        )
        self.show_state(state)

    def show_state(self, state: IntakeState) -> None:
        """Show this, whatever was shown before."""
        self._state = state
        self.empty.no_trays.setVisible(self.reading is not None and not self.reading.trays)
        self._show_bands()
        self.list.show_state(state)
        if not self.corners.is_asked or self._stack.currentWidget() is not self.corners:
            self._stack.setCurrentWidget(self.list if state.total else self.empty)

    @Slot()
    def _show_bands(self) -> None:
        """Ask nothing of a batch that is not all here."""
        reading = self.reading
        if reading is None or self.bringing.is_busy:
            self.list.bands.show_asked(Asked())
            return
        several = len(self._state.proposals) > 1  # one is asked about beside its photo
        self.list.bands.show_asked(
            Asked(
                doubts=reading.doubts,
                shelves=reading.shelves if several else (),
                stale=self.offer.stale,
                workers=self.work.scoring_threads,
                needing=self._state.needing > 0,
            )
        )

    # --- the window

    def arrive(self) -> None:
        """Put the focus where the hands expect it."""
        self.offer.look()
        page = self._stack.currentWidget()
        if page is self.empty:
            self.empty.files.setFocus()
        elif page is self.list:
            self.list.table.setFocus()
        else:
            self.corners.page.photo.setFocus()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """N goes to the next photo that needs a person, Q to the question above the photos."""
        in_list = self._stack.currentWidget() is self.list
        if in_list and event.key() == Qt.Key.Key_N:
            self.list.go_to_next()
        elif in_list and event.key() == Qt.Key.Key_Q:
            self.list.bands.take_focus()
        else:
            super().keyPressEvent(event)

    def redress(self) -> None:
        """Icons and row heights for the new scheme and text size."""
        self.empty.redress()
        self.list.fit_to_text()


def _read(book: "Book", _cancel: CancelToken) -> IntakeReading:
    return read_intake(book)
