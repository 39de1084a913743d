"""Old book: trays from a grower's old notes -> the book, as one step of undo.

In    `OldNotes` in which nothing is left to be asked
Out   trays that have ended, with their fresh mass, height and score by eye
Not   reading the notes (`logs/oldnotes.py`)
"""

from dataclasses import replace
from datetime import datetime, timedelta
from typing import TYPE_CHECKING

from data.chapters.eventbook import EventBook
from data.chapters.readingbook import ReadingBook
from data.chapters.sowing import sow
from data.chapters.traybook import TrayBook
from data.readings import ReadingKind
from data.records import TrayId
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
        """Keep the trays of a file, all or none; the same file twice adds nothing.

        Trays come without tags. Codes may stand in the book already: a code is no name for ever. A crop or a
        medium that the book has in other letters, "Broccoli", is that one.
        """
        ids: list[TrayId] = []
        name = name_text(name)
        crops, media = ({one.casefold(): one for one in names} for names in (self.crops(), self.media()))

        def change(recorder: Recorder) -> None:
            if self.knows_log(notes.digest):
                return
            at = time_text(datetime.now())
            recorder.insert(
                "log_file", {"digest": notes.digest, "name": name, "added_at": at, "read_as": RATER}
            )
            for place, old in enumerate(notes.trays, start=1):
                new = replace(
                    old.new,
                    crop=crops.get(old.new.crop.casefold(), old.new.crop),
                    medium=media.get(old.new.medium.casefold(), old.new.medium),
                )
                with self.writing() as db:
                    ids.append(sow(db, recorder, new, place))
                self._end_and_weigh(recorder, ids[-1], old)

        self._change(f"{len(notes.trays)} trays from {name}", change)
        return tuple(ids)

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
