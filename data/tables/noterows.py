"""Note rows: questions about what a person noted, and their rows -> records.

In    rows of crops, media, tray types, readings and events
Out   their records; the named SQL that asks for them, beside `queries.py`
Not   trays, photos and scores (`rows.py`), running queries (their chapters)
"""

from collections.abc import Iterable
from dataclasses import fields
from datetime import datetime
from sqlite3 import Row
from typing import Any

from data.events import Event, EventId, EventKind
from data.growing.conditions import Crop, Medium
from data.readings import Reading, ReadingId, ReadingKind
from vision.traytype import TrayType

__all__ = [
    "CHANGES_OF_EVENTS", "CROP", "ENDS_OF_TRAY", "EVENT", "EVENTS_OF_TRAY",
    "KINDS_OF_TRAY", "LOGGED", "LOGGED_THEN", "LOG_FILE", "MEDIA_ALL", "MEDIUM", "NAMED", "READING",
    "READINGS_ALL", "READINGS_OF_SHELF", "READINGS_OF_TEST", "READINGS_OF_TRAY",
    "TRAY_TYPE", "TRAY_TYPES", "TRUSTED", "crop_of", "event_of", "events_in", "is_known", "medium_of",
    "reading_of", "readings_in", "row_of_type", "tray_type_of",
]  # fmt: skip

READING_KINDS = frozenset(str(kind) for kind in ReadingKind)
EVENT_KINDS = frozenset(str(kind) for kind in EventKind)

# --- what trays are made of

CROP = "SELECT * FROM crop WHERE name = :name"
MEDIUM = "SELECT * FROM medium WHERE name = :name"
MEDIA_ALL = "SELECT * FROM medium ORDER BY name"
TRUSTED = "SELECT * FROM medium WHERE trusted = 1 LIMIT 1"
TRAY_TYPE = "SELECT * FROM tray_type WHERE name = :name"
TRAY_TYPES = "SELECT * FROM tray_type ORDER BY id"
OTHER_TRAYS = """
    SELECT t.tag_number, t.sown_at, t.done_at, y.*
      FROM tray_type y
      JOIN tray t ON t.tray_type = y.id
     WHERE t.tag_number IS NOT NULL
     ORDER BY t.sown_at DESC, t.id DESC
"""
USUAL_TYPE = """
    SELECT y.*
      FROM tray t
      JOIN tray_type y ON y.id = t.tray_type
     WHERE t.done_at IS NULL
     GROUP BY y.id
     ORDER BY count(*) DESC, y.id
     LIMIT 1
"""
TYPE_OF_PHOTO = """
    SELECT y.*
      FROM photo p
      JOIN tray t ON t.id = p.tray
      JOIN tray_type y ON y.id = t.tray_type
     WHERE p.id = :photo
"""
TYPE_COLUMNS = (
    "name", "outer_long_mm", "outer_short_mm", "inner_long_mm", "inner_short_mm", "rim_height_mm",
)  # fmt: skip
NAMED = {"crop": CROP, "medium": MEDIUM, "tray_type": TRAY_TYPE}

# --- readings and events

