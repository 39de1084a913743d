"""Sheet side: what stands beside the picture of a tray.

In    `TrayState`
Out   the signals of its suspect list; what its buttons want
Not   the parts themselves
"""

from collections.abc import Iterator

from PySide6.QtCore import Signal, SignalInstance
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from gui.controls.flow import Flow
from gui.language.spoken import DAY_YEAR_SHORT, day_words, spoken
from gui.notes.numberlist import NumberList
from gui.notes.numberwords import NumberLine
from gui.style.palette import Space, set_role
from gui.style.words import quotable, wrapped
from gui.traysheet.growthchart import GrowthChart
from gui.traysheet.growthfit import Fitted
from gui.traysheet.suspectlist import SuspectList
from gui.traysheet.view import TrayState

__all__ = ["SheetSide"]


class SheetSide(QFrame):
    """One column: the one number, suspects, numbers, growth, conditions, the photo."""

    cut_wanted = Signal()
    throw_wanted = Signal()
    reopen_wanted = Signal()
    change_wanted = Signal()  # of the conditions
    swap_wanted = Signal()  # it was taken for another tray
    ended_wanted = Signal()  # the list of trays that have ended

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        set_role(self, "sheet")
        self.big, self.big_words = QLabel(self), self._words("soft")
        set_role(self.big, "big")
        self.reason = quotable(self, "notice")
        self.suspects = SuspectList(self)
        self.numbers, self.conditions, self.quality = NumberList(self), NumberList(self), NumberList(self)
        self._numbers: tuple[NumberLine, ...] = ()
        self._colour: tuple[NumberLine, ...] = ()
        self.growth = GrowthChart(self)
        self.told = self._words("soft")
        self._make_ends()
        self._after_suspects = self._line()
        self._of_numbers = (self._title(self.tr("Numbers of this day")), self._line())
        self._of_photo = self._title(self.tr("The photo"))
        self._lay_out()

    def _make_ends(self) -> None:
        """The buttons below the conditions: correct them, end the tray, take that back; a mistaken tray."""
        self.change = self._button(self.tr("Change"), self.tr("Correct how it grows (C)"), self.change_wanted)
        self.change.setAccessibleName(self.tr("Change the conditions"))
        self.swap = self._button(
            self.tr("Swapped"),
            self.tr("It stood in another tray's place or carried its tag: photos and notes change over"),
            self.swap_wanted,
        )
        self.swap.setAccessibleName(self.tr("Swapped with another tray"))
        self.cut = self._button(
            self.tr("Cut"),
            self.tr("It was cut: the tray leaves the rack, its photos stay (Ctrl+Z takes it back)"),
            self.cut_wanted,
        )
        self.throw = self._button(
            self.tr("Thrown away"),
            self.tr("Say why it was thrown away: the tray leaves the rack and stays in its trial"),
            self.throw_wanted,
        )
        self.reopen = self._button(
            self.tr("It grows again"),
            self.tr("Put the tray back on the rack (Ctrl+Z takes it back)"),
            self.reopen_wanted,
        )
        self.ended = self._button(
            self.tr("Ended trays"),
            self.tr("Find a tray that was cut or thrown away (T)"),
            self.ended_wanted,
        )
        self._ends = (self.change, self.swap, self.cut, self.throw, self.reopen, self.ended)

    def _lay_out(self) -> None:
        top = QHBoxLayout()
        top.setSpacing(Space.M)
        top.addWidget(self.big)
        top.addWidget(self.big_words, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(Space.M, Space.M, Space.M, Space.M)
        column.setSpacing(Space.S)
        column.addLayout(top)
        for part in self._parts():
            column.addWidget(part)
        column.addStretch(1)

    def _parts(self) -> Iterator[QWidget]:
        """All below the one number, from top to bottom."""
        yield from (self.reason, self._line(), self.suspects, self._after_suspects)
        yield from (self._title(self.tr("Growth beside its mates")), self.growth, self.told, self._line())
        title, line = self._of_numbers
        yield from (title, self.numbers, line)
        ends = QWidget(self)
        flow = Flow(ends)
        for button in self._ends:
            flow.addWidget(button)
        yield from (self._title(self.tr("How it grows")), self.conditions, ends, self._line())
        yield from (self._of_photo, self.quality)

    def _words(self, role: str) -> QLabel:
        return wrapped("", self, role)

    def _button(self, words: str, tip: str, wants: SignalInstance) -> QPushButton:
        button = QPushButton(words, self)
        button.setToolTip(tip)
        button.clicked.connect(wants)
        set_role(button, "rack")
        return button

    def _title(self, words: str) -> QLabel:
        label = QLabel(words, self)
        set_role(label, "title")
        return label

    def _line(self) -> QFrame:
        line = QFrame(self)
        set_role(line, "line")
        return line

    def show_state(self, state: TrayState) -> None:
        """Show this."""
        scored = state.score is not None
        self._show_coverage(state)
        self._show_reason(state)
        self.suspects.setVisible(scored)
        self._after_suspects.setVisible(scored)
        self.suspects.show_suspects(state.suspects, state.caution)
        self._numbers = state.numbers[1:]
        self._show_numbers()
        self.growth.show_curves(state.curves, state.day_looked_at)
        self.told.clear()
        self.told.hide()
        self.conditions.show_pairs(state.conditions)
        grows = state.tray.done_at is None
        for button, shown in ((self.cut, grows), (self.throw, grows), (self.reopen, not grows)):
            button.setVisible(shown)
        self.quality.show_lines(state.quality)
        self._of_photo.setVisible(bool(state.quality))

    def _show_coverage(self, state: TrayState) -> None:
        day, coverage = state.day, None if state.score is None else state.score.coverage
        self.big.setText("–" if coverage is None else f"{coverage:.0f} %")
        if day is None:
            self.big_words.setText(self.tr("coverage; no photo yet"))
        else:
            before = day.day < 0
            template = self.tr("coverage, {date}") if before else self.tr("coverage on day {day}, {date}")
            words = template.format(day=day.day, date=day_words(day.taken_at, DAY_YEAR_SHORT))
            self.big_words.setText(f"{words}\n{state.doubt}" if state.doubt else words)
        self.big.setToolTip(state.numbers[0].how if state.numbers else "")
        self.big.setAccessibleName(f"{self.big.text()} {self.big_words.text()}")

    def _show_reason(self, state: TrayState) -> None:
        why = "" if state.day is None or state.day.reason is None else spoken(state.day.reason)
        refused = self.tr("Not used: {why}").format(why=why) if why and state.score is None else why
        self.reason.setText("\n".join(line for line in (refused, *state.notes) if line))
        self.reason.setVisible(bool(self.reason.text()))

    def show_fit(self, fitted: Fitted) -> None:
        """What the curve says, below the chart."""
        self.told.setText(" ".join(fitted.words))
        self.told.setVisible(bool(fitted.words))

    def show_colour(self, lines: tuple[NumberLine, ...]) -> None:
        """How far its colour is from others, below the numbers of the day: it comes later than they do."""
        self._colour = lines
        self._show_numbers()

    def _show_numbers(self) -> None:
        lines = (*self._numbers, *self._colour)
        self.numbers.show_lines(lines)
        for part in self._of_numbers:  # no heading stands over nothing
            part.setVisible(bool(lines))

    def stops(self) -> list[QWidget]:
        """What Tab comes by, in reading order; much of it is younger than what follows it."""
        numbers, quality = self.numbers.stops(), self.quality.stops()
        return [*self.suspects.stops(), self.growth, *numbers, *self._ends, *quality]
