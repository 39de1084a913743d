"""Sheet body: how the parts of a tray's sheet lie: views and days left, numbers right.

In    `TrayState`
Out   the parts, laid out; Tab in reading order
Not   what happens when they are used (`screen.py`)
"""

from itertools import pairwise

from PySide6.QtCore import Slot
from PySide6.QtWidgets import (
    QBoxLayout,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from gui.controls.rolling import roll_down
from gui.notes.numberwords import NumberLine
from gui.photo.thumbnails import Thumbnails
from gui.style.palette import Space, set_role
from gui.traysheet.colourdesk import ColourDesk
from gui.traysheet.daystrip import DayStrip
from gui.traysheet.side import SheetSide
from gui.traysheet.view import TrayState
from gui.traysheet.views import SheetViews, ViewBar
from gui.work import Work

__all__ = ["SheetBody"]

LEAST_SIDE = 300
SIDE_CHARACTERS = 42
LEAST_LINES = 21  # of text, in the height of the sheet: with less room the days are words alone
TITLE_CHARACTERS = 22  # beside the buttons; with less room the title stands above them


class SheetBody(QWidget):
    """Head, view, strip; the side with its own scroll and the two trays beside this one."""

    def __init__(self, work: Work, thumbnails: Thumbnails, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.title = QLabel(self)
        set_role(self.title, "title")
        self.about = QLabel(self)
        set_role(self.about, "soft")
        for label in (self.title, self.about):
            label.setWordWrap(True)
        words = QVBoxLayout()
        words.setSpacing(0)
        words.addWidget(self.title)
        words.addWidget(self.about)
        self.bar = ViewBar(self)
        self._head = QHBoxLayout()
        self._head.setSpacing(Space.S)
        self._head.addLayout(words, 1)
        self._head.addWidget(self.bar)
        self.views = SheetViews(work, self)
        self.strip = DayStrip(thumbnails, self)
        left = QVBoxLayout()
        left.setSpacing(Space.S)
        left.addLayout(self._head)
        left.addWidget(self.views, 1)
        left.addWidget(self.strip)
        self.colours = ColourDesk(work, self)
        self._right = self._make_right()
        row = QHBoxLayout(self)
        row.setContentsMargins(Space.L, Space.M, Space.L, Space.M)
        row.setSpacing(Space.M)
        row.addLayout(left, 1)
        row.addWidget(self._right)

    def _make_right(self) -> QWidget:
        self.side = SheetSide(self)
        self.colours.told.connect(self._show_colour)
        self.roll = QScrollArea(self)
        self.roll.setWidget(self.side)
        roll_down(self.roll)
        self.before = QPushButton(self.tr("Tray before"), self)
        self.after = QPushButton(self.tr("Next tray"), self)
        self.before.setToolTip(self.tr("The tray before it on the rack (PgUp)"))
        self.after.setToolTip(self.tr("The next tray on the rack (PgDown)"))
        set_role(self.before, "rack")
        set_role(self.after, "rack-main")
        foot = QHBoxLayout()
        foot.setSpacing(Space.S)
        foot.addWidget(self.before)
        foot.addWidget(self.after, 1)
        whole = QWidget(self)
        right = QVBoxLayout(whole)
        right.setContentsMargins(0, 0, 0, 0)
        right.setSpacing(Space.S)
        right.addWidget(self.roll, 1)
        right.addLayout(foot)
        return whole

    def show_state(self, state: TrayState) -> None:
        """All but the view in front."""
        self.title.setText(state.title)
        self.about.setText(self._about_words(state))
        self.strip.show_days(state.days, state.chosen, state.today if state.tray.done_at is None else None)
        self.side.show_state(state)
        self.before.setEnabled(state.before is not None)
        self.after.setEnabled(state.after is not None)

    @Slot(object)
    def _show_colour(self, lines: tuple[NumberLine, ...]) -> None:
        self.side.show_colour(lines)
        self.order_stops()  # of rows that are new

    def _about_words(self, state: TrayState) -> str:
        tray = state.tray
        if tray.done_at is not None:
            return state.ended_words
        place, count = state.place
        if state.today < 0:
            return self.tr("tray {place} of {count}, to be sown").format(place=place, count=count)
        return self.tr("tray {place} of {count}, today day {day}").format(
            place=place, count=count, day=state.today
        )

    def order_stops(self) -> None:
        """Tab comes by in reading order, though rows and suspects are made as they are needed."""
        page = self.views.page
        stops = [*self.bar.buttons.values(), *page.stops(), self.strip, *self.side.stops()]
        for stop, following in pairwise([*stops, self.before, self.after]):
            self.setTabOrder(stop, following)

    def fit(self, width: int, height: int) -> None:
        """The side column grows with the letters, the picture takes the rest; what is low shows it alone."""
        self.strip.show_pictures(height >= LEAST_LINES * self.fontMetrics().height())
        wide = self.fontMetrics().averageCharWidth()
        side = max(LEAST_SIDE, min(SIDE_CHARACTERS * wide + Space.XL, int(width * 0.38)))
        self._right.setFixedWidth(side)
        left = width - side - 2 * Space.L - Space.M
        beside = left - self.bar.wide() - Space.S >= TITLE_CHARACTERS * wide
        ways = QBoxLayout.Direction
        self._head.setDirection(ways.LeftToRight if beside else ways.TopToBottom)

    def redress(self) -> None:
        """Another scheme or text size."""
        self.strip.fit_to_text()
        self.views.redress()
