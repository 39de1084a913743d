"""Wipe view: two pictures of one tray in one frame, and a line that wipes from one to the other.

In    two `Mips` of the same size, the earlier and the later one, and a word for each
Out   the earlier one left of the line, the later one right of it, at any zoom
Not   loading them (`picture.py`), which days (`comparepage.py`)

The line is dragged, or goes by the arrow keys; Space shows one day wholly, then the other. Zoom and place
hold for both, so that the same leaf stays under the line.
"""

from collections.abc import Sequence
from math import ceil, floor

from PySide6.QtCore import QPointF, QRect, QRectF, Qt, Signal
from PySide6.QtGui import QColor, QFont, QKeyEvent, QMouseEvent, QPainter, QPen, QPolygonF, QTransform
from PySide6.QtWidgets import QWidget

from gui.photo.mips import Mips, level_for
from gui.photo.plates import paint_plate, plate_size
from gui.pictures import PictureView
from gui.style.palette import RACK_TARGET, Space

__all__ = ["WipeView"]

PX_PER_MM = 2.0
STEP = 0.02  # of the picture's width that one press of an arrow moves the line
GRIP = (14.0, 44.0)  # window pixels
DARK, LIGHT = QColor(12, 16, 14), QColor("#FFFFFF")
GROWN, VANISHED = QColor("#56B4E9"), QColor("#E69F00")
MOST_WORDS = 3  # of the largest places, each; more words would hide the picture
Outline = Sequence[tuple[float, float]]


