"""Verdict reading: what the place Verdict shows of one trial, read from the book, no Qt.

In    a book, the name of a trial
Out   `VerdictReading`: verdicts by crop and measure, growth by medium, limits and weights, rounds by eye
Not   the state of the window (`view.py`), showing it (`verdict/screen.py`)
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from data.blind import agreement_of
from data.cancel import CancelToken
from data.chapters.comparable import comparable
from data.chapters.trialbook import EyeRound
from data.desirability import USUAL, ScoreRule, Seen, kept_rule
from data.materials.noted import Noted, read_noted
from data.numbers import PhotoId, TrayId
from data.report.mediumgrowth import GrowthLine, growth_by_treatment
from data.sentence import Sentence
from data.tables.trialrows import PhotoNumbers
from data.trial import KeptPlan, MeasureKind
from data.verdict.blindwords import eye_words, whom_to_trust
from data.verdict.comparedday import ComparedDay, scorings_of
from data.verdict.countedof import CountedOf, seen_on
from data.verdict.verdicts import CropVerdict, verdicts

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["EyeRoundReading", "TraySeen", "VerdictReading", "read_verdict"]


@dataclass(frozen=True, slots=True, kw_only=True)
class EyeRoundReading:
    """A round of scoring by eye: how far it is, and what it says so far."""

    round: EyeRound
    crop: str
    given: Mapping[int, float]  # score by place, from 1
    words: tuple[Sentence, ...]
    trust: Sentence

    @property
    def is_over(self) -> bool:
        """Whether every picture has its score."""
        return len(self.given) >= len(self.round.showings)


@dataclass(frozen=True, slots=True, kw_only=True)
class TraySeen:
    """One tray on the day that is read, for trying limits and weights."""

    code: str
    treatment: str
    seen: Seen


NOTHING_NOTED = Noted()


@dataclass(frozen=True, slots=True, kw_only=True)
class VerdictReading:
    """What was read at one moment."""

    trials: tuple[str, ...] = ()
    trial: str = ""  # the one that was read
    found: tuple[CropVerdict, ...] = ()
    growth: Mapping[str, tuple[GrowthLine, ...]] = field(default_factory=dict)  # by crop
    photos: Mapping[str, tuple[tuple[TrayId, PhotoId], ...]] = field(
        default_factory=dict
    )  # of the day, by crop
    seen: Mapping[str, tuple["TraySeen", ...]] = field(default_factory=dict)
    """What the photos of that day show, by crop."""
    rounds: tuple[EyeRoundReading, ...] = ()  # oldest first
    kept: KeptPlan | None = None
    rule: ScoreRule = USUAL
    noted: Noted = NOTHING_NOTED  # what else tells them apart, medium against the trusted one

    @property
    def crops(self) -> tuple[str, ...]:
        """In the order in which they come."""
        return tuple(dict.fromkeys(one.crop for one in self.found))

    def kinds(self, crop: str) -> tuple[MeasureKind, ...]:
        """Measures that a crop has."""
        return tuple(one.kind for one in self.found if one.crop == crop)

    def verdict(self, crop: str, kind: MeasureKind) -> CropVerdict | None:
        """One verdict, if there is one."""
        return next((one for one in self.found if (one.crop, one.kind) == (crop, kind)), None)

    def last_round(self, crop: str) -> EyeRoundReading | None:
        """The newest round of a crop."""
        return next((one for one in reversed(self.rounds) if one.crop == crop), None)


def read_verdict(book: "Book", trial: str = "", cancel: CancelToken | None = None) -> VerdictReading:
    """Read a trial; without a name, or one that is gone, the newest that has trays, else the newest.

    Raises
    ------
    Cancelled
        If it was asked to stop.
    """
    stop = cancel or CancelToken()
    names = book.trials()
    if not names:
        return VerdictReading()
    if trial not in names:
        trial = next((name for name in reversed(names) if book.trial_trays(name)), names[-1])
    found = verdicts(book, trial, cancel=stop)
    stop.check()
    photos = book.photo_numbers(trial)
    plans = book.plans(trial)
    return VerdictReading(
        trials=names,
        trial=trial,
        found=found,
        growth=_growth(found, photos),
        photos={one.crop: _of_day(one, photos) for one in found if one.kind is MeasureKind.SCORE},
        seen={one.crop: _seen(one, photos) for one in found if one.kind is MeasureKind.SCORE},
        rounds=_rounds(book, trial, found),
        kept=plans[-1] if plans else None,
        rule=_rule(plans[-1] if plans else None),
        noted=read_noted(book, trial, cancel=stop),
    )


def _rule(kept: KeptPlan | None) -> ScoreRule:
    return USUAL if kept is None else kept_rule(kept.plan.score) or USUAL


def _growth(
    found: Sequence[CropVerdict], photos: Sequence[PhotoNumbers]
) -> dict[str, tuple[GrowthLine, ...]]:
    lines = {}
    for one in found:
        if one.kind is MeasureKind.SCORE:
            mine = [photo for photo in photos if photo.tray_id in one.treatments]
            method = one.method or _method(mine)
            trays = [number.tray for number in one.numbers]
            lines[one.crop] = growth_by_treatment(trays, one.treatments, mine, method)
    return lines


def _method(photos: Sequence[PhotoNumbers]) -> str | None:
    shown, trays = {photo.photo_id for photo in photos}, {photo.tray_id for photo in photos}
    return comparable(scorings_of(photos), len(shown), len(trays)).method


def _of_day(found: CropVerdict, photos: Sequence[PhotoNumbers]) -> tuple[tuple[TrayId, PhotoId], ...]:
    """The photo of each tray that gives its number on the day that is read."""
    trays = {number.tray.id: number.tray for number in found.numbers}
    of_day = tuple(
        photo
        for photo in photos
        if photo.tray_id in trays and trays[photo.tray_id].day(photo.taken_at.date()) == found.on_day
    )
    counting = ComparedDay(photos=of_day, method=found.method).by_tray
    return tuple((tray, photo.photo_id) for tray, photo in counting.items())


def _seen(found: CropVerdict, photos: Sequence[PhotoNumbers]) -> tuple[TraySeen, ...]:
    """Trays in order; parts that weigh nothing by now are there too."""
    of_day = dict(_of_day(found, photos))
    numbers = {photo.photo_id: photo for photo in photos if photo.method == found.method}
    told = []
    for number in found.numbers:
        photo = numbers.get(of_day.get(number.tray.id, PhotoId(-1)))
        if photo is None or number.score is None:
            continue
        seen = seen_on(
            photo,
            found.counted or CountedOf.INNER,
            mold_cm2=number.score.mold_cm2,
            open_suspects=number.score.open_suspects,
        )
        treatment = found.treatments[number.tray.id]
        told.append(TraySeen(code=number.tray.code, treatment=treatment, seen=seen))
    return tuple(told)


def _rounds(book: "Book", trial: str, found: Sequence[CropVerdict]) -> tuple[EyeRoundReading, ...]:
    crop_of = {number.tray.id: one.crop for one in found for number in one.numbers}
    by_photo = {
        number.tray.id: number.value
        for one in found
        if one.kind is MeasureKind.SCORE
        for number in one.numbers
        if number.value is not None
    }
    given: dict[int, dict[int, float]] = {}
    for score in book.eye_scores(trial):
        if score.round_id is not None and score.place is not None:
            given.setdefault(score.round_id, {})[score.place] = score.value
    read = []
    for one in book.eye_rounds(trial):
        crop = next((crop_of[s.tray_id] for s in one.showings if s.tray_id in crop_of), None)
        if crop is None:
            continue
        first, again = book.scores_of_round(one)
        agreement = agreement_of(first, again, by_photo)
        read.append(
            EyeRoundReading(
                round=one,
                crop=crop,
                given=given.get(one.id, {}),
                words=eye_words(agreement)[:-1],
                trust=whom_to_trust(agreement),
            )
        )
    return tuple(read)
