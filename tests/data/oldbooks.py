"""Old books: a small dump of each version that has left the house, made into a book again."""

import sqlite3
from pathlib import Path

from sqlite_utils import Database

from data import schema

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
