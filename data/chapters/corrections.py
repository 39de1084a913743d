"""Corrections: what a person mends of a score, with the score as it was kept beside it.

In    corners or a canopy that a person has set, and the photo scored with them
Out   the mended score in the old one's place, the old one kept for good; both can be taken back
Not   scoring (`upkeep/mending.py`, `intake.py`), what becomes training data (`upkeep/trainingdata.py`)
"""

import base64
import json
import sqlite3
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace
from datetime import datetime
from typing import Any

from data import queries
from data.chapters.suspectbook import SuspectBook
from data.photos.judged import Judged
from data.photos.originals import put
from data.photos.rootday import judged_again
from data.records import Fate, PhotoId, PhotoRow, Refused, fate_of
from data.tables import correctionrows
from data.tables.journal import Recorder, as_text
from data.tables.rows import time_text
from data.tables.scorerows import score_row, suspect_rows
from vision.reason import Reason

__all__ = ["Corrections"]

WORD: Mapping[str, str | None] = {"said": None, "said_at": None, "closed_at": None, "closed_why": ""}
INNER = ("inner_long_mm", "inner_short_mm")
SAME_PLACE_MM = 20.0  # two suspects nearer than that are one patch seen twice


class Corrections(SuspectBook):
    """Scores that a person has mended."""

    def set_corners(
        self, photo_id: PhotoId, corners_upright: Sequence[tuple[float, float]], judged: Judged
    ) -> Fate:
        """Put the score that was made with a person's corners in the place of the unsure one.

        What was said of a suspect stays with the suspect at the same place. A photo that cannot be scored
        with these corners stays as it was, and its refusal is returned.
        """
        row = self.photo(photo_id)
        judged = self._of_the_kept(row, judged)
        if judged.score is None:
            return _refused(row, judged)
        body = str([[round(float(x), 2), round(float(y), 2)] for x, y in corners_upright])
        values = score_row(judged.score, sure=True, made_at=datetime.now()) | {"mended": 0}
        said, found = self._said_at(photo_id), self._suspects_of(photo_id, judged)

        def change(recorder: Recorder) -> None:
            correction = self._correct(recorder, photo_id, "corners", body)
            recorder.update("photo", photo_id, {"needs_corners": 0, "refusal": None})
            self._replace(recorder, photo_id, values, correction, suspects=_with_word(found, said))

        self._change(f"corners of {row.tray_code or row.name}", change)
        self._put_pictures(photo_id, judged)
        return fate_of(self.photo(photo_id))

    def mend_canopy(self, photo_id: PhotoId, canopy: bytes, judged: Judged) -> Fate:
        """Put the numbers of the canopy that a person has drawn in the place of the measured ones.

        Suspects and what was said of them stay. A photo that cannot be scored stays as it was.

        Parameters
        ----------
        canopy : PNG of the whole canopy, black and white, as large as the labels.
        judged : the photo scored with that canopy (`judged.score_again`).
        """
        row = self.photo(photo_id)
        judged = self._of_the_kept(row, judged)
        if judged.score is None:
            return _refused(row, judged)
        old = self.score(photo_id)
        sure = old is not None and old.sure
        body = json.dumps({"canopy": base64.b64encode(canopy).decode("ascii")})
        values = score_row(judged.score, sure=sure, made_at=datetime.now()) | {"mended": 1}
        said, found = self._said_at(photo_id), self._suspects_of(photo_id, judged)

        def change(recorder: Recorder) -> None:
            correction = self._correct(recorder, photo_id, "canopy", body)
            same = old is not None and old.method == values["method"]
            suspects = None if same else _with_word(found, said)
            self._replace(recorder, photo_id, values, correction, suspects=suspects)

        self._change(f"canopy of {row.tray_code or row.name}", change)
        self._put_pictures(photo_id, judged)
        return fate_of(self.photo(photo_id))

    def mended_canopy(self, photo_id: PhotoId) -> bytes | None:
        """The PNG of the canopy that the newest score rests on, where a person has drawn it."""
        row = self._row(correctionrows.CANOPY_OF_PHOTO, photo=photo_id)
        return None if row is None else base64.b64decode(json.loads(row["body"])["canopy"])

    def drawn_photos(self) -> tuple[PhotoId, ...]:
        """Photos whose newest score rests on a canopy that a person has drawn, oldest first."""
        return tuple(PhotoId(row["photo"]) for row in self._rows(correctionrows.DRAWN_PHOTOS))

    # --- the present version of the method

    def photos_without(self, method: str, *, growing: bool = False) -> tuple[PhotoId, ...]:
        """Photos with a score, but no whole one by `method`: of growing trays first, newest first."""
        rows = self._rows(correctionrows.PHOTOS_WITHOUT, method=method, growing=int(growing))
        return tuple(PhotoId(row["id"]) for row in rows)

    def seconds_taken(self) -> tuple[float, ...]:
        """How long the newest scores took, s."""
        return tuple(float(row["seconds"]) for row in self._rows(correctionrows.SECONDS_TAKEN))

    def keep_again(self, photo_id: PhotoId, judged: Judged) -> bool:
        """Keep a score by another version of the method beside those there are; nothing that a person undoes.

        A canopy that a person has drawn and words on suspects go into it. False, and nothing is changed,
        where the photo has a whole score by that version for its kind of tray, or this one is missing, less
        sure, or of a file that another program has changed.
        """
        judged = self._of_the_kept(self.photo(photo_id), judged)
        score, old = judged.score, self.score(photo_id)
        if score is None or old is None or (old.sure and judged.needs_corners):
            return False
        sure = old.sure or not judged.needs_corners
        values = score_row(score, sure=sure, made_at=datetime.now())
        with self.writing() as db:
            kept = self._rows(queries.SCORES_OF_PHOTO, photo=photo_id)
            found = self._suspects_of(photo_id, judged)
            suspects = _with_word(found, self._said_at(photo_id, kept[0]["id"]))
            same = next((row for row in kept if row["method"] == score.method), None)
            if same is not None and _is_whole(same, values):
                return False
            row = values | {"photo": photo_id, "mended": int(old.mended)}
            if same is None:
                score_id = db.table("score").insert(row).last_pk
            else:  # it took the tray for one of another kind, or did not know the bed yet
                score_id = same["id"]
                before = self._rows(queries.SUSPECTS_OF_SCORE, score=score_id)
                db.table("old_score").insert(_old_score(same, before, None))
                db.table("suspect").delete_where("score = ?", [score_id])
                db.table("score").update(score_id, row)
            known = {"camera": judged.camera} if judged.camera else {}  # books did not always keep it
            db.table("photo").update(photo_id, known | ({"needs_corners": 0} if sure else {}))
            db.table("suspect").insert_all(one | {"score": score_id} for one in suspects)
        self._put_pictures(photo_id, judged)
        self._keep_suspects_since(photo_id)
        return True

    @staticmethod
    def _of_the_kept(row: PhotoRow, judged: Judged) -> Judged:
        """Only what was measured on the very photo that was kept, whose name is its digest."""
        if row.photo is None or judged.digest in (None, row.photo.stem):
            return judged
        return replace(judged, score=None, refusal=Reason.CHANGED)

    # --- inside one change

    def _correct(self, recorder: Recorder, photo_id: PhotoId, kind: str, body: str) -> int:
        made_at = time_text(datetime.now())
        row = {"photo": photo_id, "kind": kind, "body": body, "made_at": made_at}
        return recorder.insert("correction", row)

    def _replace(
        self,
        recorder: Recorder,
        photo_id: PhotoId,
        values: Mapping[str, Any],
        correction: int,
        *,
        suspects: Iterable[Mapping[str, Any]] | None,
    ) -> None:
        """Put `values` in the place of the score by the same method; `suspects` None: those there stay."""
        kept = {row["method"]: row for row in self._rows(queries.SCORES_OF_PHOTO, photo=photo_id)}
        old = kept.get(values["method"])
        if old is None:
            score_id = recorder.insert("score", dict(values) | {"photo": photo_id})
        else:
            score_id = old["id"]
            before = self._rows(queries.SUSPECTS_OF_SCORE, score=score_id)
            recorder.insert("old_score", _old_score(old, before, correction))
            for suspect in before if suspects is not None else ():
                recorder.delete("suspect", suspect["id"])
            recorder.update("score", score_id, values)
        for one in suspects or ():
            recorder.insert("suspect", dict(one) | {"score": score_id})

    def _suspects_of(self, photo_id: PhotoId, judged: Judged) -> list[dict[str, Any]]:
        """The suspects of a fresh score, judged with the day and the medium of the tray where it is known."""
        row = self.photo(photo_id)
        tray = None if row.tray_id is None else self.tray(row.tray_id)
        found = () if judged.score is None else judged.score.suspects
        return suspect_rows(judged_again(found, tray, row.taken_at))

    def _said_at(self, photo_id: PhotoId, score_id: int | None = None) -> list[sqlite3.Row]:
        """Suspects of a score, by default of the newest one, of which a word was said or that are closed."""
        if score_id is None:
            newest = self._row(queries.SCORES_OF_PHOTO, photo=photo_id)
            if newest is None:
                return []
            score_id = newest["id"]
        rows = self._rows(queries.SUSPECTS_OF_SCORE, score=score_id)
        return [row for row in rows if (row["said"] or row["closed_at"]) and row["x_mm"] is not None]

    def _put_pictures(self, photo_id: PhotoId, judged: Judged) -> None:
        pictures = self.pictures(photo_id)
        if pictures is not None and judged.score is not None:
            put(pictures.top_view, judged.top_view)
            put(pictures.labels, judged.labels)
            put(pictures.thumbnail, judged.thumbnail)


