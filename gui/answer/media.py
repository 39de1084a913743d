"""Media chart: growth of each medium, mean share under canopy over the days since sowing.

In    `GrowthLine`s, the day that is read
Out   a drawn chart: a line a medium, named at its end, the day that is read marked
Not   growth of one tray with its fitted curve (`traysheet/growthchart.py`), the means
      (`data/report/mediumgrowth.py`)
"""

from collections.abc import Mapping, Sequence
from types import MappingProxyType

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPen, QPolygonF
from PySide6.QtWidgets import QWidget

from data.report.mediumgrowth import GrowthLine
from data.verdict.countedof import CountedOf
from gui.answer.drawnchart import Canvas, DrawnChart, series_colour, spread_labels, ticks
from gui.charts import DASHES
from gui.language.words import translate
from gui.style.palette import Space

__all__ = ["MediaChart", "MediaDrawing", "share_words"]

SHARES = (0, 25, 50, 75, 100)
NAMES_SHARE = 0.34
MARK = 4.0  # px, radius


def share_words(lines: Sequence[GrowthLine]) -> str:
    """What the heights are, and a share of what."""
    if any(line.counted is CountedOf.BED for line in lines):
        return translate("MediaChart", "mean coverage of the growing bed, %")
    return translate("MediaChart", "mean coverage of the inner area, %")


class MediaDrawing:
    """How a line a medium is drawn; it knows no widget, so that a report draws it too."""

    _lines: tuple[GrowthLine, ...] = ()
    _series: Mapping[str, int] = MappingProxyType({})
    _day: int | None = None

    def tell(self, lines: Sequence[GrowthLine], series: Mapping[str, int], day: int | None) -> None:
        """Draw these from now on; `series` as in the other charts."""
        self._lines = tuple(line for line in lines if line.points)
        self._series, self._day = dict(series), day

    def lines_high(self) -> float:
        """As high as the blocks beside it."""
        return 15.0

    def draw(self, canvas: Canvas) -> None:
        """Axes, the day that is read, lines with their names."""
        days = [point.day for line in self._lines for point in line.points]
        if not days:
            return
        longest = max(canvas.metrics.horizontalAdvance(line.treatment) for line in self._lines)
        names = min(longest + Space.M, NAMES_SHARE * canvas.area.width())
        left = canvas.metrics.horizontalAdvance("100") + Space.M
        plot = canvas.area.adjusted(
            left + Space.XS, 1.4 * canvas.line_height, -names, -2.6 * canvas.line_height
        )
        first = min(days)
        last = max(*days, first + 1, self._day or 0)  # the day that is read is in sight before it comes

        def place(day: float, share: float) -> QPointF:
            return QPointF(
                plot.left() + plot.width() * (day - first) / (last - first),
                plot.bottom() - plot.height() * share / 100,
            )

        self._draw_axes(canvas, plot, first, last)
        if self._day is not None and first <= self._day <= last:
            x = place(self._day, 0).x()
            canvas.line(QPointF(x, plot.top()), QPointF(x, plot.bottom()), canvas.tokens.ink, 1.0, dash=2)
        for line in self._lines:
            self._draw_line(canvas, line, [place(p.day, p.share) for p in line.points])
        ends = [place(line.points[-1].day, line.points[-1].share) for line in self._lines]
        self._draw_names(canvas, plot, ends, names - Space.S)

    def _draw_names(self, canvas: Canvas, plot: QRectF, ends: Sequence[QPointF], width: float) -> None:
        """Each beside the end of its line, and none over another."""
        high = canvas.line_height
        middles = spread_labels([end.y() for end in ends], high, plot.top(), plot.bottom())
        for line, end, middle in zip(self._lines, ends, middles, strict=True):
            box = QRectF(end.x() + Space.S, middle - high / 2, width, high)
            canvas.text(line.treatment, box, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)

    def _draw_axes(self, canvas: Canvas, plot: QRectF, first: int, last: int) -> None:
        t = canvas.tokens
        head = QRectF(canvas.area.left(), canvas.area.top(), canvas.area.width(), canvas.line_height)
        canvas.text(share_words(self._lines), head, Qt.AlignmentFlag.AlignLeft, t.soft_ink)
        for share in SHARES:
            y = plot.bottom() - plot.height() * share / 100
            canvas.line(QPointF(plot.left(), y), QPointF(plot.right(), y), t.line)
            room = plot.left() - canvas.area.left() - MARK - Space.XS  # beside a marker on the first day
            box = QRectF(canvas.area.left(), y - canvas.line_height / 2, room, canvas.line_height)
            right = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
            canvas.text(str(share), box, right, t.soft_ink)
        most = plot.width() / (2.4 * canvas.metrics.horizontalAdvance("00"))
        for day in ticks(first, last, min(most, last - first + 1)):
            if day != round(day):
                continue
            x = plot.left() + plot.width() * (day - first) / (last - first)
            box = QRectF(x - 30, plot.bottom() + 6, 60, canvas.line_height)
            canvas.text(f"{day:.0f}", box, Qt.AlignmentFlag.AlignHCenter, t.soft_ink)
        wide = canvas.area.right() - plot.left()
        foot = QRectF(plot.left(), plot.bottom() + 1.3 * canvas.line_height, wide, canvas.line_height * 1.3)
        words = translate("MediaChart", "days since sowing")
        if self._day is not None:
            words = translate("MediaChart", "days since sowing; day {day} is read").format(day=self._day)
        canvas.text(words, foot, Qt.AlignmentFlag.AlignLeft, t.soft_ink)

    def _draw_line(self, canvas: Canvas, line: GrowthLine, points: Sequence[QPointF]) -> None:
        series = self._series.get(line.treatment, 0)
        pen = QPen(series_colour(series), 2.2)
        if DASHES[series % len(DASHES)]:
            pen.setDashPattern(DASHES[series % len(DASHES)])
        canvas.painter.setPen(pen)
        canvas.painter.drawPolyline(QPolygonF(list(points)))
        for point in points:
            canvas.mark(point, series, MARK)


class MediaChart(MediaDrawing, DrawnChart):
    """A line a medium."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self.title = self.tr("Growth by medium")
        self.setAccessibleName(self.title)

    def show_growth(self, lines: Sequence[GrowthLine], series: Mapping[str, int], day: int | None) -> None:
        """Show these; `series` as in the other charts."""
        self.tell(lines, series, day)
        words = [
            self.tr("{medium}: {days}").format(
                medium=line.treatment,
                days=", ".join(
                    self.tr("day {day} {coverage} % ({trays} trays)").format(
                        day=point.day, coverage=f"{point.share:.0f}", trays=point.trays
                    )
                    for point in line.points
                ),
            )
            for line in self._lines
        ]
        self.describe("\n".join((share_words(self._lines), *words)) if words else "")
        self.update()
