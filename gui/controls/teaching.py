"""Teaching: what stands in an empty place: what will be here, one sentence, the button that starts it.

In    the name of an icon, words; words of a plain button, where there is another way to begin
Out   `pressed` when the button is used, `other_pressed` by the plain one
Not   when a place is empty (each screen)
"""

from PySide6.QtCore import QSize, Signal
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from gui.style.icon import icon
from gui.style.palette import Space, set_role, tokens_now
from gui.style.words import line_width, wrapped

__all__ = ["Teaching"]

ICON = 48  # px


class Teaching(QWidget):
    """An empty place; the button stands where the main action of every screen stands."""

    pressed = Signal()
    other_pressed = Signal()

    def __init__(self, picture: str, button: str, parent: QWidget | None = None, *, other: str = "") -> None:
        super().__init__(parent)
        self._name = picture
        self._picture = QLabel(self)
        self.title = QLabel(self)
        set_role(self.title, "title")
        self.words = wrapped("", self, "soft")
        self.button = QPushButton(button, self)
        set_role(self.button, "rack-main")
        self.button.clicked.connect(self.pressed)
        self.other = QPushButton(other, self)
        set_role(self.other, "rack")
        self.other.clicked.connect(self.other_pressed)
        self.other.setVisible(bool(other))
        middle = QVBoxLayout()
        middle.setSpacing(Space.M)
        for part in (self._picture, self.title, self.words):
            middle.addWidget(part)
        across = QHBoxLayout()
        across.addStretch(1)
        across.addLayout(middle)
        across.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(Space.L, Space.L, Space.L, Space.M)
        column.addStretch(2)
        column.addLayout(across)
        column.addStretch(3)
        self.foot = QHBoxLayout()
        self.foot.setSpacing(Space.S)
        self.foot.addStretch(1)
        self.foot.addWidget(self.other)
        self.foot.addWidget(self.button)
        column.addLayout(self.foot)
        self.redress()

    def teach(self, title: str, words: str) -> None:
        """Say what will stand here."""
        self.title.setText(title)
        self.words.setText(words)

    def redress(self) -> None:
        """The icon in the new ink, lines as long as they read well."""
        drawn = icon(self._name, tokens_now().accent)
        self._picture.setPixmap(drawn.pixmap(QSize(ICON, ICON), self.devicePixelRatioF()))
        self.words.setFixedWidth(line_width(self.fontMetrics()))
