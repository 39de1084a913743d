"""Merging: the book of another grower -> into this one; nothing here is overwritten.

In    two books; for each name that stands in both, whether it means the same
Out   the other's trays, photos, scores and notes added to this book; what was added, what was known
Not   which rows are new (`newrows.py`), which names to ask about (`samenames.py`), opening the other book
      (`guestbook.py`); it is only read

Merging the same book twice adds nothing the second time. Originals are copied first, then all rows are kept
in one transaction and as one step of undo, after a copy of the book as it was.
"""

from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import contextmanager, suppress
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING

from data.book import Book
from data.cancel import CancelToken, Progress, unwatched
from data.errors import BookUnreachable, in_words
from data.photos.originals import Altered, Gone, copy_original, original_path
from data.tables.rows import name_text
from data.travel.knownrows import Row
from data.travel.newrows import STEPS, NewRows
from data.travel.samenames import Answer, SameName, same_names
from data.travelerrors import SameBook

if TYPE_CHECKING:
    from sqlite_utils import Database

__all__ = ["Merged", "merge"]

MERGES_KEPT = 5  # copies of the book as it was before one; each is as large as the book


@dataclass(frozen=True, slots=True, kw_only=True)
class Merged:
    """What became of the other book's rows, by table."""

    added: Mapping[str, int]
    known: Mapping[str, int]
    without_tag: tuple[str, ...]  # trays whose tag is on a growing tray here; they came without it
    without_original: tuple[str, ...]  # photos whose file is missing there
    copy: Path  # this book as it was before


def merge(
    book: Book,
    other: Book,
    answers: Mapping[SameName, Answer],
    label: str,
    cancel: CancelToken,
    report: Progress = unwatched,
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
    originals_in, label = originals_in or other.folder, name_text(label)
    _check(book, other, answers, originals_in)
    with _as_it_was(book) as copy, in_words(book.folder), other.whole_tables() as theirs:
        photos = _kept_photos(theirs)
        whole = len(photos) + STEPS
        lacking = _copy_originals(book, originals_in, photos, cancel, lambda done: report(done, whole))
        with book.writing() as ours:
            rows = NewRows(
                ours, theirs, answers, label, cancel, lambda done: report(len(photos) + done, whole)
            )
            book.in_one_step(f"book {label} brought in", rows.take_all)
    return Merged(
        added=rows.added,
        known=rows.known,
        without_tag=tuple(rows.without_tag),
        without_original=lacking,
        copy=copy,
    )


def _check(book: Book, other: Book, answers: Mapping[SameName, Answer], originals_in: Path) -> None:
    """Two books, and an answer to every question."""
    if originals_in.resolve() == book.folder.resolve():
        raise SameBook(book.folder)
    unanswered = [same.name for same in same_names(book, other) if same not in answers]
    if unanswered:
        raise KeyError(unanswered[0])


@contextmanager
def _as_it_was(book: Book) -> Iterator[Path]:
    """A copy of the book as it was before, and the last few; it goes where nothing came of the merging."""
    copy = book.folder / "backups" / f"before-merging-{datetime.now():%Y-%m-%d-%H%M%S}.sqlite"
    book.copy_to(copy)
    try:
        yield copy
    except BaseException:
        copy.unlink(missing_ok=True)
        raise
    others = sorted(set(copy.parent.glob("before-merging-*.sqlite")) - {copy})
    for old in others[: 1 - MERGES_KEPT]:
        with suppress(OSError):  # the book has come in, whether or not an old copy goes
            old.unlink()


def _kept_photos(theirs: "Database") -> list[Row]:
    return [row for row in theirs.table("photo").rows if row["kept"]] + list(theirs.table("heap_photo").rows)


def _copy_originals(
    book: Book,
    originals_in: Path,
    photos: Sequence[Row],
    cancel: CancelToken,
    report: Callable[[int], None],
) -> tuple[str, ...]:
    """Copy the originals that this book lacks; returns the names of photos whose file is not whole there."""
    lacking: list[str] = []
    for done, row in enumerate(photos, start=1):
        cancel.check()
        source = original_path(originals_in, row["digest"], row["suffix"])
        target = original_path(book.folder, row["digest"], row["suffix"])
        if not _copied(source, target, row["digest"], originals_in):
            lacking.append(str(row["name"]))
        report(done)
    return tuple(lacking)


def _copied(source: Path, target: Path, digest: str, originals_in: Path) -> bool:
    """Whether the original lies in this book then; not where it is missing there, or is another file now."""
    if target.exists():
        return True
    if not source.is_file():
        return False
    try:
        copy_original(source, target, digest)
    except Altered:
        return False
    except Gone as error:  # their disk, not ours
        raise BookUnreachable(originals_in) from error
    return True
