"""Ripeness: a tray in its crop's time to cut that gains no more -> a look.

In    the `View` of a tray, what the grower says of the crop
Out   a `Look`: ready to cut; trays that were sown together become one line (`batches.py`)
Not   a fitted day of cut (`growth.py`): this is about today

Asked only of crops whose days of cutting the grower has set. Limits are common practice.
"""

from datetime import timedelta

from data.growing.conditions import Crop
from data.look import Look, LookKind, Urgency
from data.looklist.view import View
from data.sentence import Sentence

__all__ = ["look_at_ripeness"]

FULL = 80.0  # % coverage
STILL_GAINS = 3.0  # points a day


def look_at_ripeness(view: View, crop: Crop | None) -> Look | None:
    """A full stand that gains no more, on the two newest days, within the days of cutting."""
    if crop is None or crop.cut_from_day is None:
        return None
    age = view.tray.day(view.today)
    before, now = (view.mine[day].coverage for day in view.days[-2:])
    if age < crop.cut_from_day or min(before, now) < FULL or now - before >= STILL_GAINS:
        return None
    last = crop.cut_to_day is not None and age >= crop.cut_to_day
    values = {"crop": view.tray.crop, "age": age, "now": now, "from_day": crop.cut_from_day}
    sentence = (
        Sentence(
            "{crop} on day {age}, {now:.0f} % coverage; usually cut from day {from_day:.0f} on.", **values
        )
        if crop.cut_to_day is None
        else Sentence(
            "{crop} on day {age}, {now:.0f} % coverage; usually cut on day {from_day:.0f} to {to_day:.0f}.",
            to_day=crop.cut_to_day, **values,
        )
    )  # fmt: skip
    return Look(
        tray_id=view.tray.id,
        code=view.tray.code,
        what=LookKind.READY,
        urgency=Urgency.TODAY if last else Urgency.SOON,
        since=view.tray.sown_at.date() + timedelta(days=int(crop.cut_from_day)),
        sentence=sentence,
        first=Sentence("Cut it, weigh what you cut, and note the cut on the tray's sheet."),
        photo_id=view.now.photo_id,
        trays=(view.tray.id,),
    )
