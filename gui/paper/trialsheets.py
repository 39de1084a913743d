"""Trial sheets: what a grower carries to the rack: sowing sheet, bench map, blank reading sheet.

In    a plan and the places drawn for it
Out   pages
Not   tags and station cards (`tagsheet.py`, `stationsheet.py`), drawing the places (`data/plan/drawing.py`)

The reading sheet says codes only: whoever scores by eye should not read the medium beside the tray.
"""

from collections.abc import Sequence
from datetime import date
from functools import partial
from itertools import groupby

from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainter

from data.plan.drawing import Place
from data.trial import CropPlan, Plan
from gui.language.spoken import day_words, in_figures, spoken
from gui.language.words import translate
from gui.paper.pages import SOFT, Page, Paper, draw_frame, draw_line, in_lines, text_height, write
from gui.paper.table import BOX, Column, table_pages
from gui.paper.tagsheet import draw_code

__all__ = ["map_pages", "reading_pages", "sowing_pages"]

SHELF_MM = 40.0  # height of one shelf on the map, with its heading
BOX_MM = 27.0
CODE_MM = 8.0  # of it, at the top, is the code's


def sowing_pages(plan: Plan, places: Sequence[Place], paper: Paper) -> tuple[Page, ...]:
    """What goes into which tray and where it stands, block by block in the order of sowing."""
    columns = (
        Column(title=translate("TrialSheets", "done"), share=7),
        Column(title=translate("TrialSheets", "code"), share=14),
        Column(title=translate("TrialSheets", "tag"), share=8),
        Column(title=translate("TrialSheets", "place"), share=10),
        Column(title=translate("TrialSheets", "crop"), share=24),
        Column(title=translate("TrialSheets", "treatment"), share=36),
        Column(title=translate("TrialSheets", "dry seed"), share=14),
    )
    rows: list[Sequence[str]] = []
    for block, there in _by_block(places):
        day = there[0].sow_on
        head = translate("TrialSheets", "{block}, sow on {day}").format(block=spoken(block), day=_day(day))
        rows.append((head,))
        rows += [_sowing_row(plan, place) for place in there]
    same = ", ".join(f"{spoken(name)}: {spoken(level)}" for name, level in plan.same.items() if level)
    above = plan.words
    if same:
        above += "\n" + translate("TrialSheets", "The same for all trays: {what}.").format(what=same)
    above += "".join(f"\n{line}" for line in map(_crop_words, plan.crops) if line)
    return table_pages(
        translate("TrialSheets", "Sowing sheet"), columns, rows, paper, note=plan.trial, above=above
    )


def _crop_words(crop: CropPlan) -> str:
    """What is done with a crop beside its amount of seed; empty where the plan says nothing of it."""
    said = []
    if crop.seed_lot:
        said.append(translate("TrialSheets", "seed lot {lot}").format(lot=crop.seed_lot))
    if crop.soak_hours == 0:
        said.append(translate("TrialSheets", "sown dry"))
    elif crop.soak_hours is not None:
        said.append(translate("TrialSheets", "soaked {hours} h").format(hours=in_figures(crop.soak_hours)))
    if crop.blackout_days == 0:
        said.append(translate("TrialSheets", "never covered"))
    elif crop.blackout_days is not None:
        words = translate("TrialSheets", "days covered after sowing: {days}")
        said.append(words.format(days=in_figures(crop.blackout_days)))
    return f"{crop.name}: {'; '.join(said)}." if said else ""


def _sowing_row(plan: Plan, place: Place) -> tuple[str, ...]:
    rate = plan.crop(place.crop).sowing_rate_g
    seed = "" if rate is None else f"{in_figures(rate)} g"
    where = f"{place.shelf} {place.position}"
    return (BOX, place.code, str(place.tag_number), where, place.crop, place.treatment, seed or "..... g")


