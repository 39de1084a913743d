"""Tray numbers: the one number of each tray that a verdict compares.

In    trays of one crop with photos, suspects, masses or scores by eye; the day and the rule of the score
Out   `TrayNumber`s: a value, or the reason why there is none; trays lost to mold; the version of the method
Not   comparing them (`verdict`), reading the book (`chapters/trialbook.py`)

The day is fixed beforehand and never moved: a tray without a usable photo of that day has no number. Scores
of different versions of the method are never mixed (`comparedday.py` says how they are made alike).
"""

from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from enum import StrEnum
from types import MappingProxyType

from data.desirability import CanopyScore, MoldRule, ScoreRule, score_canopy
from data.entry.moldreason import says_mold
from data.numbers import TrayId
from data.records import Tray
from data.tables.trialrows import EyeGiven, PhotoNumbers, SuspectWord
from data.verdict.comparedday import ComparedDay
from data.verdict.countedof import CountedOf, seen_on

__all__ = [
    "LostToMold", "NoNumber", "TrayNumber", "canopy_numbers", "day_of_most", "ended_before", "eye_numbers",
    "is_lost",
    "lost_to_mold", "mold_areas", "yield_numbers",
]  # fmt: skip

UNKNOWN_AREA_CM2 = 1.0  # of mold whose area was not measured (no scale)
OPEN_FROM = 0.3  # confidence of a suspect that is worth a word


class NoNumber(StrEnum):
    """Why a tray has no number."""

    NO_PHOTO = "no usable photo of the day that is read"
    TO_COME = "its day is still to come"
    OTHER_METHOD = "scored by another version of the method only"
    NO_CANOPY = "its canopy could not be told"
    APART = "lost to mold, and apart as decided beforehand"
    THROWN_AWAY = "thrown away before it could be read"
    CUT_BEFORE = "cut before the day that is read"
    NOT_WEIGHED = "not weighed"
    NOT_LOOKED_AT = "not scored by eye"


@dataclass(frozen=True, slots=True, kw_only=True)
class TrayNumber:
    """One tray's number, or why it has none."""

    tray: Tray
    value: float | None
    score: CanopyScore | None = None  # with its parts
    why_none: NoNumber | None = None
    still_to_come: bool = False  # its day has not come yet
    seen: bool = False  # scored by an eye that knew its medium

    @property
    def is_moldy(self) -> bool:
        """Whether mold is in its number: of a tray without a score it is all there is."""
        return self.value == 0.0 if self.score is None else self.score.mold_cm2 > 0


@dataclass(frozen=True, slots=True, kw_only=True)
class LostToMold:
    """Trays of one treatment with mold that a person confirmed."""

    treatment: str
    lost: int
    trays: int


def mold_areas(words: Iterable[SuspectWord]) -> dict[TrayId, float]:
    """For each tray that a person called moldy the largest area, cm2."""
    areas: dict[TrayId, float] = {}
    for word in words:
        if word.is_mold:
            areas[word.tray_id] = max(areas.get(word.tray_id, 0.0), word.area_cm2 or UNKNOWN_AREA_CM2)
    return areas


def is_lost(tray: Tray, areas: Mapping[TrayId, float]) -> bool:
    """Whether mold took a tray: a person said so of a patch, or when throwing it away."""
    return tray.id in areas or (tray.ended == "thrown away" and says_mold(tray.ended_why))


def ended_before(trays: Sequence[Tray], day: int | None) -> dict[TrayId, NoNumber]:
    """Trays that were thrown away before the end of the day that is read, or cut before it began."""
    found: dict[TrayId, NoNumber] = {}
    for tray in trays:
        if day is None or tray.done_at is None:
            continue
        ended_on = tray.day(tray.done_at.date())
        if tray.ended == "thrown away" and ended_on <= day:
            found[tray.id] = NoNumber.THROWN_AWAY
        if tray.ended == "cut" and ended_on < day:
            found[tray.id] = NoNumber.CUT_BEFORE
    return found


def lost_to_mold(
    treated: Mapping[TrayId, str], trays: Sequence[Tray], areas: Mapping[TrayId, float]
) -> tuple[LostToMold, ...]:
    """Lost trays by treatment, in the order in which treatments come."""
    whole = Counter(treated[tray.id] for tray in trays)
    lost = Counter(treated[tray.id] for tray in trays if is_lost(tray, areas))
    return tuple(LostToMold(treatment=name, lost=lost[name], trays=count) for name, count in whole.items())


# --- the canopy score


def day_of_most(trays: Sequence[Tray], photos: Iterable[PhotoNumbers]) -> int | None:
    """The day since sowing on which most trays have a usable photo, the last of several; None without any.

    A photo from before its tray's sowing shows something else.
    """
    grown = {tray.id: tray for tray in trays}
    seen: dict[int, set[TrayId]] = {}
    for photo in photos:
        tray = grown.get(photo.tray_id)
        if tray is not None and (day := tray.day(photo.taken_at.date())) >= 0:
            seen.setdefault(day, set()).add(tray.id)
    return max(seen, key=lambda day: (len(seen[day]), day), default=None)


