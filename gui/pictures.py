"""Pictures: a picture that can be looked at closely, with layers over it.

In    `Mips` of a photo or top view, `Layers` in its coordinates, which layers are switched on
Out   the picture at any zoom within a frame of 16 ms; signal `layers_switched` when the person switches one
Not   loading (`photo/mips.py`), shapes (`photo/layers.py`), what the numbers mean (the screen gives the
      description)

Wheel and pinch zoom at the cursor, dragging moves, + - 0 zoom, Shift with arrows moves, Space switches all
layers, 1 to 4 single ones.
"""

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QKeyEvent,
    QMouseEvent,
    QNativeGestureEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QResizeEvent,
    QWheelEvent,
)
from PySide6.QtWidgets import QGestureEvent, QPinchGesture, QWidget

from gui.photo.layerpaint import paint_layers
from gui.photo.layers import Layer, Layers
from gui.photo.mips import Mips, level_for
from gui.photo.viewport import Viewport
from gui.style.palette import Space, tokens_now
from gui.style.words import line_width

__all__ = ["PictureView"]

STEP = 1.25  # one notch of the wheel, one press of + or -
PUSH = 60.0  # window pixels that an arrow key moves the picture
LEAST_SIZE = (200, 100)  # px: what is left in the least window with large letters
KEYS_OF_LAYERS = dict(zip((Qt.Key.Key_1, Qt.Key.Key_2, Qt.Key.Key_3, Qt.Key.Key_4), Layer, strict=True))
ARROWS = {
    Qt.Key.Key_Left: (1, 0),
    Qt.Key.Key_Right: (-1, 0),
    Qt.Key.Key_Up: (0, 1),
    Qt.Key.Key_Down: (0, -1),
}


