"""Tray sheet: one tray with its picture, its days, its numbers, and what only a person can say.

In    a tray's id; the open book
Out   mold or not mold, a tray marked as done, kept in the book; `book_changed` when something was said
Not   reading (`trayview.py`), the parts (`pictures.py`, `daystrip.py`, `suspectlist.py`, `growthchart.py`)
"""

from itertools import pairwise
from typing import TYPE_CHECKING

from PySide6.QtCore import QT_TRANSLATE_NOOP, QSize, Qt, QTimer, Slot
from PySide6.QtGui import QKeyEvent, QResizeEvent
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QScrollArea,
    QStackedLayout,
    QVBoxLayout,
    QWidget,
)

from data.cancel import CancelToken
from data.errors import BookError
from data.records import PhotoId, Said, SuspectId, TrayId
from gui.daystrip import DayStrip
from gui.icon import icon
from gui.layerbar import LayerBar
from gui.layers import Layer
from gui.palette import Space, set_role
from gui.pictures import PictureView, ZoomBar
from gui.screen import Screen
from gui.sheetpicture import SheetPicture, Wanted, load_sheet_picture, marks_of
from gui.sheetside import SheetSide
from gui.thumbnails import Thumbnails
from gui.trayview import TrayState, read_tray
from gui.work import Report, Work

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["TraySheet"]

BLANK_AFTER_MS = 150  # the picture before stays so long, so that nothing flickers
CLOSER = 3.0  # times the fitted picture, for a suspect that is shown


