"""Event book: what was done to the trays, and when.

In    an event of some trays: watered, uncovered, cut, thrown away, a note
Out   the same, kept and handed out; each change can be taken back, and the end or the blackout of a tray
      follows the event that tells of it
Not   dated numbers (`readingbook.py`), which kinds there are (`events.py`)
"""

from collections.abc import Mapping, Sequence
from datetime import datetime
from typing import Any

from data.chapters.changes import Changes
from data.errors import NoLongerThere
from data.events import ENDS, Event, EventId, EventKind
from data.numbers import TrayId
from data.records import Tray
from data.tables import noterows
from data.tables.journal import Recorder, from_text
from data.tables.rows import time_text

__all__ = ["EventBook"]

DARK = ("blackout_from", "blackout_to")


class EventBook(Changes):
    """What was done."""

    def events(self, tray_id: TrayId) -> tuple[Event, ...]:
        """What was done to a tray, oldest first."""
        return noterows.events_in(self._rows(noterows.EVENTS_OF_TRAY, tray=tray_id))

    def add_event(
        self,
        tray_ids: Sequence[TrayId],
        kind: EventKind,
        at: datetime,
        note: str = "",
    ) -> tuple[EventId, ...]:
        """Note what was done to some trays as one step of undo.

        A tray that is cut or thrown away grows no more: its tag is free again, `note` is kept as the reason,
        and it stays in its trial with all that is known of it. Uncovering ends the blackout of a tray.
        """
        trays = [self.tray(tray) for tray in tray_ids]
        ids: list[EventId] = []

        def change(recorder: Recorder) -> None:
            row = {"kind": str(kind), "at": time_text(at), "note": note}
            ids.extend(EventId(recorder.insert("event", row | {"tray": tray.id})) for tray in trays)
            for tray in trays if kind in ENDS else ():
                done_at = time_text(at if tray.done_at is None else tray.done_at)
                recorder.update("tray", tray.id, {"done_at": done_at, "ended": str(kind), "ended_why": note})
            for tray in trays if kind is EventKind.UNCOVERED else ():
                recorder.update("tray", tray.id, _uncovered(tray, at))

        where = trays[0].code if len(trays) == 1 else f"{len(trays)} trays"
        self._change(f"{kind}: {where}", change)
        return tuple(ids)

    def change_event(self, event_id: EventId, *, at: datetime | None = None, note: str | None = None) -> None:
        """Put another time or note in the place of the old one; the end of a tray moves with it."""
        row = self._event_row(event_id)
        values = {} if at is None else {"at": time_text(at)}
        values |= {} if note is None else {"note": note}

        def change(recorder: Recorder) -> None:
            recorder.update("event", event_id, values)
            if row["tray"] is not None and row["kind"] == row["ended"]:
                end = {"at": "done_at", "note": "ended_why"}
                recorder.update("tray", row["tray"], {end[name]: value for name, value in values.items()})
            if at is not None and row["kind"] == EventKind.UNCOVERED and row["dark_to"] == row["at"]:
                recorder.update("tray", row["tray"], _uncovered(self.tray(row["tray"]), at))

        self._change(f"{row['kind']} of {row['code'] or row['shelf']} changed", change)

    def delete_event(self, event_id: EventId) -> None:
        """Take an event out of the book; one that ended its tray: `reopen_tray`.

        With *uncovered* the blackout is again what it was before that was noted.
        """
        row = self._event_row(event_id)

        def change(recorder: Recorder) -> None:
            recorder.delete("event", event_id)
            if row["kind"] == EventKind.UNCOVERED and row["dark_to"] == row["at"]:
                recorder.update("tray", row["tray"], self._dark_before(event_id, row["tray"]))

        self._change(f"{row['kind']} of {row['code'] or row['shelf']} deleted", change)

    def _dark_before(self, event_id: EventId, tray_id: TrayId) -> dict[str, Any]:
        """The blackout of a tray as it was before an event was noted; nothing where nobody knows any more.

        Where that rests on another note that is deleted, too, as it was before that one.
        """
        found: dict[str, Any] | None = None
        for row in self._rows(noterows.CHANGES_OF_EVENTS):
            images = from_text(row["images"])
            told = [one for one in images if _tells_of(one, tray_id)]
            moved = next((one for one in images if _is(one, "tray", tray_id)), None)
            if found is None:
                if any(one["id"] == event_id and one["before"] is None for one in told):
                    found = {} if moved is None else _dark_of(moved["before"])
            elif told and moved and _dark_of(moved["after"]).get("blackout_to") == found.get("blackout_to"):
                if any(self._row(noterows.EVENT, event=one["id"]) is not None for one in told):
                    break
                found |= _dark_of(moved["before"])
        return found or {}

    def _event_row(self, event_id: EventId) -> Any:
        row = self._row(noterows.EVENT, event=event_id)
        if row is None:
            raise NoLongerThere(self.folder)
        return row


def _is(image: Mapping[str, Any], table: str, row_id: int) -> bool:
    return (image["table"], image.get("id")) == (table, row_id)


def _tells_of(image: Mapping[str, Any], tray_id: TrayId) -> bool:
    """Whether an event of a tray was noted or changed."""
    after = image.get("after") if image["table"] == "event" else None
    return after is not None and after.get("tray", tray_id) == tray_id


def _dark_of(values: Mapping[str, Any] | None) -> dict[str, Any]:
    return {name: values[name] for name in DARK if name in values} if values else {}


def _uncovered(tray: Tray, at: datetime) -> dict[str, Any]:
    """The blackout of a tray that was uncovered then; nothing where that was before it was sown."""
    if at < tray.sown_at:
        return {}
    begin = tray.blackout_from if tray.blackout_from is not None else tray.sown_at
    return {"blackout_from": time_text(min(begin, at)), "blackout_to": time_text(at)}
