"""Paling: canopy that loses its green over the last days -> a look.

In    the `View` of one tray
Out   a `Look`: turns pale
Not   pale shoots that have not greened yet: only a closed stand is asked

Measured by the dark green colour index (Karcher and Richardson 2003, Crop Sci. 43, 943-951); where a crop is
red and has none, by lightness. Against the tray's own earlier days, less what the mates did meanwhile, for a
new lamp pales them all. Only photos whose colours were set right by a patch count. Limits are common
practice; on rendered trays the index of a closed stand varies by 0.015 from day to day, lightness by 2.5.
"""

from collections.abc import Sequence
from datetime import date
from statistics import median
from typing import NamedTuple

from data.look import Look, LookKind, Urgency, day_name
from data.looklist.badphoto import has_odd_coverage
from data.looklist.standing import Days, Number
from data.looklist.view import View
from data.sentence import Sentence

__all__ = ["look_at_colour"]

CLOSED = 60.0  # % coverage from which colour is that of a stand
LEAST_PALER = 0.05  # of the index
LEAST_LIGHTER = 8.0  # L*
DAYS_BEFORE = 3  # that tell what it was

FIRST = Sentence(
    "Compare with a tray of the same crop in good light: pale all over after the first week means hungry, "
    "pale and long means too dark, pale at the tips means too wet or too hot."
)


def look_at_colour(view: View) -> Look | None:
    """Paler than before on the two newest days; doubtful photos are passed over, before and now."""
    if _paler(view, view.days) is None:  # nearly always
        return None
    return _paler(view, [day for day in view.days if not has_odd_coverage(view, day)])


def _paler(view: View, days: Sequence[date]) -> Look | None:
    newest = days[-2:]
    if view.mine[newest[0]].coverage < CLOSED:
        return None
    before = [day for day in days[:-2] if view.mine[day].coverage >= CLOSED][-DAYS_BEFORE:]
    if len(before) < 2:
        return None
    index = _fall(view, before, newest, lambda s: s.dark_green, LEAST_PALER)
    if index is not None:
        day = day_name(before[-1])
        sentence = _fell(index, day) if index.beside_mates else _fell_alone(index, day)
        return view.look(LookKind.PALING, Urgency.SOON, newest, sentence, FIRST, 100.0 * index.fall)
    if any(view.mine[day].dark_green is not None for day in newest):
        return None
    light = _fall(
        view, before, newest, lambda s: None if s.lightness is None else -s.lightness, LEAST_LIGHTER
    )
    if light is None:
        return None
    day = day_name(before[-1])
    sentence = _lighter(light, day) if light.beside_mates else _lighter_alone(light, day)
    return view.look(LookKind.PALING, Urgency.SOON, newest, sentence, FIRST, light.fall)


# --- words: a tray that no mate stands beside is held against itself alone


def _fell(index: "_Fall", day: str) -> Sentence:
    return Sentence(
        "The dark green colour index fell from {was:.2f} around {day} to {now:.2f}, {fall:.2f} more than "
        "that of its block mates.",
        was=index.was, now=index.now, fall=index.fall, day=day,
    )  # fmt: skip


def _fell_alone(index: "_Fall", day: str) -> Sentence:
    return Sentence(
        "The dark green colour index fell from {was:.2f} around {day} to {now:.2f}; no mates tell whether "
        "the light changed.",
        was=index.was, now=index.now, day=day,
    )  # fmt: skip


def _lighter(light: "_Fall", day: str) -> Sentence:
    return Sentence(
        "The canopy grew lighter, from L* {was:.0f} around {day} to {now:.0f}, {fall:.0f} more than its "
        "block mates.",
        was=-light.was, now=-light.now, fall=light.fall, day=day,
    )  # fmt: skip


def _lighter_alone(light: "_Fall", day: str) -> Sentence:
    return Sentence(
        "The canopy grew lighter, from L* {was:.0f} around {day} to {now:.0f}; no mates tell whether the "
        "light changed.",
        was=-light.was, now=-light.now, day=day,
    )  # fmt: skip


# --- the fall


class _Fall(NamedTuple):
    """Of a number; `fall` beyond that of the mates."""

    was: float
    now: float
    fall: float
    beside_mates: bool  # on the last day


def _fall(
    view: View, before: Sequence[date], newest: Sequence[date], number: Number, least: float
) -> _Fall | None:
    """The fall beyond the mates, where it holds on both days."""
    method = view.now.method
    was = _middle(view.mine, before, number, method)
    if was is None:
        return None
    falls: list[_Fall] = []
    for day in newest:
        now = number(view.mine[day])
        if now is None:
            return None
        theirs = [
            then - one
            for days in view.others
            if day in days
            and (one := number(days[day])) is not None
            and (then := _middle(days, before, number, method)) is not None
        ]
        beyond = was - now - (median(theirs) if theirs else 0.0)
        falls.append(_Fall(was, now, beyond, bool(theirs)))
    return None if min(one.fall for one in falls) < least else falls[-1]


def _middle(days: Days, wanted: Sequence[date], number: Number, method: str) -> float | None:
    values = [
        value
        for day in wanted
        if (one := days.get(day)) is not None and one.method == method and (value := number(one)) is not None
    ]
    return median(values) if values else None
