"""Draft plan: from the choices to the plan that is kept, and from a kept plan back to the choices.

In    a draft that lacks nothing; a kept plan, with the shelves that the grower has
Out   `Plan`; `Draft`
Not   the choices (`draft.py`), keeping the plan (`chapters/planbook.py`)
"""

from collections.abc import Mapping, Sequence
from dataclasses import replace
from datetime import date
from itertools import pairwise

from data.desirability import USUAL, rule_text
from data.plan.blocks import ShelfPlaces, block_size
from data.plan.draft import (
    MARGINS,
    ROUND_DAYS,
    Draft,
    Laid,
    Step,
    factors_of,
    guessed_spread,
    laid_like,
    layout_of,
    treatments_of,
    trusted_of,
    unit_of,
)
from data.plan.draftneeds import lacking
from data.trial import MEDIUM, Block, Measure, MeasureKind, Plan

__all__ = ["draft_of", "plan_from"]


def plan_from(draft: Draft) -> Plan:
    """The plan; raises `ValueError` where something is lacking up to the blocks."""
    missing = [sentence for step in range(Step.DRAW) for sentence in lacking(draft, step)]
    if missing:
        raise ValueError(missing[0])
    varies = {factor.name for factor in factors_of(draft)}
    same = {name: level for name, level in draft.same.items() if name not in varies}
    if len(draft.media) == 1:
        same[MEDIUM] = draft.media[0]
    return Plan(
        trial=draft.trial.strip(),
        question=draft.question,
        words=draft.words.strip(),
        crops=draft.crops,
        factors=factors_of(draft),
        treatments=treatments_of(draft),
        trusted=trusted_of(draft),
        measures=_measures(draft),
        score=dict(draft.score),
        blocks=layout_of(draft).blocks,
        spread=draft.spread,
        same=same,
        copied_from=draft.copied_from,
    )


def _measures(draft: Draft) -> tuple[Measure, ...]:
    """The one that decides, then the others with their usual margins: they are fixed beforehand, too."""
    kinds = (draft.measure, *(kind for kind in MeasureKind if kind is not draft.measure))
    return tuple(
        Measure(
            kind=kind,
            margin=draft.margin if kind is draft.measure else MARGINS[kind],
            unit=unit_of(kind),
        )
        for kind in kinds
    )


def draft_of(plan: Plan, shelves: Sequence[ShelfPlaces] = ()) -> Draft:
    """The choices behind a kept plan.

    Parameters
    ----------
    shelves : with the places that they have; else they have as many as the plan's blocks took.
    """
    draft = _choices_of(plan, {shelf.name: shelf.places for shelf in shelves})
    if not plan.blocks:
        return draft
    return replace(draft, laid=Laid(blocks=plan.blocks, like=laid_like(draft)))


def _choices_of(plan: Plan, known: Mapping[str, int]) -> Draft:
    media = next((factor.levels for factor in plan.factors if factor.name == MEDIUM), ())
    measure = plan.primary
    return Draft(
        trial=plan.trial,
        question=plan.question,
        words=plan.words,
        measure=measure.kind,
        margin=measure.margin,
        crops=plan.crops,
        media=media or tuple(filter(None, [plan.same.get(MEDIUM)])),
        trusted=plan.trusted_medium or "",
        other=next((factor for factor in plan.factors if factor.name != MEDIUM), None),
        same={name: level for name, level in plan.same.items() if name != MEDIUM},
        score=plan.score or rule_text(USUAL),
        trays=len(plan.blocks),
        spread=plan.spread or guessed_spread(measure.kind),
        shelves=_shelves_of(plan, known),
        begins=min((block.sow_on for block in plan.blocks), default=date(2000, 1, 1)),
        round_days=_round_days(plan.blocks),
        copied_from=plan.copied_from,
    )


def _shelves_of(plan: Plan, known: Mapping[str, int]) -> tuple[ShelfPlaces, ...]:
    size = block_size(len(plan.crops), plan.treatments, plan.per_block, plan.shelf_factor)
    places: dict[str, int] = {}
    window: dict[str, str] = {}
    for block in plan.blocks:
        for shelf in block.shelves:
            places[shelf] = max(places.get(shelf, 0), block.first_place - 1 + size)
            window[shelf] = window.get(shelf) or block.window_end
    return tuple(
        ShelfPlaces(name=shelf, places=max(count, known.get(shelf, 0)), window_end=window[shelf])
        for shelf, count in places.items()
    )


def _round_days(blocks: Sequence[Block]) -> int:
    days = sorted({block.sow_on for block in blocks})
    return min(((later - earlier).days for earlier, later in pairwise(days)), default=ROUND_DAYS)
