"""Cut day: when a tray will probably be ready, from its own curve and the crop's earlier trays.

In    the tray's day at 50 % coverage (`growth.py`), days at 50 % and of cut of the crop's earlier
      trays, what is usual for the crop
Out   `CutDay`: day since sowing with its interval, and what it rests on; or None with a sentence
Not   judging whether the tray is ready to the eye (`watch.py`)

Earlier trays tell how many days pass from half coverage to the cut. Own curve plus that lag, with the
prediction interval of one more tray: variance = s2 (1 + 1/n) of the lags plus the variance of the own day
at 50 %, degrees of freedom by Welch and Satterthwaite. Without an own curve: the earlier days of cut alone.
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace
from enum import StrEnum

from data.sentence import Sentence
from data.statistics.estimate import LEVEL, Estimate, t_quantile

__all__ = ["CutDay", "EarlierTray", "RestsOn", "expected_cut"]

LEAST_TRAYS = 3  # of the crop, cut earlier: with two the interval is wider than a week


class RestsOn(StrEnum):
    """What an expected day of cut was reckoned from."""

    OWN_CURVE = "the tray's own growth and earlier trays of the crop"
    EARLIER = "earlier trays of the crop"
    TRADE = "what is usual for the crop"


@dataclass(frozen=True, slots=True, kw_only=True)
class EarlierTray:
    """A tray of the same crop that was cut; days since its sowing."""

    day_cut: float
    day_50: float | None = None  # None: its curve could not be told


@dataclass(frozen=True, slots=True, kw_only=True)
class CutDay:
    """The expected day of cut, days since sowing; where it cannot be told `day` is None."""

    day: Estimate | None
    rests_on: RestsOn | None
    trays: int  # earlier trays that it rests on
    sentence: Sentence


def expected_cut(
    day_50: Estimate | None,
    earlier: Sequence[EarlierTray],
    usual: tuple[float, float] | None = None,
    today: float | None = None,
) -> CutDay:
    """Expected day of cut of one tray.

    Parameters
    ----------
    day_50
        The tray's own day at 50 % coverage, or None where it cannot be told yet.
    earlier
        Trays of the crop that were cut.
    usual
        First and last day that is usual for the crop, used only where the grower's own trays do not tell.
    today
        Days since sowing now; a tray that still stands was not cut before.
    """
    lags = [tray.day_cut - tray.day_50 for tray in earlier if tray.day_50 is not None]
    cuts = [tray.day_cut for tray in earlier]
    if day_50 is not None and len(lags) >= LEAST_TRAYS:
        found = _by_own_curve(day_50, lags)
    elif len(cuts) >= LEAST_TRAYS:
        found = _by_earlier(cuts)
    elif usual is not None:
        found = _by_trade(*usual)
    else:
        return _not_yet()
    return found if found.day is None else replace(found, day=_not_past(found.day, today))


def _by_own_curve(day_50: Estimate, lags: Sequence[float]) -> CutDay:
    return CutDay(
        day=_with_lag(day_50, lags),
        rests_on=RestsOn.OWN_CURVE,
        trays=len(lags),
        sentence=Sentence(
            "From its own growth and the {trays} trays of the crop cut before.", trays=len(lags)
        ),
    )


def _by_earlier(cuts: Sequence[float]) -> CutDay:
    return CutDay(
        day=_one_more(cuts),
        rests_on=RestsOn.EARLIER,
        trays=len(cuts),
        sentence=Sentence("From the {trays} trays of the crop cut before.", trays=len(cuts)),
    )


def _by_trade(low: float, high: float) -> CutDay:
    return CutDay(
        day=Estimate(value=(low + high) / 2, low=low, high=high),
        rests_on=RestsOn.TRADE,
        trays=0,
        sentence=Sentence(
            "Usual for the crop is day {low:.0f} to {high:.0f}; your own trays do not tell it yet.",
            low=low,
            high=high,
        ),
    )


def _not_yet() -> CutDay:
    return CutDay(
        day=None,
        rests_on=None,
        trays=0,
        sentence=Sentence(
            "The day of the cut can be told once {trays} trays of the crop were cut.", trays=LEAST_TRAYS
        ),
    )


def _with_lag(day_50: Estimate, lags: Sequence[float]) -> Estimate:
    mean, variance = _mean_variance(lags)
    between = variance * (1 + 1 / len(lags))
    own = 0.0
    if day_50.low is not None and day_50.high is not None:
        own = ((day_50.high - day_50.low) / 2 / t_quantile(math.inf)) ** 2
    total = between + own
    # Welch and Satterthwaite; the own part counts as if well known: its t is in its width already
    df = (len(lags) - 1) * (total / between) ** 2 if between > 0 else math.inf
    return Estimate.of(day_50.value + mean, total**0.5, df, LEVEL)


def _one_more(cuts: Sequence[float]) -> Estimate:
    mean, variance = _mean_variance(cuts)
    return Estimate.of(mean, (variance * (1 + 1 / len(cuts))) ** 0.5, len(cuts) - 1, LEVEL)


def _mean_variance(values: Sequence[float]) -> tuple[float, float]:
    mean = sum(values) / len(values)
    return mean, sum((one - mean) ** 2 for one in values) / (len(values) - 1)


def _not_past(day: Estimate, today: float | None) -> Estimate:
    """A tray that still stands is cut today at the earliest."""
    if today is None or day.low is None or day.high is None:
        return day
    value, low, high = (max(today, one) for one in (day.value, day.low, day.high))
    return Estimate(value=value, low=low, high=high)
