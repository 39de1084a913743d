"""Store: the folder of a book, its connections, transactions and backups.

In    a folder
Out   a connection for each thread, `writing()`, backups; the world's errors as `BookError`
Not   one connection (`session.py`), trays and photos (`reader.py`, `book.py`), tables (`schema.py`)

Reading needs `sqlite3` alone, and so does what the first look list of a day writes, its own history;
`sqlite_utils` comes in with whatever else is written, so that a window can show that list before. One store
may be used from many threads: each has its own connection; readers never wait.
"""

import contextlib
import os
import sqlite3
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import date, datetime
from pathlib import Path
from typing import TYPE_CHECKING, Any, Self

from data import queries, schema
from data.chapters.session import Lease, Session
from data.errors import (
    BookClosed,
    BookDamaged,
    BookError,
    BookExists,
    BookIsNewer,
    BookLocked,
    BookUnreachable,
    DiskFull,
    NotABook,
    damage_in,
    in_words,
)
from data.photos.originals import FILE, clear_leftovers, part_of

if TYPE_CHECKING:
    from sqlite_utils import Database

__all__ = ["BACKUPS_KEPT", "FILE", "Store"]

WAIT_MS = 5000  # for another writer
BACKUPS_KEPT = 14


class Store:
    """One book on the disk. Made by `create` or `open`, never by its constructor."""

    def __init__(self, folder: Path, *, wait_ms: int = WAIT_MS) -> None:
        self.folder = folder
        self._wait_ms = wait_ms
        self._mine = threading.local()
        self._all: list[Session] = []
        self._free: list[Session] = []  # of threads that have ended
        self._lock = threading.Lock()
        self._closed = False

    @classmethod
    def create(cls, folder: Path) -> Self:
        """A new, empty book in `folder`, which is made where it is missing; raises `BookExists`.

        A file without a byte is no book: a program that was killed while it made one leaves that.
        """
        path = folder / FILE
        if path.exists() and path.stat().st_size > 0:
            raise BookExists(folder)
        with in_words(folder):
            for place in ("photos", "backups", "cache"):
                (folder / place).mkdir(parents=True, exist_ok=True)
            path.touch()
        store = cls(folder)
        try:
            with store._using() as session:
                session.connection.execute(queries.WRITE_PAGE)  # can be said of an empty file alone
                session.connection.execute(queries.WRITE_AHEAD)
                session.connection.execute(queries.WRITE_APPLICATION.format(number=schema.APPLICATION_ID))
            store._migrate()
        except BaseException:
            store.close()
            for rest in folder.glob(f"{FILE}*"):
                rest.unlink(missing_ok=True)
            raise
        return store

    @classmethod
    def open(cls, folder: Path, *, wait_ms: int = WAIT_MS) -> Self:
        """The book in `folder`, brought up to date; raises a `BookError` and leaves it as it was."""
        try:
            there = (folder / FILE).is_file()
        except OSError as error:  # nobody lets us look, or no disk answers
            raise BookUnreachable(folder) from error
        if not there:
            raise NotABook(folder)
        store = cls(folder, wait_ms=wait_ms)
        try:
            store._look_at_it()
        except BookDamaged as error:
            store.close()
            raise damage_in(folder) from error
        except BaseException:
            store.close()
            raise
        return store

    @classmethod
    def is_of_before(cls, folder: Path) -> bool:
        """Whether `open` brings the book up to date first, work of seconds; no where it cannot be opened."""
        store = cls(folder)
        try:
            return bool(store._lacking())
        except BookError:
            return False
        finally:
            store.close()

    def _look_at_it(self) -> None:
        """Apply the steps that the book lacks, after a backup."""
        if self._lacking():
            self.copy_to(self.folder / "backups" / f"before-{schema.STEPS[-1].__name__}.sqlite")
            self._migrate()
            self._give_back_room()

    def _lacking(self) -> set[str]:
        """Names of the steps that the book lacks; refuses what is no book or a newer one."""
        with self._using() as session:
            number = session.connection.execute(queries.READ_APPLICATION).fetchone()[0]
            if number != schema.APPLICATION_ID:
                raise NotABook(self.folder)
            applied = schema.applied_steps(session.connection)
        known = {step.__name__ for step in schema.STEPS}
        if set(applied) - known:
            raise BookIsNewer(self.folder)
        return known - set(applied)

    def _migrate(self) -> None:
        with self.writing() as db:
            schema.migrate(db)

    def _give_back_room(self) -> None:
        """Leave to the disk what a step has emptied; a book that another window reads keeps its size."""
        with self._using() as session, contextlib.suppress(sqlite3.OperationalError):
            session.connection.execute(queries.GIVE_BACK_ROOM)

    def close(self) -> None:
        """Close all threads' connections, each once its query is done; later use raises `BookClosed`."""
        with self._lock:
            self._closed = True
            sessions, self._all = self._all, []
        for session in sessions:
            session.close()

    def __enter__(self) -> Self:
        return self

    def __exit__(self, *_: object) -> None:
        self.close()

    # --- reading and writing

    @contextmanager
    def _using(self) -> Iterator[Session]:
        """This thread's session, which nobody closes meanwhile; the world's errors as `BookError`."""
        with in_words(self.folder):
            session = self._session()
            with session.in_use:
                if session.closed:
                    raise BookClosed(self.folder)
                try:
                    yield session
                except sqlite3.DatabaseError as error:
                    if session.is_past:  # half of it read before somebody wrote, half after
                        raise BookLocked(self.folder) from error
                    raise
                if session.is_past:  # the same, and SQLite has met nothing that does not fit
                    raise BookLocked(self.folder)

    def _session(self) -> Session:
        lease: Lease | None = getattr(self._mine, "lease", None)
        if lease is None or lease.session.is_past:
            lease = self._mine.lease = Lease(self._free_session(), self._free)
        return lease.session

    def _free_session(self) -> Session:
        with self._lock:
            if self._closed:
                raise BookClosed(self.folder)
            while self._free:
                if not (session := self._free.pop()).is_past:
                    return session
                if not session.connection.in_transaction:  # else whoever reads all of it is not done
                    self._all.remove(session)
                    session.close()
            session = Session(self.folder / FILE, self._wait_ms)
            self._all.append(session)
            return session

    def _rows(self, query: str, **values: Any) -> list[sqlite3.Row]:
        """All answers to a named query."""
        with self._using() as session:
            return session.connection.execute(query, values).fetchall()

    def _tuples(self, query: str, **values: Any) -> list[tuple[Any, ...]]:
        """The same without the names of columns, which is faster: for answers that come in thousands."""
        with self._using() as session:
            cursor = session.connection.cursor()
            cursor.row_factory = None
            return cursor.execute(query, values).fetchall()

    def _row(self, query: str, **values: Any) -> sqlite3.Row | None:
        """The first answer to a named query, if there is one."""
        rows = self._rows(query, **values)
        return rows[0] if rows else None

    @contextmanager
    def writing(self) -> Iterator["Database"]:
        """Everything inside is kept together, or nothing is; blocks may nest."""
        with self._block() as session:
            yield session.face

    @contextmanager
    def _block(self) -> Iterator[Session]:
        """The same for named statements, which need no `sqlite_utils`."""
        with self._using() as session:
            connection = session.connection
            if connection.in_transaction:
                with session.face.atomic():
                    yield session
                return
            connection.execute(queries.BEGIN)
            try:
                yield session
                connection.commit()
            except BaseException:
                if connection.in_transaction:
                    connection.rollback()
                raise

    @contextmanager
    def whole_tables(self) -> Iterator["Database"]:
        """One state of the book, for whoever goes through whole tables; nothing may be written inside."""
        with self._using() as session:
            connection = session.connection
            if connection.in_transaction:
                yield session.face
                return
            connection.execute(queries.BEGIN_READING)
            try:
                yield session.face
            finally:
                connection.rollback()

    def written_elsewhere(self) -> bool:
        """Whether another thread, window or program has written since this thread asked last."""
        with self._using() as session:  # another one where what was taken for unchanging has changed
            now = (session, int(session.connection.execute(queries.READ_VERSION).fetchone()[0]))
        before = getattr(self._mine, "version", None)
        self._mine.version = now
        return before is not None and before != now

    # --- settings and days

    def setting(self, name: str) -> str | None:
        """A setting of this book."""
        row = self._row(queries.SETTING, name=name)
        return None if row is None else str(row["value"])

    def set_setting(self, name: str, value: str) -> None:
        """Keep a setting of this book."""
        with self.writing() as db:
            db.table("setting").upsert({"name": name, "value": value}, pk="name")

    def today(self) -> date:
        """Today by the rack's calendar; a demonstration stands still on its own day."""
        fixed = self.setting("today")
        return date.today() if fixed is None else date.fromisoformat(fixed)

    def now(self) -> datetime:
        """The time of day, on `today()`."""
        return datetime.combine(self.today(), datetime.now().time())

    # --- backups

    def back_up(self) -> Path:
        """The backup of this day, made if it is not there yet; the newest 14 are kept. Slow: for a worker."""
        with in_words(self.folder):
            target = self.folder / "backups" / f"book-{date.today().isoformat()}.sqlite"
            if not target.exists():
                self.copy_to(target)
                clear_leftovers(self.folder, target.stat().st_mtime)
                made = sorted(target.parent.glob("book-*.sqlite"), key=lambda path: (path <= target, path))
                for path in made[:-BACKUPS_KEPT]:  # first those of days to come: some clock was wrong then
                    path.unlink(missing_ok=True)
        return target

    def copy_to(self, target: Path) -> None:
        """Copy the database through SQLite's own backup; checked before it gets its name. For a worker."""
        try:
            with in_words(self.folder):
                self._copy_to(target)
        except DiskFull as error:
            raise DiskFull(target.parent) from error

    def _copy_to(self, target: Path) -> None:
        target.parent.mkdir(parents=True, exist_ok=True)
        part = part_of(target)
        try:
            with contextlib.closing(sqlite3.connect(part)) as copy, self._using() as session:
                session.connection.backup(copy)
                if copy.execute(queries.QUICK_CHECK).fetchone()[0] != "ok":
                    raise BookDamaged(self.folder)
            os.replace(part, target)
        finally:
            for rest in part.parent.glob(f"{part.name}*"):
                rest.unlink(missing_ok=True)