class TraySheet(Screen):
    """The picture is the largest thing; numbers lie beside it."""

    KEYS = (
        ("Left, Right", str(QT_TRANSLATE_NOOP("TraySheet", "The day before, the day after"))),
        ("PgUp, PgDown", str(QT_TRANSLATE_NOOP("TraySheet", "The tray before, the next tray"))),
        ("Space", str(QT_TRANSLATE_NOOP("TraySheet", "All layers of the picture off and on"))),
        ("1 to 4", str(QT_TRANSLATE_NOOP("TraySheet", "Canopy, gaps, cells, suspects off and on"))),
        ("V", str(QT_TRANSLATE_NOOP("TraySheet", "Top view or photo"))),
        ("+, -, 0", str(QT_TRANSLATE_NOOP("TraySheet", "Look closer, from further away, at all of it"))),
    )

    def __init__(self, work: Work, parent: QWidget | None = None) -> None:
        super().__init__(work, parent)
        self._tray: TrayId | None = None
        self._photo: PhotoId | None = None
        self._state: TrayState | None = None
        self._wanted: Wanted | None = None
        self._held: Wanted | None = None
        self._blank = QTimer(self, interval=BLANK_AFTER_MS, singleShot=True)
        self._blank.timeout.connect(self._show_loading)
        self.thumbnails = Thumbnails(work, self)
        self._content, self._empty = self._make_content(), self._make_empty()
        self._stack = QStackedLayout(self)
        self._stack.addWidget(self._empty)
        self._stack.addWidget(self._content)
        self.picture.show_layers(frozenset({Layer.SUSPECTS}))
        self.bar.show_layers(self.picture.shown)
        self.redress()

    # --- making

    def _make_content(self) -> QWidget:
        content = QWidget(self)
        self.title = QLabel(content)
        set_role(self.title, "title")
        self.about = QLabel(content)
        set_role(self.about, "soft")
        for label in (self.title, self.about):
            label.setWordWrap(True)
        words = QVBoxLayout()
        words.setSpacing(0)
        words.addWidget(self.title)
        words.addWidget(self.about)
        head = QHBoxLayout()
        head.setSpacing(Space.M)
        head.addLayout(words, 1)
        self.picture = PictureView(content)
        head.addWidget(ZoomBar(self.picture, content))
        self.picture.layers_switched.connect(self._layers_switched)
        self.bar = LayerBar(content)
        self.bar.layer_switched.connect(self.picture.switch)
        self.bar.photo_wanted.connect(self._load)
        self.strip = DayStrip(self.thumbnails, content)
        self.strip.day_chosen.connect(self._choose_day)
        left = QVBoxLayout()
        left.setSpacing(Space.S)
        left.addLayout(head)
        left.addWidget(self.picture, 1)
        left.addWidget(self.bar)
        left.addWidget(self.strip)
        self._right = self._make_right(content)
        row = QHBoxLayout(content)
        row.setContentsMargins(Space.L, Space.L, Space.L, Space.M)
        row.setSpacing(Space.M)
        row.addLayout(left, 1)
        row.addWidget(self._right)
        return content

    def _make_right(self, parent: QWidget) -> QWidget:
        self.side = SheetSide(parent)
        self.side.suspects.said.connect(self._say)
        self.side.suspects.looked_at.connect(self._look_at)
        self.side.finish_wanted.connect(self._finish)
        self.roll = QScrollArea(parent)
        self.roll.setWidget(self.side)
        self.roll.setWidgetResizable(True)
        self.roll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.roll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.before = QPushButton(self.tr("Tray before"), parent)
        self.before.clicked.connect(self._go_before)
        self.after = QPushButton(self.tr("Next tray"), parent)
        self.after.clicked.connect(self._go_after)
        set_role(self.before, "rack")
        set_role(self.after, "rack-main")
        foot = QHBoxLayout()
        foot.setSpacing(Space.S)
        foot.addWidget(self.before)
        foot.addWidget(self.after, 1)
        right = QVBoxLayout()
        right.setSpacing(Space.S)
        right.addWidget(self.roll, 1)
        right.addLayout(foot)
        right.setContentsMargins(0, 0, 0, 0)
        whole = QWidget(parent)
        whole.setLayout(right)
        return whole

    def _make_empty(self) -> QWidget:
        empty = QFrame(self)
        self._picture_of_empty = QLabel(empty)
        title = QLabel(self.tr("Here one tray is shown at a time"), empty)
        set_role(title, "title")
        words = QLabel(
            self.tr(
                "Its picture with everything that was found in it, its days side by side, its numbers, and "
                "how it grew beside its mates. Choose a tray on the Bench."
            ),
            empty,
        )
        words.setWordWrap(True)
        set_role(words, "soft")
        self.to_bench = QPushButton(self.tr("Go to the Bench"), empty)
        self.to_bench.setToolTip(self.tr("Go to the Bench (Ctrl+1)"))
        set_role(self.to_bench, "rack-main")
        self.to_bench.clicked.connect(self._want_bench)
        inner = QWidget(empty)
        middle = QVBoxLayout(inner)
        middle.setSpacing(Space.M)
        for part in (self._picture_of_empty, title, words):
            middle.addWidget(part)
        column = QVBoxLayout(empty)
        column.setContentsMargins(Space.L, Space.L, Space.L, Space.M)
        column.addStretch(1)
        across = QHBoxLayout()
        across.addStretch(1)
        across.addWidget(inner, 2)
        across.addStretch(1)
        column.addLayout(across)
        column.addStretch(2)
        column.addWidget(self.to_bench, 0, Qt.AlignmentFlag.AlignRight)
        return empty

    # --- which tray, which day

    def open_book(self, book: "Book | None") -> None:
        """Another book: no tray is open."""
        self._tray = self._photo = self._state = self._wanted = self._held = None
        self._blank.stop()
        self.thumbnails.clear()
        self.picture.show_picture(None)
        super().open_book(book)

    def open_tray(self, tray_id: int) -> None:
        """Show this tray at its newest day that can be used."""
        self._tray, self._photo = TrayId(tray_id), None
        self.roll.verticalScrollBar().setValue(0)
        self.renew()

    @Slot(int)
    def _choose_day(self, photo_id: int) -> None:
        self._photo = PhotoId(photo_id)
        self.renew()

    @Slot()
    def _go_before(self) -> None:
        if self._state is not None and self._state.before is not None:
            self.open_tray(self._state.before)

    @Slot()
    def _go_after(self) -> None:
        if self._state is not None and self._state.after is not None:
            self.open_tray(self._state.after)

    @Slot()
    def _want_bench(self) -> None:
        self.place_wanted.emit("bench")

    # --- reading and showing

    def renew(self) -> None:
        """Read the tray again (6 ms) and show what has changed."""
        state = None
        if self.book is not None and self._tray is not None:
            try:
                state = read_tray(self.book, self._tray, self._photo)
            except KeyError:
                self._tray = None  # its adding was undone
            except BookError as error:
                self.troubled.emit(str(error))
                return
        self.show_state(state)

    def show_state(self, state: TrayState | None) -> None:
        """Show this, whatever was shown before."""
        same = state == self._state
        self._state = state
        self._stack.setCurrentWidget(self._empty if state is None else self._content)
        if state is None or same:
            return
        self.title.setText(state.title)
        self.about.setText(self._about_words(state))
        self.strip.show_days(state.days, state.chosen)
        self.strip.setVisible(bool(state.days))
        self.side.show_state(state)
        self.picture.describe(state.description)
        self._show_neighbours(state)
        self._order_stops()
        self._load()

    def _order_stops(self) -> None:
        """Tab comes by in reading order, though rows and suspects are made as they are needed."""
        stops = [self.strip, *self.side.stops(), self.before, self.after]
        for stop, following in pairwise(stops):
            self.setTabOrder(stop, following)

    def _about_words(self, state: TrayState) -> str:
        if state.tray.done_at is not None:
            return self.tr("done")
        place, count = state.place
        return self.tr("tray {place} of {count}, today day {day}").format(
            place=place, count=count, day=state.today
        )

    def _show_neighbours(self, state: TrayState) -> None:
        self.before.setEnabled(state.before is not None)
        self.after.setEnabled(state.after is not None)
        self.before.setToolTip(self.tr("The tray before it on the rack (PgUp)"))
        self.after.setToolTip(self.tr("The next tray on the rack (PgDown)"))

    # --- the picture

    @Slot()
    def _load(self) -> None:
        state, book = self._state, self.book
        if state is None or book is None:
            return
        day = state.day
        for button in self.bar.layers.values():
            button.setEnabled(day is not None and day.score is not None)
        if day is None:
            self._wanted = None
            self.picture.show_picture(
                None, message=self.tr("No photo of this tray yet. Bring photos in at Intake.")
            )
            return
        as_photo = self.bar.photo.isChecked() or day.score is None
        wanted = Wanted(photo_id=day.photo_id, as_photo=as_photo, marks=marks_of(state.suspects))
        if wanted in (self._wanted, self._held) and self._wanted is not None:
            self._wanted = wanted
            return
        same_picture = self._held is not None and self._held.same_picture(wanted)
        self._wanted = wanted
        if not same_picture and not self._blank.isActive():
            self._blank.start()

        def load(_token: CancelToken, _report: Report) -> SheetPicture:
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
        self.picture.show_picture(answer.mips, layers=answer.layers, message=answer.message)

    @Slot(object)
    def _load_failed(self, error: Exception) -> None:
        self._blank.stop()
        self._held = None
        self.picture.show_picture(None, message=str(error))

    @Slot()
    def _show_loading(self) -> None:
        self._held = None
        self.picture.show_picture(None, message=self.tr("The picture is coming."))

    @Slot(object)
    def _layers_switched(self, shown: frozenset[Layer]) -> None:
        self.bar.show_layers(shown)

    @Slot(int)
    def _look_at(self, number: int) -> None:
        """Bring a suspect to the middle, enlarged."""
        ring = next((shape for mark, shape in self.picture.layers.rings if mark.number == number), None)
        if ring is not None:
            if Layer.SUSPECTS not in self.picture.shown:
                self.picture.switch(Layer.SUSPECTS)
            middle = ring.bounds.center()
            self.picture.look_at(middle.x(), middle.y(), CLOSER)

    # --- what a person says

    @Slot(int, object)
    def _say(self, suspect_id: int, said: Said | None) -> None:
        if self.book is None:
            return
        try:
            self.book.say(SuspectId(suspect_id), said)
        except BookError as error:
            self.troubled.emit(str(error))
        self.renew()
        self.book_changed.emit()

    @Slot()
    def _finish(self) -> None:
        """The tray was cut or thrown away."""
        book, state = self.book, self._state
        if book is None or state is None:
            return
        try:
            book.finish_tray(state.tray.id, book.now())
        except BookError as error:
            self.troubled.emit(str(error))
        else:
            words = self.tr("{code} has left the rack; its photos stay in the book.")
            self.told.emit(words.format(code=state.tray.code))
            self.strip.setFocus()
        self.renew()
        self.book_changed.emit()

    # --- the window

    def arrive(self) -> None:
        """The days have the focus, so that left and right work at once."""
        if self._state is None:
            self.to_bench.setFocus()
        else:
            self.strip.setFocus()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Keys that work wherever the focus is on the sheet."""
        if self._state is None:
            super().keyPressEvent(event)
            return
        match event.key():
            case Qt.Key.Key_PageUp:
                self._go_before()
            case Qt.Key.Key_PageDown:
                self._go_after()
            case Qt.Key.Key_Left:
                self.strip.step(-1)
            case Qt.Key.Key_Right:
                self.strip.step(1)
            case Qt.Key.Key_V:
                self.bar.photo.toggle()
            case _:
                if not self.picture.take_key(event):
                    super().keyPressEvent(event)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """The side column grows with the letters, the picture takes the rest."""
        super().resizeEvent(event)
        self._fit_side()

    def _fit_side(self) -> None:
        wanted = 42 * self.fontMetrics().averageCharWidth() + Space.XL
        self._right.setFixedWidth(max(300, min(wanted, int(self.width() * 0.38))))

    def redress(self) -> None:
        """Drawings and sizes for the new scheme and text size."""
        if hasattr(self, "_stack"):
            self._picture_of_empty.setPixmap(
                icon("traysheet").pixmap(QSize(48, 48), self.devicePixelRatioF())
            )
            self.strip.fit_to_text()
            self._fit_side()
