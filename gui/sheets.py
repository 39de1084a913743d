"""Sheets: all that is printed for a trial or a book, as one choice of kinds.

In    kinds of sheets, trays with tags, a plan with its places, kinds of tray; the paper
Out   pages in the order in which they are used
Not   what stands on them (`paper/stationsheet.py`, `paper/tagsheet.py`, `paper/trialsheets.py`), PDF and
      paper (`paper/pages.py`)
"""

from collections.abc import Collection, Sequence
from dataclasses import dataclass
from enum import StrEnum
from typing import TYPE_CHECKING

from data.growing.conditions import TrayType
from data.plan.drawing import Place
from data.trial import Plan
from gui.paper.pages import Page, Paper
from gui.paper.stationsheet import station_pages
from gui.paper.tagsheet import TagLabel, tag_pages
from gui.paper.trialsheets import map_pages, reading_pages, sowing_pages

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["Printed", "SheetKind", "pages_for", "printed_of_book", "printed_of_trial"]


class SheetKind(StrEnum):
    """What can be printed, in the order in which it is used."""

    SOWING = "sowing sheet"
    MAP = "bench map"
    STATION = "station cards"
    TAGS = "tags"
    READINGS = "reading sheets"


@dataclass(frozen=True, slots=True, kw_only=True)
class Printed:
    """What the pages are made from."""

    title: str
    tags: tuple[TagLabel, ...]
    tray_types: tuple[TrayType, ...]
    plan: Plan | None = None
    places: tuple[Place, ...] = ()


def pages_for(printed: Printed, kinds: Collection[SheetKind], paper: Paper) -> tuple[Page, ...]:
    """The pages of these kinds; those of a trial only where there is one."""
    pages: list[Page] = []
    for kind in SheetKind:
        if kind in kinds:
            pages += _pages_of(printed, kind, paper)
    return tuple(pages)


def _pages_of(printed: Printed, kind: SheetKind, paper: Paper) -> Sequence[Page]:
    match kind:
        case SheetKind.TAGS:
            return tag_pages(printed.tags, paper)
        case SheetKind.STATION:
            return [
                page
                for tray in printed.tray_types
                for page in station_pages(paper, tray.outer_long_mm, tray.outer_short_mm, tray.name)
            ]
    if printed.plan is None:
        return ()
    match kind:
        case SheetKind.SOWING:
            return sowing_pages(printed.plan, printed.places, paper)
        case SheetKind.MAP:
            return map_pages(printed.plan, printed.places, paper)
        case SheetKind.READINGS:
            return reading_pages(printed.plan, printed.places, paper)


def printed_of_trial(book: "Book", plan: Plan, places: Sequence[Place]) -> Printed:
    """A trial's tags, with its plan and places."""
    return Printed(
        title=plan.trial,
        tags=tuple(TagLabel(number=place.tag_number, code=place.code) for place in places),
        tray_types=(book.tray_type(plan.tray_type),),
        plan=plan,
        places=tuple(places),
    )


def printed_of_book(book: "Book") -> Printed:
    """Tags of all growing trays that have one, then of trays that are drawn and not sown yet."""
    from data.chapters.drawbook import unsown

    growing = book.trays()
    tags = {tray.tag_number: tray.code for tray in growing if tray.tag_number is not None}
    for trial in book.trials():
        for kept in book.draws(trial)[-1:]:
            for place in unsown(kept.draw, book.trial_trays(trial)):
                tags.setdefault(place.tag_number, place.code)
    names = dict.fromkeys(tray.tray_type for tray in growing) or {book.tray_types()[0].name: None}
    return Printed(
        title=book.folder.name,
        tags=tuple(TagLabel(number=number, code=code) for number, code in tags.items()),
        tray_types=tuple(book.tray_type(name) for name in names),
    )
