"""Layer paint: the layers of a picture drawn at any zoom, fast enough for each frame.

In    `Layers`, which of them are on, a `Viewport`
Out   canopy outline, gaps, cells, suspects painted in window coordinates
Not   making the shapes (`layers.py`)

Each layer is told by line, pattern and word as well as by colour (Okabe & Ito 2008), and each light line lies
on a dark one, so that it is seen on any leaf: canopy a plain line, gaps hatched, cells a grid with numbers,
suspects dashed rings with a number and a word.
"""

from collections.abc import Sequence
from functools import lru_cache

from PySide6.QtCore import QCoreApplication, QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QFont, QFontMetricsF, QImage, QPainter, QPen, QPolygonF, QTransform

from gui.photo.layers import CANOPY, CELLS, GAPS, SETTLED, SUSPECTS, Layer, Layers, Mark, Shape
from gui.photo.plates import DARK, paint_plate, place_beside, plate_size
from gui.photo.viewport import Viewport

__all__ = ["paint_layers"]

FINE_FROM = 3.0  # window pixels per mm from which the finer outline is drawn
ROOM_AROUND_A_NUMBER = 12.0  # window pixels that a cell must be wider than its number


def paint_layers(
    painter: QPainter, layers: Layers, shown: frozenset[Layer], view: Viewport, font: QFont
) -> None:
    """Draws the layers that are switched on, in window coordinates, and only what can be seen."""
    to_window = QTransform(view.zoom, 0, 0, view.zoom, *view.to_window(0, 0))
    seen = QRectF(*view.to_picture(0, 0), view.window[0] / view.zoom, view.window[1] / view.zoom)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, True)
    if Layer.GAPS in shown:
        _paint_gaps(painter, layers.gaps, to_window, seen)
    if Layer.CANOPY in shown:
        _paint_canopy(painter, layers, to_window, seen, view.zoom)
    if Layer.CELLS in shown:
        _paint_cells(painter, layers, to_window, seen, font, view.zoom)
    if Layer.SUSPECTS in shown:
        _paint_rings(painter, layers, to_window, seen, font)


def _draw(
    painter: QPainter, lines: Sequence[QPolygonF], colour: QColor, passes: Sequence[tuple[float, float]]
) -> None:
    """Closed lines, several times one pixel wide beside each other.

    Qt has a fast path for lines of one pixel: five such passes take 5 ms where one line of 3 px takes 25
    (1,400 x 900 window, 1,200 points).
    """
    painter.setPen(QPen(colour, 1.0 / painter.device().devicePixelRatioF()))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    for right, down in passes:
        painter.translate(right, down)
        for line in lines:
            painter.drawPolygon(line)
        painter.translate(-right, -down)


AROUND = ((0.0, -1.3), (1.2, 0.7), (-1.2, 0.7))
MIDDLE = ((-0.3, -0.3), (0.3, 0.3))
WIDE = ((-0.6, -0.6), (0.6, -0.6), (0.0, 0.7))
WIDE_AROUND = ((0.0, -2.2), (1.9, 1.1), (-1.9, 1.1))


def _paint_canopy(
    painter: QPainter, layers: Layers, to_window: QTransform, seen: QRectF, zoom: float
) -> None:
    coarse = zoom * layers.scale < FINE_FROM
    lines = [
        to_window.map(shape.line)
        for shape in (layers.coarse if coarse else layers.fine)
        if shape.bounds.intersects(seen)
    ]
    _draw(painter, lines, DARK, AROUND)
    _draw(painter, lines, CANOPY, MIDDLE)


def _paint_gaps(painter: QPainter, gaps: Sequence[Shape], to_window: QTransform, seen: QRectF) -> None:
    lines = [to_window.map(shape.line) for shape in gaps if shape.bounds.intersects(seen)]
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QBrush(_hatching()))
    for line in lines:
        painter.drawPolygon(line)
    _draw(painter, lines, DARK, WIDE_AROUND)
    _draw(painter, lines, GAPS, WIDE)


@lru_cache(maxsize=1)
def _hatching() -> QImage:
    """Orange and dark stripes at 45 degrees with clear air between them; 14 window pixels a turn."""
    image = QImage(14, 14, QImage.Format.Format_ARGB32_Premultiplied)
    image.fill(Qt.GlobalColor.transparent)
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, True)
    for colour, shift in ((DARK, 1.5), (GAPS, 0.0)):
        painter.setPen(QPen(colour, 2.0))
        for start in (-14, 0, 14):
            painter.drawLine(QPointF(start + shift, 14), QPointF(start + 14 + shift, 0))
    painter.end()
    return image


def _paint_cells(
    painter: QPainter, layers: Layers, to_window: QTransform, seen: QRectF, font: QFont, zoom: float
) -> None:
    lines = [to_window.map(line) for line in layers.grid]
    for pen, smooth in ((QPen(DARK, 3.0), False), (QPen(CELLS, 1.0), True)):
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, smooth)
        painter.setPen(pen)
        for line in lines:
            painter.drawLine(line)
    small = QFont(font)
    small.setPointSizeF(0.85 * font.pointSizeF())
    room = QFontMetricsF(small).horizontalAdvance("100") + ROOM_AROUND_A_NUMBER
    for cell in layers.cells:
        if cell.width * zoom >= room and seen.contains(cell.place):
            paint_plate(painter, to_window.map(cell.place), cell.text, small, CELLS)


def _paint_rings(painter: QPainter, layers: Layers, to_window: QTransform, seen: QRectF, font: QFont) -> None:
    bold = QFont(font)
    bold.setBold(True)
    here = [(mark, to_window.map(ring.line)) for mark, ring in layers.rings if ring.bounds.intersects(seen)]
    for mark, line in here:
        dashed = QPen(_ring_colour(mark), 3.0)
        dashed.setDashPattern([1.0, 2.0] if mark.settled else [3.0, 2.0])
        painter.setBrush(Qt.BrushStyle.NoBrush)
        for pen in (QPen(DARK, 6.0), dashed):
            painter.setPen(pen)
            painter.drawPolygon(line)
    room = to_window.mapRect(seen)
    boxes = [line.boundingRect() for _, line in here]
    plates: list[QRectF] = []
    for number, (mark, _) in enumerate(here):
        text = QCoreApplication.translate("Layers", "{number} {word}").format(
            number=mark.number, word=mark.word
        )
        others = boxes[:number] + boxes[number + 1 :]
        plates.append(place_beside(boxes[number], plate_size(text, bold), room, others + plates))
        paint_plate(painter, plates[-1].center(), text, bold, _ring_colour(mark))


def _ring_colour(mark: Mark) -> QColor:
    return SETTLED if mark.settled else SUSPECTS
