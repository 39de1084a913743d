"""Merging: the book of another grower -> into this one; nothing here is overwritten.

In    two books; for each name that stands in both, whether it means the same
Out   the other's trays, photos, scores and notes added to this book; what was added, what was known
Not   packing (`packing.py`), opening the other book (`guestbook.py`); it is only read

Rows are known again by what makes them one thing in the world: a photo by its bytes, a tray by code, crop,
medium and time of sowing, a reading by tray, kind and time. What is known stays as it is here, so merging the
same book twice adds nothing the second time. Originals are copied first, then all rows are kept in one
transaction and as one step of undo, after a copy of the book as it was.
"""

from collections import Counter
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum
from pathlib import Path
from typing import TYPE_CHECKING, Any

from data.book import Book
from data.cancel import CancelToken
from data.errors import BookExists, in_words
from data.photos.originals import copy_original, original_path
from data.tables.journal import Recorder

if TYPE_CHECKING:
    from sqlite_utils import Database

__all__ = ["Answer", "Merged", "SameName", "merge", "same_names"]

Row = dict[str, Any]
Report = Callable[[int, int], None]  # photos and tables done, all of them
ROWS_BETWEEN = 500  # looks at the cancel token

# What makes a row one thing in the world; tables in an order in which what is referred to comes first.
KEYS: Mapping[str, tuple[str, ...]] = {
    "medium": ("name",),
    "crop": ("name",),
    "tray_type": ("name",),
    "seed_lot": ("crop", "name"),
    "trial": ("name",),
    "plan": ("trial", "kept_at"),
    "draw": ("plan", "drawn_at"),
    "block": ("trial", "name"),
    "tray": ("code", "crop", "medium", "sown_at"),
    "photo": ("digest",),
    "score": ("photo", "method"),
    "suspect": ("score", "x_mm", "y_mm", "area_cm2"),
    "correction": ("photo", "kind", "made_at"),
    "old_score": ("score", "replaced_at"),
    "log_file": ("digest",),
    "bench_test": ("kind", "medium", "place", "begun_at"),
    "heap_photo": ("bench_test", "digest"),
    "reading": ("tray", "shelf", "bench_test", "kind", "taken_at", "value"),
    "event": ("tray", "shelf", "kind", "at", "note"),
    "eye_round": ("rater", "seed", "begun_at"),
    "eye_score": ("tray", "rater", "given_at"),
    "look_answer": ("tray", "what", "answered_on"),
    "look_entry": ("tray", "what", "since"),
    "material_factor": ("medium", "name"),
}
# What belongs to a photo as it was scored: where the photo is known here, so is its score.
OF_A_PHOTO = {"score": "photo", "correction": "photo", "suspect": "score", "old_score": "score"}
ASKED = ("crop", "medium", "tray_type", "trial")


class Answer(StrEnum):
    """What a name that stands in both books means."""

    SAME = "the same"
    APART = "another"


@dataclass(frozen=True, slots=True, kw_only=True)
class SameName:
    """A name that stands in both books."""

    kind: str  # "crop", "medium", "tray_type", "trial" or "shelf"
    name: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Merged:
    """What became of the other book's rows, by table."""

    added: Mapping[str, int]
    known: Mapping[str, int]
    without_tag: tuple[str, ...]  # trays whose tag is on a growing tray here; they came without it
    without_original: tuple[str, ...]  # photos whose file is missing there
    copy: Path  # this book as it was before


def same_names(book: Book, other: Book) -> tuple[SameName, ...]:
    """The names to ask about: crops, media, tray types, trials and shelves that both books have."""
    with book.whole_tables() as ours, other.whole_tables() as theirs:
        found = [
            SameName(kind=table, name=name)
            for table in ASKED
            for name in sorted(_names(ours, table, "name") & _names(theirs, table, "name"))
        ]
        shelves = sorted(_names(ours, "tray", "shelf") & _names(theirs, "tray", "shelf"))
    return (*found, *(SameName(kind="shelf", name=shelf) for shelf in shelves if shelf))


def _names(db: "Database", table: str, column: str) -> set[str]:
    return {row[column] for row in db.table(table).rows}


def merge(
    book: Book,
    other: Book,
    answers: Mapping[SameName, Answer],
    label: str,
    cancel: CancelToken,
    report: Report = lambda _done, _total: None,
    originals_in: Path | None = None,
) -> Merged:
    """Add what `other` holds to `book`; slow, for a worker.

    Parameters
    ----------
    answers : one for each of `same_names(book, other)`.
    label : marks names of the other book that mean something else here: "coir (label)".
    originals_in : folder of the other's photos, where `other` is a copy without them.

    Raises
    ------
    KeyError
        Where an answer is missing.
    Cancelled
        Nothing was added; originals that were copied by then wait for the next time.
    BookError
        If the world stops us, or both are one book; the book is as it was.
    """
    originals_in = originals_in or other.folder
    if originals_in.resolve() == book.folder.resolve():
        raise BookExists(book.folder)
    unanswered = [same.name for same in same_names(book, other) if same not in answers]
    if unanswered:
        raise KeyError(unanswered[0])
    copy = book.folder / "backups" / f"before-merging-{datetime.now():%Y-%m-%d-%H%M%S}.sqlite"
    book.copy_to(copy)
    try:
        with in_words(book.folder), other.whole_tables() as theirs:
            photos = _kept_photos(theirs)
            whole = len(photos) + len(KEYS)
            lacking = _copy_originals(book, originals_in, photos, cancel, lambda done: report(done, whole))
            with book.writing() as ours:
                merging = _Merging(
                    ours, theirs, answers, label, cancel, lambda done: report(len(photos) + done, whole)
                )
                book.in_one_step(f"book {label} brought in", merging.take_all)
    except BaseException:
        copy.unlink(missing_ok=True)  # of nothing
        raise
    return Merged(
        added=merging.added,
        known=merging.known,
        without_tag=tuple(merging.without_tag),
        without_original=lacking,
        copy=copy,
    )


