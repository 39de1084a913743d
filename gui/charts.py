"""Charts: lines over a whole-number axis, painted by ourselves: readable in grey and on paper.

In    `Line`s with points, names and the place of their word; what is marked
Out   a painted chart; each line has its own colour, dash and marker, named at its end
Not   what is shown (each screen), growth of a tray (`traysheet/growthchart.py`)
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from gui.language.spoken import in_figures
from gui.style.palette import Space, tokens_now
from gui.style.tokens import SERIES

__all__ = ["Line", "LineChart", "marker", "ring", "take_focus"]

DASHES: tuple[tuple[float, ...], ...] = ((), (5.0, 2.5), (1.5, 2.0), (6.0, 2.0, 1.0, 2.0))
SHARES = (0.0, 0.2, 0.4, 0.6, 0.8, 1.0)


@dataclass(frozen=True, slots=True, kw_only=True)
class Line:
    """One line of a chart."""

    name: str
    points: tuple[tuple[float, float], ...]


def marker(painter: QPainter, at: QPointF, series: int, size: float) -> None:
    """The marker of a series: round, square, triangle, diamond."""
    match series % 4:
        case 0:
            painter.drawEllipse(at, size, size)
        case 1:
            painter.drawRect(QRectF(at.x() - size, at.y() - size, 2 * size, 2 * size))
        case 2:
            points = [QPointF(0, -1.2), QPointF(1.1, 0.9), QPointF(-1.1, 0.9)]
            painter.drawPolygon(QPolygonF([at + point * size for point in points]))
        case _:
            points = [QPointF(0, -1.3), QPointF(1.3, 0), QPointF(0, 1.3), QPointF(-1.3, 0)]
            painter.drawPolygon(QPolygonF([at + point * size for point in points]))


def take_focus(chart: QWidget) -> None:
    """Let Tab stop at a chart: only there a screen reader tells its content in words."""
    chart.setFocusPolicy(Qt.FocusPolicy.TabFocus)


def ring(painter: QPainter, chart: QWidget) -> None:
    """Around the chart while it has the focus."""
    if chart.hasFocus():
        painter.setPen(QPen(QColor(tokens_now().accent), 2))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRoundedRect(QRectF(chart.rect()).adjusted(1, 1, -1, -1), 4, 4)


class LineChart(QWidget):
    """Shares (0-1) over counts, with a wanted share and a chosen count marked."""

    def __init__(self, up: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._across, self._up = "", up
        self._lines: tuple[Line, ...] = ()
        self._chosen: float | None = None
        self._wanted: float | None = None
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        take_focus(self)

    def sizeHint(self) -> QSize:
        """Wide enough for the names of lines."""
        height = self.fontMetrics().height()
        return QSize(26 * height, 15 * height)

    def minimumSizeHint(self) -> QSize:
        """Smaller it cannot be read."""
        height = self.fontMetrics().height()
        return QSize(18 * height, 11 * height)

    def show_lines(
        self, lines: Sequence[Line], *, chosen: float | None, wanted: float | None, words: str, across: str
    ) -> None:
        """Show these; `words` say the same to those who cannot see it."""
        self._lines, self._chosen, self._wanted, self._across = tuple(lines), chosen, wanted, across
        self.setAccessibleDescription(words)
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Axes, what is wanted and chosen, then the lines with their names."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        ring(painter, self)
        points = [point for line in self._lines for point in line.points]
        if not points:
            return
        metrics = QFontMetricsF(self.font())
        names = max(metrics.horizontalAdvance(line.name) for line in self._lines)
        left = metrics.horizontalAdvance("100 %") + Space.S
        plot = QRectF(
            left,
            metrics.height() * 1.6,
            self.width() - left - names - Space.L,
            self.height() - metrics.height() * 4.4,
        )
        least, most = min(x for x, _ in points), max(x for x, _ in points)

        def place(x: float, y: float) -> QPointF:
            return QPointF(
                plot.left() + plot.width() * (x - least) / max(most - least, 1),
                plot.bottom() - plot.height() * y,
            )

        self._draw_axes(painter, plot, least, most, place)
        self._draw_marks(painter, plot, place)
        self._draw_lines(painter, plot, place)

    def _draw_axes(
        self, painter: QPainter, plot: QRectF, least: float, most: float,
        place: Callable[[float, float], QPointF],
    ) -> None:  # fmt: skip
        t, metrics = tokens_now(), QFontMetricsF(self.font())
        soft = QColor(t.soft_ink)
        for share in SHARES:
            y = place(least, share).y()
            painter.setPen(QPen(QColor(t.line), 1))
            painter.drawLine(QPointF(plot.left(), y), QPointF(plot.right(), y))
            painter.setPen(soft)
            text = f"{share * 100:.0f} %"
            painter.drawText(
                QPointF(plot.left() - metrics.horizontalAdvance(text) - 6, y + metrics.ascent() / 2.6), text
            )
        step = _step(most - least, plot.width() / (metrics.horizontalAdvance("00") * 2.2))
        number = -(-least // step) * step
        while number <= most:
            x = place(number, 0).x()
            text = in_figures(number)
            painter.drawText(
                QPointF(x - metrics.horizontalAdvance(text) / 2, plot.bottom() + metrics.height()), text
            )
            number += step
        across = QRectF(
            plot.left(), plot.bottom() + metrics.height() * 1.3, plot.width(), metrics.height() * 1.4
        )
        painter.drawText(across, Qt.AlignmentFlag.AlignHCenter, self._across)
        painter.drawText(QPointF(0, metrics.ascent()), self._up)

    def _draw_marks(self, painter: QPainter, plot: QRectF, place: Callable[[float, float], QPointF]) -> None:
        t = tokens_now()
        if self._wanted is not None:
            y = place(0, self._wanted).y()
            painter.setPen(QPen(QColor(t.ink), 1, Qt.PenStyle.DashLine))
            painter.drawLine(QPointF(plot.left(), y), QPointF(plot.right(), y))
        if self._chosen is not None:
            x = place(self._chosen, 0).x()
            painter.setPen(QPen(QColor(t.accent), 2))
            painter.drawLine(QPointF(x, plot.top()), QPointF(x, plot.bottom()))

    def _draw_lines(self, painter: QPainter, plot: QRectF, place: Callable[[float, float], QPointF]) -> None:
        t, metrics = tokens_now(), QFontMetricsF(self.font())
        taken: list[float] = []
        for series, line in enumerate(self._lines):
            path = QPolygonF([place(x, y) for x, y in line.points])
            colour = QColor(SERIES[series])
            pen = QPen(colour, 2)
            if DASHES[series % 4]:
                pen.setDashPattern(DASHES[series % 4])
            painter.setPen(pen)
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawPolyline(path)
            painter.setPen(QPen(QColor(t.ink), 1))
            painter.setBrush(colour)
            for x, y in line.points:
                if x == self._chosen:
                    marker(painter, place(x, y), series, 5.0)
            end = path.at(path.count() - 1)
            marker(painter, end, series, 4.0)
            y = end.y() + metrics.ascent() / 2.6
            while any(abs(y - other) < metrics.height() for other in taken):
                y += metrics.height()
            taken.append(y)
            painter.setPen(QColor(t.ink))
            painter.drawText(QPointF(plot.right() + Space.S, y), line.name)


def _step(span: float, most: float) -> int:
    """A round step that writes at most so many numbers."""
    for step in (1, 2, 5, 10, 20, 50):
        if span / step <= most:
            return step
    return 100
