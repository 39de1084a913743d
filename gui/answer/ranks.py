"""Rank chart: the ranks that the data leave open for each medium, as bars.

In    names with best and worst rank
Out   a drawn chart, one bar a medium, with "1-2 of 3" beside it
Not   the ranks (`data/statistics/tukey.py`)
"""

from collections.abc import Sequence

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPen
from PySide6.QtWidgets import QWidget

from gui.answer.chartlines import RankLine
from gui.answer.drawnchart import Canvas, DrawnChart, series_colour
from gui.style.palette import Space

__all__ = ["RankChart"]

NAMES_SHARE = 0.38


class RankChart(DrawnChart):
    """One row a medium, one column a rank."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self.title = self.tr("Ranks that the trial leaves open")
        self.setAccessibleName(self.title)
        self._lines: tuple[RankLine, ...] = ()

    def show_lines(self, lines: Sequence[RankLine]) -> None:
        """Show these."""
        self._lines = tuple(lines)
        self.describe("\n".join(f"{line.name}: {line.words}" for line in lines))
        self.updateGeometry()
        self.update()

    def lines_high(self) -> float:
        """Near two lines of text a medium, and the axis."""
        return 3.0 + 1.8 * max(2, len(self._lines))

    def draw(self, canvas: Canvas) -> None:
        """Columns, then bars."""
        if not self._lines:
            return
        metrics, count = canvas.metrics, len(self._lines)
        names = max(metrics.horizontalAdvance(line.name) for line in self._lines) + 3 * Space.M
        names = min(names, NAMES_SHARE * canvas.area.width())
        told = max(metrics.horizontalAdvance(line.words) for line in self._lines) + Space.M
        plot = canvas.area.adjusted(names, 0, -told, -2.6 * canvas.line_height)
        self._draw_columns(canvas, plot)
        row = plot.height() / count
        middle = Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft
        for number, line in enumerate(self._lines):
            y = plot.top() + row * (number + 0.5)
            self._draw_bar(canvas, plot, line, y)
            canvas.mark(QPointF(canvas.area.left() + Space.S, y), line.series, 4.0)
            box = QRectF(canvas.area.left() + 2 * Space.M, y - row / 2, names - 2 * Space.M - Space.S, row)
            canvas.text(line.name, box, middle)
            canvas.text(line.words, QRectF(plot.right() + Space.S, y - row / 2, told, row), middle)

    def _draw_columns(self, canvas: Canvas, plot: QRectF) -> None:
        t, step = canvas.tokens, plot.width() / len(self._lines)
        for rank in range(1, len(self._lines) + 1):
            x = plot.left() + step * (rank - 0.5)
            canvas.line(QPointF(x, plot.top()), QPointF(x, plot.bottom()), t.line)
            box = QRectF(x - step / 2, plot.bottom() + 2, step, canvas.line_height)
            canvas.text(str(rank), box, Qt.AlignmentFlag.AlignHCenter, t.soft_ink)
        foot = QRectF(
            plot.left(), plot.bottom() + 1.3 * canvas.line_height, plot.width(), 1.3 * canvas.line_height
        )
        canvas.text(self.tr("rank, 1 is best"), foot, Qt.AlignmentFlag.AlignHCenter, t.soft_ink)

    def _draw_bar(self, canvas: Canvas, plot: QRectF, line: RankLine, y: float) -> None:
        """From the best to the worst rank that is open, about the height `y`."""
        step = plot.width() / len(self._lines)
        high = min(0.55 * plot.height() / len(self._lines), 0.9 * canvas.line_height)
        left, right = plot.left() + step * (line.low - 1), plot.left() + step * line.high
        bar = QRectF(left + 0.1 * step, y - high / 2, right - left - 0.2 * step, high)
        canvas.painter.setPen(QPen(QColor(canvas.tokens.ink), 1.0))
        canvas.painter.setBrush(series_colour(line.series))
        canvas.painter.drawRoundedRect(bar, high / 2, high / 2)
        canvas.painter.setBrush(Qt.BrushStyle.NoBrush)
