"""Log text: the bytes of a logger's or a scale's file -> a table of cells with its headings.

In    bytes of a text file
Out   `LogTable`: encoding, delimiter, headings, rows with line numbers; `NotALog` where there is no table
Not   what the columns mean (`columns.py`), times (`times.py`)

Files begin with lines about the instrument, then a heading, sometimes a line of units, then the rows. The
table begins at the first row that has the usual number of cells, a time and something else.
"""

import codecs
import csv
import re
from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Literal

from data.logs.times import looks_like_time
from data.sentence import Sentence

__all__ = ["DELIMITERS", "LogTable", "NotALog", "Row", "decoded", "looks_like_number", "read_table"]

DELIMITERS = (";", "\t", ",", "|")
LARGEST = 200 * 1024 * 1024  # bytes; a logger that writes every second for a year makes less
SAMPLE = 300  # lines that are looked at to find the delimiter
LONGEST_CELL = 1000  # letters: more is no cell but a quote that was never closed
LONGEST_NUMBER = 40  # letters, with a unit behind it
WIDEST = 500  # columns
NUL_SHARE = 0.2  # of the bytes: UTF-16 without a mark has half of them zero

NUMBER = re.compile(r"\s*[<>~]?\s*[+\-−]?\s*(\d[\d.,'’  ]*|[.,]\d+)\s*(?:[^\d\s][^\d]{0,9})?\s*")

Row = tuple[int, list[str]]  # line in the file, from 1; cells


class NotALog(Exception):
    """The file holds no table of readings; the text is for the grower."""

    def __init__(self, sentence: Sentence) -> None:
        self.sentence = sentence
        super().__init__(sentence)


@dataclass(frozen=True, slots=True, kw_only=True)
class LogTable:
    """A file as cells."""

    encoding: str
    delimiter: str
    headings: tuple[str, ...]  # one a column; "" where there is none
    first_line: int  # of the first row of numbers, from 1
    rows: Sequence[Row]


def read_table(
    data: bytes, encoding: str | None = None, delimiter: str | None = None, first_line: int | None = None
) -> LogTable:
    """Cut a file into cells; what is given is taken, the rest is found out.

    Raises
    ------
    NotALog
        If there is no table in it.
    """
    if len(data) > LARGEST:
        raise NotALog(Sentence("The file is larger than 200 MB: cut it into parts."))
    text, encoding = decoded(data, encoding)
    if not text.strip():
        raise NotALog(Sentence("The file is empty."))
    delimiter = delimiter or _delimiter(text)
    rows = _cells(text, delimiter)
    width = _usual_width(rows)
    if width < 2:
        raise NotALog(Sentence("There is no table in the file: no line has a time and a number."))
    begin = _first_row(rows, width) if first_line is None else _row_at(rows, first_line)
    if begin is None:
        raise NotALog(Sentence("No line of the file begins with a date or time that can be read."))
    if delimiter == "," and begin > 0:
        rows = [*rows[:begin], *_joined(rows[begin:], rows[begin - 1][1])]
    headings = _headings(rows[:begin], rows[begin][1])
    return LogTable(
        encoding=encoding,
        delimiter=delimiter,
        headings=headings,
        first_line=rows[begin][0],
        rows=rows[begin:],
    )


# --- bytes to text


def decoded(data: bytes, encoding: str | None) -> tuple[str, str]:
    """The text of a file and its encoding, found out where it is None; raises `NotALog`."""
    encoding = encoding or _encoding(data)
    try:
        text = data.decode(encoding, errors="strict" if encoding.startswith("utf-8") else "replace")
    except (UnicodeDecodeError, LookupError) as error:
        why = Sentence("The letters of the file cannot be read as {encoding}.", encoding=encoding)
        raise NotALog(why) from error
    text = text.lstrip("\ufeff")
    control = sum(text[:4000].count(chr(code)) for code in (*range(9), *range(14, 28)))
    if control > 0.01 * len(text[:4000]) + 2:
        raise NotALog(Sentence("This is no text file: choose the CSV or text file of the logger."))
    return text.replace("\x00", ""), encoding


def _encoding(data: bytes) -> str:
    if data.startswith(codecs.BOM_UTF8):
        return "utf-8-sig"
    if data.startswith((codecs.BOM_UTF16_LE, codecs.BOM_UTF16_BE)):
        return "utf-16"
    head = data[:4000]
    if head and head.count(0) > NUL_SHARE * len(head):
        return "utf-16-le" if head[1::2].count(0) >= head[::2].count(0) else "utf-16-be"
    try:
        data.decode("utf-8")
    except UnicodeDecodeError:
        return "cp1252"
    return "utf-8"


# --- text to cells


def looks_like_number(cell: str) -> bool:
    """Whether a cell is a number, perhaps with a unit behind it."""
    return len(cell) <= LONGEST_NUMBER and NUMBER.fullmatch(cell) is not None


