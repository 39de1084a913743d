"""Session: one connection to a book's file, and the thread that it is lent to.

In    the file of a book
Out   a `Session` that nobody closes while it is in use; a `Lease` of it for as long as a thread lives
Not   which session a thread gets, transactions, errors in words (`store.py`)
"""

import contextlib
import os
import shutil
import sqlite3
import tempfile
import threading
from pathlib import Path
from typing import TYPE_CHECKING

from data import queries

if TYPE_CHECKING:
    from sqlite_utils import Database

__all__ = ["Lease", "Session"]

UNCHANGING = "immutable=1"
CLOSE_WAIT_S = 5.0  # for a query of another thread


State = tuple[tuple[int, int] | None, ...]


def _way_in(path: Path) -> tuple[Path, str]:
    """Which file is opened, and how; a book that may only be read is looked at, and SQLite refuses writing.

    SQLite keeps files beside a book in use. Where it may not make them, and nobody has the book open, the
    book is read as a file that does not change. A log that was left there, by a program that was killed or by
    a copy of some of the files, holds the newest changes: then it is a copy that is read.
    """
    if os.access(path, os.W_OK) and os.access(path.parent, os.W_OK):
        return path, "mode=rw"
    log = _beside(path, "wal")
    if log.exists() and _beside(path, "shm").exists():
        return path, "mode=ro"
    if log.exists() and log.stat().st_size:
        return _copied(path), UNCHANGING
    return path, UNCHANGING


def _beside(path: Path, what: str) -> Path:
    return path.with_name(f"{path.name}-{what}")


def _state(path: Path) -> State:
    """By what it is seen that another computer writes into a book that this one may only read."""
    return tuple(_touched(one) for one in (path, _beside(path, "wal")))


def _touched(path: Path) -> tuple[int, int] | None:
    try:
        stat = path.stat()
    except FileNotFoundError:
        return None
    return stat.st_mtime_ns, stat.st_size


_copies: dict[tuple[Path, State], tempfile.TemporaryDirectory[str]] = {}
_copying = threading.Lock()


def _copied(path: Path) -> Path:
    """The book with its log written into it, in a place of our own; one copy for all, until we end."""
    with _copying:
        kept = _copies.get((path, _state(path)))
        if kept is None:
            kept, state = tempfile.TemporaryDirectory(prefix="evenstand-"), _state(path)
            for one in (path, _beside(path, "wal")):
                shutil.copyfile(one, Path(kept.name) / one.name)
            with contextlib.closing(sqlite3.connect(Path(kept.name) / path.name)) as own:
                own.execute(queries.READ_APPLICATION).fetchone()  # who closes it last writes the log into it
            _copies[path, state] = kept
        return Path(kept.name) / path.name


class Session:
    """A connection, and its `sqlite_utils` face once something is written."""

    def __init__(self, path: Path, wait_ms: int) -> None:
        opened, how = _way_in(path)
        self._path = path
        self._taken_for = _state(path) if how == UNCHANGING else None
        # check_same_thread: only so that `close` may close what other threads have opened
        self.connection = sqlite3.connect(
            f"{opened.absolute().as_uri()}?{how}",
            uri=True,
            isolation_level=None,
            check_same_thread=False,
        )
        self.connection.row_factory = sqlite3.Row
        # closing a connection under a running query crashes the process (seen)
        self.in_use = threading.RLock()
        self.closed = False
        for statement in queries.ON_CONNECTING:
            self.connection.execute(statement.format(wait_ms=wait_ms))
        self._face: Database | None = None

    @property
    def is_past(self) -> bool:
        """Whether a file that was taken for one that does not change has changed: what it says is no use."""
        return self._taken_for is not None and self._taken_for != _state(self._path)

    @property
    def face(self) -> "Database":
        """The connection as `sqlite_utils` sees it."""
        if self._face is None:
            from sqlite_utils import Database

            self._face = Database(self.connection)
        return self._face

    def close(self) -> None:
        """Close once nothing runs on it; after `CLOSE_WAIT_S` it is left to the thread that still uses it."""
        if self.in_use.acquire(timeout=CLOSE_WAIT_S):
            self.closed = True
            self.connection.close()
            self.in_use.release()


class Lease:
    """A session for as long as one thread lives; then the next thread may have it."""

    def __init__(self, session: Session, free: list[Session]) -> None:
        self.session, self._free = session, free

    def __del__(self) -> None:
        # Qt's pool makes a new Python thread of each job: a connection for each would never be closed
        self._free.append(self.session)
