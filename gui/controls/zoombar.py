"""Zoom bar: closer, back, the whole picture.

In    a `PictureView`
Out   three buttons that move it
Not   zooming (`pictures.py`, `photo/viewport.py`)
"""

from PySide6.QtCore import QEvent, QSize
from PySide6.QtWidgets import QHBoxLayout, QToolButton, QWidget

from gui.pictures import PictureView
from gui.style.icon import icon
from gui.style.palette import RACK_TARGET, Space, set_role

__all__ = ["ZoomBar"]


class ZoomBar(QWidget):
    """Closer, back, whole picture: for those who neither roll nor pinch; beside the picture, not on it."""

    def __init__(self, view: PictureView, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(Space.S)
        self._buttons: dict[str, QToolButton] = {}
        for name, words, key, does in (
            ("zoom-in", self.tr("Look closer"), "+", view.zoom_in),
            ("zoom-out", self.tr("Look from further away"), "-", view.zoom_out),
            ("zoom-whole", self.tr("Show the whole picture"), "0", view.fit),
        ):
            button = QToolButton(self)
            button.setToolTip(f"{words} ({key})")
            button.setAccessibleName(words)
            button.setFixedSize(RACK_TARGET, RACK_TARGET)
            button.setIconSize(QSize(22, 22))
            set_role(button, "rack")
            button.clicked.connect(does)
            row.addWidget(button)
            self._buttons[name] = button
        view.has_picture.connect(self.setEnabled)
        self._dress()

    def stops(self) -> list[QWidget]:
        """What Tab comes by, in reading order."""
        return list(self._buttons.values())

    def _dress(self) -> None:
        for name, button in self._buttons.items():
            button.setIcon(icon(name))

    def changeEvent(self, event: QEvent) -> None:
        """Icons in the colour of the scheme."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.PaletteChange:
            self._dress()
