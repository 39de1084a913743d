"""Drawn chart: what all charts of a verdict have in common: one drawing for the window, SVG and PNG.

In    a `Canvas`: painter, area, tokens, font; a chart says how it is drawn on one
Out   a widget that takes the focus and says its content in words; files of the same drawing on white
Not   what is drawn (`intervals.py` and its neighbours), lines over counts (`charts.py`)

Readable in grey: each series has a marker and a dash beside its colour, and filled marks an outline in ink.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from math import ceil, floor, log10
from pathlib import Path

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import (
    QColor,
    QFont,
    QFontInfo,
    QFontMetricsF,
    QImage,
    QImageWriter,
    QPainter,
    QPaintEvent,
    QPen,
)
from PySide6.QtSvg import QSvgGenerator
from PySide6.QtWidgets import QSizePolicy, QWidget

from gui.charts import DASHES, marker, ring
from gui.language.plainhint import plain_hint
from gui.language.spoken import in_figures
from gui.style.palette import Space, tokens_now
from gui.style.tokens import LIGHT, SERIES, Tokens

__all__ = ["Canvas", "DrawnChart", "nice_step", "series_colour", "spread_labels", "tick_words", "ticks"]

COLOURS = 6  # of SERIES; the seventh is too light for a white sheet
PNG_SCALE = 2  # px of the file for one of the window
HEAD_LINES = 3.3  # of a file: title, two lines of caption
SAVED_WIDTH = 760  # px, at least


@dataclass(frozen=True)
class Canvas:
    """Where a chart is drawn, and in which ink."""

    painter: QPainter
    area: QRectF
    tokens: Tokens
    font: QFont

    @cached_property
    def metrics(self) -> QFontMetricsF:
        """Of the font on this device."""
        return QFontMetricsF(self.font)

    @property
    def line_height(self) -> float:
        """Of one line of text, px."""
        return self.metrics.height()

    def text(self, words: str, box: QRectF, align: Qt.AlignmentFlag, colour: str = "") -> None:
        """Words in a box, cut with dots where they are too long."""
        short = self.metrics.elidedText(words, Qt.TextElideMode.ElideRight, box.width())
        self.painter.setPen(QColor(colour or self.tokens.ink))
        self.painter.drawText(box, align, short)

    def line(self, one: QPointF, other: QPointF, colour: str, width: float = 1.0, dash: int = 0) -> None:
        """A straight line."""
        pen = QPen(QColor(colour), width)
        if DASHES[dash % len(DASHES)]:
            pen.setDashPattern(DASHES[dash % len(DASHES)])
        self.painter.setPen(pen)
        self.painter.drawLine(one, other)

    def mark(
        self, at: QPointF, series: int, size: float, *, hollow: bool = False, shape: int | None = None
    ) -> None:
        """The marker of a series with its outline in ink; `shape` takes the form of another one."""
        self.painter.setPen(QPen(QColor(self.tokens.ink), 1.0))
        self.painter.setBrush(QColor(self.tokens.sheet) if hollow else series_colour(series))
        marker(self.painter, at, series if shape is None else shape, size)
        self.painter.setBrush(Qt.BrushStyle.NoBrush)


def series_colour(series: int) -> QColor:
    """The colour of a series; from the seventh on colours come again with another marker."""
    return QColor(SERIES[series % COLOURS])


class DrawnChart(QWidget):
    """A chart; a subclass says how it is drawn and how high it wants to be."""

    def __init__(self, title: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.title = title
        self.caption = ""  # stands above the drawing in files
        self.setAccessibleName(title)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)

    def describe(self, words: str) -> None:
        """Say the same to those who cannot see it; it is the tooltip too."""
        self.setAccessibleDescription(words)
        self.setToolTip(plain_hint(words))

    def draw(self, canvas: Canvas) -> None:
        """Draw on a canvas."""
        raise NotImplementedError

    def lines_high(self) -> float:
        """Lines of text that the drawing is high."""
        return 12.0

    def sizeHint(self) -> QSize:
        """As wide as there is room, as high as its rows need."""
        line = QFontMetricsF(self.font()).height()
        return QSize(round(24 * line), round(self.lines_high() * line))

    def minimumSizeHint(self) -> QSize:
        """Smaller it cannot be read."""
        line = QFontMetricsF(self.font()).height()
        return QSize(round(17 * line), round(self.lines_high() * line))

    def paintEvent(self, event: QPaintEvent) -> None:
        """The drawing, and a ring where the focus is."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        area = QRectF(self.rect()).adjusted(Space.XS, Space.XS, -Space.XS, -Space.XS)
        self.draw(Canvas(painter, area, tokens_now(), self.font()))
        ring(painter, self)

    # --- files

    def save(self, path: Path) -> None:
        """Write an SVG or, by any other ending, a PNG file; raises `OSError`."""
        data = self.as_svg() if path.suffix.lower() == ".svg" else self.as_png()
        path.write_bytes(data)

    def as_svg(self) -> bytes:
        """The drawing as an SVG file, dark on white."""
        size, buffer = self._saved_size(), QBuffer()
        generator = QSvgGenerator()
        generator.setOutputDevice(buffer)
        generator.setSize(size)
        generator.setViewBox(QRectF(0, 0, size.width(), size.height()))
        generator.setTitle(self.title)
        generator.setDescription(self.accessibleDescription())
        painter = QPainter(generator)
        self._draw_saved(painter, size)
        painter.end()
        return bytes(buffer.data().data())

    def as_png(self) -> bytes:
        """The drawing as a PNG file, dark on white, two pixels for one of the window."""
        size = self._saved_size()
        image = QImage(size * PNG_SCALE, QImage.Format.Format_RGB32)
        image.setDevicePixelRatio(PNG_SCALE)
        image.fill(QColor(LIGHT.sheet))
        painter = QPainter(image)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._draw_saved(painter, size)
        painter.end()
        data = QByteArray()
        buffer = QBuffer(data)
        buffer.open(QIODevice.OpenModeFlag.WriteOnly)
        QImageWriter(buffer, QByteArray(b"png")).write(image)
        return bytes(data.data())

    def _saved_size(self) -> QSize:
        line = QFontMetricsF(self.font()).height()
        hint = self.sizeHint()
        return QSize(max(SAVED_WIDTH, hint.width()), hint.height() + round(HEAD_LINES * line) + 2 * Space.L)

    def _draw_saved(self, painter: QPainter, size: QSize) -> None:
        font = QFont(self.font())
        font.setPixelSize(QFontInfo(self.font()).pixelSize())  # the same letters at any resolution
        painter.setFont(font)
        whole = QRectF(0, 0, size.width(), size.height())
        painter.fillRect(whole, QColor(LIGHT.sheet))
        inner = whole.adjusted(Space.L, Space.L, -Space.L, -Space.L)
        canvas = Canvas(painter, inner, LIGHT, font)
        left = Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignLeft
        bold = QFont(font)
        bold.setBold(True)
        painter.setFont(bold)
        canvas.text(self.title, QRectF(inner.left(), inner.top(), inner.width(), canvas.line_height), left)
        painter.setFont(font)
        painter.setPen(QColor(LIGHT.soft_ink))
        caption = QRectF(
            inner.left(), inner.top() + canvas.line_height, inner.width(), 2 * canvas.line_height
        )
        painter.drawText(caption, int(left | Qt.TextFlag.TextWordWrap), self.caption)
        below = inner.adjusted(0, HEAD_LINES * canvas.line_height, 0, 0)
        self.draw(Canvas(painter, below, LIGHT, font))


