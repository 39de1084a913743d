"""Ripeness: trays in their crop's time to cut that gain no more -> one look for all sown together.

In    the `View` of a tray, what the grower says of the crop; then the looks of all trays
Out   a `Look`: ready to cut; trays of one crop and sowing day on one shelf are one line
Not   a fitted day of cut (`growth.py`): this is about today

Asked only of crops whose days of cutting the grower has set. Limits are common practice.
"""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import replace
from datetime import timedelta

from data.conditions import Crop
from data.look import Look, LookKind, Urgency
from data.numbers import TrayId
from data.records import Tray
from data.sentence import Sentence
from data.standing import View

__all__ = ["look_at_ripeness", "together"]

FULL = 80.0  # % coverage
STILL_GAINS = 3.0  # points a day
CODES_NAMED = 6


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
        first=Sentence("Cut it, weigh what you cut, and mark the tray as done on its sheet."),
        photo_id=view.now.photo_id,
        trays=(view.tray.id,),
    )


def together(looks: Iterable[Look], trays: Mapping[TrayId, Tray]) -> Iterator[Look]:
    """The same looks, with one line in place of many where trays that were sown together are merely ready."""
    batches: dict[tuple[object, ...], list[Look]] = {}
    for look in looks:
        if look.what is not LookKind.READY or look.also:
            yield look
            continue
        tray = trays[look.tray_id]
        batches.setdefault((tray.crop, tray.sown_at.date(), tray.shelf, look.urgency), []).append(look)
    for batch in batches.values():
        yield batch[0] if len(batch) == 1 else _one_line(batch)


def _one_line(batch: Sequence[Look]) -> Look:
    first, codes = batch[0], [look.code for look in batch]
    named = ", ".join(codes[:CODES_NAMED])
    sentence = (
        Sentence("{codes}: {what}", codes=named, what=first.sentence)
        if len(codes) <= CODES_NAMED
        else Sentence(
            "{codes} and {more} more: {what}", codes=named, more=len(codes) - CODES_NAMED, what=first.sentence
        )
    )
    return replace(first, sentence=sentence, trays=tuple(look.tray_id for look in batch))
