"""Old notes view: a table of trays of before, and how it is read -> what the window says and offers; no Qt.

In    the bytes of a file, a book, how a person wants it read
Out   `NotesLooked`: the table, what each column is, the trays as they would be kept; words
Not   reading (`data/logs/oldnotes.py`), widgets (`assistant.py`)
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date

from data.book import Book
from data.logs.oldcolumns import Field, lacking
from data.logs.oldnotes import OldNotes, OldTray, asked_days, found_fields, read_old_notes
from data.logs.oldtable import OldTable, read_old_table
from data.logs.text import NotALog
from data.logs.times import DateOrder
from data.sentence import Sentence
from gui.language.spoken import DAY_YEAR_SHORT, begun, day_words, filled, spoken
from gui.language.words import translate

__all__ = [
    "NotesLooked", "field_words", "first_words", "kept_words", "look_at_notes", "order_words", "read_words",
    "tray_words",
]  # fmt: skip

MOST_NAMES = 6  # of crops and media that are listed
MOST_TRAYS = 5  # that are shown as they will be kept


@dataclass(frozen=True, slots=True, kw_only=True)
class NotesLooked:
    """A file as it was looked at beside a book."""

    asked: int
    table: OldTable | None = None  # None: there is none in the file
    fields: tuple[Field | None, ...] = ()
    notes: OldNotes | None = None  # None as long as a column is lacking
    trouble: Sentence | None = None  # what stands in the way
    choices: tuple[tuple[DateOrder, date], ...] = ()  # what the day that is asked about may be
    same_file: bool = False
    there: int = 0  # trays that the book has already
    new_crops: tuple[str, ...] = ()  # that the book does not know yet
    new_media: tuple[str, ...] = ()

    @property
    def can_keep(self) -> bool:
        """Whether there is anything to keep, and nothing open."""
        notes = self.notes
        if notes is None or notes.question is not None or self.same_file:
            return False
        return len(notes.trays) > self.there


def look_at_notes(
    book: Book,
    data: bytes,
    fields: tuple[Field | None, ...] | None,
    order: DateOrder | None,
    asked: int,
    name: str = "",
) -> NotesLooked:
    """Read a file of that name for a book; raises `BookError`."""
    try:
        table = read_old_table(data)
    except NotALog as refused:
        return NotesLooked(asked=asked, trouble=refused.sentence)
    taken = found_fields(table) if fields is None else fields
    missing = lacking(taken)
    if missing is not None:
        return NotesLooked(asked=asked, table=table, fields=taken, trouble=missing)
    notes = read_old_notes(data, fields=taken, order=order, name=name)
    open_day = asked_days(table, taken, notes.orders) if notes.question is not None else None
    crops, media = ({name.casefold() for name in names} for names in (book.crops(), book.media()))
    return NotesLooked(
        asked=asked,
        table=table,
        fields=taken,
        notes=notes,
        trouble=notes.question,
        choices=() if open_day is None else tuple(zip(notes.orders, open_day[1], strict=True)),
        same_file=book.knows_log(notes.digest),
        there=len(book.there_already(notes)),
        new_crops=_new((tray.new.crop for tray in notes.trays), crops),
        new_media=_new((tray.new.medium for tray in notes.trays), media),
    )


def _new(names: Iterable[str], known: set[str]) -> tuple[str, ...]:
    return tuple(dict.fromkeys(name for name in names if name.casefold() not in known))


# --- words


def read_words(looked: NotesLooked) -> str:
    """How the file was read, or what stands in the way."""
    if looked.trouble is not None:
        return begun(spoken(looked.trouble))
    said = [
        translate(
            "OldNotes",
            "Each line is one tray. A column that is nothing of the list goes into the tray's note, with its "
            "heading. A tray without a day of cut counts as ended 30 days after sowing; one that was "
            "weighed, by today.",
        )
    ]
    if looked.notes is not None and Field.TRIAL not in looked.fields and looked.notes.trays[:1]:
        said += _trial_words(looked.notes.trays[0].new.trial)
    for words, names in (
        (translate("OldNotes", "Crops that the book does not know yet: {names}."), looked.new_crops),
        (translate("OldNotes", "Media that the book does not know yet: {names}."), looked.new_media),
    ):
        if names:
            said.append(words.format(names=_listed(names)))
    return "\n".join(said)


def _trial_words(trial: str | None) -> list[str]:
    """What stands in the place of a column that names the trial."""
    if trial is None:
        return []
    words = translate(
        "OldNotes",
        "No column names a trial: they are kept as the trial {name}, so that Verdict compares them, trays of "
        "one crop that were sown on one day side by side.",
    )
    return [words.format(name=trial)]


def _listed(names: Sequence[str]) -> str:
    shown = ", ".join(names[:MOST_NAMES])
    more = len(names) - MOST_NAMES
    return shown if more <= 0 else translate("OldNotes", "{names} and {n} more").format(names=shown, n=more)


def kept_words(looked: NotesLooked) -> str:
    """What Keep would do."""
    if looked.same_file:
        return translate("OldNotes", "This very file is in the book already: there is nothing to keep.")
    if looked.table is None:
        return ""
    if looked.notes is None:
        return translate("OldNotes", "Say over the columns what each of them is.")
    if looked.notes.question is not None:
        return translate("OldNotes", "Answer what is asked above, then the trays can be kept.")
    words = translate("OldNotes", "Trays that will be kept: {n}.")
    if looked.there:
        words = translate("OldNotes", "Trays that will be kept: {n}; in the book already: {there}.")
    return words.format(n=len(looked.notes.trays) - looked.there, there=looked.there)


def order_words(order: DateOrder, day: date) -> str:
    """One answer to which day is meant."""
    return f"{day_words(day, DAY_YEAR_SHORT)} ({spoken(order)})"


def field_words(field: Field | None) -> str:
    """What a column is."""
    return translate("OldNotes", "Into the note") if field is None else begun(spoken(field))


def first_words(looked: NotesLooked) -> str:
    """The first trays as they will be kept, a line each; empty as long as something is open."""
    trays = () if looked.notes is None else looked.notes.trays[:MOST_TRAYS]
    if not trays:
        return ""
    head = translate("OldNotes", "The first trays as they will be kept:")
    return "\n".join([head, *map(tray_words, trays)])


def tray_words(tray: OldTray) -> str:
    """A tray as it will be kept."""
    new = tray.new
    parts = [
        new.code,
        translate("OldNotes", "{crop} on {medium}").format(crop=new.crop, medium=new.medium),
        translate("OldNotes", "sown {day}").format(day=day_words(new.sown_at, DAY_YEAR_SHORT)),
    ]
    if tray.cut_at is not None:
        parts.append(translate("OldNotes", "cut {day}").format(day=day_words(tray.cut_at, DAY_YEAR_SHORT)))
    numbers = (
        (tray.fresh_mass_g, translate("OldNotes", "{value:.0f} g fresh")),
        (tray.height_mm, translate("OldNotes", "{value:.0f} mm high")),
        (tray.eye_score, translate("OldNotes", "{value:.0f} by eye")),
        (new.sowing_rate_g, translate("OldNotes", "{value:g} g seed")),
        (new.soak_hours, translate("OldNotes", "{value:g} h soaked")),
    )
    parts += [filled(words, value=value) for value, words in numbers if value is not None]
    named = (
        (translate("OldNotes", "trial {name}"), new.trial),
        (translate("OldNotes", "block {name}"), new.block),
        (translate("OldNotes", "shelf {name}"), new.shelf),
        (translate("OldNotes", "lot {name}"), new.seed_lot),
        (translate("OldNotes", "feed {name}"), new.feed),
    )
    parts += [words.format(name=name) for words, name in named if name]
    return " · ".join([*parts, *([new.note] if new.note else [])])
