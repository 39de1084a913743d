"""Heap pictures: the newest photos of a heap that breaks down, small, side by side.

In    photos of the heap, oldest first, each with the path of its file; `Thumbnails`, which decode them
Out   up to five of them, with their day as a hint and for screen readers
Not   keeping them (`desk.py`), the test that they belong to (`benchassistant.py`)
"""

from collections.abc import Sequence
from pathlib import Path

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import QHBoxLayout, QLabel, QWidget

from data.medium.benchtest import HeapPhoto
from gui.language.spoken import day_words
from gui.photo.thumbnails import Thumbnails

__all__ = ["HeapPictures"]

HEIGHT = 96  # px
MOST = 5


class HeapPictures(QWidget):
    """A row of pictures; empty where there are none."""

    def __init__(self, thumbnails: Thumbnails, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._thumbnails = thumbnails
        self._labels: list[tuple[Path, QLabel]] = []
        self._row = QHBoxLayout(self)
        self._row.setContentsMargins(0, 0, 0, 0)
        thumbnails.arrived.connect(self._fill)

    def show_photos(self, photos: Sequence[tuple[HeapPhoto, Path]]) -> None:
        """Show the newest of these: their names until the pictures have come."""
        while (item := self._row.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None:
                widget.deleteLater()
        self.setVisible(bool(photos))
        self._labels = [(path, self._label(photo)) for photo, path in photos[-MOST:]]
        for _, label in self._labels:
            self._row.addWidget(label)
        self._row.addStretch(1)
        self._fill()

    def _label(self, photo: HeapPhoto) -> QLabel:
        label = QLabel(photo.name, self)
        label.setTextFormat(Qt.TextFormat.PlainText)
        label.setMinimumHeight(HEIGHT)
        day = day_words(photo.taken_at)
        label.setToolTip(day)
        label.setAccessibleName(self.tr("Photo of the heap, {day}").format(day=day))
        return label

    @Slot()
    def _fill(self) -> None:
        ratio = self.devicePixelRatioF()
        for path, label in self._labels:
            picture = self._thumbnails.get(path)
            if picture is not None and label.pixmap().isNull():
                smooth = Qt.TransformationMode.SmoothTransformation
                small = picture.scaledToHeight(round(HEIGHT * ratio), smooth)
                small.setDevicePixelRatio(ratio)
                label.setPixmap(small)
