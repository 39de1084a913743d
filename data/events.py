"""Events: what was done to a tray, with its time.

In    a kind, a time, a note
Out   `Event` records; how a tray can end
Not   keeping them (`chapters/eventbook.py`), numbers (`readings.py`)
"""

from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum
from typing import NewType

from data.numbers import TrayId

__all__ = ["ENDS", "Event", "EventId", "EventKind"]

EventId = NewType("EventId", int)


class EventKind(StrEnum):
    """What was done."""

    SOWED = "sowed"
    UNCOVERED = "uncovered"
    WATERED = "watered"
    FED = "fed"
    TURNED = "turned"
    MOVED = "moved"
    MOLD_OUT = "mold taken out"
    THROWN_AWAY = "thrown away"
    CUT = "cut"
    SET_UP = "set up"
    CLEANED = "cleaned"
    NOTE = "note"  # words alone: what a person saw, without a number and without a deed


ENDS = frozenset({EventKind.CUT, EventKind.THROWN_AWAY})  # the tray grows no more; it stays in its trial


@dataclass(frozen=True, slots=True, kw_only=True)
class Event:
    """Something done to one tray, or to a whole shelf where `tray_id` is None."""

    id: EventId
    tray_id: TrayId | None
    kind: EventKind
    at: datetime
    note: str
    shelf: str | None = None
