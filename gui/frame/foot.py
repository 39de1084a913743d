"""Foot: the line at the bottom of the window: what was just done, and which book lies open.

In    sentences; the open book
Out   a widget
Not   trouble, which stays until it has been read (`bands.py`)
"""

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, QTimer, Slot
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QWidget

from gui.controls.namelabel import cut_name
from gui.language.spoken import day_words, spoken
from gui.style.palette import Space, set_role

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["Foot"]

TOLD_FOR_MS = 8000
MOST_OF_NAME = 32  # letters; a longer one would make the window wider than the screen


class Foot(QFrame):
    """What was told passes; the book stays."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        set_role(self, "foot")
        self.told = QLabel(self)
        self.about_book = QLabel(self)
        self.told.setTextFormat(Qt.TextFormat.PlainText)
        self.told.setWordWrap(True)  # its end says how it is taken back
        set_role(self.about_book, "small")
        row = QHBoxLayout(self)
        row.setContentsMargins(Space.L, Space.XS, Space.L, Space.XS)
        row.addWidget(self.told, 1)
        row.addWidget(self.about_book)
        self._hushing = QTimer(self, singleShot=True, interval=TOLD_FOR_MS)
        self._hushing.timeout.connect(self.told.clear)

    @Slot(str)
    def tell(self, sentence: str) -> None:
        """Say something for a while."""
        self.told.setText(spoken(sentence))
        self._hushing.start()

    def show_book(self, book: "Book | None", name: str) -> None:
        """Say which book lies open, and which day it has."""
        if book is None:
            self.about_book.clear()
            return
        day = day_words(book.today())
        shown = cut_name(name, self.about_book.fontMetrics(), MOST_OF_NAME)
        self.about_book.setText(f"{shown} · {day}")
        self.about_book.setAccessibleName(f"{name} · {day}")
        self.about_book.setToolTip(str(book.folder))
