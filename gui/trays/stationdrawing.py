"""Station drawing: the tray and its four cards from above, the distances, and the card that must move.

In    a `StationPlan`; a `StationCheck`, where one was made
Out   a widget that draws them
Not   words for the check (`data/photos/stationwords.py`), printing cards (`paper/stationsheet.py`)
"""

import math

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from data.photos.station import StationPlan
from gui.language.spoken import in_figures
from gui.style.palette import tokens_now
from gui.trays.traydrawing import draw_measure
from vision.stationcheck import CardPlace, StationCheck

__all__ = ["StationDrawing"]

ARROW_PX = 34.0


class StationDrawing(QWidget):
    """To scale; near is below, as one stands before the tray."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._plan: StationPlan | None = None
        self._check: StationCheck | None = None
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(self.tr("Drawing of the station with its distances"))

    def sizeHint(self) -> QSize:
        """Room for all numbers."""
        letter = self.fontMetrics().height()
        return QSize(letter * 22, letter * 22)

    def minimumSizeHint(self) -> QSize:
        """Still readable."""
        letter = self.fontMetrics().height()
        return QSize(letter * 15, letter * 15)

    def show_station(self, plan: StationPlan, check: StationCheck | None = None) -> None:
        """Draw the places of the cards, and what a check said of them."""
        self._plan, self._check = plan, check
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Tray, cards, distances."""
        plan = self._plan
        if plan is None:
            return
        t = tokens_now()
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        letter = float(self.fontMetrics().height())
        wide = max(plan.outer_long_mm, plan.across_mm + plan.card_mm)
        high = max(plan.outer_short_mm, plan.deep_mm + plan.card_mm)
        mm = min((self.width() - letter * 4) / wide, (self.height() - letter * 5) / high)
        if mm <= 0:
            return
        middle = QPointF(self.width() / 2 + letter * 1.2, self.height() / 2)
        tray = QRectF(0, 0, plan.outer_long_mm * mm, plan.outer_short_mm * mm)
        tray.moveCenter(middle)
        painter.setPen(QPen(QColor(t.soft_ink), 1.2))
        painter.setBrush(QColor(t.raised))
        painter.drawRect(tray)
        places = [middle + QPointF(x * mm, -y * mm) for x, y in plan.centres]
        painter.setPen(QPen(QColor(t.soft_ink), 1.0, Qt.PenStyle.DashLine))
        painter.drawLine(places[3], places[1])
        for number, place in enumerate(places):
            self._draw_card(painter, number, place, plan, mm)
        self._draw_distances(painter, plan, mm, places, letter)
        moved = None if self._check is None else self._check.moved
        if moved is not None:
            _draw_way(painter, moved, places[moved.number])

    def _draw_card(
        self, painter: QPainter, number: int, place: QPointF, plan: StationPlan, mm: float
    ) -> None:
        t = tokens_now()
        check = self._check
        wrong = check is not None and check.moved is not None and check.moved.number == number
        missing = check is not None and number in check.missing
        card = QRectF(0, 0, plan.card_mm * mm, plan.card_mm * mm)
        mark = QRectF(0, 0, plan.mark_mm * mm, plan.mark_mm * mm)
        for square in (card, mark):
            square.moveCenter(place)
        style = Qt.PenStyle.DashLine if missing else Qt.PenStyle.SolidLine
        painter.setPen(QPen(QColor(t.alarm if wrong or missing else t.ink), 2.5 if wrong else 1.2, style))
        painter.setBrush(QColor(t.sheet))
        painter.drawRect(card)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(t.line if missing else t.ink))
        painter.drawRect(mark)
        painter.setPen(QColor(t.ink if missing else t.sheet))
        painter.drawText(mark, Qt.AlignmentFlag.AlignCenter, str(number))

    def _draw_distances(
        self, painter: QPainter, plan: StationPlan, mm: float, places: list[QPointF], letter: float
    ) -> None:
        t = tokens_now()
        half = plan.card_mm * mm / 2
        ink = QColor(t.ink)
        above = QPointF(0, half + letter * 0.4)
        draw_measure(painter, places[0] - above, places[1] - above, in_figures(plan.across_mm), ink)
        left = min(places[0].x() - half, places[0].x() - plan.inset_mm * mm) - letter * 0.5
        far, near = QPointF(left, places[0].y()), QPointF(left, places[3].y())
        draw_measure(painter, near, far, in_figures(plan.deep_mm), ink)
        between = (places[1] + places[3]) / 2
        words = in_figures(plan.diagonal_mm, ".0f")
        wide = self.fontMetrics().horizontalAdvance(words) + 12
        room = QRectF(0, 0, wide, letter * 1.2)
        room.moveCenter(between)
        painter.fillRect(room, QColor(t.raised))
        painter.setPen(ink)
        painter.drawText(room, Qt.AlignmentFlag.AlignCenter, words)
        painter.setPen(QColor(t.soft_ink))
        foot = QRectF(0, places[3].y() + half + letter * 0.3, self.width(), letter * 1.3)
        foot.moveLeft(between.x() - self.width() / 2)
        painter.drawText(foot, Qt.AlignmentFlag.AlignCenter, self.tr("near side: you stand here (in mm)"))


def _draw_way(painter: QPainter, moved: CardPlace, place: QPointF) -> None:
    """An arrow the way the card goes back."""
    way = QPointF(-moved.right_mm, moved.far_mm)
    length = math.hypot(way.x(), way.y())
    way = way / length * ARROW_PX
    painter.setPen(QPen(QColor(tokens_now().alarm), 3.0, Qt.PenStyle.SolidLine, Qt.PenCapStyle.RoundCap))
    tip = place + way * 1.6
    painter.drawLine(place + way * 0.6, tip)
    angle = math.atan2(way.y(), way.x())
    for side in (2.6, -2.6):
        painter.drawLine(tip, tip + QPointF(math.cos(angle + side), math.sin(angle + side)) * 10)
