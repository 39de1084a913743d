"""Growth chart: coverage over the days of one tray against its block mates.

In    `Curve`s, this tray first; the day that is looked at; the fitted curve when it is there
Out   a painted chart, and the same in words for those who cannot see it
Not   which trays are mates (`data`), fitting (`growthfit.py`), lanes below it (`timechart.py`)

This tray is a thick line with round markers; its mates are thin, each with a dash of its own and its code.
With a fitted curve the markers are the photos, the line is the curve, and the band with its two dotted edges
is where the curve lies with about 95 %.
"""

from collections.abc import Sequence
from math import ceil, floor

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from gui.charts import ring, take_focus
from gui.style.palette import Space, tokens_now
from gui.style.tokens import SERIES, Tokens
from gui.traysheet.growthfit import Fitted, Points
from gui.traysheet.view import Curve

__all__ = ["GrowthChart", "own_colour"]

DASHES = ((4.0, 2.0), (1.0, 2.0), (6.0, 2.0, 1.0, 2.0), (2.0, 2.0), (8.0, 3.0))
LEAST_APART = 3.0  # px between the codes at the ends of lines
MOST_FOR_CODES = 0.3  # of the width; longer codes lose their middle
BAND_ALPHA = 46
CUT_HIGH = 5.0  # px, half of the bracket's ends


