"""Drying: weights over hours -> drying curve, and when so much water will be left.

In    hours and water in g; weights of a tray with their times
Out   `Drying` (one fitted curve), an hour with its interval; the stretches between waterings
Not   what a dry weight is (`water.py`), the look at a tray that gets dry (`looklist/thirst.py`), heat

Steady       m0 - r t                                   the surface stays wet, the air sets the pace
Exponential  m0 exp(-k t)                               the medium sets the pace
Two stages   steady at r down to m_c, then m_c exp(-(r/m_c)(t - t_c)): the rate does not jump
Textbooks of drying call them constant and falling rate (from memory). Shoots, day and night change the pace:
all three hold for the hours after one watering only, and are fitted anew after the next.
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import datetime
from enum import StrEnum
from typing import Any

from data.statistics.curve import Fit, fit_curve
from data.statistics.estimate import Estimate

__all__ = ["MOST_HOURS", "Drying", "DryingForm", "fit_drying", "hours_until", "plausible", "stretches"]

WATERED_G = 20.0  # a tray that gained that much was watered (common practice; scales and shoots gain less)
SCALE_G = 5.0  # a kitchen scale and a tray put down twice differ by that (common practice)
SAME_FIT = 2.0  # difference of Akaike's criterion that tells nothing (Burnham & Anderson 2002, from memory)
MOST_HOURS = (
    240.0  # that anything stands without water; a longer time is noise of the scale (common practice)
)
LEAST_TWO_STAGE = 5  # points for three parameters and a kink


class DryingForm(StrEnum):
    """The shape of a drying curve."""

    STEADY = "steady"
    EXPONENTIAL = "exponential"
    TWO_STAGE = "two stages"


@dataclass(frozen=True, slots=True, kw_only=True)
class Drying:
    """One fitted drying curve; hours, g of water.

    `parameters`: (m0, r) steady, (m0, k) exponential, (m0, r, m_c) in two stages; r in g/h, k per hour.
    """

    form: DryingForm
    parameters: tuple[float, ...]
    fit: Fit
    last: float  # hours of the last point: beyond it this is a forecast

    def at(self, hours: float) -> float:
        """Water in g."""
        return float(_water(self.form, hours, *self.parameters))

    def hours_until(self, water_g: float, scatter: float | None = None) -> Estimate | None:
        """Hour at which so much water is left, with its interval; None where it never comes to that.

        `scatter`: standard deviation of a weighing in g, where it is known; else the residuals tell it.
        """
        hours = _hours(self.form, water_g, *self.parameters)
        if not math.isfinite(hours):
            return None
        error = self.fit.error_of(lambda *p: _hours(self.form, water_g, *p), scatter)
        if error is None or not math.isfinite(error):
            return Estimate(value=hours)
        return Estimate.of(hours, error, self.fit.df if scatter is None else math.inf)


def fit_drying(hours: Sequence[float], water_g: Sequence[float], form: DryingForm) -> Drying | None:
    """One drying curve by least squares on the water left; None where it does not dry so.

    Raises
    ------
    ValueError
        If times and masses are not as many.
    """
    if len(hours) != len(water_g):
        raise ValueError("a mass for each time")
    if len(hours) < (LEAST_TWO_STAGE if form is DryingForm.TWO_STAGE else 2):
        return None
    if min(hours) == max(hours) or min(water_g) < 0 or max(water_g) <= 0:
        return None
    fits = [
        fit
        for begin in _begins(form, hours, water_g)
        if (fit := fit_curve(lambda t, *p: _water(form, t, *p), hours, water_g, begin)) is not None
        and _holds(form, fit.parameters, min(hours), max(hours))
    ]
    if not fits:
        return None
    best = min(fits, key=lambda fit: fit.rss)
    return Drying(form=form, parameters=best.parameters, fit=best, last=max(hours))


def _begins(form: DryingForm, hours: Sequence[float], water_g: Sequence[float]) -> list[tuple[float, ...]]:
    order = sorted(range(len(hours)), key=lambda at: hours[at])
    one, two = order[0], order[-1]
    rate = max((water_g[one] - water_g[two]) / (hours[two] - hours[one]), 1e-6)
    first = water_g[one] + rate * hours[one]
    if form is DryingForm.STEADY:
        return [(first, rate)]
    if form is DryingForm.EXPONENTIAL:
        pace = math.log(max(water_g[one], 1e-3) / max(water_g[two], 1e-3)) / (hours[two] - hours[one])
        return [(max(water_g), max(pace, 1e-6))]
    low, high = min(water_g), max(water_g)
    return [(first, 1.3 * rate, low + share * (high - low)) for share in (0.25, 0.5, 0.75)]


def _holds(form: DryingForm, parameters: Sequence[float], first: float, last: float) -> bool:
    """Whether it is a drying curve at all; two stages must both be seen, or it is one of the others."""
    if not all(one > 0 for one in parameters):
        return False
    if form is not DryingForm.TWO_STAGE:
        return True
    begin, rate, threshold = parameters
    return threshold < begin and first < (begin - threshold) / rate < last


def _water(form: DryingForm, hours: Any, *parameters: float) -> Any:
    import numpy as np

    t = np.asarray(hours, float)
    first, pace, *rest = parameters
    if form is DryingForm.STEADY:
        return first - pace * t
    with np.errstate(over="ignore", under="ignore", divide="ignore", invalid="ignore"):
        if form is DryingForm.EXPONENTIAL:
            return first * np.exp(-pace * t)
        threshold = max(rest[0], 1e-9)
        kink = (first - threshold) / pace
        falling = threshold * np.exp(-(pace / threshold) * np.maximum(t - kink, 0.0))
        return np.where(t <= kink, first - pace * t, falling)


def _hours(form: DryingForm, water_g: float, *parameters: float) -> float:
    """When so much is left; NaN where never."""
    first, pace, *rest = parameters
    if pace <= 0 or (water_g <= 0 and form is not DryingForm.STEADY):
        return math.nan
    if form is DryingForm.STEADY or (rest and water_g >= rest[0]):
        return (first - water_g) / pace
    if form is DryingForm.EXPONENTIAL:
        return math.log(first / water_g) / pace if first > 0 else math.nan
    threshold = rest[0]
    return (first - threshold) / pace + threshold / pace * math.log(threshold / water_g)


# --- more than one curve may hold


def plausible(hours: Sequence[float], water_g: Sequence[float], scatter: float = SCALE_G) -> list[Drying]:
    """The curves that the weighings do not tell apart, best first, the steady one before an equal one.

    By Akaike's criterion with the known scatter of a weighing: two weighings leave steady and exponential.
    """
    found = [one for form in DryingForm if (one := fit_drying(hours, water_g, form)) is not None]
    if not found:
        return []
    free = [one.fit.rss / one.fit.df for one in found if one.fit.df > 0]  # larger than a scale's: it counts
    variance = max([scatter**2, *([min(free)] if free else [])])
    criterion = {id(one): one.fit.rss / variance + 2 * len(one.parameters) for one in found}
    best = min(criterion.values())
    good = [one for one in found if criterion[id(one)] <= best + SAME_FIT]
    return sorted(good, key=lambda one: criterion[id(one)])


def hours_until(
    hours: Sequence[float], water_g: Sequence[float], left_g: float, scatter: float = SCALE_G
) -> Estimate | None:
    """Hour at which `left_g` of water is left, by the best curve; the interval spans all plausible ones.

    A forecast from the steady stage counts with its end as well, as early as the weighings allow it.
    """
    times = []
    for one in plausible(hours, water_g, scatter):
        enough = one.fit.df > 0 and (one.fit.rss / one.fit.df) ** 0.5 > scatter
        if (found := one.hours_until(left_g, None if enough else scatter)) is not None:
            times.append(
                found if one.form is not DryingForm.STEADY else _slowing(one, found, hours, left_g, scatter)
            )
    if not times:
        return None
    times = [one for one in times if _tells(one)] or times
    lows = [one.low for one in times if one.low is not None]
    highs = [one.high for one in times if one.high is not None]
    if len(lows) < len(times):
        return Estimate(value=times[0].value)
    return Estimate(value=times[0].value, low=min(lows), high=max(highs))


def _tells(hour: Estimate) -> bool:
    """Whether a curve tells the hour at all: two stages of which the second was hardly weighed do not."""
    return hour.low is not None and hour.high is not None and hour.high - hour.low <= MOST_HOURS


def _slowing(
    steady: Drying, found: Estimate, hours: Sequence[float], left_g: float, scatter: float
) -> Estimate:
    """The same hour; its upper end moved out to where it would be if the steady stage ended unnoticed.

    That is between the last two weighings, so late that the last one hardly tells: within two of its scatter.
    """
    if found.high is None or left_g <= 0 or found.value <= steady.last:
        return found
    begin, rate = steady.parameters
    before, last = sorted(set(hours))[-2:]
    hardly = 2 * max(scatter, (steady.fit.rss / max(steady.fit.df, 1)) ** 0.5)

    def noticed(kink: float) -> float:
        return float(_water(DryingForm.TWO_STAGE, last, begin, rate, begin - rate * kink)) - steady.at(last)

    early, late = before, last
    for _ in range(40):
        middle = (early + late) / 2
        early, late = (middle, late) if noticed(middle) > hardly else (early, middle)
    slowed = _hours(DryingForm.TWO_STAGE, left_g, begin, rate, begin - rate * early)
    return replace(found, high=max(found.high, slowed + found.high - found.value))


def stretches(weights: Sequence[tuple[datetime, float]]) -> list[list[tuple[datetime, float]]]:
    """The (time, g) of a tray in stretches without watering, oldest first."""
    found: list[list[tuple[datetime, float]]] = []
    for at, grams in sorted(weights):
        if not found or grams - found[-1][-1][1] >= WATERED_G:
            found.append([])
        found[-1].append((at, grams))
    return found
