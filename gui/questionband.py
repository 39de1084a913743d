"""Question band: a question about many photos at once, above their list: what, why, and the answers.

In    a title, words, buttons
Out   the frame in which they stand; `take_focus` for the key that leads here
Not   what is asked (`clockband.py`, `walkband.py`, `againband.py`)
"""

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QLabel, QPushButton, QSizePolicy, QVBoxLayout, QWidget

from gui.flow import Flow
from gui.palette import Space, set_role

__all__ = ["QuestionBand"]


class QuestionBand(QFrame):
    """Title, words, whatever shows the matter, and a row of answers."""

    def __init__(self, role: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        set_role(self, role)
        self.title, self.words = QLabel(self), QLabel(self)
        set_role(self.title, "title")
        for label in (self.title, self.words):
            label.setWordWrap(True)
            label.setTextFormat(Qt.TextFormat.PlainText)
        self.answers = Flow()
        self.column = QVBoxLayout(self)
        self.column.setContentsMargins(Space.M, Space.S, Space.M, Space.S)
        self.column.setSpacing(Space.S)
        self.column.addWidget(self.title)
        self.column.addWidget(self.words)
        self.column.addLayout(self.answers)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Maximum)

    def add_matter(self, matter: QWidget) -> None:
        """What is shown between the words and the answers."""
        self.column.insertWidget(self.column.count() - 1, matter)

    def add_answer(self, words: str, does: Callable[..., object], *, main: bool = False) -> QPushButton:
        """A button, in reading order."""
        button = QPushButton(words, self)
        set_role(button, "rack-main" if main else "rack")
        button.clicked.connect(does)
        self.answers.addWidget(button)
        return button

    def say(self, title: str, words: str) -> None:
        """The question; a reader of the screen hears it as the name of the band."""
        self.title.setText(title)
        self.title.setToolTip(self.tr("The key Q leads to the answers"))
        self.words.setText(words)
        self.words.setVisible(bool(words))
        self.setAccessibleName(title)
        self.setAccessibleDescription(words)

    def take_focus(self) -> None:
        """The first answer that can be given."""
        for button in self.findChildren(QPushButton):
            if button.isVisibleTo(self) and button.isEnabled():
                button.setFocus(Qt.FocusReason.ShortcutFocusReason)
                return