def _kept_photos(theirs: "Database") -> list[Row]:
    return [row for row in theirs.table("photo").rows if row["kept"]] + list(theirs.table("heap_photo").rows)


def _copy_originals(
    book: Book,
    originals_in: Path,
    photos: Sequence[Row],
    cancel: CancelToken,
    report: Callable[[int], None],
) -> tuple[str, ...]:
    """Copy the originals that this book lacks; returns the names of photos whose file is not there."""
    lacking: list[str] = []
    for done, row in enumerate(photos, start=1):
        cancel.check()
        source = original_path(originals_in, row["digest"], row["suffix"])
        target = original_path(book.folder, row["digest"], row["suffix"])
        if source.is_file():
            copy_original(source, target, row["digest"])
        elif not target.exists():
            lacking.append(str(row["name"]))
        report(done)
    return tuple(lacking)


class _Merging:
    """One merging on its way: their ids -> ours, table by table."""

    def __init__(
        self,
        ours: "Database",
        theirs: "Database",
        answers: Mapping[SameName, Answer],
        label: str,
        cancel: CancelToken,
        report: Callable[[int], None],  # tables done
    ) -> None:
        self._cancel, self._report = cancel, report
        self._ours, self._theirs, self._answers, self._label = ours, theirs, answers, label
        self._ids: dict[str, dict[int, int]] = {}
        self._fresh: dict[str, set[int]] = {}  # their ids of rows that were added
        self._tags = {
            row["tag_number"]
            for row in ours.table("tray").rows
            if row["done_at"] is None and row["tag_number"]
        }
        self.added: Counter[str] = Counter()
        self.known: Counter[str] = Counter()
        self.without_tag: list[str] = []

    def take_all(self, recorder: Recorder) -> None:
        """Add what is not known here, table by table."""
        for done, table in enumerate(KEYS, start=1):
            self._cancel.check()
            self._take(recorder, table)
            self._report(done)

    def _take(self, recorder: Recorder, table: str) -> None:
        refers = {str(key.column): key.other_table for key in self._theirs.table(table).foreign_keys}
        here = {self._key(table, row): int(row["id"]) for row in self._ours.table(table).rows}
        last_id = max(here.values(), default=0)
        ids: dict[int, int] = {}
        added: dict[int, Row] = {}
        for number, row in enumerate(self._theirs.table(table).rows):
            if number % ROWS_BETWEEN == 0:
                self._cancel.check()
            wanted = self._translated(table, row, refers)
            key = self._key(table, wanted)
            if key in here:
                ids[row["id"]] = here[key]
                self.known[table] += 1
            elif self._hangs_on_known(table, row):
                self.known[table] += 1
            else:
                last_id += 1
                ids[row["id"]] = here[key] = last_id
                added[row["id"]] = self._settled(table, wanted) | {"id": last_id}
        recorder.insert_block(table, list(added.values()))
        self._ids[table], self._fresh[table] = ids, set(added)
        self.added[table] += len(added)

    def _key(self, table: str, row: Row) -> tuple[Any, ...]:
        return tuple(row[column] for column in KEYS[table])

    def _hangs_on_known(self, table: str, row: Row) -> bool:
        parent = OF_A_PHOTO.get(table)
        return parent is not None and row[parent] not in self._fresh[parent]

    def _translated(self, table: str, row: Row, refers: Mapping[str, str]) -> Row:
        """The row with our ids, and with names that say whose they are where they mean something else."""
        wanted = dict(row)
        for column, other in refers.items():
            if wanted[column] is not None:
                wanted[column] = self._ids[other].get(wanted[column])
        if table in ASKED:
            wanted["name"] = self._name(table, wanted["name"])
        return wanted

    def _name(self, kind: str, name: str) -> str:
        apart = self._answers.get(SameName(kind=kind, name=name)) is Answer.APART
        return f"{name} ({self._label})" if apart else name

    def _settled(self, table: str, row: Row) -> Row:
        """A tray finds its shelf, and leaves its tag to a growing tray here that carries it already."""
        if table != "tray":
            return row
        row["shelf"] = self._name("shelf", row["shelf"])
        if row["done_at"] is None and row["tag_number"] is not None:
            if row["tag_number"] in self._tags:
                self.without_tag.append(str(row["code"]))
                row["tag_number"] = None
            else:
                self._tags.add(row["tag_number"])
        return row
