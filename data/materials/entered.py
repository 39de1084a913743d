"""Entered: how far media differ in room, in what is carried, and in climate, by what was typed in of them.

In    a book, the media of a trial, the trusted one
Out   `Beside`s by row and medium, as those of trays; the climate in `Sentence`s; nothing of a medium without
      a number
Not   what trays tell (`sidebyside.py`), the table of all media (`reading.py`)

No notes of trays are read for it: a book of years would be read for one trial.
"""

from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING

from data.footprint import NOTE, differences
from data.materials.bill import bills_of
from data.materials.cells import weekly_cells
from data.materials.facts import MediumFacts
from data.materials.reading import climate_sentence
from data.materials.table import Beside, Cell, difference_of
from data.sentence import Sentence
from data.statistics.estimate import Estimate

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["climate_words", "entered_beside"]


def entered_beside(book: "Book", media: Sequence[str], trusted: str) -> Mapping[tuple[str, str], Beside]:
    """Room before and after and mass to carry, a week."""
    trays, factors = book.trays_a_week(), book.factors()
    area = book.tray_types()[0].inner_cm2  # of no number here
    cells = {
        medium: weekly_cells(MediumFacts(medium=medium, area_cm2=area, factors=factors, trays_a_week=trays))
        for medium in {*media, trusted}
    }
    words = Sentence("From what is known of one tray of each, for {trays:g} trays a week.", trays=trays)
    return {
        (row, medium): Beside(difference=difference_of(one, base), words=words)
        for medium in media
        for row, cell in cells[medium].items()
        if medium != trusted
        and (one := _estimate(cell)) is not None
        and (base := _estimate(cells[trusted][row])) is not None
    }


def _estimate(cell: Cell) -> Estimate | None:
    return None if cell.value is None else Estimate(value=cell.value, low=cell.low, high=cell.high)


def climate_words(book: "Book", media: Sequence[str], trusted: str) -> tuple[Sentence, ...]:
    """Greenhouse gas a tray, each against the trusted one, and what these figures are."""
    bills = bills_of(book.factors(), sorted({*media, trusted}), {})
    told = [climate_sentence(one, trusted) for one in differences(bills.bills, bills.inputs, trusted)]
    return (*told, NOTE) if told else ()
