"""Clock book: photos whose camera had a wrong clock, found and mended in one step.

In    a book; the photos of a doubt and the shift
Out   doubts about the newest photos; their times mended, with the time of the camera kept beside
Not   how a wrong clock is known (`clocks.py`)
"""

from collections import defaultdict
from collections.abc import Sequence
from datetime import date, datetime, time, timedelta
from typing import Any

from data import clockrows
from data.changes import Changes
from data.clocks import ClockDoubt, ClockPhoto, clock_doubts
from data.journal import Recorder
from data.numbers import PhotoId
from data.records import Fate, fate_of
from data.rows import time_of, time_text

__all__ = ["ClockBook"]

NEWEST = 500  # photos that are asked about
LEAST_DAYS = 4  # that tell when walks usually are
SAME_TIME_MIN = 90


class ClockBook(Changes):
    """The clocks of the cameras."""

    def clock_doubts(self, most: int = NEWEST) -> tuple[ClockDoubt, ...]:
        """What is wrong with the clocks of the photos that came in last."""
        photos = [
            ClockPhoto(
                id=PhotoId(row["id"]),
                taken_at=datetime.fromisoformat(row["taken_at"]),
                file_at=time_of(row["file_at"]),
                added_at=datetime.fromisoformat(row["added_at"]),
            )
            for row in self._rows(clockrows.CLOCKS, most=most)
        ]
        if not photos:
            return ()
        sown = [tray.sown_at.date() for tray in self.trays()]
        return clock_doubts(photos, min(sown, default=None), usual_time(photos))

    def mend_clock(self, photo_ids: Sequence[PhotoId], shift: timedelta) -> tuple[Fate, ...]:
        """Add a shift to the times of some photos, as one undo; those with a tag find their tray anew.

        What the camera said stays readable: `camera_time`.
        """

        def change(recorder: Recorder) -> None:
            for photo in photo_ids:
                row = self._clock_row(photo)
                taken = datetime.fromisoformat(row["taken_at"]) + shift
                values: dict[str, Any] = {"taken_at": time_text(taken)}
                if row["clock_at"] is None:
                    values["clock_at"] = row["taken_at"]
                if row["tag_number"] is not None and row["matched_by"] in (None, "tag"):
                    trays = self.trays_under_tag(row["tag_number"], taken)
                    values |= {
                        "tray": trays[0][0] if trays else None,
                        "matched_by": "tag" if trays else None,
                    }
                recorder.update("photo", photo, values)

        self._change(_text(photo_ids, "mended"), change)
        return tuple(fate_of(self.photo(photo)) for photo in photo_ids)

    def believe_clock(self, photo_ids: Sequence[PhotoId]) -> None:
        """Say that the camera's times are right after all, so that nobody asks again."""

        def change(recorder: Recorder) -> None:
            for photo in photo_ids:
                recorder.update("photo", photo, {"clock_at": self._clock_row(photo)["taken_at"]})

        self._change(_text(photo_ids, "believed"), change)

    def camera_time(self, photo_id: PhotoId) -> datetime | None:
        """What the camera's clock said where it was mended or asked about; else None."""
        return time_of(self._clock_row(photo_id)["clock_at"])

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
