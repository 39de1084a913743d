"""Rejudging: kept suspects of a photo whose tray, day or medium turns out to be another.

In    a photo, what is known of its tray now, what was known before
Out   confidence and reason of its suspects put right, as part of a change that can be taken back
Not   the judgement itself (`photos/rootday.py`), what makes it necessary (`matchbook.py` and its neighbours)
"""

from typing import TYPE_CHECKING

from data import queries
from data.chapters.changes import Changes
from data.photos.rootday import kept_judged_again
from data.records import PhotoId
from data.tables.journal import Recorder

if TYPE_CHECKING:
    from vision.suspect import TrayFacts

__all__ = ["Rejudging"]


class Rejudging(Changes):
    """A book whose kept suspects follow what is known of their tray."""

    def _judge_kept(
        self, recorder: Recorder, photo_id: PhotoId, now: "TrayFacts | None", was: "TrayFacts | None"
    ) -> None:
        """Suspects of a photo count by these facts; None for a photo without a tray."""
        if now == was:
            return
        for score in self._rows(queries.SCORES_OF_PHOTO, photo=photo_id):
            for suspect in self._rows(queries.SUSPECTS_OF_SCORE, score=score["id"]):
                judged = kept_judged_again(dict(suspect), now, was)
                if judged != {name: suspect[name] for name in judged}:
                    recorder.update("suspect", suspect["id"], judged)
