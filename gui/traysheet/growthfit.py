"""Growth fit: the curve through a tray's days with its interval, and the day of the cut in words; no Qt.

In    a book, a tray, its (day, coverage) points; slow enough for a worker (scipy is loaded)
Out   `Fitted`: points of curve and interval, expected day of cut, sentences
Not   fitting (`data/growth.py`), reckoning the day (`data/growing/cutday.py`), painting (`growthchart.py`)
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import timedelta
from functools import lru_cache
from math import ceil
from typing import TYPE_CHECKING

from data.records import PhotoState, Tray, TrayId
from gui.language.spoken import DAY_SHORT, day_words, filled, spoken
from gui.language.words import translate

if TYPE_CHECKING:
    from data.book import Book
    from data.growing.cutday import CutDay, EarlierTray
    from data.growth import Growth, GrowthCurve
    from data.statistics.estimate import Estimate

__all__ = ["Fitted", "Points", "fit_tray"]

Points = tuple[tuple[float, float], ...]  # (days since sowing, %), by day

LINE_POINTS = 60
MOST_EARLIER = 40  # trays of the crop that are asked for their day of cut, the newest ones
REMEMBERED = 10 * MOST_EARLIER  # ended trays whose day at half coverage is not fitted again


@dataclass(frozen=True, slots=True, kw_only=True)
class Fitted:
    """What is drawn beside the days, and said below them."""

    tray_id: TrayId
    points: Points  # those that were asked about: the answer names its question
    line: Points = ()
    low: Points = ()
    high: Points = ()
    cut: tuple[float, float, float] | None = None  # day, first and last day of its interval
    words: tuple[str, ...] = ()  # the curve, the cut: sentences


def fit_tray(book: "Book", tray: Tray, points: Points, today: float) -> Fitted:
    """The curve of one tray and when it will be cut; `today` in days since sowing."""
    from data.growth import growth_of

    growth = growth_of(points)
    words = []
    line: Points = ()
    low: Points = ()
    high: Points = ()
    if growth.curve is None:
        words.append(spoken(growth.reasons["curve"]))
    else:
        line, low, high = _with_interval(growth.curve, points[0][0], points[-1][0])
        words += [_half_words(growth), _fastest_words(growth.curve)]
    found = None
    if tray.done_at is None:
        cut = _expected(book, tray, growth.day_50, today)
        words.append(_cut_words(cut, tray))
        found = _drawn(cut)
    return Fitted(
        tray_id=tray.id, points=points, line=line, low=low, high=high, cut=found,
        words=tuple(one for one in words if one),
    )  # fmt: skip


def _with_interval(curve: "GrowthCurve", first: float, last: float) -> tuple[Points, Points, Points]:
    """The curve and, point by point, where it lies with about 95 %."""
    line = curve.line(first, max(last, first + 0.5), LINE_POINTS)
    told = [(day, curve.coverage_on(day)) for day, _ in line]
    low = tuple((day, one.low) for day, one in told if one.low is not None)
    high = tuple((day, one.high) for day, one in told if one.high is not None)
    return line, low, high


def _fastest_words(curve: "GrowthCurve") -> str:
    words = translate("TraySheet", "It closed fastest on day {day:.1f}, by {rate:.0f} points a day.")
    return filled(words, day=curve.steepest_day, rate=curve.greatest_rate)


def _half_words(growth: "Growth") -> str:
    half = growth.day_50
    if half is None:
        return spoken(growth.reasons.get("day_50", ""))
    told = half.low is not None and half.high is not None and f"{half.low:.1f}" != f"{half.high:.1f}"
    if not told:
        words = translate("TraySheet", "Half of the tray was covered on day {day:.1f}.")
        return filled(words, day=half.value)
    words = translate(
        "TraySheet", "Half of the tray was covered on day {day:.1f} (about 95 %: {low:.1f} to {high:.1f})."
    )
    return filled(words, day=half.value, low=half.low, high=half.high)


def _expected(book: "Book", tray: Tray, day_50: "Estimate | None", today: float) -> "CutDay":
    from data.growing.cutday import expected_cut

    crop = book.crop(tray.crop)
    usual = None
    if crop is not None and crop.cut_from_day is not None and crop.cut_to_day is not None:
        usual = (crop.cut_from_day, crop.cut_to_day)
    return expected_cut(day_50, _earlier(book, tray), usual, today)


def _earlier(book: "Book", tray: Tray) -> Sequence["EarlierTray"]:
    """Trays of the crop that were cut, with their own day at half coverage where it can be told."""
    from data.growing.cutday import EarlierTray

    cut = [one for one in book.ended_trays() if one.crop == tray.crop and one.ended == "cut"]
    found = []
    for one in cut[:MOST_EARLIER]:
        if one.done_at is None:
            continue
        points = tuple(
            ((day.taken_at - one.sown_at) / timedelta(days=1), day.score.coverage)
            for day in book.days(one.id)
            if day.state is PhotoState.STORED and day.score is not None and day.score.sure
        )
        day_cut = (one.done_at - one.sown_at) / timedelta(days=1)
        found.append(EarlierTray(day_cut=day_cut, day_50=_half_of(points)))
    return found


@lru_cache(maxsize=REMEMBERED)
def _half_of(points: tuple[tuple[float, float | None], ...]) -> float | None:
    """Day at half coverage; fitting the earlier trays anew for each tray took a third of a second."""
    from data.growth import growth_of

    half = growth_of(points).day_50
    return None if half is None else half.value


def _cut_words(cut: "CutDay", tray: Tray) -> str:
    if cut.day is None:
        return spoken(cut.sentence)
    date = tray.sown_at + timedelta(days=cut.day.value)
    low = None if cut.day.low is None else int(cut.day.low)
    high = None if cut.day.high is None else ceil(cut.day.high)
    words = (
        translate("TraySheet", "Expected cut: day {day} ({date}).")
        if low is None or high is None or low == high
        else translate("TraySheet", "Expected cut: day {day} ({date}), between day {low} and day {high}.")
    )
    told = words.format(day=round(cut.day.value), date=day_words(date, DAY_SHORT), low=low, high=high)
    return f"{told} {spoken(cut.sentence)}"


def _drawn(cut: "CutDay") -> tuple[float, float, float] | None:
    if cut.day is None:
        return None
    low = cut.day.value if cut.day.low is None else cut.day.low
    high = cut.day.value if cut.day.high is None else cut.day.high
    return cut.day.value, low, high
