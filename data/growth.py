"""Growth: coverage over days -> growth curve, day at half coverage, greatest rate.

In    coverage in % of one tray, days since sowing, at any times, days may be missing
Out   `Growth`: the better of a logistic and a Gompertz curve on the bounded scale 0 to 100 %, the day at 50 %
      with its interval; what cannot be told yet is None, with a sentence
Not   warmth (`growing/degreedays.py`), the day of the cut
      (`growing/cutday.py`)

Logistic  y = A / (1 + exp(-(t - tm)/s)), greatest rate A/(4 s) at tm
Gompertz  y = A exp(-exp(-c (t - ti))), greatest rate A c/e at ti; written A exp(-b exp(-c t)), b = exp(c ti)
The upper level A cannot be above 100 %: where least squares wants more, the curve is fitted with A = 100.
Coverage is read less surely while a stand closes than when it is bare or full, so intervals of a day and of
the curve take each photo's own distance from it (`statistics/curve.py`). Of 100 drawn courses of 6 to 12
days 96 to 99 hold the day at half coverage where the scatter is even, 90 to 96 where it rises to 4 points
there, 86 to 93 where it rises to 8 or lies there alone: two or three photos do not tell their own scatter,
and those that miss are the ones whose photos happen to lie close to the curve. Degrees of freedom that count
on such scatter (Bell & McCaffrey 2002, from memory) would make every interval twice as wide: so it is called
"about 95 %".
Formulas as in Ratkowsky (1983) Nonlinear Regression Modeling (from memory).
"""

import math
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass
from enum import StrEnum
from typing import Any

from data.sentence import Sentence
from data.statistics.curve import Fit, fit_curve
from data.statistics.estimate import Estimate

__all__ = ["Curve", "Growth", "GrowthCurve", "fit_growth", "growth_of"]

FULL = 100.0  # %, more of the inner area there is not
LEAST_DAYS = 5  # with fewer, three parameters say nothing
LARGEST_ERROR = 0.2  # of the upper level: beyond it the level is not told (common practice)
WORST_FIT = 10.0  # points of coverage, root mean square: the days do not follow one curve (common practice)
OUTLIER = 12.0  # points of coverage; and four times the ordinary scatter: a bad photo
OUTLIER_SPREADS = 4.0
CALM = 5.0  # points of coverage: where no photo is further off, none is bad
ROBUST = 3.0  # points of coverage: beyond it a residual weighs less while outliers are looked for
MAD_TO_SD = 1.4826  # of the normal distribution
MOST_OUTLIERS = 0.2  # share of the photos
SAME_FIT = 2.0  # difference of Akaike's criterion that tells nothing (Burnham & Anderson 2002, from memory)
TINY = 1e-9  # residual sum of squares of a perfect fit
RAMP = 2.2  # a logistic takes 2 ln 3 = 2.2 s from a quarter to three quarters


class Curve(StrEnum):
    """The shape of a growth curve."""

    LOGISTIC = "logistic"
    GOMPERTZ = "Gompertz"


@dataclass(frozen=True, slots=True, kw_only=True)
class GrowthCurve:
    """One fitted curve. `parameters`: (A, tm, s) of a logistic, (A, ti, c) of a Gompertz; % and days."""

    curve: Curve
    parameters: tuple[float, float, float]
    errors: tuple[float, float, float] | None  # standard errors; 0 for an upper level that was held at 100
    fit: Fit  # of the free parameters
    held: bool  # upper level held at 100 %

    def at(self, day: float) -> float:
        """Coverage in % on a day."""
        return float(_value(self.curve, day, *self.parameters))

    def line(self, begin: float, end: float, points: int = 60) -> tuple[tuple[float, float], ...]:
        """Points (day, coverage %) of the curve, for a chart; points >= 2."""
        step = (end - begin) / (points - 1)
        return tuple((begin + k * step, self.at(begin + k * step)) for k in range(points))

    def coverage_on(self, day: float) -> Estimate:
        """Coverage in % on a day with the interval of the curve (not of a single photo), within 0 to 100."""
        told = self._within(self.at(day), lambda *free: float(_value(self.curve, day, *self._all(free))))
        return told.turned(lambda coverage: min(FULL, max(0.0, coverage)))

    def day_of(self, level: float) -> Estimate | None:
        """The day at which coverage reaches `level` %, with its interval; None if it never does."""
        if not 0 < level < self.parameters[0]:
            return None
        day = _day(self.curve, level, *self.parameters)
        return self._within(day, lambda *free: _day(self.curve, level, *self._all(free)))

    def _within(self, value: float, function: Callable[..., float]) -> Estimate:
        """A number that follows from the curve, with its interval where the points tell one."""
        reach = self.fit.reach_of(function)
        if reach is None or not math.isfinite(reach):
            return Estimate(value=value)
        return Estimate(value=value, low=value - reach, high=value + reach)

    def _all(self, free: tuple[float, ...]) -> tuple[float, ...]:
        return (FULL, *free) if self.held else free

    @property
    def steepest_day(self) -> float:
        """Day of the greatest rate (the point of inflection)."""
        return self.parameters[1]

    @property
    def greatest_rate(self) -> float:
        """Points of coverage a day, at the steepest."""
        upper, _, pace = self.parameters
        return upper / (4 * pace) if self.curve is Curve.LOGISTIC else upper * pace / math.e


