"""Vanishing: canopy that was there and is gone -> a look.

In    the `View` of one tray
Out   a `Look`: the whole stand fell back, or a patch of it did
Not   canopy that never came (`emergence.py`, `evenness.py`)

The second best of a tray's own earlier days is what it had: one day alone may have been read too high.
Shoots that damp off fall over in a patch that spreads, so the cells are asked as well as the whole. Limits
are common practice: a cell is 42 mm square, four of them more than a leaf that turned.
"""

from data.look import Look, LookKind, Urgency, day_name
from data.looklist.places import COLUMNS, ROWS, as_now, lost_patch
from data.looklist.view import View
from data.sentence import Sentence

__all__ = ["look_at_vanishing"]

FULL_ENOUGH = 30.0  # % coverage from which canopy can be said to vanish
LEAST_VANISHED = 8.0  # points of coverage below what the tray has had on two days
LEAST_OF_OPEN = 12.0  # the same of a stand that has not closed, which is read less surely
CLOSED = 85.0  # % coverage
LEAST_LOST = 25.0  # points that a cell lacks on both days
LEAST_CELLS = 4

FIRST = Sentence(
    "Feel the medium: dry means wilting, water it from below; wet and slimy means damping off, so keep "
    "the tray away from the others."
)


def look_at_vanishing(view: View) -> Look | None:
    """What fell back on the two newest days, the whole stand before a patch of it."""
    newest = view.days[-2:]
    earlier = [day for day in view.days if day < newest[0]]
    if len(earlier) < 2:
        return None
    best = sorted((view.mine[day].coverage, day) for day in earlier)[-2][1]
    had, now = view.mine[best], view.now
    if had.coverage < FULL_ENOUGH:
        return None
    limit = had.coverage - (LEAST_VANISHED if had.coverage >= CLOSED else LEAST_OF_OPEN)
    if all(view.mine[day].coverage <= limit for day in newest):
        run = view.run(lambda day: day > best and view.mine[day].coverage <= limit)
        return view.look(
            LookKind.VANISHED,
            Urgency.NOW,
            run or newest,
            Sentence(
                "Coverage fell from {before:.0f} % on {day} to {now:.0f} %; two days running below what "
                "it was.",
                before=had.coverage,
                day=day_name(best),
                now=now.coverage,
            ),
            FIRST,
            had.coverage - now.coverage,
        )
    return _patch(view)


def _patch(view: View) -> Look | None:
    earlier, before, *newest = view.days[-4:]
    seen = [view.mine[day].cells for day in (earlier, before, *newest)]
    if not all(seen) or view.mine[before].coverage < FULL_ENOUGH:
        return None
    now = (as_now(seen[2], seen[3]), seen[3])
    patch = set(lost_patch(seen[1], now, LEAST_LOST))
    if len(patch) >= LEAST_CELLS:  # and the day before that had it too
        patch &= set(lost_patch(seen[0], now, LEAST_LOST / 2))
    if len(patch) < LEAST_CELLS:
        return None
    share = 100.0 * len(patch) / (ROWS * COLUMNS)
    return view.look(
        LookKind.VANISHED,
        Urgency.NOW,
        newest,
        Sentence(
            "A patch of {share:.0f} % of the tray lost its canopy after {day}, and lacks it on two days.",
            share=share,
            day=day_name(before),
        ),
        FIRST,
        share,
    )
