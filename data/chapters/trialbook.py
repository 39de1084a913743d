"""Trial book: what a verdict rests on, and rounds of scoring by eye.

In    the name of a trial; a person's scores by eye
Out   numbers of its photos, suspects, masses and eye scores; rounds, drawn and kept
Not   plans and places (`planbook.py`), the verdict (`verdict/verdicts.py`)
"""

import json
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import NewType

from data.blind import Showing, draw_round
from data.chapters.changes import Changes
from data.numbers import PhotoId, TrayId
from data.tables import trialrows
from data.tables.colourrows import GREENS_OF_TRIAL, CanopyGreen, canopy_green_of
from data.tables.journal import Recorder
from data.tables.rows import time_text
from data.tables.trialrows import (
    EyeGiven,
    PhotoNumbers,
    SuspectWord,
    TrialSaid,
    eye_given_of,
    masses_of,
    photo_numbers_of,
    suspect_word_of,
    taken_out_of,
    trial_said_of,
)

__all__ = ["EyeRound", "EyeRoundId", "TrialBook", "showings_of"]

EyeRoundId = NewType("EyeRoundId", int)
LOWEST, HIGHEST = 0.0, 100.0  # of a score by eye


@dataclass(frozen=True, slots=True, kw_only=True)
class EyeRound:
    """A drawn round; `showings` in order."""

    id: EyeRoundId
    trial: str
    rater: str
    seed: int
    begun_at: datetime
    showings: tuple[Showing, ...]


class TrialBook(Changes):
    """The numbers of a trial."""

    def photo_numbers(self, trial: str, day: int | None = None) -> tuple[PhotoNumbers, ...]:
        """Sure scores of all versions of the photos of a trial's trays, by time.

        Parameters
        ----------
        day : of each tray since its sowing; None gives all days.
        """
        return tuple(map(photo_numbers_of, self._rows(trialrows.PHOTO_NUMBERS, trial=trial, day=day)))

    def canopy_greens(self, trial: str, day: int) -> dict[int, CanopyGreen]:
        """By score: how green canopies are on that day since sowing, where a patch set the colours right."""
        rows = self._rows(GREENS_OF_TRIAL, trial=trial, day=day)
        return {row["score"]: canopy_green_of(row) for row in rows}

    def left_out_on(self, trial: str, day: int) -> frozenset[TrayId]:
        """Trays of which a person left out a photo of that day since their sowing that could be used."""
        return frozenset(TrayId(row["tray"]) for row in self._rows(trialrows.LEFT_OUT, trial=trial, day=day))

    def suspect_words(self, trial: str) -> tuple[SuspectWord, ...]:
        """All suspects on photos of a trial's trays, and mold that was noted as taken out of them."""
        seen = map(suspect_word_of, self._rows(trialrows.SUSPECTS_OF_TRIAL, trial=trial))
        return (*seen, *map(taken_out_of, self._rows(trialrows.MOLD_TAKEN_OUT, trial=trial)))

    def fresh_masses(self, trial: str) -> dict[TrayId, float]:
        """Grams cut from each tray that was weighed."""
        return masses_of(self._rows(trialrows.FRESH_MASS, trial=trial))

    def eye_scores(self, trial: str) -> tuple[EyeGiven, ...]:
        """Scores by eye of a trial's trays, by time."""
        return tuple(map(eye_given_of, self._rows(trialrows.EYE_SCORES, trial=trial)))

    def trial_said(self, trial: str) -> TrialSaid:
        """Trusted medium and margin as the trial has them without a plan."""
        row = self._row(trialrows.TRIAL, trial=trial)
        return TrialSaid() if row is None else trial_said_of(row)

    # --- rounds of scoring by eye

    def eye_rounds(self, trial: str) -> tuple[EyeRound, ...]:
        """All rounds of a trial, oldest first."""
        return tuple(
            EyeRound(
                id=EyeRoundId(row["id"]),
                trial=row["trial"],
                rater=row["rater"],
                seed=row["seed"],
                begun_at=datetime.fromisoformat(row["begun_at"]),
                showings=showings_of(row["body"]),
            )
            for row in self._rows(trialrows.EYE_ROUNDS, trial=trial)
        )

    def begin_eye_round(
        self, trial: str, rater: str, photos: Sequence[tuple[TrayId, PhotoId]], seed: int
    ) -> EyeRound:
        """Draw a round and keep it; raises `KeyError` where there is no such trial."""
        row = self._row(trialrows.TRIAL, trial=trial)
        if row is None:
            raise KeyError(trial)
        showings = draw_round(photos, seed)
        values = {
            "trial": row["id"],
            "rater": rater.strip(),
            "seed": seed,
            "body": json.dumps([[s.tray_id, s.photo_id, int(s.again)] for s in showings]),
            "begun_at": time_text(self.now()),
        }

        def change(recorder: Recorder) -> None:
            recorder.insert("eye_round", values)

        self._change(f"round of scoring {trial} by eye", change)
        return self.eye_rounds(trial)[-1]

    def give_eye_score(self, eye_round: EyeRound, place: int, value: float) -> None:
        """Keep what the eye says of the photo at a place, 0-100; a second word replaces the first."""
        if not LOWEST <= value <= HIGHEST:
            raise ValueError(f"a score by eye lies between 0 and 100; got {value}")
        showing = eye_round.showings[place - 1]
        values = {
            "tray": showing.tray_id,
            "photo": showing.photo_id,
            "rater": eye_round.rater,
            "value": float(value),
            "blind": 1,
            "given_at": time_text(self.now()),
            "round": eye_round.id,
            "place": place,
        }
        row = self._row(trialrows.EYE_SCORE_AT, round=eye_round.id, place=place)

        def change(recorder: Recorder) -> None:
            if row is None:
                recorder.insert("eye_score", values)
            else:
                recorder.update("eye_score", row["id"], values)

        self._change(f"score by eye {place} of {len(eye_round.showings)}", change)

    def scores_of_round(self, eye_round: EyeRound) -> tuple[dict[TrayId, float], dict[TrayId, float]]:
        """By tray what the eye said at the first showing, and at the second; of photos that still count."""
        first: dict[TrayId, float] = {}
        again: dict[TrayId, float] = {}
        for given in self.eye_scores(eye_round.trial):
            if given.round_id == eye_round.id and given.place is not None and given.shows is not None:
                showing = eye_round.showings[given.place - 1]
                (again if showing.again else first)[given.shows] = given.value
        return first, again


def showings_of(body: str) -> tuple[Showing, ...]:
    """The order of a round as the book keeps it."""
    return tuple(
        Showing(place=place, tray_id=TrayId(tray), photo_id=PhotoId(photo), again=bool(again))
        for place, (tray, photo, again) in enumerate(json.loads(body), 1)
    )
