"""Builders: an ordinary plan; a test says only what it is about."""

from datetime import date
from typing import Any

from data.plan.blocks import ShelfPlaces, block_size, lay_blocks
from data.trial import CropPlan, Factor, Measure, MeasureKind, Plan, Question, crossed

SOWING = date(2026, 3, 2)
MEDIA = Factor(name="medium", levels=("peat mix", "coir", "fibre mat"))
SHELVES = tuple(ShelfPlaces(name=name, places=6) for name in "ABC")


def a_plan(blocks: int = 3, **special: Any) -> Plan:
    """Broccoli and radish on peat mix (trusted), coir and fibre mat, a block on each of shelves A, B, C."""
    factors = special.pop("factors", (MEDIA,))
    shelves = special.pop("shelves", SHELVES)
    crops = special.pop(
        "crops",
        (
            CropPlan(name="broccoli", read_on_day=9, sowing_rate_g=18.0, blackout_days=2.0),
            CropPlan(name="radish", read_on_day=8, sowing_rate_g=35.0),
        ),
    )
    treatments = special.pop("treatments", crossed(factors))
    of_shelves = next((factor for factor in factors if factor.by_shelf), None)
    settings = 1 if of_shelves is None else len(of_shelves.levels)
    size = block_size(len(crops), treatments, 1, of_shelves)
    ordinary = {
        "trial": "Mat against peat",
        "question": Question.AS_GOOD,
        "words": "Is the mat as good as the peat mix?",
        "trusted": treatments[0].name,
        "measures": (Measure(kind=MeasureKind.SCORE, margin=5.0),),
        "blocks": lay_blocks(shelves, blocks, size, SOWING, settings=settings).blocks,
        "same": {"watering": "bottom", "feed": "none"},
    }
    return Plan(crops=crops, factors=factors, treatments=treatments, **(ordinary | special))