def _refused(row: PhotoRow, judged: Judged) -> Refused:
    reason = judged.refusal or Reason.NO_TRAY
    return Refused(
        photo_id=row.id, name=row.name, reason=reason, tray_id=row.tray_id, tray_code=row.tray_code
    )


def _is_whole(kept: sqlite3.Row, values: Mapping[str, Any]) -> bool:
    """Whether a kept score has all that a fresh one by the same version has: its kind of tray, the bed."""
    return kept["bed_cells"] is not None and all(kept[side] == values[side] for side in INNER)


def _old_score(score: sqlite3.Row, suspects: Iterable[sqlite3.Row], correction: int | None) -> dict[str, Any]:
    return {
        "score": score["id"],
        "correction": correction,
        "body": as_text({"score": _plain(score), "suspects": [_plain(row) for row in suspects]}),
        "replaced_at": time_text(datetime.now()),
    }


def _plain(row: sqlite3.Row) -> dict[str, Any]:
    return dict(zip(row.keys(), tuple(row), strict=True))


def _with_word(found: Sequence[dict[str, Any]], said: Iterable[sqlite3.Row]) -> list[dict[str, Any]]:
    """The suspects of a fresh score, each with what a person said of one at its place.

    A patch that a person has called mold stays, even where the fresh score no longer sees it.
    """
    words = list(said)
    lost = [row for row in words if row["said"] == "mold" and not any(_near(row, one) for one in found)]
    return [one | _said_near(one, words) for one in found] + [_copied(row) for row in lost]


def _copied(row: sqlite3.Row) -> dict[str, Any]:
    return {name: value for name, value in _plain(row).items() if name not in ("id", "score")}


def _said_near(suspect: Mapping[str, Any], said: Iterable[sqlite3.Row]) -> dict[str, Any]:
    for row in said:
        if _near(row, suspect):
            return {name: row[name] for name in WORD}
    return dict(WORD)


def _near(row: sqlite3.Row, suspect: Mapping[str, Any]) -> bool:
    if suspect["x_mm"] is None:
        return False
    x, y = row["x_mm"] - suspect["x_mm"], row["y_mm"] - suspect["y_mm"]
    return bool(x * x + y * y <= SAME_PLACE_MM**2)
