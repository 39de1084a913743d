"""Corner paint: the frame between four corners, their handles, and the loupe beside a finger.

In    places in the window; for the loupe the photo and its four corners, px of it
Out   painted
Not   where the corners are and what moves them (`cornerview.py`)
"""

from collections.abc import Sequence

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen, QPolygonF

from gui.photo.mips import Mips
from gui.style.palette import tokens_now

__all__ = ["Quad", "loupe_beside", "paint_frame", "paint_handle", "paint_loupe"]

Quad = tuple[tuple[float, float], ...]  # four points (x, y), px of the upright photo

LOUPE = 76.0  # radius of the loupe, window pixels
LIGHT, DARK = QColor("#F0E442"), QColor(12, 16, 14, 225)


def paint_frame(painter: QPainter, places: Sequence[QPointF]) -> None:
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


def paint_handle(painter: QPainter, place: QPointF, radius: float, *, chosen: bool) -> None:
    """A ring that leaves the corner itself free, with a cross in it; the chosen one is thicker."""
    painter.setBrush(QColor(255, 255, 255, 40))
    width = 4.0 if chosen else 2.0
    for pen in (QPen(DARK, width + 2.5), QPen(LIGHT, width)):
        painter.setPen(pen)
        painter.drawEllipse(place, radius, radius)
        painter.setBrush(Qt.BrushStyle.NoBrush)
    for pen in (QPen(DARK, 3.0), QPen(LIGHT, 1.0)):
        painter.setPen(pen)
        painter.drawLine(place - QPointF(7, 0), place + QPointF(7, 0))
        painter.drawLine(place - QPointF(0, 7), place + QPointF(0, 7))


def loupe_beside(finger: QPointF, window: QSize, reach: float) -> QPointF:
    """The middle of the loupe: beside the finger, and never outside the window."""
    away = LOUPE + reach + 10
    x = finger.x() + (away if finger.x() < window.width() / 2 else -away)
    y = finger.y() + (away if finger.y() < window.height() / 2 else -away)
    return QPointF(
        min(window.width() - LOUPE - 4, max(LOUPE + 4, x)),
        min(window.height() - LOUPE - 4, max(LOUPE + 4, y)),
    )


def paint_loupe(
    painter: QPainter, mips: Mips, level: int, middle: QPointF, zoom: float, corners: Quad, held: int
) -> None:
    """What lies under the finger, enlarged: `zoom` window pixels for one of the photo."""
    box = QRectF(middle.x() - LOUPE, middle.y() - LOUPE, 2 * LOUPE, 2 * LOUPE)
    painter.save()
    lens = QPainterPath()
    lens.addEllipse(box)
    painter.setClipPath(lens)
    painter.fillRect(box, QColor(tokens_now().ground))
    image = mips.levels[level]
    painter.drawImage(box, image, _around(corners[held], LOUPE / zoom, image.width() / mips.size[0]))
    _paint_sides(painter, middle, zoom, corners, held)
    painter.restore()
    painter.setBrush(Qt.BrushStyle.NoBrush)
    for pen in (QPen(DARK, 5.0), QPen(QColor("#FFFFFF"), 2.0)):
        painter.setPen(pen)
        painter.drawEllipse(box)


def _around(corner: tuple[float, float], half: float, shrunk: float) -> QRectF:
    x, y = corner
    return QRectF((x - half) * shrunk, (y - half) * shrunk, 2 * half * shrunk, 2 * half * shrunk)


def _paint_sides(painter: QPainter, middle: QPointF, zoom: float, corners: Quad, held: int) -> None:
    """The two sides that meet in the corner that is held."""
    here = QPointF(*corners[held])
    for other in (corners[held - 1], corners[(held + 1) % 4]):
        end = middle + (QPointF(*other) - here) * zoom
        for pen in (QPen(DARK, 3.0), QPen(LIGHT, 1.2)):
            painter.setPen(pen)
            painter.drawLine(middle, end)
