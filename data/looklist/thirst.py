"""Thirst: the weights of a tray since it was last watered -> a look before it dries out.

In    weights with their times, times of watering, now
Out   a `Look`: drying out; nothing where the tray's dry weight cannot be told
Not   what "dry" is (`water.py`), the form of a drying curve (`medium/drying.py`): a line will do for a night

What the shoots gain hides a part of what the medium loses, so a full canopy is a little drier than its
weight says. Limits are common practice.
"""

from collections.abc import Sequence
from datetime import datetime, time, timedelta
from itertools import combinations, pairwise
from statistics import median

from data.look import Look, LookKind, Urgency, day_name
from data.records import Tray
from data.sentence import Sentence
from data.water import dry_weight

__all__ = ["look_at_thirst"]

Weights = Sequence[tuple[datetime, float]]

WETTED_G = 20.0  # a tray that gains so much was watered, whether anybody noted it or not
FRESH = timedelta(hours=36)  # older weights say nothing of today
APART_H = 4.0  # between two weights that tell a pace
RECENT = timedelta(hours=60)  # weights that tell it: warmth and canopy change, and a watering may go unnoted
EVENING = time(22)
MORNING = time(8)

FIRST = Sentence(
    "Water it from below until it is back to its full weight, and weigh it again after it drained."
)


def look_at_thirst(tray: Tray, weights: Weights, watered: Sequence[datetime], now: datetime) -> Look | None:
    """Below the dry weight, or below it by tonight or by tomorrow morning at the pace since watering."""
    known = sorted((at, g) for at, g in weights if at <= now)
    dry = dry_weight(known, sown_on=tray.sown_at.date()).grams
    if dry is None or not known:
        return None
    at, last = known[-1]
    if now - at > FRESH or any(at < one <= now for one in watered):
        return None
    if last <= dry:
        sentence = Sentence(
            "{last:.0f} g on {day} at {time}, {under:.0f} g under the weight at which it is dry "
            "({dry:.0f} g).",
            last=last, day=day_name(at.date()), time=f"{at:%H:%M}", under=dry - last, dry=dry,
        )  # fmt: skip
        return _look(tray, Urgency.NOW, at, sentence, dry - last)
    pace = _pace(known, watered)
    if pace is None or pace <= 0:
        return None
    when = at + timedelta(hours=(last - dry) / pace)
    evening = datetime.combine(now.date(), EVENING)
    morning = datetime.combine(now.date() + timedelta(days=1), MORNING)
    if when > morning:
        return None
    sentence = Sentence(
        "{last:.0f} g on {day} at {time}, {pace:.0f} g less each hour: below its dry weight of {dry:.0f} g "
        "by {when} on {then}.",
        last=last, day=day_name(at.date()), time=f"{at:%H:%M}", pace=pace, dry=dry, when=f"{when:%H:%M}",
        then=day_name(when.date()),
    )  # fmt: skip
    return _look(tray, Urgency.TODAY if when <= evening else Urgency.SOON, at, sentence, None)


def _pace(known: Weights, watered: Sequence[datetime]) -> float | None:
    """Grams lost an hour since the last watering: the median over pairs, so that no slip counts."""
    begin = max((known[-1][0] - RECENT, *watered))
    for (_, before), (at, after) in pairwise(known):
        if after >= before + WETTED_G:
            begin = max(begin, at)
    since = [(at, g) for at, g in known if at >= begin]
    paces = [
        (g - other) / hours
        for (at, g), (later, other) in combinations(since, 2)
        if (hours := (later - at) / timedelta(hours=1)) >= APART_H
    ]
    return median(paces) if paces else None


def _look(tray: Tray, urgency: Urgency, at: datetime, sentence: Sentence, size: float | None) -> Look:
    return Look(
        tray_id=tray.id,
        code=tray.code,
        what=LookKind.DRY,
        urgency=urgency,
        since=at.date(),
        sentence=sentence,
        first=FIRST,
        size=size,
    )
