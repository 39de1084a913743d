"""Note changes: what a correction in the table of notes changes in the book; no Qt.

In    the open book, a row of the table
Out   its reading or event changed or taken out, each one step of undo; what is unusual about a new number
Not   the table (`notes/table.py`), telling the person (`growthpage.py`)
"""

from datetime import datetime
from typing import TYPE_CHECKING

from data.readings import ReadingKind
from data.records import Tray
from data.sentence import Sentence
from gui.notes.view import NoteRow

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["change_value", "delete", "doubt_of", "move", "renote"]


def change_value(book: "Book", row: NoteRow, value: float) -> None:
    """Another number; events have none."""
    if row.reading is not None:
        book.change_reading(row.reading, value)


def renote(book: "Book", row: NoteRow, note: str) -> None:
    """Other words beside it."""
    if row.reading is not None:
        book.change_reading(row.reading, note=note)
    elif row.event is not None:
        book.change_event(row.event, note=note)


def move(book: "Book", row: NoteRow, at: datetime) -> None:
    """Another time."""
    if row.reading is not None:
        book.change_reading(row.reading, taken_at=at)
    elif row.event is not None:
        book.change_event(row.event, at=at)


def delete(book: "Book", row: NoteRow, tray: Tray) -> None:
    """Take it out; a tray whose end is taken out stands on the rack again."""
    if row.reading is not None:
        book.delete_reading(row.reading)
    elif row.ends:
        book.reopen_tray(tray.id)
    elif row.event is not None:
        book.delete_event(row.event)


def doubt_of(book: "Book", tray: Tray, kind: ReadingKind, value: float) -> Sentence | None:
    """What is unusual about a number: told, never refused."""
    from data.growing.croptable import doubt_of_reading

    weights = book.readings(tray.id, ReadingKind.WEIGHT)
    return doubt_of_reading(
        kind,
        value,
        crop=tray.crop,
        tray_type=book.tray_type(tray.tray_type),
        last_weight_g=weights[-1].value if weights else None,
    )
