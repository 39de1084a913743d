"""Heap pictures: the newest photos of a heap that breaks down, small, side by side.

In    photos of the heap, oldest first, each with the path of its file
Out   up to five of them, with their day as a hint and for screen readers
Not   keeping them (`desk.py`), the test that they belong to (`benchassistant.py`)
"""

from collections.abc import Sequence
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtGui import QPixmap
from PySide6.QtWidgets import QHBoxLayout, QLabel, QWidget

from data.medium.benchtest import HeapPhoto
from gui.language.spoken import day_words

__all__ = ["HeapPictures"]

HEIGHT = 96  # px
MOST = 5


class HeapPictures(QWidget):
    """A row of pictures; empty where there are none."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._row = QHBoxLayout(self)
        self._row.setContentsMargins(0, 0, 0, 0)

    def show_photos(self, photos: Sequence[tuple[HeapPhoto, Path]]) -> None:
        """Show the newest of these."""
        while (item := self._row.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None:
                widget.deleteLater()
        self.setVisible(bool(photos))
        for photo, path in photos[-MOST:]:
            self._row.addWidget(self._picture(photo, path))
        self._row.addStretch(1)

    def _picture(self, photo: HeapPhoto, path: Path) -> QLabel:
        label, picture = QLabel(self), QPixmap(str(path))
        day = day_words(photo.taken_at)
        if picture.isNull():
            label.setText(photo.name)
        else:
            label.setPixmap(picture.scaledToHeight(HEIGHT, Qt.TransformationMode.SmoothTransformation))
        label.setToolTip(day)
        label.setAccessibleName(self.tr("Photo of the heap, {day}").format(day=day))
        return label
