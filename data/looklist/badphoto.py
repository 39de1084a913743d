"""Bad photo: a photo that the tray's other days and its mates speak against.

In    the `View` of one tray, a day
Out   whether its numbers are doubtful: what rests on them waits for the next photo
Not   a photo that the scorer itself refused (`missing.py`), possible mold, which never waits (`mold.py`)

Shade, glare, a lens that is not clean, another tray under the tag: the scorer takes the photo, and its
numbers are wrong for one day. Coverage alone tells that of a stand that has closed, where a day that falls
and comes back is no crop. While a crop closes a bad photo shows no fall, but it seldom spares the colour,
which a tray that is late keeps: where it leaps away from that of the mates and comes back, or may yet, the
photo is doubtful. On rendered trays the index varies by 0.015 from day to day; the limits are tried on made
trays (`tests/bench/test_look_alarm.py`).
"""

from collections.abc import Sequence
from datetime import date
from statistics import mean

from data.looklist.beside import COVERAGE
from data.looklist.view import View

__all__ = ["has_odd_colour", "has_odd_coverage"]

DOUBTFUL_FALL = 8.0  # points of coverage in a day
RECOVERED = 2.0  # points below what it was
GROWING = 15.0  # % coverage from which a crop gains from day to day
DOUBTFUL_LEAP = 16.0  # points further behind the mates than the day before
RECOVERED_LEAP = 8.0  # points nearer to them again
ODD_COLOUR = 0.09  # of the dark green index, away from what it was beside the mates


def has_odd_coverage(view: View, day: date) -> bool:
    """Whether coverage fell on that day as no crop does, and came back or may yet."""
    place = view.days.index(day)
    if place == 0:
        return False
    near = view.days[place - 1 : place + 2]  # the day before, this one, the one after where there is one
    had, here, *then = (view.mine[one].coverage for one in near)
    if had - here >= DOUBTFUL_FALL:
        return not then or then[0] - here >= max(DOUBTFUL_FALL, had - here - RECOVERED)
    return had >= GROWING and _stood_still(view, near, here - had)


def _stood_still(view: View, near: Sequence[date], gain: float) -> bool:
    """Whether a tray that grew gained far less than its mates on one day, and caught up or may yet.

    In the days in which a crop closes a bad photo shows no fall. A tray that is late has just begun.
    """
    before, day, *after = near
    now = _behind(view, day)
    if now < RECOVERED_LEAP:  # most trays, most days
        return False
    if now - _behind(view, before) < max(DOUBTFUL_LEAP, gain):  # the mates' gain is its own and the leap
        return False
    return not after or now - _behind(view, after[0]) >= RECOVERED_LEAP


def _behind(view: View, day: date) -> float:
    """Points of coverage below the middle of the mates; 0 where none can be asked."""
    beside = view.beside(day, COVERAGE)
    return 0.0 if beside.middle is None else beside.middle - (beside.mine or 0.0)


def has_odd_colour(view: View, day: date) -> bool:
    """Whether the colour leapt away from that of the mates on that day, and came back or may yet.

    Against the days before: a tray that is late is paler than its mates from the first day on.
    """
    course = [(one, beside) for one in view.days if (beside := _greener(view, one)) is not None]
    believed: list[float] = []
    for place, (one, here) in enumerate(course):
        after = course[place + 1][1] if place + 1 < len(course) else None
        odd = bool(believed) and _leapt(here, mean(believed), after)
        if one == day:
            return odd
        if not odd:
            believed.append(here)
    return False


def _leapt(here: float, usual: float, after: float | None) -> bool:
    came_back = after is None or abs(after - usual) < abs(after - here)
    return abs(here - usual) > ODD_COLOUR and came_back


def _greener(view: View, day: date) -> float | None:
    """Dark green index above that of the mates; None where it or two of theirs are not to be had."""
    mine, mates = view.mine[day].dark_green, view.mates(day, lambda one: one.dark_green)
    return None if mine is None or mates is None else mine - mates[0]
