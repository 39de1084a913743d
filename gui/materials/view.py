"""Material view: the table of media as text, no Qt.

In    a `MaterialReading`
Out   what stands in each cell, the words of a cell's panel, what is due
Not   widgets (`table.py`, `panel.py`), the book (`desk.py`)
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

from data.materials.reading import DueTest, MaterialReading
from data.materials.table import ROWS, Cell, Kept, Origin, Row, Table
from data.statistics.estimate import Estimate
from gui.language.spoken import in_figures, spoken
from gui.language.spoken import spoken as in_words
from gui.language.words import translate

__all__ = [
    "CellWords",
    "Line",
    "cell_words",
    "difference_short",
    "difference_unit",
    "difference_words",
    "due_words",
    "kept_words",
    "lines_of",
    "n_words",
    "origin_words",
    "panel_words",
    "range_words",
    "row_of",
    "step_words",
    "value_words",
]  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class Line:
    """A row of the table: a property, or the heading of a group."""

    row: Row | None
    heading: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class CellWords:
    """One cell as text; `origin` is None in a gap."""

    value: str
    below: str
    origin: Origin | None
    spoken: str  # for a screen reader


def lines_of(rows: Sequence[Row] = ROWS) -> tuple[Line, ...]:
    """Rows under the headings of their groups."""
    lines: list[Line] = []
    group = None
    for row in rows:
        if row.group is not group:
            group = row.group
            lines.append(Line(row=None, heading=in_words(group)))
        lines.append(Line(row=row))
    return tuple(lines)


def row_of(key: str) -> Row:
    """A row by its key."""
    return next(row for row in ROWS if row.key == key)


def value_words(row: Row, value: float) -> str:
    """A number as one would say it."""
    return in_figures(value, f".{row.decimals}f")


def range_words(row: Row, cell: Cell) -> str:
    """ "120 to 140", or nothing."""
    if cell.low is None or cell.high is None:
        return ""
    if cell.low == cell.high:
        return translate("Materials", "exact") if cell.of == "entries" else ""
    words = translate("Materials", "{low} to {high}")
    return words.format(low=value_words(row, cell.low), high=value_words(row, cell.high))


def n_words(cell: Cell) -> str:
    """ "6 trays"; nothing for what is not counted."""
    if not cell.n or cell.of == "entries":
        return ""
    one, many = {
        "trays": (translate("Materials", "1 tray"), translate("Materials", "{n} trays")),
        "tests": (translate("Materials", "1 test"), translate("Materials", "{n} tests")),
        "weighings": (translate("Materials", "1 weighing"), translate("Materials", "{n} weighings")),
        "nights": (translate("Materials", "1 night"), translate("Materials", "{n} nights")),
        "inputs": (translate("Materials", "1 input"), translate("Materials", "{n} inputs")),
    }[cell.of]
    return one if cell.n == 1 else many.format(n=cell.n)


def origin_words(origin: Origin) -> str:
    """Where a number came from."""
    return {
        Origin.MEASURED: translate("Materials", "measured here"),
        Origin.TYPED: translate("Materials", "typed in"),
        Origin.DEFAULT: translate("Materials", "default from literature"),
        Origin.GUESS: translate("Materials", "guess"),
    }[origin]


def kept_words(kept: Kept) -> str:
    """How a medium stands to the limits."""
    return {
        Kept.YES: translate("Materials", "keeps all limits"),
        Kept.NOT_SURE: translate("Materials", "limits: cannot be told"),
        Kept.NO: translate("Materials", "misses a limit"),
        Kept.GAP: translate("Materials", "limits: not known yet"),
    }[kept]


def cell_words(row: Row, medium: str, cell: Cell) -> CellWords:
    """What stands in a cell."""
    if cell.gap is not None:
        gap = spoken(cell.gap)
        return CellWords(value="", below=gap, origin=None, spoken=f"{medium}, {spoken(row.words)}: {gap}")
    value = spoken(cell.text) if cell.value is None else value_words(row, cell.value)
    parts = [part for part in (range_words(row, cell), n_words(cell)) if part]
    below = ", ".join(parts)
    number = f"{value} {spoken(row.unit)}".strip()
    told = ", ".join([f"{medium}, {spoken(row.words)}: {number}", *parts, origin_words(cell.origin)])
    return CellWords(value=value, below=below, origin=cell.origin, spoken=told)


def difference_words(row: Row, one: Estimate, trusted: str) -> str:
    """Against the trusted medium."""

    unit = difference_unit(row)
    if one.low is None or one.high is None:
        words = translate("Materials", "{difference} {unit} against {trusted}; no interval can be had.")
        return words.format(difference=_signed(row, one.value), unit=unit, trusted=trusted)
    words = translate("Materials", "{difference} {unit} against {trusted}, interval {low} to {high}.")
    told = words.format(
        difference=_signed(row, one.value),
        unit=unit,
        trusted=trusted,
        low=_signed(row, one.low),
        high=_signed(row, one.high),
    )
    if one.low <= 0 <= one.high:
        return told + " " + translate("Materials", "Which one has more cannot be told.")
    return told


def difference_short(row: Row, one: Estimate) -> str:
    """The same in a table under the name of the medium, whose column says against which."""
    number = f"{_signed(row, one.value)} {difference_unit(row)}".strip()
    if one.low is None or one.high is None:
        return number + ", " + translate("Materials", "no interval can be had")
    words = translate("Materials", "{difference}, {low} to {high}")
    told = words.format(difference=number, low=_signed(row, one.low), high=_signed(row, one.high))
    if one.low <= 0 <= one.high:
        return told + ". " + translate("Materials", "Which one has more cannot be told.")
    return told + "."


def _signed(row: Row, value: float) -> str:
    return in_figures(value + 0.0, f"+.{row.decimals}f")


def difference_unit(row: Row) -> str:
    """What a difference of two numbers of a row is in: of marks from 1 to 5, marks; of shares, points."""
    told = {"1-5": translate("Materials", "marks"), "%": translate("Materials", "points")}
    return told.get(row.unit, spoken(row.unit))


def panel_words(table: Table, row: Row, medium: str, reading: MaterialReading) -> list[tuple[str, str]]:
    """What a cell's panel says: (role, text); roles are those of labels."""
    cell = table.cell(row.key, medium)
    found: list[tuple[str, str]] = []
    if cell.gap is not None:
        found.append(("", spoken(cell.gap)))
    else:
        value = (
            spoken(cell.text) if cell.value is None else f"{value_words(row, cell.value)} {spoken(row.unit)}"
        )
        found.append(("big", value))
        told = ", ".join(part for part in (range_words(row, cell), n_words(cell)) if part)
        if told:
            found.append(("soft", told))
    told_below = row.key == "footprint" and any(one.medium == medium for one in reading.climate)
    if cell.difference is not None and table.trusted is not None and not told_below:
        found.append(("", difference_words(row, cell.difference, table.trusted)))
    if cell.beside is not None:
        found.append(("soft", spoken(cell.beside)))
    if row.key == "footprint":
        for answer in reading.climate:
            if answer.medium == medium:
                found.append(("", spoken(answer.sentence)))
                if answer.settles is not None:
                    found.append(("", spoken(answer.settles)))
    found += [("", spoken(note)) for note in cell.notes]
    if cell.sources:
        found.append(("small", translate("Materials", "Sources:") + " " + "; ".join(cell.sources)))
    return found


