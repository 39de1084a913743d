"""Ripeness: a tray in its crop's time to cut that gains no more -> a look.

In    the `View` of a tray, what the grower says of the crop; days on which the last trays of it were cut
Out   a `Look`: ready to cut; trays that were sown together become one line (`batches.py`)
Not   a fitted day of cut (`growth.py`): this is about today

Asked only of crops whose days of cutting the grower has set, or shown by at least three trays that were cut:
then the middle half of the last ones tells them. Limits are common practice.
"""

from collections.abc import Sequence
from dataclasses import replace
from datetime import timedelta

from data.growing.conditions import Crop
from data.look import Look, LookKind, Urgency
from data.looklist.view import View
from data.sentence import Sentence

__all__ = ["look_at_ripeness", "with_usual_days"]

LEAST_CUT = 3  # trays
FULL = 80.0  # % coverage
STILL_GAINS = 3.0  # points a day


def with_usual_days(crop: Crop, cut_on: Sequence[int]) -> Crop:
    """The crop with the days since sowing on which its trays are usually cut, where nobody has said them."""
    if crop.cut_from_day is not None or len(cut_on) < LEAST_CUT:
        return crop
    days, quarter = sorted(cut_on), len(cut_on) // 4
    return replace(crop, cut_from_day=float(days[quarter]), cut_to_day=float(days[-1 - quarter]))


def look_at_ripeness(view: View, crop: Crop | None) -> Look | None:
    """A full stand that gains no more, on the two newest days, within the days of cutting."""
    if crop is None or crop.cut_from_day is None:
        return None
    age = view.tray.day(view.today)
    before, now = (view.mine[day].coverage for day in view.days[-2:])
    if age < crop.cut_from_day or min(before, now) < FULL or now - before >= STILL_GAINS:
        return None
    last = crop.cut_to_day is not None and age >= crop.cut_to_day
    return Look(
        tray_id=view.tray.id,
        code=view.tray.code,
        what=LookKind.READY,
        urgency=Urgency.TODAY if last else Urgency.SOON,
        since=view.tray.sown_at.date() + timedelta(days=int(crop.cut_from_day)),
        sentence=_words(crop, age, now),
        first=Sentence("Cut it, weigh what you cut, and note the cut on the tray's sheet."),
        photo_id=view.now.photo_id,
        trays=(view.tray.id,),
    )


def _words(crop: Crop, age: int, now: float) -> Sentence:
    """How far it is, and when its crop is usually cut."""
    values = {"crop": crop.name, "age": age, "now": round(now), "from_day": crop.cut_from_day}
    if crop.cut_to_day is None:
        return Sentence(
            "{crop} on day {age}, {now} % coverage; usually cut from day {from_day:.0f} on.", **values
        )
    if crop.cut_to_day == crop.cut_from_day:
        return Sentence("{crop} on day {age}, {now} % coverage; usually cut on day {from_day:.0f}.", **values)
    return Sentence(
        "{crop} on day {age}, {now} % coverage; usually cut on day {from_day:.0f} to {to_day:.0f}.",
        to_day=crop.cut_to_day,
        **values,
    )
