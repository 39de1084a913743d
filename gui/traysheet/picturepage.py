"""Picture page: the picture of one day with the layers that are switched on.

In    the day that is looked at; whether the top view or the photo is wanted
Out   the picture in its full resolution, loaded in the background
Not   reading the book (`view.py`), loading (`picture.py`), painting (`pictures.py`)
"""

from typing import TYPE_CHECKING

from PySide6.QtCore import QTimer, Slot
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from data.cancel import CancelToken, Progress
from gui.controls.flow import Flow
from gui.controls.zoombar import ZoomBar
from gui.mishap import trouble_words
from gui.photo.layers import Layer
from gui.pictures import PictureView
from gui.style.palette import Space
from gui.traysheet.layerbar import LayerBar
from gui.traysheet.page import SheetPage
from gui.traysheet.picture import SheetPicture, Wanted, load_sheet_picture, marks_of
from gui.traysheet.view import TrayState
from gui.work import Work

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["PicturePage"]

BLANK_AFTER_MS = 150  # the picture before stays so long, so that nothing flickers
CLOSER = 3.0  # times the fitted picture, for a suspect that is shown


class PicturePage(SheetPage):
    """The largest thing on the sheet."""

    def __init__(self, work: Work, parent: QWidget | None = None) -> None:
        super().__init__(work, parent)
        self._wanted: Wanted | None = None
        self._held: Wanted | None = None
        self._blank = QTimer(self, interval=BLANK_AFTER_MS, singleShot=True)
        self._blank.timeout.connect(self._show_loading)
        self.view = PictureView(self)
        self.view.layers_switched.connect(self._layers_switched)
        foot = QWidget(self)
        row = Flow(foot)
        self.bar = LayerBar(foot)
        self.bar.layer_switched.connect(self.view.switch)
        self.bar.photo_wanted.connect(self._load)
        row.addWidget(self.bar)
        self.zoom = ZoomBar(self.view, foot)
        row.addWidget(self.zoom)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(Space.S)
        column.addWidget(self.view, 1)
        column.addWidget(foot)
        self.view.show_layers(frozenset({Layer.SUSPECTS}))
        self.bar.show_layers(self.view.shown)

    def open_book(self, book: "Book | None") -> None:
        """Nothing of the book before."""
        super().open_book(book)
        self._wanted = self._held = None
        self._blank.stop()
        self.view.show_picture(None)

    def show_state(self, state: TrayState) -> None:
        """Show this day."""
        super().show_state(state)
        self.view.describe(state.description)
        self._load()

    def take_key(self, event: QKeyEvent) -> bool:
        """The keys of the picture."""
        return self.view.take_key(event)

    def stops(self) -> list[QWidget]:
        """What Tab comes by, in reading order."""
        return [self.view, self.bar.photo, *self.bar.layers.values(), *self.zoom.stops()]

    def take_focus(self) -> None:
        """The picture."""
        self.view.setFocus()

    @Slot()
    def _load(self) -> None:
        state, book = self.state, self.book
        if state is None or book is None:
            return
        day = state.day
        for button in self.bar.layers.values():
            button.setEnabled(day is not None and day.score is not None)
        if day is None:
            self._wanted = None
            self.view.show_picture(
                None, message=self.tr("No photo of this tray yet. Bring photos in at Intake.")
            )
            return
        as_photo = self.bar.photo.isChecked() or day.score is None
        wanted = Wanted(
            photo_id=day.photo_id,
            as_photo=as_photo,
            marks=marks_of(state.suspects),
            coverage=None if day.score is None else day.score.coverage,
        )
        if wanted in (self._wanted, self._held) and self._wanted is not None:
            self._wanted = wanted
            return
        same_picture = self._held is not None and self._held.same_picture(wanted)
        self._wanted = wanted
        if not same_picture and not self._blank.isActive():
            self._blank.start()

        def load(_token: CancelToken, _report: Progress) -> SheetPicture:
            return load_sheet_picture(book, day, wanted)

        job = self.work.start(load)
        job.finished.connect(self._loaded)
        job.failed.connect(self._load_failed)

    @Slot(object)
    def _loaded(self, answer: SheetPicture) -> None:
        if answer.wanted != self._wanted:
            return  # another day is looked at by now
        self._blank.stop()
        self._held = answer.wanted
        self.view.show_picture(answer.mips, layers=answer.layers, message=answer.message)

    @Slot(object)
    def _load_failed(self, error: Exception) -> None:
        self._blank.stop()
        self._held = None
        self.view.show_picture(None, message=trouble_words(error))

    @Slot()
    def _show_loading(self) -> None:
        self._held = None
        self.view.show_picture(None, message=self.tr("The picture is coming."))

    @Slot(object)
    def _layers_switched(self, shown: frozenset[Layer]) -> None:
        self.bar.show_layers(shown)

    def look_at_suspect(self, number: int) -> None:
        """Bring a suspect to the middle, enlarged."""
        ring = next((shape for mark, shape in self.view.layers.rings if mark.number == number), None)
        if ring is not None:
            if Layer.SUSPECTS not in self.view.shown:
                self.view.switch(Layer.SUSPECTS)
            middle = ring.bounds.center()
            self.view.look_at(middle.x(), middle.y(), CLOSER)
