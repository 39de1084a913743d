"""Emergence: how a tray comes up, against its block mates and earlier trays of its crop -> looks.

In    the `View` of one tray
Out   `Look`s: late to come up, lags behind, comes up patchy
Not   canopy that was there and went (`vanishing.py`), a full stand with gaps (`evenness.py`)

In the days in which a crop closes, coverage gains 30 points and more a day, so that a healthy tray that is
few hours behind lacks ten points for a day. A tray is called behind only where it lacks more than its mates
differ, and more than they gained in a fifth of a day; in the middle of two days, of which the worse counts
for little more than the other, so that one bad photo is not enough. Limits are common practice, tried on made
trays.
"""

from collections.abc import Callable
from datetime import date, timedelta
from typing import TypeVar

from data.look import Look, LookKind, Urgency, day_name
from data.looklist.badphoto import has_odd_colour, has_odd_coverage
from data.looklist.beside import COVERAGE, Beside
from data.looklist.places import bare_share
from data.looklist.standing import Standing
from data.looklist.view import View
from data.sentence import Sentence

__all__ = ["look_at_lag", "look_at_patchiness"]

Told = TypeVar("Told")

SPREADS = 2.0  # on each of two days
LEAST_LAG = 9.0  # points of coverage, in the middle of two days
OF_BED = 0.9  # times that of the bed, which draws differences together (slopes 0.78 and 0.86, `beside.py`)
ONE_OF_THREE = (0.5, 1.25)
THREE_DAYS = 2.7
FAR_LAG = 20.0  # points of coverage
LAG_DAYS = 0.2  # of the mates' daily gain
ONE_DAY = (0.75, 1.25)  # shares of that which one day of the two has to show, and may count for
SPREADS_BEFORE = 3.0  # of earlier trays, which grew in other weather
UP = 30.0  # % coverage; below it a tray that is behind is late rather than lagging
EARLIER_UP = 20.0  # % that earlier trays of the crop had at that age
LEAST_CANOPY = 15.0  # % coverage from which patchiness can be seen
CLOSED = 70.0  # % coverage from which what is bare is a gap
LEAST_BARE = 15.0  # % of the cells
BARE_BEYOND = 12.0  # points beyond the mates


def look_at_lag(view: View) -> Look | None:
    """Behind the mates, else behind what the crop has done before, on the two newest days."""
    run = _behind(view)
    if not run:
        return _later_than_before(view)
    before, lag = (_lag(view, day)[0] for day in run[-2:])
    sentence = _lag_words(view.beside(run[-1], COVERAGE), lag, before, run[-2])
    late = max(view.mine[day].coverage for day in (run[-1], view.days[-1])) < UP  # the newest may be doubtful
    first = (
        Sentence(
            "Lift the cover and look at the seed: is it moist, has it split, is the tray colder than its "
            "mates?"
        )
        if late
        else Sentence(
            "Lift the tray: is it lighter than its mates, is the medium dry, is its place darker or colder?"
        )
    )
    what = LookKind.LATE if late else LookKind.LAGGING
    urgency = Urgency.TODAY if lag >= FAR_LAG else Urgency.SOON
    return view.look(what, urgency, run, sentence, first, lag)


def _lag_words(beside: Beside, lag: float, before: float, day: date) -> Sentence:
    """How far it is behind in points, and whether that is more than on the day of the photo before."""
    values = {
        "now": beside.mine, "lag": lag, "middle": beside.middle, "before": before, "day": day_name(day),
    }  # fmt: skip
    if beside.of_bed:
        return Sentence(
            "Coverage of the growing bed {now:.0f} %, {lag:.0f} points below the middle of its block mates "
            "({middle:.0f} %); {change}.",
            change=_change_words(lag, before, day), **values,
        )  # fmt: skip
    if lag > before + 1:
        return Sentence(
            "Coverage {now:.0f} %, {lag:.0f} points below the middle of its block mates ({middle:.0f} %); "
            "more than on {day} ({before:.0f} points).", **values,
        )  # fmt: skip
    if lag < before - 1:
        return Sentence(
            "Coverage {now:.0f} %, {lag:.0f} points below the middle of its block mates ({middle:.0f} %); "
            "less than on {day} ({before:.0f} points).", **values,
        )  # fmt: skip
    return Sentence(
        "Coverage {now:.0f} %, {lag:.0f} points below the middle of its block mates ({middle:.0f} %); "
        "as much as on {day} ({before:.0f} points).", **values,
    )  # fmt: skip


def _change_words(lag: float, before: float, day: date) -> Sentence:
    values = {"before": before, "day": day_name(day)}
    if lag > before + 1:
        return Sentence("more than on {day} ({before:.0f} points)", **values)
    if lag < before - 1:
        return Sentence("less than on {day} ({before:.0f} points)", **values)
    return Sentence("as much as on {day} ({before:.0f} points)", **values)


