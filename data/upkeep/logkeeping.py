"""Log keeping: a settled `LogSheet` -> readings of trays and shelves in the book.

In    a sheet, the trays of the book
Out   `NewReading`s, each of the tray that stood under that code at that time; rows whose tray is not known
Not   reading the file (`logs/sheet.py`), the transaction and its undo (`chapters/readingbook.py`)
"""

from collections.abc import Iterable, Mapping, Sequence
from datetime import timedelta
from typing import TYPE_CHECKING

from data.cancel import Progress
from data.logs.cells import BadRow, Logged
from data.logs.sheet import LogSheet
from data.photos.succession import stood_at
from data.readings import KeptLog, NewReading
from data.records import Tray
from data.sentence import Sentence

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["keep_sheet", "placed"]

SOURCE = "logger"
BEFORE_SOWING = timedelta(days=1)  # a tray is wetted and weighed before it is sown


def keep_sheet(
    book: "Book", sheet: LogSheet, step: Progress | None = None
) -> tuple[KeptLog, tuple[BadRow, ...]]:
    """Keep all readings of a sheet as one step of undo; what could not be placed is returned beside it.

    Parameters
    ----------
    step : told (done, total) every now and then; what it raises ends it, and nothing is kept.

    Raises
    ------
    ValueError
        If a question of the sheet is still open: the window must not offer this.
    BookError
        If the world stops us; nothing is kept then.
    """
    if not sheet.is_settled:
        raise ValueError("a sheet with open questions, or without readings, is not kept")
    readings, unplaced = placed(sheet, book.trays(growing=False))
    return book.keep_log(sheet.digest, sheet.name, sheet.read_as.text, readings, step), unplaced


def placed(sheet: LogSheet, trays: Iterable[Tray]) -> tuple[tuple[NewReading, ...], tuple[BadRow, ...]]:
    """The readings with the trays that stood under their codes at their times; and those without one."""
    by_code: dict[str, list[Tray]] = {}
    for each in trays:
        by_code.setdefault(each.code.casefold(), []).append(each)
    readings, unplaced = [], []
    for one in sheet.readings:
        tray = _tray_of(one, by_code)
        if isinstance(tray, Sentence):
            unplaced.append(BadRow(line=one.line, text=one.tray or "", reason=tray))
            continue
        readings.append(
            NewReading(
                kind=one.kind,
                value=one.value,
                taken_at=one.at,
                tray_id=None if tray is None else tray.id,
                shelf=one.shelf,
                source=SOURCE,
            )
        )
    return tuple(readings), tuple(unplaced)


def _tray_of(one: Logged, by_code: Mapping[str, Sequence[Tray]]) -> Tray | Sentence | None:
    """The tray a row is of, None where it is of a shelf; or why that cannot be told."""
    if one.tray is None:
        return None if one.shelf is not None else Sentence("The row names no tray and no shelf.")
    grown = by_code.get(one.tray.strip().casefold(), ())
    stood = stood_at(grown, one.at, BEFORE_SOWING)
    return stood[0] if len(stood) == 1 else _why(one.tray, grown, stood)


def _why(code: str, trays: Sequence[Tray], stood: Sequence[Tray]) -> Sentence:
    """Why there is not the one tray that is meant."""
    if stood:
        return Sentence(
            "{count} trays were called {code} then, so nobody knows which is meant: rename one, or note when "
            "the old one ended.",
            count=len(stood),
            code=code,
        )
    if trays:
        return Sentence("No tray {code} was growing then.", code=code)
    return Sentence("The book has no tray {code}.", code=code)
