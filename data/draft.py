"""Draft: a plan while it is being made: few choices of the grower, and the plan that follows from them.

In    the choices, one frozen record that may still lack things
Out   treatments, blocks, `Plan`; what is lacking, in words; a draft again from a kept plan
Not   keeping it (`planbook.py`), chances and costs in words (`planwords.py`)
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import date
from itertools import pairwise
from typing import Any

from data.blocks import Layout, ShelfPlaces, WhyNoBlocks, block_size, lay_blocks
from data.camerabias import coverage_sd_between_media
from data.desirability import USUAL, rule_text
from data.power import Design
from data.sentence import Sentence
from data.spread import GUESS_POINTS, GUESS_YIELD_PCT
from data.trial import (
    MEDIUM,
    Block,
    CropPlan,
    Factor,
    Measure,
    MeasureKind,
    Plan,
    Question,
    Spread,
    Treatment,
    crossed,
)

__all__ = [
    "GUESS_SOURCE", "MARGINS", "Draft", "Laid", "Step", "camera_sd_of", "design_of", "draft_of",
    "factors_of", "guessed_spread", "lacking", "laid_like", "layout_of", "plan_from", "treatments_of",
    "trusted_of", "unit_of", "with_measure",
]  # fmt: skip

MARGINS = {MeasureKind.SCORE: 5.0, MeasureKind.YIELD: 10.0, MeasureKind.EYE: 5.0}
GUESS_SOURCE = "a guess, no trays of yours yet"
ROUND_DAYS = 14
METHOD = "learned"  # that will score the photos


class Step:
    """The steps in their order."""

    QUESTION, VARIES, TRAYS, BLOCKS, DRAW, PRINT = range(6)


def guessed_spread(measure: MeasureKind) -> Spread:
    """What is assumed while the grower's own trays say nothing."""
    sd = GUESS_YIELD_PCT if measure is MeasureKind.YIELD else GUESS_POINTS
    return Spread(sd=sd, source=GUESS_SOURCE)


def unit_of(measure: MeasureKind) -> str:
    """Of margin and spread."""
    return "%" if measure is MeasureKind.YIELD else "points"


@dataclass(frozen=True, slots=True, kw_only=True)
class Draft:
    """The choices so far."""

    trial: str = ""
    question: Question = Question.AS_GOOD
    words: str = ""
    measure: MeasureKind = MeasureKind.SCORE
    margin: float = 5.0  # in `unit_of(measure)`
    crops: tuple[CropPlan, ...] = ()
    media: tuple[str, ...] = ()
    trusted: str = ""  # a medium
    other: Factor | None = None  # what varies beside the medium; its first level is how it usually is
    same: Mapping[str, str] = field(default_factory=dict)
    score: Mapping[str, Any] = field(default_factory=lambda: rule_text(USUAL))  # weights of the canopy score
    trays: int = 6  # of each treatment and crop
    spread: Spread = field(default_factory=lambda: guessed_spread(MeasureKind.SCORE))
    shelves: tuple[ShelfPlaces, ...] = ()
    begins: date
    round_days: int = ROUND_DAYS
    earlier: tuple[Block, ...] = ()  # blocks that are sown: they stay
    copied_from: str = ""
    laid: "Laid | None" = None  # the blocks of the kept plan behind this draft


@dataclass(frozen=True, slots=True, kw_only=True)
class Laid:
    """Blocks as they were laid, and for what: while that is the same they stay."""

    blocks: tuple[Block, ...]
    like: tuple[object, ...]


# --- what follows from the choices


def factors_of(draft: Draft) -> tuple[Factor, ...]:
    """What varies: media where there are several, then the other factor."""
    media = Factor(name=MEDIUM, levels=draft.media)
    both = (media if len(draft.media) > 1 else None, draft.other)
    return tuple(factor for factor in both if factor is not None and len(factor.levels) > 1)


def treatments_of(draft: Draft) -> tuple[Treatment, ...]:
    """Every combination; for "does it close the gap?" the trusted medium stays as it usually is."""
    crossing = crossed(factors_of(draft))
    if draft.question is not Question.GAP or draft.other is None:
        return crossing
    usual = draft.other.levels[0]
    return tuple(
        one
        for one in crossing
        if one.settings.get(MEDIUM) != draft.trusted or one.settings.get(draft.other.name) == usual
    )


def trusted_of(draft: Draft) -> str:
    """Name of the trusted treatment: the trusted medium with everything else as it usually is; "" if none."""
    for one in treatments_of(draft):
        medium = one.settings.get(MEDIUM, draft.trusted)
        usual = draft.other is None or one.settings.get(draft.other.name) == draft.other.levels[0]
        if medium == draft.trusted and usual:
            return one.name
    return ""


