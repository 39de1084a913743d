"""Report pages: the content of a report on sheets of paper.

In    a `Report`, the paper
Out   `Sheets`: which piece stands where on which page, painted on any painter whose unit is 1 mm
Not   writing a file (`report`), the pieces (`pieces.py`, `figures.py`)

A heading never ends a page, the head of a table comes again on each of its pages, and the report for a
customer is made to fit two pages: first by smaller letters, then by leaving out what can be spared, which is
said.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen

from data.report.content import (
    Block,
    Grid,
    GrowthFigure,
    Heading,
    IntervalFigure,
    Materials,
    Paragraph,
    PictureRow,
    Report,
    VerdictGrid,
)
from data.sentence import Sentence
from gui.language.spoken import spoken
from gui.language.words import translate
from gui.paper.pages import Paper
from gui.report.figures import chart_piece, picture_piece
from gui.report.pieces import BODY, SMALL, Piece, font_of, laid, table_pieces, text_pieces
from gui.report.words import text_tables
from gui.style.tokens import LIGHT

__all__ = ["LEFT_OUT", "Sheets", "lay_out"]

PX_PER_MM = 96 / 25.4
EDGE = 16.0  # mm
FOOT = 9.0  # mm above the edge, for the page's number
SCALES = (1.0, 0.94, 0.88, 0.82, 0.76)  # of letters, until the short report fits
SHORT_PAGES = 2
MOST_LEVELS = 9  # deeper than any heading: text may stand below each
LEFT_OUT = Sentence("Some tables and pictures found no room on two pages; they are in the full report.")
Check = Callable[[], None]


@dataclass(frozen=True, kw_only=True)
class Placed:
    """A piece on its page."""

    piece: Piece
    y: float  # px from the top of the text


@dataclass(frozen=True, kw_only=True)
class Sheets:
    """A report laid out."""

    report: Report
    paper: Paper
    scale: float  # of letters
    pages: tuple[tuple[Placed, ...], ...]

    def marks(self) -> tuple[tuple[str, int], ...]:
        """Headings with the page that each stands on, from 0."""
        return tuple(
            (placed.piece.mark, number)
            for number, page in enumerate(self.pages)
            for placed in page
            if placed.piece.mark
        )

    def paint(self, painter: QPainter, number: int) -> None:
        """One page; the painter's unit must be 1 mm."""
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.save()
        painter.translate(EDGE, EDGE)
        painter.scale(self.scale / PX_PER_MM, self.scale / PX_PER_MM)
        for placed in self.pages[number]:
            placed.piece.paint(painter, 0.0, placed.y)
        painter.restore()
        self._paint_foot(painter, number)

    def _paint_foot(self, painter: QPainter, number: int) -> None:
        width, height = self.paper.size_mm
        painter.save()
        painter.translate(EDGE, height - EDGE)
        painter.scale(1 / PX_PER_MM, 1 / PX_PER_MM)
        room = (width - 2 * EDGE) * PX_PER_MM
        painter.setPen(QPen(QColor(LIGHT.line), 1.0))
        painter.drawLine(QPointF(0, -14), QPointF(room, -14))
        painter.setPen(QColor(LIGHT.soft_ink))
        words = translate("Report", "page {n} of {all}").format(n=number + 1, all=len(self.pages))
        right, _ = laid(words, room, font_of(SMALL), Qt.AlignmentFlag.AlignRight)
        right.draw(painter, QPointF(0, -10))
        left, lines = laid(self.report.title, room - 130, font_of(SMALL))
        painter.setClipRect(QRectF(0, -12, room - 130, lines[0].height() + 4))
        left.draw(painter, QPointF(0, -10))
        painter.restore()


def lay_out(report: Report, paper: Paper, check: Check = lambda: None) -> Sheets:
    """Put a report on pages; `check` is called now and then and may raise to stop."""
    if not report.short:
        return _laid_at(report, paper, 1.0, check)
    blocks = report.blocks
    told = False
    while True:
        for scale in SCALES:
            sheets = _laid_at(replace(report, blocks=blocks), paper, scale, check)
            if len(sheets.pages) <= SHORT_PAGES:
                return sheets
        spare = max((block.spare for block in blocks), default=0)
        if spare == 0:
            blocks = _without_last(blocks)
        else:
            blocks = tuple(block for block in blocks if block.spare < spare)
        blocks = _without_bare_headings(blocks)
        if not told:
            blocks, told = (*blocks, Paragraph(text=LEFT_OUT, role="small")), True