class PictureView(QWidget):
    """Shows one picture; knows nothing of trays."""

    layers_switched = Signal(object)  # frozenset[Layer]
    has_picture = Signal(bool)

    def __init__(self, parent: QWidget | None = None, *, margin: float = 0.0) -> None:
        super().__init__(parent)
        self.mips: Mips | None = None
        self.layers = Layers()
        self.shown: frozenset[Layer] = frozenset()
        self.view = Viewport(picture=(1.0, 1.0), window=(1.0, 1.0), margin=margin)
        self._switched_off: frozenset[Layer] = frozenset()
        self._message = ""
        self._description = ""
        self._dragged_from: QPointF | None = None
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMinimumSize(*LEAST_SIZE)
        self.setAccessibleName(self.tr("Picture of the tray"))
        self.grabGesture(Qt.GestureType.PinchGesture)

    def sizeHint(self) -> QSize:
        """Room for a top view at about half its size."""
        return QSize(640, 340)

    # --- what is shown

    def show_picture(self, mips: Mips | None, *, layers: Layers | None = None, message: str = "") -> None:
        """Show a picture, or a sentence where there is none; the place stays if the size is the same."""
        same_size = mips is not None and self.mips is not None and mips.size == self.mips.size
        self.mips, self._message = mips, message
        self.layers = layers or Layers()
        if mips is not None and not same_size:
            self.view = Viewport(picture=mips.size, window=self._window(), margin=self.view.margin).fitted()
        self.has_picture.emit(mips is not None)
        self._after_change()

    def show_layers(self, shown: frozenset[Layer]) -> None:
        """Switch exactly these layers on."""
        self.shown = shown
        self._after_change()

    def describe(self, description: str) -> None:
        """The numbers of the picture in words, for those who cannot see it."""
        self._description = description
        self._after_change()

    # --- what a person does

    def zoom_in(self) -> None:
        """One step closer, at the middle."""
        self._zoom(STEP, QPointF(self.width() / 2, self.height() / 2))

    def zoom_out(self) -> None:
        """One step back, at the middle."""
        self._zoom(1 / STEP, QPointF(self.width() / 2, self.height() / 2))

    def fit(self) -> None:
        """The whole picture."""
        self.view = self.view.fitted()
        self._after_change()

    def look_at(self, x: float, y: float, times: float) -> None:
        """Bring a point of the picture to the middle, `times` larger than when all of it is seen."""
        if self.mips is not None:
            middle = self.width() / 2, self.height() / 2
            self.view = self.view.fitted().zoomed(times, *middle).looking_at(x, y)
            self._after_change()

    def switch(self, layer: Layer) -> None:
        """Switch one layer on or off, as a person does."""
        self._person_switched(self.shown ^ {layer})

    def switch_all(self) -> None:
        """All layers off; then the same ones on again."""
        if self.shown:
            self._switched_off = self.shown
            self._person_switched(frozenset())
        else:
            self._person_switched(self._switched_off or frozenset(Layer))

    def _person_switched(self, shown: frozenset[Layer]) -> None:
        self.show_layers(shown)
        self.layers_switched.emit(shown)

    def _zoom(self, factor: float, at: QPointF) -> None:
        if self.mips is not None:
            self.view = self.view.zoomed(factor, at.x(), at.y())
            self._after_change()

    def _push(self, right: float, down: float) -> None:
        self.view = self.view.moved(right, down)
        self._after_change()

    def _after_change(self) -> None:
        self._set_cursor()
        self.setAccessibleDescription(self._description or self._message)
        self.update()

    def _set_cursor(self) -> None:
        if self.mips is None or self.view.is_fitted:
            self.setCursor(Qt.CursorShape.ArrowCursor)
        elif self._dragged_from is None:
            self.setCursor(Qt.CursorShape.OpenHandCursor)
        else:
            self.setCursor(Qt.CursorShape.ClosedHandCursor)

    # --- keys, wheel, fingers

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """The keys of the picture; others go to the screen."""
        if not self.take_key(event):
            super().keyPressEvent(event)

    def take_key(self, event: QKeyEvent) -> bool:
        """Do what the key says; False where it says nothing to a picture."""
        key = Qt.Key(event.key())
        if key in (Qt.Key.Key_Plus, Qt.Key.Key_Equal):
            self.zoom_in()
        elif key == Qt.Key.Key_Minus:
            self.zoom_out()
        elif key == Qt.Key.Key_0:
            self.fit()
        elif key == Qt.Key.Key_Space:
            self.switch_all()
        elif key in KEYS_OF_LAYERS:
            self.switch(KEYS_OF_LAYERS[key])
        elif key in ARROWS and event.modifiers() & Qt.KeyboardModifier.ShiftModifier:
            right, down = ARROWS[key]
            self._push(right * PUSH, down * PUSH)
        else:
            return False
        return True

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Zoom at the cursor; a touchpad's fine steps count as parts of a notch."""
        notches = event.angleDelta().y() / 120
        if notches and self.mips is not None:
            self._zoom(STEP**notches, event.position())
            event.accept()
        else:
            super().wheelEvent(event)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Take hold of the picture."""
        if event.button() in (Qt.MouseButton.LeftButton, Qt.MouseButton.MiddleButton):
            self._dragged_from = event.position()
            self._set_cursor()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Move the picture with the hand."""
        if self._dragged_from is not None:
            way = event.position() - self._dragged_from
            self._dragged_from = event.position()
            self._push(way.x(), way.y())

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Let go."""
        self._dragged_from = None
        self._set_cursor()

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        """One picture pixel per screen pixel at this place, or the whole picture again."""
        if self.mips is None:
            return
        if self.view.is_fitted:
            self._zoom(max(2.0, 1.0 / self.view.zoom), event.position())
        else:
            self.fit()

    def event(self, event: QEvent) -> bool:
        """Pinches, of a touchpad and of a touch screen."""
        if isinstance(event, QNativeGestureEvent):
            if event.gestureType() == Qt.NativeGestureType.ZoomNativeGesture:
                self._zoom(1.0 + event.value(), event.position())
                return True
        elif isinstance(event, QGestureEvent):
            pinch = event.gesture(Qt.GestureType.PinchGesture)
            if isinstance(pinch, QPinchGesture):
                at = self.mapFromGlobal(pinch.centerPoint())
                self._zoom(pinch.scaleFactor(), QPointF(at))
                return True
        return super().event(event)

    # --- painting

    def paintEvent(self, event: QPaintEvent) -> None:
        """The picture, the layers, the focus ring."""
        painter = QPainter(self)
        painter.setClipRegion(event.region())
        tokens = tokens_now()
        painter.fillRect(self.rect(), QColor(tokens.ground))
        if self.mips is None:
            self._paint_message(painter)
        else:
            self._paint_picture(painter, self.mips)
            self._paint_over(painter)
        if self.hasFocus():
            painter.setRenderHint(QPainter.RenderHint.Antialiasing, True)
            painter.setPen(QPen(QColor(tokens.accent), 2))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), 3, 3)

    def _paint_picture(self, painter: QPainter, mips: Mips) -> None:
        """The part that is seen, from the level that has just enough pixels."""
        view, ratio = self.view, self.devicePixelRatioF()
        level = level_for(view.zoom * ratio, len(mips.levels))
        image = mips.levels[level]
        left, top = view.to_picture(0, 0)
        right, bottom = view.to_picture(self.width(), self.height())
        seen = QRectF(QPointF(left, top), QPointF(right, bottom)) & QRectF(0, 0, *mips.size)
        shrunk = image.width() / mips.size[0]
        source = QRectF(seen.x() * shrunk, seen.y() * shrunk, seen.width() * shrunk, seen.height() * shrunk)
        target = QRectF(QPointF(*view.to_window(seen.left(), seen.top())), seen.size() * view.zoom)
        smooth = view.zoom * ratio < 4  # beyond, a person wants to see the pixels
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform, smooth)
        painter.drawImage(target, image, source)

    def _paint_over(self, painter: QPainter) -> None:
        if self.shown:
            paint_layers(painter, self.layers, self.shown, self.view, self.font())

    def _paint_message(self, painter: QPainter) -> None:
        painter.setPen(QColor(tokens_now().soft_ink))
        room = QRectF(self.rect()).adjusted(Space.XL, Space.XL, -Space.XL, -Space.XL)
        wide = min(room.width(), line_width(self.fontMetrics()))
        box = QRectF(room.center().x() - wide / 2, room.y(), wide, room.height())
        painter.drawText(box, Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap, self._message)

    # --- the window

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Keep the place; a fitted picture stays fitted."""
        self.view = self.view.resized(*self._window())

    def _window(self) -> tuple[float, float]:
        return max(1.0, float(self.width())), max(1.0, float(self.height()))
