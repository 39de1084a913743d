"""Old notes: a table of trays that somebody kept before -> trays for the book, with what is not plain told.

In    the bytes of a CSV file, one line a tray; how it is to be read, where the grower has said so
Out   `OldNotes`: what each column was taken for, trays, lines that were left out and why, what is to be asked
Not   bytes to cells (`oldtable.py`), keeping them (`chapters/oldbook.py`), exports of this program
      (`travel/imported.py`), files of loggers (`sheet.py`)

A line needs crop, medium and the day of sowing. A column that is not known goes into the tray's note, with
its heading, so nothing that was written is lost. Dates that can be read in two ways are asked about, never
guessed. A table of several media without a column for the trial is one trial, with a block of each day of
sowing: what was sown on another day had other weather.
"""

import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date, datetime, time
from pathlib import PurePath

from data.entry.units import Quantity, parse
from data.growing.conditions import next_code
from data.logs.oldcolumns import DATES, NEEDED, Field, fields_of, lacking
from data.logs.oldtable import OldTable, read_old_table
from data.logs.text import NotALog
from data.logs.times import DateOrder, date_of, possible_orders, stamp_of
from data.records import NewTray
from data.sentence import Sentence

__all__ = ["OldNotes", "OldTray", "asked_days", "found_fields", "read_old_notes"]

LONGEST = 500  # letters of a cell
FIRST_CODE = "N1"
MORNING = time(9)
NUMBERS = (Field.SEED, Field.SOAK, Field.MASS, Field.HEIGHT, Field.EYE)
QUANTITIES = {Field.SEED: Quantity.MASS, Field.MASS: Quantity.MASS, Field.HEIGHT: Quantity.LENGTH}
SCORE_MOST = 100.0
MOST_GRADE = 10.0  # where no number of a column is larger, it holds grades
HOURS = re.compile(r"\s*(h|hrs?|hours?|std|stunden?)\.?$", re.IGNORECASE)


@dataclass(frozen=True, slots=True, kw_only=True)
class OldTray:
    """One line: a tray that grew, with what came of it."""

    line: int
    new: NewTray
    cut_at: datetime | None
    fresh_mass_g: float | None
    height_mm: float | None
    eye_score: float | None  # 0-100


@dataclass(frozen=True, slots=True, kw_only=True)
class OldNotes:
    """A file as it was read."""

    digest: str
    delimiter: str
    headings: tuple[str, ...]
    fields: tuple[Field | None, ...]  # what each column was taken for; None: goes into the note
    order: DateOrder | None  # None: to be asked, or there is no date
    orders: tuple[DateOrder, ...]  # in which the dates can be read
    trays: tuple[OldTray, ...]
    refused: tuple[Sentence, ...]  # lines that were left out
    question: Sentence | None = None  # what has to be said before anything can be kept


def read_old_notes(
    data: bytes,
    *,
    fields: Sequence[Field | None] | None = None,
    order: DateOrder | None = None,
    name: str = "",
) -> OldNotes:
    """Read a file; `fields` and `order` as the grower has said, else as found.

    Parameters
    ----------
    name : of the file. A table that compares media and names no trial is a trial called like it.

    Raises
    ------
    NotALog
        If there is no table in it; the sentence says what was looked for.
    """
    table = read_old_table(data)
    rows = table.rows
    taken = tuple(fields) if fields is not None else found_fields(table)
    missing = lacking(taken)
    if missing is not None:
        raise NotALog(missing)
    orders = _orders(rows, taken)
    asked = asked_days(table, taken, orders)
    order = order or (orders[0] if orders and asked is None else None)
    notes = OldNotes(
        digest=table.digest,
        delimiter=table.delimiter,
        headings=table.headings,
        fields=taken,
        order=order,
        orders=orders,
        trays=(),
        refused=(),
    )
    if order is None:
        return replace(notes, question=_which_order(asked))
    reading = _Reading(table.headings, taken, order)
    trays = tuple(tray for number, cells in rows if (tray := reading.tray(number, cells)) is not None)
    return _as_trial(replace(notes, trays=trays, refused=tuple(reading.refused)), PurePath(name).stem)


