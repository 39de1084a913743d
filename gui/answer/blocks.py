"""Block chart: every tray's number, the trays of one block joined by a line.

In    media, blocks with the numbers of their trays
Out   a drawn chart: media side by side, a line a block, a short bar for each medium's mean
Not   the numbers (`data/verdict/traynumbers.py`)

Lines that run together show that blocks differ and media do so in each alike; that is what comparing within
blocks is good for.
"""

from collections.abc import Mapping, Sequence
from typing import NamedTuple

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPen, QPolygonF
from PySide6.QtWidgets import QWidget

from gui.answer.chartlines import BlockLine
from gui.answer.drawnchart import Canvas, DrawnChart, spread_labels, tick_words, ticks
from gui.charts import DASHES
from gui.language.spoken import in_figures, spoken
from gui.style.palette import Space

__all__ = ["BlockChart"]

MOST_NAMED = 8  # blocks; more names than that hide each other


class _Plot(NamedTuple):
    """Where numbers lie: a column for each medium, values upwards."""

    area: QRectF
    columns: int
    low: float
    high: float

    @property
    def step(self) -> float:
        """Width of a column, px."""
        return self.area.width() / self.columns

    def height_of(self, value: float) -> float:
        return self.area.bottom() - self.area.height() * (value - self.low) / (self.high - self.low)

    def at(self, column: int, value: float) -> QPointF:
        return QPointF(self.area.left() + self.step * (column + 0.5), self.height_of(value))


class BlockChart(DrawnChart):
    """Media side by side."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self.title = self.tr("Trays of each block")
        self.setAccessibleName(self.title)
        self._media: tuple[str, ...] = ()
        self._lines: tuple[BlockLine, ...] = ()
        self._means: Mapping[str, float] = {}
        self._series: Mapping[str, int] = {}
        self._unit = ""

    def show_blocks(
        self, series: Mapping[str, int], lines: Sequence[BlockLine], means: Mapping[str, float], unit: str
    ) -> None:
        """Show these media, each in its colour; `means` as the table has them."""
        media = self._media = tuple(series)
        self._series, self._lines, self._means, self._unit = dict(series), tuple(lines), dict(means), unit
        words = [
            self.tr("{block}: {numbers}").format(
                block=spoken(line.name),
                numbers=", ".join(
                    f"{medium} {in_figures(value, '.1f')}"
                    for medium in media
                    for value in line.values.get(medium, ())
                ),
            )
            for line in lines
        ]
        self.describe("\n".join(words))
        self.update()

    def lines_high(self) -> float:
        """The same for all numbers of blocks."""
        return 15.0

    def draw(self, canvas: Canvas) -> None:
        """Axes, means, then lines of blocks with their trays over them."""
        values = [v for line in self._lines for told in line.values.values() for v in told]
        if not values or not self._media:
            return
        plot = self._plot(canvas, values)
        self._draw_axes(canvas, plot)
        self._draw_means(canvas, plot)
        ends = [(number, self._draw_line(canvas, plot, number)) for number in range(len(self._lines))]
        if self._is_named:
            self._draw_names(canvas, plot.area, [(number, y) for number, y in ends if y is not None])

    @property
    def _is_named(self) -> bool:
        return 1 < len(self._lines) <= MOST_NAMED

    def _plot(self, canvas: Canvas, values: Sequence[float]) -> _Plot:
        """What the numbers at the left and the names at the right leave free."""
        low, high = min(values), max(values)
        pad = 0.08 * ((high - low) or 1.0)
        left = canvas.metrics.horizontalAdvance("000.0") + Space.S
        longest = max(canvas.metrics.horizontalAdvance(spoken(line.name)) for line in self._lines)
        names = min(longest, 0.3 * canvas.area.width()) + Space.L if self._is_named else 0.0
        area = canvas.area.adjusted(left, 1.4 * canvas.line_height, -names, -2.3 * canvas.line_height)
        return _Plot(area, len(self._media), low - pad, high + pad)

    def _draw_axes(self, canvas: Canvas, plot: _Plot) -> None:
        t, area = canvas.tokens, plot.area
        numbers = ticks(plot.low, plot.high, area.height() / (2.2 * canvas.line_height))
        for number, words in zip(numbers, tick_words(numbers), strict=True):
            y = plot.height_of(number)
            canvas.line(QPointF(area.left(), y), QPointF(area.right(), y), t.line)
            wide = area.left() - canvas.area.left() - Space.S
            box = QRectF(canvas.area.left(), y - canvas.line_height / 2, wide, canvas.line_height)
            right = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
            canvas.text(words, box, right, t.soft_ink)
        head = QRectF(canvas.area.left(), canvas.area.top(), canvas.area.width(), canvas.line_height)
        words = self.tr("{unit}; bars are means").format(unit=self._unit)
        canvas.text(words, head, Qt.AlignmentFlag.AlignLeft, t.soft_ink)
        for number, medium in enumerate(self._media):
            left = area.left() + plot.step * number + 2
            box = QRectF(left, area.bottom() + 4, plot.step - 4, 2 * canvas.line_height)
            align = Qt.AlignmentFlag.AlignHCenter | Qt.AlignmentFlag.AlignTop | Qt.TextFlag.TextWordWrap
            canvas.painter.setPen(QColor(t.ink))
            canvas.painter.drawText(box, int(align), medium)

    def _draw_means(self, canvas: Canvas, plot: _Plot) -> None:
        half = QPointF(min(0.3 * plot.step, 26.0), 0)
        for number, medium in enumerate(self._media):
            if medium in self._means:
                at = plot.at(number, self._means[medium])
                canvas.line(at - half, at + half, canvas.tokens.ink, 3.0)

    def _draw_line(self, canvas: Canvas, plot: _Plot, number: int) -> float | None:
        """A block's line through its media and its trays; the height where it ends, None without a tray."""
        told = [(n, self._lines[number].values.get(medium, ())) for n, medium in enumerate(self._media)]
        points = [plot.at(n, sum(values) / len(values)) for n, values in told if values]
        if not points:
            return None
        pen = QPen(QColor(canvas.tokens.soft_ink), 1.6)
        if DASHES[number % len(DASHES)]:
            pen.setDashPattern(DASHES[number % len(DASHES)])
        canvas.painter.setPen(pen)
        canvas.painter.drawPolyline(QPolygonF(points))
        for n, values in told:
            for value in values:
                canvas.mark(plot.at(n, value), self._series[self._media[n]], 4.5, shape=number)
        return points[-1].y()

    def _draw_names(self, canvas: Canvas, area: QRectF, ends: Sequence[tuple[int, float]]) -> None:
        """Beside the ends of the lines, (block, height) each."""
        heights = spread_labels([y for _, y in ends], canvas.line_height, area.top(), area.bottom())
        for y, (number, _) in zip(heights, ends, strict=True):
            canvas.mark(QPointF(area.right() + Space.S, y), 0, 4.0, hollow=True, shape=number)
            box = QRectF(
                area.right() + Space.L,
                y - canvas.line_height / 2,
                canvas.area.right() - area.right() - Space.L,
                canvas.line_height,
            )
            name = spoken(self._lines[number].name)
            canvas.text(name, box, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
