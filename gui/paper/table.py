"""Sheet table: rows of text on paper, over as many pages as they take.

In    columns with their share of the width, rows of text; a row of one text is a heading
Out   pages; every row is as high as its text needs, the head stands on each page, nothing is cut
Not   what the rows say (`trialsheets.py`)
"""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import partial

from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainter

from gui.language.words import translate
from gui.paper.pages import SOFT, Page, Paper, draw_frame, draw_line, in_lines, text_height, write

__all__ = ["BOX", "Column", "table_pages"]

BOX = "\u25a1"  # a cell with this text is a box to tick
SIZE, HEAD_SIZE = 3.2, 2.8  # mm
AIR = 1.2  # mm above and below the text of a row
SIDE = 1.2  # mm left and right of it

Row = Sequence[str]


@dataclass(frozen=True, slots=True, kw_only=True)
class Column:
    """One column."""

    title: str
    share: float  # of the width, in relation to the other columns


def table_pages(
    title: str, columns: Sequence[Column], rows: Sequence[Row], paper: Paper, *, note: str = "",
    above: str = "", least_mm: float = 7.0,
) -> tuple[Page, ...]:  # fmt: skip
    """The rows under their head, with a sentence above them on every page."""
    free = paper.free
    total = sum(column.share for column in columns)
    widths = [free.width() * column.share / total for column in columns]
    lead = [line for part in above.split("\n") for line in in_lines(part, free.width(), SIZE)]
    head = _head_height(columns, widths)
    room = free.height() - len(lead) * text_height(SIZE) - 2 - head
    groups = _on_pages(rows, [max(_height(row, widths), least_mm) for row in rows], room)
    pages = []
    for number, group in enumerate(groups, start=1):
        of = translate("SheetTable", "page {n} of {total}").format(n=number, total=len(groups))
        told = f"{note} · {of}" if note and len(groups) > 1 else note or (of if len(groups) > 1 else "")
        draw = partial(
            _draw, columns=columns, widths=widths, rows=group, lead=lead, paper=paper, least_mm=least_mm
        )
        pages.append(Page(title=title, note=told, draw=draw))
    return tuple(pages)


def _on_pages(rows: Sequence[Row], heights: Sequence[float], room: float) -> list[list[Row]]:
    """Rows in order, as many on a page as there is room; a heading never stands last."""
    pages: list[list[Row]] = [[]]
    left = room
    for at, (row, height) in enumerate(zip(rows, heights, strict=True)):
        needed = height + (heights[at + 1] if len(row) == 1 and at + 1 < len(rows) else 0)
        if needed > left and pages[-1]:
            pages.append([])
            left = room
        pages[-1].append(row)
        left -= height
    return pages


def _height(row: Row, widths: Sequence[float]) -> float:
    wide = [sum(widths)] if len(row) == 1 else widths
    lines = max(len(in_lines(text, width - 2 * SIDE, SIZE)) for text, width in zip(row, wide, strict=True))
    return max(lines, 1) * text_height(SIZE) + 2 * AIR


def _head_height(columns: Sequence[Column], widths: Sequence[float]) -> float:
    lines = max(
        len(in_lines(column.title, width - 2 * SIDE, HEAD_SIZE))
        for column, width in zip(columns, widths, strict=True)
    )
    return lines * text_height(HEAD_SIZE) + 2 * AIR


def _draw(
    painter: QPainter, *, columns: Sequence[Column], widths: Sequence[float], rows: Sequence[Row],
    lead: Sequence[str], paper: Paper, least_mm: float,
) -> None:  # fmt: skip
    free = paper.free
    y = free.top()
    for line in lead:
        write(painter, free.left(), y + SIZE, line, SIZE, colour=SOFT)
        y += text_height(SIZE)
    y += 2 if lead else 0
    x = free.left()
    for column, width in zip(columns, widths, strict=True):
        _cell(painter, column.title, QRectF(x, y, width, 0), HEAD_SIZE, bold=True)
        x += width
    y += _head_height(columns, widths)
    draw_line(painter, free.left(), y, free.right(), y, 0.4)
    for row in rows:
        height = max(_height(row, widths), least_mm)
        _draw_row(painter, row, QRectF(free.left(), y, free.width(), height), widths)
        y += height


def _draw_row(painter: QPainter, row: Row, room: QRectF, widths: Sequence[float]) -> None:
    draw_line(painter, room.left(), room.bottom(), room.right(), room.bottom(), 0.1)
    if len(row) == 1:
        _cell(painter, row[0], room, SIZE, bold=True)
        return
    x = room.left()
    for text, width in zip(row, widths, strict=True):
        cell = QRectF(x, room.top(), width, room.height())
        if text == BOX:
            draw_frame(painter, QRectF(cell.left() + SIDE, cell.center().y() - 2, 4, 4))
        elif text:
            _cell(painter, text, cell, SIZE)
        else:
            draw_line(painter, x, room.top(), x, room.bottom(), 0.1)
        x += width
    if row and not row[-1]:
        draw_line(painter, x, room.top(), x, room.bottom(), 0.1)


def _cell(painter: QPainter, text: str, room: QRectF, size: float, *, bold: bool = False) -> None:
    """Text from the top of its cell, or in the middle of its height where it has one line less."""
    lines = in_lines(text, room.width() - 2 * SIDE, size, bold=bold)
    tall = len(lines) * text_height(size)
    y = room.top() + max(AIR, (room.height() - tall) / 2)
    for line in lines:
        write(painter, room.left() + SIDE, y + size, line, size, bold=bold)
        y += text_height(size)