def _without_last(blocks: tuple[Block, ...]) -> tuple[Block, ...]:
    """Without the last picture or chart, or at last the longest text: cautions and answers go last of all."""
    for kind in (PictureRow, GrowthFigure, VerdictGrid, IntervalFigure, Grid):
        found = [number for number, block in enumerate(blocks) if isinstance(block, kind)]
        if found:
            return blocks[: found[-1]] + blocks[found[-1] + 1 :]
    texts = {number: block for number, block in enumerate(blocks) if isinstance(block, Paragraph)}
    plain = [number for number, block in texts.items() if block.role == ""]
    longest = max(plain or texts, key=lambda number: len(texts[number].text))
    return blocks[:longest] + blocks[longest + 1 :]


def _without_bare_headings(blocks: tuple[Block, ...]) -> tuple[Block, ...]:
    """Without headings below which nothing is left."""
    kept: list[Block] = []
    level_below = 0  # of the heading that follows; the end is the highest of all
    for block in reversed(blocks):
        level = block.level if isinstance(block, Heading) else None
        if level is None or level < level_below:
            kept.append(block)
            level_below = level or MOST_LEVELS
    return tuple(reversed(kept))


def _laid_at(report: Report, paper: Paper, scale: float, check: Check) -> Sheets:
    width = (paper.size_mm[0] - 2 * EDGE) * PX_PER_MM / scale
    height = (paper.size_mm[1] - 2 * EDGE - FOOT) * PX_PER_MM / scale
    pieces = text_pieces(report.title, width, size=26, bold=True, keep=True, before=0.0, mark=report.title)
    pieces += text_pieces(spoken(report.subtitle), width, colour=LIGHT.soft_ink, before=2.0)
    for block in report.blocks:
        check()
        pieces += _pieces_of(block, width)
    return Sheets(report=report, paper=paper, scale=scale, pages=_paged(pieces, height))


def _pieces_of(block: Block, width: float) -> list[Piece]:
    match block:
        case Heading():
            size, before = (18, 20.0) if block.level == 1 else (14, 13.0)
            found = text_pieces(
                spoken(block.text),
                width,
                size=size,
                bold=True,
                keep=True,
                before=before,
                mark=spoken(block.text),
            )
            return [replace(found[0], new_page=block.on_new_page), *found[1:]]
        case Paragraph():
            bar = {"answer": LIGHT.accent, "caution": LIGHT.notice}.get(block.role, "")
            size, before = (SMALL, 4.0) if block.role == "small" else (BODY, 7.0)
            return text_pieces(
                spoken(block.text), width, size=size, bar=bar, before=before, keep=block.with_next
            )
        case IntervalFigure() | GrowthFigure():
            return [chart_piece(block, width)]
        case PictureRow():
            return [picture_piece(block, width)]
        case Grid() | VerdictGrid() | Materials():
            return [
                piece
                for table in text_tables(block)
                for piece in table_pieces(
                    table.head, table.rows, width, wide=table.wide, bold_rows=table.bold_rows
                )
            ]
    return []


def _paged(pieces: Sequence[Piece], height: float) -> tuple[tuple[Placed, ...], ...]:
    """Groups of pieces that stay together, one after the other; what does not fit begins the next page."""
    pages: list[list[Placed]] = [[]]
    y = 0.0
    for group in _groups(pieces, height):
        first = group[0]
        need = sum(piece.height + piece.before for piece in group)
        if pages[-1] and (first.new_page or y + need > height):
            pages.append([])
            y = 0.0
        for piece in group:
            if not pages[-1] and piece.head is not None:
                pages[-1].append(Placed(piece=piece.head, y=0.0))
                y = piece.head.height
            y += piece.before if pages[-1] else 0.0
            pages[-1].append(Placed(piece=piece, y=y))
            y += piece.height
    return tuple(map(tuple, pages))


def _groups(pieces: Sequence[Piece], height: float) -> list[list[Piece]]:
    """Pieces with those that must follow them; a group that fills a page is broken."""
    groups: list[list[Piece]] = []
    is_open = False
    for piece in pieces:
        tall = groups and sum(one.height + one.before for one in groups[-1]) + piece.height > height * 0.9
        if is_open and not tall:
            groups[-1].append(piece)
        else:
            groups.append([piece])
        is_open = piece.with_next
    return groups
