"""Corner view: a photo with four handles on the corners of its tray.

In    a picture; four corners, px of it
Out   `moved` with all four at every change
Not   what the corners are for (`corners.py`)

Tab goes to the next corner, arrows move it by one pixel of the photo, with Shift by ten; Ctrl+Z takes a move
back, Ctrl+Shift+Z does it again. While a corner is held, a lens beside the finger shows its place enlarged.
A corner of a tray that the photo cuts off goes beyond the photo's edge: room is shown around the photo once a
corner lies there, or by one step back from the whole photo.
"""

from collections.abc import Sequence

from PySide6.QtCore import QEvent, QPointF, QRectF, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QFocusEvent,
    QKeyEvent,
    QKeySequence,
    QMouseEvent,
    QPainter,
    QPainterPath,
    QPen,
    QPolygonF,
)
from PySide6.QtWidgets import QWidget

from gui.photo.mips import Mips, level_for
from gui.pictures import ARROWS, PictureView
from gui.style.palette import RACK_TARGET, tokens_now

__all__ = ["CornerView", "Quad"]

Quad = tuple[tuple[float, float], ...]  # four points (x, y), px of the upright photo

REACH = RACK_TARGET / 2  # window pixels around a corner that take hold of it
LOUPE = 76.0  # radius of the loupe, window pixels
LOUPE_TIMES = 4.0  # the loupe enlarges what the window shows
LIGHT, DARK = QColor("#F0E442"), QColor(12, 16, 14, 225)
MOST_MOVES = 200
OUTSIDE = 0.25  # of the photo's width: so far beyond its edge a corner may lie
SPARE = 0.06  # of it: room beyond the outermost corner


