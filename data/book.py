"""Book: the trial book of a grower, kept in one folder.

In    photos that were scored, and a person's decisions on them
Out   the same, kept; each decision of a person can be taken back
Not   trays (`chapters/traybook.py`), readings (`chapters/readingbook.py`), events (`chapters/eventbook.py`),
      media (`chapters/materialbook.py`), which tray a photo shows (`chapters/matchbook.py`), two that were
      swapped (`chapters/swapbook.py`), undo (`chapters/changes.py`), corrections (`chapters/corrections.py`),
      questions (`chapters/reader.py`), files and transactions (`chapters/store.py`), intake (`intake.py`)

A photo and its score are kept in one transaction, after the original has been copied under its digest: what
the book names is on the disk. A photo is known by its bytes; bringing it in again does nothing.
"""

import contextlib
from dataclasses import replace
from datetime import datetime, time, timedelta, timezone
from pathlib import Path
from typing import Any

from data.chapters.benchbook import BenchBook
from data.chapters.clockbook import ClockBook
from data.chapters.corrections import Corrections
from data.chapters.drawbook import DrawBook
from data.chapters.marginbook import MarginBook
from data.chapters.materialbook import MaterialBook
from data.chapters.oldbook import OldBook
from data.chapters.planbook import PlanBook
from data.chapters.swapbook import SwapBook
from data.chapters.trialbook import TrialBook
from data.errors import in_words
from data.photos.judged import Judged
from data.photos.originals import (
    Altered,
    Gone,
    copy_original,
    file_time,
    original_path,
    restore_original,
    safe_suffix,
)
from data.photos.rootday import judged_again
from data.records import Fate, PhotoId, Refused, Said, SuspectId, TakenFrom, fate_of
from data.tables.journal import Recorder
from data.tables.rows import name_text, time_text
from data.tables.scorerows import score_row, suspect_rows
from vision.reason import Reason

__all__ = ["Book"]

EARLIEST = datetime(2000, 1, 1)  # a camera that says less has lost its clock
CLOCK_SLACK = timedelta(days=1)  # time zones


