"""Walk rows: questions about which trays stood on a day or carried a tag, by name; values are bound by name.

In    nothing
Out   SQL as constants; rows as `RackTray` and `WalkPhoto`
Not   running them (`chapters/reader.py`), which of several stood (`photos/succession.py`), all other
      questions (`queries.py`)
"""

import sqlite3
from datetime import datetime

from data.photos.walk import RackTray, WalkPhoto
from data.records import PhotoId, TrayId
from data.tables.rows import time_of

__all__ = [
    "PHOTOS_OF_DAY",
    "TAGGED_WITHOUT_TRAY",
    "TRAYS_GROWN_ON",
    "TRAYS_UNDER_TAG",
    "rack_tray_of",
    "walk_photo_of",
]

TRAYS_UNDER_TAG = """
    SELECT id, code, shelf, position, sown_at, done_at
      FROM tray
     WHERE tag_number = :tag AND date(sown_at) <= date(:at) AND (done_at IS NULL OR done_at >= :at)
     ORDER BY sown_at DESC
"""
TAGGED_WITHOUT_TRAY = """
    SELECT id, tag_number, taken_at
      FROM photo
     WHERE tray IS NULL AND tag_number IS NOT NULL AND left_out_at IS NULL
     ORDER BY taken_at
"""
TRAYS_GROWN_ON = """
    SELECT id, code, shelf, position, sown_at, done_at
      FROM tray
     WHERE date(sown_at) <= :day AND (done_at IS NULL OR date(done_at) >= :day)
     ORDER BY shelf, position, id
"""
PHOTOS_OF_DAY = """
    SELECT id, taken_at, tray, refusal IS NOT NULL OR left_out_at IS NOT NULL AS refused
      FROM photo
     WHERE taken_at >= :begin AND taken_at < :end AND kept
     ORDER BY taken_at, name, id
"""


def rack_tray_of(row: sqlite3.Row) -> RackTray:
    """A tray on its place of the rack."""
    return RackTray(
        id=TrayId(row["id"]),
        code=row["code"],
        shelf=row["shelf"],
        position=row["position"],
        sown_at=datetime.fromisoformat(row["sown_at"]),
        done_at=time_of(row["done_at"]),
    )


def walk_photo_of(row: sqlite3.Row) -> WalkPhoto:
    """A photo of the walk."""
    at, refused = time_of(row["taken_at"]), bool(row["refused"])
    return WalkPhoto(id=PhotoId(row["id"]), tray=row["tray"], at=at, refused=refused)
