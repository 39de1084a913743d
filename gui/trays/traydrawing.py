"""Tray drawing: one kind of tray from above and from the side, with its measures on it.

In    a `TrayType`
Out   a widget that draws it; `draw_measure`, a measured line for other drawings
Not   asking for the measures (`traytypes.py`), the station (`stationdrawing.py`)
"""

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from data.growing.conditions import TrayType
from gui.language.spoken import in_figures
from gui.style.palette import tokens_now

__all__ = ["TrayDrawing", "draw_measure"]

TICK = 4.0
BESIDE = 0.6  # of a line of text, from the tray to a measure beside it


class TrayDrawing(QWidget):
    """Outer rim, inner area and the height of the rim, to scale."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._kind: TrayType | None = None
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(self.tr("Drawing of the tray with its measures"))

    def sizeHint(self) -> QSize:
        """Room for a tray twice as long as wide and its numbers."""
        letter = self.fontMetrics().height()
        return QSize(letter * 17, letter * 14)

    def minimumSizeHint(self) -> QSize:
        """Still readable."""
        letter = self.fontMetrics().height()
        return QSize(letter * 7, letter * 9)

    def show_kind(self, kind: TrayType | None) -> None:
        """Draw these measures; None: nothing that could be drawn."""
        self._kind = kind
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """From above, below it from the side."""
        kind = self._kind
        if kind is None:
            return
        t = tokens_now()
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        letter = float(self.fontMetrics().height())
        side = letter * BESIDE + self._widest_number(kind) + 2 * TICK
        deep = kind.outer_short_mm + kind.rim_height_mm
        mm = min(
            (self.width() - 2 * side) / kind.outer_long_mm,
            (self.height() - letter * 6) / max(deep, 1.0),
        )
        if mm <= 0:
            return
        wide, high = kind.outer_long_mm * mm, kind.outer_short_mm * mm
        outer = QRectF((self.width() - wide) / 2, letter * 1.8, wide, high)
        inner = QRectF(0, 0, kind.inner_long_mm * mm, kind.inner_short_mm * mm)
        inner.moveCenter(outer.center())
        painter.setPen(QPen(QColor(t.ink), 1.2))
        painter.setBrush(QColor(t.raised))
        painter.drawRect(outer)
        painter.setBrush(QColor(t.ground))
        painter.drawRect(inner)
        self._draw_lengths(painter, kind, outer, inner)
        self._draw_side(painter, kind, mm, outer)

    def _widest_number(self, kind: TrayType) -> float:
        """px of the numbers that stand beside the tray."""
        numbers = (kind.outer_short_mm, kind.inner_short_mm, kind.rim_height_mm)
        return max(QFontMetricsF(self.font()).horizontalAdvance(in_figures(one)) for one in numbers)

    def _draw_lengths(self, painter: QPainter, kind: TrayType, outer: QRectF, inner: QRectF) -> None:
        """Outer lengths above and to the left, inner ones below and to the right."""
        t = tokens_now()
        letter = float(self.fontMetrics().height())
        soft, ink = QColor(t.soft_ink), QColor(t.ink)
        above, beside = letter * 0.5, letter * BESIDE
        draw_measure(
            painter, outer.topLeft() - QPointF(0, above), outer.topRight() - QPointF(0, above),
            in_figures(kind.outer_long_mm), ink,
        )  # fmt: skip
        draw_measure(
            painter, outer.bottomLeft() - QPointF(beside, 0), outer.topLeft() - QPointF(beside, 0),
            in_figures(kind.outer_short_mm), ink,
        )  # fmt: skip
        low, right = outer.bottom() + letter * 1.5, outer.right() + beside
        draw_measure(
            painter, QPointF(inner.left(), low), QPointF(inner.right(), low),
            in_figures(kind.inner_long_mm), soft,
        )  # fmt: skip
        draw_measure(
            painter, QPointF(right, inner.bottom()), QPointF(right, inner.top()),
            in_figures(kind.inner_short_mm), soft, after=True,
        )  # fmt: skip

    def _draw_side(self, painter: QPainter, kind: TrayType, mm: float, above: QRectF) -> None:
        """The tray on the bench, seen from the long side."""
        t = tokens_now()
        letter = float(self.fontMetrics().height())
        rim = above.bottom() + letter * 2.4
        bench = rim + kind.rim_height_mm * mm
        lip = max(0.0, (kind.outer_long_mm - kind.inner_long_mm) / 2 * mm)
        painter.setPen(QPen(QColor(t.ink), 1.6))
        left, right = above.left() + lip, above.right() - lip
        painter.drawPolyline(
            [
                QPointF(above.left(), rim), QPointF(left, rim), QPointF(left + lip / 2, bench),
                QPointF(right - lip / 2, bench), QPointF(right, rim), QPointF(above.right(), rim),
            ]
        )  # fmt: skip
        painter.setPen(QPen(QColor(t.line), 1.0))
        painter.drawLine(QPointF(above.left() - letter * 2, bench + 1), QPointF(above.right(), bench + 1))
        aside = above.left() - letter * BESIDE
        draw_measure(
            painter, QPointF(aside, bench), QPointF(aside, rim), in_figures(kind.rim_height_mm), QColor(t.ink)
        )


def draw_measure(
    painter: QPainter, start: QPointF, end: QPointF, words: str, ink: QColor, *, after: bool = False
) -> None:
    """A line with end marks, its number above; where it stands upright to the left, or right with `after`."""
    painter.setPen(QPen(ink, 1.0))
    painter.drawLine(start, end)
    upright = abs(end.x() - start.x()) < abs(end.y() - start.y())
    tick = QPointF(TICK, 0) if upright else QPointF(0, TICK)
    for point in (start, end):
        painter.drawLine(point - tick, point + tick)
    high = float(painter.fontMetrics().height())
    wide = painter.fontMetrics().horizontalAdvance(words) + 4.0
    place = (start + end) / 2
    if upright:
        room = QRectF(place.x() - wide - TICK, place.y() - high / 2, wide, high)
        side = Qt.AlignmentFlag.AlignRight
        if after:
            room.moveLeft(place.x() + TICK)
            side = Qt.AlignmentFlag.AlignLeft
        painter.drawText(room, side | Qt.AlignmentFlag.AlignVCenter, words)
    else:
        room = QRectF(place.x() - wide / 2, place.y() - high - 1, wide, high)
        painter.drawText(room, Qt.AlignmentFlag.AlignCenter, words)
