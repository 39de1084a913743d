"""Layers: what can be drawn over a tray's picture: canopy outline, gaps, cells, suspects.

In    tissue labels of the top view, cells in %, gaps and suspects in mm; for a photo the way there
Out   `Layers`: shapes in picture coordinates, made once in a worker; `paint_layers` draws them at any zoom
Not   the picture below them (`pictures.py`), measuring (`vision`)

Each layer is told by line, pattern and word as well as by colour (Okabe & Ito 2008), and each light line lies
on a dark one, so that it is seen on any leaf: canopy a plain line, gaps hatched, cells a grid with numbers,
suspects dashed rings with a number and a word.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from enum import StrEnum
from functools import lru_cache
from math import cos, pi, sin
from typing import TYPE_CHECKING, Protocol

from PySide6.QtCore import QCoreApplication, QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QFont, QFontMetricsF, QImage, QPainter, QPen, QPolygonF, QTransform

from gui.plates import DARK, paint_plate, place_beside, plate_size
from gui.viewport import Viewport

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    from vision.tissue import Labels

__all__ = ["Layer", "Layers", "Mark", "make_layers", "paint_layers"]

PX_PER_MM = 2.0
FINE_CM2, COARSE_CM2 = 0.1, 0.2  # smaller specks of canopy would only be noise as an outline
FINE_MM, COARSE_MM = 0.4, 1.2  # how far a simplified outline may lie from the true one
FINE_FROM = 3.0  # window pixels per mm from which the finer outline is drawn
ROOM_AROUND_A_NUMBER = 12.0  # window pixels that a cell must be wider than its number

CANOPY = QColor("#56B4E9")
GAPS = QColor("#E69F00")
CELLS = QColor(255, 255, 255, 235)
SUSPECTS = QColor("#F0E442")
SETTLED = QColor("#FFFFFF")


class Layer(StrEnum):
    """What can be switched on and off, in the order of the keys 1 to 4."""

    CANOPY = "canopy"
    GAPS = "gaps"
    CELLS = "cells"
    SUSPECTS = "suspects"


class Outlined(Protocol):
    """A gap, as measured or as kept."""

    @property
    def outline_mm(self) -> Sequence[tuple[float, float]]:
        """Its outer outline, (x, y)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Mark:
    """A suspect as the picture shows it: its number in the list, a place in mm and a word."""

    number: int
    x_mm: float
    y_mm: float
    radius_mm: float
    word: str
    settled: bool = False  # said to be no mold


@dataclass(frozen=True, slots=True, kw_only=True)
class Shape:
    """A closed line in picture coordinates, with the rectangle around it."""

    line: QPolygonF
    bounds: QRectF


@dataclass(frozen=True, slots=True, kw_only=True)
class CellText:
    """The coverage of one cell and where it stands."""

    text: str
    place: QPointF
    width: float  # of the cell, in picture pixels


@dataclass(frozen=True, slots=True, kw_only=True)
class Layers:
    """All layers of one picture; empty ones are allowed."""

    fine: tuple[Shape, ...] = ()
    coarse: tuple[Shape, ...] = ()
    gaps: tuple[Shape, ...] = ()
    grid: tuple[QLineF, ...] = ()
    cells: tuple[CellText, ...] = ()
    rings: tuple[tuple[Mark, Shape], ...] = ()
    scale: float = PX_PER_MM  # picture pixels per mm, about


class _Way:
    """From the top view to the picture that is shown: itself, or the photo by a homography."""

    def __init__(self, homography: "NDArray[np.float64] | None") -> None:
        self.homography = homography

    def points(self, points: Iterable[Sequence[float]], scale: float = 1.0) -> list[QPointF]:
        import numpy as np

        flat = np.asarray(list(points), dtype=np.float64).reshape(-1, 2) * scale
        if self.homography is not None and len(flat):
            seen = np.column_stack((flat, np.ones(len(flat)))) @ self.homography.T
            flat = seen[:, :2] / seen[:, 2:]
        return [QPointF(x, y) for x, y in flat.tolist()]

    def shape(self, points: Iterable[Sequence[float]], scale: float = 1.0) -> Shape:
        line = QPolygonF(self.points(points, scale))
        return Shape(line=line, bounds=line.boundingRect())

    def px_per_mm(self) -> float:
        left, right = self.points([(254.0, 254.0), (762.0, 254.0)])
        return max(0.05, QLineF(left, right).length() / 254.0)


def make_layers(
    labels: "Labels | None",
    *,
    cells: Sequence[Sequence[float]] | None = None,
    gaps: Sequence[Outlined] = (),
    marks: Sequence[Mark] = (),
    homography: "NDArray[np.float64] | None" = None,
) -> Layers:
    """Shapes of every layer; `homography` leads from top view to picture (None: it is the top view)."""
    way = _Way(homography)
    fine, coarse = ((), ()) if labels is None else _outlines(labels, way)
    return Layers(
        fine=fine,
        coarse=coarse,
        gaps=tuple(way.shape(gap.outline_mm, PX_PER_MM) for gap in gaps if len(gap.outline_mm) > 2),
        grid=_grid(way) if cells else (),
        cells=_cell_texts(cells, way) if cells else (),
        rings=tuple((mark, _ring(mark, way)) for mark in marks),
        scale=way.px_per_mm(),
    )


def _outlines(labels: "Labels", way: _Way) -> tuple[tuple[Shape, ...], tuple[Shape, ...]]:
    """Canopy outlines in two finenesses: a tray of seedlings has ten thousands of points."""
    import cv2
    import numpy as np

    from vision.tissue import canopy

    found, _ = cv2.findContours(canopy(labels).astype(np.uint8), cv2.RETR_LIST, cv2.CHAIN_APPROX_SIMPLE)
    fine: list[Shape] = []
    coarse: list[Shape] = []
    for least_cm2, step_mm, shapes in ((FINE_CM2, FINE_MM, fine), (COARSE_CM2, COARSE_MM, coarse)):
        for line in found:
            if cv2.contourArea(line) < least_cm2 * 100 * PX_PER_MM**2:
                continue
            simple = cv2.approxPolyDP(line, step_mm * PX_PER_MM, True)
            if len(simple) > 2:
                shapes.append(way.shape(simple.reshape(-1, 2) + 0.5))
    return tuple(fine), tuple(coarse)


def _grid(way: _Way) -> tuple[QLineF, ...]:
    across = [((0.0, k * 508 / 6), (1016.0, k * 508 / 6)) for k in range(7)]
    down = [((k * 1016 / 12, 0.0), (k * 1016 / 12, 508.0)) for k in range(13)]
    ends = way.points(point for line in across + down for point in line)
    return tuple(QLineF(start, end) for start, end in zip(ends[::2], ends[1::2], strict=True))


def _cell_texts(cells: Sequence[Sequence[float]], way: _Way) -> tuple[CellText, ...]:
    texts = []
    for row, shares in enumerate(cells):
        for column, share in enumerate(shares):
            x, y = (column + 0.5) * 1016 / 12, (row + 0.5) * 508 / 6
            place, beside = way.points([(x, y), (x + 1016 / 12, y)])
            width = QLineF(place, beside).length()
            texts.append(CellText(text=f"{share:.0f}", place=place, width=width))
    return tuple(texts)


def _ring(mark: Mark, way: _Way) -> Shape:
    steps = [2 * pi * k / 48 for k in range(48)]
    radius = max(mark.radius_mm, 6.0)
    return way.shape(((mark.x_mm + radius * cos(t), mark.y_mm + radius * sin(t)) for t in steps), PX_PER_MM)


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
