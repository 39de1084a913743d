"""Outlook: when a tray will be below its dry weight, told from its weighings since the last watering.

In    weights of one tray with their times, its `DryWeight`, when it was watered, now
Out   `Outlook`: a time with its interval, in two sentences; what cannot be told is None, and they say why
Not   the curves (`drying.py`), the dry weight (`water.py`), whether to water (the grower)

Shoots hold water too and grow heavier: late in its days a tray is drier than its weight says.
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

from data.entry.units import Quantity, UnitSystem, say
from data.medium.drying import SCALE_G, Drying, hours_until, plausible
from data.sentence import Sentence
from data.statistics.estimate import Estimate
from data.water import DryWeight

__all__ = ["Outlook", "outlook", "since_watering"]

WATERED_G = 20.0  # a tray that gained that much was watered (common practice; scales and shoots gain less)
LEAST_SPAN = timedelta(hours=2)  # between the first and the last weighing, or the loss drowns in the scale's
FORESIGHT = timedelta(hours=72)  # further ahead shoots, light and weather change the pace
ROUNDED = timedelta(minutes=10)
EVENING = 18  # o'clock

Weighing = tuple[datetime, float]


@dataclass(frozen=True, slots=True, kw_only=True)
class Outlook:
    """What the weighings tell of the next days. `sureness` is a sentence of its own beside `sentence`."""

    is_dry: bool | None  # at the last weighing; None where there is none since the last watering
    falls_at: datetime | None  # below its dry weight
    earliest: datetime | None
    latest: datetime | None
    loss_g_per_h: float | None
    weighings: int  # since the last watering
    sentence: Sentence
    sureness: Sentence | None = None


def outlook(
    weights: Sequence[Weighing],
    dry: DryWeight,
    now: datetime,
    waterings: Sequence[datetime] = (),
    pattern: Drying | None = None,
    system: UnitSystem = UnitSystem.METRIC,
) -> Outlook:
    """When a tray will be below its dry weight.

    Parameters
    ----------
    weights
        (time, g) of the whole tray, in any order.
    pattern
        A drying curve of the same medium, in g of water, used where the tray's own weighings are too few.
    """
    if dry.grams is None or dry.dry_g is None:
        return _untold(dry.sentence)
    stretches = since_watering(weights, waterings)
    last = [one for one in stretches[-1] if one[0] <= now]
    if not last:
        return _untold(Sentence("It was not weighed since it was last watered: weigh it."))
    if last[-1][1] <= dry.grams:
        return _dry_now(last, dry.grams, system)
    begin = last[0][0]
    hours = [_hours(at - begin) for at, _ in last]
    water = [grams - dry.dry_g for _, grams in last]
    left = dry.grams - dry.dry_g
    if last[-1][0] - begin >= LEAST_SPAN and water[0] - water[-1] > SCALE_G:
        curves = plausible(hours, water)
        found = hours_until(hours, water, left)
        earlier = False
    else:
        curves = _earlier(stretches[:-1], dry.dry_g) or ([pattern] if pattern is not None else [])
        found = None if not curves else _along(curves[0], water[-1], left, hours[-1])
        earlier = True
    if not curves or found is None:
        return _untold(Sentence("One more weighing, two hours or more later, tells how fast it dries."))
    loss = curves[0].rate_at(_place(curves[0], water[-1]))
    return _told(last, dry.grams, now, begin, found, loss, system, earlier=earlier)


def since_watering(weights: Sequence[Weighing], waterings: Sequence[datetime]) -> list[list[Weighing]]:
    """The weighings in stretches without watering, oldest first; the last may be empty."""
    stretches: list[list[Weighing]] = [[]]
    noted = sorted(waterings)
    for at, grams in sorted(weights):
        before = stretches[-1][-1] if stretches[-1] else None
        if before is not None:
            gained = grams - before[1] >= WATERED_G
            if gained or any(before[0] < one <= at for one in noted):
                stretches.append([])
        stretches[-1].append((at, grams))
    newest = stretches[-1][-1][0] if stretches[-1] else None
    if newest is not None and noted and noted[-1] > newest:
        stretches.append([])
    return stretches


def _earlier(stretches: Sequence[Sequence[Weighing]], dry_g: float) -> list[Drying]:
    """Curves of the newest earlier stretch that tells any."""
    for stretch in reversed(stretches):
        if len(stretch) > 1 and stretch[-1][0] - stretch[0][0] >= LEAST_SPAN:
            hours = [_hours(at - stretch[0][0]) for at, _ in stretch]
            curves = plausible(hours, [grams - dry_g for _, grams in stretch])
            if curves:
                return curves
    return []


def _place(curve: Drying, water_g: float) -> float:
    """The hour at which a curve has so much water."""
    found = curve.hours_until(water_g)
    return 0.0 if found is None else found.value


def _along(curve: Drying, from_g: float, to_g: float, begin: float) -> Estimate | None:
    """Hours after `begin` on a curve of another stretch, from one amount of water to a smaller one."""
    one, two = curve.hours_until(from_g), curve.hours_until(to_g)
    if one is None or two is None:
        return None
    return Estimate(value=begin + two.value - one.value)


def _told(
    last: Sequence[Weighing],
    dry_g: float,
    now: datetime,
    begin: datetime,
    found: Estimate,
    loss: float,
    system: UnitSystem,
    *,
    earlier: bool,
) -> Outlook:
    falls, earliest, latest = (_after(begin, one) for one in (found.value, found.low, found.high))
    grams = say(dry_g, Quantity.MASS, system)
    sureness: Sentence | None = None
    if falls is None or falls > now + FORESIGHT:
        sentence = Sentence("It stays above its dry weight of {dry} for three days and more.", dry=grams)
        falls, earliest, latest = None, None, None
    else:
        sentence = _when(falls, now, grams)
        sureness = _how_sure(falls, earliest, latest, earlier=earlier)
    return Outlook(
        is_dry=False,
        falls_at=falls,
        earliest=earliest,
        latest=latest,
        loss_g_per_h=loss,
        weighings=len(last),
        sentence=sentence,
        sureness=sureness,
    )


def _how_sure(
    falls: datetime, earliest: datetime | None, latest: datetime | None, *, earlier: bool
) -> Sentence:
    if earlier:
        return Sentence("That is how it dried before; another weighing tells more.")
    if earliest is None or latest is None:
        return Sentence("How sure that is takes a third weighing.")
    reach = max(_hours(latest - falls), _hours(falls - earliest))
    return Sentence("Give or take {hours:.0f} h.", hours=max(1, math.ceil(reach - 0.05)))


def _when(falls: datetime, now: datetime, dry: str) -> Sentence:
    days = (falls.date() - now.date()).days
    if falls <= now:
        return Sentence("It has probably been below its dry weight of {dry} for hours: weigh it.", dry=dry)
    if days == 0 and falls.hour < EVENING:
        return Sentence(
            "It will be below its dry weight of {dry} today at {when:%H:%M}.", dry=dry, when=falls
        )
    if days == 0:
        return Sentence(
            "It will be below its dry weight of {dry} tonight at {when:%H:%M}.", dry=dry, when=falls
        )
    if days == 1:
        return Sentence(
            "It will be below its dry weight of {dry} tomorrow at {when:%H:%M}.", dry=dry, when=falls
        )
    return Sentence("It will be below its dry weight of {dry} in {days} days.", dry=dry, days=days)


def _dry_now(last: Sequence[Weighing], dry_g: float, system: UnitSystem) -> Outlook:
    return Outlook(
        is_dry=True,
        falls_at=None,
        earliest=None,
        latest=None,
        loss_g_per_h=None,
        weighings=len(last),
        sentence=Sentence(
            "It weighs {now}, below its dry weight of {dry}.",
            now=say(last[-1][1], Quantity.MASS, system),
            dry=say(dry_g, Quantity.MASS, system),
        ),
    )


def _untold(why: Sentence) -> Outlook:
    return Outlook(
        is_dry=None,
        falls_at=None,
        earliest=None,
        latest=None,
        loss_g_per_h=None,
        weighings=0,
        sentence=why,
    )


def _after(begin: datetime, hours: float | None) -> datetime | None:
    """A time to ten minutes; none beyond a year, where a curve has gone flat."""
    if hours is None or not -8766 < hours < 8766:
        return None
    at = begin + timedelta(hours=hours)
    midnight = at.replace(hour=0, minute=0, second=0, microsecond=0)
    return midnight + round((at - midnight) / ROUNDED) * ROUNDED


def _hours(span: timedelta) -> float:
    return span.total_seconds() / 3600
