"""Tray book: trays, and the crops, media and tray types that they are made of.

In    what a grower decides
Out   the same, kept and handed out; each change can be taken back
Not   photos (`book.py`), readings and events (`readingbook.py`, `eventbook.py`), what is plausible
      (`growing/croptable.py`)
"""

import sqlite3
from collections.abc import Collection, Iterable, Sequence
from dataclasses import asdict, replace
from datetime import datetime
from typing import Any

from data import queries
from data.cancel import Progress
from data.chapters.rejudging import Rejudging
from data.chapters.sowing import TagOnTray, change_tray, sow
from data.chapters.typebook import TypeBook
from data.errors import TagTaken
from data.events import EventKind
from data.growing.conditions import Crop, Medium, as_new, from_defaults, like, next_code, sharing
from data.photos.rootday import facts_of
from data.records import NewTray, PhotoId, Tray, TrayId
from data.tables import noterows
from data.tables.journal import Recorder
from data.tables.rows import time_text, tray_of

__all__ = ["TrayBook"]

FIRST_CODE = "A1"


class TrayBook(TypeBook, Rejudging):
    """The trays of a book."""

    # --- trays

    def add_tray(self, new: NewTray) -> TrayId:
        """Add one tray; raises `TagTaken` where its tag is on a tray that still grows."""
        return self.add_trays([new])[0]

    def add_trays(self, new: Iterable[NewTray]) -> tuple[TrayId, ...]:
        """Add trays, all or none, as one step of undo."""
        trays = tuple(new)
        ids: list[TrayId] = []

        def change(recorder: Recorder) -> None:
            with self.writing() as db:
                for tray in trays:
                    try:
                        ids.append(sow(db, recorder, tray, self._position(tray)))
                    except TagOnTray as error:
                        raise self._tag_taken(tray, trays) from error

        text = f"tray {trays[0].code} added" if len(trays) == 1 else f"{len(trays)} trays added"
        self._change(text, change)
        return tuple(ids)

    def _position(self, new: NewTray) -> int:
        """Its own, or the first place after the last growing tray of the shelf."""
        if new.position is not None:
            return new.position
        last = self._row(queries.LAST_POSITION, shelf=new.shelf)
        return 1 + ((last[0] or 0) if last else 0)

    def edit_tray(self, tray_id: TrayId, **changed: Any) -> None:
        """Put other growing conditions in the place of the old ones, named as the fields of `NewTray`.

        A growing tray that is put on another shelf on a later day than that of its sowing was moved: that is
        noted with it.

        Raises
        ------
        TypeError
            For a name that is no field of `NewTray`.
        TagTaken
            Where the tag is on another tray that still grows.
        """
        tray = self.tray(tray_id)
        old = as_new(tray)
        new = replace(old, **changed)

        def change(recorder: Recorder) -> None:
            with self.writing() as db:
                try:
                    change_tray(db, recorder, tray_id, new, self._position(new))
                except TagOnTray as error:
                    raise self._tag_taken(new) from error
            if self._was_moved(tray, new):
                recorder.insert("event", _move(tray, new.shelf, self.now()))
            for photo in self._rows(queries.PHOTOS_OF_TRAY, tray=tray_id):
                taken_at = datetime.fromisoformat(photo["taken_at"])
                now, was = facts_of(new, taken_at), facts_of(old, taken_at)
                self._judge_kept(recorder, PhotoId(photo["id"]), now, was)

        self._change(f"conditions of {old.code}", change)

    def _was_moved(self, tray: Tray, new: NewTray) -> bool:
        shelves = bool(tray.shelf) and bool(new.shelf) and tray.shelf != new.shelf
        return shelves and tray.done_at is None and max(tray.sown_at, new.sown_at).date() < self.today()

    def share_conditions(
        self,
        model: NewTray,
        names: Collection[str],
        tray_ids: Iterable[TrayId],
        step: Progress | None = None,
    ) -> tuple[TrayId, ...]:
        """Give trays some conditions of another one, all as one step of undo; returns those that changed.

        Parameters
        ----------
        names : of `growing.conditions.SHARED`; nothing that says which tray it is or where it stands.
        step : told (done, total) trays; what it raises ends the change, and nothing is kept.
        """
        trays = [self.tray(tray_id) for tray_id in tray_ids]
        shared = {tray.id: (as_new(tray), sharing(as_new(tray), model, names)) for tray in trays}
        new = {tray_id: now for tray_id, (was, now) in shared.items() if was != now}

        def change(recorder: Recorder) -> None:
            with self.writing() as db:
                for done, tray in enumerate(tray for tray in trays if tray.id in new):
                    if step is not None:
                        step(done, len(new))
                    change_tray(db, recorder, tray.id, new[tray.id], tray.position)

        where = next(iter(new.values())).code if len(new) == 1 else f"{len(new)} trays"
        self._change(f"conditions of {where}", change)
        return tuple(new)

    def _tag_taken(self, tray: NewTray | Tray, new: Sequence[NewTray] = ()) -> TagTaken:
        """The error that names the tray that carries the tag: a growing one, or one that comes with it."""
        carries = {one.tag_number: one.code for one in reversed(new)} | {
            one.tag_number: one.code for one in self.trays()
        }
        return TagTaken(self.folder, tag=tray.tag_number, code=carries[tray.tag_number])

    def like_last(self, crop: str, medium: str, sown_at: datetime | None = None) -> NewTray | None:
        """A copy of the last tray of its kind, sown now and under the next free code; None where none was."""
        row = self._row(queries.LAST_OF_KIND, crop=crop, medium=medium)
        if row is None:
            return None
        last = tray_of(row)
        return like(last, sown_at or self.now().replace(microsecond=0), self.free_code(last.code))

    def tray_of_kind(self, crop: str, medium: str, sown_at: datetime | None = None) -> NewTray:
        """`like_last`, or what the grower has said of that crop and medium where none was sown yet."""
        again = self.like_last(crop, medium, sown_at)
        if again is not None:
            return again
        newest = self._row(queries.NEWEST_TRAY)
        code = FIRST_CODE if newest is None else self.free_code(newest["code"])
        return from_defaults(
            self.crop(crop) or Crop(name=crop),
            self.medium(medium) or Medium(name=medium),
            sown_at or self.now().replace(microsecond=0),
            code,
        )

    def free_code(self, after: str) -> str:
        """The first code after this one that no growing tray carries: A1 -> A2."""
        return next_code(after, {tray.code for tray in self.trays()})

    def finish_tray(self, tray_id: TrayId, at: datetime) -> None:
        """Say that a tray grows no more; its tag is free again. (How it ended: `add_event`.)"""
        values = {"done_at": time_text(at)}
        text = f"{self.tray(tray_id).code} marked as done"
        self._change(text, lambda recorder: recorder.update("tray", tray_id, values))

    def reopen_tray(self, tray_id: TrayId) -> None:
        """Say that a tray grows after all; what was noted of its end goes with it. Raises `TagTaken`."""
        tray = self.tray(tray_id)
        ends = self._rows(noterows.ENDS_OF_TRAY, tray=tray_id)

        def change(recorder: Recorder) -> None:
            for row in ends:
                recorder.delete("event", row["id"])
            recorder.update("tray", tray_id, {"done_at": None, "ended": None, "ended_why": ""})

        try:
            self._change(f"{tray.code} grows again", change)
        except sqlite3.IntegrityError as error:
            raise self._tag_taken(tray) from error

    def ended_trays(self, most: int = -1) -> tuple[Tray, ...]:
        """Trays that grow no more, last ended first; those thrown away are among them, with the reason.

        Parameters
        ----------
        most : how many at most; all where it is negative.
        """
        return tuple(tray_of(row) for row in self._rows(queries.TRAYS_ENDED, most=most))

    # --- crops and media

    def crop(self, name: str) -> Crop | None:
        """What the grower has said of a crop; None where the book has none of that name."""
        row = self._row(noterows.CROP, name=name)
        return None if row is None else noterows.crop_of(row)

    def medium(self, name: str) -> Medium | None:
        """What the grower has said of a medium; None where the book has none of that name."""
        row = self._row(noterows.MEDIUM, name=name)
        return None if row is None else noterows.medium_of(row)

    def trusted(self) -> Medium | None:
        """The medium that the others are held against, if the grower has named one."""
        row = self._row(noterows.TRUSTED)
        return None if row is None else noterows.medium_of(row)

    def set_medium(self, name: str, **said: Any) -> None:
        """Say what is usual for a medium, named as the fields of `Medium`; added where it is missing."""
        self._set_named("medium", name, asdict(replace(self.medium(name) or Medium(name=name), **said)))

    def set_trusted(self, name: str | None) -> None:
        """Say which medium the others are held against, or that there is none."""

        def change(recorder: Recorder) -> None:
            for row in self._rows(noterows.MEDIA_ALL):
                recorder.update("medium", row["id"], {"trusted": int(row["name"] == name)})

        if name is not None and self.medium(name) is None:
            raise KeyError(name)
        self._change(f"trusted medium: {name or 'none'}", change)


def _move(tray: Tray, shelf: str, at: datetime) -> dict[str, Any]:
    return {
        "tray": tray.id,
        "kind": str(EventKind.MOVED),
        "at": time_text(at.replace(microsecond=0)),
        "note": f"{tray.shelf} → {shelf}",
    }
