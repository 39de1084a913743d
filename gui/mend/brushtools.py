"""Brush tools: brush or eraser, how wide, strokes back and again, how close the picture is looked at.

In    the view that is painted on
Out   its brush set; a row of buttons
Not   strokes (`canopymask.py`), painting (`brushview.py`), keeping or leaving the canopy (`desk.py`)
"""

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QLabel, QPushButton, QWidget

from gui.controls.flow import Flow
from gui.controls.zoombar import ZoomBar
from gui.language.spoken import filled
from gui.mend.brushview import BrushView
from gui.mend.canopymask import CanopyMask
from gui.style.palette import set_role

__all__ = ["BrushTools", "tool_button"]

RADII_MM = (1.0, 2.0, 3.0, 4.0, 6.0, 8.0, 12.0, 16.0, 24.0)
FIRST_RADIUS = 4  # of `RADII_MM`


class BrushTools(QWidget):
    """All of it in one row, in more where there is no room."""

    def __init__(self, view: BrushView, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._view = view
        self._size = FIRST_RADIUS
        self._make_brush()
        self._make_strokes()
        self.zoom = ZoomBar(view, self)
        row = Flow(self)
        for part in (*self._buttons[:3], self.width_words, *self._buttons[3:], self.zoom):
            row.addWidget(part)
        view.size_wanted.connect(self.resize_brush)
        view.mode_wanted.connect(self.choose)
        self.choose(True)

    def _make_brush(self) -> None:
        self.brush = self._switch(self.tr("Brush"), self.tr("Paint canopy where it is (B)"))
        self.eraser = self._switch(self.tr("Eraser"), self.tr("Take canopy away where none is (E)"))
        self.smaller = tool_button(self, "−", self.tr("A smaller brush ([)"), self.tr("Smaller brush"))
        self.width_words = QLabel(self)
        self.larger = tool_button(self, "+", self.tr("A larger brush (])"), self.tr("Larger brush"))
        self.brush.clicked.connect(self._choose_brush)
        self.eraser.clicked.connect(self._choose_eraser)
        self.smaller.clicked.connect(self._smaller)
        self.larger.clicked.connect(self._larger)

    def _make_strokes(self) -> None:
        back, again = self.tr("Take the last stroke back (Ctrl+Z)"), self.tr("Do it again (Ctrl+Shift+Z)")
        self.undo = tool_button(self, self.tr("Back"), back, self.tr("Stroke back"))
        self.redo = tool_button(self, self.tr("Again"), again, self.tr("Stroke again"))
        self.undo.clicked.connect(self._view.undo)
        self.redo.clicked.connect(self._view.redo)

    def _switch(self, words: str, tip: str) -> QPushButton:
        button = QPushButton(words, self)
        button.setCheckable(True)
        button.setToolTip(tip)
        set_role(button, "switch")
        return button

    @property
    def _buttons(self) -> list[QPushButton]:
        return [self.brush, self.eraser, self.smaller, self.larger, self.undo, self.redo]

    def stops(self) -> list[QWidget]:
        """What Tab comes by, in reading order."""
        return [*self._buttons, *self.zoom.stops()]

    @Slot(bool)
    def choose(self, paints: bool) -> None:
        """Brush or eraser."""
        self.brush.setChecked(paints)
        self.eraser.setChecked(not paints)
        self._view.set_brush(RADII_MM[self._size], paints=paints)

    @Slot()
    def _choose_brush(self) -> None:
        self.choose(True)

    @Slot()
    def _choose_eraser(self) -> None:
        self.choose(False)

    @Slot(int)
    def resize_brush(self, steps: int) -> None:
        """Larger or smaller by so many steps."""
        self._size = min(len(RADII_MM) - 1, max(0, self._size + steps))
        self._view.set_brush(RADII_MM[self._size], paints=self._view.paints)
        self._show_size()

    @Slot()
    def _smaller(self) -> None:
        self.resize_brush(-1)

    @Slot()
    def _larger(self) -> None:
        self.resize_brush(1)

    def _show_size(self) -> None:
        self.width_words.setText(filled(self.tr("{width:g} mm wide"), width=2 * RADII_MM[self._size]))
        self.smaller.setEnabled(self._size > 0)
        self.larger.setEnabled(self._size < len(RADII_MM) - 1)

    def show_strokes(self, mask: CanopyMask | None) -> None:
        """Whether there are strokes to take back or to do again; None where nothing can be painted."""
        self._show_size()
        self.undo.setEnabled(mask is not None and mask.can_undo)
        self.redo.setEnabled(mask is not None and mask.can_redo)


def tool_button(parent: QWidget, words: str, tip: str, name: str = "") -> QPushButton:
    """A button as high as wet fingers need; `name` is for a screen reader where the words do not say it."""
    button = QPushButton(words, parent)
    button.setToolTip(tip)
    button.setAccessibleName(name or words)
    set_role(button, "rack")
    return button