def _settings(draft: Draft) -> int:
    """Of a factor that belongs to whole shelves; 1 where none does."""
    other = draft.other
    return len(other.levels) if other is not None and other.by_shelf else 1


def layout_of(draft: Draft) -> Layout:
    """The blocks on the grower's shelves; those of the kept plan while nothing about them is changed."""
    if draft.laid is not None and draft.laid.like == laid_like(draft):
        return Layout(blocks=draft.laid.blocks, rounds=max(block.round for block in draft.laid.blocks))
    size = block_size(len(draft.crops), len(treatments_of(draft)), 1, _settings(draft))
    wanted = max(0, draft.trays - len(draft.earlier))
    return lay_blocks(
        draft.shelves,
        wanted,
        size,
        draft.begins,
        round_days=draft.round_days,
        settings=_settings(draft),
        earlier=draft.earlier,
    )


def laid_like(draft: Draft) -> tuple[object, ...]:
    """All that the blocks depend on."""
    size = block_size(len(draft.crops), len(treatments_of(draft)), 1, _settings(draft))
    return (size, _settings(draft), draft.shelves, draft.begins, draft.round_days, draft.trays, draft.earlier)


def design_of(draft: Draft) -> Design:
    """What the chances are reckoned with."""
    return Design(
        blocks=draft.trays,
        treatments=len(treatments_of(draft)),
        all_pairs=draft.question is Question.BEST,
        camera_sd=camera_sd_of(draft),
    )


def camera_sd_of(draft: Draft) -> float:
    """How differently the camera may see two media, in points of the score; about one a point of coverage."""
    by_photo = draft.measure is MeasureKind.SCORE and len(draft.media) > 1
    return coverage_sd_between_media(METHOD) if by_photo else 0.0


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
    factor = plan.shelf_factor
    settings = 1 if factor is None else len(factor.levels)
    size = block_size(len(plan.crops), len(plan.treatments), plan.per_block, settings)
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


# --- what is lacking


def lacking(draft: Draft, step: int) -> tuple[Sentence, ...]:
    """What has to be said before the step is done; nothing where it is."""
    match step:
        case Step.QUESTION:
            return _lacking_question(draft)
        case Step.VARIES:
            return _lacking_treatments(draft)
        case Step.TRAYS:
            few = Sentence("Plan at least two trays of each: with one, nothing can be told from chance.")
            return (few,) if draft.trays < 2 else ()
        case Step.BLOCKS:
            return _lacking_blocks(draft)
        case _:
            return ()


def _lacking_question(draft: Draft) -> tuple[Sentence, ...]:
    found = []
    if not draft.trial.strip():
        found.append(Sentence("Give the trial a name."))
    if draft.margin <= 0:
        found.append(Sentence("The margin must be more than nothing: no trial can show that two are equal."))
    return tuple(found)


def _lacking_treatments(draft: Draft) -> tuple[Sentence, ...]:
    found = []
    if not draft.crops:
        found.append(Sentence("Choose at least one crop."))
    if not draft.media:
        found.append(Sentence("Choose the media."))
    elif len(treatments_of(draft)) < 2:
        found.append(Sentence("Choose a second medium, or something else that varies."))
    elif draft.trusted not in draft.media:
        found.append(Sentence("Say which medium you trust: the others are held against it."))
    if draft.question is Question.GAP and draft.other is None:
        found.append(Sentence("Say what shall close the gap: feed, watering, another seating."))
    if draft.other is not None and len({*draft.other.levels, ""}) < 3:
        found.append(Sentence("Give {what} two different settings.", what=draft.other.name))
    return tuple(found)


def _lacking_blocks(draft: Draft) -> tuple[Sentence, ...]:
    if not draft.shelves:
        return (Sentence("Say which shelves the trial may use."),)
    layout = layout_of(draft)
    size = block_size(len(draft.crops), len(treatments_of(draft)), 1, _settings(draft))
    if layout.why_none is WhyNoBlocks.NO_SHELF:
        return (
            Sentence(
                "A block holds {n} trays, and no shelf has so many places: use a longer shelf, or plan fewer "
                "crops or media.",
                n=size,
            ),
        )
    if layout.why_none is WhyNoBlocks.FEW_SHELVES:
        return (
            Sentence(
                "{what} is set for whole shelves: that cannot be tested with one shelf. It takes {n} shelves "
                "at the same time, one for each setting, and at least two such sets or rounds.",
                what=draft.other.name if draft.other else "",
                n=_settings(draft),
            ),
        )
    return ()


def with_measure(draft: Draft, measure: MeasureKind) -> Draft:
    """Another measure brings its own margin and spread."""
    return replace(draft, measure=measure, margin=MARGINS[measure], spread=guessed_spread(measure))
