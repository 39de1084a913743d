"""Books that tests begin with: each kind is made once a process and copied from then on.

To make a book takes fifteen times as long as to copy it, most of it in waiting for the disk.
"""

import atexit
import shutil
from collections.abc import Callable, Hashable
from pathlib import Path
from tempfile import TemporaryDirectory

from data.book import Book

_patterns: dict[Hashable, TemporaryDirectory[str]] = {}


def an_empty_book(folder: Path) -> Book:
    """As `Book.create(folder)`."""
    return a_copy("empty", None, folder)


def a_copy(kind: Hashable, fill: Callable[[Book], object] | None, folder: Path) -> Book:
    """A book in `folder` in which `fill` has been done; `kind` says all that it depends on."""
    if kind not in _patterns:
        made = TemporaryDirectory(prefix="evenstand-pattern-")
        atexit.register(made.cleanup)
        with Book.create(Path(made.name) / "book") as book:
            if fill is not None:
                fill(book)
        _patterns[kind] = made
    shutil.copytree(Path(_patterns[kind].name) / "book", folder)
    return Book.open(folder)
