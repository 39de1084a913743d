"""Bench page: the look list, the rack below it, and the line for what is noted.

In    `BenchState`; the size of the Bench
Out   its parts by name, whose signals the Bench hears; the focus where a key leads
Not   reading and changing the book (`screen.py`), the parts themselves (`lookpanel.py`, `rackview.py`, ...)

Where there is no room for both, one of the two is seen, by the switch.
"""

from collections.abc import Sequence

from PySide6.QtCore import QSize, Qt, Slot
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from data.records import Tile
from gui.bench.lookpanel import LookPanel
from gui.bench.quickentry import QuickLine
from gui.bench.rackhead import RackHead
from gui.bench.rackview import RackView
from gui.bench.switch import BenchSwitch
from gui.bench.view import BenchState
from gui.photo.thumbnails import Thumbnails
from gui.style.palette import Space, set_role

__all__ = ["BenchPage"]

LINES_FOR_BOTH, LINES_FOR_FILTERS = 33, 5  # of text that look list and rack need beside each other
LINES_WITHOUT_LOOKS = 9  # that a list without a line does not need
LINES_TO_SPARE = 35  # from which a whole row of tiles is left beside more space above the rack's head
LINES_IF_WIDE, WIDE = 28, 70  # fewer where a window so many lines wide breaks no sentence


class BenchPage(QWidget):
    """What the Bench shows where there are trays."""

    def __init__(self, thumbnails: Thumbnails, bench: QWidget) -> None:
        super().__init__(bench)
        self._bench = bench  # which this page fills; it knows its size first
        self._state = BenchState()
        self.switch = BenchSwitch(self)
        self.switch.hide()
        self.panel = LookPanel(self)
        self._air = QWidget(self)  # between the look list and the head of the rack
        self._air.setFixedHeight(Space.XS)
        self.head = RackHead(self)
        self.rack = RackView(thumbnails, self)
        self.rack.setAccessibleName(self.tr("The rack"))
        self.quick = QuickLine(self._chosen, self)
        self.bring = QPushButton(self.tr("Bring in photos"), self)
        self.bring.setToolTip(self.tr("Go to Intake (Ctrl+2)"))
        set_role(self.bring, "rack-main")
        self._lay_out()
        self.panel.looks.look_changed.connect(self._look_changed)
        self.switch.turned.connect(self.fit)
        self.head.left.connect(self._to_rack)
        self.head.found.connect(self._to_found)
        self.head.unfolded.connect(self._unfolded)
        self.quick.next_wanted.connect(self.rack.choose_next)
        self.rack.choice_changed.connect(self.quick.show_chosen)

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(Space.L, Space.S, Space.L, Space.M)
        column.setSpacing(Space.XS)  # rows that are 44 px high have air of their own
        for part in (self.switch, self.panel, self._air, self.head):
            column.addWidget(part)
        column.addWidget(self.rack, 1)
        column.addStretch(0)
        column.addSpacing(Space.XS)
        foot = QHBoxLayout()
        foot.setSpacing(Space.M)
        foot.addWidget(self.quick, 1)
        foot.addWidget(self.bring, 0, Qt.AlignmentFlag.AlignBottom)
        column.addLayout(foot)

    def _chosen(self) -> Sequence[Tile]:
        return self.rack.chosen

    # --- showing

    def show_state(self, state: BenchState) -> None:
        """Show this, whatever was shown before."""
        self._state = state
        self.panel.show_state(state)
        self.head.show_state(state)
        self.rack.show_rack(state.rack)
        self.switch.show_counts(state.trays_to_look_at, len(state.rack.standings))
        self.fit()

    def _is_tight(self, room: QSize) -> bool:
        """Whether there is room for one of the two only."""
        line = self._bench.fontMetrics().height()
        return self._is_low(room, LINES_IF_WIDE if room.width() >= WIDE * line else LINES_FOR_BOTH)

    def _is_low(self, room: QSize, lines: int) -> bool:
        """Whether it is less high than so many lines, and those of the filters where they are open."""
        lines += LINES_FOR_FILTERS if self.head.more.isChecked() else 0
        lines -= 0 if self._state.looks else LINES_WITHOUT_LOOKS
        return room.height() < lines * self._bench.fontMetrics().height()

    @Slot()
    def fit(self) -> None:
        """Both, where there is room for both; else one of them, by the switch."""
        room = self._bench.size()
        tight = self._is_tight(room)
        looks, rack = not tight or self.switch.at_looks, not tight or not self.switch.at_looks
        self.switch.setVisible(tight)
        self.panel.setVisible(looks)
        self.panel.be_alone(tight)
        self.rack.setVisible(rack)
        self.head.setVisible(rack)
        self.head.title.setVisible(not tight)
        self._air.setVisible(not tight and not self._is_low(room, LINES_TO_SPARE))
        if not tight:
            self.panel.fit(room.height())
        elif looks:
            below = max(self.quick.height(), self.bring.sizeHint().height()) + self.switch.sizeHint().height()
            self.panel.fit_alone(room.height() - below - Space.S - Space.M - 4 * Space.XS)

    @Slot()
    def _look_changed(self) -> None:
        if self.isVisible() and not self.switch.isHidden():
            self.fit()

    @Slot(bool)
    def _unfolded(self, shown: bool) -> None:
        if shown:
            self.switch.turn(to_looks=False)
        self.fit()

    # --- hands and eyes

    def take_focus(self) -> None:
        """On what is most urgent, else on the rack."""
        seen = self._state.looks and not self.panel.isHidden()
        (self.panel.looks if seen else self.rack).setFocus()

    @Slot()
    def _to_rack(self) -> None:
        self.rack.setFocus()

    @Slot()
    def _to_found(self) -> None:
        """Enter once more opens it."""
        first = self.rack.model().index(0, 0)
        if first.isValid():
            self.rack.setFocus()
            self.rack.setCurrentIndex(first)

    @Slot()
    def change_over(self) -> None:
        """From what needs a look to the rack, and back."""
        if not self.isVisible():
            return
        to_looks = not self.panel.looks.hasFocus() if self.switch.isHidden() else not self.switch.at_looks
        self.switch.turn(to_looks=to_looks)
        (self.panel.looks if to_looks and self._state.looks else self.rack).setFocus()

    @Slot()
    def note(self) -> None:
        """Into the line for what is noted."""
        if self.isVisible():
            self.quick.line.setFocus(Qt.FocusReason.ShortcutFocusReason)

    @Slot()
    def search(self) -> None:
        """Into the search above the rack."""
        if self.isVisible():
            self.switch.turn(to_looks=False)
            self.head.search.setFocus(Qt.FocusReason.ShortcutFocusReason)
            self.head.search.selectAll()
