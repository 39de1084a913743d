"""Report pieces: text and tables of a report, laid out for a width, ready for any painter.

In    texts, rows of text, a width; the unit is 1 px of 96 an inch, fonts without hinting
Out   `Piece`s: a height, what stays together with the next, how it is painted
Not   which page a piece goes to (`pages.py`), charts and pictures (`figures.py`)

Words that are wider than their room are broken within, so nothing runs over an edge.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPen, QTextLayout, QTextLine, QTextOption

from gui.style.palette import FAMILY
from gui.style.tokens import LIGHT

__all__ = ["BODY", "SMALL", "Piece", "font_of", "laid", "table_pieces", "text_pieces"]

BODY, SMALL = 13, 11  # px of letters: 9.75 and 8.25 pt
PAD = 5.0  # px within a cell
MOST_LINES = 14  # of a cell; more would be no table
MOST_NARROW = 0.34  # of the width, of a column that does not hold words


@dataclass(frozen=True, kw_only=True)
class Piece:
    """What cannot be broken over two pages."""

    height: float
    paint: Callable[[QPainter, float, float], None]  # at x, y of its top left corner
    before: float = 0.0  # px of air above; none at the top of a page
    with_next: bool = False
    head: "Piece | None" = None  # painted again where the piece begins a page
    new_page: bool = False
    mark: str = ""  # a heading's words, for a bookmark


def font_of(size: int, *, bold: bool = False) -> QFont:
    """The report's letters."""
    font = QFont(FAMILY)
    font.setPixelSize(size)
    font.setBold(bold)
    font.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
    return font


def laid(
    text: str, width: float, font: QFont, align: Qt.AlignmentFlag = Qt.AlignmentFlag.AlignLeft
) -> tuple[QTextLayout, list[QTextLine]]:
    """A text in lines no wider than that."""
    layout = QTextLayout(text.replace("\n", "\u2028"), font)
    option = QTextOption(align)
    option.setWrapMode(QTextOption.WrapMode.WrapAtWordBoundaryOrAnywhere)
    layout.setTextOption(option)
    layout.beginLayout()
    lines: list[QTextLine] = []
    y = 0.0
    while True:
        line = layout.createLine()
        if not line.isValid():
            break
        line.setLineWidth(max(width, 1.0))
        line.setPosition(QPointF(0, y))
        y += line.height()
        lines.append(line)
    layout.endLayout()
    return layout, lines


def text_pieces(
    text: str,
    width: float,
    *,
    size: int = BODY,
    bold: bool = False,
    colour: str = LIGHT.ink,
    before: float = 7.0,
    bar: str = "",
    keep: bool = False,
    mark: str = "",
) -> list[Piece]:
    """A paragraph, a piece a line; its first two and last two lines stay together.

    Parameters
    ----------
    bar : colour of a bar at its left side.
    keep : whether all of it stays with what follows, as a heading does.
    """
    indent = 12.0 if bar else 0.0
    layout, lines = laid(text, width - indent, font_of(size, bold=bold))

    def painter_of(line: QTextLine) -> Callable[[QPainter, float, float], None]:
        def paint(painter: QPainter, x: float, y: float) -> None:
            _ = layout  # lines live in it
            if bar:
                painter.fillRect(QRectF(x, y, 3.0, line.height() + 0.5), QColor(bar))
            painter.setPen(QColor(colour))
            line.draw(painter, QPointF(x + indent, y - line.y()))

        return paint

    last = len(lines) - 1
    return [
        Piece(
            height=line.height(),
            paint=painter_of(line),
            before=before if number == 0 else 0.0,
            with_next=keep or (number == 0 and last > 0) or number == last - 1,
            mark=mark if number == 0 else "",
        )
        for number, line in enumerate(lines)
    ]


# --- tables


def table_pieces(
    head: Sequence[str],
    rows: Sequence[Sequence[str]],
    width: float,
    *,
    wide: Sequence[int],
    bold_rows: Sequence[int] = (),
    size: int = SMALL,
) -> list[Piece]:
    """A piece a row; the head stays with the first and comes again on each further page.

    Parameters
    ----------
    wide : columns of words, which share the room that the others leave; the others stand right.
    bold_rows : rows that are headings of the rows below them and stay with the next.
    """
    widths = _widths([head, *rows], width, wide, size)
    top = _row(head, widths, wide, size, bold=True)
    pieces = [replace(top, before=10.0, with_next=True)]
    for number, row in enumerate(rows):
        is_head = number in bold_rows
        piece = _row(row[:1], [width], (0,), size, bold=True) if is_head else _row(row, widths, wide, size)
        stays = is_head or number == len(rows) - 2
        pieces.append(replace(piece, head=top, with_next=stays))
    return pieces


def _widths(rows: Sequence[Sequence[str]], width: float, wide: Sequence[int], size: int) -> list[float]:
    metrics = QFontMetricsF(font_of(size, bold=True))
    columns = range(len(rows[0]))
    wanted = [
        max(max(map(metrics.horizontalAdvance, row[column].split("\n"))) for row in rows) + 2 * PAD + 1
        for column in columns
    ]
    widths = [min(wanted[c], MOST_NARROW * width) if c not in wide else 0.0 for c in columns]
    room = width - sum(widths)
    words = [c for c in columns if c in wide]
    least = {c: _longest_word([row[c] for row in rows], metrics, width / (len(widths) + 1)) for c in words}
    if words and room < sum(least.values()):
        shrink = max(width - sum(least.values()), width / 3) / max(sum(widths), 1.0)
        widths = [one * min(shrink, 1.0) for one in widths]
        room = width - sum(widths)
    spare = room - sum(least.values())
    more = {c: max(wanted[c] - least[c], 1.0) for c in words}
    for c in words:
        widths[c] = max(least[c] + spare * more[c] / sum(more.values()), width / 12)
    return widths


def _longest_word(texts: Sequence[str], metrics: QFontMetricsF, most: float) -> float:
    """Room for every word of a column, up to a limit; longer words are broken."""
    longest = max((metrics.horizontalAdvance(word) for text in texts for word in text.split()), default=0.0)
    return min(longest + 2 * PAD + 1, most)


def _row(
    cells: Sequence[str], widths: Sequence[float], wide: Sequence[int], size: int, *, bold: bool = False
) -> Piece:
    font = font_of(size, bold=bold)
    placed = []
    for column, text in enumerate(cells):
        align = Qt.AlignmentFlag.AlignLeft if column in wide else Qt.AlignmentFlag.AlignRight
        layout, lines = laid(text, widths[column] - 2 * PAD, font, align)
        if len(lines) > MOST_LINES:
            layout, lines = laid(_cut(text, lines), widths[column] - 2 * PAD, font, align)
        placed.append((layout, sum(line.height() for line in lines)))
    height = max((high for _, high in placed), default=0.0) + PAD

    def paint(painter: QPainter, x: float, y: float) -> None:
        at = x
        painter.setPen(QColor(LIGHT.ink))
        for (layout, _), cell in zip(placed, widths, strict=True):
            layout.draw(painter, QPointF(at + PAD, y + PAD / 2))
            at += cell
        painter.setPen(QPen(QColor(LIGHT.ink if bold else LIGHT.line), 1.0))
        painter.drawLine(QPointF(x, y + height), QPointF(x + sum(widths), y + height))

    return Piece(height=height, paint=paint)


def _cut(text: str, lines: Sequence[QTextLine]) -> str:
    last = lines[MOST_LINES - 1]
    return text[: max(0, last.textStart() - 1)].rstrip() + " ..."
