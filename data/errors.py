"""Errors: what the world does to a book, told to the grower.

In    the folder of a book; errors of SQLite and of the file system
Out   a `BookError` whose text says what is wrong, what was kept and what to do
Not   our own mistakes: a wrong query or a broken rule of the tables stays loud
"""

import errno
import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

__all__ = [
    "BookClosed",
    "BookDamaged",
    "BookError",
    "BookExists",
    "BookIsNewer",
    "BookLocked",
    "BookReadOnly",
    "BookUnreachable",
    "CannotUndo",
    "DiskFull",
    "ImpossibleFactor",
    "ImpossibleReading",
    "LevelIsFixed",
    "MarginOfPlan",
    "NoLongerThere",
    "NotABook",
    "PerhapsABook",
    "PhotoGone",
    "ReasonWanted",
    "StrangeWatering",
    "TagTaken",
    "TagsUsedUp",
    "damage_in",
    "in_words",
]


class BookError(Exception):
    """The book cannot do what was asked; nothing is half written. `str()` is for the grower."""

    says = "the book in {folder} cannot be used"

    def __init__(self, folder: Path, **more: object) -> None:
        self.folder = folder
        super().__init__(self.says.format(folder=folder, **more))

    def __reduce__(self) -> tuple[object, ...]:
        """Keep the words when the error travels between processes."""
        return (_again, (type(self), self.folder, str(self)))


def _again(kind: type[BookError], folder: Path, words: str) -> BookError:
    error = kind.__new__(kind)
    Exception.__init__(error, words)
    error.folder = folder
    return error


class NotABook(BookError):
    """The folder holds no book."""

    says = "there is no trial book in {folder}: choose the folder that holds book.sqlite, or start a new book"


class PerhapsABook(NotABook):
    """There is a file of that name which cannot be read, and no backup that would tell whose it was."""

    says = (
        "book.sqlite in {folder} is damaged, or is no trial book, and no backup stands beside it; it was "
        "left as it is: delete book.sqlite-wal and book.sqlite-shm if they are there and copy a backup of "
        "yours over it, or choose another folder"
    )


class BookExists(BookError):
    """A new book was wanted where one stands already."""

    says = "there is a trial book in {folder} already, left as it is: open it, or choose another folder"


class BookIsNewer(BookError):
    """The book was written by a newer program."""

    says = (
        "the book in {folder} was written by a newer Evenstand and was left as it is: "
        "bring this program up to date"
    )


class BookLocked(BookError):
    """Another program is writing."""

    says = (
        "the book in {folder} is being written by another window or program, and nothing was changed: "
        "wait until that is done, or close it, and try again"
    )


class BookReadOnly(BookError):
    """The folder or its file may not be written."""

    says = (
        "the book in {folder} may only be read, and nothing was changed: "
        "allow writing in that folder, or copy the whole folder to a place where you may write"
    )


class DiskFull(BookError):
    """No room is left."""

    says = (
        "the disk that holds {folder} is full; everything kept so far is safe: "
        "make room (the folder cache in it may be deleted) and try again"
    )


class BookDamaged(BookError):
    """The file is damaged."""

    says = (
        "the book in {folder} is damaged and was left as it is: close the program, delete book.sqlite-wal "
        "and book.sqlite-shm if they are there, and copy the newest file from its folder backups over "
        "book.sqlite; your photos in it are untouched"
    )


class BookUnreachable(BookError):
    """The disk, stick or network folder does not answer."""

    says = (
        "the book in {folder} cannot be reached: "
        "look whether the disk or network folder is there, then try again"
    )


class BookClosed(BookError):
    """It was closed while something still wanted to read it."""

    says = "the book in {folder} was closed meanwhile; what was kept in it is safe: open it again"


class TagTaken(BookError):
    """Two growing trays cannot carry one tag."""

    says = (
        "tag {tag} is on {code}, which still grows: "
        "take another tag, or first note on the sheet of {code} that it was cut or thrown away"
    )