def canopy_numbers(
    trays: Sequence[Tray],
    day: ComparedDay,
    words: Sequence[SuspectWord],
    rule: ScoreRule,
    running: Mapping[TrayId, bool],
    gone: Mapping[TrayId, NoNumber] = MappingProxyType({}),
) -> tuple[TrayNumber, ...]:
    """The canopy score of each tray.

    Parameters
    ----------
    day : photos of the day that was fixed.
    running : whether a tray's day is still to come.
    gone : trays that were thrown away or cut before it, and which of the two.
    """
    areas = mold_areas(words)
    last = day.by_tray
    otherwise = {photo.tray_id for photo in day.photos}
    suspects = Counter(
        word.photo_id
        for word in words
        if word.is_open and word.method == day.method and word.confidence >= OPEN_FROM
    )
    found = []
    for tray in trays:
        photo = last.get(tray.id)
        if photo is None:
            without = _without_photo(tray, rule, areas, tray.id in otherwise, running.get(tray.id, False))
            away = without.why_none is NoNumber.NO_PHOTO and tray.id in gone
            found.append(replace(without, why_none=gone[tray.id]) if away else without)
            continue
        seen = seen_on(
            photo,
            day.counted or CountedOf.INNER,
            mold_cm2=areas.get(tray.id, UNKNOWN_AREA_CM2 if is_lost(tray, areas) else 0.0),
            open_suspects=suspects[photo.photo_id],
        )
        score = score_canopy(seen, rule)
        found.append(TrayNumber(tray=tray, value=score.score, score=score, why_none=_why_no_score(score)))
    return tuple(found)


def _why_no_score(score: CanopyScore) -> NoNumber | None:
    if score.score is not None:
        return None
    return NoNumber.APART if score.mold_cm2 > 0 else NoNumber.NO_CANOPY


def _without_photo(
    tray: Tray, rule: ScoreRule, areas: Mapping[TrayId, float], other_method: bool, to_come: bool
) -> TrayNumber:
    if is_lost(tray, areas) and tray.done_at is not None:  # thrown away before its day: a result, no gap
        if rule.mold is MoldRule.APART:
            return TrayNumber(tray=tray, value=None, why_none=NoNumber.APART)
        return TrayNumber(tray=tray, value=0.0)
    if other_method:
        return TrayNumber(tray=tray, value=None, why_none=NoNumber.OTHER_METHOD)
    why = NoNumber.TO_COME if to_come else NoNumber.NO_PHOTO
    return TrayNumber(tray=tray, value=None, why_none=why, still_to_come=to_come)


# --- yield and scores by eye


def yield_numbers(
    trays: Sequence[Tray], grams: Mapping[TrayId, float], words: Sequence[SuspectWord], rule: ScoreRule
) -> tuple[TrayNumber, ...]:
    """Fresh mass of each tray, g; a tray lost to mold yields nothing, unless it was to stand apart.

    One that was cut all the same yielded something, though nobody weighed it.
    """
    areas = mold_areas(words)
    found = []
    for tray in trays:
        value, why = grams.get(tray.id), NoNumber.NOT_WEIGHED
        gone = tray.done_at is not None and tray.ended != "cut"
        if value is None and gone and is_lost(tray, areas):
            value, why = (None, NoNumber.APART) if rule.mold is MoldRule.APART else (0.0, why)
        to_come = value is None and tray.done_at is None
        if why is NoNumber.NOT_WEIGHED and tray.ended == "thrown away":
            why = NoNumber.THROWN_AWAY
        none = why if value is None else None
        found.append(TrayNumber(tray=tray, value=value, why_none=none, still_to_come=to_come))
    return tuple(found)


def eye_numbers(trays: Sequence[Tray], given: Sequence[EyeGiven]) -> tuple[TrayNumber, ...]:
    """The mean score by eye of each tray; where there are blind ones only these count."""
    asked = {tray.id for tray in trays}
    shown = [(one.shows, one) for one in given if one.shows is not None and one.shows in asked]
    blind = any(one.blind for _, one in shown)
    scores: dict[TrayId, list[float]] = {}
    for tray_id, one in shown:
        if one.blind or not blind:
            scores.setdefault(tray_id, []).append(one.value)
    return tuple(
        TrayNumber(tray=tray, value=sum(scores[tray.id]) / len(scores[tray.id]), seen=not blind)
        if tray.id in scores
        else TrayNumber(tray=tray, value=None, why_none=_why_not_looked_at(tray))
        for tray in trays
    )


def _why_not_looked_at(tray: Tray) -> NoNumber:
    return NoNumber.THROWN_AWAY if tray.ended == "thrown away" else NoNumber.NOT_LOOKED_AT
