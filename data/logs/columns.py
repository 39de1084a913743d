"""Log columns: headings and cells -> what each column means, and in which unit.

In    headings and the first rows of a table
Out   a `ColumnAs` for each column: a proposal that a person can change
Not   reading the values (`sheet.py`)

Words of headings are common ones of several languages; a unit in the heading or behind the numbers says more.
"""

import re
from collections.abc import Callable, Collection, Sequence
from dataclasses import dataclass
from enum import StrEnum

from data.logs.text import looks_like_number
from data.logs.times import stamp_of
from data.readings import ReadingKind

__all__ = ["UNITS", "ColumnAs", "Role", "propose_columns", "unit_in"]

SAMPLE = 100  # rows
SURELY_WEIGHT = 100.0  # what stands under a tray's code and is that large is no temperature
MOST = 0.5  # of the cells: a sensor may fail half the time

UNITS: dict[ReadingKind, tuple[str, ...]] = {  # units a column can have; the first is the book's own
    ReadingKind.AIR_TEMPERATURE: ("C", "F"),
    ReadingKind.MEDIUM_TEMPERATURE: ("C", "F"),
    ReadingKind.HUMIDITY: ("%",),
    ReadingKind.WEIGHT: ("g", "kg", "oz", "lb"),
}
SPELLED = {
    "°c": "C", "ºc": "C", "℃": "C", "degc": "C", "deg c": "C", "celsius": "C", "c": "C",
    "°f": "F", "ºf": "F", "℉": "F", "degf": "F", "deg f": "F", "fahrenheit": "F", "f": "F",
    "%": "%", "%rh": "%", "% rh": "%", "rh%": "%", "%rf": "%", "%hr": "%", "pct": "%", "percent": "%",
    "g": "g", "gr": "g", "gram": "g", "grams": "g", "kg": "kg", "oz": "oz", "lb": "lb", "lbs": "lb",
}  # fmt: skip
NOT_USED = (
    "dew", "taupunkt", "rosée", "vpd", "deficit", "batter", "volt", "lux", "light", "co2", "press", "hpa",
    "moist", "bodenfeucht", "set point", "setpoint", "target", "alarm", "tare", "min", "max", "signal",
    "heat index", "serial", "count",
)  # fmt: skip
WARM = ("temp", "t°", "t (°", "celsius", "fahrenheit", "wärme")
OF_MEDIUM = (
    "medium",
    "soil",
    "root",
    "substrat",
    "probe",
    "mat",
    "extern",
    "ext.",
    "boden",
    "compost",
    "bed ",
)
HUMID = ("humid", "hum", "rh", "r.h", "feucht", "rel.", "humed", "hygro")
HEAVY = ("weight", "mass", "gewicht", "masse", "poids", "peso", "gross", "net ", "netto", "scale", "load")
TRAY = ("tray", "code", "schale", "bac", "bandeja")
SHELF = ("shelf", "rack", "place", "regal", "level", "room", "sensor")


class Role(StrEnum):
    """What a column is for."""

    NOTHING = "not used"
    TIME = "date and time"
    DATE = "date"
    CLOCK = "time of day"
    TRAY = "tray"
    SHELF = "shelf"
    READING = "reading"


@dataclass(frozen=True, slots=True, kw_only=True)
class ColumnAs:
    """How a column is read. `unit` is "" where not known; tray (code) and shelf: of this column only."""

    role: Role = Role.NOTHING
    kind: ReadingKind | None = None
    unit: str = ""
    tray: str | None = None
    shelf: str | None = None


def propose_columns(
    headings: Sequence[str],
    rows: Sequence[Sequence[str]],
    trays: Collection[str] = (),
    shelves: Collection[str] = (),
) -> tuple[ColumnAs, ...]:
    """What the columns probably mean; `trays` and `shelves` are the codes and names that the book knows."""
    columns = []
    for number, heading in enumerate(headings):
        cells = [row[number] for row in rows[:SAMPLE] if number < len(row) and row[number]]
        columns.append(_column(heading.casefold().replace("_", " "), cells, trays, shelves))
    return _one_time(columns)


