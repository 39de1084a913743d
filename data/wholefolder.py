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
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

from data.errors import BookError
from data.travelerrors import NotWritable, writing_to

__all__ = ["LEFTOVER_AFTER_S", "made_whole"]

PREFIX, MADE = ".making-", "made"
LEFTOVER_AFTER_S = 86_400.0  # nothing is written into it for a day: its program was killed


@contextmanager
def made_whole(folder: Path, last: str, taken: Callable[[Path], BookError]) -> Iterator[Path]:
    """A place for the files of `folder`, of which `last` comes there last: with it all of them are there.

    Parameters
    ----------
    taken : what to raise where another program has put its own `last` there meanwhile; that one stays.

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
            if folder.is_dir() or not _put_there(made, folder):
                _move_in(made, folder, last, taken)
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


def _put_there(made: Path, folder: Path) -> bool:
    """Let what was made be `folder`; no where another program has made one of that name meanwhile."""
    try:
        os.replace(made, folder)
    except OSError:
        if folder.is_dir():
            return False
        raise
    return True


def _move_in(made: Path, folder: Path, last: str, taken: Callable[[Path], BookError]) -> None:
    """Move what was made beside what else lies in `folder`."""
    if (folder / last).exists():
        raise taken(folder)
    parts = sorted(made.iterdir(), key=lambda path: path.name == last)
    for path in parts:
        target = folder / path.name
        if target.exists() and path.is_dir() != target.is_dir():
            raise NotWritable(folder)
    for path in parts:
        target = folder / path.name
        if target.is_dir():
            shutil.copytree(path, target, dirs_exist_ok=True)
        elif path.name == last:
            _move_alone(path, target, taken)
        else:
            os.replace(path, target)


def _move_alone(path: Path, target: Path, taken: Callable[[Path], BookError]) -> None:
    """Move a file to where there is none: of two programs one is the first, and the other is told."""
    try:
        os.link(path, target)  # as `os.replace`, and never over another file
    except FileExistsError as error:
        raise taken(target.parent) from error
    except OSError:  # a stick whose files have one name each
        os.replace(path, target)
