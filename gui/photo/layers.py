"""Layers: what can be drawn over a tray's picture: canopy outline, gaps, cells, suspects.

In    tissue labels of the top view, cells in %, gaps and suspects in mm; for a photo the way there
Out   `Layers`: shapes in picture coordinates, made once in a worker
Not   drawing them (`layerpaint.py`), the picture below them (`pictures.py`), measuring (`vision`)
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from enum import StrEnum
from math import cos, pi, sin
from typing import TYPE_CHECKING, Protocol

from PySide6.QtCore import QLineF, QPointF, QRectF
from PySide6.QtGui import QColor, QPolygonF

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    from vision.tissue import Labels

__all__ = ["Layer", "Layers", "Mark", "Outlined", "Shape", "make_layers"]

PX_PER_MM = 2.0
TOP_PX = (1016.0, 508.0)
FINE_CM2, COARSE_CM2 = 0.1, 0.2  # smaller specks of canopy would only be noise as an outline
FINE_MM, COARSE_MM = 0.4, 1.2  # how far a simplified outline may lie from the true one

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

    def __init__(self, homography: "NDArray[np.float64] | None", inner_mm: tuple[float, float]) -> None:
        self.homography = homography
        self._per_mm = (TOP_PX[0] / inner_mm[0], TOP_PX[1] / inner_mm[1])

    def points(self, points: Iterable[Sequence[float]], *, in_mm: bool = False) -> list[QPointF]:
        import numpy as np

        flat = np.asarray(list(points), dtype=np.float64).reshape(-1, 2)
        if in_mm:
            flat = flat * self._per_mm
        if self.homography is not None and len(flat):
            seen = np.column_stack((flat, np.ones(len(flat)))) @ self.homography.T
            flat = seen[:, :2] / seen[:, 2:]
        return [QPointF(x, y) for x, y in flat.tolist()]

    def shape(self, points: Iterable[Sequence[float]], *, in_mm: bool = False) -> Shape:
        line = QPolygonF(self.points(points, in_mm=in_mm))
        return Shape(line=line, bounds=line.boundingRect())

    def px_per_mm(self) -> float:
        left, right = self.points([(254.0, 254.0), (762.0, 254.0)])
        return max(0.05, QLineF(left, right).length() / 508.0 * self._per_mm[0])


def make_layers(
    labels: "Labels | None",
    *,
    cells: Sequence[Sequence[float]] | None = None,
    gaps: Sequence[Outlined] = (),
    marks: Sequence[Mark] = (),
    homography: "NDArray[np.float64] | None" = None,
    inner_mm: tuple[float, float] = (508.0, 254.0),
) -> Layers:
    """Shapes of every layer.

    Parameters
    ----------
    homography : from top view to picture; None: it is the top view.
    inner_mm : long and short side of the inner area, that all mm rest on.
    """
    way = _Way(homography, inner_mm)
    fine, coarse = ((), ()) if labels is None else _outlines(labels, way)
    return Layers(
        fine=fine,
        coarse=coarse,
        gaps=tuple(way.shape(gap.outline_mm, in_mm=True) for gap in gaps if len(gap.outline_mm) > 2),
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
    return way.shape(((mark.x_mm + radius * cos(t), mark.y_mm + radius * sin(t)) for t in steps), in_mm=True)
