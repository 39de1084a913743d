"""Report figures: charts and pictures of a report, for paper as drawing, for mail as PNG and JPEG.

In    `IntervalFigure`, `GrowthFigure`, `PictureRow`; a width
Out   `Piece`s; bytes of pictures that carry nothing of the photo's own notes
Not   how charts are drawn (`answer/intervals.py`, `answer/media.py`), text (`pieces.py`)

Pictures are painted anew on an empty image, so no note, place or number of a camera can come along.
"""

from pathlib import Path

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QImage, QImageReader, QImageWriter, QPainter, QPen

from data.report.content import GrowthFigure, IntervalFigure, PictureRow
from gui.answer.drawnchart import Canvas
from gui.answer.intervals import IntervalDrawing
from gui.answer.media import MediaDrawing, share_words
from gui.answer.view import intervals_of, series_of
from gui.language.spoken import spoken
from gui.language.words import translate
from gui.report.pieces import SMALL, Piece, font_of, laid
from gui.style.tokens import LIGHT

__all__ = ["chart_piece", "chart_png", "chart_words", "picture_jpeg", "picture_piece"]

CHART_PX = 12  # of letters
GAP = 10.0  # between pictures
PER_ROW = 3
SHARP = 190 / 96  # dots of a picture for one px of paper: 190 an inch
QUALITY = 82
WEB_WIDTH = 420  # px
PNG_SCALE = 2
LEAST_LINES = 9.0

Chart = IntervalFigure | GrowthFigure


def _drawing(block: Chart) -> IntervalDrawing | MediaDrawing:
    found = block.found
    if isinstance(block, IntervalFigure):
        intervals = IntervalDrawing()
        intervals.told = intervals_of(found)
        return intervals
    growth = MediaDrawing()
    names = [line.treatment for line in block.lines]
    growth.tell(block.lines, {name: series_of(found, name) for name in names}, found.on_day)
    return growth


def chart_words(block: Chart) -> str:
    """The chart in words, for who cannot see it."""
    if isinstance(block, IntervalFigure):
        return "; ".join(line.words for line in intervals_of(block.found).lines)
    lines = "; ".join(
        f"{line.treatment}: " + ", ".join(f"{point.day}: {point.share:.0f} %" for point in line.points)
        for line in block.lines
    )
    return f"{share_words(block.lines)}: {lines}"


def chart_piece(block: Chart, width: float) -> Piece:
    """The chart as wide as the text."""
    drawing, font = _drawing(block), font_of(CHART_PX)
    height = max(drawing.lines_high(), LEAST_LINES) * CHART_PX * 1.36

    def paint(painter: QPainter, x: float, y: float) -> None:
        painter.save()
        painter.setFont(font)
        drawing.draw(Canvas(painter, QRectF(x, y, width, height), LIGHT, font))
        painter.restore()

    return Piece(height=height, paint=paint, before=10.0)


def chart_png(block: Chart, width: int = 680) -> bytes:
    """The chart on white, two dots a pixel."""
    piece = chart_piece(block, float(width))
    image = QImage(QSize(width, round(piece.height)) * PNG_SCALE, QImage.Format.Format_RGB32)
    image.fill(QColor(LIGHT.sheet))
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.scale(PNG_SCALE, PNG_SCALE)
    piece.paint(painter, 0.0, 0.0)
    painter.end()
    return _encoded(image, b"png")


# --- pictures


def _picture(path: Path, width: int) -> QImage | None:
    """The picture painted anew at a width of dots; None where the file is gone or no picture."""
    read = QImageReader(str(path)).read()
    if read.isNull():
        return None
    small = read.scaledToWidth(min(width, read.width()), Qt.TransformationMode.SmoothTransformation)
    clean = QImage(small.size(), QImage.Format.Format_RGB32)
    clean.fill(QColor(LIGHT.sheet))
    painter = QPainter(clean)
    painter.drawImage(0, 0, small)
    painter.end()
    return clean


def picture_jpeg(path: Path) -> bytes | None:
    """The picture for mail."""
    image = _picture(path, WEB_WIDTH)
    return None if image is None else _encoded(image, b"jpeg")


def _encoded(image: QImage, kind: bytes) -> bytes:
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QImageWriter(buffer, QByteArray(kind))
    writer.setQuality(QUALITY if kind == b"jpeg" else -1)
    writer.write(image)
    return bytes(data.data())


def picture_piece(block: PictureRow, width: float) -> Piece:
    """Name of the medium, pictures, their words: one piece, so that they stay together."""
    side = (width - (PER_ROW - 1) * GAP) / PER_ROW
    name, name_lines = laid(block.name, width, font_of(SMALL + 1, bold=True))
    above = sum(line.height() for line in name_lines) + 3.0 if block.name else 0.0
    words = [laid(spoken(one.words), side, font_of(SMALL)) for one in block.pictures]
    below = max(sum(line.height() for line in lines) for _, lines in words)

    def paint(painter: QPainter, x: float, y: float) -> None:
        painter.setPen(QColor(LIGHT.ink))
        name.draw(painter, QPointF(x, y))
        for number, (one, (layout, _)) in enumerate(zip(block.pictures, words, strict=True)):
            box = QRectF(x + number * (side + GAP), y + above, side, side / 2)
            image = _picture(one.path, round(side * SHARP))
            if image is not None:
                painter.drawImage(box, image)
            else:
                painter.setPen(QColor(LIGHT.soft_ink))
                gone, _ = laid(translate("Report", "The picture is gone."), side - 2 * GAP, font_of(SMALL))
                gone.draw(painter, QPointF(box.left() + GAP, box.top() + GAP))
            painter.setPen(QPen(QColor(LIGHT.line), 1.0))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(box)
            painter.setPen(QColor(LIGHT.ink))
            layout.draw(painter, QPointF(box.left(), box.bottom() + 2))

    return Piece(height=above + side / 2 + below + 4.0, paint=paint, before=9.0)
