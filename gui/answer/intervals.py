"""Interval chart: each medium's difference from the trusted one with its interval, against the margin.

In    `Intervals`
Out   a drawn chart: rows of media, zero for the trusted medium, the margin hatched
Not   the numbers (`data/verdict`), the table beside it (`verdict/page.py`)
"""

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QPen
from PySide6.QtWidgets import QWidget

from gui.answer.chartlines import IntervalLine, Intervals
from gui.answer.drawnchart import Canvas, DrawnChart, series_colour, tick_words, ticks
from gui.language.words import translate
from gui.style.palette import Space

__all__ = ["IntervalChart", "IntervalDrawing"]

ALPHA = 40  # of the shading within the margin
NAMES_SHARE = 0.32  # of the width, at most
PAD = 0.06  # of the span, beyond the outermost number


class IntervalDrawing:
    """How one row for each new medium is drawn; it knows no widget, so that a report draws it too."""

    told = Intervals()

    def lines_high(self) -> float:
        """Two lines of text a medium, and the axis."""
        return 4.6 + 2.0 * max(1, len(self.told.lines))

    @property
    def edge(self) -> float:
        """Where the margin ends."""
        return self.told.margin if self.told.lower_is_better else -self.told.margin

    def _limits(self) -> tuple[float, float]:
        numbers = [0.0, self.edge, -self.edge / 2]
        for line in self.told.lines:
            numbers += [line.low, line.high]
        low, high = min(numbers), max(numbers)
        pad = PAD * ((high - low) or 1.0)
        return low - pad, high + pad

    def draw(self, canvas: Canvas) -> None:
        """Margin, zero, axis, then a row for each medium."""
        if not self.told.lines:
            return
        names = max(canvas.metrics.horizontalAdvance(line.name) for line in self.told.lines) + 3 * Space.M
        names = min(names, NAMES_SHARE * canvas.area.width())
        plot = canvas.area.adjusted(names, 1.3 * canvas.line_height, -Space.S, -3.0 * canvas.line_height)
        low, high = self._limits()

        def x(value: float) -> float:
            return plot.left() + plot.width() * (value - low) / (high - low)

        self._draw_margin(canvas, plot, x(self.edge), x(0.0))
        self._draw_axis(canvas, plot, low, high)
        row = plot.height() / len(self.told.lines)
        for number, line in enumerate(self.told.lines):
            y = plot.top() + row * (number + 0.5)
            box = QRectF(
                canvas.area.left() + 2 * Space.M,
                y - canvas.line_height,
                names - 2 * Space.M - Space.S,
                2 * canvas.line_height,
            )
            canvas.mark(QPointF(canvas.area.left() + Space.S, y), line.series, 4.0, hollow=self.told.so_far)
            canvas.text(line.name, box, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft)
            self._draw_interval(canvas, line, y, (x(line.low), x(line.difference), x(line.high)))

    def _draw_margin(self, canvas: Canvas, plot: QRectF, edge: float, zero: float) -> None:
        t = canvas.tokens
        if edge != zero:
            within = QRectF(min(edge, zero), plot.top(), abs(zero - edge), plot.height())
            shade = QColor(t.calm)
            shade.setAlpha(ALPHA)
            canvas.painter.fillRect(within, shade)
            hatch = QColor(t.soft_ink)
            hatch.setAlpha(3 * ALPHA)
            canvas.painter.fillRect(within, QBrush(hatch, Qt.BrushStyle.BDiagPattern))
            canvas.line(QPointF(edge, plot.top()), QPointF(edge, plot.bottom()), t.ink, 1.5, dash=1)
        canvas.line(QPointF(zero, plot.top()), QPointF(zero, plot.bottom()), t.ink, 1.5)
        head, high = canvas.area.top(), 1.2 * canvas.line_height
        left = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
        right = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
        before = QRectF(canvas.area.left(), head, min(edge, zero) - canvas.area.left() + Space.XS, high)
        after = QRectF(max(edge, zero) - Space.XS, head, canvas.area.right() - max(edge, zero), high)
        margin, trusted = translate("IntervalChart", "margin"), self.told.trusted
        if self.told.lower_is_better:
            margin, trusted = trusted, margin
        canvas.text(margin, before, right)
        canvas.text(trusted, after, left)

    def _draw_axis(self, canvas: Canvas, plot: QRectF, low: float, high: float) -> None:
        t, foot = canvas.tokens, plot.bottom()
        canvas.line(QPointF(plot.left(), foot), QPointF(plot.right(), foot), t.soft_ink)
        most = plot.width() / (canvas.metrics.horizontalAdvance("-00.0") * 1.7)
        numbers = ticks(low, high, most)
        for number, words in zip(numbers, tick_words(numbers, signed=True), strict=True):
            at = plot.left() + plot.width() * (number - low) / (high - low)
            canvas.line(QPointF(at, foot), QPointF(at, foot + 4), t.soft_ink)
            box = QRectF(at - 50, foot + 5, 100, canvas.line_height)
            canvas.text(words, box, Qt.AlignmentFlag.AlignHCenter, t.soft_ink)
        below = QRectF(plot.left(), foot + 1.5 * canvas.line_height, plot.width(), 1.3 * canvas.line_height)
        worse, better = translate("IntervalChart", "less good"), translate("IntervalChart", "better")
        if self.told.lower_is_better:
            worse, better = better, worse
        ends, unit = (f"\u2190 {worse}", f"{better} \u2192"), self.told.unit
        widest = max(canvas.metrics.horizontalAdvance(words) for words in ends)
        if 2 * widest + canvas.metrics.horizontalAdvance(unit) + 2 * Space.S > below.width():
            ends, unit = (f"{ends[0]}, {unit}", ends[1]), ""  # no room between them
        canvas.text(ends[0], below, Qt.AlignmentFlag.AlignLeft, t.soft_ink)
        canvas.text(ends[1], below, Qt.AlignmentFlag.AlignRight, t.soft_ink)
        canvas.text(unit, below, Qt.AlignmentFlag.AlignHCenter, t.soft_ink)

    def _draw_interval(
        self, canvas: Canvas, line: IntervalLine, y: float, at: tuple[float, float, float]
    ) -> None:
        low, middle, high = at
        t, painter = canvas.tokens, canvas.painter
        colour = series_colour(line.series)
        if self.told.so_far:
            pen = QPen(QColor(t.ink), 2.0, Qt.PenStyle.DashLine)
            painter.setPen(pen)
            painter.drawLine(QPointF(low, y), QPointF(high, y))
        else:
            painter.setPen(QPen(QColor(t.ink), 1.0))
            painter.setBrush(colour)
            painter.drawRect(QRectF(low, y - 2.5, high - low, 5.0))
            painter.setBrush(Qt.BrushStyle.NoBrush)
        for end in (low, high):
            canvas.line(QPointF(end, y - 7), QPointF(end, y + 7), t.ink, 2.0)
        canvas.mark(QPointF(middle, y), line.series, 6.5, hollow=self.told.so_far)


class IntervalChart(IntervalDrawing, DrawnChart):
    """One row for each new medium."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self.title = self.tr("Difference from the trusted medium")
        self.setAccessibleName(self.title)

    def show_intervals(self, told: Intervals) -> None:
        """Show these from now on."""
        self.told = told
        self.describe("\n".join(line.words for line in told.lines))
        self.updateGeometry()
        self.update()
