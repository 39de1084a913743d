"""Trial rows: what a verdict asks of a book, and the one place where those rows become records.

In    rows
Out   numbers of photos, words on suspects, fresh masses and scores by eye, by tray; SQL as constants
Not   running the queries (`chapters/trialbook.py`), choosing a tray's one number (`verdict/traynumbers.py`)
"""

import json
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import datetime
from sqlite3 import Row

from data.events import EventKind
from data.numbers import PhotoId, TrayId
from data.readings import ReadingKind
from data.tables.rows import doubts_of, reason_of
from vision.reason import Reason

__all__ = [
    "EYE_ROUNDS", "EYE_SCORES", "EYE_SCORE_AT", "EYE_SCORE_BY", "FRESH_MASS", "LEFT_OUT", "MOLD_TAKEN_OUT",
    "PHOTO_NUMBERS", "SUSPECTS_OF_TRIAL", "TRIAL", "EyeGiven", "PhotoNumbers", "SuspectWord", "TrialSaid",
    "eye_given_of", "masses_of", "photo_numbers_of", "suspect_word_of", "taken_out_of", "trial_said_of",
]  # fmt: skip

TRIAL = """
    SELECT r.id, m.name AS trusted, r.margin_points, r.margin_set_at
      FROM trial r
      LEFT JOIN medium m ON m.id = r.trusted
     WHERE r.name = :trial
"""
PHOTO_NUMBERS = """
    SELECT t.id AS tray, p.id AS photo, p.taken_at, s.id AS score, s.method, s.coverage, s.uniformity,
           s.green, s.pale, s.red, s.bed_share, s.bed_uniformity, s.mended, s.reasons, s.notes
      FROM trial r
      CROSS JOIN tray t ON t.trial = r.id
      CROSS JOIN photo p ON p.tray = t.id
      CROSS JOIN score s ON s.photo = p.id
     WHERE r.name = :trial AND p.left_out_at IS NULL AND p.refusal IS NULL AND s.sure = 1
       AND (:day IS NULL OR julianday(date(p.taken_at)) - julianday(date(t.sown_at)) = :day)
     ORDER BY p.taken_at, p.id, s.id
"""
LEFT_OUT = """
    SELECT DISTINCT t.id AS tray
      FROM trial r
      CROSS JOIN tray t ON t.trial = r.id
      CROSS JOIN photo p ON p.tray = t.id
     WHERE r.name = :trial AND p.left_out_at IS NOT NULL AND p.refusal IS NULL AND p.needs_corners = 0
       AND julianday(date(p.taken_at)) - julianday(date(t.sown_at)) = :day
"""
SUSPECTS_OF_TRIAL = """
    SELECT t.id AS tray, p.id AS photo, p.taken_at, s.method, u.area_cm2, u.said, u.confidence, u.closed_at
      FROM trial r
      CROSS JOIN tray t ON t.trial = r.id
      CROSS JOIN photo p ON p.tray = t.id
      CROSS JOIN score s ON s.photo = p.id
      CROSS JOIN suspect u ON u.score = s.id
     WHERE r.name = :trial AND p.left_out_at IS NULL
"""
MOLD_TAKEN_OUT = f"""
    SELECT t.id AS tray, e.at
      FROM trial r
      CROSS JOIN tray t ON t.trial = r.id
      CROSS JOIN event e ON e.tray = t.id AND e.kind = '{EventKind.MOLD_OUT}'
     WHERE r.name = :trial
"""
FRESH_MASS = f"""
    SELECT t.id AS tray, sum(g.value) AS grams
      FROM trial r
      CROSS JOIN tray t ON t.trial = r.id
      CROSS JOIN reading g ON g.tray = t.id AND g.kind = '{ReadingKind.FRESH_MASS}'
     WHERE r.name = :trial
     GROUP BY t.id
"""  # a tray may be cut twice
EYE_SCORES = """
    SELECT e.tray, e.photo, e.rater, e.value, e.blind, e.given_at, e.round, e.place,
           CASE WHEN p.id IS NULL THEN e.tray WHEN p.left_out_at IS NULL THEN p.tray END AS shows
      FROM trial r
      CROSS JOIN tray t ON t.trial = r.id
      CROSS JOIN eye_score e ON e.tray = t.id
      LEFT JOIN photo p ON p.id = e.photo
     WHERE r.name = :trial
     ORDER BY e.given_at, e.id
"""
EYE_ROUNDS = """
    SELECT k.id, r.name AS trial, k.rater, k.seed, k.body, k.begun_at
      FROM eye_round k
      JOIN trial r ON r.id = k.trial
     WHERE r.name = :trial
     ORDER BY k.id
"""
EYE_SCORE_BY = "SELECT value FROM eye_score WHERE tray = :tray AND rater = :rater ORDER BY id LIMIT 1"
EYE_SCORE_AT = "SELECT id FROM eye_score WHERE round = :round AND place = :place"


