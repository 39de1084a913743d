"""Reading book: the dated numbers of trays, shelves and bench tests.

In    what a person types, what a logger's file holds
Out   the same, kept and handed out; each change can be taken back
Not   what was done to a tray (`eventbook.py`), what a reading means (`readings.py`, `water.py`), reading a
      file (`logs/sheet.py`)
"""

from collections.abc import Iterable, Sequence
from datetime import datetime
from typing import Any

from data.cancel import Progress
from data.chapters.changes import Changes
from data.errors import ImpossibleReading, NoLongerThere
from data.numbers import TrayId
from data.readings import BenchTestId, KeptLog, NewReading, Reading, ReadingId, ReadingKind, impossible
from data.tables import noterows
from data.tables.journal import Recorder
from data.tables.rows import name_text, time_text

__all__ = ["ReadingBook"]

EVER = ("", "9999")  # before and after every time, as text


class ReadingBook(Changes):
    """What was measured."""

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

    def unknown_notes(self, tray_id: TrayId) -> int:
        """How many readings and events of a tray are of kinds that this program does not know."""
        rows = self._rows(noterows.KINDS_OF_TRAY, tray=tray_id)
        return sum(row["rows"] for row in rows if not noterows.is_known(row["kind"], row["noted"]))

    # --- files of loggers

    def knows_log(self, digest: str) -> bool:
        """Whether a file with these bytes was brought in before."""
        return self._row(noterows.LOG_FILE, digest=digest) is not None

    def keep_log(
        self, digest: str, name: str, read_as: str, new: Iterable[NewReading], step: Progress | None = None
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
