"""Renamed: plans, drawings and rounds of another book, which are texts -> in names and ids of this one.

In    texts of their book; what their names are called here; their ids of trays and photos -> ours
Out   texts of this book
Not   rows and their columns (`newrows.py`), what names are asked about (`samenames.py`)

A plan names media, crops and shelves by words, not by ids: where their coir is another one than ours, their
trays lie on "coir (Kim)", and a plan that still said "coir" would find none of them. A text that is no plan
of this version stays as it is.
"""

import json
from collections.abc import Callable, Mapping
from dataclasses import replace

from data.plan.drawing import draw_of, draw_text
from data.plan.plantext import plan_of, plan_text
from data.trial import MEDIUM, Block, Factor, Plan, Treatment, crossed

__all__ = ["renamed_draw", "renamed_plan", "renamed_round"]

Name = Callable[[str, str], str]  # kind, their name -> the name here
Ids = Mapping[int, int]  # theirs -> ours
NOBODY = 0  # no row has this id


def renamed_plan(text: str, name: Name) -> str:
    """The text of a plan."""
    try:
        plan = plan_of(text)
    except ValueError:
        return text
    here = _plan(plan, name)
    return text if here == plan else plan_text(here)


def renamed_draw(seed: int, text: str, plan: str, name: Name) -> str:
    """The text of a drawing, and that of the plan it was made for."""
    try:
        draw, treatments = draw_of(seed, text), _treatments(plan_of(plan), name)
    except (ValueError, KeyError, TypeError):
        return text
    places = tuple(
        replace(
            place,
            shelf=name("shelf", place.shelf),
            crop=name("crop", place.crop),
            treatment=treatments.get(place.treatment, place.treatment),
        )
        for place in draw.places
    )
    return text if places == draw.places else draw_text(replace(draw, places=places))


def renamed_round(text: str, trays: Ids, photos: Ids) -> str:
    """The text of a round of scoring by eye: which photo of which tray is shown in which place."""
    try:
        shown = [
            [trays.get(tray, NOBODY), photos.get(photo, NOBODY), again]
            for tray, photo, again in json.loads(text)
        ]
    except (ValueError, TypeError):
        return text
    return json.dumps(shown)


def _plan(plan: Plan, name: Name) -> Plan:
    names = _treatments(plan, name)
    return replace(
        plan,
        trial=name("trial", plan.trial),
        copied_from=name("trial", plan.copied_from),
        tray_type=name("tray_type", plan.tray_type),
        crops=tuple(replace(crop, name=name("crop", crop.name)) for crop in plan.crops),
        factors=tuple(_factor(factor, name) for factor in plan.factors),
        treatments=tuple(
            Treatment(name=names[one.name], settings=_settings(one.settings, name)) for one in plan.treatments
        ),
        trusted=names.get(plan.trusted, plan.trusted),
        blocks=tuple(_block(block, name) for block in plan.blocks),
        same=_settings(plan.same, name),
    )


def _treatments(plan: Plan, name: Name) -> dict[str, str]:
    """Their names of treatments -> ours: crossings are named by their settings."""
    there, here = crossed(plan.factors), crossed([_factor(factor, name) for factor in plan.factors])
    names = {one.name: one.name for one in plan.treatments}
    return names | {old.name: new.name for old, new in zip(there, here, strict=True) if old.name in names}


def _factor(factor: Factor, name: Name) -> Factor:
    if factor.name != MEDIUM:
        return factor
    return replace(factor, levels=tuple(name("medium", level) for level in factor.levels))


def _settings(settings: Mapping[str, str], name: Name) -> dict[str, str]:
    return {what: name("medium", level) if what == MEDIUM else level for what, level in settings.items()}


def _block(block: Block, name: Name) -> Block:
    return replace(block, shelves=tuple(name("shelf", shelf) for shelf in block.shelves))
