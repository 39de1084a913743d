"""Suspect book: what a photo shows of the suspects of the day before, kept as it comes in.

In    a photo that was just kept, scored again, or matched to its tray
Out   suspects that close themselves, each with its note; which suspects are those of the day before
Not   finding that out (`closing.py`), reading it (`photos/carried.py`), words of a person (`book.py`)
"""

from collections.abc import Mapping
from datetime import datetime

from data import queries
from data.chapters.closing import suspects_since
from data.chapters.rejudging import Rejudging
from data.photos.carried import Carried, carried_name, carried_text
from data.records import PhotoId
from data.tables.journal import Recorder
from data.tables.rows import time_text

__all__ = ["SuspectBook"]


class SuspectBook(Rejudging):
    """Suspects from one photo to the next."""

    def _keep_suspects_since(self, photo_id: PhotoId) -> None:
        """Suspects of the day before that this photo no longer shows close themselves; not to be undone."""
        found = suspects_since(self, photo_id)
        if not found.carried:
            return
        at = time_text(datetime.now())
        with self.writing() as db:
            self._keep_carried(found.carried)
            for suspect, note in found.closing.items():
                row = self._row(queries.SUSPECT, suspect=suspect)
                if row is not None and row["said"] is None:  # a person may have been faster
                    db.table("suspect").update(suspect, {"closed_at": at, "closed_why": str(note)})

    def _close_by_match(self, recorder: Recorder, photo_id: PhotoId) -> None:
        """As for a photo that was just kept, but undone with the match: that may have been a mistake."""
        at = time_text(datetime.now())
        found = suspects_since(self, photo_id)
        self._keep_carried(found.carried)
        for suspect, note in found.closing.items():
            recorder.update("suspect", suspect, {"closed_at": at, "closed_why": str(note)})

    def _photo_before(self, photo_id: PhotoId) -> PhotoId | None:
        """The last photo of an earlier day of its tray, whose suspects it may have closed."""
        photos = self.sure_photos_beside(photo_id)
        here = next((day for photo, day in photos if photo == photo_id), None)
        if here is None:
            return None
        return next((photo for photo, day in reversed(photos) if day < here), None)

    def _close_anew(self, recorder: Recorder, photo_id: PhotoId | None) -> None:
        """A later photo shows this tray no more: what it closed is open, unless the next photo closes it."""
        score = None if photo_id is None else self.score(photo_id)
        closed = [] if score is None else [one for one in score.suspects if one.closed_at is not None]
        if score is None or not closed:
            return
        for one in closed:
            recorder.update("suspect", one.id, {"closed_at": None, "closed_why": ""})
        photos = self.sure_photos_beside(score.photo_id)
        here = next((day for photo, day in photos if photo == score.photo_id), None)
        later = [(photo, day) for photo, day in photos if here is not None and day > here]
        after = [photo for photo, day in later if day == later[0][1]]
        if after:
            self._close_by_match(recorder, after[-1])

    def _keep_carried(self, carried: Mapping[PhotoId, Carried]) -> None:
        """What photos show is no decision of a person, so nothing that is taken back."""
        for photo, one in carried.items():
            self.set_setting(carried_name(photo), carried_text(one))
