"""Brush view: the top view with its canopy, and a brush that paints canopy or takes it away.

In    a picture, a `CanopyMask`; brush or eraser, its size
Out   `stroked` after each stroke; `size_wanted`, `mode_wanted` where a key asks for another brush
Not   strokes themselves (`canopymask.py`), keeping them (`desk.py`)

Everything but the canopy lies under a veil. Only the rectangle under the brush is made and painted again.
"""

from math import ceil
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QPointF, QRect, QRectF, Qt, Signal
from PySide6.QtGui import QColor, QEnterEvent, QImage, QKeyEvent, QMouseEvent, QPainter, QPen
from PySide6.QtWidgets import QWidget

from gui.mend.canopymask import CanopyMask, Patch
from gui.mend.veil import draw_veil
from gui.photo.mips import Mips
from gui.pictures import ARROWS, PictureView

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

__all__ = ["BrushView"]

RING_ROOM = 4  # window pixels around the brush's ring
DARK, LIGHT, ERASER = QColor(12, 16, 14), QColor("#56B4E9"), QColor("#E69F00")


class BrushView(PictureView):
    """Paints with the left button; the middle one and Shift with arrows of the picture move it."""

    stroked = Signal()
    size_wanted = Signal(int)  # +1 larger, -1 smaller
    mode_wanted = Signal(bool)  # True: paint

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.canopy: CanopyMask | None = None
        self.radius_mm = 6.0
        self.px_per_mm = 2.0  # of the top view
        self.paints = True
        self.veiled = True
        self._overlay = QImage()
        self._pixels: NDArray[np.uint8] | None = None
        self._stroking = False
        self._at: QPointF | None = None  # the brush, in pixels of the top view
        self.setMouseTracking(True)
        self.setAccessibleName(self.tr("Canopy of the tray, to be mended with the brush"))

    # --- what is shown

    def show_canopy(
        self,
        mips: Mips | None,
        canopy: CanopyMask | None,
        veil: "NDArray[np.uint8] | None",
        message: str = "",
    ) -> None:
        """Show a top view and the canopy on it; `veil` is that of the canopy as it was scored."""
        self.canopy, self._stroking = canopy, False
        self._pixels, self._overlay = None, QImage()
        if canopy is not None and veil is not None:
            import numpy as np

            rows, columns = canopy.now.shape
            self._overlay = QImage(columns, rows, QImage.Format.Format_ARGB32_Premultiplied)
            self._pixels = np.frombuffer(self._overlay.bits(), np.uint8).reshape(rows, columns, 4)
            self._pixels[:] = veil
            self._changed(canopy.changed)
        self.show_picture(mips, message=message)

    def forget(self) -> None:
        """All strokes away, which can be taken back."""
        if self.canopy is not None and not self._stroking:
            self._changed(self.canopy.forget())
            self.stroked.emit()

    def set_brush(self, radius_mm: float, *, paints: bool) -> None:
        """Another size, brush or eraser."""
        self._update_ring()
        self.radius_mm, self.paints = radius_mm, paints
        self._update_ring()

    def set_veiled(self, veiled: bool) -> None:
        """With the canopy drawn, or the bare picture."""
        self.veiled = veiled
        self.update()

    def undo(self) -> None:
        """Take the last stroke back."""
        if self.canopy is not None and not self._stroking:
            self._changed(self.canopy.undo())
            self.stroked.emit()

    def redo(self) -> None:
        """Do it again."""
        if self.canopy is not None and not self._stroking:
            self._changed(self.canopy.redo())
            self.stroked.emit()

    def _changed(self, patch: Patch | None) -> None:
        if patch is None:
            return
        if self.canopy is not None and self._pixels is not None:
            draw_veil(self._pixels, self.canopy.now, patch)
        left, top = self.view.to_window(patch.left - 1, patch.top - 1)
        right, bottom = self.view.to_window(patch.right + 1, patch.bottom + 1)
        self.update(QRectF(QPointF(left, top), QPointF(right, bottom)).toAlignedRect().adjusted(-2, -2, 2, 2))

    # --- the hand

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """The brush comes down."""
        if event.button() != Qt.MouseButton.LeftButton or self.canopy is None:
            super().mousePressEvent(event)
            return
        self._stroking = True
        self.canopy.begin()
        self._brush_to(self._in_picture(event.position()))

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Drag it, or only show where it is."""
        if self._dragged_from is not None or self.canopy is None:
            super().mouseMoveEvent(event)
        else:
            self._brush_to(self._in_picture(event.position()))

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Lift it."""
        if self._stroking:
            self._lift()
        super().mouseReleaseEvent(event)

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        """A second dab at once is a dab."""
        self.mousePressEvent(event)

    def leaveEvent(self, event: QEvent) -> None:
        """No ring without a hand."""
        self._update_ring()
        if not self.hasFocus():
            self._at = None
        super().leaveEvent(event)

    def enterEvent(self, event: QEnterEvent) -> None:
        """The hand is back."""
        self._set_cursor()
        super().enterEvent(event)

    def _in_picture(self, at: QPointF) -> QPointF:
        return QPointF(*self.view.to_picture(at.x(), at.y()))

    def _brush_to(self, at: QPointF) -> None:
        self._update_ring()
        self._at = at
        if self._stroking and self.canopy is not None:
            self._changed(
                self.canopy.move(at.x(), at.y(), self.radius_mm * self.px_per_mm, paint=self.paints)
            )
        self._update_ring()

    def _lift(self) -> None:
        self._stroking = False
        if self.canopy is not None and self.canopy.end():
            self.stroked.emit()

    # --- keys

    def take_key(self, event: QKeyEvent) -> bool:
        """Arrows move the brush, with Shift they paint; Enter dabs; B, E, [ and ] choose the brush."""
        key = Qt.Key(event.key())
        if key in ARROWS and self.hasFocus():
            self._step(key, strokes=bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier))
        elif event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            return False
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self.hasFocus():
            self._dab()
        elif key == Qt.Key.Key_B:
            self.mode_wanted.emit(True)
        elif key == Qt.Key.Key_E:
            self.mode_wanted.emit(False)
        elif key in (Qt.Key.Key_BracketLeft, Qt.Key.Key_BracketRight):
            self.size_wanted.emit(1 if key == Qt.Key.Key_BracketRight else -1)
        elif key == Qt.Key.Key_Space:
            self.set_veiled(not self.veiled)
        elif key in (Qt.Key.Key_1, Qt.Key.Key_2, Qt.Key.Key_3, Qt.Key.Key_4):
            return True  # layers are off while the brush is out
        else:
            return super().take_key(event)
        return True

    def _step(self, key: Qt.Key, *, strokes: bool) -> None:
        """One half of the brush on; the picture follows where the brush would leave the window."""
        if self.canopy is None:
            return
        rows, columns = self.canopy.now.shape
        at = self._at or QPointF(columns / 2, rows / 2)
        step = max(1.0, self.radius_mm * self.px_per_mm / 2)
        right, down = ARROWS[key]  # of a picture that is pushed: the brush goes the other way
        to = QPointF(
            min(float(columns), max(0.0, at.x() - right * step)),
            min(float(rows), max(0.0, at.y() - down * step)),
        )
        if strokes:
            self._stroke(at, to)
        self._brush_to(to)
        if not QRectF(self.rect()).contains(QPointF(*self.view.to_window(to.x(), to.y()))):
            self.view = self.view.looking_at(to.x(), to.y())
            self.update()

    def _dab(self) -> None:
        if self.canopy is not None:
            rows, columns = self.canopy.now.shape
            at = self._at or QPointF(columns / 2, rows / 2)
            self._stroke(at, at)

    def _stroke(self, start: QPointF, end: QPointF) -> None:
        if self.canopy is None:
            return
        self._stroking = True
        self.canopy.begin()
        for at in (start, end):
            self._brush_to(at)
        self._lift()

    # --- painting

    def _set_cursor(self) -> None:
        self.setCursor(Qt.CursorShape.ArrowCursor if self.canopy is None else Qt.CursorShape.CrossCursor)

    def _ring(self) -> QRectF | None:
        if self._at is None or self.canopy is None:
            return None
        middle = QPointF(*self.view.to_window(self._at.x(), self._at.y()))
        radius = self.radius_mm * self.px_per_mm * self.view.zoom
        return QRectF(middle.x() - radius, middle.y() - radius, 2 * radius, 2 * radius)

    def _update_ring(self) -> None:
        ring = self._ring()
        if ring is not None:
            self.update(
                ring.toAlignedRect().adjusted(-RING_ROOM, -RING_ROOM, RING_ROOM, RING_ROOM) & self.rect()
            )

    def _paint_over(self, painter: QPainter) -> None:
        """The veil, then the brush's ring: plain for painting, dashed for erasing."""
        if self.canopy is not None and self.veiled:
            self._paint_veil(painter)
        ring = self._ring()
        if ring is None:
            return
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, True)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        pen = QPen(LIGHT if self.paints else ERASER, 2.0)
        if not self.paints:
            pen.setDashPattern([3.0, 2.0])
        for one in (QPen(DARK, 4.0), pen):
            painter.setPen(one)
            painter.drawEllipse(ring)

    def _paint_veil(self, painter: QPainter) -> None:
        """Only where the window is painted again."""
        seen = painter.clipBoundingRect() if painter.hasClipping() else QRectF(self.rect())
        left, top = self.view.to_picture(seen.left(), seen.top())
        right, bottom = self.view.to_picture(seen.right(), seen.bottom())
        whole = QRect(0, 0, self._overlay.width(), self._overlay.height())
        part = QRect(int(left) - 1, int(top) - 1, ceil(right - left) + 3, ceil(bottom - top) + 3) & whole
        if part.isEmpty():
            return
        target = QRectF(
            QPointF(*self.view.to_window(part.left(), part.top())), QRectF(part).size() * self.view.zoom
        )
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform, False)
        painter.drawImage(target, self._overlay, QRectF(part))
