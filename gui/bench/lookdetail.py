"""Look detail: what goes with the chosen line of the look list, and what can be said to it.

In    the look that is chosen in the list
Out   `answered` with "seen" or "tomorrow"; `history_wanted`; `kind_wanted` of a medium
Not   the list (`looks.py`), keeping the answer (`screen.py`)
"""

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QWidget

from data.records import Look
from gui.controls.bounce import Bounce
from gui.language.spoken import spoken
from gui.language.words import translate
from gui.style.marks import kind_words
from gui.style.palette import Space, set_role
from gui.style.words import wrapped

__all__ = ["LookDetail"]


class LookDetail(QWidget):
    """Why it is urgent, what else there is, three buttons."""

    answered = Signal(object, str)  # the look, "seen" or "tomorrow"
    history_wanted = Signal()
    kind_wanted = Signal(str)  # a medium: what to do first depends on its kind

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._look: Look | None = None
        self._brief = False
        self._bounce = Bounce()
        self.words = wrapped("", self, "soft")
        self.kind = self._make_button(
            self.tr("Mat or mix?"), self.tr("What to do first depends on which kind of medium it is: say it")
        )
        self.kind.clicked.connect(self._want_kind)
        self.tomorrow = self._make_button(
            self.tr("Until tomorrow"), self.tr("Put this line away for today (T in the list)")
        )
        self.tomorrow.clicked.connect(self._pressed)
        self.seen = self._make_button(
            self.tr("Seen"), self.tr("Put this line away until it gets worse (S in the list)")
        )
        self.seen.clicked.connect(self._pressed)
        self.history = self._make_button(
            self.tr("What went away"), self.tr("What stood here before, and why it went away")
        )
        self.history.clicked.connect(self.history_wanted)
        row = QHBoxLayout(self)
        row.setContentsMargins(Space.L, Space.XS, Space.S, Space.XS)
        row.setSpacing(Space.S)
        row.addWidget(self.words, 1)
        for button in (self.kind, self.tomorrow, self.seen, self.history):
            row.addWidget(button)

    def _make_button(self, words: str, about: str) -> QPushButton:
        made = QPushButton(words, self)
        made.setToolTip(about)
        set_role(made, "rack")
        return made

    def show_look(self, look: Look | None) -> None:
        """Show what goes with this one; with None only the history is offered."""
        self._look = look
        self.kind.setVisible(bool(self._medium))
        self.tomorrow.setVisible(look is not None)
        self.seen.setVisible(look is not None)
        self._show_words()

    def be_brief(self, brief: bool) -> None:
        """Where there is little room: one line and the names of the other signs, all of it as a tooltip."""
        if brief != self._brief:
            self._brief = brief
            self._show_words()

    def _show_words(self) -> None:
        lines = [] if self._look is None else _lines(self._look)
        self.words.setText(self._in_brief(lines) if self._brief else "\n".join(lines))
        self.words.setToolTip("\n".join(lines) if self._brief and len(lines) > 1 else "")

    def _in_brief(self, lines: list[str]) -> str:
        """The first line; what else there is by name."""
        if self._look is None or len(lines) < 2:
            return "\n".join(lines)
        signs = ", ".join(kind_words(one.what) for one in self._look.also)
        also = self.tr("Also: {signs}.").format(signs=signs)
        return f"{lines[0]} {also}" if self._look.why_urgent else also

    @property
    def _medium(self) -> str:
        """Whose kind nobody has said, where that matters."""
        signs = () if self._look is None else self._look.whole
        return next((sign.asks_kind_of for sign in signs if sign.asks_kind_of), "")

    @Slot()
    def _want_kind(self) -> None:
        self.kind_wanted.emit(self._medium)

    @Slot()
    def _pressed(self) -> None:
        """Once: a finger that bounces must not put away the next line, which nobody has read."""
        if self._bounce.is_one():
            return
        if self.sender() is self.seen:
            self.say_seen()
        else:
            self.say_tomorrow()

    @Slot()
    def say_seen(self) -> None:
        """The grower has looked."""
        if self._look is not None:
            self.answered.emit(self._look, "seen")

    @Slot()
    def say_tomorrow(self) -> None:
        """Not today."""
        if self._look is not None:
            self.answered.emit(self._look, "tomorrow")


def _lines(look: Look) -> list[str]:
    lines = [f"{look.code}: {spoken(look.why_urgent)}"] if look.why_urgent else []
    words = translate("LookDetail", "Also: {sign}. {sentence}")
    lines += [words.format(sign=kind_words(one.what), sentence=spoken(one.sentence)) for one in look.also]
    return lines