class NoLongerThere(BookError, KeyError):
    """What is asked about has left the book since it was shown: taken back, deleted, scored again."""

    says = (
        "nothing was changed, since what this was about is no longer in the book in {folder}: it was taken "
        "back, deleted or scored again meanwhile, here or in another window; look again"
    )

    __str__ = Exception.__str__  # that of KeyError is for programmers


class ImpossibleReading(BookError):
    """A number that a kind of reading cannot have."""

    says = "nothing was kept, since a number cannot be right: {why}"


class PhotoGone(BookError):
    """One of several photographs that are kept together cannot be read."""

    says = (
        "the photograph {folder} cannot be read, and none of those chosen with it were kept: look whether it "
        "is still there, then choose them once more"
    )


class ImpossibleFactor(BookError):
    """A factor of a medium that cannot be."""

    says = "nothing was kept, since a number about a medium cannot be right: {why}"


class ReasonWanted(BookError):
    """A kept plan or drawing is changed only with a reason beside it."""

    says = (
        '"{what}" was kept before, and nothing was changed: say why it is changed, the reason is kept with it'
    )


class MarginOfPlan(BookError):
    """The margin of a planned trial is its plan's."""

    says = "{trial} has a plan, so its margin was not set here: change it in the plan, with a reason"


class StrangeWatering(BookError):
    """A plan of before waters in words of its own, and no tray can be noted so."""

    says = (
        '{trial} is watered by "{watering}", and a tray can only be noted as watered from the bottom, from '
        "the top or both: change the plan, and note how much and how often with each tray as water given"
    )


class LevelIsFixed(BookError):
    """A plan names another confidence than the one that verdicts have."""

    says = (
        "verdicts of this program hold with a confidence of {fixed:.0%}, and a plan with {level:.1%} was not "
        "kept: leave its level at {fixed:.2f}"
    )


class TagsUsedUp(BookError):
    """There are fewer free tags than trays that stand at the same time."""

    says = (
        "there are not enough free tags (10 to 586) for all trays that stand at the same time: note which "
        "trays were cut or thrown away, or plan fewer trays a round"
    )


class CannotUndo(BookError):
    """Later work rests on the change."""

    says = '"{change}" cannot be taken back, since photos or notes kept later rest on it'


MEANING: dict[int, type[BookError]] = {
    sqlite3.SQLITE_BUSY: BookLocked,
    sqlite3.SQLITE_LOCKED: BookLocked,
    sqlite3.SQLITE_FULL: DiskFull,
    sqlite3.SQLITE_READONLY: BookReadOnly,
    sqlite3.SQLITE_CANTOPEN: BookReadOnly,
    sqlite3.SQLITE_PERM: BookReadOnly,
    sqlite3.SQLITE_CORRUPT: BookDamaged,
    sqlite3.SQLITE_NOTADB: BookDamaged,
    sqlite3.SQLITE_IOERR: BookUnreachable,
}
NO_ROOM = {sqlite3.SQLITE_IOERR_SHMSIZE}  # a WAL book on a disk with no byte left says this, not SQLITE_FULL

FILE_MEANING: dict[int, type[BookError]] = {
    errno.ENOSPC: DiskFull,
    errno.EDQUOT: DiskFull,
    errno.EROFS: BookReadOnly,
    errno.EACCES: BookReadOnly,
    errno.EPERM: BookReadOnly,
}


def damage_in(folder: Path) -> BookError:
    """What to say of a file that cannot be read: any may be called so, only backups tell whose it was."""
    return BookDamaged(folder) if any((folder / "backups").glob("*.sqlite")) else PerhapsABook(folder)


@contextmanager
def in_words(folder: Path) -> Iterator[None]:
    """Turn the world's errors about the book in `folder` into a `BookError`; let our own mistakes through."""
    try:
        yield
    except sqlite3.Error as error:
        code = getattr(error, "sqlite_errorcode", None) or 0
        kind = DiskFull if code in NO_ROOM else MEANING.get(code & 0xFF)
        if kind is None:
            raise
        if kind is BookReadOnly and not folder.exists():  # SQLite says the same of what it may not open
            kind = BookUnreachable
        raise kind(folder) from error
    except OSError as error:
        raise FILE_MEANING.get(error.errno or 0, BookUnreachable)(folder) from error
