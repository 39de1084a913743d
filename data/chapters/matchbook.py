"""Match book: which tray a photo shows, as a person says it.

In    photos without a tray, or with a wrong one; a person's word; trays that came in after their photos
Out   the match kept, one step of undo; suspects judged by the day and the medium of the tray
Not   proposals (`photos/walk.py`), tags (`book.py`), clocks (`clockbook.py`)
"""

from collections.abc import Callable, Mapping, Sequence
from datetime import datetime
from typing import TYPE_CHECKING

from data.chapters.suspectbook import SuspectBook
from data.photos.rootday import facts_of
from data.records import Fate, PhotoId, TrayId, fate_of
from data.tables import walkrows
from data.tables.journal import Recorder

if TYPE_CHECKING:
    from vision.suspect import TrayFacts

__all__ = ["MatchBook"]


class MatchBook(SuspectBook):
    """Photos and the trays that they show."""

    def match(self, photo_id: PhotoId, tray_id: TrayId) -> Fate:
        """Say which tray a photo shows."""
        return self.match_all({photo_id: tray_id})[0]

    def match_all(self, trays: Mapping[PhotoId, TrayId]) -> tuple[Fate, ...]:
        """Say which trays several photos show, as one step of undo (the proposals of a walk, say)."""
        codes = [self.tray(tray).code for tray in trays.values()]
        self._change(_text(codes), self._matching(trays))
        now = self.photos_named(trays)
        return tuple(fate_of(now[photo]) for photo in trays)

    def _matching(self, trays: Mapping[PhotoId, TrayId]) -> Callable[[Recorder], None]:
        """The change that gives photos to their trays, from what the book says before it."""
        rows = self.photos_named(trays)
        left = [self._photo_before(photo) for photo, tray in trays.items() if rows[photo].tray_id != tray]

        def change(recorder: Recorder) -> None:
            for photo, tray in trays.items():
                by = "walk" if rows[photo].proposal_id == tray else "person"
                recorder.update("photo", photo, {"tray": tray, "matched_by": by, "left_out_at": None})
                taken_at = rows[photo].taken_at
                was = self._facts(rows[photo].tray_id, taken_at)
                self._judge_kept(recorder, photo, self._facts(tray, taken_at), was)
            for earlier in left:
                self._close_anew(recorder, earlier)
            for photo in trays:
                self._close_by_match(recorder, photo)

        return change

    def match_by_tag(self) -> int:
        """Match photos that came in before their trays did, by their tags; how many, as one step of undo."""
        found: dict[PhotoId, tuple[TrayId, datetime]] = {}
        for row in self._rows(walkrows.TAGGED_WITHOUT_TRAY):
            taken_at = datetime.fromisoformat(row["taken_at"])
            tray = self.tray_under_tag(row["tag_number"], taken_at)
            if tray is not None:
                found[PhotoId(row["id"])] = (tray, taken_at)
        if not found:
            return 0

        def change(recorder: Recorder) -> None:
            for photo, (tray, taken_at) in found.items():
                recorder.update("photo", photo, {"tray": tray, "matched_by": "tag"})
                self._judge_kept(recorder, photo, self._facts(tray, taken_at), None)
            for photo in found:
                self._close_by_match(recorder, photo)

        codes = [self.tray(tray).code for tray, _ in found.values()]
        self._change(_text(codes), change)
        return len(found)

    def _facts(self, tray_id: TrayId | None, taken_at: datetime) -> "TrayFacts | None":
        return facts_of(None if tray_id is None else self.tray(tray_id), taken_at)


def _text(codes: Sequence[str]) -> str:
    """What undo would take back."""
    return f"photo matched to {codes[0]}" if len(codes) == 1 else f"{len(codes)} photos matched"