class Book(
    OldBook,
    PlanBook,
    DrawBook,
    MarginBook,
    MaterialBook,
    TrialBook,
    BenchBook,
    ClockBook,
    SwapBook,
    Corrections,
):
    """A trial book: `Book.create(folder)` or `Book.open(folder)`; use it from any thread, `close` it once."""

    # --- photos

    def keep(self, judged: Judged, source: Path) -> Fate:
        """Keep one photo with its score, match it by its tag, and say what became of it.

        Raises
        ------
        BookError
            If the world stops us; the book is then as it was before this photo.
        """
        judged = replace(judged, name=name_text(judged.name))
        if judged.digest is None:
            return Refused(photo_id=None, name=judged.name, reason=judged.refusal or Reason.UNREADABLE)
        known = self.known(judged.digest)
        if known is not None:
            return known
        try:
            changed_at = file_time(source)
            with in_words(self.folder):
                self._copy(judged, source)
        except Altered:
            return Refused(photo_id=None, name=judged.name, reason=Reason.ALTERED)
        except Gone:
            return Refused(photo_id=None, name=judged.name, reason=Reason.UNREADABLE)
        return self._kept(judged, changed_at)

    def bring_back(self, photo_id: PhotoId, source: Path) -> None:
        """Put the original of a known photo back where it is missing or, by its size, another file by now."""
        original = self.photo(photo_id).photo
        if original is None:
            return
        with contextlib.suppress(Altered, Gone), in_words(self.folder):
            restore_original(source, original)

    def _copy(self, judged: Judged, source: Path) -> None:
        if judged.is_picture and judged.digest is not None:
            target = original_path(self.folder, judged.digest, safe_suffix(judged.name))
            copy_original(source, target, judged.digest)

    def _kept(self, judged: Judged, changed_at: datetime) -> Fate:
        with self.writing() as db:
            known = self.known(judged.digest or "")
            if known is not None:  # another window was faster
                return known
            kept = self._photo_values(judged, changed_at)
            photo = db.table("photo").insert(kept).last_pk
            if judged.score is not None:
                values = score_row(judged.score, sure=not judged.needs_corners, made_at=datetime.now())
                score = db.table("score").insert(values | {"photo": photo}).last_pk
                tray = None if kept["tray"] is None else self.tray(kept["tray"])
                found = judged_again(judged.score.suspects, tray, datetime.fromisoformat(kept["taken_at"]))
                suspects = [row | {"score": score} for row in suspect_rows(found)]
                db.table("suspect").insert_all(suspects)
        assert isinstance(photo, int)
        self._put_pictures(PhotoId(photo), judged)
        self._keep_suspects_since(PhotoId(photo))
        return fate_of(self.photo(PhotoId(photo)))

    def _photo_values(self, judged: Judged, changed_at: datetime) -> dict[str, Any]:
        taken_at, taken_from = self._taken(judged.taken_at, changed_at)
        tray = None if judged.tag_number is None else self.tray_under_tag(judged.tag_number, taken_at)
        refusal = None if judged.needs_corners else judged.refusal
        return {
            "digest": judged.digest,
            "name": judged.name,
            "suffix": safe_suffix(judged.name),
            "kept": int(judged.is_picture),
            "added_at": time_text(datetime.now()),
            "taken_at": time_text(taken_at),
            "taken_from": str(taken_from),
            "file_at": time_text(_by_zone(judged) or changed_at),
            "camera": judged.camera,
            "tag_number": judged.tag_number,
            "tray": tray,
            "matched_by": None if tray is None else "tag",
            "needs_corners": int(judged.needs_corners),
            "refusal": None if refusal is None else refusal.name,
        }

    def _taken(self, by_camera: datetime | None, by_file: datetime) -> tuple[datetime, TakenFrom]:
        """The camera's time, unless there is none or it cannot be: then the file's."""
        if by_camera is not None and by_camera.tzinfo is not None:
            by_camera = by_camera.astimezone().replace(tzinfo=None)
        latest = max(datetime.now(), datetime.combine(self.today(), time.max)) + CLOCK_SLACK
        if by_camera is not None and EARLIEST <= by_camera <= latest:
            return by_camera, TakenFrom.CAMERA
        return by_file, TakenFrom.FILE

    # --- what a person decides about photos

    def say(self, suspect_id: SuspectId, said: Said | str | None) -> None:
        """Say of a suspect "mold" or "not mold", or with None that it is open again."""
        word = None if said is None else Said(said)
        at = None if word is None else time_text(datetime.now())
        text = f"{word or 'suspect open again'} on {self.suspect_code(suspect_id)}"
        values = {"said": None if word is None else str(word), "said_at": at}
        self._change(text, lambda recorder: recorder.update("suspect", suspect_id, values))

    def leave_out(self, photo_id: PhotoId) -> None:
        """Leave a photo out of everything; the original and its numbers stay."""
        row = self.photo(photo_id)
        values = {"left_out_at": time_text(datetime.now())}
        before = self._photo_before(photo_id)

        def change(recorder: Recorder) -> None:
            recorder.update("photo", photo_id, values)
            self._close_anew(recorder, before)

        self._change(f"{row.name} left out", change)


def _by_zone(judged: Judged) -> datetime | None:
    """The rack's time of a photo by the zone that its camera notes; None where that is the rack's own.

    It stands in the place of the file's time, which a copy often loses: a camera in another zone is asked
    about either way (`photos/clocks.py`), for around midnight its photos lie on the wrong day of growing.
    """
    if judged.taken_at is None or judged.utc_offset is None:
        return None
    with contextlib.suppress(OverflowError, OSError):  # what no clock can say
        here = judged.taken_at.replace(tzinfo=timezone(judged.utc_offset)).astimezone()
        return None if here.utcoffset() == judged.utc_offset else here.replace(tzinfo=None)
    return None