@dataclass(frozen=True, slots=True, kw_only=True)
class TrialSaid:
    """The trusted medium and the margin of a trial; None where nobody has said."""

    trusted: str | None = None
    margin_points: float | None = None  # of the canopy score
    margin_set_at: datetime | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class PhotoNumbers:
    """What one version of the method says of one photo; shares in %."""

    tray_id: TrayId
    photo_id: PhotoId
    taken_at: datetime
    score_id: int
    method: str
    coverage: float | None
    uniformity: float | None
    green: float | None
    pale: float | None
    red: float | None
    bed_share: float | None  # % of the growing bed; None also where it was scored before that was measured
    bed_uniformity: float | None
    reasons: Mapping[str, Reason | str]
    mended: bool = False  # a person painted its canopy
    doubts: tuple[Reason, ...] = ()  # why another photo would be better; none once a person painted

    def replaces(self, earlier: "PhotoNumbers | None") -> bool:
        """Whether it gives the tray's number of a day in place of an earlier photo of that day.

        The last one does, unless it is in doubt and the earlier one is not.
        """
        return earlier is None or bool(earlier.doubts) or not self.doubts

    @property
    def coloured(self) -> float | None:
        """Share of the canopy that is green or red, not pale, %; None without canopy."""
        parts = (self.green, self.red, self.pale)
        if any(part is None for part in parts):
            return None
        canopy = sum(part or 0.0 for part in parts)
        return None if canopy <= 0 else 100 * ((self.green or 0.0) + (self.red or 0.0)) / canopy


@dataclass(frozen=True, slots=True, kw_only=True)
class SuspectWord:
    """A suspect and what was said of it; or mold that a person took out, of which there is no photo."""

    tray_id: TrayId
    photo_id: PhotoId | None
    taken_at: datetime
    method: str
    area_cm2: float | None
    is_mold: bool  # a person said so
    is_open: bool
    confidence: float


@dataclass(frozen=True, slots=True, kw_only=True)
class EyeGiven:
    """One score by eye, 0-100."""

    tray_id: TrayId
    photo_id: PhotoId | None
    shows: TrayId | None  # the tray of the photo by what is known today; None where the photo is left out
    rater: str
    value: float
    blind: bool
    given_at: datetime
    round_id: int | None
    place: int | None  # in the order of its round, from 1


def trial_said_of(row: Row) -> TrialSaid:
    """What a trial has without a plan."""
    at = row["margin_set_at"]
    return TrialSaid(
        trusted=row["trusted"],
        margin_points=row["margin_points"],
        margin_set_at=None if at is None else datetime.fromisoformat(at),
    )


def photo_numbers_of(row: Row) -> PhotoNumbers:
    """The numbers of one score."""
    reasons = json.loads(row["reasons"]) if row["coverage"] is None or row["uniformity"] is None else {}
    return PhotoNumbers(
        tray_id=TrayId(row["tray"]),
        photo_id=PhotoId(row["photo"]),
        taken_at=datetime.fromisoformat(row["taken_at"]),
        score_id=row["score"],
        method=row["method"],
        coverage=row["coverage"],
        uniformity=row["uniformity"],
        green=row["green"],
        pale=row["pale"],
        red=row["red"],
        bed_share=row["bed_share"],
        bed_uniformity=row["bed_uniformity"],
        reasons={name: reason_of(reason) or "" for name, reason in reasons.items()},
        mended=bool(row["mended"]),
        doubts=doubts_of(row["notes"], row["mended"]),
    )


def suspect_word_of(row: Row) -> SuspectWord:
    """A suspect."""
    return SuspectWord(
        tray_id=TrayId(row["tray"]),
        photo_id=PhotoId(row["photo"]),
        taken_at=datetime.fromisoformat(row["taken_at"]),
        method=row["method"],
        area_cm2=row["area_cm2"],
        is_mold=row["said"] == "mold",
        is_open=row["said"] is None and row["closed_at"] is None,
        confidence=row["confidence"],
    )


def taken_out_of(row: Row) -> SuspectWord:
    """Mold that a person found and took out: said, and never measured."""
    return SuspectWord(
        tray_id=TrayId(row["tray"]),
        photo_id=None,
        taken_at=datetime.fromisoformat(row["at"]),
        method="",
        area_cm2=None,
        is_mold=True,
        is_open=False,
        confidence=1.0,
    )


def eye_given_of(row: Row) -> EyeGiven:
    """A score by eye."""
    return EyeGiven(
        tray_id=TrayId(row["tray"]),
        photo_id=None if row["photo"] is None else PhotoId(row["photo"]),
        shows=None if row["shows"] is None else TrayId(row["shows"]),
        rater=row["rater"],
        value=row["value"],
        blind=bool(row["blind"]),
        given_at=datetime.fromisoformat(row["given_at"]),
        round_id=row["round"],
        place=row["place"],
    )


def masses_of(rows: Iterable[Row]) -> dict[TrayId, float]:
    """Grams by tray."""
    return {TrayId(row["tray"]): row["grams"] for row in rows}
