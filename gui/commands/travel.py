"""Travel commands: a book packed, unpacked, written as open files, and two books brought together.

In    the folder of a book; a pack, an export, or the folder of another book
Out   one sentence on stdout; what could not be done on stderr; the exit code
Not   the work itself (`data/travel/packing.py`, `data/export.py`, `data/travel/imported.py`,
      `data/travel/merging.py`)
"""

from collections.abc import Collection
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from data.book import Book
from data.cancel import CancelToken
from gui.commands.progress import progress
from gui.commands.saying import DONE, REFUSED, plain, refuse, say

if TYPE_CHECKING:
    from data.logs.oldnotes import OldNotes
    from data.travel.guestbook import GuestBook

__all__ = ["export_book", "keep_notes", "merge_into", "pack_book", "unpack_into"]

SPREADSHEETS = (".xlsx", ".xls", ".ods")


def pack_book(folder: Path, target: Path) -> int:
    """Write the book into one file."""
    from data.travel.packing import pack

    lacking: list[str] = []
    with Book.open(folder) as book, progress("files packed") as report:
        written = pack(book, target, CancelToken(), report, lacks=lacking.append)
    for name in lacking:
        say(f"{name}: the photo itself is missing or damaged in the book; its numbers are packed")
    print(f"{written}: the book and its photos, {written.stat().st_size / 1e6:.0f} MB")
    return DONE


def unpack_into(source: Path, folder: Path) -> int:
    """Make the book of a pack stand in a folder."""
    from data.travel.packing import unpack

    with progress("files unpacked") as report:
        unpack(source, folder, CancelToken(), report)
    print(f"{folder}: unpacked; open it with Ctrl+O in the window")
    return DONE


def export_book(folder: Path, target: Path, *, top_views: bool) -> int:
    """Write all numbers of the book as open files."""
    from data.export import export

    with Book.open(folder) as book, progress("steps of the export") as report:
        export(book, target, CancelToken(), report, top_views=top_views)
    print(f"{target}: the book in open files; README.md there says how to read them")
    return DONE


def merge_into(folder: Path, other: Path, apart: Collection[str], *, same: bool, label: str) -> int:
    """Add another grower's book, a pack or an export; names that both have are asked about first."""
    if other.is_file() and other.suffix.lower() in SPREADSHEETS:
        return refuse(f"{other} is a spreadsheet: save its table as CSV, and name that file.")
    if (whole := _whole_of(other)) is not None:
        return refuse(f"{other} is one file of {whole}: name that folder.")
    with Book.open(folder) as book, _guest(other, book.folder / "cache") as guest:
        return _merge(book, guest, set(apart), same=same, label=label or guest.name)


def _guest(other: Path, beside: Path) -> "GuestBook":
    """The other book, opened."""
    from data.travel.guestbook import GuestBook

    with progress("files of the other book read") as report:
        return GuestBook.open(other, beside, CancelToken(), report)


def keep_notes(folder: Path, source: Path, order: str | None, *, keep: bool) -> int:
    """Show how a table of old trays is read, one line a tray; with `keep` put them into the book."""
    from data.logs.oldcolumns import Field
    from data.logs.oldnotes import read_old_notes
    from data.logs.text import NotALog
    from data.logs.times import DateOrder

    try:
        wanted = None if order is None else DateOrder[order.upper()]
        notes = read_old_notes(source.read_bytes(), order=wanted, name=source.name)
    except NotALog as error:
        say(str(error))
        _say_where_it_belongs(source)
        return REFUSED
    except OSError as error:
        return refuse(f"{source} cannot be read: {error.strerror}")
    if notes.question is not None:
        choices = " or ".join(f"--dates {one.name.lower()}" for one in notes.orders)
        return refuse(f"{notes.question} Say {choices}." if choices else notes.question)
    _show_notes(notes)
    if Field.TRIAL not in notes.fields and notes.trays and (trial := notes.trays[0].new.trial):
        blocks = "blocks as written" if Field.BLOCK in notes.fields else "a block each day of sowing"
        print(plain(f"No column names a trial: they are the trial {trial}, {blocks}."))
    if not keep:
        print("nothing was kept yet: say --keep to put these trays into the book")
        return REFUSED if notes.refused else DONE
    with Book.open(folder) as book:
        known = book.knows_log(notes.digest)
        ids = () if known else book.keep_old_notes(notes, source.name)
    there = len(notes.trays) - len(ids)
    beside = f", {there} in the book already" if there else ""
    print("these notes are in the book already" if known else f"{_counted(len(ids), 'tray')} added{beside}")
    return REFUSED if notes.refused else DONE


