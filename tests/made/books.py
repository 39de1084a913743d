"""Books that tests begin with: each kind is made once a process and copied from then on.

To make a book takes fifteen times as long as to copy it, most of it in waiting for the disk.
"""

import atexit
import shutil
from collections.abc import Callable, Hashable
from pathlib import Path
from tempfile import TemporaryDirectory

from data.book import Book
from data.chapters.store import FILE
from data.demo import make_demo

_patterns: dict[Hashable, Path] = {}


def an_empty_book(folder: Path) -> Book:
    """As `Book.create(folder)`."""
    return a_copy("empty", None, folder)


def a_demonstration(folder: Path, kind: Hashable = "", fill: Callable[[Book], object] | None = None) -> Book:
    """As `make_demo(folder)`, its photos still to be scored."""
    return a_copy(("demonstration", kind), fill, folder, make_demo)


def a_copy(
    kind: Hashable,
    fill: Callable[[Book], object] | None,
    folder: Path,
    make: Callable[[Path], Book] = Book.create,
) -> Book:
    """A book in `folder` in which `fill` has been done; `kind` says all that it depends on."""
    if kind not in _patterns or not _is_copied(_patterns[kind], folder):
        _patterns[kind] = _made(make, fill)
        shutil.copytree(_patterns[kind], folder)
    return Book.open(folder)


def _is_copied(pattern: Path, folder: Path) -> bool:
    """Whether all of a pattern was there to be copied: somebody may tidy up before or meanwhile."""
    try:
        shutil.copytree(pattern, folder)
        if all((folder / part).exists() for part in (FILE, "photos", "cache")):
            return True
    except (FileNotFoundError, shutil.Error):
        pass
    shutil.rmtree(folder, ignore_errors=True)
    return False


def _made(make: Callable[[Path], Book], fill: Callable[[Book], object] | None) -> Path:
    place = TemporaryDirectory(prefix="evenstand-pattern-")
    atexit.register(place.cleanup)
    with make(Path(place.name) / "book") as book:
        if fill is not None:
            fill(book)
    return Path(place.name) / "book"
