"""Time chart: the growth of a tray and, on the same time axis below it, all that was measured and done.

In    what the growth chart shows; `Notes`
Out   a painted chart with a lane for each kind of reading and one for what was done
Not   reading the notes (`notes/view.py`), correcting them (`notes/table.py`)

Each kind has a marker of its own as well as its colour; what was given is bars, striped where it was feed.
"""

from collections.abc import Sequence
from itertools import groupby
from math import ceil, floor, inf

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QBrush, QColor, QFontMetricsF, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from gui.language.spoken import filled, in_figures
from gui.notes.view import Lane, Mark, Notes
from gui.style.palette import Space, tokens_now
from gui.style.tokens import SERIES, Tokens
from gui.traysheet.growthchart import GrowthChart
from gui.traysheet.growthfit import Fitted
from gui.traysheet.view import Curve

__all__ = ["TimeChart", "rows_of", "thinned"]

PLOT_LINES = 8.5  # least height of the plot, in lines of text
FLATTEST = 6.0  # width to height of the plot: a flatter one hides how a tray comes on
LANE_LINES = 2.9
MOST_MARK_ROWS = 3
FEW = 80  # points; more are a logger's, and drawn without markers
MARKERS = ((SERIES[5], "round"), (SERIES[1], "corner"))
BARS = ((SERIES[4], Qt.BrushStyle.SolidPattern), (SERIES[3], Qt.BrushStyle.BDiagPattern))
DIAMOND = 5.0
BESIDE_MARKS = Space.S  # px from a number of the scale to the axis, on which a marker may stand