def _whole_of(file: Path) -> Path | None:
    """The folder of the book or the export that a file is a part of."""
    from data.chapters.store import FILE
    from data.travel.imported import is_export

    if not file.is_file():
        return None
    export = file.suffix.lower() in (".csv", ".json", ".md") and is_export(file.parent)
    return file.parent if export or file.name == FILE else None


def _say_where_it_belongs(source: Path) -> None:
    """A table that holds no trays may be one of another kind, which comes in by another way."""
    from data.logs.oldcolumns import Field, fields_of
    from data.logs.sheet import LogRefused, read_log

    if (whole := _whole_of(source)) is not None:
        say(f"{source} is one file of an export: to bring that in, name its folder, {whole}.")
        return
    sheet = read_log(source.read_bytes(), source.name, today=date.today())
    if isinstance(sheet, LogRefused) or {Field.CROP, Field.MEDIUM} & {*fields_of(sheet.headings)}:
        return
    if sheet.readings or sheet.questions:
        say(
            f"{source} looks like the file of a logger or a scale. Such files come in by the window, where "
            "you see how they are read: open the book, then Book > Bring in a log..., or drop the file there."
        )


def _show_notes(notes: "OldNotes") -> None:
    for heading, field in zip(notes.headings, notes.fields, strict=True):
        print(plain(f"{heading:24} {field or 'goes into the note'}"))
    for tray in notes.trays:
        new, cut = tray.new, "" if tray.cut_at is None else f", cut {tray.cut_at.date()}"
        mass = "" if tray.fresh_mass_g is None else f", {tray.fresh_mass_g:.0f} g"
        print(plain(f"{new.code:8} {new.crop} on {new.medium}, sown {new.sown_at.date()}{cut}{mass}"))
    for refused in notes.refused:
        say(str(refused))


def _counted(number: int, what: str) -> str:
    return f"1 {what}" if number == 1 else f"{number} {what}s"


def _merge(book: Book, guest: "GuestBook", apart: set[str], *, same: bool, label: str) -> int:
    from data.travel.merging import merge
    from data.travel.samenames import Answer, same_names

    asked = same_names(book, guest.book)
    unknown = apart - {one.name for one in asked}
    for name in sorted(unknown):
        say(f"{name} stands in one of the books only, so there is nothing to keep apart")
    open_names = [one for one in asked if one.name not in apart]
    if unknown or (open_names and not same):
        for one in open_names:
            say(f"both books have the {one.kind.replace('_', ' ')} {one.name}")
        say("say --same if these mean the same in both, and --apart NAME for each that does not")
        return REFUSED
    answers = {one: Answer.APART if one.name in apart else Answer.SAME for one in asked}
    with progress("photos and tables brought in") as report:
        merged = merge(book, guest.book, answers, label, CancelToken(), report, guest.originals_in)
    trays, photos = merged.added.get("tray", 0), merged.added.get("photo", 0)
    counted = f"{_counted(trays, 'tray')}, {_counted(photos, 'photo')}"
    print(f"added: {counted}; the book as it was lies in {merged.copy}")
    for code in merged.without_tag:
        say(f"{code} came without its tag, which a growing tray here carries: give it another one")
    for name in merged.without_original:
        say(f"{name}: the photo itself is missing in the other book; its numbers came over")
    return DONE