def map_pages(plan: Plan, places: Sequence[Place], paper: Paper) -> tuple[Page, ...]:
    """Every shelf as one stands before it, left to right."""
    shelves = [(block, shelf, list(there)) for (block, shelf), there in groupby(places, _block_and_shelf)]
    each = int((paper.free.height() - 8) // SHELF_MM)
    groups = [shelves[at : at + each] for at in range(0, len(shelves), each)]
    return tuple(
        Page(
            title=translate("TrialSheets", "Bench map"),
            note=plan.trial,
            draw=partial(_draw_map, plan=plan, shelves=group, paper=paper),
        )
        for group in groups
    )


def _draw_map(
    painter: QPainter, *, plan: Plan, shelves: Sequence[tuple[str, str, Sequence[Place]]], paper: Paper
) -> None:
    free = paper.free
    window = {block.name: block.window_end for block in plan.blocks}
    widest = max(len(there) for _, _, there in shelves)
    wide = min(free.width() / max(widest, 1), 44.0)
    y = free.top()
    for block, shelf, there in shelves:
        on_one = len({place.shelf for place in _places_of(shelves, block)}) == 1
        head = spoken(block) if on_one else f"{spoken(block)}: {shelf}"
        write(painter, free.left(), y + 4.5, head, 3.8, bold=True)
        first = there[0].position
        for place in there:
            room = QRectF(free.left() + (place.position - first) * wide, y + 7, wide, BOX_MM)
            _draw_place(painter, place, room)
        end = window.get(block, "")
        if end:
            x = free.left() if end == "first" else free.left() + len(there) * wide
            draw_line(painter, x, y + 6, x, y + 8 + BOX_MM, 1.2)
            words = translate("TrialSheets", "window end")
            align = "left" if end == "first" else "right"
            write(painter, x, y + 11 + BOX_MM, words, 2.6, align=align, colour=SOFT)
        y += SHELF_MM + 3


def _places_of(shelves: Sequence[tuple[str, str, Sequence[Place]]], block: str) -> list[Place]:
    """All places of a block."""
    return [place for name, _, there in shelves if name == block for place in there]


def _draw_place(painter: QPainter, place: Place, room: QRectF) -> None:
    draw_frame(painter, room)
    inside = room.width() - 2.4
    head = QRectF(room.left() + 1.2, room.top() + 0.8, inside, CODE_MM)
    draw_code(painter, place.code, head, largest=5.0, least_in_one=2.4)
    y = room.top() + 11
    for lines, size in _fitting((place.crop, place.treatment), inside, BOX_MM - 11):
        for line in lines:
            write(painter, room.center().x(), y, line, size, align="middle")
            y += text_height(size)
        y += 0.6


def _fitting(texts: Sequence[str], width: float, height: float) -> list[tuple[list[str], float]]:
    """Lines and size of each text, in two lines where that can be read, and all of them within the height."""
    least = 1.8
    while True:
        told = [_in_two(text, width, least) for text in texts]
        needed = sum(len(lines) * text_height(size) + 0.6 for lines, size in told)
        if needed <= height or least <= 1.2:
            return told
        least -= 0.1


def _in_two(text: str, width: float, least: float) -> tuple[list[str], float]:
    size = 2.9
    lines = in_lines(text, width, size)
    while len(lines) > 2 and size > least:
        size -= 0.1
        lines = in_lines(text, width, size)
    return lines, size


def reading_pages(plan: Plan, places: Sequence[Place], paper: Paper) -> tuple[Page, ...]:
    """A blank sheet a block, for what no photo sees."""
    columns = (
        Column(title=translate("TrialSheets", "tray"), share=12),
        Column(title=translate("TrialSheets", "weight (g)"), share=12),
        Column(title=translate("TrialSheets", "water given (ml)"), share=12),
        Column(title=translate("TrialSheets", "height (mm)"), share=12),
        Column(title=translate("TrialSheets", "fresh mass (g)"), share=12),
        Column(title=translate("TrialSheets", "cut (1-5)"), share=10),
        Column(title=translate("TrialSheets", "slid (0/1)"), share=13),
        Column(title=translate("TrialSheets", "eye score (0-100)"), share=12),
        Column(title=translate("TrialSheets", "what you saw"), share=21),
    )
    above = translate("TrialSheets", "Day and time: ____________________     Who: ____________________")
    pages: list[Page] = []
    for block, there in _by_block(places):
        rows = [(place.code, *[""] * (len(columns) - 1)) for place in there]
        title = translate("TrialSheets", "Readings, {block}").format(block=spoken(block))
        pages += table_pages(title, columns, rows, paper, note=plan.trial, above=above, least_mm=10.0)
    return tuple(pages)


def _by_block(places: Sequence[Place]) -> list[tuple[str, list[Place]]]:
    return [(block, list(there)) for block, there in groupby(places, lambda place: place.block)]


def _block_and_shelf(place: Place) -> tuple[str, str]:
    return place.block, place.shelf


def _day(day: date) -> str:
    return day_words(day)
