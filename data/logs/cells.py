"""Log rows: the cells of a file, read as a person wants it -> readings, and rows that cannot be one.

In    a `LogTable` and a `ReadAs`
Out   `Logged` readings in the book's units on the rack's clock; `BadRow`s with line and reason
Not   guessing (`columns.py`, `sheet.py`)

One bad cell costs one reading, not the row. Empty cells are no readings and no mistakes.
"""

import re
from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import UTC, datetime, time, timedelta, tzinfo
from typing import NamedTuple

from data.cancel import Progress
from data.entry.units import convert
from data.logs.clock import Clock, zone_of
from data.logs.columns import UNITS, Role, unit_in
from data.logs.readas import ReadAs
from data.logs.text import LogTable
from data.logs.times import DateOrder, Stamp, date_of, stamp_of
from data.readings import ReadingKind, impossible
from data.sentence import Sentence
from data.tables.journal import TOLD_EVERY

__all__ = ["BadRow", "Logged", "RowsRead", "number_in", "read_rows"]

NOTHING = frozenset({"", "-", "--", "---", "nan", "n/a", "na", "null", "none"})  # cells without a reading
THOUSANDS = re.compile(r"[+-]?\d{1,3}(?:,\d{3})+(?:\.\d*)?")
SWAPPED = str.maketrans(",.", ".,")
NOON = (12, 0, 0)  # of a day without a time
A_LITTLE_OVER = 105.0  # % humidity: a sensor in wet air says so, and means 100 (common practice)


class Logged(NamedTuple):
    """One reading of a file: value in the book's unit, time on the rack's clock."""

    line: int
    at: datetime
    kind: ReadingKind
    value: float
    tray: str | None  # code
    shelf: str | None


@dataclass(frozen=True, slots=True, kw_only=True)
class BadRow:
    """A row, or one cell of it, that gives no reading."""

    line: int
    text: str
    reason: Sentence


@dataclass(frozen=True, slots=True, kw_only=True)
class RowsRead:
    """All rows of a file."""

    readings: Sequence[Logged]
    bad: Sequence[BadRow]
    twice: int  # readings of the hour that came twice
    noon: bool  # no time of day is given
    carries_zone: bool  # each time says its zone, or counts seconds since 1970


@dataclass(slots=True)
class _Column:
    """One column of readings, ready for the walk over all rows."""

    at: int
    kind: ReadingKind
    unit: str
    tray: str | None
    shelf: str | None
    low: float
    high: float
    cells: dict[str, float | Sentence | None] = field(default_factory=dict)  # what was read already


def read_rows(
    table: LogTable, read_as: ReadAs, rack: tzinfo | None = None, step: Progress | None = None
) -> RowsRead:
    """All readings of a file, in its order; `step` is told (done, total) rows, and what it raises ends it."""
    return _Walk(table, read_as, rack).result(step)


