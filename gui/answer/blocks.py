"""Block chart: every tray's number, the trays of one block joined by a line.

In    media, blocks with the numbers of their trays
Out   a drawn chart: media side by side, a line a block, a short bar for each medium's mean
Not   the numbers (`data/verdict/traynumbers.py`)

Lines that run together show that blocks differ and media do so in each alike; that is what comparing within
blocks is good for.
"""

from collections.abc import Mapping, Sequence

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPen, QPolygonF
from PySide6.QtWidgets import QWidget

from gui.answer.chartlines import BlockLine
from gui.answer.drawnchart import Canvas, DrawnChart, spread_labels, ticks
from gui.charts import DASHES
from gui.language.spoken import in_figures, spoken
from gui.style.palette import Space

__all__ = ["BlockChart"]

MOST_NAMED = 8  # blocks; more names than that hide each other


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
        """Axes, lines of blocks with their trays, then means."""
        values = [v for line in self._lines for told in line.values.values() for v in told]
        if not values or not self._media:
            return
        low, high = min(values), max(values)
        pad = 0.08 * ((high - low) or 1.0)
        low, high = low - pad, high + pad
        left = canvas.metrics.horizontalAdvance("000.0") + Space.S
        named = 1 < len(self._lines) <= MOST_NAMED
        longest = max(canvas.metrics.horizontalAdvance(spoken(line.name)) for line in self._lines)
        names = min(longest, 0.3 * canvas.area.width()) + Space.L if named else 0.0
        plot = canvas.area.adjusted(left, 1.4 * canvas.line_height, -names, -2.3 * canvas.line_height)
        step = plot.width() / len(self._media)

        def place(medium: int, value: float) -> QPointF:
            return QPointF(
                plot.left() + step * (medium + 0.5),
                plot.bottom() - plot.height() * (value - low) / (high - low),
            )

        self._draw_axes(canvas, plot, step, low, high)
        self._draw_means(canvas, [place(n, self._means[m]) if m in self._means else None
                                  for n, m in enumerate(self._media)], step)  # fmt: skip
        ends: list[tuple[float, str, int]] = []
        for number, line in enumerate(self._lines):
            points = [
                place(n, sum(told) / len(told))
                for n, medium in enumerate(self._media)
                if (told := line.values.get(medium, ()))
            ]
            if not points:
                continue
            pen = QPen(QColor(canvas.tokens.soft_ink), 1.6)
            if DASHES[number % len(DASHES)]:
                pen.setDashPattern(DASHES[number % len(DASHES)])
            canvas.painter.setPen(pen)
            canvas.painter.drawPolyline(QPolygonF(points))
            for n, medium in enumerate(self._media):
                for value in line.values.get(medium, ()):
                    canvas.mark(place(n, value), self._series[medium], 4.5, shape=number)
            ends.append((points[-1].y(), spoken(line.name), number))
        if named:
            self._draw_names(canvas, plot, ends)

    def _draw_axes(self, canvas: Canvas, plot: QRectF, step: float, low: float, high: float) -> None:
        t = canvas.tokens
        for number in ticks(low, high, plot.height() / (2.2 * canvas.line_height)):
            y = plot.bottom() - plot.height() * (number - low) / (high - low)
            canvas.line(QPointF(plot.left(), y), QPointF(plot.right(), y), t.line)
            wide = plot.left() - canvas.area.left() - Space.S
            box = QRectF(canvas.area.left(), y - canvas.line_height / 2, wide, canvas.line_height)
            right = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
            canvas.text(f"{number:.10g}", box, right, t.soft_ink)
        head = QRectF(canvas.area.left(), canvas.area.top(), canvas.area.width(), canvas.line_height)
        words = self.tr("{unit}; bars are means").format(unit=self._unit)
        canvas.text(words, head, Qt.AlignmentFlag.AlignLeft, t.soft_ink)
        for number, medium in enumerate(self._media):
            box = QRectF(plot.left() + step * number + 2, plot.bottom() + 4, step - 4, 2 * canvas.line_height)
            align = Qt.AlignmentFlag.AlignHCenter | Qt.AlignmentFlag.AlignTop | Qt.TextFlag.TextWordWrap
            canvas.painter.setPen(QColor(t.ink))
            canvas.painter.drawText(box, int(align), medium)

    @staticmethod
    def _draw_means(canvas: Canvas, means: Sequence[QPointF | None], step: float) -> None:
        for at in means:
            if at is not None:
                half = QPointF(min(0.3 * step, 26.0), 0)
                canvas.line(at - half, at + half, canvas.tokens.ink, 3.0)

    @staticmethod
    def _draw_names(canvas: Canvas, plot: QRectF, ends: Sequence[tuple[float, str, int]]) -> None:
        heights = spread_labels([y for y, _, _ in ends], canvas.line_height, plot.top(), plot.bottom())
        for y, (_, name, number) in zip(heights, ends, strict=True):
            canvas.mark(QPointF(plot.right() + Space.S, y), 0, 4.0, hollow=True, shape=number)
            box = QRectF(
                plot.right() + Space.L,
                y - canvas.line_height / 2,
                canvas.area.right() - plot.right() - Space.L,
                canvas.line_height,
            )
            canvas.text(name, box, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
