"""Guest book: another grower's book, opened to be looked at and brought in, whatever it comes as.

In    the folder of a book, a packed book, or the folder of an export
Out   a `GuestBook`: the book, open; what was copied or unpacked for it is gone once it is closed
Not   bringing it in (`merging.py`), what is in it (`guestlook.py`), copying a book (`guestcopy.py`)
"""

import contextlib
import shutil
import tempfile
from pathlib import Path
from typing import Self

from data.book import Book
from data.cancel import CancelToken, Progress, unwatched
from data.chapters.store import FILE
from data.errors import DiskFull, in_words
from data.travel.guestcopy import open_copy
from data.travel.imported import is_export, read_export
from data.travel.packing import unpack
from data.travelerrors import SameBook

__all__ = ["GuestBook", "comes_as_book"]

PREFIX = "guest-"
LEFTOVER_AFTER_S = 86_400.0  # nobody looks at a guest for a day: its program was killed


def comes_as_book(path: Path) -> bool:
    """Whether a folder is a book or an export, and no folder of photos."""
    return path.is_dir() and ((path / FILE).is_file() or is_export(path))


class GuestBook:
    """A book that is here for a while; close it."""

    def __init__(self, book: Book, source: Path, originals_in: Path, place: Path) -> None:
        self.book, self.source = book, source
        self.originals_in = originals_in  # the folder of its photos, for `merging.merge`
        self._place = place

    @property
    def name(self) -> str:
        """What it is called: the name of its folder or file."""
        return self.source.stem if self.source.is_file() else self.source.name

    @classmethod
    def open(
        cls,
        source: Path,
        beside: Path,
        cancel: CancelToken,
        report: Progress = unwatched,
    ) -> Self:
        """Open what `source` holds; a copy of it lies in `beside`, the cache of the book that it comes into,
        meanwhile. Slow, for a worker.

        Raises
        ------
        SameBook, NotAPack, NotAnExport, BookError
            If it holds no book that can be read; nothing is left in `beside`.
        Cancelled
            Likewise.
        """
        if source.resolve() == beside.parent.resolve():  # before its names are asked about one by one
            raise SameBook(source)
        with in_words(beside.parent):
            beside.mkdir(parents=True, exist_ok=True)
            place = Path(tempfile.mkdtemp(prefix=PREFIX, dir=beside))
            _sweep(place)
        folder = place / "book"
        try:
            if source.is_dir() and not is_export(source):
                return cls(open_copy(source, folder, cancel), source, source, place)
            bring = read_export if source.is_dir() else unpack
            return cls(Book.open(bring(source, folder, cancel, report)), source, folder, place)
        except BaseException as error:
            shutil.rmtree(place, ignore_errors=True)
            if isinstance(error, DiskFull):  # nobody knows our place on it
                raise DiskFull(beside.parent) from error
            raise

    def close(self) -> None:
        """Close the book, and let go of what was copied or unpacked for it."""
        self.book.close()
        shutil.rmtree(self._place, ignore_errors=True)

    def __enter__(self) -> Self:
        return self

    def __exit__(self, *_: object) -> None:
        self.close()


def _sweep(own: Path) -> None:
    """Take away what a killed program has left beside our own place, by the clock of the disk itself."""
    limit = own.stat().st_mtime - LEFTOVER_AFTER_S
    for place in own.parent.glob(f"{PREFIX}*"):
        with contextlib.suppress(OSError):  # another program does the same
            if place.stat().st_mtime < limit:
                shutil.rmtree(place, ignore_errors=True)
