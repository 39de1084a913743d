"""Old table: the bytes of a table that somebody kept -> its columns and lines, whatever they mean.

In    the bytes of a CSV file of which one of the first lines names the columns
Out   `OldTable`: delimiter, headings, cells with the line of the file where they begin
Not   what the columns mean (`oldcolumns.py`), what the lines say (`oldnotes.py`)

Spreadsheets write a note of several lines as one cell in quotes, rows without a word, and some a line "sep=;"
before all others. Who types a table by hand writes 5" and closes no quote: then each line stands by itself.
Above the names of the columns a title may stand, and whose table it is: the first line that names crop,
medium and day of sowing is taken, else that which names most columns, and what stands above is left out.
"""

import csv
import hashlib
from collections.abc import Sequence
from dataclasses import dataclass

from data.logs.oldcolumns import fields_of, known, lacking
from data.logs.text import DELIMITERS, NotALog, decoded
from data.sentence import Sentence

__all__ = ["OldTable", "read_old_table"]

LARGEST = 20_000_000  # bytes
MOST_LINES = 20_000
TITLES = 8  # filled lines that may stand above the names of the columns
LEAST_NAMED = 2  # columns that are known in a line of names; "Matte" alone is a medium, too
TOLD = "sep="  # begins a line that names the delimiter

Row = tuple[int, tuple[str, ...]]  # line in the file, from 1; cells


@dataclass(frozen=True, slots=True, kw_only=True)
class OldTable:
    """A file as it is written, before anybody says what its columns are."""

    digest: str
    delimiter: str
    headings: tuple[str, ...]
    rows: tuple[Row, ...]


def read_old_table(data: bytes) -> OldTable:
    """Read a file without knowing its columns.

    Raises
    ------
    NotALog
        If there is no table in it.
    """
    if len(data) > LARGEST:
        raise NotALog(Sentence("The file is too large to be a table of trays."))
    text, _ = decoded(data, None)
    lines = text.splitlines()
    filled = [line for line in lines if line.strip()]
    if not filled:
        raise NotALog(Sentence("The file is empty."))
    if len(filled) > MOST_LINES + 1:
        raise NotALog(Sentence("The file has more than {most} lines: cut it into parts.", most=MOST_LINES))
    told = _told_delimiter(filled[0]) if len(filled) > 1 else None
    if told is not None:
        lines[lines.index(filled.pop(0))] = ""
    delimiters = DELIMITERS if told is None else (told,)
    first = _naming_line(filled[: TITLES + 1], delimiters)
    delimiter = max(delimiters, key=lambda one: (known(_cells(first, one)), first.count(one)))
    above = lines.index(first)
    lines[:above] = [""] * above
    head, *rest = _whole_rows(lines, delimiter) or _line_by_line(lines, delimiter)
    return OldTable(
        digest=hashlib.sha256(data).hexdigest(),
        delimiter=delimiter,
        headings=tuple(cell.strip() for cell in head[1]),
        rows=tuple(rest),
    )


def _naming_line(lines: Sequence[str], delimiters: Sequence[str]) -> str:
    """The first line that names all that a tray needs, lest trays stand above it; else that which names most.

    Where none names two columns, the first.
    """

    def named(line: str) -> tuple[bool, int]:
        """Whether nothing is lacking, and how many are known."""
        return max(
            (lacking(fields_of(cells)) is None, known(cells))
            for cells in (_cells(line, one) for one in delimiters)
        )

    best = next((line for line in lines if named(line)[0]), None) or max(lines, key=named)
    return best if named(best)[1] >= LEAST_NAMED else lines[0]


def _told_delimiter(line: str) -> str | None:
    plain = line.strip(' "').casefold()
    return plain[-1] if plain[:-1] == TOLD and plain[-1] in DELIMITERS else None


def _whole_rows(lines: Sequence[str], delimiter: str) -> list[Row] | None:
    """Rows that may go over several lines; None where a quote is not closed or ends within a cell."""
    reader = csv.reader(
        (f"{line}\n" for line in lines), delimiter=delimiter, skipinitialspace=True, strict=True
    )
    rows: list[Row] = []
    begin = 1
    try:
        for cells in reader:
            if any(cell.strip() for cell in cells):
                rows.append((begin, tuple(map(_on_one_line, cells))))
            begin = reader.line_num + 1
    except csv.Error:
        return None
    return rows


def _on_one_line(cell: str) -> str:
    return (
        cell if "\n" not in cell else "; ".join(part for line in cell.split("\n") if (part := line.strip()))
    )


def _line_by_line(lines: Sequence[str], delimiter: str) -> list[Row]:
    return [(at, tuple(_cells(line, delimiter))) for at, line in enumerate(lines, 1) if line.strip()]


def _cells(line: str, delimiter: str) -> list[str]:
    try:
        return next(csv.reader([line], delimiter=delimiter, skipinitialspace=True))
    except csv.Error:
        return [line]
