"""Changes: every decision of a person, with the way back.

In    a short text and a function that makes the change through a `Recorder`
Out   the change, kept in one transaction with its images; `undo` and `redo`, today and tomorrow
Not   what is changed (`book.py` and its neighbours), the images (`tables/journal.py`)
"""

import sqlite3
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import TYPE_CHECKING

from data import queries
from data.cancel import Progress
from data.chapters.reader import Reader
from data.errors import CannotUndo, NoLongerThere
from data.records import Change
from data.tables import correctionrows, lookrows
from data.tables.journal import (
    Recorder,
    apply_images,
    as_text,
    brought_rows,
    can_be_redone,
    from_text,
    names_tables_of,
)
from data.tables.rows import time_text

if TYPE_CHECKING:
    from sqlite_utils import Database

__all__ = ["Changes"]

SAME_SETTING = timedelta(seconds=5)


@dataclass(slots=True)
class _Open:
    """A step of several changes that is being made."""

    recorder: Recorder
    text: str | None = None  # of the first that changed something


class Changes(Reader):
    """A book whose changes can be taken back."""

    _open: _Open | None = None  # read and set inside `writing` only, so by one thread at a time

    def _change(self, text: str, change: Callable[[Recorder], None]) -> None:
        """Do what a person wants, in one transaction with the note how to take it back.

        Raises
        ------
        NoLongerThere
            If a row that it rests on has gone since the person saw it; nothing is changed then.
        """
        from sqlite_utils.db import NotFoundError

        with self.together():
            assert self._open is not None
            try:
                change(self._open.recorder)
            except NotFoundError as error:
                raise NoLongerThere(self.folder) from error
            except sqlite3.IntegrityError as error:
                if error.sqlite_errorcode == sqlite3.SQLITE_CONSTRAINT_FOREIGNKEY:
                    raise NoLongerThere(self.folder) from error
                raise
            if self._open.text is None and not self._open.recorder.is_empty:
                self._open.text = text

    @contextmanager
    def together(self) -> Iterator[None]:
        """All changes inside are kept together, or none is, and are one step, called as the first of them.

        What one of them raises has to leave the block; blocks may nest.
        """
        with self.writing() as db:
            if self._open is not None:
                yield
                return
            step = self._open = _Open(Recorder(db))
            try:
                yield
            finally:
                self._open = None
            if step.text is None:
                return
            self._end_redo(db)
            made_at = time_text(datetime.now())
            db.table("change").insert({"made_at": made_at, "text": step.text, "images": step.recorder.text})

    def _end_redo(self, db: "Database") -> None:
        """A new change ends what could be done again."""
        for row in self._rows(queries.UNDONE_CHANGES):
            db.table("change").delete(row["id"])

    def in_one_step(self, text: str, change: Callable[[Recorder], None]) -> None:
        """Do what another part of the program wants as one step that can be taken back."""
        self._change(text, change)

    def _set(self, name: str, value: str, text: str, unset: str = "") -> None:
        """Set what a person decides on and the book keeps as a setting; set once more at once it is one step.

        Parameters
        ----------
        unset : what holds as long as the setting is not there: setting that is no change.
        """
        with self.writing() as db:
            last, before = self._row(queries.CHANGE_TO_UNDO), self.setting(name)
            if before is None and value == unset:
                return
            if self._open is None and last is not None and _is_just_now(last, name):
                self._end_redo(db)
                (image,) = from_text(last["images"])
                image["after"] = image["after"] | {"value": value}
                db.table("setting").upsert({"name": name, "value": value}, pk="name")
                db.table("change").update(last["id"], {"images": as_text([image])})
                return
            self._change(text, lambda recorder: recorder.set(name, value, before))

    def undo(self, step: Progress | None = None) -> str | None:
        """Take back the last change of a person; returns its text, or None where there is none.

        Parameters
        ----------
        step : told (done, total) rows of a whole book that is taken back. What it raises, as `Cancelled`,
            ends that, and nothing is changed. With it nothing else is taken back: while that was waiting in
            the background something may have been noted, which nobody wants to lose.

        Raises
        ------
        CannotUndo
            If something kept later rests on it; nothing is changed then.
        """
        return self._turn(queries.CHANGE_TO_UNDO, forward=False, step=step)

    def undo_takes_long(self) -> bool:
        """Whether `undo` would take back a whole book that came in: for a worker then."""
        row = self._row(queries.CHANGE_TO_UNDO)
        return row is not None and not can_be_redone(row["images"])

    def redo(self) -> str | None:
        """Do again what `undo` took back; returns its text, or None where there is nothing."""
        return self._turn(queries.CHANGE_TO_REDO, forward=True)

    def _turn(self, query: str, *, forward: bool, step: Progress | None = None) -> str | None:
        from sqlite_utils.db import NotFoundError

        text: str | None = None
        try:
            with self.writing() as db:
                row = self._row(query)
                if row is None or (step is not None and can_be_redone(row["images"])):
                    return None
                text = str(row["text"])
                if self._is_outdated(row["images"]) or not names_tables_of(db, row["images"]):
                    raise CannotUndo(self.folder, change=text)
                db.execute(queries.LATE_FOREIGN_KEYS)
                for first, last in () if forward else brought_rows(row["images"], "tray"):
                    db.execute(lookrows.FORGET_ENTRIES, {"first": first, "last": last})
                apply_images(db, row["images"], forward=forward, step=step)
                if can_be_redone(row["images"]):
                    db.table("change").update(row["id"], {"undone": 0 if forward else 1})
                else:
                    db.table("change").delete(row["id"])
                    db.execute(queries.FORGET_CARRIED)  # an id of a photo may be given again
        except (sqlite3.IntegrityError, NotFoundError) as error:  # scored again, a row may have gone
            raise CannotUndo(self.folder, change=text) from error
        return text

    def _is_outdated(self, images: str) -> bool:
        """Whether a photo that the change was about has been scored by another version since."""
        asked = {"score": correctionrows.NEWER_SCORE, "suspect": correctionrows.NEWER_SCORE_OF_SUSPECT}
        return any(
            self._row(asked[image["table"]], id=image["id"]) is not None
            for image in from_text(images)
            if image["table"] in asked and "id" in image  # whole books that came in have none
        )

    def forget_changes(self) -> None:
        """Let what was done so far stand for good; nothing of it can be taken back any more."""
        with self.writing() as db:
            db.table("change").delete_where()

    def undo_text(self) -> str | None:
        """What `undo` would take back ("mold on A5"), or None."""
        change = self.to_undo()
        return None if change is None else change.text

    def redo_text(self) -> str | None:
        """What `redo` would do again, or None."""
        change = self.to_redo()
        return None if change is None else change.text

    def to_undo(self) -> Change | None:
        """The person's change that `undo` would take back."""
        return _change(self._row(queries.CHANGE_TO_UNDO))

    def to_redo(self) -> Change | None:
        """The person's change that `redo` would do again."""
        return _change(self._row(queries.CHANGE_TO_REDO))


def _is_just_now(last: sqlite3.Row, name: str) -> bool:
    """Whether the last change set this setting alone, in these seconds: a button that is held down."""
    apart = abs(datetime.now() - datetime.fromisoformat(last["made_at"]))  # a clock may have been set back
    images = from_text(last["images"])
    return apart < SAME_SETTING and [(one["table"], one.get("id")) for one in images] == [("setting", name)]


def _change(row: sqlite3.Row | None) -> Change | None:
    if row is None:
        return None
    return Change(id=row["id"], text=row["text"], made_at=datetime.fromisoformat(row["made_at"]))
