"""Conditions: what a crop, a medium and a kind of tray bring along, so that a new tray is soon told.

In    the last tray of its kind, or the grower's own defaults; codes in use
Out   a `NewTray` that needs a look and no typing; records of crops and media, and the one of tray types
Not   keeping any of it (`chapters/traybook.py`), what is plausible (`croptable.py`)
"""

import re
from collections.abc import Collection, Mapping
from dataclasses import dataclass, fields, replace
from datetime import datetime, timedelta

from data.records import NewTray, Tray
from vision.traytype import TrayType

__all__ = [
    "CROPS_OWN", "SHARED", "Crop", "Medium", "TrayType", "as_new", "from_defaults", "like", "next_code",
    "sharing",
]  # fmt: skip

SHARED: Mapping[str, tuple[str, ...]] = {
    "seed_lot": ("seed_lot",),
    "sowing_rate_g": ("sowing_rate_g",),
    "soak_hours": ("soak_hours",),
    "seating": ("seating",),
    "blackout": ("blackout_from", "blackout_to"),
    "stacked": ("stacked",),
    "watering": ("watering",),
    "feed": ("feed",),
    "heat_mat": ("heat_mat",),
    "light": ("light",),
}  # what many trays can have alike, with its fields in `NewTray`
CROPS_OWN = frozenset({"seed_lot", "sowing_rate_g", "soak_hours"})  # mean nothing to another crop


@dataclass(frozen=True, slots=True, kw_only=True)
class Crop:
    """A crop with what the grower usually does with it; None where nobody has said."""

    name: str
    variety: str = ""
    sowing_rate_g: float | None = None  # dry seed a tray
    soak_hours: float | None = None
    blackout_days: float | None = None
    stacked: bool | None = None
    light: str | None = None
    cut_from_day: float | None = None  # days since sowing
    cut_to_day: float | None = None
    base_c: float | None = None  # temperature below which it does not grow
    note: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Medium:
    """A medium with what the grower usually does with it."""

    name: str
    kind: str = ""  # a `MediumKind`; empty until somebody has said it
    trusted: bool = False  # the one that the others are held against
    seating: str | None = None
    watering: str | None = None
    feed: str | None = None
    note: str = ""


def as_new(tray: Tray) -> NewTray:
    """A kept tray as it would be added."""
    return NewTray(**{field.name: getattr(tray, field.name) for field in fields(NewTray)})


def like(last: Tray, sown_at: datetime, code: str) -> NewTray:
    """A copy of a tray, sown at another time.

    Blackout moves with the sowing. Tag, place on the shelf, note, trial and block stay behind: a tag is on
    one tray, and the trays of a trial come from its plan.
    """
    moved = sown_at - last.sown_at
    return replace(
        as_new(last),
        code=code,
        sown_at=sown_at,
        blackout_from=last.blackout_from and last.blackout_from + moved,
        blackout_to=last.blackout_to and last.blackout_to + moved,
        tag_number=None,
        position=None,
        trial=None,
        block=None,
        note="",
    )


def sharing(tray: NewTray, model: NewTray, names: Collection[str]) -> NewTray:
    """The tray with some conditions of another one, named as in `SHARED`.

    Blackout moves with the sowing. What belongs to a crop stays as it is on a tray of another crop.
    """
    moved = tray.sown_at - model.sown_at
    values = {
        field: getattr(model, field)
        for name in names
        if tray.crop == model.crop or name not in CROPS_OWN
        for field in SHARED[name]
    }
    for field in SHARED["blackout"]:
        if values.get(field) is not None:
            values[field] += moved
    return replace(tray, **values)


def from_defaults(crop: Crop, medium: Medium, sown_at: datetime, code: str) -> NewTray:
    """A tray of a kind that has not been sown yet, by what the grower has said of its crop and medium."""
    days = crop.blackout_days
    return NewTray(
        code=code,
        crop=crop.name,
        medium=medium.name,
        sown_at=sown_at,
        seating=medium.seating or "in the tray",
        sowing_rate_g=crop.sowing_rate_g,
        soak_hours=crop.soak_hours,
        blackout_from=None if not days else sown_at,
        blackout_to=None if not days else sown_at + timedelta(days=days),
        stacked=crop.stacked,
        watering=medium.watering,
        feed=medium.feed,
        light=crop.light,
    )


def next_code(code: str, taken: Collection[str]) -> str:
    """The first free code after this one: A1 -> A2, A09 -> A10, tom -> tom 2."""
    begin, digits = _parted(code)
    number = int(digits) if digits else 1
    while True:
        number += 1
        proposed = f"{begin}{number:0{len(digits)}d}" if digits else f"{begin} {number}"
        if proposed not in taken:
            return proposed


def _parted(code: str) -> tuple[str, str]:
    found = re.fullmatch(r"(.*?)([0-9]*)", code, re.DOTALL)
    assert found is not None  # both parts may be empty
    return found[1], found[2]
