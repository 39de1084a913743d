"""Table file: numbers that were kept in a spreadsheet or a notebook, as a text file of columns.

In    a file with a heading; columns block (may be missing), medium, value, parted by comma, semicolon or tab
Out   `Table`: a row a tray, what was left out and why, by line
Not   comparing anything (`verdict`)

A value may have a decimal point or, where columns are not parted by commas or the value is quoted, a decimal
comma. German headings are Block, Substrat, Wert. An empty value, "-" or "NA" is a tray that is missing. What
could be read in two ways is not read.
"""

import csv
import math
import re
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from data.sentence import Sentence
from data.verdict import Measured

__all__ = ["MOST_TRAYS", "Table", "TableError", "lone_number", "read_table", "table_of"]

MISSING = frozenset({"", "-", "–", "na", "n/a", "nan", "none", "null", "."})
NAMES = {"medium": "medium", "value": "value", "block": "block", "substrat": "medium", "wert": "value"}
DELIMITERS = ";\t,|"
LARGEST_BYTES = 20_000_000
MOST_TRAYS = 5000  # the comparison takes the square of it in memory: 300,000 took all of a machine's
POINT = re.compile(r"[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?")
COMMA = re.compile(r"[+-]?(\d+,\d*|,\d+)([eE][+-]?\d+)?")
THOUSANDS = re.compile(r"[+-]?[1-9]\d{0,2},\d{3}")  # 1,234: one or a thousand?
ONE_BLOCK = "all"


