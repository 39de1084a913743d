"""Station sheet: the four cards of the station to print, each with an arm that shows where a corner goes.

In    the measures of a kind of tray
Out   two pages: cards 0 and 1 of the far side, cards 3 and 2 of the near side
Not   what the camera makes of them (`vision/station.py`), tags (`tagsheet.py`)

Cut along the outer line and lay the card flat: the rim's outer corner stands right above the printed corner.
Four cards and one tray are the station then; nobody needs a tape measure.
"""

from collections.abc import Sequence
from functools import partial

from PySide6.QtCore import QT_TRANSLATE_NOOP, QPointF, QRectF
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen

from gui.language.spoken import in_figures
from gui.language.words import translate
from gui.paper.markpaint import draw_mark
from gui.paper.pages import EDGE_MM, INK, SOFT, Page, Paper, draw_line, in_lines, text_height, write

__all__ = ["station_pages"]

ARM_MM = 30.0  # width of the arm under the tray's corner
OVER_MM = 6.0  # by how much the arm reaches beyond the corner
NAMES = {
    0: str(QT_TRANSLATE_NOOP("StationSheet", "far left")),
    1: str(QT_TRANSLATE_NOOP("StationSheet", "far right")),
    2: str(QT_TRANSLATE_NOOP("StationSheet", "near right")),
    3: str(QT_TRANSLATE_NOOP("StationSheet", "near left")),
}


def station_pages(
    paper: Paper, outer_long_mm: float = 545.0, outer_short_mm: float = 278.0, tray_type: str = "10 x 20 inch"
) -> tuple[Page, ...]:
    """The far and the near pair of cards; of a tray so short that they would lie on each other, why not."""
    from vision.traytype import CARD_INSET_MM, CARD_MM, CARD_OUTSET_MM

    shortest = 2 * CARD_INSET_MM + CARD_MM
    if outer_long_mm < shortest:
        draw = partial(_draw_too_short, paper=paper, tray_type=tray_type, shortest=shortest)
        return (Page(title=translate("StationSheet", "No station cards"), note=tray_type, draw=draw),)
    apart = (outer_long_mm - 2 * CARD_INSET_MM, outer_short_mm + 2 * CARD_OUTSET_MM)

    def far(painter: QPainter) -> None:
        _draw_pair(painter, paper, (0, 1), apart, tray_type)

    def near(painter: QPainter) -> None:
        _draw_pair(painter, paper, (3, 2), apart, tray_type)

    return (
        Page(title=translate("StationSheet", "Station cards, far side"), note=tray_type, draw=far),
        Page(title=translate("StationSheet", "Station cards, near side"), note=tray_type, draw=near),
    )


def _draw_too_short(painter: QPainter, *, paper: Paper, tray_type: str, shortest: float) -> None:
    words = translate(
        "StationSheet",
        "The tray type {tray} is too short for a station: below {shortest} mm the cards would lie on each "
        "other. Its trays are found by their rim, or by the corners that you drag; tags help all the same.",
    ).format(tray=tray_type, shortest=in_figures(shortest))
    _write_sentences(painter, paper.free, (words,))


def _draw_pair(
    painter: QPainter, paper: Paper, numbers: tuple[int, int], apart: tuple[float, float], tray_type: str
) -> None:
    """Left and right card of one side of the station."""
    from vision.traytype import CARD_INSET_MM, CARD_MM, CARD_OUTSET_MM

    width, _ = paper.size_mm
    free = paper.free
    far = numbers[0] == 0
    reach = CARD_INSET_MM + OVER_MM
    left = QPointF(EDGE_MM - 1.5 + reach, 0)
    right = QPointF(width - left.x(), 0)
    y = free.top() + CARD_MM / 2 if far else free.top() + CARD_OUTSET_MM + OVER_MM + 4
    for number, x in zip(numbers, (left.x(), right.x()), strict=True):
        _draw_card(painter, number, QPointF(x, y))
    below = y + (CARD_OUTSET_MM + OVER_MM if far else CARD_MM / 2) + 10
    _draw_words(painter, QRectF(free.left(), below, free.width(), free.bottom() - below), apart, tray_type)