# --- numbers on an axis


def nice_step(span: float, most: float) -> float:
    """A round step (1, 2 or 5 times a power of ten) that writes at most `most` numbers over a span."""
    if span <= 0 or most <= 0:
        return 1.0
    rough = span / most
    size = 10.0 ** floor(log10(rough))
    for times in (1, 2, 5, 10):
        if times * size >= rough * (1 - 1e-9):
            return times * size
    return 10 * size


def ticks(low: float, high: float, most: float) -> tuple[float, ...]:
    """Round numbers from low to high, at most `most` or one more."""
    step = nice_step(high - low, most)
    first, last = ceil(low / step - 1e-9), floor(high / step + 1e-9)
    return tuple(number * step + 0.0 for number in range(first, last + 1))


def tick_words(numbers: Sequence[float], *, signed: bool = False) -> list[str]:
    """The numbers of an axis, all with as many decimals as the finest one needs; zero has no sign."""
    finest = max((len(f"{abs(number):.10g}".partition(".")[2]) for number in numbers), default=0)
    form = f"{'+' if signed else ''}.{finest}f"
    return [in_figures(number, form) if number else "0" for number in numbers]


def spread_labels(wanted: Sequence[float], apart: float, top: float, bottom: float) -> list[float]:
    """Heights for labels near the wanted ones, `apart` px from each other, between top and bottom."""
    order = sorted(range(len(wanted)), key=lambda index: wanted[index])
    placed = [0.0] * len(wanted)
    y = top - apart
    for number, index in enumerate(order):
        lowest = bottom - apart * (len(order) - 1 - number)
        y = max(y + apart, min(wanted[index], lowest))
        placed[index] = y
    return placed
