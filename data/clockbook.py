"""Clock book: photos whose camera had a wrong clock, found and mended in one step.

In    a book; the photos of a doubt and the shift
Out   doubts about the newest photos; their times mended, with the time of the camera kept beside
Not   how a wrong clock is known (`clocks.py`)
"""

from collections.abc import Sequence
from datetime import datetime, timedelta
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
        sown = [tray.sown_at.date() for tray in self.trays()] if photos else []
        return clock_doubts(photos, min(sown, default=None))

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


def _text(photo_ids: Sequence[PhotoId], how: str) -> str:
    return f"clock of 1 photo {how}" if len(photo_ids) == 1 else f"clock of {len(photo_ids)} photos {how}"
