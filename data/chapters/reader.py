"""Reader: what can be asked of a book, in the words of the trade.

In    a book on the disk
Out   records: trays, days of a tray, rows of Intake
Not   changing anything (`book.py`), what needs a look (`watch.py`)

Light on purpose: no numpy, no picture library, no `sqlite_utils`.
"""

import sqlite3
from collections.abc import Iterable
from datetime import date, datetime, timedelta
from pathlib import Path
from typing import TYPE_CHECKING

from data import queries
from data.chapters.trayreader import GROWTH_DAYS, TrayReader
from data.errors import NoLongerThere
from data.photos.originals import digest_of, original_path, picture_paths
from data.photos.succession import stood_at
from data.photos.walk import proposals_of_day
from data.records import (
    Day,
    GrowthPoint,
    KeptScore,
    Known,
    PhotoId,
    PhotoRow,
    PhotoState,
    Pictures,
    SeenSuspect,
    SuspectId,
    TrayId,
)
from data.tables import colourrows, walkrows
from data.tables.colourrows import MateColour, mate_colour_of
from data.tables.packed import corners_in
from data.tables.rows import (
    day_of,
    photo_row_of,
    score_of,
    seen_suspect_of,
    state_of,
    time_text,
)
from data.tables.scorerows import corners_of
from data.tables.walkrows import rack_tray_of, walk_photo_of

if TYPE_CHECKING:
    from vision.corners import Corners

__all__ = ["GROWTH_DAYS", "Reader"]

NEWEST = (1 << 62, "newest")


