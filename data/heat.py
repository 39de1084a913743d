"""Heat: how warm a medium stays: what it stores, how fast it follows the shelf, how far a mat lifts it.

In    shares of volume, thickness; temperatures of a medium with their times; night temperatures
Out   heat capacities, `Cooling` with its time constant, the lift over a mat, degree hours below a floor
Not   readings and their test (`medium/benchtest.py`), evaporation (`water.py`)

C = 1.92 x_m + 2.51 x_o + 4.18 x_w MJ/(m3 K), shares of volume of minerals, organic matter, water: de Vries
(1963), Thermal properties of soils, in: Physics of Plant Environment (coefficients from memory). By area
C_A = C x thickness. A medium that is warmer than the air of its shelf falls by T = Ta + (T0 - Ta) exp(-t/tau)
with tau = C_A/U; U, the loss of both faces, is 8 to 12 W/(m2 K) in still room air (from memory). One that is
colder, just wetted from the tap, rises the same way.
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta
from itertools import pairwise
from statistics import fmean

from data.sentence import Sentence
from data.statistics.estimate import Estimate

__all__ = [
    "CAUTION", "STILL_AIR", "Cooling", "areal_capacity", "capacity", "cooling_of", "degree_hours_below",
    "lift_over_mat", "temperature_after", "time_constant",
]  # fmt: skip

CAUTION = Sentence(
    "Electric heat and water together: use a mat made for wet places, a residual-current (ground-fault) "
    "protected outlet, cables that drip away from it, and follow the maker's and local electrical rules."
)

MINERAL, ORGANIC, WATER = 1.92, 2.51, 4.18  # MJ/(m3 K)
MM = 1e-3
KJ_PER_MJ = 1e3
STILL_AIR = (8.0, 12.0)  # W/(m2 K) that both faces of a layer lose (from memory)
THERMOMETER_K = 0.3  # what two readings of a kitchen thermometer differ by (common practice)
LEAST_WARMED_K = 4.0  # over the air at first (common practice)
LEAST_ABOVE_K = 1.0  # over the air; below it the thermometer's own error decides
STEADY_FOR = timedelta(hours=3)
STEADY_K = 0.5  # spread within it that still counts as steady
LONGEST_GAP = timedelta(hours=2)  # in a night's log
LEAST_LOGGED = 0.75  # of a night's hours (common practice)

Sample = tuple[datetime, float]


@dataclass(frozen=True, slots=True, kw_only=True)
class Cooling:
    """How fast a medium follows the air; None with a sentence where that cannot be told."""

    hours: Estimate | None  # the time constant: after it 63 % of the difference are gone
    reason: Sentence | None = None


def capacity(mineral: float, organic: float, water: float) -> float:
    """Heat capacity of a volume, MJ/(m3 K), from shares 0-1; raises `ValueError` for shares above 1."""
    shares = (mineral, organic, water)
    if min(shares) < 0 or sum(shares) > 1 + 1e-9:
        raise ValueError(f"shares of a volume lie from 0 to 1 and add up to 1 at most; got {shares}")
    return MINERAL * mineral + ORGANIC * organic + WATER * water


def areal_capacity(volumetric: float, thickness_mm: float) -> float:
    """kJ/(m2 K) of a layer, from MJ/(m3 K) and mm."""
    return volumetric * thickness_mm * MM * KJ_PER_MJ


def time_constant(areal_kj: float, loss_w: float) -> float:
    """Hours, from kJ/(m2 K) and W/(m2 K)."""
    return areal_kj * KJ_PER_MJ / loss_w / 3600


def temperature_after(start_c: float, air_c: float, hours: float, constant_h: float) -> float:
    """Temperature of a medium after so many hours in air of a steady temperature."""
    return air_c + (start_c - air_c) * math.exp(-hours / constant_h)


# --- a logged or hand-read cooling


def cooling_of(samples: Sequence[Sample], air_c: float | None) -> Cooling:
    """The time constant from temperatures of the medium after the mat was switched off.

    By least squares, two readings with the thermometer's own error. An interval that holds no cooling at all
    tells nothing.
    """
    ordered = sorted(samples)
    if air_c is None:
        return _untold(Sentence("Read the air beside the tray, too: the medium falls to it."))
    if len({at for at, _ in ordered}) < len(ordered):
        return _untold(Sentence("Two temperatures bear the same time: mend one of them."))
    if len(ordered) < 2:
        return _untold(Sentence("Read the medium twice, an hour apart, with the heat mat off."))
    above = [(at, c - air_c) for at, c in ordered if c - air_c >= LEAST_ABOVE_K]
    if len(above) < 2:
        return _untold(_too_near(ordered[0][1] - air_c))
    hours = [(at - above[0][0]) / timedelta(hours=1) for at, _ in above]
    kelvin = [k for _, k in above]
    if kelvin[-1] >= kelvin[0]:
        return _untold(Sentence("It did not cool: was the heat mat still on?"))
    rate = _pace(hours, kelvin)
    if rate is None or rate.low is None or rate.low <= 0:
        return _untold(Sentence("It fell too little, or too unevenly, to tell how fast: read it for longer."))
    return Cooling(hours=rate.turned(lambda one: 1 / one))


def _too_near(first_k: float) -> Sentence:
    """Why nothing is told where the air's warmth was reached: it began too cold, or was read too late."""
    if first_k < LEAST_WARMED_K:
        return Sentence("Warm it at least 4 K above the air first: so near to it nothing can be told.")
    return Sentence(
        "It had fallen to the air's warmth before the second reading, as thin media do: warm it again, and "
        "read it after a quarter and half an hour."
    )


