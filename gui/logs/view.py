"""Log view: a file of readings and how it was read -> what the window says and offers; no Qt.

In    the bytes of a file, a book, how a person wants it read
Out   `Looked`: the sheet, what would be kept, what is known, what has no place; words and choices
Not   reading (`data/logs/sheet.py`), widgets (`assistant.py`, `preview.py`)
"""

from dataclasses import dataclass, replace
from datetime import date
from itertools import takewhile

from data.book import Book
from data.cancel import Progress
from data.logs.cells import BadRow
from data.logs.columns import UNITS, ColumnAs, Role
from data.logs.readas import ReadAs
from data.logs.sheet import LogRefused, LogSheet, read_log
from data.readings import ReadingKind
from data.upkeep.logkeeping import placed
from gui.language.spoken import DAY, begun, day_words, filled, in_figures, spoken
from gui.language.words import translate

__all__ = [
    "DELIMITERS", "Looked", "column_choices", "column_words", "delimiter_words", "kept_words", "look_at_log",
    "place_of", "read_words", "stored_words", "with_place",
]  # fmt: skip

DELIMITERS = (",", ";", "\t", "|")
KINDS = tuple(UNITS)
WARM = {ReadingKind.AIR_TEMPERATURE, ReadingKind.MEDIUM_TEMPERATURE}
MOST_NAMED = 4  # trays


@dataclass(frozen=True, slots=True, kw_only=True)
class Looked:
    """A file as it was looked at beside a book."""

    asked: int
    sheet: LogSheet | LogRefused
    will_keep: int = 0
    known: int = 0
    same_file: bool = False
    of_ended: int = 0  # readings of trays that have ended since; another one may have the code by now
    ended: tuple[tuple[str, date], ...] = ()  # code and last day of those trays
    bad: tuple[BadRow, ...] = ()  # rows that cannot be read, and those without a place

    @property
    def can_keep(self) -> bool:
        """Whether there is anything to keep, and nothing open."""
        return isinstance(self.sheet, LogSheet) and self.sheet.is_settled and self.will_keep > 0


def look_at_log(
    book: Book, data: bytes, name: str, read_as: ReadAs | None, asked: int, step: Progress | None = None
) -> Looked:
    """Read a file for a book; raises `BookError`. `step` is told how many rows are read, of how many."""
    trays = book.trays(growing=False)
    sheet = read_log(
        data,
        name,
        today=book.today(),
        read_as=read_as,
        trays={tray.code for tray in trays},
        shelves={tray.shelf for tray in trays if tray.shelf},
        step=step,
    )
    if isinstance(sheet, LogRefused):
        return Looked(asked=asked, sheet=sheet)
    if not sheet.is_settled:
        return Looked(asked=asked, sheet=sheet, bad=tuple(sheet.bad))
    readings, unplaced = placed(sheet, trays)
    known = book.known_of_log(sheet.digest, readings)
    done = {tray.id: (tray.code, tray.done_at.date()) for tray in trays if tray.done_at is not None}
    of_ended = [one.tray_id for one in readings if one.tray_id in done]
    return Looked(
        asked=asked,
        sheet=sheet,
        will_keep=len(readings) - known,
        known=known,
        same_file=known == len(readings) and book.knows_log(sheet.digest),
        of_ended=len(of_ended),
        ended=tuple(done[tray] for tray in dict.fromkeys(of_ended) if tray is not None),
        bad=tuple(sorted((*sheet.bad, *unplaced), key=lambda row: row.line)),
    )


# --- words


def delimiter_words(delimiter: str) -> str:
    """What stands between two columns."""
    words = {
        ",": translate("LogView", "comma"),
        ";": translate("LogView", "semicolon"),
        "\t": translate("LogView", "tab"),
        "|": translate("LogView", "bar |"),
    }
    return words.get(delimiter, delimiter)