def _delimiter(text: str) -> str:
    """The sign that leaves most cells as whole numbers and times, in rows of one width."""
    lines = [line for line in text[:200_000].splitlines()[: SAMPLE + 50] if line.strip()][:SAMPLE]
    best = max(DELIMITERS, key=lambda sign: _order(lines, sign))
    if _order(lines, best)[0] == 0:
        raise NotALog(Sentence("There is no table in the file: no line has a time and a number."))
    return best


def _order(lines: Sequence[str], delimiter: str) -> tuple[float, float]:
    rows = _cells("\n".join(lines), delimiter)
    width = _usual_width(rows)
    if width < 2:
        return 0.0, 0.0
    cells = [cell for _, row in rows if len(row) == width for cell in row]
    plain = sum(1 for cell in cells if not cell or looks_like_number(cell) or looks_like_time(cell))
    even = sum(len(row) == width for _, row in rows) / len(rows)
    return even * plain / len(cells), -width


def _cells(text: str, delimiter: str) -> list[Row]:
    """Rows that are not blank; a quote that is never closed is taken as a plain letter."""
    lines = text.splitlines()
    try:
        rows = _quoted(lines, delimiter, csv.QUOTE_MINIMAL)
    except csv.Error:
        rows = None
    if rows is None or any("\n" in cell or len(cell) > LONGEST_CELL for _, row in rows for cell in row):
        try:
            rows = _quoted(lines, delimiter, csv.QUOTE_NONE)
        except csv.Error as error:
            raise NotALog(Sentence("There is no table in the file: a line is too long.")) from error
    return rows


def _quoted(lines: Iterable[str], delimiter: str, quoting: Literal[0, 3]) -> list[Row]:
    whole = (line + "\n" for line in lines)
    reader = csv.reader(whole, delimiter=delimiter, quoting=quoting, skipinitialspace=True)
    rows = []
    for cells in reader:
        if len(cells) > WIDEST:
            cells = cells[:WIDEST]
        if any(cell.strip() for cell in cells):
            rows.append((reader.line_num, [cell.strip() for cell in cells]))
    return rows


def _usual_width(rows: Sequence[Row]) -> int:
    """The width of most rows that have several cells."""
    widths = Counter(len(row) for _, row in rows if len(row) > 1)
    return max(widths, key=lambda width: (widths[width], width)) if widths else 0


# --- where the table begins


def _first_row(rows: Sequence[Row], width: int) -> int | None:
    for number, (_, cells) in enumerate(rows):
        full = len(cells) >= min(width, 2) and abs(len(cells) - width) <= 1
        if full and any(looks_like_time(cell) for cell in cells):
            return number
    return None


def _joined(rows: Sequence[Row], heading: Sequence[str]) -> Sequence[Row]:
    """Numbers put together again that a decimal comma has cut in two, in a file with commas between cells.

    Known by the heading: it has one cell where each row has two.
    """
    if any(looks_like_number(cell) or looks_like_time(cell) for cell in heading):
        return rows
    times = next((at for at, cell in enumerate(rows[0][1]) if not looks_like_time(cell)), 0)
    width = 2 * len(heading) - times
    halves = [cells[times:] for _, cells in rows if len(cells) == width]
    whole = all(cell.lstrip("+-").isdigit() for cells in halves for cell in cells if cell)
    if times == 0 or len(heading) <= times or len(halves) < len(rows) / 2 or not whole:
        return rows
    return [
        (
            line,
            cells[:times]
            + [",".join(pair) for pair in zip(cells[times::2], cells[times + 1 :: 2], strict=True)],
        )
        if len(cells) == width
        else (line, cells)
        for line, cells in rows
    ]


def _row_at(rows: Sequence[Row], line: int) -> int | None:
    return next((number for number, (at, _) in enumerate(rows) if at >= line), None)


def _headings(before: Sequence[Row], first: Sequence[str]) -> tuple[str, ...]:
    """The last line before the rows that is about as wide; a line of units under it is joined to it."""
    width = len(first)
    wide = [cells for _, cells in before if abs(len(cells) - width) <= 1 and len(cells) > 1][-2:]
    if not wide:
        return ("",) * width
    named = wide[-1]
    if len(wide) == 2 and _are_units(wide[-1]):
        units = wide[-1] + [""] * width
        named = [
            f"{name} ({unit.strip('()[]')})" if unit else name
            for name, unit in zip(wide[0], units, strict=False)
        ]
    return tuple((list(named) + [""] * width)[:width])


def _are_units(cells: Sequence[str]) -> bool:
    shown = [cell for cell in cells if cell]
    return bool(shown) and all(len(cell.strip("()[]")) <= 4 for cell in shown) and len(shown) < len(cells)
