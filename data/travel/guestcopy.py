"""Guest copy: the database of another grower's book -> a copy that may be brought up to date.

In    the folder of a book that is only read; a folder of ours for the copy
Out   the copy, opened; the other folder is as it was, to the byte and to the file
Not   the original photos, which stay where they are (`guestbook.py`), bringing it in (`merging.py`)

A book of an older program has to be brought up to date before it can be read, and that changes its file.
Where no write-ahead log lies beside it nobody has it open, and it is read as a file that does not change:
SQLite then makes no file beside it, and it may lie on a write-protected disk. Else SQLite's locks are used.
"""

import contextlib
import sqlite3
from pathlib import Path

from data.book import Book
from data.cancel import CancelToken
from data.chapters.store import FILE
from data.errors import BookDamaged, BookIsNewer, DiskFull, NotABook, damage_in, in_words

__all__ = ["open_copy"]

PAGES_BETWEEN = 1000  # 4 MB; looks at the cancel token


def open_copy(source: Path, folder: Path, cancel: CancelToken) -> Book:
    """A copy of the book in `source`, opened in `folder`, which is made. Slow, for a worker.

    Raises
    ------
    BookError
        Named by `source`, where that is no book, is damaged, or is newer than this program.
    Cancelled
        What was copied lies in `folder` still.
    """
    if not (source / FILE).is_file():
        raise NotABook(source)
    folder.mkdir(parents=True)
    try:
        with in_words(source):
            _copy(source / FILE, folder / FILE, cancel)
        return Book.open(folder)
    except (BookDamaged, NotABook) as error:
        raise (NotABook(source) if type(error) is NotABook else damage_in(source)) from error
    except BookIsNewer as error:
        raise BookIsNewer(source) from error
    except DiskFull as error:
        raise DiskFull(folder) from error


def _copy(database: Path, target: Path, cancel: CancelToken) -> None:
    logged = database.with_name(f"{FILE}-wal").exists()
    how = "mode=ro" if logged else "immutable=1"
    with (
        contextlib.closing(sqlite3.connect(f"{database.absolute().as_uri()}?{how}", uri=True)) as theirs,
        contextlib.closing(sqlite3.connect(target)) as copy,
    ):
        theirs.backup(copy, pages=PAGES_BETWEEN, progress=lambda *_: cancel.check())
