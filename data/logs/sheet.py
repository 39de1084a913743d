"""Log sheet: a CSV file of a logger or a scale -> readings, bad rows, and what is still to be asked.

In    the bytes of a file; how a person wants it read, or nothing
Out   `LogSheet`: how it was read (`ReadAs`), readings in the book's units on the rack's clock, bad rows with
      line and reason, questions; or `LogRefused`
Not   cells (`text.py`), times (`times.py`), columns (`columns.py`), the book (`upkeep/logkeeping.py`)

Nothing is stored here. A question that is open must be answered before a sheet is kept: each of its choices
carries a `ReadAs`, and reading the file again with it gives the new sheet.
"""

import hashlib
import re
from collections.abc import Collection, Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta, tzinfo

from data.cancel import Progress
from data.logs.cells import BadRow, Logged, RowsRead, read_rows
from data.logs.clock import zone_in, zone_of
from data.logs.columns import ColumnAs, Role, propose_columns
from data.logs.questions import Question, questions_of, settled_unit
from data.logs.readas import ReadAs
from data.logs.text import LogTable, NotALog, read_table
from data.logs.times import DateOrder, likely_orders, possible_orders, stamp_of
from data.sentence import Sentence

__all__ = ["LogRefused", "LogSheet", "read_log"]

SAMPLE = 200  # rows that decide on decimals
SHOWN = 8  # rows of cells that are shown as they stand

COMMA = re.compile(r"[+\-−]?\d+,\d+")
WHOLE_DATE = re.compile(r"\d{2}[-/.]\d{2}[-/.]\d{4}|\d{4}[-/.]\d{2}[-/.]\d{2}")
POINT = re.compile(r"[+\-−]?\d+\.\d+")


@dataclass(frozen=True, slots=True, kw_only=True)
class LogRefused:
    """A file that cannot be read at all, and why."""

    name: str
    sentence: Sentence


@dataclass(frozen=True, slots=True, kw_only=True)
class LogSheet:
    """A file as it was read: what would be stored, what not and why."""

    name: str
    digest: str  # SHA-256 of the bytes, 64 hexadecimal digits
    read_as: ReadAs
    headings: tuple[str, ...]  # one a column; "" where there is none
    cells: tuple[tuple[str, ...], ...]  # the first rows as they stand in the file
    lines: tuple[int, ...]  # where those rows stand in the file
    readings: Sequence[Logged]
    bad: Sequence[BadRow]
    notes: tuple[Sentence, ...]  # what was found out, for the person to check
    questions: tuple[Question, ...]

    @property
    def is_settled(self) -> bool:
        """Whether it can be kept: nothing is open, and there is something in it."""
        return not self.questions and bool(self.readings)


def read_log(
    data: bytes,
    name: str,
    *,
    today: date,
    read_as: ReadAs | None = None,
    trays: Collection[str] = (),
    shelves: Collection[str] = (),
    rack: tzinfo | None = None,
    step: Progress | None = None,
) -> LogSheet | LogRefused:
    """Read a file, by itself or as a person wants it.

    Parameters
    ----------
    today
        Dates ahead of it speak against an order of day and month.
    trays, shelves
        Codes and names that the book knows: a column of them is told by its cells.
    rack
        Time zone of the rack; None: that of this computer.
    step
        Told (done, total) rows every now and then; what it raises ends the reading.
    """
    try:
        table, read_as = _understood(data, read_as, today, set(trays), set(shelves))
    except NotALog as error:
        return LogRefused(name=name, sentence=error.sentence)
    if read_as.zone is not None and zone_of(read_as.zone) is None:
        why = Sentence("There is no time zone “{zone}”: type one such as Europe/Paris.", zone=read_as.zone)
        return LogRefused(name=name, sentence=why)
    dates = _dates(table, read_as)
    orders = likely_orders(dates, today) if read_as.date_order is None else ()
    questions = questions_of(table, read_as, dates, orders)
    ordered = replace(read_as, date_order=read_as.date_order or next(iter(orders), None))
    rows = read_rows(table, ordered, rack, step)
    return LogSheet(
        name=name,
        digest=hashlib.sha256(data).hexdigest(),
        read_as=read_as,
        headings=table.headings,
        cells=tuple(tuple(cells) for _, cells in table.rows[:SHOWN]),
        lines=tuple(line for line, _ in table.rows[:SHOWN]),
        readings=rows.readings,
        bad=rows.bad,
        notes=tuple(_notes(read_as, rows, dates, today)),
        questions=questions,
    )


