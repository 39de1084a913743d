"""Evenness: where the stand of a tray that is up is thin -> a look.

In    the `View` of one tray
Out   a `Look`: thin edge (one side, one corner, or all round), gaps stay, uneven; the first that holds
Not   a tray that still comes up (`emergence.py`), canopy that went (`vanishing.py`)

A dry edge makes gaps, and gaps make a stand uneven: what says the same is said once. Limits are common
practice.
"""

from collections.abc import Sequence
from dataclasses import replace
from datetime import date

from data.growing.mediumkind import MediumKind
from data.look import Look, LookKind, Urgency, day_name
from data.looklist.beside import GAPS
from data.looklist.places import as_now, lacks
from data.looklist.standing import Standing
from data.looklist.view import View
from data.sentence import Sentence

__all__ = ["look_at_evenness"]

SPREADS = 3.0
FULL_ENOUGH = 30.0  # % coverage from which evenness is asked for
UP = 60.0  # % coverage of a crop that should be up
LEAST_UNEVEN = 10.0  # points of uniformity below the mates
POOR_UNIFORMITY = 60.0  # %, where there are no mates
LEAST_GAP_SHARE = 5.0  # %
LEAST_EDGE = 12.0  # points
EDGE_BEYOND_MATES = 8.0  # points
FAR_BEYOND_MATES = 20.0  # points; more is asked of no tray, however much its mates differ
SURELY_THIN = 30.0  # points of one place: too much, whatever the mates do
FAR_THINNER = 1.5  # times the deficit of the whole edge
GROWS = 3.0  # points within the last days
DAYS_OF_GROWTH = 3
CLOSES_IN = 3.0  # days; what closes sooner by itself is left alone


def look_at_evenness(view: View) -> Look | None:
    """The gravest of what says the same."""
    thin = _thin(view)
    if thin is not None and not view.medium_kind:
        return replace(thin, asks_kind_of=view.tray.medium)
    return thin or _gaps(view) or _uneven(view)


# --- edge, sides, corners

BEGINNINGS = {  # of a sentence about a place
    "far": Sentence("The far side"),
    "near": Sentence("The near side"),
    "left": Sentence("The left side"),
    "right": Sentence("The right side"),
    "far left": Sentence("The far left corner"),
    "far right": Sentence("The far right corner"),
    "near left": Sentence("The near left corner"),
    "near right": Sentence("The near right corner"),
}
FIRST_EDGE = Sentence("Feel the medium at the edge: where it is dry, wet it slowly from above once.")
FIRST_EDGE_OF: dict[str, Sentence] = {  # by kind of medium (common practice)
    MediumKind.MAT: Sentence(
        "Feel the mat at the edge: where it has dried it does not rewet by itself, so wet it from above once."
    ),
    MediumKind.LOOSE: Sentence(
        "Feel the medium at the edge: where it has dried and shrunk from the wall, water runs past it, so "
        "wet it slowly from above once."
    ),
}


def _first_at_edge(view: View) -> Sentence:
    """What to do first, on this kind of medium."""
    return FIRST_EDGE_OF.get(view.medium_kind, FIRST_EDGE)


def _thin(view: View) -> Look | None:
    """The edge all round, unless it is one place that is far thinner."""
    edge, side = _edge(view), _side(view)
    if edge is None or side is None:
        return edge or side
    return side if (side.size or 0.0) >= FAR_THINNER * (edge.size or 0.0) else edge


def _edge(view: View) -> Look | None:
    def thin(day: date) -> bool:
        one = view.mine[day]
        if one.edge_deficit is None or one.coverage < FULL_ENOUGH or one.edge_deficit < LEAST_EDGE:
            return False
        mates = view.mates(day, lambda s: s.edge_deficit)
        return mates is None or one.edge_deficit >= _beyond(mates)

    run = view.run(thin)
    if not run:
        return None
    course = [view.mine[day].edge_deficit or 0.0 for day in run]
    before, now = course[-2:]
    if _closes(before, now):
        return None
    mates = view.mates(run[-1], lambda s: s.edge_deficit)
    sentence = (
        Sentence(
            "The edge is {now:.0f} points thinner than the middle ({before:.0f} on {day}).",
            now=now, before=before, day=day_name(run[-2]),
        )
        if mates is None
        else Sentence(
            "The edge is {now:.0f} points thinner than the middle ({before:.0f} on {day}); its block mates "
            "have {mates:.0f} points.",
            now=now, before=before, day=day_name(run[-2]), mates=mates[0],
        )
    )  # fmt: skip
    urgency = Urgency.TODAY if _grows(course) else Urgency.SOON
    return view.look(LookKind.EDGE, urgency, run, sentence, _first_at_edge(view), now)


def _side(view: View) -> Look | None:
    if not view.now.cells:
        return None
    thin = [place for place, points in lacks(view.now.cells).items() if points >= LEAST_EDGE]
    runs = {place: run for place in thin if (run := _thin_at(view, place))}
    courses = {place: [_own_lack(view, day, place) for day in run] for place, run in runs.items()}
    stay = [place for place, course in courses.items() if not _closes(*course[-2:])]
    worst = max(stay, key=lambda place: courses[place][-1], default=None)
    return None if worst is None else _at(view, worst, runs[worst], courses[worst])


