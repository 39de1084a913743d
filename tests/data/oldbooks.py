"""Old books: a small dump of each version that has left the house, made into a book again.

python -m tests.data.oldbooks      after a new step: writes the dump of the version that it makes
"""

import sqlite3
from contextlib import closing
from pathlib import Path
from tempfile import TemporaryDirectory

from sqlite_utils import Database

from data import schema
from data.book import Book

BOOKS = Path(__file__).parent / "books"  # one small dump for each version that has left the house


def counts(db: Database) -> dict[str, int]:
    return {name: db.table(name).count for name in db.table_names() if name != "_sqlite_migrations"}


def restored(dump: Path, folder: Path) -> Path:
    """The folder of a book made from a dump."""
    folder.mkdir()
    connection = sqlite3.connect(folder / "book.sqlite")
    connection.executescript(dump.read_text(encoding="utf-8"))
    connection.execute(f"PRAGMA application_id = {schema.APPLICATION_ID}")
    connection.close()
    return folder


def write_dump(version: int, into: Path = BOOKS) -> Path:
    """The dump of a version: that of the one before, brought up to date. Add rows that use what is new."""
    target = into / f"v{version}.sql"
    with TemporaryDirectory() as place:
        folder = restored(BOOKS / f"v{version - 1}.sql", Path(place) / "book")
        Book.open(folder).close()
        with closing(sqlite3.connect(folder / "book.sqlite")) as book, target.open("x") as dump:
            dump.writelines(f"{line}\n" for line in book.iterdump())
    return target


if __name__ == "__main__":
    print(write_dump(len(schema.STEPS)))
