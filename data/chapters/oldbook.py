"""Old book: trays from a grower's old notes -> the book, as one step of undo.

In    `OldNotes` in which nothing is left to be asked
Out   trays that have ended, with their fresh mass, height and score by eye
Not   reading the notes (`logs/oldnotes.py`)
"""

from collections.abc import Iterator
from dataclasses import replace
from datetime import datetime, timedelta
from typing import TYPE_CHECKING

from data.chapters.eventbook import EventBook
from data.chapters.readingbook import ReadingBook
from data.chapters.sowing import sow
from data.chapters.traybook import TrayBook
from data.readings import ReadingKind
from data.records import NewTray, Tray, TrayId
from data.tables import trialrows
from data.tables.journal import Recorder
from data.tables.rows import name_text, time_text

if TYPE_CHECKING:
    from data.logs.oldnotes import OldNotes, OldTray

__all__ = ["OldBook"]

LONGEST_GROWN = timedelta(days=30)  # a tray sown before that without a day of cut has ended
RATER = "old notes"


class OldBook(TrayBook, ReadingBook, EventBook):
    """Trays of before."""

    def keep_old_notes(self, notes: "OldNotes", name: str) -> tuple[TrayId, ...]:
        """Keep the trays of a file that the book lacks, all or none; the same file twice adds nothing.

        Trays come without tags. Codes may stand in the book already: a code is no name for ever. A crop or a
        medium that the book has in other letters, "Broccoli", is that one.
        """
        ids: list[TrayId] = []
        name, there = name_text(name), self.there_already(notes)
        trays = [old for old in notes.trays if old.line not in there]
        crops, media = ({one.casefold(): one for one in names} for names in (self.crops(), self.media()))

        def change(recorder: Recorder) -> None:
            if self.knows_log(notes.digest):
                return
            at = time_text(datetime.now())
            recorder.insert(
                "log_file", {"digest": notes.digest, "name": name, "added_at": at, "read_as": RATER}
            )
            for place, old in enumerate(trays, start=1):
                new = replace(
                    old.new,
                    crop=crops.get(old.new.crop.casefold(), old.new.crop),
                    medium=media.get(old.new.medium.casefold(), old.new.medium),
                )
                with self.writing() as db:
                    ids.append(sow(db, recorder, new, place))
                self._end_and_weigh(recorder, ids[-1], old)

        if trays:
            self._change(f"{len(trays)} trays from {name}", change)
        return tuple(ids)

    def there_already(self, notes: "OldNotes") -> frozenset[int]:
        """Lines whose tray the book has: a table is written on and brought in again, or saved in another way.

        A tray is known by code, crop, medium and day of sowing; where the table has no codes, by all that is
        told of it, too.
        """
        from data.logs.oldcolumns import Field

        coded = Field.CODE in notes.fields
        have = {(_known_by(tray), None if coded else self._told_of(tray)) for tray in self._old_trays(notes)}
        return frozenset(
            old.line for old in notes.trays if (_known_by(old.new), None if coded else _told_in(old)) in have
        )

    def _old_trays(self, notes: "OldNotes") -> Iterator[Tray]:
        days = {old.new.sown_at.date() for old in notes.trays}
        return (tray for tray in (*self.trays(), *self.ended_trays()) if tray.sown_at.date() in days)

    def _told_of(self, tray: Tray) -> tuple[object, ...]:
        """What the book has of a tray, in the order of `_told_in`."""
        noted = [self.readings(tray.id, kind) for kind in (ReadingKind.FRESH_MASS, ReadingKind.HEIGHT)]
        given = self._row(trialrows.EYE_SCORE_BY, tray=tray.id, rater=RATER)
        numbers = (some[0].value if some else None for some in noted)
        return (*numbers, None if given is None else given["value"], tray.note)

    def _end_and_weigh(self, recorder: Recorder, tray: TrayId, old: "OldTray") -> None:
        end = old.cut_at
        if end is not None:
            recorder.update("tray", tray, {"done_at": time_text(end), "ended": "cut"})
            recorder.insert("event", {"tray": tray, "kind": "cut", "at": time_text(end), "note": ""})
        elif old.new.sown_at + LONGEST_GROWN < self.now() or old.fresh_mass_g is not None:
            end = min(old.new.sown_at + LONGEST_GROWN, self.now())  # what has been weighed has been cut
            recorder.update("tray", tray, {"done_at": time_text(end)})
        at = time_text(end or self.now())
        for kind, value in ((ReadingKind.FRESH_MASS, old.fresh_mass_g), (ReadingKind.HEIGHT, old.height_mm)):
            if value is not None:
                values = {"tray": tray, "kind": str(kind), "value": value, "unit": kind.unit}
                recorder.insert("reading", values | {"taken_at": at, "source": RATER, "note": ""})
        if old.eye_score is not None:
            given = {"tray": tray, "rater": RATER, "value": old.eye_score, "blind": 0, "given_at": at}
            recorder.insert("eye_score", given)


def _known_by(tray: "Tray | NewTray") -> tuple[object, ...]:
    return tray.code.casefold(), tray.crop.casefold(), tray.medium.casefold(), tray.sown_at.date()


def _told_in(old: "OldTray") -> tuple[object, ...]:
    """What a line says of its tray beside crop, medium and day."""
    return old.fresh_mass_g, old.height_mm, old.eye_score, old.new.note
