"""Sowing: a new tray -> its row, with the crop, medium, block and seed lot that it names.

In    a `NewTray`, inside one change of the book
Out   the tray's id; names that the book does not know yet are added with it
Not   the transaction and its undo (`book.py`)
"""

import sqlite3
from typing import TYPE_CHECKING, Any

from data.records import NewTray, TrayId
from data.tables.journal import Recorder
from data.tables.rows import time_text

if TYPE_CHECKING:
    from sqlite_utils import Database

__all__ = ["TagOnTray", "change_tray", "sow"]

SAME = (
    "code", "seating", "sowing_rate_g", "soak_hours", "watering", "feed", "shelf", "light", "tag_number",
    "note",
)  # fmt: skip


class TagOnTray(Exception):
    """The tag is on a tray that still grows."""


def change_tray(db: "Database", recorder: Recorder, tray_id: TrayId, new: NewTray, position: int) -> None:
    """Give a tray other conditions; raises `TagOnTray`."""
    try:
        recorder.update("tray", tray_id, _row_of(db, recorder, new, position))
    except sqlite3.IntegrityError as error:
        raise _meaning(error) from error


def sow(db: "Database", recorder: Recorder, new: NewTray, position: int) -> TrayId:
    """Add the row of a tray at its place on the shelf; raises `TagOnTray`."""
    try:
        return TrayId(recorder.insert("tray", _row_of(db, recorder, new, position)))
    except sqlite3.IntegrityError as error:
        raise _meaning(error) from error


def _meaning(error: sqlite3.IntegrityError) -> Exception:
    return TagOnTray() if "UNIQUE" in str(error) and "tag_number" in str(error) else error


def _row_of(db: "Database", recorder: Recorder, new: NewTray, position: int) -> dict[str, Any]:
    crop = _named(db, recorder, "crop", new.crop)
    trial = None if new.trial is None else _named(db, recorder, "trial", new.trial)
    block = None if new.block is None else _named(db, recorder, "block", new.block, trial=trial)
    lot = None if new.seed_lot is None else _named(db, recorder, "seed_lot", new.seed_lot, crop=crop)
    return {
        "trial": trial,
        "block": block,
        "crop": crop,
        "medium": _named(db, recorder, "medium", new.medium),
        "tray_type": _named(db, recorder, "tray_type", new.tray_type),
        "seed_lot": lot,
        "sown_at": time_text(new.sown_at),
        "blackout_from": new.blackout_from and time_text(new.blackout_from),
        "blackout_to": new.blackout_to and time_text(new.blackout_to),
        "stacked": None if new.stacked is None else int(new.stacked),
        "heat_mat": None if new.heat_mat is None else int(new.heat_mat),
        "position": position,
        **{name: getattr(new, name) for name in SAME},
    }


def _named(db: "Database", recorder: Recorder, table: str, name: str, **more: Any) -> int:
    """The id of the row with that name, which is added where it is missing; these tables are short."""
    wanted = {"name": name} | more
    for row in db.table(table).rows:
        if all(row[column] == value for column, value in wanted.items()):
            return int(row["id"])
    return recorder.insert(table, wanted)