def _pace(hours: Sequence[float], kelvin: Sequence[float]) -> Estimate | None:
    """Shares an hour by least squares; scatter that is surely larger than the thermometer's own counts."""
    import numpy as np
    from scipy.special import chdtri

    from data.statistics.curve import fit_curve

    begin = (kelvin[0], 1 / hours[-1])
    fit = fit_curve(lambda t, start, pace: start * np.exp(-pace * t), hours, kelvin, begin)
    if fit is None:
        return None
    uneven = fit.df > 0 and fit.rss > THERMOMETER_K**2 * float(chdtri(fit.df, 0.05))
    error = fit.error_of(lambda _start, pace: pace, None if uneven else THERMOMETER_K)
    return Estimate.of(fit.parameters[1], error, fit.df if uneven else math.inf)


def _untold(why: Sentence) -> Cooling:
    return Cooling(hours=None, reason=why)


# --- over a mat, and at night


def lift_over_mat(medium: Sequence[Sample], air_c: float | None) -> tuple[float | None, Sentence | None]:
    """K above the air with the mat on, once it is steady; None and why where it is not."""
    if air_c is None:
        return None, Sentence("Read the air beside the tray as well.")
    if not medium:
        return None, Sentence("Read the medium over the heat mat after it has been on for half a day.")
    ordered = sorted(medium)
    last = [c for at, c in ordered if at >= ordered[-1][0] - STEADY_FOR]
    if len(last) > 1 and max(last) - min(last) > STEADY_K:
        return None, Sentence("It is still getting warmer: read it again in three hours.")
    return fmean(last) - air_c, None


def degree_hours_below(
    samples: Sequence[Sample], floor_c: float, begin: time = time(20), end: time = time(8)
) -> tuple[float | None, int]:
    """Degree hours below a floor, mean of the nights logged (K h a night), and how many nights.

    Straight lines between readings; a gap of more than two hours counts for nothing. A night of which too
    little was logged, as at the ends of a logger's file, is left out: it would look warm.
    """
    ordered = sorted(samples)
    nights: dict[date, float] = {}
    logged: dict[date, float] = {}
    for (at, one), (later, two) in pairwise(ordered):
        middle = at + (later - at) / 2
        if later - at > LONGEST_GAP or not (middle.time() >= begin or middle.time() < end):
            continue
        night = (middle - timedelta(hours=end.hour)).date()
        hours = (later - at) / timedelta(hours=1)
        nights[night] = nights.get(night, 0.0) + _below(one, two, floor_c) * hours
        logged[night] = logged.get(night, 0.0) + hours
    length = (24 - begin.hour + end.hour) % 24
    whole = [cold for night, cold in nights.items() if logged[night] >= LEAST_LOGGED * length]
    return (fmean(whole), len(whole)) if whole else (None, 0)


def _below(one: float, two: float, floor: float) -> float:
    """Mean of how far a straight line from one to two lies below the floor."""
    first, second = floor - one, floor - two
    if first >= 0 and second >= 0:
        return (first + second) / 2
    if first <= 0 and second <= 0:
        return 0.0
    deep = max(first, second)
    return deep * deep / (abs(first) + abs(second)) / 2
