"""Suspect list: each patch that may be mold, with the two words that only a person can say.

In    `SuspectLine`s and the caution
Out   `said` with the suspect's id and "mold", "not mold" or nothing (taken back); `looked_at` with its number
Not   keeping it (`screen.py`), the rings in the picture (`photo/layers.py`)
"""

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QFrame, QLabel, QPushButton, QVBoxLayout, QWidget

from data.records import Said
from gui.controls.bounce import Bounce
from gui.controls.flow import Flow
from gui.style.palette import Space, set_role
from gui.style.words import wrapped
from gui.traysheet.view import SuspectLine

__all__ = ["SuspectCard", "SuspectList"]


class SuspectCard(QFrame):
    """One suspect."""

    said = Signal(int, object)  # suspect id, Said or None
    looked_at = Signal(int)  # its number

    def __init__(self, line: SuspectLine, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.line = line
        title = QLabel(self.tr("{number}  {word}").format(number=line.number, word=line.word), self)
        settled = line.said is Said.NOT_MOLD or (line.said is None and line.closed)
        set_role(title, "soft" if settled else "alarm")
        title.setStyleSheet("font-weight: bold")
        facts = QLabel(line.title, self)
        why = QLabel(line.why, self)
        for label in (facts, why):
            label.setWordWrap(True)
            label.setTextFormat(Qt.TextFormat.PlainText)
        set_role(why, "soft")
        column = QVBoxLayout(self)
        column.setContentsMargins(0, Space.S, 0, Space.S)
        column.setSpacing(Space.XS)
        for label in (title, facts, why):
            column.addWidget(label)
        column.addLayout(self._make_buttons())

    def _make_buttons(self) -> Flow:
        line = self.line
        self.mold = self._button(self.tr("Mold"), self._say_mold)
        self.not_mold = self._button(self.tr("Not mold"), self._say_not)
        self.show_it = self._button(self.tr("Show it"), self._look)
        for button in (self.mold, self.not_mold):
            set_role(button, "switch")
            button.setCheckable(True)
        self.show_said()
        self.mold.setToolTip(self.tr("Say that this is mold; press again to take it back (Ctrl+Z)"))
        self.not_mold.setToolTip(self.tr("Say that this is no mold; press again to take it back (Ctrl+Z)"))
        self.show_it.setToolTip(self.tr("Show this place enlarged in the picture"))
        self.show_it.setEnabled(line.x_mm is not None)
        buttons = Flow()
        for button in (self.mold, self.not_mold, self.show_it):
            button.setAccessibleName(
                self.tr("Suspect {number}: {what}").format(number=line.number, what=button.text())
            )
            buttons.addWidget(button)
        return buttons

    def show_said(self) -> None:
        """The button of what was said is down."""
        self.mold.setChecked(self.line.said is Said.MOLD)
        self.not_mold.setChecked(self.line.said is Said.NOT_MOLD)

    def _button(self, words: str, pressed: object) -> QPushButton:
        button = QPushButton(words, self)
        set_role(button, "rack")
        button.clicked.connect(pressed)
        return button

    @Slot()
    def _say_mold(self) -> None:
        self.said.emit(self.line.id, None if self.line.said is Said.MOLD else Said.MOLD)

    @Slot()
    def _say_not(self) -> None:
        self.said.emit(self.line.id, None if self.line.said is Said.NOT_MOLD else Said.NOT_MOLD)

    @Slot()
    def _look(self) -> None:
        self.looked_at.emit(self.line.number)


class SuspectList(QFrame):
    """All suspects of one photo; where there are none, a sentence that promises nothing."""

    said = Signal(int, object)
    looked_at = Signal(int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._lines: tuple[SuspectLine, ...] | None = None
        self.cards: list[SuspectCard] = []
        self._bounce = Bounce()
        self.title = QLabel(self)
        set_role(self.title, "title")
        self.caution = wrapped("", self)
        self._cards = QVBoxLayout()
        self._cards.setSpacing(0)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(Space.XS)
        column.addWidget(self.title)
        column.addLayout(self._cards)
        column.addWidget(self.caution)

    def show_suspects(self, lines: Sequence[SuspectLine], caution: str | None) -> None:
        """Show these; the focus stays on the same button."""
        if self._lines != tuple(lines):
            self._lines = tuple(lines)
            before, self.cards = self.cards, [self._card(line) for line in lines]
            self._hand_on_focus(before)
            for card in before:
                card.hide()
                self._cards.removeWidget(card)
                card.deleteLater()
        if not lines:
            self.title.setText(self.tr("No suspects"))
            self.caution.setText(
                self.tr(
                    "Nothing in this photo looks like mold to the program. "
                    "No flag is no proof that a tray is safe: look yourself. "
                    "What may be mold gets a dashed yellow ring with a number: look at the tray there, "
                    "then say here whether it is."
                )
            )
        else:
            self.title.setText(self.tr("Suspects"))
            self.caution.setText(caution or self.tr("No flag is no proof that a tray is safe."))
        set_role(self.caution, "soft" if caution is None else "small")

    @Slot(int, object)
    def _said(self, suspect: int, said: Said | None) -> None:
        """Once: a finger that bounces must not take back what it has just said."""
        if self._bounce.is_one(suspect) and said is None:
            for card in self.cards:
                card.show_said()
            return
        self.said.emit(suspect, said)

    def _card(self, line: SuspectLine) -> SuspectCard:
        card = SuspectCard(line, self)
        card.said.connect(self._said)
        card.looked_at.connect(self.looked_at)
        self._cards.addWidget(card)
        return card

    def _hand_on_focus(self, before: Sequence[SuspectCard]) -> None:
        """While the old button is still there: hiding it would send the focus, and the page, elsewhere."""
        for old, new in zip(before, self.cards, strict=False):
            for name in ("mold", "not_mold", "show_it"):
                if getattr(old, name).hasFocus():
                    new.show()
                    getattr(new, name).setFocus()

    def stops(self) -> list[QWidget]:
        """What Tab comes by, in reading order."""
        return [button for card in self.cards for button in (card.mold, card.not_mold, card.show_it)]
