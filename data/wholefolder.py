"""Whole folder: a folder of files that is there whole, or not at all.

In    the folder that a person named: not there yet, or there already (a USB stick, the folder one stands in)
Out   a place to write in; what was written stands in the folder at the end
Not   whether that folder may be written into (who asks for it)

The place lies inside a folder that is there: the one around it may be another disk, or be closed to us. What
a program that was killed has left there goes with the next one that is made beside it.
"""

import contextlib
import os
import shutil
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from data.travelerrors import NotWritable, writing_to

__all__ = ["LEFTOVER_AFTER_S", "made_whole"]

PREFIX, MADE = ".making-", "made"
LEFTOVER_AFTER_S = 86_400.0  # nothing is written into it for a day: its program was killed


@contextmanager
def made_whole(folder: Path, last: str) -> Iterator[Path]:
    """A place for the files of `folder`, of which `last` comes there last: with it all of them are there.

    Raises
    ------
    NotWritable, DiskFull
        If the world stops us, or `folder` or a part of it is a file; nothing is left there.
    """
    there = folder.is_dir()
    if folder.exists() and not there:
        raise NotWritable(folder)
    home = folder if there else folder.parent
    with writing_to(home):
        home.mkdir(parents=True, exist_ok=True)
        place = Path(tempfile.mkdtemp(prefix=PREFIX, dir=home))
        try:
            _clear_leftovers(place)
            made = place / MADE  # the place itself lets nobody else in
            made.mkdir()
            yield made
            if there:
                _move_in(made, folder, last)
            else:
                os.replace(made, folder)
        finally:
            shutil.rmtree(place, ignore_errors=True)


def _clear_leftovers(own: Path) -> None:
    """Remove places beside our own that nobody writes into any more, by the clock of the disk itself."""
    limit = own.stat().st_mtime - LEFTOVER_AFTER_S
    for place in own.parent.glob(f"{PREFIX}*"):
        with contextlib.suppress(OSError):
            if [one.name for one in place.iterdir()] == [MADE] and _touched(place) < limit:
                gone = place.rename(place.with_name(f"{place.name}-left"))  # who wakes up writes here no more
                shutil.rmtree(gone, ignore_errors=True)


def _touched(place: Path) -> float:
    """When anything in it was written last, s since the epoch."""
    return max(path.stat().st_mtime for path in (place, *place.rglob("*")))


def _move_in(made: Path, folder: Path, last: str) -> None:
    """Move what was made beside what else lies in `folder`."""
    parts = sorted(made.iterdir(), key=lambda path: path.name == last)
    for path in parts:
        target = folder / path.name
        if target.exists() and path.is_dir() != target.is_dir():
            raise NotWritable(folder)
    for path in parts:
        target = folder / path.name
        if target.is_dir():
            shutil.copytree(path, target, dirs_exist_ok=True)
        else:
            os.replace(path, target)
