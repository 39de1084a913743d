"""Schema: the tables of the book, and how an older book comes to them.

In    a `sqlite_utils.Database`
Out   the newest tables; or the names of steps that this program does not know (a newer book)
Not   the steps themselves (`tables/steps.py`), opening, locking, errors in words (`chapters/store.py`)

`sqlite_utils` comes in late: the first look list is read without it.
"""

import sqlite3
from collections.abc import Callable
from typing import TYPE_CHECKING

from data.tables.steps import STEPS

if TYPE_CHECKING:
    from sqlite_utils import Database

__all__ = ["APPLICATION_ID", "STEPS", "TABLES", "applied_steps", "migrate"]

APPLICATION_ID = 0x45565354  # "EVST"
SET = "book"

TABLES = frozenset(
    {
        "medium", "crop", "tray_type", "seed_lot", "trial", "block", "tray", "photo", "score", "suspect",
        "correction", "old_score", "reading", "log_file", "bench_test", "heap_photo", "event", "eye_score",
        "eye_round", "plan", "draw", "look_answer", "look_entry", "material_factor", "setting", "change",
    }
)  # fmt: skip


def applied_steps(connection: sqlite3.Connection) -> tuple[str, ...]:
    """Names of the steps that a book has behind it, oldest first; read without `sqlite_utils`."""
    known = connection.execute("SELECT 1 FROM sqlite_master WHERE name = '_sqlite_migrations'").fetchone()
    if known is None:
        return ()
    rows = connection.execute(
        "SELECT name FROM _sqlite_migrations WHERE migration_set = ? ORDER BY id", (SET,)
    )
    return tuple(row[0] for row in rows)


def migrate(db: "Database", steps: tuple[Callable[["Database"], None], ...] = STEPS) -> None:
    """Bring the tables up to date; each step is kept with its own note or not at all."""
    from sqlite_utils import Migrations

    migrations = Migrations(SET)
    for step in steps:
        migrations(name=step.__name__)(step)
    migrations.apply(db)