@dataclass(frozen=True, slots=True, kw_only=True)
class Growth:
    """What the days of one tray tell; `reasons` says by field name why a number is missing."""

    curve: GrowthCurve | None
    other: GrowthCurve | None  # the curve that fits less well
    day_50: Estimate | None  # days since sowing, coverage 50 %
    left_out: tuple[int, ...]  # which of the points given were left out as bad photos
    reasons: Mapping[str, Sentence]


# --- the curve of one tray


def growth_of(points: Iterable[tuple[float, float | None]]) -> Growth:
    """Growth of one tray from (days since sowing, coverage in % or None), in any order."""
    given = list(points)
    usable = [at for at, (day, value) in enumerate(given) if _is_usable(day, value)]
    usable.sort(key=lambda at: given[at][0])
    days = [given[at][0] for at in usable]
    values = [float(given[at][1] or 0.0) for at in usable]
    why = _too_little(days, values)
    if why is not None:
        return _untold(why)
    bad = _bad_photos(days, values)
    kept = [at for at in range(len(days)) if at not in bad]
    days, values = [days[at] for at in kept], [values[at] for at in kept]
    left_out = tuple(sorted(usable[at] for at in bad))
    fits = [one for curve in Curve if (one := fit_growth(days, values, curve)) is not None]
    good = sorted(
        (one for one in fits if _doubt(one, values) is None), key=lambda one: (one.fit.rss, one.curve)
    )
    if not good:
        doubt = _doubt(fits[0], values) if fits else None
        return _untold(doubt or Sentence("The coverage follows no growth curve so far."), left_out)
    return _told(good, left_out)


def _is_usable(day: float, value: float | None) -> bool:
    return value is not None and math.isfinite(value) and math.isfinite(day) and -0.5 <= value <= 100.5


def _too_little(days: Sequence[float], values: Sequence[float]) -> Sentence | None:
    seen = len({math.floor(day) for day in days})
    if seen < LEAST_DAYS:
        if seen == 1:
            return Sentence("Photos of one day are there; a growth curve needs {needed}.", needed=LEAST_DAYS)
        return Sentence(
            "Photos of {seen} days are there; a growth curve needs {needed}.", seen=seen, needed=LEAST_DAYS
        )
    if max(values) < FULL * 0.05:
        return Sentence("The crop is not up yet: at most {most:.0f} % coverage so far.", most=max(values))
    return None


def _doubt(one: GrowthCurve, values: Sequence[float]) -> Sentence | None:
    """Why a curve that was fitted is not to be shown."""
    upper = one.parameters[0]
    if one.fit.covariance is None:
        return Sentence("The photos do not tell the curve yet: more days are needed.")
    if max(values) < upper / 2:
        return Sentence("The tray is not at half of its growth yet: the curve cannot be told.")
    if min(values) > upper / 2:
        return Sentence("The first photo came after half of the growth: the curve cannot be told.")
    if one.errors is not None and one.errors[0] > LARGEST_ERROR * upper:
        return Sentence("The photos do not tell yet at which coverage the growth will end.")
    if (one.fit.rss / len(values)) ** 0.5 > WORST_FIT:
        return Sentence("The coverage does not follow one growth curve: look at the photos of single days.")
    return None


def _untold(why: Sentence, left_out: tuple[int, ...] = ()) -> Growth:
    return Growth(
        curve=None, other=None, day_50=None, left_out=left_out, reasons={"curve": why, "day_50": why}
    )


def _told(good: Sequence[GrowthCurve], left_out: tuple[int, ...]) -> Growth:
    half = _day_of_all(good, FULL / 2)
    reasons = {}
    if half is None:
        reasons["day_50"] = Sentence(
            "The growth ends at {upper:.0f} % coverage: 50 % is never reached.", upper=good[0].parameters[0]
        )
    other = good[1] if len(good) > 1 else None
    return Growth(curve=good[0], other=other, day_50=half, left_out=left_out, reasons=reasons)


