"""Urgency: the reasons that speak for a look at one tray -> one line, with one answer to "how soon?".

In    the `Look`s of one tray
Out   one `Look`: the gravest reason, the others in `also`, `why_urgent` in words
Not   finding reasons (`watch.py` and its neighbours), hiding answered ones (`answers.py`)

The rule, so that a person can follow it. *Now*: it may spread or die within the day. *Today*: it gets worse
from day to day. *Soon*: it will still be there tomorrow. The most urgent reason counts; possible mold
together with canopy that goes, or with warm and wet air, counts as now; two signs that are soon and do not
speak of the same (stand, water, light or feed) count as today.
"""

from collections.abc import Sequence
from dataclasses import replace

from data.look import Look, LookKind, Urgency
from data.sentence import Sentence

__all__ = ["combined"]

ORDER = {kind: place for place, kind in enumerate(LookKind)}
SPREADING = {LookKind.VANISHED, LookKind.STACK}
CAUSES = {  # what speaks of the same is one sign: a thin edge makes a tray lag
    LookKind.DRY: "water",
    LookKind.PALING: "light or feed",
    LookKind.LATE: "stand",
    LookKind.LAGGING: "stand",
    LookKind.EDGE: "stand",
    LookKind.PATCHY: "stand",
    LookKind.GAPS: "stand",
    LookKind.UNEVEN: "stand",
}

NOW, TODAY, SOON = Urgency.NOW, Urgency.TODAY, Urgency.SOON
WHY: dict[tuple[LookKind, Urgency], Sentence] = {
    (LookKind.MOLD, NOW): Sentence("Now: spores spread to the other trays while it stands there."),
    (LookKind.SUSPECT, NOW): Sentence("Now: it has grown, and what grows may be mold."),
    (LookKind.SUSPECT, TODAY): Sentence("Today: if it is mold, it is larger tomorrow."),
    (LookKind.SUSPECT, SOON): Sentence("Soon: it is faint and new; the next photo tells whether it grows."),
    (LookKind.VANISHED, NOW): Sentence("Now: wilting kills within hours, and damping off spreads."),
    (LookKind.DRY, NOW): Sentence("Now: it is past the weight at which it wants water."),
    (LookKind.DRY, TODAY): Sentence("Today: by tonight it is past the weight at which it wants water."),
    (LookKind.DRY, SOON): Sentence("Soon: it wants water tomorrow."),
    (LookKind.STACK, TODAY): Sentence("Today: mold begins where it stays warm and wet for hours."),
    (LookKind.LATE, TODAY): Sentence("Today: it is far behind, and seed that lies dry or cold is soon lost."),
    (LookKind.LATE, SOON): Sentence("Soon: it is behind, and may still catch up."),
    (LookKind.LAGGING, TODAY): Sentence("Today: it is far behind on two days running."),
    (LookKind.LAGGING, SOON): Sentence("Soon: it is behind on two days running, by less than 20 points."),
    (LookKind.EDGE, TODAY): Sentence(
        "Today: it grows from day to day, and what has dried out comes back slowly."
    ),
    (LookKind.EDGE, SOON): Sentence("Soon: it stays as it is."),
    (LookKind.PATCHY, SOON): Sentence("Soon: what is bare stays bare unless it is merely dry."),
    (LookKind.GAPS, SOON): Sentence("Soon: the gaps are there on two days, and hardly change."),
    (LookKind.UNEVEN, SOON): Sentence("Soon: it is uneven on two days, and hardly changes."),
    (LookKind.PALING, SOON): Sentence("Soon: colour changes over days, and light or feed takes days to act."),
    (LookKind.UNUSABLE, TODAY): Sentence("Today: a photo can be taken again only today."),
    (LookKind.DOUBTED, TODAY): Sentence("Today: a photo can be taken again only today."),
    (LookKind.NO_PHOTO, TODAY): Sentence("Today: nobody has looked at it for more than a day."),
    (LookKind.NO_PHOTO, SOON): Sentence("Soon: only today's photo is missing."),
    (LookKind.UNMATCHED, SOON): Sentence("Soon: the photo is there, and only waits for your word."),
    (LookKind.READY, TODAY): Sentence("Today: the last day of its time to cut has come."),
    (LookKind.READY, SOON): Sentence("Soon: it gains little now, and can be cut on any of the next days."),
}
PLAIN = {
    NOW: Sentence("Now: it may spread or die within the day."),
    TODAY: Sentence("Today: it gets worse from day to day."),
    SOON: Sentence("Soon: it will still be there tomorrow."),
}
MOLD_SPREADS = Sentence(
    "Now: possible mold together with canopy that goes, or with warm and wet air, may spread by tomorrow."
)
TWO_SIGNS = Sentence("Today: each sign alone could wait, two of them on one tray should not.")


def combined(looks: Sequence[Look]) -> Look:
    """One line for one tray; `looks` are its reasons, at least one."""
    told = [look if look.why_urgent else replace(look, why_urgent=_why(look)) for look in looks]
    told.sort(key=lambda look: (look.urgency, ORDER[look.what]))
    first = told[0]
    kinds = {look.what for look in told}
    if LookKind.SUSPECT in kinds and kinds & SPREADING:
        suspect = next(look for look in told if look.what is LookKind.SUSPECT)
        rest = [look for look in told if look is not suspect]
        return replace(suspect, urgency=NOW, why_urgent=MOLD_SPREADS, also=tuple(rest))
    urgency, why = first.urgency, first.why_urgent
    if urgency is SOON and len({CAUSES[kind] for kind in kinds & CAUSES.keys()}) >= 2:
        first = next(look for look in told if look.what in CAUSES)
        urgency, why = TODAY, TWO_SIGNS
    rest = [look for look in told if look is not first]
    return replace(first, urgency=urgency, why_urgent=why, also=tuple(rest))


def _why(look: Look) -> Sentence:
    return WHY.get((look.what, look.urgency), PLAIN[look.urgency])
