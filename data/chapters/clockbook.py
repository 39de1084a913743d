"""Clock book: photos whose camera had a wrong clock, found and mended in one step.

In    a book; the photos of a doubt and the shift
Out   doubts about the newest photos; their times mended, with the time of the camera kept beside
Not   how a wrong clock is known (`photos/clocks.py`)
"""

from collections import defaultdict
from collections.abc import Sequence
from datetime import date, datetime, time, timedelta
from typing import Any

from data.chapters.matchbook import MatchBook
from data.numbers import PhotoId, TrayId
from data.photos.clocks import ClockDoubt, ClockPhoto, Grown, clock_doubts
from data.records import Fate, fate_of
from data.tables import clockrows
from data.tables.journal import Recorder
from data.tables.rows import time_of, time_text

__all__ = ["ClockBook"]

NEWEST = 500  # photos that are asked about
LEAST_DAYS = 4  # that tell when walks usually are
SAME_TIME_MIN = 90


class ClockBook(MatchBook):
    """The clocks of the cameras."""

    def clock_doubts(self, most: int = NEWEST) -> tuple[ClockDoubt, ...]:
        """What is wrong with the clocks of the photos that came in last."""
        photos = [
            ClockPhoto(
                id=PhotoId(row["id"]),
                taken_at=datetime.fromisoformat(row["taken_at"]),
                file_at=time_of(row["file_at"]),
                added_at=datetime.fromisoformat(row["added_at"]),
                fits=bool(row["fits"]),
                camera=row["camera"],
            )
            for row in self._rows(clockrows.CLOCKS, most=most)
        ]
        if not photos:
            return ()
        grown = [
            Grown(
                sown=date.fromisoformat(row["sown"]),
                done=None if row["done"] is None else date.fromisoformat(row["done"]),
            )
            for row in self._rows(clockrows.GROWN)
        ]
        return clock_doubts(photos, grown, usual_time(photos))

    def mend_clock(self, photo_ids: Sequence[PhotoId], shift: timedelta) -> tuple[Fate, ...]:
        """Add a shift to the times of some photos, as one undo; those with a tag find their tray anew.

        What the camera said is kept beside it.
        """

        left = [self._photo_before(photo) for photo in photo_ids]

        def change(recorder: Recorder) -> None:
            for photo in photo_ids:
                self._mend_one(recorder, photo, shift)
            for earlier in left:
                self._close_anew(recorder, earlier)
            for photo in photo_ids:
                self._close_by_match(recorder, photo)

        self._change(_text(photo_ids, "mended"), change)
        now = self.photos_named(photo_ids)
        return tuple(fate_of(now[photo]) for photo in photo_ids)

    def _mend_one(self, recorder: Recorder, photo_id: PhotoId, shift: timedelta) -> None:
        row = self._clock_row(photo_id)
        taken = datetime.fromisoformat(row["taken_at"]) + shift
        values: dict[str, Any] = {"taken_at": time_text(taken)}
        if row["clock_at"] is None:
            values["clock_at"] = row["taken_at"]
        was = None if row["tray"] is None else TrayId(row["tray"])
        found = was
        if row["tag_number"] is not None and row["matched_by"] in (None, "tag"):
            found = self.tray_under_tag(row["tag_number"], taken)
            values |= {"tray": found, "matched_by": None if found is None else "tag"}
        recorder.update("photo", photo_id, values)
        self._judge_kept(recorder, photo_id, self._facts(found, taken), self._facts(was, taken - shift))

    def believe_clock(self, photo_ids: Sequence[PhotoId]) -> None:
        """Say that the camera's times are right after all, so that nobody asks again."""

        def change(recorder: Recorder) -> None:
            for photo in photo_ids:
                recorder.update("photo", photo, {"clock_at": self._clock_row(photo)["taken_at"]})

        self._change(_text(photo_ids, "believed"), change)

    def _clock_row(self, photo_id: PhotoId) -> Any:
        row = self._row(clockrows.CLOCK_OF_PHOTO, photo=photo_id)
        if row is None:
            raise KeyError(photo_id)
        return row


def usual_time(photos: Sequence[ClockPhoto]) -> time | None:
    """When the walks of most days were: the middle one, where half of them lie within an hour and a half."""
    days: dict[date, list[datetime]] = defaultdict(list)
    for photo in photos:
        days[photo.taken_at.date()].append(photo.taken_at)
    walks = sorted(sorted(some)[len(some) // 2].time() for some in days.values())
    if len(walks) < LEAST_DAYS:
        return None
    early, late = (_minutes(walks[len(walks) * part // 4]) for part in (1, 3))
    return walks[len(walks) // 2] if late - early <= SAME_TIME_MIN else None


def _minutes(at: time) -> int:
    return 60 * at.hour + at.minute


def _text(photo_ids: Sequence[PhotoId], how: str) -> str:
    return f"clock of 1 photo {how}" if len(photo_ids) == 1 else f"clock of {len(photo_ids)} photos {how}"