class GrowthChart(QWidget):
    """A small chart that needs no library."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._curves: tuple[Curve, ...] = ()
        self._day: float | None = None
        self._fitted: Fitted | None = None
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(self.tr("Growth of coverage"))
        take_focus(self)

    def sizeHint(self) -> QSize:
        """Wide and low."""
        return QSize(300, 9 * self.fontMetrics().height())

    def show_curves(self, curves: Sequence[Curve], day: float | None) -> None:
        """Show these; the first is the tray itself. A curve fitted to other days goes."""
        if self._fitted is not None and (not curves or self._fitted.points != curves[0].points):
            self._fitted = None
        self._curves, self._day = tuple(curves), day
        self._describe()
        self.setToolTip(
            self.tr("Coverage in % over days since sowing. Thin lines are trays of the same crop beside it.")
        )
        self.update()

    def show_fit(self, fitted: Fitted) -> None:
        """Draw the curve, unless other days are shown by now."""
        if self._curves and self._curves[0].points == fitted.points:
            self._fitted = fitted
            self._describe()
            self.update()

    def _describe(self) -> None:
        words = [
            f"{curve.code}: "
            + ", ".join(
                self.tr("day {day} {coverage} %").format(day=round(x), coverage=round(y))
                for x, y in curve.points
            )
            for curve in self._curves
            if curve.points
        ]
        if self._fitted is not None:
            words += self._fitted.words
        self.setAccessibleDescription("; ".join(words) or self.tr("No coverage yet"))

    # --- where things lie

    def _below(self, metrics: QFontMetricsF, width: float | None = None) -> float:
        """Room between the plot and the words of the axis, px; `width`: of a chart so wide."""
        return 0.0

    def _repeats_days(self) -> bool:
        """Whether the days of the axis stand at the foot of what lies below the plot as well."""
        return False

    def _plot(self, metrics: QFontMetricsF) -> QRectF:
        return QRectF(self.rect()).adjusted(
            self._left(metrics),
            metrics.height() + Space.XS,
            -self._right(metrics, self.width()),
            -(metrics.height() + Space.XS + self._below(metrics)),
        )

    def _right(self, metrics: QFontMetricsF, width: float) -> float:
        """Room for the codes beside the plot of a chart of this width, px."""
        longest = max((metrics.horizontalAdvance(curve.code) for curve in self._curves), default=0.0)
        codes = min(longest * 1.1, MOST_FOR_CODES * width)  # one of them is bold
        return max(codes, metrics.horizontalAdvance("00" + self.tr("day"))) + Space.M

    def _left(self, metrics: QFontMetricsF) -> float:
        return metrics.horizontalAdvance("100") + Space.S

    def _last_day(self) -> float:
        days = [x for curve in self._curves for x, _ in curve.points]
        last = max(days, default=7.0) - 0.25
        if self._fitted is not None and self._fitted.cut is not None:
            last = max(last, self._fitted.cut[2])
        return float(max(4, ceil(last)))

    # --- painting

    def paintEvent(self, event: QPaintEvent) -> None:
        """Axes, mates, then the tray on top."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, True)
        ring(painter, self)
        metrics = QFontMetricsF(self.font())
        plot = self._plot(metrics)
        last = self._last_day()
        tokens = tokens_now()
        self._paint_axes(painter, plot, last, metrics)
        if self._fitted is not None:
            self._paint_band(painter, plot, last, self._fitted, tokens)
        labels: list[tuple[float, str, bool]] = []
        for number, curve in reversed(list(enumerate(self._curves))):
            line = _line(plot, last, curve.points)
            if line.isEmpty():
                continue
            if number:
                pen = QPen(QColor(tokens.soft_ink), 2.0)
                pen.setDashPattern(DASHES[(number - 1) % len(DASHES)])
                painter.setPen(pen)
                painter.drawPolyline(line)
            else:
                self._paint_tray(painter, line, plot, last)
            labels.append((line.last().y(), curve.code, number == 0))
        if self._fitted is not None and self._fitted.cut is not None:
            self._paint_cut(painter, plot, last, self._fitted.cut, metrics)
        self._paint_codes(painter, labels, plot, metrics)

    def _paint_axes(self, painter: QPainter, plot: QRectF, last: float, metrics: QFontMetricsF) -> None:
        tokens = tokens_now()
        painter.setPen(QColor(tokens.soft_ink))
        title = QRectF(plot.left(), 0, self.width() - plot.left(), metrics.height())
        painter.drawText(title, Qt.AlignmentFlag.AlignLeft, self.tr("Coverage, %"))  # clear of the 100 below
        for share in (0, 50, 100):
            y = plot.bottom() - share / 100 * plot.height()
            painter.setPen(QColor(tokens.line))
            painter.drawLine(QPointF(plot.left(), y), QPointF(plot.right(), y))
            painter.setPen(QColor(tokens.soft_ink))
            box = QRectF(0, y - metrics.height() / 2, plot.left() - Space.XS, metrics.height())
            painter.drawText(box, Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter, str(share))
        room = metrics.horizontalAdvance("00") + Space.S
        step = max(1, ceil(room / (plot.width() / last)))
        foot = plot.bottom() + self._below(metrics)
        beside = metrics.horizontalAdvance(str(floor(last))) / 2 + Space.XS
        for y in (plot.bottom(), foot) if self._repeats_days() else (plot.bottom(),):
            for day in range(0, floor(last) + 1, step):
                x = plot.left() + day / last * plot.width()
                box = QRectF(x - 30, y + Space.XS, 60, metrics.height())
                painter.drawText(box, Qt.AlignmentFlag.AlignHCenter, str(day))
            right = QRectF(plot.right() + beside, y + Space.XS, self.width() - plot.right(), metrics.height())
            painter.drawText(right, Qt.AlignmentFlag.AlignLeft, self.tr("day"))
        if self._day is not None:
            x = plot.left() + self._day / last * plot.width()
            painter.setPen(QPen(QColor(tokens.soft_ink), 1.0, Qt.PenStyle.DotLine))
            painter.drawLine(QPointF(x, plot.top()), QPointF(x, foot))

    def _paint_band(
        self, painter: QPainter, plot: QRectF, last: float, fitted: Fitted, tokens: Tokens
    ) -> None:
        low, high = _line(plot, last, fitted.low), _line(plot, last, fitted.high)
        if low.isEmpty() or high.isEmpty():
            return
        fill = own_colour(tokens)
        fill.setAlpha(BAND_ALPHA)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(fill)
        painter.drawPolygon(QPolygonF(high.toList() + low.toList()[::-1]))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(QColor(tokens.soft_ink), 1.0, Qt.PenStyle.DotLine))
        painter.drawPolyline(low)
        painter.drawPolyline(high)

    def _paint_tray(self, painter: QPainter, line: QPolygonF, plot: QRectF, last: float) -> None:
        tokens = tokens_now()
        colour = own_colour(tokens)
        curve = _line(plot, last, self._fitted.line) if self._fitted is not None else QPolygonF()
        painter.setPen(
            QPen(colour, 3.0, Qt.PenStyle.SolidLine, Qt.PenCapStyle.RoundCap, Qt.PenJoinStyle.RoundJoin)
        )
        painter.drawPolyline(line if curve.isEmpty() else curve)
        painter.setPen(QPen(QColor(tokens.ink), 1.0))
        painter.setBrush(colour)
        here = None if self._day is None else plot.left() + self._day / last * plot.width()
        for point in line.toList():
            looked_at = here is not None and abs(point.x() - here) < 2
            radius = 6.0 if looked_at else 4.0
            painter.drawEllipse(point, radius, radius)
        painter.setBrush(Qt.BrushStyle.NoBrush)

    def _paint_cut(
        self,
        painter: QPainter,
        plot: QRectF,
        last: float,
        cut: tuple[float, float, float],
        metrics: QFontMetricsF,
    ) -> None:
        """A bracket over the days in which it will probably be cut, and a word."""
        tokens = tokens_now()
        y = plot.bottom() - 2 * CUT_HIGH
        day, low, high = (_at(plot, last, min(last, max(0.0, one)), 0).x() for one in cut)
        painter.setPen(QPen(QColor(tokens.ink), 2.0))
        painter.drawLine(QPointF(low, y), QPointF(high, y))
        for x in (low, high):
            painter.drawLine(QPointF(x, y - CUT_HIGH), QPointF(x, y + CUT_HIGH))
        painter.setBrush(QColor(tokens.ink))
        painter.drawPolygon(QPolygonF([QPointF(day - 5, y - 8), QPointF(day + 5, y - 8), QPointF(day, y)]))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        words = self.tr("cut")
        wide = metrics.horizontalAdvance(words)
        x = min(plot.right() - wide, max(plot.left(), day - wide / 2))
        painter.drawText(QPointF(x, y - 8 - metrics.descent()), words)

    def _paint_codes(
        self,
        painter: QPainter,
        labels: list[tuple[float, str, bool]],
        plot: QRectF,
        metrics: QFontMetricsF,
    ) -> None:
        """The code of each tray at its line's end, pushed apart where lines end together."""
        tokens = tokens_now()
        high = metrics.height() - LEAST_APART
        lowest = plot.bottom() - high * (len(labels) - 1)
        y = plot.top() - high
        for wanted, code, own in sorted(labels):
            y = max(y + high, min(wanted, lowest))
            lowest += high
            font = self.font()
            font.setBold(own)
            painter.setFont(font)
            painter.setPen(QColor(tokens.ink if own else tokens.soft_ink))
            left = plot.right() + Space.S
            box = QRectF(left, y - metrics.height() / 2, self.width() - left, metrics.height())
            shown = QFontMetricsF(font).elidedText(code, Qt.TextElideMode.ElideMiddle, box.width())
            painter.drawText(box, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter, shown)
        painter.setFont(self.font())


def own_colour(tokens: Tokens) -> QColor:
    """Of the tray itself: the first of the data series, its light sister on a dark sheet."""
    return QColor(SERIES[0] if QColor(tokens.sheet).lightness() > 128 else SERIES[4])


def _line(plot: QRectF, last: float, points: Points) -> QPolygonF:
    return QPolygonF([_at(plot, last, x, y) for x, y in points])


def _at(plot: QRectF, last: float, day: float, coverage: float) -> QPointF:
    return QPointF(plot.left() + day / last * plot.width(), plot.bottom() - coverage / 100 * plot.height())
