"""Tag sheet: tags of trays to print: mark, white and grey patch, the tray's code in plain letters.

In    codes and tag numbers
Out   pages with six tags each, cards of 88 x 40 mm on a strip that hooks over the rim
Not   which tray gets which tag (`data/plan/drawing.py`), reading them (`vision/markers.py`)

The white patch is the bare paper (reflectance about 0.85), the grey one is printed with a linear reflectance
of about 0.20 (sRGB 124, IEC 61966-2-1).
"""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import partial

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen

from gui.language.words import translate
from gui.paper.markpaint import draw_mark
from gui.paper.pages import INK, SOFT, Page, Paper, draw_line, in_lines, text_height, text_width, write

__all__ = ["CODE_MM", "TagLabel", "code_lines", "draw_code", "draw_tag", "tag_pages"]

STRIP_MM = (30.0, 34.0)  # width and length of the strip above the card
HOOK_MM = 12.0  # of it is folded down inside the rim
ACROSS, DOWN = 2, 3
WORDS_MM = 9.0
GREY = QColor(124, 124, 124)
CODE_MM = QRectF(18.5, -18.0, 24.0, 36.0)  # room for the code, from the card's middle, y down
LARGEST, LEAST_IN_ONE, SMALLEST = 13.0, 5.0, 1.5  # height of the code's letters, mm


@dataclass(frozen=True, slots=True, kw_only=True)
class TagLabel:
    """What one tag says."""

    number: int  # 10 to 586
    code: str


def tag_pages(tags: Sequence[TagLabel], paper: Paper) -> tuple[Page, ...]:
    """The tags, in the order given."""
    each = ACROSS * DOWN
    groups = [tags[at : at + each] for at in range(0, len(tags), each)]
    return tuple(
        Page(
            title=translate("TagSheet", "Tags"),
            note=translate("TagSheet", "page {n} of {total}").format(n=number, total=len(groups)),
            draw=partial(_draw_page, tags=group, paper=paper),
        )
        for number, group in enumerate(groups, start=1)
    )


def _draw_page(painter: QPainter, tags: Sequence[TagLabel], paper: Paper) -> None:
    from vision.traytype import TAG_MM

    width, height = TAG_MM
    free = paper.free
    gap = (free.width() - ACROSS * width) / (ACROSS - 1)
    step = (free.height() - WORDS_MM) / DOWN
    words = translate(
        "TagSheet",
        "Cut out card and strip in one piece, fold at the dashed line and hook it over a long side of the "
        "rim: the card lies outside, face up, and stays with its tray. Stiff matt paper, not laminated.",
    )
    for number, line in enumerate(in_lines(words, free.width(), 3.0)):
        write(painter, free.left(), free.top() + text_height(3.0) * number, line, 3.0, colour=SOFT)
    for number, tag in enumerate(tags):
        row, column = divmod(number, ACROSS)
        left = free.left() + column * (width + gap)
        top = free.top() + WORDS_MM + row * step + STRIP_MM[1]
        draw_tag(painter, tag, QPointF(left + width / 2, top + height / 2))


def draw_tag(painter: QPainter, tag: TagLabel, middle: QPointF) -> None:
    """One tag with its strip; `middle` is the card's own middle, mm."""
    from vision.traytype import GREY_MM, PATCH_MM, TAG_MARK_MM, TAG_MIDDLE_MM, TAG_MM, WHITE_MM

    width, height = TAG_MM
    card = QRectF(middle.x() - width / 2, middle.y() - height / 2, width, height)
    painter.setPen(QPen(INK, 0.15))
    painter.drawPath(_outline(card))
    fold = card.top() - STRIP_MM[1] + HOOK_MM
    draw_line(
        painter, middle.x() - STRIP_MM[0] / 2, fold, middle.x() + STRIP_MM[0] / 2, fold, 0.2, dashed=True
    )
    mark = QPointF(middle.x() - TAG_MIDDLE_MM[0], middle.y() - TAG_MIDDLE_MM[1])
    draw_mark(painter, tag.number, mark, TAG_MARK_MM)
    for (x, y), colour in ((WHITE_MM, None), (GREY_MM, GREY)):
        patch = QRectF(mark.x() + x - PATCH_MM / 2, mark.y() - y - PATCH_MM / 2, PATCH_MM, PATCH_MM)
        if colour is None:
            painter.setPen(QPen(SOFT, 0.15))
            painter.drawRect(patch)
        else:
            painter.fillRect(patch, colour)
    draw_code(painter, tag.code, CODE_MM.translated(middle))
    words = translate("TagSheet", "tag {n}").format(n=tag.number)
    write(painter, middle.x(), card.top() - 4, words, 2.8, align="middle", colour=SOFT)


def _outline(card: QRectF) -> QPainterPath:
    """Card and strip in one piece."""
    width, length = STRIP_MM
    path, strip = QPainterPath(), QPainterPath()
    path.addRect(card)
    strip.addRect(QRectF(card.center().x() - width / 2, card.top() - length, width, length + 1))
    return path.united(strip)


def draw_code(
    painter: QPainter,
    code: str,
    room: QRectF,
    largest: float = LARGEST,
    least_in_one: float = LEAST_IN_ONE,
) -> None:
    """The code in the middle of `room`, as large as it fits, never cut; sizes in mm."""
    lines, size = code_lines(code, room, largest, least_in_one)
    step = text_height(size)
    base = room.center().y() - len(lines) * step / 2 + size
    for number, line in enumerate(lines):
        write(painter, room.center().x(), base + number * step, line, size, bold=True, align="middle")


def code_lines(
    code: str, room: QRectF, largest: float = LARGEST, least_in_one: float = LEAST_IN_ONE
) -> tuple[list[str], float]:
    """One line while its letters can be read at arm's length, else as many as it takes."""
    size = largest
    while size > least_in_one and text_width(code, size, bold=True) > room.width():
        size -= 0.25
    if text_width(code, size, bold=True) <= room.width():
        return [code], size
    size = largest
    while True:
        lines = in_lines(code, room.width(), size, bold=True)
        if size <= SMALLEST or len(lines) * text_height(size) <= room.height():
            return lines, size
        size -= 0.25
