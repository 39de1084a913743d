"""Plates: a word on a dark plate over a picture, readable on any leaf.

In    a text, where it belongs in the window, what it must not cover
Out   the plate painted; `place_beside`, where a plate is whole and hides nothing
Not   what is said where (`layers.py`)
"""

from collections.abc import Sequence
from functools import lru_cache
from math import ceil

from PySide6.QtCore import QPointF, QRectF, QSizeF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QImage, QPainter

__all__ = ["DARK", "paint_plate", "place_beside", "plate_size"]

DARK = QColor(12, 16, 14, 215)
AWAY = 4.0  # window pixels between a shape and its plate


def plate_size(text: str, font: QFont) -> QSizeF:
    """Width and height of a plate, window pixels."""
    metrics = QFontMetricsF(font)
    return QSizeF(ceil(metrics.horizontalAdvance(text)) + 8, ceil(metrics.height()))


def place_beside(box: QRectF, size: QSizeF, room: QRectF, taken: Sequence[QRectF]) -> QRectF:
    """Where a plate of this size says what `box` is: above it, else below, right or left; inside `room`.

    The first of these places that covers none of `taken` is chosen; where all do, the first.
    """
    across, down = size.width(), size.height()
    x, y = box.center().x() - across / 2, box.center().y() - down / 2
    wanted = (
        QPointF(x, box.top() - AWAY - down),
        QPointF(x, box.bottom() + AWAY),
        QPointF(box.right() + AWAY, y),
        QPointF(box.left() - AWAY - across, y),
    )
    places = [_held(QRectF(place, size), room) for place in wanted]
    free = (place for place in places if not any(place.intersects(other) for other in (box, *taken)))
    return next(free, places[0])


def _held(plate: QRectF, room: QRectF) -> QRectF:
    """The plate pushed back into the room, as far as it is too far out."""
    x = max(room.left(), min(plate.left(), room.right() - plate.width()))
    y = max(room.top(), min(plate.top(), room.bottom() - plate.height()))
    return QRectF(QPointF(x, y), plate.size())


def paint_plate(painter: QPainter, middle: QPointF, text: str, font: QFont, ink: QColor) -> None:
    """Paint the plate around this point of the window."""
    plate = _plate(text, font.toString(), ink.rgba(), painter.device().devicePixelRatioF())
    size = plate.deviceIndependentSize()
    painter.drawImage(
        QPointF(round(middle.x() - size.width() / 2), round(middle.y() - size.height() / 2)), plate
    )


@lru_cache(maxsize=512)
def _plate(text: str, font_name: str, ink: int, ratio: float) -> QImage:
    """Kept, because 72 of them are painted in each frame."""
    font = QFont()
    font.fromString(font_name)
    size = plate_size(text, font)
    width, height = size.width(), size.height()
    image = QImage(round(width * ratio), round(height * ratio), QImage.Format.Format_ARGB32_Premultiplied)
    image.setDevicePixelRatio(ratio)
    image.fill(Qt.GlobalColor.transparent)
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, True)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(DARK)
    painter.drawRoundedRect(QRectF(0, 0, width, height), 4, 4)
    painter.setFont(font)
    painter.setPen(QColor.fromRgba(ink))
    painter.drawText(QRectF(0, 0, width, height), Qt.AlignmentFlag.AlignCenter, text)
    painter.end()
    return image