def read_words(sheet: LogSheet) -> str:
    """How the file was read, in one sentence."""
    read = sheet.read_as
    comma, point = translate("LogView", "a decimal comma"), translate("LogView", "a decimal point")
    decimal = comma if read.decimal == "," else point
    order = "–" if read.date_order is None else spoken(read.date_order)
    words = translate(
        "LogView",
        "{columns} columns with a {delimiter} between them, {decimal}, dates as {order}; "
        "the first row is line {line}.",
    )
    return filled(
        words,
        columns=len(read.columns),
        delimiter=delimiter_words(read.delimiter),
        decimal=decimal,
        order=order,
        line=read.first_line,
    )


def kept_words(looked: Looked) -> str:
    """What Keep would do."""
    if looked.same_file:
        return translate("LogView", "This very file is in the book already: there is nothing to keep.")
    if not isinstance(looked.sheet, LogSheet):
        return ""
    if looked.sheet.questions:
        return translate("LogView", "Answer what is asked above, then the readings can be kept.")
    words = translate("LogView", "Readings that will be kept: {count}.")
    if looked.known:
        words = translate("LogView", "Readings that will be kept: {count}. Known already: {known}.")
    said = filled(words, count=looked.will_keep, known=looked.known)
    return f"{said} {_ended_words(looked)}" if looked.of_ended else said


def _ended_words(looked: Looked) -> str:
    """For which trays that grow no more readings are: nobody shall think that they are of the new ones."""
    one = translate("LogView", "{code} until {day}")
    named = [one.format(code=code, day=day_words(day, DAY)) for code, day in looked.ended[:MOST_NAMED]]
    if len(looked.ended) > MOST_NAMED:
        named.append("...")
    words = translate("LogView", "Of trays that have ended: {count} ({trays}).")
    return filled(words, count=looked.of_ended, trays=", ".join(named))


def stored_words(sheet: LogSheet, line: int) -> str:
    """What of one line will be stored; nothing as long as something is open."""
    if sheet.questions:
        return ""
    upto = takewhile(lambda reading: reading.line <= line, sheet.readings)  # in the order of the file
    places: dict[str, list[str]] = {}
    for one in upto:
        if one.line == line:
            unit = f"°{one.kind.unit}" if one.kind in WARM else one.kind.unit
            value = f"{in_figures(round(one.value, 2))} {unit}"
            places.setdefault(f"{one.at:%Y-%m-%d %H:%M} · {one.tray or one.shelf}", []).append(value)
    return "; ".join(" · ".join((place, *values)) for place, values in places.items())


# --- columns


def column_choices(column: ColumnAs) -> tuple[ColumnAs, ...]:
    """All that a column may mean, the present meaning among them."""
    plain = [ColumnAs(role=role) for role in Role if role is not Role.READING]
    read = [
        ColumnAs(role=Role.READING, kind=kind, unit=unit, tray=column.tray, shelf=column.shelf)
        for kind in KINDS
        for unit in UNITS[kind]
    ]
    choices = (*plain, *read)
    return choices if column in choices else (column, *choices)


def column_words(column: ColumnAs) -> str:
    """What a column means."""
    if column.role is not Role.READING or column.kind is None:
        return begun(spoken(column.role))
    unit = f"°{column.unit}" if column.kind in WARM and column.unit else column.unit or "?"
    return f"{begun(spoken(column.kind))}, {unit}"


# --- the place of all readings


def place_of(read_as: ReadAs) -> tuple[str, str] | None:
    """The one tray or shelf of the whole file: ("tray" | "shelf", its name)."""
    if read_as.tray:
        return "tray", read_as.tray
    return ("shelf", read_as.shelf) if read_as.shelf else None


def with_place(read_as: ReadAs, place: tuple[str, str] | None) -> ReadAs:
    """The same with all readings of one tray or shelf."""
    kind, name = ("", None) if place is None else place
    return replace(read_as, tray=name if kind == "tray" else None, shelf=name if kind == "shelf" else None)