class _Walk:
    """One walk over all rows; remembers the clock and the readings that were there already."""

    def __init__(self, table: LogTable, read_as: ReadAs, rack: tzinfo | None) -> None:
        self._table = table
        self._order = read_as.date_order or DateOrder.YMD
        zone = None if read_as.zone is None else zone_of(read_as.zone)
        self._clock = Clock(zone, rack)
        self._time = read_as.column_of(Role.TIME)
        self._date = read_as.column_of(Role.DATE)
        self._of_day = read_as.column_of(Role.CLOCK)
        self._tray = read_as.column_of(Role.TRAY)
        self._shelf = read_as.column_of(Role.SHELF)
        self._place = (read_as.tray, read_as.shelf)
        self._decimal = read_as.decimal
        self._columns = [
            _Column(number, column.kind, column.unit, column.tray, column.shelf, *_limits(column.kind))
            for number, column in enumerate(read_as.columns)
            if column.role is Role.READING and column.kind is not None
        ]
        self._seen: dict[tuple[object, ...], int] = {}
        self._readings: list[Logged] = []
        self._bad: list[BadRow] = []
        self._twice = 0
        self._noon = False
        self._carries_zone = False

    def result(self, step: Progress | None) -> RowsRead:
        rows = self._table.rows
        for number, (line, cells) in enumerate(rows):
            if step is not None and number % TOLD_EVERY == 0:
                step(number, len(rows))
            self._row(line, cells)
        return RowsRead(
            readings=self._readings,
            bad=self._bad,
            twice=self._twice,
            noon=self._noon,
            carries_zone=self._carries_zone,
        )

    def _row(self, line: int, cells: list[str]) -> None:
        at, twice = self._when(line, cells)
        if at is None:
            return
        row_tray = self._cell(cells, self._tray)
        row_shelf = self._cell(cells, self._shelf)
        for column in self._columns:
            cell = cells[column.at] if column.at < len(cells) else ""
            if cell in column.cells:
                value = column.cells[cell]
            else:
                value = column.cells[cell] = self._value(cell, column)
            if value is None:
                continue
            if isinstance(value, Sentence):
                self._bad.append(BadRow(line=line, text=cell, reason=value))
                continue
            tray, shelf = self._where(column, row_tray, row_shelf)
            self._keep(Logged(line, at, column.kind, value, tray, shelf), twice=twice)

    def _keep(self, one: Logged, *, twice: bool) -> None:
        key = (one.at, one.kind, one.tray, one.shelf)
        first = self._seen.get(key)
        if first is None:
            self._seen[key] = one.line
            self._readings.append(one)
            self._twice += twice
            return
        if twice:
            reason = Sentence(
                "The clocks were set back, {when:%H:%M} came twice: the first is taken, in line {line}.",
                when=one.at,
                line=first,
            )
        else:
            reason = Sentence(
                "There is a reading of the same time already, in line {line}: the first is taken.", line=first
            )
        self._bad.append(BadRow(line=one.line, text=f"{one.at} {one.value:g}", reason=reason))

    # --- when and where

    def _when(self, line: int, cells: list[str]) -> tuple[datetime | None, bool]:
        if self._time is not None:
            text = self._cell(cells, self._time) or ""
            stamp = stamp_of(text)
        else:
            day, hour = self._cell(cells, self._date) or "", self._cell(cells, self._of_day) or ""
            text = f"{day} {hour}".strip()
            stamp = self._joined(day, hour)
        reason: Sentence | None = None
        if stamp is None or (stamp.parts is None and stamp.unix is None):
            if text.casefold() in NOTHING:
                reason = Sentence("The row has no time.")
            else:
                reason = Sentence("“{text}” is no date and time.", text=text[:40])
        else:
            found = self._hour(stamp)
            if found is None:
                reason = Sentence("“{text}” is no day of the calendar.", text=text[:40])
            elif found[0] is None:
                reason = Sentence(
                    "The clocks were set forward, there was no {text}: in which zone does the logger live?",
                    text=text[:40],
                )
            else:
                return found
        self._bad.append(BadRow(line=line, text=" ".join(cells)[:80], reason=reason))
        return None, False

    def _joined(self, day: str, hour: str) -> Stamp | None:
        if self._date is None:
            return None
        one = stamp_of(day)
        if one is None or self._of_day is None:
            return one
        two = stamp_of(hour)
        if two is None or two.clock is None:
            return None
        return Stamp(one.parts, two.clock, two.offset)

    def _hour(self, stamp: Stamp) -> tuple[datetime | None, bool] | None:
        """The rack's time, with None in it for an hour that was skipped; None for a day that is none."""
        if stamp.unix is not None:
            self._carries_zone = True
            hour = self._clock.absolute(datetime.fromtimestamp(int(stamp.unix), UTC))
            return hour.at, hour.twice
        assert stamp.parts is not None
        day = date_of(stamp.parts, self._order)
        if day is None:
            return None
        if stamp.clock is None:
            self._noon = True
        hours, minutes, seconds = stamp.clock or NOON
        at = datetime.combine(day, time(hours % 24, minutes, seconds)) + timedelta(days=hours // 24)
        if stamp.offset is not None:
            self._carries_zone = True
            hour = self._clock.absolute((at - stamp.offset).replace(tzinfo=UTC))
        else:
            hour = self._clock.local(at)
        return hour.at, hour.twice

    def _where(self, column: _Column, tray: str | None, shelf: str | None) -> tuple[str | None, str | None]:
        """Of the row, else of the column, else of the file; a tray comes before a shelf."""
        for one in ((tray, shelf), (column.tray, column.shelf), self._place):
            if one[0]:
                return one[0], None
            if one[1]:
                return None, one[1]
        return None, None

    def _cell(self, cells: list[str], at: int | None) -> str | None:
        return cells[at] if at is not None and at < len(cells) else None

    # --- how much

    def _value(self, cell: str, column: _Column) -> float | Sentence | None:
        if cell.casefold() in NOTHING:
            return None
        number = number_in(cell, self._decimal)
        if number is None:
            return Sentence("“{text}” is no number.", text=cell[:40])
        own = UNITS[column.kind][0] if column.kind in UNITS else column.kind.unit
        written = unit_in(cell) if not cell[-1].isdigit() else ""
        unit = written if written in UNITS.get(column.kind, ()) else column.unit or own
        value = number if unit == own else convert(number, unit, own)
        if column.kind is ReadingKind.HUMIDITY and 100 < value <= A_LITTLE_OVER:
            value = 100.0
        if column.low <= value <= column.high:
            return value
        return impossible(column.kind, value) or value


def _limits(kind: ReadingKind) -> tuple[float, float]:
    """Where nothing is impossible, so that most cells need no second look."""
    return (-30.0, 80.0) if kind.unit == "C" else (0.0, 100.0) if kind.unit == "%" else (0.0, 50_000.0)


def number_in(cell: str, decimal: str) -> float | None:
    """The number in a cell, a unit behind it or not; None where there is none."""
    if "_" in cell:
        return None
    try:
        return _finite(float(cell if decimal == "." else cell.replace(",", ".")))
    except ValueError:
        pass
    plain = cell.strip().lstrip("<>~ ").replace("−", "-").rstrip("%°ºCcFfGgKkOoZzLlBbRrHhSs℃℉ .")
    for sign in "'’\u00a0\u202f ":
        plain = plain.replace(sign, "")
    if decimal == ",":
        plain = plain.translate(SWAPPED)
    if "," in plain and not THOUSANDS.fullmatch(plain):
        return None
    plain = plain.replace(",", "")
    try:
        return _finite(float(plain))
    except ValueError:
        return None


def _finite(number: float) -> float | None:
    return number if -1e9 < number < 1e9 else None