def _as_trial(notes: OldNotes, name: str) -> OldNotes:
    """What is compared needs a trial; trays that were sown on one day are taken for one of its blocks."""
    media: dict[str, set[str]] = {}
    for tray in notes.trays:
        media.setdefault(tray.new.crop, set()).add(tray.new.medium)
    if not name.strip() or Field.TRIAL in notes.fields or all(len(one) < 2 for one in media.values()):
        return notes
    in_blocks = Field.BLOCK in notes.fields

    def put(tray: OldTray) -> OldTray:
        block = tray.new.block if in_blocks else f"{tray.new.sown_at:%Y-%m-%d}"
        return replace(tray, new=replace(tray.new, trial=name.strip(), block=block))

    return replace(notes, trays=tuple(map(put, notes.trays)))


# --- columns


def found_fields(table: OldTable) -> tuple[Field | None, ...]:
    """What the headings say; grades up to 5 or 10, of which 1 may be best, are no eye score of 0 to 100."""
    found = fields_of(table.headings)
    if Field.EYE not in found:
        return found
    at = found.index(Field.EYE)
    values = [
        value for _, cells in table.rows if at < len(cells) and (value := _plain(cells[at])) is not None
    ]
    graded = bool(values) and max(values) <= MOST_GRADE
    return tuple(None if graded and field is Field.EYE else field for field in found)


def _plain(text: str) -> float | None:
    """A number, perhaps of hours; None where it is none."""
    try:
        return float(HOURS.sub("", text.strip()).replace(",", "."))
    except ValueError:
        return None


def _orders(
    rows: Sequence[tuple[int, tuple[str, ...]]], fields: Sequence[Field | None]
) -> tuple[DateOrder, ...]:
    parts = [
        stamp.parts
        for _, cells in rows
        for cell, field in zip(cells, fields, strict=False)
        if field in DATES and (stamp := stamp_of(cell.strip())) is not None and stamp.parts is not None
    ]
    return possible_orders(parts)


def asked_days(
    table: OldTable, fields: Sequence[Field | None], orders: Sequence[DateOrder]
) -> tuple[str, tuple[date, ...]] | None:
    """The first day that is another one in another order, and what it is in each; None where all agree."""
    for _, cells in table.rows:
        for cell, field in zip(cells, fields, strict=False):
            stamp = stamp_of(cell.strip()) if field in DATES else None
            if stamp is None or stamp.parts is None:
                continue
            days = [date_of(stamp.parts, order) for order in orders]
            read = tuple(day for day in days if day is not None)
            if len(set(read)) > 1:
                return cell.strip(), read
    return None


def _which_order(asked: tuple[str, tuple[date, ...]] | None) -> Sentence:
    if asked is None:
        return Sentence("No day of sowing could be read: write days like 2026-03-02.")
    written, days = asked
    if len(days) > 2:
        return Sentence("Is {written} the day {days}?", written=written, days=" / ".join(map(str, days)))
    first, second = days
    return Sentence(
        "Is {written} the day {first:%Y-%m-%d} or {second:%Y-%m-%d}?",
        written=written, first=first, second=second,
    )  # fmt: skip


# --- lines


class _LeftOut(Exception):
    """A line that cannot be a tray, and why."""

    def __init__(self, why: Sentence) -> None:
        self.why = why
        super().__init__(why)


