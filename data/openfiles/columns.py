"""Open columns: how a column of the book stands in an export.

In    its name in the book, what it holds, what it is about, its heading where that differs
Out   `Column`, `OpenTable`; headings of the 72 cells of a top view
      the columns that several tables have
Not   which tables and columns there are (`tables.py`), writing a cell (`cells.py`)

Headings carry the unit ("coverage_pct").
"""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from enum import StrEnum

__all__ = [
    "CELL_HEADINGS",
    "FEED",
    "NOTE",
    "SEATING",
    "WATERING",
    "Column",
    "Kind",
    "OpenTable",
    "column",
    "integer",
    "json",
    "later",
    "number",
    "ref",
    "renamed",
    "row_id",
    "text",
    "time",
    "yes_no",
]

CELL_HEADINGS: Mapping[tuple[int, int], str] = {
    (row, place): f"row{row + 1}_column{place + 1:02}_pct" for row in range(6) for place in range(12)
}


class Kind(StrEnum):
    """What the cells of a column hold; the values are Frictionless Table Schema types."""

    TEXT = "string"
    NUMBER = "number"
    INTEGER = "integer"
    TIME = "datetime"
    DATE = "date"
    YES_NO = "boolean"
    JSON = "object"  # an object or a list as JSON text


@dataclass(frozen=True, slots=True, kw_only=True)
class Column:
    """One column: its name in the book, its heading in the file."""

    name: str
    heading: str
    kind: Kind
    about: str
    refers: str | None = None  # the table whose id it is
    later: bool = False  # exports of earlier versions lack it
    once: str | None = None  # its heading in exports of earlier versions


@dataclass(frozen=True, slots=True, kw_only=True)
class OpenTable:
    """One table of the book and its file."""

    table: str
    file: str  # without ".csv"
    about: str
    columns: tuple[Column, ...]
    later: bool = False  # exports of earlier versions lack the file

    @property
    def key(self) -> str:
        """The heading of the primary key."""
        return self.columns[0].heading


def column(name: str, kind: Kind, about: str, heading: str | None = None) -> Column:
    """A column of some kind; its heading is its name where none is given."""
    return Column(name=name, heading=heading or name, kind=kind, about=about)


def text(name: str, about: str, heading: str | None = None) -> Column:
    """A column of text."""
    return column(name, Kind.TEXT, about, heading)


def number(name: str, about: str, heading: str | None = None) -> Column:
    """A column of numbers; the unit stands in the heading."""
    return column(name, Kind.NUMBER, about, heading)


def later(one: Column) -> Column:
    """The same column, which exports of earlier versions lack."""
    return replace(one, later=True)


def renamed(one: Column, once: str) -> Column:
    """The same column, which exports of earlier versions head otherwise."""
    return replace(one, once=once)


def integer(name: str, about: str, heading: str | None = None) -> Column:
    """A column of whole numbers."""
    return column(name, Kind.INTEGER, about, heading)


def time(name: str, about: str, heading: str | None = None) -> Column:
    """A column of local times."""
    return column(name, Kind.TIME, about, heading)


def yes_no(name: str, about: str, heading: str | None = None) -> Column:
    """A column of yes and no."""
    return column(name, Kind.YES_NO, about, heading)


def json(name: str, about: str) -> Column:
    """A column of JSON text."""
    return column(name, Kind.JSON, about, f"{name}_json")


def row_id(table: str) -> Column:
    """The number of the row."""
    return Column(name="id", heading=f"{table}_id", kind=Kind.INTEGER, about="number of the row in the book")


def ref(table: str, about: str = "", name: str | None = None) -> Column:
    """The number of a row in another table."""
    name = name or table
    return Column(
        name=name, heading=f"{name}_id", kind=Kind.INTEGER, about=about or f"the {table}", refers=table
    )


NOTE = text("note", "the grower's note")
SEATING = text("seating", "how a mat sits: in the tray, or on an upturned tray")
WATERING = text("watering", "top, bottom or both")
FEED = text("feed", "which feed, how diluted, how often")