class TableError(Exception):
    """The file cannot be read as a table; the text is the sentence for a grower."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Table:
    """What a file holds."""

    rows: tuple[Measured, ...]  # trays with a number
    missing: tuple[Measured, ...]  # trays without one; their value is 0 and means nothing
    refused: tuple[Sentence, ...]  # lines that could not be read, each with the reason
    notes: tuple[Sentence, ...]  # what was taken for granted


def lone_number(text: str) -> float:
    """A number by itself, with a point or a comma; raises `ValueError` where it is none or could be two."""
    text = text.strip()
    if THOUSANDS.fullmatch(text) or not (POINT.fullmatch(text) or COMMA.fullmatch(text)):
        raise ValueError(text)
    return float(text.replace(",", "."))


def read_table(path: Path) -> Table:
    """Read a file; raises `TableError` with a sentence where that cannot be."""
    name = path.name or str(path)
    try:
        with path.open("rb") as file:
            data = file.read(LARGEST_BYTES + 1)  # the size that a device tells means nothing
    except OSError as error:
        why = error.strerror or str(error)
        raise TableError(Sentence("{file} cannot be read: {why}.", file=name, why=why)) from error
    if len(data) > LARGEST_BYTES:
        raise _too_large(name)
    return table_of(_text(data, name), name)


def _too_large(name: str) -> TableError:
    return TableError(Sentence("{file} is too large to be a table of trays.", file=name))


def _text(data: bytes, name: str) -> str:
    if data[:2] in (b"\xff\xfe", b"\xfe\xff"):
        return data.decode("utf-16", errors="replace")
    if b"\0" in data:
        raise TableError(
            Sentence("{file} is no text file. Save the table as CSV and name that file.", file=name)
        )
    try:
        return data.decode("utf-8-sig")
    except UnicodeDecodeError:
        return data.decode("cp1252", errors="replace")  # an old spreadsheet


def table_of(text: str, name: str = "the table") -> Table:
    """The table in a text; raises `TableError`."""
    lines = [(number, line) for number, line in enumerate(text.splitlines(), 1) if line.strip()]
    if not lines:
        raise TableError(Sentence("{file} is empty.", file=name))
    delimiter = _delimiter(lines[0][1])
    try:  # line by line: a lone quotation mark must not swallow the rest of the file
        cells = [(number, _cells(line, delimiter)) for number, line in lines]
    except csv.Error as error:
        raise TableError(Sentence("{file} is no table that can be read.", file=name)) from error
    place = _columns(cells[0][1], name)
    if len(cells) > MOST_TRAYS + 1:
        raise _too_large(name)
    return _Lines(cells[1:], place, width=len(cells[0][1])).table()


def _cells(line: str, delimiter: str) -> list[str]:
    return next(csv.reader([line], delimiter=delimiter, skipinitialspace=True))


def _delimiter(heading: str) -> str:
    """The one that parts the heading into the columns wanted."""

    def known(delimiter: str) -> int:
        return sum(_plain(cell) in NAMES for cell in _cells(heading, delimiter))

    return max(DELIMITERS, key=known)


def _columns(heading: list[str], name: str) -> dict[str, int]:
    place: dict[str, int] = {}
    for index, cell in enumerate(heading):
        column = NAMES.get(_plain(cell))
        if column is not None and column in place:
            raise TableError(Sentence("{file} has two columns named {column}.", file=name, column=column))
        if column is not None:
            place[column] = index
    for wanted in ("medium", "value"):
        if wanted not in place:
            raise TableError(
                Sentence(
                    "{file} has no column named {column}. Its first line has to name the columns block, "
                    "medium and value.",
                    file=name,
                    column=wanted,
                )
            )
    return place


def _plain(text: str) -> str:
    return " ".join(text.split()).casefold()


class _Lines:
    """The lines below the heading, read one after the other."""

    def __init__(self, cells: list[tuple[int, list[str]]], place: dict[str, int], width: int) -> None:
        self.cells, self.place, self.width = cells, place, width
        written = [self._cell(row, "value") for _, row in cells]
        commas = [text for text in written if COMMA.fullmatch(text)]
        points = any("." in text and POINT.fullmatch(text) for text in written)
        # decimal commas: surely so where one of them cannot part thousands, and no value has a point
        self.comma = not points and not all(map(THOUSANDS.fullmatch, commas))
        self.spellings: dict[str, str] = {}  # plain -> as first written
        self.merged: dict[str, set[str]] = {}
        self.refused: list[Sentence] = []

    def _cell(self, row: list[str], column: str) -> str:
        index = self.place.get(column)
        return row[index].strip() if index is not None and index < len(row) else ""

    def table(self) -> Table:
        rows: list[Measured] = []
        missing: list[Measured] = []
        for number, row in self.cells:
            tray, has_value = self._tray(number, row)
            if tray is not None:
                (rows if has_value else missing).append(tray)
        return Table(
            rows=tuple(rows), missing=tuple(missing), refused=tuple(self.refused), notes=tuple(self._notes())
        )

    def _tray(self, number: int, row: list[str]) -> tuple[Measured | None, bool]:
        if any(cell.strip() for cell in row[self.width :]):  # a decimal comma between commas, say
            return self._refuse(
                Sentence("line {line}: it has more columns than the heading; it was left out.", line=number)
            )
        medium, block = self._named("medium", row), self._named("block", row)
        written = self._cell(row, "value")
        if not medium:
            return self._refuse(Sentence("line {line}: no medium is named; it was left out.", line=number))
        if "block" in self.place and not block:
            return self._refuse(
                Sentence(
                    "line {line}: no block is named ({medium}); it was left out.", line=number, medium=medium
                )
            )
        tray = Measured(block=block or ONE_BLOCK, medium=medium, value=0.0)
        if written.casefold() in MISSING:
            return tray, False
        value = self._value(written)
        if value is None:
            return self._refuse(
                Sentence(
                    'line {line}: "{written}" is no number, or could be two ({medium}); it was left out.',
                    line=number,
                    written=written[:40],
                    medium=medium,
                )
            )
        return Measured(block=tray.block, medium=medium, value=value), True

    def _refuse(self, why: Sentence) -> tuple[None, bool]:
        self.refused.append(why)
        return None, False

    def _value(self, written: str) -> float | None:
        """The number, or None where it is none or could be two."""
        if self.comma and COMMA.fullmatch(written):
            written = written.replace(",", ".")
        if not POINT.fullmatch(written):
            return None
        value = float(written)
        return value if math.isfinite(value) and abs(value) < 1e100 else None

    def _named(self, column: str, row: list[str]) -> str:
        """A name as it was first written; large and small letters and spaces make no difference."""
        written = " ".join(self._cell(row, column).split())
        key = f"{column} {_plain(written)}"
        first = self.spellings.setdefault(key, written)
        if written != first:
            self.merged.setdefault(first, set()).add(written)
        return first

    def _notes(self) -> Iterator[Sentence]:
        if "block" not in self.place:
            yield Sentence("There is no column named block, so all trays were taken as one block.")
        for first, others in self.merged.items():
            yield Sentence("{others} was taken for {first}.", others=", ".join(sorted(others)), first=first)