class Reader(TrayReader):
    """The questions."""

    # --- the growing trays

    def seen_suspects(self, days: int = GROWTH_DAYS) -> tuple[SeenSuspect, ...]:
        """The suspects of the growing trays on photos whose frame is sure, by tray and time."""
        rows = self._rows(queries.SUSPECTS_OF_GROWING, since=self._since(self.today(), days))
        return tuple(seen_suspect_of(row) for row in rows if row["sure"])

    # --- one tray

    def days(self, tray_id: TrayId) -> tuple[Day, ...]:
        """All photos of one tray with their scores, oldest first; refused and left-out ones too."""
        tray = self.tray(tray_id)
        method = self.comparable([tray_id]).method
        rows = self._rows(queries.DAYS_OF_TRAY, tray=tray_id, method=method)
        return tuple(day_of(row, self._score_in(row), tray, self.folder) for row in rows)

    def _score_in(self, row: sqlite3.Row) -> KeptScore | None:
        if row["id"] is None:
            return None
        return score_of(row, self._rows(queries.SUSPECTS_OF_SCORE, score=row["id"]))

    def sure_photos_beside(self, photo_id: PhotoId) -> tuple[tuple[PhotoId, date], ...]:
        """All photos of a photo's tray that count, itself among them, oldest first, each with its day."""
        rows = self._rows(queries.SURE_PHOTOS_BESIDE, photo=photo_id)
        return tuple((row["photo"], date.fromisoformat(row["day"])) for row in rows)

    def peers(self, tray_id: TrayId) -> tuple[GrowthPoint, ...]:
        """Coverage by day of the tray and its block mates of the same crop and sowing day, by one method."""
        mates = [TrayId(row["id"]) for row in self._rows(queries.PEER_TRAYS, tray=tray_id)]
        method = self.comparable(mates).method or self.comparable([tray_id]).method
        return tuple(
            GrowthPoint(
                tray_id=row["tray"],
                code=row["code"],
                medium=row["medium"],
                day=_days_between(row["sown_at"], row["taken_at"]),
                coverage=row["coverage"],
                method=row["method"],
            )
            for row in self._rows(queries.PEERS, tray=tray_id, method=method)
            if row["method"] == method
        )

    def mate_colours(self, tray_id: TrayId, day: date, method: str) -> tuple[MateColour, ...]:
        """Canopy colours, on a day, of the tray's block mates on the trusted medium; sure photos alone."""
        values = {"tray": tray_id, "day": day.isoformat(), "method": method}
        return tuple(map(mate_colour_of, self._rows(colourrows.MATE_COLOURS, **values)))

    # --- photos

    def known(self, digest: str) -> Known | None:
        """The photo with these bytes and what became of it, if it was brought in before."""
        row = self._row(queries.PHOTO_BY_DIGEST, digest=digest)
        if row is None:
            return None
        return Known(photo_id=row["id"], name=row["name"], was=self.photo(row["id"]).sentence)

    def known_file(self, path: Path) -> Known | None:
        """The same for a file; raises OSError where it cannot be read."""
        return self.known(digest_of(path))

    def photos(self, most: int = 500, newest: int = NEWEST[0]) -> tuple[PhotoRow, ...]:
        """Rows of Intake, last added first, with proposals by the order of the walk.

        Parameters
        ----------
        most : how many at most.
        newest : begin at the photo with this id (to turn pages: the last row's id - 1).
        """
        rows = self._rows(queries.PHOTOS, newest=newest, most=most)
        return self._photo_rows(rows)

    def photo(self, photo_id: PhotoId) -> PhotoRow:
        """One photo; raises `NoLongerThere` where there is none of that number."""
        row = self._row(queries.PHOTO, photo=photo_id)
        if row is None:
            raise NoLongerThere(self.folder)
        return self._photo_rows([row])[0]

    def photos_named(self, photo_ids: Iterable[PhotoId]) -> dict[PhotoId, PhotoRow]:
        """These photos; the walk of a day is thought through once for all of them."""
        rows = [row for photo in photo_ids if (row := self._row(queries.PHOTO, photo=photo)) is not None]
        return {photo.id: photo for photo in self._photo_rows(rows)}

    def _photo_rows(self, rows: list[sqlite3.Row]) -> tuple[PhotoRow, ...]:
        waiting = [row for row in rows if row["tray"] is None and state_of(row) in _WAITING]
        walked = self._walked({row["taken_at"][:10] for row in waiting}) if waiting else {}
        return tuple(
            photo_row_of(row, walked.get(row["id"]) if row["tray"] is None else None, self.folder)
            for row in rows
        )

    def _walked(self, days: Iterable[str]) -> dict[PhotoId, tuple[TrayId, str]]:
        """Proposals for the photos of some days that no tag has matched."""
        found: dict[PhotoId, tuple[TrayId, str]] = {}
        for day in days:
            next_day = (date.fromisoformat(day) + timedelta(days=1)).isoformat()
            rows = self._rows(walkrows.PHOTOS_OF_DAY, begin=day, end=next_day)
            walk = [walk_photo_of(row) for row in rows]
            if all(photo.tray is not None or photo.refused for photo in walk):
                continue
            rack = [rack_tray_of(row) for row in self._rows(walkrows.TRAYS_GROWN_ON, day=day)]
            codes = {tray.id: tray.code for tray in rack}
            proposed = proposals_of_day(walk, rack)
            found |= {photo: (tray, codes[tray]) for photo, tray in proposed.items()}
        return found

    def proposed(self, day: date) -> frozenset[TrayId]:
        """Trays whose photo of a day probably is there, waiting for a person to confirm it."""
        return frozenset(tray for tray, _ in self._walked([day.isoformat()]).values())

    def photo_path(self, photo_id: PhotoId) -> Path:
        """Where the original lies; raises `KeyError` where nothing of it was kept."""
        row = self._row(queries.PHOTO, photo=photo_id)
        if row is None or not row["kept"]:
            raise KeyError(photo_id)
        return original_path(self.folder, row["digest"], row["suffix"])

    def pictures(self, photo_id: PhotoId) -> Pictures | None:
        """Where the pictures of a photo's score lie; missing ones: `intake.make_pictures`."""
        row = self._row(queries.PHOTO, photo=photo_id)
        if row is None or row["score"] is None:
            return None
        corners = corners_in(row["corners"])
        return picture_paths(self.folder, row["digest"], row["method"], corners, row["mend"])

    def score(self, photo_id: PhotoId) -> KeptScore | None:
        """The newest score of a photo."""
        row = self._row(queries.SCORES_OF_PHOTO, photo=photo_id)
        return None if row is None else self._score_in(row)

    def corners(self, photo_id: PhotoId) -> "Corners | None":
        """The corners of the newest score, as the vision room knows them (loads numpy)."""
        row = self._row(queries.SCORES_OF_PHOTO, photo=photo_id)
        text = None if row is None else corners_in(row["corners"])
        return None if text is None else corners_of(text)

    def suspect_code(self, suspect_id: SuspectId) -> str:
        """The code of the tray on which a suspect lies, or "a photo" where it has none yet."""
        row = self._row(queries.SUSPECT, suspect=suspect_id)
        if row is None:
            raise NoLongerThere(self.folder)
        return row["code"] or "a photo"

    def tray_under_tag(self, tag: int, at: datetime) -> TrayId | None:
        """The tray that carried a tag at a time; None where none did, or nobody can tell which."""
        rows = self._rows(walkrows.TRAYS_UNDER_TAG, tag=tag, at=time_text(at))
        stood = stood_at(map(rack_tray_of, rows), at)
        return stood[0].id if len(stood) == 1 else None


_WAITING = (PhotoState.NEEDS_TRAY, PhotoState.NEEDS_CORNERS)


def _days_between(sown_at: str, taken_at: str) -> float:
    return (datetime.fromisoformat(taken_at) - datetime.fromisoformat(sown_at)) / timedelta(days=1)