READING_COLUMNS = """
    SELECT r.id, r.tray, r.shelf, r.bench_test, r.kind, r.value, r.taken_at, r.source, r.note
      FROM reading r
"""
READING = READING_COLUMNS + " WHERE r.id = :reading"
ASKED_READINGS = """
       AND (:kind IS NULL OR r.kind = :kind) AND r.taken_at >= :since AND r.taken_at <= :until
     ORDER BY r.taken_at, r.id
"""
READINGS_OF_TRAY = READING_COLUMNS + " WHERE r.tray = :tray" + ASKED_READINGS
READINGS_OF_SHELF = READING_COLUMNS + " WHERE r.shelf = :shelf AND r.tray IS NULL" + ASKED_READINGS
READINGS_OF_TEST = READING_COLUMNS + " WHERE r.bench_test = :bench_test" + ASKED_READINGS
READINGS_ALL = READING_COLUMNS + " WHERE 1 = 1" + ASKED_READINGS
LOG_FILE = "SELECT id FROM log_file WHERE digest = :digest"
LOGGED = """
    SELECT tray, shelf, kind, taken_at, log_file
      FROM reading
     WHERE log_file IS NOT NULL AND taken_at >= :begin AND taken_at <= :end
"""
LOGGED_THEN = """
    SELECT o.id
      FROM reading r
      JOIN reading o ON o.id != r.id AND o.log_file IS NOT NULL AND o.taken_at = :at AND o.kind = r.kind
                    AND o.tray IS r.tray AND o.shelf IS r.shelf
     WHERE r.id = :reading
"""
EVENT_COLUMNS = "SELECT e.id, e.tray, e.shelf, e.kind, e.at, e.note FROM event e"
EVENTS_OF_TRAY = EVENT_COLUMNS + " WHERE e.tray = :tray ORDER BY e.at, e.id"
EVENT = """
    SELECT e.id, e.tray, e.shelf, e.kind, e.at, e.note, t.code, t.ended, t.blackout_to AS dark_to
      FROM event e
      LEFT JOIN tray t ON t.id = e.tray
     WHERE e.id = :event
"""
CHANGES_OF_EVENTS = """
    SELECT images FROM change WHERE undone = 0 AND instr(images, '"event"') ORDER BY id DESC
"""
KINDS_OF_TRAY = """
    SELECT kind, 'reading' AS noted, count(*) AS rows FROM reading WHERE tray = :tray GROUP BY kind
     UNION ALL
    SELECT kind, 'event', count(*) FROM event WHERE tray = :tray GROUP BY kind
"""
ENDS_OF_TRAY = "SELECT id FROM event WHERE tray = :tray AND kind IN ('cut', 'thrown away')"

# --- out of the book


def crop_of(row: Row) -> Crop:
    """A crop with what is usual for it."""
    return Crop(**_fields_in(row, Crop))


def medium_of(row: Row) -> Medium:
    """A medium with what is usual for it."""
    return Medium(**_fields_in(row, Medium))


def tray_type_of(row: Row) -> TrayType:
    """The measures of a kind of tray; where its station's cards lie is kept elsewhere."""
    return TrayType(**{name: row[name] for name in TYPE_COLUMNS})


def row_of_type(tray_type: TrayType) -> dict[str, Any]:
    """The same as the table keeps it."""
    return {name: getattr(tray_type, name) for name in TYPE_COLUMNS}


def _fields_in(row: Row, record: type[Any]) -> dict[str, Any]:
    """The columns named as the record's fields; what is yes or no as such."""
    values = {field.name: row[field.name] for field in fields(record)}
    yes_no = {"stacked", "trusted"} & values.keys()
    return values | {name: None if values[name] is None else bool(values[name]) for name in yes_no}


def reading_of(row: Row) -> Reading:
    """A dated number."""
    return Reading(
        id=ReadingId(row["id"]),
        kind=ReadingKind(row["kind"]),
        value=row["value"],
        taken_at=datetime.fromisoformat(row["taken_at"]),
        tray_id=row["tray"],
        shelf=row["shelf"],
        bench_test=row["bench_test"],
        source=row["source"],
        note=row["note"],
    )


def readings_in(rows: Iterable[Row]) -> tuple[Reading, ...]:
    """Those of kinds that this program knows: a newer one may have written others, and they stay kept."""
    return tuple(reading_of(row) for row in rows if row["kind"] in READING_KINDS)


def events_in(rows: Iterable[Row]) -> tuple[Event, ...]:
    """The same of what was done."""
    return tuple(event_of(row) for row in rows if row["kind"] in EVENT_KINDS)


def is_known(kind: str, noted: str) -> bool:
    """Whether this program knows a kind; `noted`: "reading" or "event"."""
    return kind in (READING_KINDS if noted == "reading" else EVENT_KINDS)


def event_of(row: Row) -> Event:
    """Something done to a tray."""
    return Event(
        id=EventId(row["id"]),
        tray_id=row["tray"],
        kind=EventKind(row["kind"]),
        at=datetime.fromisoformat(row["at"]),
        note=row["note"],
        shelf=row["shelf"],
    )
