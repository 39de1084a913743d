"""Bands: one slim line across the window that says something and offers what can be done.

In    a sentence, the words of its button
Out   `pressed` when the button is used
Not   progress (`progress.py`), words that pass (the foot of the window)
"""

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QPushButton, QWidget

from gui.palette import Space, set_role

__all__ = ["Band", "TroubleBand"]


class Band(QFrame):
    """A sentence with one button."""

    pressed = Signal()

    def __init__(self, role: str, button: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        set_role(self, role)
        self.words = QLabel(self)
        self.words.setWordWrap(True)
        self.button = QPushButton(button, self)
        self.button.clicked.connect(self.pressed)
        self.row = QHBoxLayout(self)
        self.row.setContentsMargins(Space.L, Space.XS + 2, Space.L, Space.XS + 2)
        self.row.setSpacing(Space.M)
        self.row.addWidget(self.words, 1)
        self.row.addWidget(self.button)

    def say(self, sentence: str) -> None:
        """Show the sentence, with a capital letter."""
        sentence = sentence[:1].upper() + sentence[1:]
        self.words.setText(sentence)
        self.words.setAccessibleName(sentence)
        self.show()


class TroubleBand(Band):
    """What went wrong, in words that can be copied; gone when it has been read."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__("band-alarm", "", parent)
        self.button.setText(self.tr("I have read it"))
        self.button.clicked.connect(self.forget)
        self.words.setTextFormat(Qt.TextFormat.PlainText)
        self.words.setTextInteractionFlags(
            Qt.TextInteractionFlag.TextSelectableByMouse | Qt.TextInteractionFlag.TextSelectableByKeyboard
        )
        self.hide()

    @Slot()
    def forget(self) -> None:
        """Take the sentence away."""
        self.words.clear()
        self.hide()