class _Reading:
    """The lines of one file, read one after the other."""

    def __init__(self, headings: Sequence[str], fields: Sequence[Field | None], order: DateOrder) -> None:
        self._headings, self._fields, self._order = headings, fields, order
        self._codes: list[str] = []
        self.refused: list[Sentence] = []

    def tray(self, line: int, cells: Sequence[str]) -> OldTray | None:
        """The tray of a line, or None where it cannot be one; then the reason is noted."""
        try:
            return self._tray(line, cells)
        except _LeftOut as reason:
            self.refused.append(Sentence("Line {line}: {why}; it was left out.", line=line, why=reason.why))
            return None

    def _tray(self, line: int, cells: Sequence[str]) -> OldTray:
        said = {
            field: cell.strip()[:LONGEST]
            for field, cell in zip(self._fields, cells, strict=False)
            if field is not None
        }
        for field in NEEDED:
            if not said.get(field):
                raise _LeftOut(Sentence("no {what} is named", what=field))
        sown = self._day(said[Field.SOWN])
        cut = self._day(said[Field.CUT]) if said.get(Field.CUT) else None
        if cut is not None and cut < sown:
            raise _LeftOut(Sentence("“{day}” is no day after the sowing", day=said[Field.CUT][:40]))
        numbers = {field: self._number(field, said.get(field, "")) for field in NUMBERS}
        return OldTray(
            line=line,
            new=self._new(said, numbers, sown, "; ".join(self._remarks(cells, said))),
            cut_at=None if cut is None else datetime.combine(cut, MORNING),
            fresh_mass_g=numbers[Field.MASS],
            height_mm=numbers[Field.HEIGHT],
            eye_score=numbers[Field.EYE],
        )

    def _new(
        self, said: Mapping[Field, str], numbers: Mapping[Field, float | None], sown: date, note: str
    ) -> NewTray:
        code = said.get(Field.CODE) or next_code(self._codes[-1] if self._codes else "N0", self._codes)
        self._codes.append(code)
        return NewTray(
            code=code,
            crop=said[Field.CROP].lower(),  # not `casefold`, which makes another word of "Weißkohl"
            medium=said[Field.MEDIUM].lower(),
            sown_at=datetime.combine(sown, MORNING),
            trial=said.get(Field.TRIAL) or None,
            block=said.get(Field.BLOCK) or None,
            shelf=said.get(Field.SHELF, ""),
            seed_lot=said.get(Field.LOT) or None,
            sowing_rate_g=numbers[Field.SEED],
            soak_hours=numbers[Field.SOAK],
            feed=said.get(Field.FEED) or None,
            note=note,
        )

    def _day(self, text: str) -> date:
        stamp = stamp_of(text)
        day = None if stamp is None or stamp.parts is None else date_of(stamp.parts, self._order)
        if day is None:
            raise _LeftOut(Sentence("“{day}” is no day", day=text[:40]))
        if day > date.today():
            raise _LeftOut(Sentence("“{day}” has not come yet", day=text[:40]))
        return day

    def _number(self, field: Field, text: str) -> float | None:
        """The number in the book's unit, None where nothing is written."""
        if text in ("", "-", "?"):
            return None
        value = _plain(text) if field not in QUANTITIES else self._amount(field, text)
        if value is None or not 0 <= value < 1e6 or (field is Field.EYE and value > SCORE_MOST):
            raise _LeftOut(Sentence("“{text}” cannot be {what}", text=text[:40], what=field))
        return value or None if field is Field.SEED else value

    def _amount(self, field: Field, text: str) -> float | None:
        """None where it is no amount, or could be two."""
        bare = not any(letter.isalpha() for letter in text)
        typed = parse(f"{text} {self._unit(field)}" if bare else text, QUANTITIES[field])
        return None if typed.instead is not None else typed.value

    def _unit(self, field: Field) -> str:
        """The unit in the heading, "yield (oz)" or "height in cm"; where there is none the book's own."""
        words = re.split(r"[\s()\[\]_]+", self._headings[self._fields.index(field)].casefold())
        units = ("cm", "mm", "in") if field is Field.HEIGHT else ("oz", "kg", "g")
        return next((unit for unit in units if unit in words), "mm" if field is Field.HEIGHT else "g")

    def _remarks(self, cells: Sequence[str], said: Mapping[Field, str]) -> Iterator[str]:
        if said.get(Field.NOTE):
            yield said[Field.NOTE]
        for heading, field, cell in zip(self._headings, self._fields, cells, strict=False):
            if field is None and cell.strip():
                yield f"{heading}: {cell.strip()[:LONGEST]}" if heading else cell.strip()[:LONGEST]
