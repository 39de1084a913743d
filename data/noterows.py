"""Note rows: rows of what a person noted -> records.

In    rows of crops, media, tray types, readings and events, as `queries.py` asks for them
Out   their records
Not   trays, photos and scores (`rows.py`), running queries (`traybook.py`, `daybook.py`)
"""

import sqlite3
from dataclasses import fields
from datetime import datetime
from typing import Any

from data.conditions import Crop, Medium, TrayType
from data.events import Event, EventId, EventKind
from data.readings import Reading, ReadingId, ReadingKind

__all__ = ["crop_of", "event_of", "medium_of", "reading_of", "tray_type_of"]

Row = sqlite3.Row


def crop_of(row: Row) -> Crop:
    """A crop with what is usual for it."""
    return Crop(**_fields_in(row, Crop))


def medium_of(row: Row) -> Medium:
    """A medium with what is usual for it."""
    return Medium(**_fields_in(row, Medium))


def tray_type_of(row: Row) -> TrayType:
    """The measures of a kind of tray."""
    return TrayType(**_fields_in(row, TrayType))


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
