"""Bands: one slim line across the window that says something and offers what can be done.

In    a sentence, the words of its button
Out   `pressed` when the button is used
Not   progress (`controls/progress.py`), words that pass (the foot of the window)
"""

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, QUrl, Signal, Slot
from PySide6.QtGui import QDesktopServices
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QPushButton, QWidget

from gui.language.spoken import DAY, day_words
from gui.style.palette import Space, set_role

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["Band", "DemoBand", "DoneBand", "TroubleBand"]


class Band(QFrame):
    """A sentence with one button."""

    pressed = Signal()

    def __init__(self, role: str, button: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        set_role(self, role)
        self.words = QLabel(self)
        self.words.setTextFormat(Qt.TextFormat.PlainText)
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


class DemoBand(Band):
    """Says that this is the demonstration, and leads to a book of one's own."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__("band-calm", "", parent)
        self.button.setText(self.tr("Start my own book"))
        self.hide()

    def show_demo(self, book: "Book | None") -> None:
        """Name the demonstration that lies open; with None hide."""
        self.setVisible(book is not None)
        if book is not None:
            words = self.tr(
                "This is the demonstration: an invented trial of {count} trays with drawn photos, "
                "scored on this computer. It stands still on {day}."
            )
            self.say(words.format(count=len(book.trays()), day=day_words(book.today(), DAY)))


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


class DoneBand(Band):
    """What was made, where it lies, and the way there; stays until it has been read."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__("band-calm", "", parent)
        self.button.setText(self.tr("Open the folder"))
        self.button.clicked.connect(self.open_folder)
        self.read = QPushButton(self.tr("I have read it"), self)
        self.read.clicked.connect(self.hide)
        self.row.addWidget(self.read)
        self.words.setTextFormat(Qt.TextFormat.PlainText)
        self.words.setTextInteractionFlags(
            Qt.TextInteractionFlag.TextSelectableByMouse | Qt.TextInteractionFlag.TextSelectableByKeyboard
        )
        self.folder: Path | None = None
        self.hide()

    def say_made(self, sentence: str, folder: Path | None) -> None:
        """Say what was made, and in which folder it lies; None where there is none to open."""
        self.folder = folder
        self.button.setVisible(folder is not None)
        self.say(sentence)

    @Slot()
    def open_folder(self) -> None:
        """Show the folder in the system's own window."""
        if self.folder is not None:
            QDesktopServices.openUrl(QUrl.fromLocalFile(str(self.folder)))
