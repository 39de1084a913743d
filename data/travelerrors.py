"""Travel errors: what goes wrong when a book is packed, exported, or comes from elsewhere.

In    the file or folder; errors of the file system
Out   a `BookError` whose text says what is wrong, what was kept and what to do
Not   what happens to a book on its own disk (`errors.py`)
"""

import errno
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from data.errors import BookError, DiskFull

__all__ = [
    "ExportWouldMix",
    "NoSuchPack",
    "NotAPack",
    "NotAnExport",
    "NotWritable",
    "PackExists",
    "SameBook",
    "writing_to",
]

NO_ROOM = {errno.ENOSPC, errno.EDQUOT}


class ExportWouldMix(BookError):
    """Files of an export would come to lie among others."""

    says = "there are files in {folder} already, left as they are: choose an empty folder for the export"


class NotAnExport(BookError):
    """The folder is no export, or somebody has changed its files so that they do not fit."""

    says = "{folder} is no export that can be brought in, and nothing of it was kept: {what}"


class NotAPack(BookError):
    """The file is no packed book, or a damaged one."""

    says = (
        "{folder} is no packed book, or it was damaged on its way: nothing was unpacked; "
        "have it packed and sent once more"
    )


class NoSuchPack(NotAPack):
    """Where the packed book should lie there is nothing."""

    says = "there is no file {folder}: look at its name; that of a packed book ends in .evenstand"


class SameBook(BookError):
    """A book would be brought into itself."""

    says = "{folder} is this very book, and nothing was changed: choose another grower's book to bring in"


class PackExists(BookError):
    """A pack would take the place of a file."""

    says = "there is a file {folder} already, left as it is: choose another name for the pack"


class NotWritable(BookError):
    """The place where a pack or an export shall go does not take it."""

    says = "nothing can be written in {folder}, and nothing half written is left there: choose another folder"


@contextmanager
def writing_to(folder: Path) -> Iterator[None]:
    """Turn the file system's errors about the place that a person chose into a `BookError`."""
    try:
        yield
    except OSError as error:
        raise (DiskFull if error.errno in NO_ROOM else NotWritable)(folder) from error