class WipeView(PictureView):
    """The picture under the base's hands is the later one; the earlier one lies over its left part."""

    wiped = Signal(float)  # where the line is, 0 left edge to 1 right edge of what is seen of the picture

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.earlier: Mips | None = None
        self.words = ("", "")
        self.line = 0.5
        self._holds = False
        self._laid = QTransform()  # the earlier picture onto the later one, px
        self._grown: tuple[QPolygonF, ...] = ()
        self._vanished: tuple[QPolygonF, ...] = ()
        self.places_shown = False
        self.setMouseTracking(True)
        self.setAccessibleName(self.tr("Two days of the tray, with a line that wipes between them"))

    def show_pair(self, earlier: Mips | None, later: Mips | None, words: tuple[str, str]) -> None:
        """Show these; where one is missing the base's message is shown."""
        self.earlier, self.words, self._laid = earlier, words, QTransform()
        self._grown = self._vanished = ()
        self.show_picture(later if earlier is not None else None, message=self._message)

    def lay_on(self, matrix: Sequence[Sequence[float]]) -> None:
        """How the earlier tray lies on the later one, mm (2 rows of 3): a tray that was moved or turned."""
        (a, b, x), (c, d, y) = ([float(value) for value in row] for row in matrix)
        self._laid = QTransform(a, c, b, d, x * PX_PER_MM, y * PX_PER_MM)
        self.update()

    def mark(
        self, grown: Sequence[Outline], vanished: Sequence[Outline], per_mm: tuple[float, float]
    ) -> None:
        """Outlines in mm of the later tray, where canopy grew and where it vanished; largest first."""
        self._grown, self._vanished = (
            tuple(
                QPolygonF([QPointF(x * per_mm[0], y * per_mm[1]) for x, y in outline]) for outline in outlines
            )
            for outlines in (grown, vanished)
        )
        self.update()

    def show_places(self, shown: bool) -> None:
        """These outlines on or off."""
        self.places_shown = shown
        self.update()

    def say(self, message: str) -> None:
        """A sentence in the place of the pictures."""
        self.earlier = None
        self.show_picture(None, message=message)

    def begin_anew(self) -> None:
        """Another tray: all of it, the line in the middle."""
        self.line = 0.5
        self.fit()

    def wipe_to(self, line: float) -> None:
        """Put the line here, 0 to 1; what lies between its old and its new place is painted again."""
        line = min(1.0, max(0.0, line))
        if line == self.line:
            return
        old, self.line = self._line_x(), line
        new = self._line_x()
        room = GRIP[0] / 2 + 3
        left, right = min(old, new) - room, max(old, new) + room
        self.update(QRect(floor(left), 0, ceil(right - left) + 1, self.height()))
        for plate in (self._plate(0, old), self._plate(1, old), self._plate(0, new), self._plate(1, new)):
            self.update(plate.toAlignedRect().adjusted(-3, -3, 3, 3))
        self.wiped.emit(line)

    # --- hands and keys

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Take hold of the line; beside it of the picture, where that can move."""
        at = event.position()
        near = abs(at.x() - self._line_x()) <= RACK_TARGET / 2
        if event.button() == Qt.MouseButton.LeftButton and self.mips and (near or self.view.is_fitted):
            self._holds = True
            self._wipe_under(at)
        else:
            super().mousePressEvent(event)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Drag what is held."""
        if self._holds:
            self._wipe_under(event.position())
            return
        super().mouseMoveEvent(event)
        if self.mips is not None and self._dragged_from is None:
            near = abs(event.position().x() - self._line_x()) <= RACK_TARGET / 2
            if near or self.view.is_fitted:
                self.setCursor(Qt.CursorShape.SplitHCursor)
            else:
                self._set_cursor()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Let go."""
        self._holds = False
        super().mouseReleaseEvent(event)

    def _wipe_under(self, at: QPointF) -> None:
        if self.mips is not None:
            left, right = self._seen_left_and_right()
            self.wipe_to((at.x() - left) / max(1.0, right - left))

    def take_key(self, event: QKeyEvent) -> bool:
        """Arrows, Home and End move the line; Space turns to the other day."""
        key = Qt.Key(event.key())
        held = event.modifiers() & Qt.KeyboardModifier.ShiftModifier
        if key in (Qt.Key.Key_Left, Qt.Key.Key_Right) and not held and self.hasFocus():
            self.wipe_to(self.line + (STEP if key == Qt.Key.Key_Right else -STEP))
        elif key == Qt.Key.Key_Home and self.hasFocus():
            self.wipe_to(0.0)
        elif key == Qt.Key.Key_End and self.hasFocus():
            self.wipe_to(1.0)
        elif key == Qt.Key.Key_Space:
            self.wipe_to(1.0 if self.line < 0.5 else 0.0)
        elif key in (Qt.Key.Key_1, Qt.Key.Key_2, Qt.Key.Key_3, Qt.Key.Key_4):
            return True  # no layers here
        else:
            return super().take_key(event)
        return True

    # --- painting

    def _line_x(self) -> float:
        """It stays where it is on the screen while the pictures below are moved or enlarged."""
        left, right = self._seen_left_and_right()
        return left + self.line * (right - left)

    def _seen_left_and_right(self) -> tuple[float, float]:
        width = 1 if self.mips is None else self.mips.size[0]
        left, right = self.view.to_window(0, 0)[0], self.view.to_window(width, 0)[0]
        return max(0.0, left), min(float(self.width()), right)

    def _paint_over(self, painter: QPainter) -> None:
        if self.earlier is None or self.mips is None:
            return
        x = self._line_x()
        self._paint_earlier_part(painter, x)
        if self.places_shown:
            self._paint_places(painter)
        self._paint_line(painter, x)

    def _paint_earlier_part(self, painter: QPainter, x: float) -> None:
        if self.earlier is None:
            return
        painter.save()
        painter.setClipRect(QRectF(0, 0, x, self.height()), Qt.ClipOperation.IntersectClip)
        self._paint_earlier(painter, self.earlier)
        painter.restore()

    def _paint_places(self, painter: QPainter) -> None:
        """Grown in a plain thin line, vanished dashed; each with its word, so that grey tells them apart."""
        to_window = QTransform(self.view.zoom, 0, 0, self.view.zoom, *self.view.to_window(0, 0))
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, True)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        dashed = QPen(VANISHED, 3.0)
        dashed.setDashPattern([3.0, 2.0])
        for outlines, pens in (
            (self._grown, (QPen(DARK, 3.0), QPen(GROWN, 1.5))),
            (self._vanished, (QPen(DARK, 5.0), dashed)),
        ):
            for outline in outlines:
                for pen in pens:
                    painter.setPen(pen)
                    painter.drawPolygon(to_window.map(outline))
        for words, colour, outlines in (
            (self.tr("grew"), GROWN, self._grown[:MOST_WORDS]),
            (self.tr("vanished"), VANISHED, self._vanished[:MOST_WORDS]),
        ):
            for outline in outlines:
                middle = to_window.map(outline).boundingRect().center()
                paint_plate(painter, middle, words, self._bold(), colour)

    def _paint_line(self, painter: QPainter, x: float) -> None:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, True)
        top, bottom = self._seen_top_and_bottom()
        for pen in (QPen(DARK, 5.0), QPen(LIGHT, 2.0)):
            painter.setPen(pen)
            painter.drawLine(QPointF(x, top), QPointF(x, bottom))
        grip = QRectF(x - GRIP[0] / 2, (top + bottom - GRIP[1]) / 2, *GRIP)
        painter.setPen(QPen(DARK, 1.5))
        painter.setBrush(LIGHT)
        painter.drawRoundedRect(grip, GRIP[0] / 2, GRIP[0] / 2)
        painter.setPen(QPen(DARK, 1.5))
        for rise in (-6, 0, 6):
            painter.drawLine(grip.center() + QPointF(-3, rise), grip.center() + QPointF(3, rise))
        for side in (0, 1):
            plate = self._plate(side, x)
            if plate.left() >= 0 and plate.right() <= self.width():
                paint_plate(painter, plate.center(), self.words[side], self._bold(), LIGHT)

    def _seen_top_and_bottom(self) -> tuple[float, float]:
        height = 1 if self.mips is None else self.mips.size[1]
        return max(0.0, self.view.to_window(0, 0)[1]), min(
            float(self.height()), self.view.to_window(0, height)[1]
        )

    def _plate(self, side: int, x: float) -> QRectF:
        """Where the word of a day stands: at the foot, on its own side of the line."""
        size = plate_size(self.words[side], self._bold())
        _, bottom = self._seen_top_and_bottom()
        left = x - Space.M - size.width() if side == 0 else x + Space.M
        return QRectF(QPointF(left, bottom - Space.M - size.height()), size)

    def _bold(self) -> QFont:
        bold = QFont(self.font())
        bold.setBold(True)
        return bold

    def _paint_earlier(self, painter: QPainter, mips: Mips) -> None:
        view = self.view
        image = mips.levels[level_for(view.zoom * self.devicePixelRatioF(), len(mips.levels))]
        to_window = QTransform(view.zoom, 0, 0, view.zoom, *view.to_window(0, 0))
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform, view.zoom < 4)
        painter.setTransform(self._laid * to_window)
        painter.drawImage(QRectF(0, 0, *mips.size), image, QRectF(image.rect()))