class TimeChart(GrowthChart):
    """As high as it needs to be; the page scrolls."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._notes: Notes | None = None
        policy = QSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)
        self.setAccessibleName(self.tr("Growth, readings and events over the days"))

    def heightForWidth(self, width: int) -> int:
        """The plot and its lanes; a narrow chart needs more rows for words, a wide one a higher plot."""
        metrics = QFontMetricsF(self.font())
        wide = width - self._left(metrics) - self._right(metrics, width)
        plot = max(PLOT_LINES * metrics.height(), wide / FLATTEST)
        return ceil(plot + 2 * metrics.height() + self._below(metrics, width))

    def sizeHint(self) -> QSize:
        """Never lower; how high for its width the layout asks for above."""
        metrics = QFontMetricsF(self.font())
        return QSize(480, ceil((PLOT_LINES + 2) * metrics.height()))

    def minimumSizeHint(self) -> QSize:
        """It may be narrow, but not low."""
        return QSize(260, self.sizeHint().height())

    def show_curves(self, curves: Sequence[Curve], day: float | None) -> None:
        """Show these; longer codes and later days leave less room."""
        super().show_curves(curves, day)
        self.updateGeometry()

    def show_fit(self, fitted: Fitted) -> None:
        """Draw the curve; the day of the cut may be the last one."""
        super().show_fit(fitted)
        self.updateGeometry()

    def show_notes(self, notes: Notes | None) -> None:
        """Show these below the curve."""
        self._notes = notes
        self._describe()
        self.updateGeometry()
        self.update()

    def _describe(self) -> None:
        super()._describe()
        if self._notes is None:
            return
        words = [self.accessibleDescription()]
        for lane in self._notes.lanes:
            for kind, series in zip(lane.kinds, lane.series, strict=True):
                if series:
                    told = self.tr("{kind}: {count} readings, the last one {value:g} on day {day:.0f}")
                    last, value = series[-1]
                    day = self._notes.calendar_day(last)
                    words.append(filled(told, kind=kind, count=len(series), value=value, day=day))
        done = self.tr("{words} on day {day:.0f}")
        words += [
            done.format(words=mark.words, day=self._notes.calendar_day(mark.day))
            for mark in self._notes.marks
        ]
        self.setAccessibleDescription("; ".join(words))

    # --- where things lie

    def _lane_high(self, metrics: QFontMetricsF) -> float:
        return LANE_LINES * metrics.height()

    def _marks_high(self, metrics: QFontMetricsF, width: float | None = None) -> float:
        if self._notes is None or not (self._notes.marks or self._notes.dark):
            return 0.0
        wide = self.width() if width is None else width
        left, right = self._left(metrics), self._right(metrics, wide)
        box = QRectF(left, 0, max(200.0, wide - left - right), 1)
        placed = rows_of(self._notes.marks, box, self._last_day(), metrics, taken=self._notes.dark)
        return (1.6 + max((row for _, _, row in placed), default=0)) * metrics.height()

    def _repeats_days(self) -> bool:
        return self._notes is not None and len(self._notes.lanes) > 1

    def _below(self, metrics: QFontMetricsF, width: float | None = None) -> float:
        lanes = 0 if self._notes is None else len(self._notes.lanes)
        marks = self._marks_high(metrics, width)
        gap = metrics.height() + Space.S if lanes or marks else 0
        return gap + lanes * self._lane_high(metrics) + marks

    def _left(self, metrics: QFontMetricsF) -> float:
        return metrics.horizontalAdvance("1000") + BESIDE_MARKS + 1

    def _last_day(self) -> float:
        last = super()._last_day()
        if self._notes is not None:
            days = [mark.day for mark in self._notes.marks]
            days += [line[-1][0] for lane in self._notes.lanes for line in lane.series if line]
            last = max(last, float(ceil(max(days, default=0.0) - 0.25)))
        return last

    # --- painting

    def paintEvent(self, event: QPaintEvent) -> None:
        """The curve, then lane by lane, then what was done."""
        super().paintEvent(event)
        if self._notes is None:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, True)
        metrics = QFontMetricsF(self.font())
        tokens = tokens_now()
        plot, last = self._plot(metrics), self._last_day()
        top = plot.bottom() + metrics.height() + Space.S
        for lane in self._notes.lanes:
            box = QRectF(plot.left(), top, plot.width(), self._lane_high(metrics))
            self._paint_lane(painter, box, last, lane, metrics, tokens)
            top += box.height()
        if self._marks_high(metrics):
            box = QRectF(plot.left(), top, plot.width(), self._marks_high(metrics))
            self._paint_marks(painter, box, last, self._notes, metrics, tokens)

    def _paint_lane(
        self, painter: QPainter, box: QRectF, last: float, lane: Lane, metrics: QFontMetricsF, t: Tokens
    ) -> None:
        values = [value for series in lane.series for _, value in series]
        bars = lane.bars
        low, high = (0.0 if bars else min(values)), max(values)
        field = box.adjusted(0, metrics.height() + 4, 0, -6)
        painter.setPen(QPen(QColor(t.line), 1.0))
        painter.drawLine(box.topLeft(), box.topRight())
        painter.setPen(QColor(t.soft_ink))
        title = lane.label
        if sum(1 for series in lane.series if series) > 1:
            first, second = ("■", "▨") if bars else ("●", "▲")
            title = f"{lane.label}:  {first} {lane.kinds[0]}   {second} {lane.kinds[1]}"
        painter.drawText(box.adjusted(0, 2, 0, 0), Qt.AlignmentFlag.AlignLeft, title)
        self._paint_scale(painter, field, low, high, metrics)
        for number, series in enumerate(lane.series):
            points = [_at(field, last, day, value, low, high) for day, value in series]
            if bars:
                self._paint_bars(painter, field, points, number, t)
            else:
                self._paint_series(painter, points if len(points) <= FEW else thinned(points), number, t)

    def _paint_scale(
        self, painter: QPainter, field: QRectF, low: float, high: float, metrics: QFontMetricsF
    ) -> None:
        right = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
        ends = ((high, field.top()), (low, field.bottom())) if high > low else ((high, field.center().y()),)
        for value, y in ends:
            box = QRectF(0, y - metrics.height() / 2, field.left() - BESIDE_MARKS, metrics.height())
            form = ".0f" if abs(value) >= 10 or value == 0 else ".1f"
            painter.drawText(box, right, in_figures(value, form))

    def _paint_series(self, painter: QPainter, points: list[QPointF], number: int, t: Tokens) -> None:
        colour, marker = MARKERS[number]
        pen = QPen(QColor(colour), 2.0)
        if number:
            pen.setDashPattern([3.0, 2.0])
        painter.setPen(pen)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawPolyline(QPolygonF(points))
        if len(points) > FEW:
            return
        painter.setPen(QPen(QColor(t.ink), 1.0))
        painter.setBrush(QColor(colour))
        for at in points:
            if marker == "round":
                painter.drawEllipse(at, 4, 4)
            else:
                painter.drawPolygon(QPolygonF([at + QPointF(0, -5), at + QPointF(5, 4), at + QPointF(-5, 4)]))

    def _paint_bars(
        self, painter: QPainter, field: QRectF, points: list[QPointF], number: int, t: Tokens
    ) -> None:
        colour, pattern = BARS[number]
        painter.setPen(QPen(QColor(t.ink), 1.0))
        painter.setBrush(QBrush(QColor(colour), pattern))
        for at in points:
            left = at.x() - 6 if number == 0 else at.x() + 1
            painter.drawRect(QRectF(QPointF(left, at.y()), QPointF(left + 5, field.bottom())))

    def _paint_marks(
        self, painter: QPainter, box: QRectF, last: float, notes: Notes, metrics: QFontMetricsF, t: Tokens
    ) -> None:
        painter.setPen(QPen(QColor(t.line), 1.0))
        painter.drawLine(box.topLeft(), box.topRight())
        if notes.dark is not None:
            begin, end = (box.left() + day / last * box.width() for day in notes.dark)
            bar = QRectF(begin, box.top() + 4, max(2.0, end - begin), metrics.height())
            painter.setPen(QPen(QColor(t.soft_ink), 1.0))
            painter.setBrush(QBrush(QColor(t.soft_ink), Qt.BrushStyle.Dense6Pattern))
            painter.drawRect(bar)
            painter.setPen(QColor(t.ink))
            if metrics.horizontalAdvance(self.tr("dark")) < bar.width():
                painter.drawText(bar, Qt.AlignmentFlag.AlignCenter, self.tr("dark"))
        placed = rows_of(notes.marks, box, last, metrics, taken=notes.dark)
        for mark, (x, words_x, row) in zip(notes.marks, placed, strict=True):
            y = box.top() + 4 + (row + 0.5) * metrics.height()
            painter.setPen(QPen(QColor(t.ink), 1.0))
            painter.setBrush(QColor(t.accent))
            painter.drawPolygon(
                QPolygonF([QPointF(x, y - DIAMOND), QPointF(x + DIAMOND, y), QPointF(x, y + DIAMOND),
                           QPointF(x - DIAMOND, y)])
            )  # fmt: skip
            painter.setPen(QColor(t.ink))
            if words_x is not None:
                painter.drawText(QPointF(words_x, y + metrics.ascent() / 2 - 1), mark.words)


def rows_of(
    marks: tuple[Mark, ...],
    box: QRectF,
    last: float,
    metrics: QFontMetricsF,
    taken: tuple[float, float] | None = None,
) -> list[tuple[float, float | None, int]]:
    """Place of each mark, where its words begin (None: no room, the table says it), and its row."""
    ends = [-inf] * MOST_MARK_ROWS  # a mark on the first day has half of its diamond left of the axis
    if taken is not None:
        ends[0] = box.left() + taken[1] / last * box.width() + Space.XS
    placed: list[tuple[float, float | None, int]] = []
    for mark in marks:
        x = box.left() + min(last, max(0.0, mark.day)) / last * box.width()
        wide = metrics.horizontalAdvance(mark.words)
        row = next((n for n, end in enumerate(ends) if x - DIAMOND >= end), None)
        if row is None:
            placed.append((x, None, MOST_MARK_ROWS - 1))
            continue
        right = box.right() + Space.XL
        begins: float | None = x + DIAMOND + 3
        if x + DIAMOND + 3 + wide > right:
            begins = x - DIAMOND - 3 - wide
            if begins < max(ends[row], box.left()):
                begins = None
        placed.append((x, begins, row))
        ends[row] = Space.S + (x + DIAMOND if begins is None or begins < x else begins + wide)
    return placed


def thinned(points: list[QPointF]) -> list[QPointF]:
    """A logger's line as it looks: of each column of pixels the lowest and the highest point, in order."""
    kept: list[QPointF] = []
    for _, within in groupby(points, key=lambda at: floor(at.x())):
        column = sorted(within, key=QPointF.y)
        kept += sorted((column[0], column[-1]), key=QPointF.x)
    return kept


def _at(field: QRectF, last: float, day: float, value: float, low: float, high: float) -> QPointF:
    """Where a reading stands; one from before the sowing at the sowing, as the marks do."""
    share = (value - low) / (high - low) if high > low else 0.5
    return QPointF(
        field.left() + max(0.0, day) / last * field.width(), field.bottom() - share * field.height()
    )