def _behind(view: View) -> tuple[date, ...]:
    """The days on which it was behind: two that make up what is too much twice, or three that nearly do."""
    share = _once(lambda day: _lag(view, day)[1])
    odd = _once(lambda day: has_odd_coverage(view, day))
    newest = view.days[-1]
    if share(newest) < ONE_OF_THREE[0] and not odd(newest):
        return ()  # most trays, most days
    for count, (least, most), enough in ((2, ONE_DAY, 2.0), (3, ONE_OF_THREE, THREE_DAYS)):
        run = _run(view, share, odd, least)
        shares = [min(most, share(day)) for day in run[-count:]]
        if len(shares) == count and sum(shares) >= enough:
            return run
    return ()


def _once(asked: Callable[[date], Told]) -> Callable[[date], Told]:
    """What is asked of a day, reckoned once; as `functools.cache`, which takes longer to make than to ask."""
    known: dict[date, Told] = {}

    def told(day: date) -> Told:
        if day not in known:
            known[day] = asked(day)
        return known[day]

    return told


def _run(
    view: View, share: Callable[[date], float], odd: Callable[[date], bool], least: float
) -> tuple[date, ...]:
    """The newest days behind; a doubtful photo is passed over, by its colour only where it says so."""
    return view.run(
        lambda day: share(day) >= least,
        lambda day: odd(day) or (share(day) >= least and has_odd_colour(view, day)),
    )


def _lag(view: View, day: date) -> tuple[float, float]:
    """Points behind the mates on a day, and as a share of what is too much; 0 where none can be asked."""
    beside = view.beside(day, COVERAGE)
    if beside.middle is None or beside.mine is None:
        return 0.0, 0.0
    lag = beside.middle - beside.mine
    return lag, lag / max(_least(beside), SPREADS * beside.spread, LAG_DAYS * _gain(view, day, beside))


def _least(beside: Beside) -> float:
    return LEAST_LAG * (OF_BED if beside.of_bed else 1.0)


def _gain(view: View, day: date, beside: Beside) -> float:
    """What the mates gained in the day before; 0 where nobody knows."""
    before, method = day - timedelta(days=1), view.mine[day].method
    values = sorted(
        value
        for days in view.others
        if (one := days.get(before)) is not None
        and one.method == method
        and (value := COVERAGE.of(one, beside.of_bed)) is not None
    )
    return max(0.0, (beside.middle or 0.0) - values[len(values) // 2]) if values else 0.0


def _later_than_before(view: View) -> Look | None:
    def behind(day: date) -> bool:
        before = view.before(day, COVERAGE)
        if before.middle is None or before.mine is None or before.middle < EARLIER_UP:
            return False
        if view.mine[day].coverage >= UP and view.beside(day, COVERAGE).middle is not None:
            return False  # up already, and in line with its mates
        return before.mine <= before.middle - max(_least(before), SPREADS_BEFORE * before.spread)

    run = view.run(behind)
    if not run:
        return None
    before = view.before(run[-1], COVERAGE)
    lag = (before.middle or 0.0) - (before.mine or 0.0)
    return view.look(
        LookKind.LATE if view.now.coverage < UP else LookKind.LAGGING,
        Urgency.TODAY if lag >= FAR_LAG else Urgency.SOON,
        run,
        _later_words(before, view.tray.day(run[-1]), view.tray.crop, run[-2]),
        Sentence(
            "Lift the cover and look at the seed: is it moist, has it split? Where all trays of a sowing are "
            "late, think of the cold and of the seed lot."
        ),
        lag,
    )


def _later_words(before: Beside, age: int, crop: str, day: date) -> Sentence:
    values = {
        "now": before.mine, "age": age, "crop": crop, "middle": before.middle, "day": day_name(day),
    }  # fmt: skip
    if before.of_bed:
        return Sentence(
            "Coverage of the growing bed {now:.0f} % on day {age}; earlier trays of {crop} had "
            "{middle:.0f} % at that age, and on {day} it was behind them too.",
            **values,
        )
    return Sentence(
        "Coverage {now:.0f} % on day {age}; earlier trays of {crop} had {middle:.0f} % at that age, and on "
        "{day} it was behind them too.",
        **values,
    )


def look_at_patchiness(view: View) -> Look | None:
    """Parts that stay bare while the rest comes up, beyond what the mates or earlier trays show."""

    def patchy(day: date) -> bool:
        one = view.mine[day]
        if not one.cells or not LEAST_CANOPY <= one.coverage < CLOSED:
            return False
        bare = bare_share(one.cells)
        mates = view.mates(day, _bare) or view.crop_before(day, lambda e: e.bare)
        limit = (
            LEAST_BARE
            if mates is None
            else max(LEAST_BARE, mates[0] + max(BARE_BEYOND, SPREADS_BEFORE * mates[1]))
        )
        return bare >= limit

    run = view.run(patchy)
    if not run:
        return None
    bare = bare_share(view.now.cells)
    return view.look(
        LookKind.PATCHY,
        Urgency.SOON,
        run,
        Sentence(
            "{bare:.0f} % of the tray is bare or nearly so, while the rest has come up: {now:.0f} % "
            "coverage.",
            bare=bare,
            now=view.now.coverage,
        ),
        Sentence(
            "Look into the bare parts: is there seed, is it moist, does the medium lie flat on the bottom? "
            "Seed that was sown unevenly cannot be mended; a dry part can be wetted from above once."
        ),
        bare,
    )


def _bare(one: Standing) -> float | None:
    return bare_share(one.cells) if one.cells else None
