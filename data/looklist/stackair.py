"""Stack air: the log of a shelf on which covered trays press on each other -> a look before mold begins.

In    a tray, samples of the air of its shelf, now
Out   a `Look`: warm and wet under the stack
Not   what counts as wet (`growing/air.py`)

Under a stack no air moves, so that what the shelf's sensor says is the best that the trays have. Eight warm
and wet hours within a day: from memory, a starting value.
"""

from collections.abc import Sequence
from datetime import datetime, timedelta

from data.growing.air import AirSample, wet_hours
from data.look import Look, LookKind, Urgency
from data.records import Tray
from data.sentence import Sentence

__all__ = ["SPAN", "is_stacked", "look_at_stack"]

SPAN = timedelta(hours=24)
WARM_AND_WET_H = 8.0
KNOWN_H = 6.0  # logged, before anything is said


def is_stacked(tray: Tray, now: datetime) -> bool:
    """Whether the tray stands covered under others now."""
    if not tray.stacked or tray.blackout_to is None or tray.blackout_to <= now:
        return False
    return (tray.blackout_from or tray.sown_at) <= now


def look_at_stack(tray: Tray, samples: Sequence[AirSample], now: datetime) -> Look | None:
    """Warm and wet for too many of the last 24 hours."""
    if not samples or not is_stacked(tray, now):
        return None
    begin = max(now - SPAN, tray.blackout_from or tray.sown_at)
    hours = wet_hours(samples, begin, now)
    if hours.warm_and_wet is None or hours.known < KNOWN_H or hours.warm_and_wet < WARM_AND_WET_H:
        return None
    return Look(
        tray_id=tray.id,
        code=tray.code,
        what=LookKind.STACK,
        urgency=Urgency.TODAY,
        since=begin.date(),
        sentence=Sentence(
            "Warm and wet for {hot:.0f} of the last {known:.0f} logged hours on shelf {shelf}, while it "
            "stands under others.",
            hot=hours.warm_and_wet,
            known=hours.known,
            shelf=tray.shelf,
        ),
        first=Sentence(
            "Take the stack apart, look at each tray, let it breathe for an hour, and stack again cooler or "
            "not at all."
        ),
        size=hours.warm_and_wet,
        trays=(tray.id,),
    )