def _column(heading: str, cells: Sequence[str], trays: Collection[str], shelves: Collection[str]) -> ColumnAs:
    if not cells:
        return ColumnAs()
    named = next((code for code in trays if code.casefold() == heading.strip()), None)
    if named is not None and _share(cells, lambda cell: (_number_of(cell) or 0) >= SURELY_WEIGHT):
        return ColumnAs(role=Role.READING, kind=ReadingKind.WEIGHT, unit=unit_in(cells[0]), tray=named)
    role = _time_role(cells)
    if role is not None:
        return ColumnAs(role=role)
    if trays and _share(cells, lambda cell: cell in trays):
        return ColumnAs(role=Role.TRAY)
    if shelves and _share(cells, lambda cell: cell in shelves):
        return ColumnAs(role=Role.SHELF)
    if not _share(cells, looks_like_number):
        if _has(heading, TRAY):
            return ColumnAs(role=Role.TRAY)
        return ColumnAs(role=Role.SHELF) if _has(heading, SHELF) else ColumnAs()
    return _reading(heading, cells)


def _reading(heading: str, cells: Sequence[str]) -> ColumnAs:
    unit = unit_in(heading) or unit_in(cells[0])
    if _has(heading, NOT_USED):
        return ColumnAs()
    if unit in {"C", "F"} or _has(heading, WARM):
        medium = _has(heading, OF_MEDIUM)
        kind = ReadingKind.MEDIUM_TEMPERATURE if medium else ReadingKind.AIR_TEMPERATURE
    elif _has(heading, HEAVY) or unit in UNITS[ReadingKind.WEIGHT]:
        kind = ReadingKind.WEIGHT
    elif _has(heading, HUMID) or (unit == "%" and not heading.replace("%", "").strip(" ()[]")):
        kind, unit = ReadingKind.HUMIDITY, "%"
    else:
        return ColumnAs()
    return ColumnAs(role=Role.READING, kind=kind, unit=unit if unit in UNITS[kind] else "")


def unit_in(text: str) -> str:
    """The unit at the end of a heading or of a cell, in the book's spelling; "" for none."""
    plain = text.casefold().replace("_", " ").strip()
    tail = re.search(r"[(\[]\s*([^()\[\]]*?)\s*[)\]]\s*$", plain) or re.search(
        r"(?:^|[\s,/.\d:])(°?\s?[a-zº℃℉%]{1,10}(?:\s?rh)?)\s*$", plain
    )
    return "" if tail is None else SPELLED.get(tail[1].strip(), "")


def _number_of(cell: str) -> float | None:
    """The number at the beginning of a cell, roughly."""
    found = re.match(r"[+\s]*(\d+)", cell)
    return None if found is None else float(found[1])


def _time_role(cells: Sequence[str]) -> Role | None:
    stamps = [stamp_of(cell) for cell in cells]
    known = [stamp for stamp in stamps if stamp is not None]
    if len(known) < MOST * len(cells):
        return None
    if any(stamp.unix is not None for stamp in known):
        return Role.TIME
    dated = sum(stamp.parts is not None for stamp in known)
    if dated < len(known) / 2:
        return Role.CLOCK
    return Role.TIME if any(stamp.clock is not None for stamp in known) else Role.DATE


def _one_time(columns: Sequence[ColumnAs]) -> tuple[ColumnAs, ...]:
    """The first time, or the first date with the first time of day; further ones are not used."""
    roles = [column.role for column in columns]
    keep = {roles.index(Role.TIME)} if Role.TIME in roles else set()
    if not keep:
        keep = {roles.index(role) for role in (Role.DATE, Role.CLOCK) if role in roles}
    times = {Role.TIME, Role.DATE, Role.CLOCK}
    firsts = {roles.index(role) for role in (Role.TRAY, Role.SHELF) if role in roles}
    return tuple(
        ColumnAs()
        if (column.role in times and at not in keep)
        or (column.role in {Role.TRAY, Role.SHELF} and at not in firsts)
        else column
        for at, column in enumerate(columns)
    )


def _has(heading: str, words: Sequence[str]) -> bool:
    """Whether a word is in a heading; a short one only where a word begins."""
    return any(
        word in heading if len(word) > 3 else re.search(rf"(?<![^\W\d]){re.escape(word)}", heading)
        for word in words
    )


def _share(cells: Sequence[str], holds: Callable[[str], bool]) -> bool:
    return sum(map(holds, cells)) >= MOST * len(cells)
