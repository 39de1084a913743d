"""Sown tray: a place of a drawing -> the tray that is sown there.

In    a plan, a place, when it is sown, what is usual for its crop and medium
Out   a `NewTray`
Not   which places wait, keeping it (`chapters/drawbook.py`)
"""

from dataclasses import replace
from datetime import datetime, timedelta
from typing import Any

from data.plan.drawing import Place
from data.records import NewTray
from data.trial import YES_NO, Plan

__all__ = ["new_tray"]


def new_tray(plan: Plan, place: Place, sown_at: datetime, usual: NewTray) -> NewTray:
    """A tray at its place, as the plan wants it; what the plan leaves open is as usual."""
    crop = plan.crop(place.crop)
    settings = dict(plan.same) | dict(plan.treatment(place.treatment).settings)
    said: dict[str, Any] = {
        name: settings[name] for name in ("watering", "feed", "seating", "light") if name in settings
    }
    for factor, field in (("heat mat", "heat_mat"), ("stacking", "stacked")):
        if factor in settings:
            said[field] = settings[factor] == YES_NO[factor][0]
    for field in ("sowing_rate_g", "soak_hours", "seed_lot"):
        if getattr(crop, field) is not None:
            said[field] = getattr(crop, field)
    if crop.blackout_days is not None:
        covered = crop.blackout_days > 0
        said["blackout_from"] = sown_at if covered else None
        said["blackout_to"] = sown_at + timedelta(days=crop.blackout_days) if covered else None
    return replace(
        usual,
        code=place.code,
        tag_number=place.tag_number,
        shelf=place.shelf,
        position=place.position,
        block=place.block,
        trial=plan.trial,
        tray_type=plan.tray_type,
        **said,
    )