def _day_of_all(good: Sequence[GrowthCurve], level: float) -> Estimate | None:
    """The day by the better curve; the interval spans both where the photos do not tell them apart."""
    day = good[0].day_of(level)
    if day is None or day.low is None or day.high is None:
        return day
    low, high = day.low, day.high
    for one in good[1:]:
        points = len(one.fit.residuals)
        alike = points * math.log(max(one.fit.rss, TINY) / max(good[0].fit.rss, TINY)) <= SAME_FIT
        other = one.day_of(level) if alike else None
        if other is not None and other.low is not None and other.high is not None:
            low, high = min(low, other.low), max(high, other.high)
    return Estimate(value=day.value, low=low, high=high)


def _bad_photos(days: Sequence[float], values: Sequence[float]) -> set[int]:
    """Single points far off the course of all others; none where many are off."""
    calm = [sorted(values[max(0, at - 1) : at + 2])[1] for at in range(len(values))]  # medians of three
    begin = _begin(Curve.LOGISTIC, days, calm, FULL)

    def logistic(t: Any, *parameters: float) -> Any:
        return _value(Curve.LOGISTIC, t, *parameters)

    plain = fit_curve(logistic, days, values, begin)
    if plain is not None and max(map(abs, plain.residuals)) < CALM:
        return set()
    fit = fit_curve(logistic, days, values, begin, outliers_within=ROBUST)
    if fit is None:
        return set()
    off = [abs(residual) for residual in fit.residuals]
    spread = MAD_TO_SD * sorted(off)[len(off) // 2]
    bad = {at for at, one in enumerate(off) if one > max(OUTLIER, OUTLIER_SPREADS * spread)}
    days_left = len({math.floor(day) for at, day in enumerate(days) if at not in bad})
    return bad if len(bad) <= MOST_OUTLIERS * len(off) and days_left >= LEAST_DAYS else set()


def fit_growth(
    days: Sequence[float], values: Sequence[float], curve: Curve, bound: float | None = FULL
) -> GrowthCurve | None:
    """One curve by least squares, its upper level at most `bound`; None where none settles."""
    begin = _begin(curve, days, values, bound or math.inf)
    fit = fit_curve(lambda t, *p: _value(curve, t, *p), days, values, begin)
    if fit is not None and (bound is None or fit.parameters[0] <= bound):
        return _checked(curve, fit, held=False)
    if bound is None:
        return None
    fit = fit_curve(lambda t, *p: _value(curve, t, bound, *p), days, values, begin[1:])
    return None if fit is None else _checked(curve, fit, held=True)


def _checked(curve: Curve, fit: Fit, *, held: bool) -> GrowthCurve | None:
    upper, middle, pace = (FULL, *fit.parameters) if held else fit.parameters
    if pace <= 0 or upper <= 0:
        return None
    errors: tuple[float, float, float] | None = None
    if fit.errors is not None:
        of_upper, of_middle, of_pace = (0.0, *fit.errors) if held else fit.errors
        errors = (of_upper, of_middle, of_pace)
    return GrowthCurve(
        curve=curve,
        parameters=(upper, middle, pace),
        errors=errors,
        fit=fit,
        held=held,
    )


def _begin(
    curve: Curve, days: Sequence[float], values: Sequence[float], bound: float
) -> tuple[float, float, float]:
    """Where the search begins: the level seen, the day at its half, the pace between its quarters."""
    upper = min(max(values) * 1.02, bound)
    quarter, half, late = (_first_day(days, values, upper * share) for share in (0.25, 0.5, 0.75))
    pace = max((late - quarter) / RAMP, (days[-1] - days[0]) / 50)
    if curve is Curve.LOGISTIC:
        return upper, half, pace
    return upper, _first_day(days, values, upper / math.e), 1 / (1.5 * pace)


def _first_day(days: Sequence[float], values: Sequence[float], level: float) -> float:
    for at in range(1, len(days)):
        if values[at] >= level > values[at - 1]:
            share = (level - values[at - 1]) / (values[at] - values[at - 1])
            return days[at - 1] + share * (days[at] - days[at - 1])
    return days[0] if values[0] >= level else days[-1]


def _value(curve: Curve, day: Any, upper: float, middle: float, pace: float) -> Any:
    import numpy as np

    with np.errstate(over="ignore", under="ignore", divide="ignore", invalid="ignore"):
        if curve is Curve.LOGISTIC:
            return upper / (1 + np.exp(-(np.asarray(day) - middle) / pace))
        return upper * np.exp(-np.exp(-pace * (np.asarray(day) - middle)))


def _day(curve: Curve, level: float, upper: float, middle: float, pace: float) -> float:
    if upper <= level or pace <= 0:
        return math.nan
    if curve is Curve.LOGISTIC:
        return middle - pace * math.log(upper / level - 1)
    return middle - math.log(math.log(upper / level)) / pace
