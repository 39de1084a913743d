"""Paper: pages in millimetres, on any painter.

In    pages, each a function that paints with a painter whose unit is 1 mm, from the paper's top left corner
Out   the page with its frame and its bar; lines, and text that fits
Not   what stands on a page (`stationsheet.py`, `tagsheet.py`, `trialsheets.py`), a file of them (`pdf.py`)

A printer that shrinks pages spoils every mark, so each page carries a bar of 100 mm to measure.
"""

from collections.abc import Callable
from dataclasses import dataclass
from enum import StrEnum

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPen

from gui.language.words import translate
from gui.style.palette import FAMILY, load_fonts

__all__ = [
    "BAR_MM", "EDGE_MM", "INK", "SOFT", "Page", "Paper", "draw_frame", "draw_line", "fitted", "in_lines",
    "paint", "text_height", "text_width", "write",
]  # fmt: skip

EDGE_MM = 10.0  # nothing is printed nearer to the paper's edge (common practice: printers need 4 to 6)
BAR_MM = 100.0
FINE = 50  # font pixels a mm: letters are laid out in whole pixels
INK, SOFT = QColor("#000000"), QColor("#505050")
HEAD_MM = 14.0  # from the edge to where a page's own drawing may begin
FOOT_MM = 12.0


class Paper(StrEnum):
    """The two sizes that printers at home take."""

    A4 = "A4"
    LETTER = "Letter"

    @property
    def size_mm(self) -> tuple[float, float]:
        """Width and height, upright (ISO 216; ANSI/ASME Y14.1)."""
        return (210.0, 297.0) if self is Paper.A4 else (215.9, 279.4)

    @property
    def free(self) -> QRectF:
        """Where a page may draw, mm: within the edges, below the title and above the bar."""
        width, height = self.size_mm
        top = EDGE_MM + HEAD_MM
        return QRectF(EDGE_MM, top, width - 2 * EDGE_MM, height - top - EDGE_MM - FOOT_MM)


@dataclass(frozen=True, slots=True, kw_only=True)
class Page:
    """One page of paper."""

    title: str
    draw: Callable[[QPainter], None]  # unit 1 mm, origin at the paper's top left corner
    note: str = ""  # at the right end of the title's line


# --- a page, on anything that can be painted


def paint(painter: QPainter, page: Page, paper: Paper) -> None:
    """One page with its title and the bar to measure; the painter's unit must be 1 mm."""
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    width, height = paper.size_mm
    inner = width - 2 * EDGE_MM
    if page.title:
        note = text_width(page.note, 3.0) + 4 if page.note else 0.0
        title, size = fitted(page.title, inner - note, 5.5, least=3.0)
        write(painter, EDGE_MM, EDGE_MM + 6, title, size, bold=True)
        if page.note:
            write(painter, width - EDGE_MM, EDGE_MM + 6, page.note, 3.0, align="right", colour=SOFT)
    _draw_bar(painter, width, height - EDGE_MM - 2)
    page.draw(painter)


def _draw_bar(painter: QPainter, width: float, y: float) -> None:
    left = EDGE_MM
    draw_line(painter, left, y, left + BAR_MM, y, 0.3)
    for x in (left, left + BAR_MM):
        draw_line(painter, x, y - 2, x, y + 2, 0.3)
    words = translate(
        "Paper", "Print at 100 %. Measure this bar: it must be 100 mm long, or nothing on this page is right."
    )
    lines = in_lines(words, width - 2 * EDGE_MM - BAR_MM - 4, 2.6)
    for number, line in enumerate(lines):
        write(painter, left + BAR_MM + 4, y - 1.2 + 3.4 * number, line, 2.6, colour=SOFT)


def draw_line(
    painter: QPainter, x1: float, y1: float, x2: float, y2: float, width: float, *, dashed: bool = False
) -> None:
    """A line in ink, mm."""
    pen = QPen(INK, width)
    pen.setCapStyle(Qt.PenCapStyle.FlatCap)
    if dashed:
        pen.setDashPattern([3 / width * 0.6, 2 / width * 0.6])
    painter.setPen(pen)
    painter.drawLine(QPointF(x1, y1), QPointF(x2, y2))


def draw_frame(painter: QPainter, rect: QRectF, width: float = 0.2) -> None:
    """An empty box, mm."""
    painter.setPen(QPen(INK, width))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(rect)


# --- text in mm; `size` is the height of a line's letters from top to base, so that a box can be filled by it


def _font(size: float, *, bold: bool) -> QFont:
    load_fonts()
    font = QFont(FAMILY)
    font.setPixelSize(max(1, round(size * FINE)))
    font.setBold(bold)
    font.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
    return font


def text_width(text: str, size: float, *, bold: bool = False) -> float:
    """How wide a text is, mm."""
    return QFontMetricsF(_font(size, bold=bold)).horizontalAdvance(text) / FINE


def text_height(size: float) -> float:
    """From line to line, mm."""
    return 1.36 * size  # Noto Sans: ascent 1.069, descent 0.293 of the size


def write(
    painter: QPainter,
    x: float,
    base: float,
    text: str,
    size: float,
    *,
    bold: bool = False,
    align: str = "left",
    colour: QColor = INK,
) -> None:
    """A line of text on its base line, mm; `align`: which part of it stands at x."""
    width = text_width(text, size, bold=bold)
    x -= width if align == "right" else width / 2 if align == "middle" else 0
    painter.save()
    painter.translate(x, base)
    painter.scale(1 / FINE, 1 / FINE)
    painter.setFont(_font(size, bold=bold))
    painter.setPen(colour)
    painter.drawText(QPointF(0, 0), text)
    painter.restore()


def fitted(text: str, width: float, size: float, *, least: float, bold: bool = True) -> tuple[str, float]:
    """The text at the largest size up to `size` at which it fits; at `least` it is cut, with three dots."""
    while size > least and text_width(text, size, bold=bold) > width:
        size -= 0.1
    if text_width(text, size, bold=bold) <= width:
        return text, size
    while text and text_width(text + "...", size, bold=bold) > width:
        text = text[:-1]
    return text + "...", size


def in_lines(text: str, width: float, size: float, *, bold: bool = False) -> list[str]:
    """The text in lines no wider than that, broken between words, and within words that are too long."""
    lines: list[str] = []
    line = ""
    for word in text.split():
        longer = f"{line} {word}".strip()
        if text_width(longer, size, bold=bold) <= width:
            line = longer
            continue
        if line:
            lines.append(line)
        while text_width(word, size, bold=bold) > width and len(word) > 1:
            fits = len(word) - 1
            while fits > 1 and text_width(word[:fits], size, bold=bold) > width:
                fits -= 1
            lines.append(word[:fits])
            word = word[fits:]
        line = word
    return [*lines, line] if line else lines