# --- what the file tells by itself


def _understood(
    data: bytes, read_as: ReadAs | None, today: date, trays: set[str], shelves: set[str]
) -> tuple[LogTable, ReadAs]:
    """The cells, and how they are to be read: as the file proposes, or as a person wants it."""
    if read_as is None:
        table = read_table(data)
        return table, _proposed(table, today, trays, shelves)
    table = read_table(data, read_as.encoding, read_as.delimiter, read_as.first_line)
    return table, _fitted(read_as, len(table.headings))


def _proposed(table: LogTable, today: date, trays: set[str], shelves: set[str]) -> ReadAs:
    columns = propose_columns(table.headings, [cells for _, cells in table.rows[:SAMPLE]], trays, shelves)
    decimal = _decimal(table)
    read_as = ReadAs(
        encoding=table.encoding,
        delimiter=table.delimiter,
        decimal=decimal,
        first_line=table.first_line,
        date_order=None,
        zone=next((zone for heading in table.headings if (zone := zone_in(heading)) is not None), None),
        tray=None,
        shelf=None,
        columns=tuple(
            replace(column, unit=settled_unit(table, decimal, number, column))
            for number, column in enumerate(columns)
        ),
    )
    dates = _dates(table, read_as)
    orders = likely_orders(dates, today)
    return replace(read_as, date_order=orders[0] if len(orders) == 1 else None) if dates else read_as


def _fitted(read_as: ReadAs, width: int) -> ReadAs:
    """The columns that the file has, with another delimiter perhaps."""
    if len(read_as.columns) == width:
        return read_as
    return replace(read_as, columns=(*read_as.columns, *[ColumnAs()] * width)[:width])


def _decimal(table: LogTable) -> str:
    commas = points = 0
    for _, cells in table.rows[:SAMPLE]:
        for cell in cells:
            commas += COMMA.match(cell) is not None
            points += POINT.fullmatch(cell.rstrip("%°CFg ")) is not None
    return "," if commas > points else "."


def _dates(table: LogTable, read_as: ReadAs) -> list[tuple[str, str, str]]:
    """The dates as written, each run of the same one once."""
    at = read_as.column_of(Role.TIME)
    at = read_as.column_of(Role.DATE) if at is None else at
    found: list[tuple[str, str, str]] = []
    if at is None:
        return found
    last = ""
    for _, cells in table.rows:
        if at >= len(cells) or (last and cells[at].startswith(last)):
            continue
        stamp = stamp_of(cells[at])
        if stamp is not None and stamp.parts is not None:
            last = cells[at][:10] if WHOLE_DATE.match(cells[at]) else ""
            if not found or found[-1] != stamp.parts:
                found.append(stamp.parts)
    return found


def _notes(
    read_as: ReadAs, rows: RowsRead, dates: Sequence[tuple[str, str, str]], today: date
) -> Iterator[Sentence]:
    """What was taken for granted, so that a person can say otherwise."""
    if read_as.date_order in {DateOrder.DMY, DateOrder.MDY} and len(possible_orders(dates)) > 1:
        yield Sentence(
            "Dates are read as {order}: so the days follow each other, and none lies ahead.",
            order=str(read_as.date_order),
        )
    yield from _clock_notes(read_as.zone, rows)
    last = max((one.at for one in rows.readings), default=None)
    if last is not None and last.date() > today + timedelta(days=1):
        yield Sentence("Readings go on until {last:%d %B %Y}: is the clock of the logger right?", last=last)


def _clock_notes(zone: str | None, rows: RowsRead) -> Iterator[Sentence]:
    if rows.carries_zone:
        yield Sentence("Each time says its zone; it is kept as the rack's clock shows it.")
    elif zone is not None:
        yield Sentence("Times are those of {zone}; they are kept as the rack's clock shows them.", zone=zone)
    elif rows.readings:
        yield Sentence("Times are taken as the rack's own clock shows them.")
    if rows.noon:
        yield Sentence("There is no time of day: noon is taken.")
    if rows.twice == 1:
        yield Sentence("1 reading lies in the hour that came twice when the clocks were set back.")
    elif rows.twice:
        yield Sentence(
            "{count} readings lie in the hour that came twice when the clocks were set back.",
            count=rows.twice,
        )