def step_words(name: str) -> str:
    """A step of a test in short."""
    return {
        "dry": translate("Materials", "dry"),
        "soaked": translate("Materials", "soaked"),
        "drained": translate("Materials", "drained"),
        "after 6 h": translate("Materials", "after 6 h"),
        "after 12 h": translate("Materials", "after 12 h"),
        "after 24 h": translate("Materials", "after 24 h"),
        "after 48 h": translate("Materials", "after 48 h"),
        "rewetted": translate("Materials", "rewetted"),
        "air": translate("Materials", "air of the shelf"),
        "over the mat": translate("Materials", "over the heat mat"),
        "off": translate("Materials", "heat mat off"),
        "cooling": translate("Materials", "cooling"),
        "laid out": translate("Materials", "laid out"),
        "left": translate("Materials", "what is left"),
    }.get(name, name)


def due_words(one: DueTest, now: datetime) -> str:
    """ "Weigh again at 14:00: coir, wetting test"."""
    test = {
        "wetting": translate("Materials", "wetting test"),
        "cooling": translate("Materials", "cooling test"),
        "breakdown": translate("Materials", "break-down"),
    }[str(one.test.kind)]
    if one.due.at.date() == now.date() and not one.due.is_now:
        words = translate("Materials", "At {at}: {medium}, {test}").format(
            at=f"{one.due.at:%H:%M}", medium=one.test.medium, test=test
        )
    elif one.due.is_now:
        words = translate("Materials", "Now: {medium}, {test}").format(medium=one.test.medium, test=test)
    else:
        days = max(1, round((one.due.at - now) / timedelta(days=1)))
        words = translate("Materials", "In {n} days: {medium}, {test}").format(
            n=days, medium=one.test.medium, test=test
        )
    return words
