"""Compare page: two days of one tray and the line that wipes between them; below, what grew and vanished.

In    the day that is looked at; the day it is held against is chosen here
Out   nothing
Not   the wiping (`wipeview.py`), loading (`dayload.py`), telling what changed (`data/chapters/between.py`)
"""

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Slot
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QComboBox, QLabel, QPushButton, QVBoxLayout, QWidget

from data.cancel import CancelToken, Progress
from data.records import Day, PhotoId
from gui.controls.flow import Flow
from gui.controls.zoombar import ZoomBar
from gui.language.age import age_words
from gui.language.spoken import DAY_SHORT, day_words, spoken
from gui.mishap import trouble_words
from gui.style.palette import Space, set_role
from gui.style.words import wrapped
from gui.traysheet.dayload import Pair, load_pair
from gui.traysheet.page import SheetPage
from gui.traysheet.view import TrayState
from gui.traysheet.wipeview import WipeView
from gui.work import Work

if TYPE_CHECKING:
    from data.book import Book
    from data.chapters.between import Between

__all__ = ["ComparePage", "other_day"]

TOP_PX = (1016.0, 508.0)
MOST_SENTENCES = 4  # below the picture; coverage, doubts and suspects, then canopy
Ids = tuple[PhotoId, PhotoId]


class ComparePage(SheetPage):
    """A view, the choice of the other day, a sentence."""

    def __init__(self, work: Work, parent: QWidget | None = None) -> None:
        super().__init__(work, parent)
        self._asked: Ids | None = None
        self._held: Ids | None = None
        self._against: PhotoId | None = None  # the other day, as a person chose it
        self._offered: tuple[Day, ...] = ()
        self.view = WipeView(self)
        tools = QWidget(self)
        row = Flow(tools)
        self.words = QLabel(self.tr("Held against"), tools)
        self.other = QComboBox(tools)
        self.other.setAccessibleName(self.tr("The day it is held against"))
        self.other.setToolTip(self.tr("The other day of this tray; the strip below chooses the first one"))
        self.other.activated.connect(self._choose)
        self.where = QPushButton(self.tr("Where"), tools)
        self.where.setCheckable(True)
        self.where.setToolTip(self.tr("Outline where canopy grew and where it vanished (W)"))
        set_role(self.where, "switch")
        self.where.toggled.connect(self.view.show_places)
        self.zoom = ZoomBar(self.view, tools)
        for part in (self.words, self.other, self.where, self.zoom):
            row.addWidget(part)
        self.change = wrapped("", self, "soft")
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(Space.S)
        column.addWidget(self.view, 1)
        column.addWidget(tools)
        column.addWidget(self.change)

    def open_book(self, book: "Book | None") -> None:
        """Nothing of the book before."""
        super().open_book(book)
        self._asked = self._held = self._against = None
        self.view.say("")

    def show_state(self, state: TrayState) -> None:
        """Hold this day against the one before it, or against the one that was chosen."""
        if self.state is not None and self.state.tray.id != state.tray.id:
            self._against = None
            self.view.begin_anew()
        super().show_state(state)
        day, other = state.day, other_day(state, self._against)
        self._offer(state, other)
        if day is None or day.score is None:
            self._stop(self.tr("This day has no top view: choose another one in the strip."))
        elif other is None:
            self._stop(self.tr("Two photos with a score are needed to see what changed between them."))
        else:
            self._load(*sorted((day, other), key=lambda one: (one.taken_at, one.photo_id)))

    def take_key(self, event: QKeyEvent) -> bool:
        """The keys of the picture, and W for where."""
        if event.key() == Qt.Key.Key_W:
            self.where.toggle()
            return True
        return self.view.take_key(event)

    def stops(self) -> list[QWidget]:
        """What Tab comes by, in reading order."""
        return [self.view, self.other, self.where, *self.zoom.stops()]

    def take_focus(self) -> None:
        """The line."""
        self.view.setFocus()

    def _offer(self, state: TrayState, other: Day | None) -> None:
        offered = tuple(day for day in state.days if day.score is not None and day is not state.day)
        if offered != self._offered:
            self._offered = offered
            self.other.clear()
            twice = {day.day for day in offered if sum(one.day == day.day for one in offered) > 1}
            for day in offered:
                date = day_words(day.taken_at, DAY_SHORT)
                at = f"{date}, {day.taken_at:%H:%M}" if day.day in twice else date
                self.other.addItem(f"{age_words(day.day)}, {at}", int(day.photo_id))
        if other is not None:
            self.other.setCurrentIndex(self.other.findData(int(other.photo_id)))
        self.other.setEnabled(len(offered) > 1)

    @Slot(int)
    def _choose(self, row: int) -> None:
        self._against = PhotoId(int(self.other.itemData(row)))
        if self.state is not None:
            self.show_state(self.state)

    def _stop(self, message: str) -> None:
        self._asked = self._held = None
        self.change.clear()
        self.view.say(message)

    # --- loading

    def _load(self, earlier: Day, later: Day) -> None:
        ids = (earlier.photo_id, later.photo_id)
        book = self.book
        if ids in (self._asked, self._held) or book is None:
            return
        self._asked = ids
        self._plates = (age_words(earlier.day), age_words(later.day))
        if earlier.day == later.day:
            self._plates = (f"{earlier.taken_at:%H:%M}", f"{later.taken_at:%H:%M}")

        def load(_token: CancelToken, _report: Progress) -> Pair:
            return load_pair(book, earlier, later)

        job = self.work.start(load)
        job.finished.connect(self._loaded)
        job.failed.connect(self._load_failed)

    @Slot(object)
    def _loaded(self, pair: Pair) -> None:
        if pair.ids != self._asked:
            return
        self._held, self._asked = pair.ids, None
        if pair.trouble:
            self.view.say(pair.trouble)
            return
        self.view.show_pair(pair.earlier, pair.later, self._plates)
        self._ask_what_changed(pair.ids)

    @Slot(object)
    def _load_failed(self, error: Exception) -> None:
        self._stop(trouble_words(error))

    def _ask_what_changed(self, ids: Ids) -> None:
        book = self.book
        if book is None:
            return
        self._describe("")
        self.where.setEnabled(False)
        self.change.setText(self.tr("Looking for what grew and what vanished ..."))

        def compare(_token: CancelToken, _report: Progress) -> tuple[Ids, "Between | None"]:
            from data.chapters.between import between

            return ids, between(book, *ids)

        job = self.work.start(compare)
        job.finished.connect(self._compared)
        job.failed.connect(self._not_compared)

    @Slot(object)
    def _compared(self, answer: tuple[Ids, "Between | None"]) -> None:
        ids, found = answer
        if ids != self._held:
            return
        if found is None:
            self._describe(self.tr("What grew and what vanished cannot be told from these two photos."))
            return
        self._describe(" ".join(map(spoken, found.sentences[:MOST_SENTENCES])))
        if found.matrix is not None:
            self.view.lay_on(found.matrix)
        self._mark(found)

    def _mark(self, found: "Between") -> None:
        """Where it grew and vanished; the button is of use only where there is something to show."""
        later = next((day for day in self._days() if day.photo_id == found.later_id), None)
        score = None if later is None else later.score
        if score is not None:
            per_mm = (TOP_PX[0] / score.inner_long_mm, TOP_PX[1] / score.inner_short_mm)
            grown, vanished = (
                [area.outline_mm for area in areas] for areas in (found.appeared_areas, found.vanished_areas)
            )
            self.view.mark(grown, vanished, per_mm)
        self.where.setEnabled(bool(found.appeared_areas or found.vanished_areas))

    def _days(self) -> tuple[Day, ...]:
        return () if self.state is None else self.state.days

    @Slot(object)
    def _not_compared(self, _error: Exception) -> None:
        self._describe("")

    def _describe(self, words: str) -> None:
        self.change.setText(words)
        both = self.tr("Left of the line {earlier}, right of it {later}.")
        told = both.format(earlier=self._plates[0], later=self._plates[1])
        self.view.describe(f"{told} {words}".strip())


def other_day(state: TrayState, against: PhotoId | None) -> Day | None:
    """The day to hold the chosen one against: as a person said, else the scored one before, else after."""
    scored = [day for day in state.days if day.score is not None]
    if state.day is None or state.day not in scored or len(scored) < 2:
        return None
    for day in scored:
        if day.photo_id == against and day is not state.day:
            return day
    here = scored.index(state.day)
    return scored[here - 1] if here else scored[1]
