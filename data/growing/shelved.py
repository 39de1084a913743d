"""Shelved: since when a tray stands on the shelf on which it stands.

In    a tray and what was done to it
Out   the time of sowing, or of its last move
Not   noting a move (`chapters/traybook.py`, where its shelf is changed; a person, in the notes)

Loggers hang at shelves. What one told before a tray came to its shelf is the air of others, and where the
tray stood before is not known well enough to be looked up.
"""

from collections.abc import Iterable
from datetime import datetime

from data.events import Event, EventKind
from data.records import Tray

__all__ = ["stands_since"]


def stands_since(tray: Tray, events: Iterable[Event]) -> datetime:
    """From when on the log of its shelf is that of the tray."""
    moves = (one.at for one in events if one.kind is EventKind.MOVED)
    return max((at for at in moves if at >= tray.sown_at), default=tray.sown_at)
