"""Sheet side: what stands beside the picture of a tray.

In    `TrayState`
Out   the signals of its suspect list; `finish_wanted`
Not   the parts themselves
"""

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from gui.growthchart import GrowthChart
from gui.numberlist import NumberList
from gui.palette import Space, set_role
from gui.suspectlist import SuspectList
from gui.trayview import TrayState

__all__ = ["SheetSide"]


class SheetSide(QFrame):
    """One column: the one number, suspects, numbers, growth, conditions, the photo."""

    finish_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        set_role(self, "sheet")
        self.big = QLabel(self)
        set_role(self.big, "big")
        self.big_words = QLabel(self)
        self.big_words.setWordWrap(True)
        set_role(self.big_words, "soft")
        self.reason = QLabel(self)
        self.reason.setWordWrap(True)
        self.reason.setTextInteractionFlags(
            Qt.TextInteractionFlag.TextSelectableByMouse | Qt.TextInteractionFlag.TextSelectableByKeyboard
        )
        set_role(self.reason, "notice")
        self.suspects = SuspectList(self)
        self.numbers = NumberList(self)
        self.growth = GrowthChart(self)
        self.conditions = NumberList(self)
        self.finish = QPushButton(self.tr("Mark as done"), self)
        self.finish.setToolTip(
            self.tr("Cut, or thrown away: the tray leaves the rack, its photos stay (Ctrl+Z takes it back)")
        )
        self.finish.clicked.connect(self.finish_wanted)
        set_role(self.finish, "rack")
        self.quality = NumberList(self)
        top = QHBoxLayout()
        top.setSpacing(Space.M)
        top.addWidget(self.big)
        top.addWidget(self.big_words, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(Space.M, Space.M, Space.M, Space.M)
        column.setSpacing(Space.S)
        column.addLayout(top)
        column.addWidget(self.reason)
        self._after_suspects = self._line()
        for part in (
            self._line(),
            self.suspects,
            self._after_suspects,
            self._title(self.tr("Growth beside its mates")),
            self.growth,
            self._line(),
            self._title(self.tr("Numbers of this day")),
            self.numbers,
            self._line(),
            self._title(self.tr("How it grows")),
            self.conditions,
            self.finish,
            self._line(),
            self._title(self.tr("The photo")),
            self.quality,
        ):
            column.addWidget(part)
        column.setAlignment(self.finish, Qt.AlignmentFlag.AlignLeft)
        column.addStretch(1)

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
        day, score = state.day, state.score
        coverage = None if score is None else score.coverage
        self.big.setText("–" if coverage is None else f"{coverage:.0f} %")
        if day is None:
            self.big_words.setText(self.tr("coverage; no photo yet"))
        else:
            words = self.tr("coverage on day {day}, {date}").format(
                day=day.day, date=f"{day.taken_at.day} {day.taken_at:%b %Y}"
            )
            self.big_words.setText(f"{words}\n{state.doubt}" if state.doubt else words)
        self.big.setToolTip(state.numbers[0].how if state.numbers else "")
        self.big.setAccessibleName(f"{self.big.text()} {self.big_words.text()}")
        why = "" if day is None or day.reason is None else str(day.reason)
        refused = self.tr("Not used: {why}").format(why=why) if why and score is None else why
        self.reason.setText("\n".join(line for line in (refused, *state.notes) if line))
        self.reason.setVisible(bool(self.reason.text()))
        self.suspects.setVisible(score is not None)
        self._after_suspects.setVisible(score is not None)
        self.suspects.show_suspects(state.suspects, state.caution)
        self.numbers.show_lines(state.numbers[1:])
        self.growth.show_curves(state.curves, None if day is None else self._day_of(state))
        self.conditions.show_pairs(state.conditions)
        self.finish.setVisible(state.tray.done_at is None)
        self.quality.show_lines(state.quality)

    def stops(self) -> list[QWidget]:
        """What Tab comes by, in reading order; much of it is younger than what follows it."""
        return [*self.suspects.stops(), *self.numbers.stops(), self.finish, *self.quality.stops()]

    def _day_of(self, state: TrayState) -> float | None:
        """The same measure of time as the curve: days since sowing, with the hours."""
        if state.day is None:
            return None
        return (state.day.taken_at - state.tray.sown_at).total_seconds() / 86400
