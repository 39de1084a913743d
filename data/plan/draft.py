"""Draft: a plan while it is being made: few choices of the grower, and what follows from them.

In    the choices, one frozen record that may still lack things
Out   treatments, the trusted one, blocks, the design that the chances are reckoned with
Not   what is lacking (`draftneeds.py`), the plan that is kept (`draftplan.py`), chances and costs in words
      (`words.py`)
"""

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from datetime import date
from typing import Any

from data.desirability import USUAL, Seen, kept_rule, rule_text, score_canopy
from data.plan.blocks import Layout, ShelfPlaces, block_size, lay_blocks
from data.plan.camerabias import score_sd_between_media
from data.plan.spread import GUESS_POINTS, GUESS_YIELD_PCT
from data.statistics.power import Design
from data.trial import (
    MEDIUM,
    Block,
    CropPlan,
    Factor,
    MeasureKind,
    Question,
    Spread,
    Treatment,
    crossed,
)

__all__ = [
    "GUESS_SOURCE", "MARGINS", "ROUND_DAYS", "Draft", "Laid", "Step", "camera_sd_of", "design_of",
    "factors_of", "guessed_spread", "laid_like", "layout_of", "settings_of", "size_of", "treatments_of",
    "trusted_of", "unit_of", "with_measure",
]  # fmt: skip

MARGINS = {MeasureKind.SCORE: 5.0, MeasureKind.YIELD: 10.0, MeasureKind.EYE: 5.0}
GUESS_SOURCE = "a guess, no trays of yours yet"
ROUND_DAYS = 14
METHOD = "learned"  # that will score the photos
FULL_TRAY = Seen(coverage=90.0, uniformity=90.0, colour=95.0, of_bed=True)  # as read near the cut


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


def settings_of(draft: Draft) -> int:
    """Of a factor that belongs to whole shelves; 1 where none does."""
    other = draft.other
    return len(other.levels) if other is not None and other.by_shelf else 1


def size_of(draft: Draft) -> int:
    """Trays that a block puts on one shelf."""
    of_shelves = draft.other if settings_of(draft) > 1 else None
    return block_size(len(draft.crops), treatments_of(draft), 1, of_shelves)


def layout_of(draft: Draft) -> Layout:
    """The blocks on the grower's shelves; those of the kept plan while nothing about them is changed."""
    if draft.laid is not None and draft.laid.like == laid_like(draft):
        return Layout(blocks=draft.laid.blocks, rounds=max(block.round for block in draft.laid.blocks))
    wanted = max(0, draft.trays - len(draft.earlier))
    return lay_blocks(
        draft.shelves,
        wanted,
        size_of(draft),
        draft.begins,
        round_days=draft.round_days,
        settings=settings_of(draft),
        earlier=draft.earlier,
    )


def laid_like(draft: Draft) -> tuple[object, ...]:
    """All that the blocks depend on."""
    how = (size_of(draft), settings_of(draft), draft.round_days, draft.trays)
    return (*how, draft.shelves, draft.begins, draft.earlier)


def design_of(draft: Draft) -> Design:
    """What the chances are reckoned with."""
    return Design(
        blocks=draft.trays,
        treatments=len(treatments_of(draft)),
        all_pairs=draft.question is Question.BEST,
        camera_sd=camera_sd_of(draft),
    )


def camera_sd_of(draft: Draft) -> float:
    """How differently the camera may see two media, in points of the score of a full tray by its weights."""
    if draft.measure is not MeasureKind.SCORE or len(draft.media) < 2:
        return 0.0
    rule = kept_rule(draft.score) or USUAL
    return score_sd_between_media(METHOD, [score_canopy(FULL_TRAY, rule)], rule)


def with_measure(draft: Draft, measure: MeasureKind) -> Draft:
    """Another measure brings its own margin and spread."""
    return replace(draft, measure=measure, margin=MARGINS[measure], spread=guessed_spread(measure))