def _own_lack(view: View, day: date, place: str) -> float:
    """Points that a place lacked on a day; of a tray that was turned since, what is that place now."""
    cells = view.mine[day].cells
    if not cells:
        return 0.0
    straight = lacks(cells)[place]
    return straight if straight >= LEAST_EDGE else lacks(as_now(cells, view.now.cells))[place]


def _thin_at(view: View, place: str) -> tuple[date, ...]:
    """The newest days on which one place is thin."""

    def lack(one: Standing) -> float | None:
        return lacks(one.cells)[place] if one.cells else None

    def thin(day: date) -> bool:
        one = view.mine[day]
        mine = _own_lack(view, day, place)
        if mine < LEAST_EDGE or one.coverage < FULL_ENOUGH:
            return False
        if mine >= SURELY_THIN and one.coverage >= UP:
            return True
        mates = view.mates(day, lack)
        return one.coverage >= UP if mates is None else mine >= _beyond(mates)

    return view.run(thin)


def _at(view: View, place: str, run: Sequence[date], course: Sequence[float]) -> Look:
    """That one place is thin; `course`: by how much on the days of `run`."""
    before, now = course[-2:]
    grows = _grows(course)
    since = run[-DAYS_OF_GROWTH:][0]
    sentence = (
        Sentence(
            "{place} is {now:.0f} points thinner than the middle, and was {begun:.0f} on {day}: it grows.",
            place=BEGINNINGS[place], now=now, begun=course[-DAYS_OF_GROWTH:][0], day=day_name(since),
        )
        if grows
        else Sentence(
            "{place} is {now:.0f} points thinner than the middle ({before:.0f} on {day}).",
            place=BEGINNINGS[place], now=now, before=before, day=day_name(run[-2]),
        )
    )  # fmt: skip
    return view.look(
        LookKind.EDGE, Urgency.TODAY if grows else Urgency.SOON, run, sentence, _first_at_edge(view), now
    )


def _beyond(mates: tuple[float, float]) -> float:
    """The deficit from which a tray is out of line with its mates."""
    return mates[0] + min(FAR_BEYOND_MATES, max(EDGE_BEYOND_MATES, SPREADS * mates[1]))


def _grows(course: Sequence[float]) -> bool:
    """Whether it has grown over the last days, and not shrunk since the day before."""
    last = course[-DAYS_OF_GROWTH:]
    return last[-1] >= last[0] + GROWS and last[-1] >= last[-2]


def _closes(before: float, now: float) -> bool:
    """Whether at the pace of the last day little of it is left in a few days."""
    return before - now > 1.0 and (now - LEAST_EDGE) <= CLOSES_IN * (before - now)


# --- gaps, uniformity


def _gaps(view: View) -> Look | None:
    def gappy(day: date) -> bool:
        beside = view.beside(day, GAPS)
        if beside.mine is None or beside.mine < LEAST_GAP_SHARE or view.mine[day].coverage < UP:
            return False
        beyond = max(LEAST_GAP_SHARE / 2, SPREADS * beside.spread)
        return beside.middle is None or beside.mine >= beside.middle + beyond

    run = view.run(gappy)
    if not run:
        return None
    before, beside = view.beside(run[-2], GAPS).mine or 0.0, view.beside(run[-1], GAPS)
    now = beside.mine or 0.0
    return view.look(
        LookKind.GAPS,
        Urgency.SOON,
        run,
        _gap_words(before, run[-2], now, view.now.coverage, of_bed=beside.of_bed),
        Sentence("Look into the gaps: bare medium, seed that did not sprout, or shoots that fell over."),
        now,
    )


def _gap_words(before: float, day: date, now: float, coverage: float, *, of_bed: bool) -> Sentence:
    values = {"now": now, "before": before, "day": day_name(day), "coverage": coverage}
    if of_bed:
        return Sentence(
            "Without the wall that is seen, gaps take {now:.0f} % of the tray ({before:.0f} % on {day}), "
            "though the crop is up: {coverage:.0f} % coverage.",
            **values,
        )
    return Sentence(
        "Gaps take {now:.0f} % of the tray ({before:.0f} % on {day}), though the crop is up: "
        "{coverage:.0f} % coverage.",
        **values,
    )


def _uneven(view: View) -> Look | None:
    def uneven(day: date) -> bool:
        one = view.mine[day]
        if one.uniformity is None or one.coverage < FULL_ENOUGH:
            return False
        mates = view.mates(day, lambda s: s.uniformity)
        limit = POOR_UNIFORMITY if mates is None else mates[0] - max(LEAST_UNEVEN, SPREADS * mates[1])
        return one.uniformity <= limit

    run = view.run(uneven)
    if not run:
        return None
    now, mates = view.now, view.mates(run[-1], lambda s: s.uniformity)
    sentence = (
        Sentence(
            "Uniformity {now:.0f} % at {coverage:.0f} % coverage.", now=now.uniformity, coverage=now.coverage
        )
        if mates is None
        else Sentence(
            "Uniformity {now:.0f} % at {coverage:.0f} % coverage; its block mates have {mates:.0f} %.",
            now=now.uniformity, coverage=now.coverage, mates=mates[0],
        )
    )  # fmt: skip
    return view.look(
        LookKind.UNEVEN,
        Urgency.SOON,
        run,
        sentence,
        Sentence(
            "Look where the thin cells lie: along one side it is water or light, scattered it is seed or "
            "sowing."
        ),
        100.0 - (now.uniformity or 0.0),
    )