class CornerView(PictureView):
    """The photo with four handles."""

    moved = Signal(object)  # Quad

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent, margin=REACH)
        self.corners: Quad = ()
        self.chosen = 0
        self._before: list[Quad] = []
        self._after: list[Quad] = []  # taken back, to be done again
        self._held: QPointF | None = None  # from the corner to where the finger took hold of it
        self.setAccessibleName(self.tr("Photo with the four corners of the tray"))

    def show_corners(self, corners: Sequence[tuple[float, float]]) -> None:
        """Begin anew with these."""
        self.corners = tuple((float(x), float(y)) for x, y in corners)
        self.chosen, self._before, self._after = 0, [], []
        self.fit()
        self._tell()

    def put(self, corners: Sequence[tuple[float, float]]) -> None:
        """Put all four here, as one move."""
        self._remember()
        self.corners = tuple((float(x), float(y)) for x, y in corners)
        self._show_outside()
        self._tell()

    @property
    def can_take_back(self) -> bool:
        """Whether a corner has been moved."""
        return bool(self._before)

    @property
    def can_do_again(self) -> bool:
        """Whether a move was taken back."""
        return bool(self._after)

    def take_back(self) -> None:
        """The corners before the last move."""
        if self._before and self._held is None:
            self._after.append(self.corners)
            self.corners = self._before.pop()
            self._show_outside()
            self._tell()

    def do_again(self) -> None:
        """The move that was taken back last."""
        if self._after and self._held is None:
            self._before.append(self.corners)
            self.corners = self._after.pop()
            self._show_outside()
            self._tell()

    def move_chosen(self, x: float, y: float) -> None:
        """Put the chosen corner here, px of the photo: in it, or `OUTSIDE` of its width beyond its edge."""
        width, height = self.mips.size if self.mips else (1, 1)
        beyond = self._reach
        corners = list(self.corners)
        corners[self.chosen] = (
            min(width + beyond, max(-beyond, x)),
            min(height + beyond, max(-beyond, y)),
        )
        self.corners = tuple(corners)
        self._tell()

    @property
    def _reach(self) -> float:
        """How far beyond the photo's edge a corner may lie, px of the photo."""
        return OUTSIDE * self.mips.size[0] if self.mips else 0.0

    def _beyond(self, corner: tuple[float, float]) -> float:
        """How far a corner lies beyond the edge of the photo, px of it; 0 in the photo."""
        width, height = self.mips.size if self.mips else (1, 1)
        x, y = corner
        return max(0.0, -x, x - width, -y, y - height)

    @property
    def _room(self) -> float:
        """What has to be seen around the photo, px of it."""
        furthest = max(map(self._beyond, self.corners), default=0.0)
        return min(self._reach, furthest + SPARE / OUTSIDE * self._reach) if furthest else 0.0

    def fit(self) -> None:
        """The whole photo, with room around it only where a corner lies there."""
        self.view = self.view.with_room(self._room)
        super().fit()

    def _zoom(self, factor: float, at: QPointF) -> None:
        """From the whole photo one step back shows the room around it."""
        if factor < 1 and self.view.is_fitted:
            self.view = self.view.with_room(self._reach)
        super()._zoom(factor, at)

    def _show_outside(self) -> None:
        """Room around the photo as soon as a corner lies there; the chosen corner in sight."""
        self.view = self.view.with_room(max(self.view.beyond, self._room))
        x, y = self.view.to_window(*self.corners[self.chosen])
        inside = QPointF(min(self.width() - REACH, max(REACH, x)), min(self.height() - REACH, max(REACH, y)))
        self.view = self.view.moved(inside.x() - x, inside.y() - y)

    def _remember(self) -> None:
        self._before = [*self._before[-MOST_MOVES:], self.corners]
        self._after = []

    def _tell(self) -> None:
        if self.corners:
            self.describe(self._place_words())
        self.update()
        self.moved.emit(self.corners)

    def _place_words(self) -> str:
        """Where the chosen corner lies."""
        if self._beyond(self.corners[self.chosen]):
            words = self.tr("{corner} at {x} px from the left, {y} px from the top, outside the photo")
        else:
            words = self.tr("{corner} at {x} px from the left, {y} px from the top")
        x, y = self.corners[self.chosen]
        return words.format(corner=self.name_of(self.chosen), x=round(x), y=round(y))

    def name_of(self, corner: int) -> str:
        """The corner's name, counted clockwise."""
        return self.tr("Corner {number} of 4").format(number=corner + 1)

    # --- fingers

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Take hold of the nearest corner, else of the picture."""
        nearest = self._corner_at(event.position())
        if nearest is None or event.button() != Qt.MouseButton.LeftButton:
            super().mousePressEvent(event)
            return
        self.chosen = nearest
        self._remember()
        self._held = event.position() - QPointF(*self.view.to_window(*self.corners[nearest]))
        self._tell()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Move what is held."""
        if self._held is None:
            super().mouseMoveEvent(event)
            return
        to = event.position() - self._held
        self.move_chosen(*self.view.to_picture(to.x(), to.y()))

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Let go."""
        if self._held is not None:
            self._held = None
            if self._before and self._before[-1] == self.corners:
                self._before.pop()
            self._show_outside()
            self._tell()
        super().mouseReleaseEvent(event)

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        """On a corner a second press is one more hold; elsewhere the picture comes closer."""
        if self._corner_at(event.position()) is None:
            super().mouseDoubleClickEvent(event)
        else:
            self.mousePressEvent(event)

    def _corner_at(self, at: QPointF) -> int | None:
        reached = []
        for number, corner in enumerate(self.corners):
            way = QPointF(*self.view.to_window(*corner)) - at
            distance = QPointF.dotProduct(way, way) ** 0.5
            if distance <= REACH:
                reached.append((distance, number))
        return min(reached)[1] if reached else None

    # --- keys

    def event(self, event: QEvent) -> bool:
        """While the photo has the focus, Ctrl+Z is for its corners, not for the book."""
        if (
            event.type() == QEvent.Type.ShortcutOverride
            and isinstance(event, QKeyEvent)
            and self.takes_key(event)
        ):
            event.accept()
            return True
        return super().event(event)

    def takes_key(self, event: QKeyEvent) -> bool:
        """Whether a key takes a move back, or does one again."""
        back = event.matches(QKeySequence.StandardKey.Undo) and self.can_take_back
        return back or (event.matches(QKeySequence.StandardKey.Redo) and self.can_do_again)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Arrows move the chosen corner; the keys of the picture stay."""
        key = Qt.Key(event.key())
        if event.matches(QKeySequence.StandardKey.Undo):
            self.take_back()
        elif event.matches(QKeySequence.StandardKey.Redo):
            self.do_again()
        elif key in ARROWS and self.corners:
            if not event.isAutoRepeat():
                self._remember()
            step = 10.0 if event.modifiers() & Qt.KeyboardModifier.ShiftModifier else 1.0
            right, down = ARROWS[key]  # of a picture that is pushed: a corner goes the other way
            x, y = self.corners[self.chosen]
            self.move_chosen(x - right * step, y - down * step)
            self._show_outside()
        else:
            super().keyPressEvent(event)

    def focusNextPrevChild(self, forwards: bool) -> bool:
        """Tab goes through the four corners before it leaves the photo."""
        following = self.chosen + (1 if forwards else -1)
        if self.corners and 0 <= following <= 3:
            self.chosen = following
            self._show_outside()
            self._tell()
            return True
        return super().focusNextPrevChild(forwards)

    def focusInEvent(self, event: QFocusEvent) -> None:
        """Tab comes in at the first corner, Shift+Tab at the last."""
        if event.reason() == Qt.FocusReason.TabFocusReason:
            self.chosen = 0
        elif event.reason() == Qt.FocusReason.BacktabFocusReason:
            self.chosen = 3
        super().focusInEvent(event)

    # --- painting

    def _paint_over(self, painter: QPainter) -> None:
        if len(self.corners) != 4:
            return
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, True)
        places = [QPointF(*self.view.to_window(*corner)) for corner in self.corners]
        self._paint_frame(painter, places)
        for number, place in enumerate(places):
            self._paint_handle(painter, place, number)
        if self._held is not None and self.mips is not None:
            self._paint_loupe(painter, self.mips, places[self.chosen])

    def _paint_frame(self, painter: QPainter, places: list[QPointF]) -> None:
        """The edge, and the lines that cut the tray in halves (in the picture, straight between middles)."""
        painter.setBrush(Qt.BrushStyle.NoBrush)
        frame = QPolygonF(places)
        for pen in (QPen(DARK, 4.0), QPen(LIGHT, 2.0)):
            painter.setPen(pen)
            painter.drawPolygon(frame)
        middles = [(places[k] + places[(k + 1) % 4]) / 2 for k in range(4)]
        for pen in (QPen(DARK, 2.5), QPen(LIGHT, 1.0, Qt.PenStyle.DashLine)):
            painter.setPen(pen)
            painter.drawLine(middles[0], middles[2])
            painter.drawLine(middles[1], middles[3])

    def _paint_handle(self, painter: QPainter, place: QPointF, number: int) -> None:
        """A ring that leaves the corner itself free, with a cross in it; the chosen one is thicker."""
        chosen = number == self.chosen and (self.hasFocus() or self._held is not None)
        painter.setBrush(QColor(255, 255, 255, 40))
        radius = REACH - 3
        width = 4.0 if chosen else 2.0
        for pen in (QPen(DARK, width + 2.5), QPen(LIGHT, width)):
            painter.setPen(pen)
            painter.drawEllipse(place, radius, radius)
            painter.setBrush(Qt.BrushStyle.NoBrush)
        for pen in (QPen(DARK, 3.0), QPen(LIGHT, 1.0)):
            painter.setPen(pen)
            painter.drawLine(place - QPointF(7, 0), place + QPointF(7, 0))
            painter.drawLine(place - QPointF(0, 7), place + QPointF(0, 7))

    def _paint_loupe(self, painter: QPainter, mips: Mips, place: QPointF) -> None:
        """What lies under the finger, enlarged, beside the finger and never outside the window."""
        away = LOUPE + REACH + 10
        x = place.x() + (away if place.x() < self.width() / 2 else -away)
        y = place.y() + (away if place.y() < self.height() / 2 else -away)
        middle = QPointF(
            min(self.width() - LOUPE - 4, max(LOUPE + 4, x)),
            min(self.height() - LOUPE - 4, max(LOUPE + 4, y)),
        )
        box = QRectF(middle.x() - LOUPE, middle.y() - LOUPE, 2 * LOUPE, 2 * LOUPE)
        zoom = max(1.0, self.view.zoom * LOUPE_TIMES)
        image = mips.levels[level_for(zoom * self.devicePixelRatioF(), len(mips.levels))]
        shrunk = image.width() / mips.size[0]
        corner_x, corner_y = self.corners[self.chosen]
        half = LOUPE / zoom
        source = QRectF(
            (corner_x - half) * shrunk, (corner_y - half) * shrunk, 2 * half * shrunk, 2 * half * shrunk
        )
        painter.save()
        lens = QPainterPath()
        lens.addEllipse(box)
        painter.setClipPath(lens)
        painter.fillRect(box, QColor(tokens_now().ground))
        painter.drawImage(box, image, source)
        self._paint_frame_in_loupe(painter, box.center(), zoom)
        painter.restore()
        painter.setBrush(Qt.BrushStyle.NoBrush)
        for pen in (QPen(DARK, 5.0), QPen(QColor("#FFFFFF"), 2.0)):
            painter.setPen(pen)
            painter.drawEllipse(box)

    def _paint_frame_in_loupe(self, painter: QPainter, middle: QPointF, zoom: float) -> None:
        here = QPointF(*self.corners[self.chosen])
        for other in (self.corners[self.chosen - 1], self.corners[(self.chosen + 1) % 4]):
            end = middle + (QPointF(*other) - here) * zoom
            for pen in (QPen(DARK, 3.0), QPen(LIGHT, 1.2)):
                painter.setPen(pen)
                painter.drawLine(middle, end)
