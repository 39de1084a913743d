"""Day book: readings and events of the trays, as they are noted day by day.

In    what a person types, what a logger's file holds
Out   the same, kept and handed out; each change can be taken back
Not   what a reading means (`readings.py`, `water.py`), reading a file (`logs/sheet.py`)
"""

from collections.abc import Iterable, Mapping, Sequence
from datetime import datetime
from typing import Any

from data.chapters.changes import Changes
from data.errors import ImpossibleReading, NoLongerThere
from data.events import ENDS, Event, EventId, EventKind
from data.numbers import TrayId
from data.readings import BenchTestId, KeptLog, NewReading, Reading, ReadingId, ReadingKind, impossible
from data.records import Tray
from data.tables import noterows
from data.tables.journal import Recorder, Step, from_text
from data.tables.rows import name_text, time_text

__all__ = ["DayBook"]

DARK = ("blackout_from", "blackout_to")
EVER = ("", "9999")  # before and after every time, as text


class DayBook(Changes):
    """What was noted of the trays."""

    # --- readings

    def readings(
        self,
        tray_id: TrayId | None = None,
        kind: ReadingKind | None = None,
        shelf: str | None = None,
        bench_test: BenchTestId | None = None,
        *,
        since: datetime | None = None,
        until: datetime | None = None,
    ) -> tuple[Reading, ...]:
        """Readings of a tray, a shelf or a bench test, oldest first; with none named, all.

        Parameters
        ----------
        shelf : readings of the shelf as such (a logger's); those of its trays are not among them.
        since, until : both included.
        """
        values = {"kind": kind and str(kind), "since": EVER[0], "until": EVER[1]}
        values |= {name: time_text(at) for name, at in (("since", since), ("until", until)) if at is not None}
        if tray_id is not None:
            rows = self._rows(noterows.READINGS_OF_TRAY, tray=tray_id, **values)
        elif shelf is not None:
            rows = self._rows(noterows.READINGS_OF_SHELF, shelf=shelf, **values)
        elif bench_test is not None:
            rows = self._rows(noterows.READINGS_OF_TEST, bench_test=bench_test, **values)
        else:
            rows = self._rows(noterows.READINGS_ALL, **values)
        return noterows.readings_in(rows)

    def reading(self, reading_id: ReadingId) -> Reading:
        """One reading; raises `NoLongerThere` where there is none of that number."""
        row = self._row(noterows.READING, reading=reading_id)
        if row is None:
            raise NoLongerThere(self.folder)
        return noterows.reading_of(row)

    def add_readings(self, new: Sequence[NewReading]) -> tuple[ReadingId, ...]:
        """Keep readings, all or none, as one step of undo; raises `ImpossibleReading`."""
        for one in new:
            self._refuse_impossible(one.kind, one.value)
        ids: list[ReadingId] = []

        def change(recorder: Recorder) -> None:
            ids.extend(ReadingId(recorder.insert("reading", _values(one))) for one in new)

        self._change(self._text_of(new), change)
        return tuple(ids)

    def _refuse_impossible(self, kind: ReadingKind, value: float) -> None:
        why = impossible(kind, value)
        if why is not None:
            raise ImpossibleReading(self.folder, why=why)

    def _text_of(self, new: Sequence[NewReading]) -> str:
        kinds = {str(one.kind) for one in new}
        if len(kinds) != 1:
            return f"{len(new)} readings"
        trays = {one.tray_id for one in new if one.tray_id is not None}
        places = [self.tray(tray).code for tray in trays] or sorted({one.shelf or "" for one in new})
        where = places[0] if len(places) == 1 else f"{len(places)} trays"
        return f"{kinds.pop()} of {where}" if where else kinds.pop()

    def change_reading(
        self,
        reading_id: ReadingId,
        value: float | None = None,
        *,
        taken_at: datetime | None = None,
        note: str | None = None,
    ) -> None:
        """Put another number, time or note in the place of the old one; raises `ImpossibleReading`."""
        old = self.reading(reading_id)
        values: dict[str, Any] = {}
        if value is not None:
            self._refuse_impossible(old.kind, value)
            values["value"] = float(value)
        if taken_at is not None:
            values["taken_at"] = time_text(taken_at)
            if self._row(noterows.LOGGED_THEN, reading=reading_id, at=values["taken_at"]) is not None:
                values["log_file"] = None  # a file says one thing of a minute; this is the person's word
        if note is not None:
            values["note"] = note
        self._change(
            f"{old.kind} of {self._place(old.tray_id, old.shelf)} changed",
            lambda recorder: recorder.update("reading", reading_id, values),
        )

    def delete_reading(self, reading_id: ReadingId) -> None:
        """Take a reading out of the book."""
        old = self.reading(reading_id)
        self._change(
            f"{old.kind} of {self._place(old.tray_id, old.shelf)} deleted",
            lambda recorder: recorder.delete("reading", reading_id),
        )

    def _place(self, tray_id: TrayId | None, shelf: str | None) -> str:
        return self.tray(tray_id).code if tray_id is not None else shelf or "a bench test"

    # --- files of loggers

    def knows_log(self, digest: str) -> bool:
        """Whether a file with these bytes was brought in before."""
        return self._row(noterows.LOG_FILE, digest=digest) is not None

    def keep_log(
        self, digest: str, name: str, read_as: str, new: Iterable[NewReading], step: Step | None = None
    ) -> KeptLog:
        """Keep rows of a logger's or a scale's file, as one step of undo; raises `ImpossibleReading`.

        The same file twice adds nothing, unless it is of another shelf or tray the second time: one logger
        may stand for several shelves. Of files that overlap, what is known already is left as it is.

        Parameters
        ----------
        digest : SHA-256 of the file's bytes, as 64 hexadecimal digits.
        read_as : how the columns were understood, for whoever asks later.
        step : told (done, total) every now and then; what it raises ends it, and nothing is kept.
        """
        readings, name = tuple(new), name_text(name)
        for one in readings:
            self._refuse_impossible(one.kind, one.value)
        added: list[dict[str, Any]] = []

        def change(recorder: Recorder) -> None:
            log = self._log_id(digest)
            if log is None:
                at = time_text(datetime.now())
                file = {"digest": digest, "name": name, "added_at": at, "read_as": read_as}
                log = recorder.insert("log_file", file)
            added.extend(_values(one) | {"log_file": log} for one in self._new_of_log(digest, readings))
            recorder.insert_many("reading", added, step)

        known = self.knows_log(digest)
        if not known or self._new_of_log(digest, readings):
            self._change(f"readings of {name}", change)
        return KeptLog(added=len(added), known=len(readings) - len(added), same_file=known and not added)

    def known_of_log(self, digest: str, new: Sequence[NewReading]) -> int:
        """How many of a file's readings are known: from other files, or from this one for the same places."""
        return len(new) - len(self._new_of_log(digest, new))

    def _log_id(self, digest: str) -> int | None:
        row = self._row(noterows.LOG_FILE, digest=digest)
        return None if row is None else int(row["id"])

    def _new_of_log(self, digest: str, new: Sequence[NewReading]) -> list[NewReading]:
        """What no file has brought yet; of places that this one has brought, a person may have changed it."""
        if not new:
            return []
        begin = time_text(min(one.taken_at for one in new))
        end = time_text(max(one.taken_at for one in new))
        rows = list(self._rows(noterows.LOGGED, begin=begin, end=end))
        log = self._log_id(digest)
        brought = {(row["tray"], row["shelf"]) for row in rows if row["log_file"] == log}
        seen = {(row["tray"], row["shelf"], row["kind"], row["taken_at"]) for row in rows}
        found = []
        for one in new:
            key = _place_and_time(one)
            if key not in seen and key[:2] not in brought:
                seen.add(key)
                found.append(one)
        return found

    # --- events

    def events(self, tray_id: TrayId) -> tuple[Event, ...]:
        """What was done to a tray, oldest first."""
        return noterows.events_in(self._rows(noterows.EVENTS_OF_TRAY, tray=tray_id))

    def unknown_notes(self, tray_id: TrayId) -> int:
        """How many readings and events of a tray are of kinds that this program does not know."""
        rows = self._rows(noterows.KINDS_OF_TRAY, tray=tray_id)
        return sum(row["rows"] for row in rows if not noterows.is_known(row["kind"], row["noted"]))

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


def _values(new: NewReading) -> dict[str, Any]:
    return {
        "tray": new.tray_id,
        "shelf": new.shelf,
        "bench_test": new.bench_test,
        "kind": str(new.kind),
        "value": float(new.value),
        "unit": new.kind.unit,
        "taken_at": time_text(new.taken_at),
        "source": new.source,
        "note": new.note,
    }


def _place_and_time(new: NewReading) -> tuple[Any, ...]:
    return (new.tray_id, new.shelf, str(new.kind), time_text(new.taken_at))
