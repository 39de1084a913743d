"""Break-down: what is left of a used medium on dates -> how fast it goes, and when half of it is gone.

In    days since it was laid out, mass left in % of the first (or marks by eye, 1 to 5)
Out   `Decay`: rate with interval, weeks to half and to 5 % left; "cannot tell yet" where it cannot
Not   weighing and photographs (`medium/benchtest.py`, `chapters/materialbook.py`)

m(t)/m0 = exp(-k t), Olson (1963), Energy storage and the balance of producers and decomposers in ecological
systems, Ecology 44, 322-331. Fitted to the masses, not to their logarithms, which give small late masses too
much weight; the first is 100 % by weighing. A single exponential misleads when it is extrapolated (Adair,
Hobbie & Hobbie 2010, Single-pool exponential decomposition models, Ecology 91, 1225-1236): beyond one and a
half times what was seen no number of weeks is given without a warning, beyond twice none at all.
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass

from data.sentence import Sentence
from data.statistics.estimate import Estimate

__all__ = ["EYE_MARKS", "Decay", "EyeDecay", "by_eye", "decay_of"]

DAYS_A_WEEK = 7.0
LEAST = 2  # weighings after the first
LEAST_LOST = 10.0  # % that must be gone before a rate means anything (common practice)
WARNED, REFUSED = 1.5, 2.0  # times the days observed
FLATTER = 6.0  # AIC by which an asymptote must fit better before it is told of (common practice)

# criteria of a scale by eye; own words, common practice
EYE_MARKS = {
    5: Sentence("whole: looks and tears as on the first day"),
    4: Sentence("soft: whole, but tears with little force"),
    3: Sentence("falling apart: holes, edges gone, fibres still seen"),
    2: Sentence("crumbs: pieces smaller than a thumbnail"),
    1: Sentence("gone: not to be told from the soil around it"),
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Decay:
    """Single exponential through the masses; rates per day, `reason` says why one is missing."""

    rate: Estimate | None
    half_weeks: Estimate | None
    nearly_gone_weeks: Estimate | None  # 5 % left
    rss: float | None
    n: int
    remains_pct: float | None = None  # where the late points flatten: what seems to stay
    reason: Sentence | None = None
    warning: Sentence | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class EyeDecay:
    """Weeks until crumbs (mark 2 or less), as far as the marks tell: between two looks."""

    low_weeks: float | None  # last look at which it was not there yet
    high_weeks: float | None  # first look at which it was
    n: int
    reason: Sentence | None = None


def decay_of(days: Sequence[float], left_pct: Sequence[float]) -> Decay:
    """The break-down from what was left; the first weighing (day 0, 100 %) may be among the points.

    Raises
    ------
    ValueError
        If days and masses are not as many.
    """
    if len(days) != len(left_pct):
        raise ValueError("a mass for each day")
    points = sorted((day, left) for day, left in zip(days, left_pct, strict=True) if day > 0)
    wrong = _wrong(points)
    if wrong is not None:
        return _untold(len(points), wrong)
    k, error, rss = _fitted(points)
    if k is None or k <= 0:
        return _untold(len(points), Sentence("It does not get lighter: cannot tell yet. Weigh it dry."))
    df = len(points) - 1
    rate = Estimate.of(k, error, df)
    last = points[-1][0]
    half, half_warning = _weeks(rate, math.log(2), last)
    gone, gone_warning = _weeks(rate, -math.log(0.05), last)
    return Decay(
        rate=rate,
        half_weeks=half,
        nearly_gone_weeks=gone,
        rss=rss,
        n=len(points),
        remains_pct=_asymptote(points, rss),
        warning=half_warning or gone_warning,
        reason=None if half is not None and gone is not None else _too_early(last),
    )


def _wrong(points: Sequence[tuple[float, float]]) -> Sentence | None:
    if any(not math.isfinite(left) or left < 0 for _, left in points):
        return Sentence("A mass is below zero: mend it.")
    if len({day for day, _ in points}) < len(points):
        return Sentence("Two weighings bear the same time: mend one of them.")
    if any(left > 120 for _, left in points):
        return Sentence("It weighs more than at first: was it dried in the same way before?")
    if len(points) < LEAST:
        lacking = LEAST - len(points)
        if lacking == 1:
            return Sentence("Cannot tell yet: weigh it dry once more, weeks after the last time.")
        return Sentence("Cannot tell yet: weigh it dry on {n} more dates, weeks apart.", n=lacking)
    if 100 - min(left for _, left in points) < LEAST_LOST:
        return Sentence("Cannot tell yet: less than a tenth is gone. Weigh it again in some weeks.")
    return None


def _fitted(points: Sequence[tuple[float, float]]) -> tuple[float | None, float | None, float]:
    import numpy as np

    from data.statistics.curve import fit_curve

    days, left = [day for day, _ in points], [one for _, one in points]
    begin = max(-math.log(max(left[-1], 1.0) / 100) / days[-1], 1e-6)
    # days are scaled, so that rates of years and of days settle alike
    scale = days[-1]
    fit = fit_curve(lambda t, k: 100 * np.exp(-k * t), [one / scale for one in days], left, [begin * scale])
    if fit is None:
        return None, None, math.inf
    errors = fit.errors
    return fit.parameters[0] / scale, None if errors is None else errors[0] / scale, fit.rss


def _weeks(rate: Estimate, logarithm: float, last_day: float) -> tuple[Estimate | None, Sentence | None]:
    """Weeks until so much is gone, unless that lies far beyond what was seen."""
    value = logarithm / rate.value
    if value > REFUSED * last_day:
        return None, None
    low = None if rate.high is None else logarithm / rate.high / DAYS_A_WEEK
    high = None if rate.low is None or rate.low <= 0 else logarithm / rate.low / DAYS_A_WEEK
    both = low is not None and high is not None
    found = Estimate(value=value / DAYS_A_WEEK, low=low if both else None, high=high if both else None)
    if value <= WARNED * last_day:
        return found, None
    return found, Sentence(
        "Reckoned beyond what was seen ({weeks:.0f} weeks): the last part often goes more slowly.",
        weeks=last_day / DAYS_A_WEEK,
    )


def _too_early(last_day: float) -> Sentence:
    return Sentence(
        "Cannot tell yet: {weeks:.0f} weeks were seen, and it takes more than twice as long. Weigh it again.",
        weeks=last_day / DAYS_A_WEEK,
    )


def _asymptote(points: Sequence[tuple[float, float]], rss: float) -> float | None:
    """% that seems to stay, where a + (100 - a) exp(-k t) fits clearly better."""
    import numpy as np

    from data.statistics.curve import fit_curve

    n = len(points)
    if n < 5 or rss <= 0:
        return None
    scale = points[-1][0]
    days, left = [day / scale for day, _ in points], [one for _, one in points]
    fit = fit_curve(
        lambda t, a, k: a + (100 - a) * np.exp(-k * t), days, left, [max(0.5 * left[-1], 1.0), 3.0]
    )
    if fit is None or not 0 < fit.parameters[0] < 100 or fit.parameters[1] <= 0 or fit.rss <= 0:
        return None
    gain = n * math.log(rss / fit.rss) - 2
    return fit.parameters[0] if gain > FLATTER else None


def _untold(n: int, why: Sentence) -> Decay:
    return Decay(rate=None, half_weeks=None, nearly_gone_weeks=None, rss=None, n=n, reason=why)


def by_eye(days: Sequence[float], marks: Sequence[float]) -> EyeDecay:
    """Between which weeks it fell to crumbs, by marks 5 (whole) to 1 (gone)."""
    points = sorted(zip(days, marks, strict=True))
    done = next((day for day, mark in points if mark <= 2), None)
    before = [day for day, mark in points if mark > 2 and (done is None or day < done)]
    low = before[-1] / DAYS_A_WEEK if before else None
    if not points:
        reason: Sentence | None = Sentence("Look at it every two weeks, and give it a mark from 5 to 1.")
    elif done is None:
        reason = Sentence("Cannot tell yet: it has not fallen to crumbs. Look again in two weeks.")
    else:
        reason = None
    return EyeDecay(
        low_weeks=low, high_weeks=None if done is None else done / DAYS_A_WEEK, n=len(points), reason=reason
    )