def _draw_card(painter: QPainter, number: int, centre: QPointF) -> None:
    """One card with its mark, name and arm; the mark's top is the far side on all four."""
    from vision.traytype import CARD_INSET_MM, CARD_MARK_MM, CARD_MM, CARD_OUTSET_MM

    toward = -1 if number in (0, 3) else 1  # the tray's corner lies to the left of the left cards
    down = 1 if number in (0, 1) else -1  # and nearer than the far ones
    corner = QPointF(centre.x() + toward * CARD_INSET_MM, centre.y() + down * CARD_OUTSET_MM)
    card = QRectF(centre.x() - CARD_MM / 2, centre.y() - CARD_MM / 2, CARD_MM, CARD_MM)
    painter.setPen(QPen(INK, 0.15))
    painter.drawPath(_outline(card, corner, toward, down))
    draw_mark(painter, number, centre, CARD_MARK_MM)
    _draw_corner(painter, corner, toward, down)
    name = translate("StationSheet", NAMES[number])
    base = card.top() + 5.2 if down > 0 else card.bottom() - 1.6
    write(painter, centre.x(), base, f"{number}  {name}", 4.0, bold=True, align="middle")


def _outline(card: QRectF, corner: QPointF, toward: int, down: int) -> QPainterPath:
    """Card and arm in one piece."""
    beyond = corner.x() + toward * OVER_MM
    end = corner.y() + down * OVER_MM
    begin = card.center().y()
    arm = QRectF(
        QPointF(min(beyond, corner.x() - toward * ARM_MM), min(begin, end)),
        QPointF(max(beyond, corner.x() - toward * ARM_MM), max(begin, end)),
    )
    path, more = QPainterPath(), QPainterPath()
    path.addRect(card)
    more.addRect(arm)
    return path.united(more)


def _draw_corner(painter: QPainter, corner: QPointF, toward: int, down: int) -> None:
    """The rim's outer corner, and which way the tray lies."""
    inward = -toward * (ARM_MM - 2)
    draw_line(painter, corner.x(), corner.y(), corner.x() + inward, corner.y(), 0.6)
    draw_line(painter, corner.x(), corner.y(), corner.x(), corner.y() + down * OVER_MM, 0.6)
    draw_line(painter, corner.x(), corner.y() - down * 18, corner.x(), corner.y(), 0.15, dashed=True)
    words = translate("StationSheet", "corner of the rim")
    x = corner.x() + (1.5 if toward < 0 else -1.5)
    align = "left" if toward < 0 else "right"
    write(painter, x, corner.y() - (2 if down > 0 else -4.5), words, 2.8, align=align)


def _draw_words(painter: QPainter, room: QRectF, apart: tuple[float, float], tray_type: str) -> None:
    words = (
        translate(
            "StationSheet",
            "Print on plain matt paper at 100 %, do not laminate. Cut along the thin outer line.",
        ),
        translate(
            "StationSheet",
            "Lay a tray where it will be photographed. Push each card under the tray's corner until the "
            "corner of the rim stands right above the printed corner. All names are as you stand before the "
            "tray. Fix the cards flat with tape: from then on a tray goes where the printed corners are.",
        ),
        translate(
            "StationSheet",
            "For the tray type {tray} the middles of the marks then lie {across} mm apart along the long "
            "side and {deep} mm apart from far to near. Measure both if you can. Take photos from above.",
        ).format(tray=tray_type, across=in_figures(apart[0]), deep=in_figures(apart[1])),
        translate(
            "StationSheet", "Keep the white rim around each mark free. A card that leaves hide does no harm."
        ),
    )
    _write_sentences(painter, room, words, last=SOFT)


def _write_sentences(painter: QPainter, room: QRectF, sentences: Sequence[str], last: QColor = INK) -> None:
    y, size = room.top(), 3.4
    for sentence in sentences:
        for line in in_lines(sentence, room.width(), size):
            y += text_height(size)
            write(painter, room.left(), y, line, size, colour=last if sentence is sentences[-1] else INK)
        y += 1.6
