"""Rule view: limits and weights of the canopy score while they are tried, no Qt.

In    what trays show; the rule that holds and the one that is tried
Out   rows of the preview, each part visible; what stands in the way of keeping
Not   the score (`data/desirability.py`), the fields (`rulepage.py`)
"""

from collections.abc import Sequence
from dataclasses import dataclass

from data.desirability import CanopyScore, MoldRule, PartName, ScoreRule, score_canopy
from data.verdict.countedof import CountedOf
from data.verdict.measurewords import part_words
from gui.answer.reading import TraySeen
from gui.language.spoken import begun, in_figures, spoken
from gui.language.words import translate

__all__ = [
    "PREVIEWED",
    "PreviewRow",
    "counted_words_of",
    "mean_rows",
    "mold_words",
    "preview_rows",
    "trouble_of",
]

PREVIEWED = (PartName.COVERAGE, PartName.UNIFORMITY, PartName.COLOUR)
NONE = "\u2013"


@dataclass(frozen=True, slots=True, kw_only=True)
class PreviewRow:
    """One tray, or the mean of a medium, as text."""

    name: str
    medium: str
    parts: tuple[str, ...]  # "96.3 % → 0.95", in the order of `PREVIEWED`
    before: str
    now: str


def preview_rows(trays: Sequence[TraySeen], holds: ScoreRule, tried: ScoreRule) -> tuple[PreviewRow, ...]:
    """One row a tray."""
    return tuple(
        PreviewRow(
            name=tray.code,
            medium=tray.treatment,
            parts=tuple(_part(score_canopy(tray.seen, tried), name) for name in PREVIEWED),
            before=_points(score_canopy(tray.seen, holds).score),
            now=_points(score_canopy(tray.seen, tried).score),
        )
        for tray in sorted(trays, key=lambda tray: tray.treatment)
    )


def mean_rows(trays: Sequence[TraySeen], holds: ScoreRule, tried: ScoreRule) -> tuple[PreviewRow, ...]:
    """The plain mean of each medium; trays without a score are left out."""
    return tuple(
        PreviewRow(
            name=translate("ScoreRule", "mean"),
            medium=medium,
            parts=("",) * len(PREVIEWED),
            before=_mean(trays, medium, holds),
            now=_mean(trays, medium, tried),
        )
        for medium in sorted({tray.treatment for tray in trays})
    )


def _mean(trays: Sequence[TraySeen], medium: str, rule: ScoreRule) -> str:
    scores = [score_canopy(tray.seen, rule).score for tray in trays if tray.treatment == medium]
    told = [score for score in scores if score is not None]
    return _points(sum(told) / len(told) if told else None)


def _points(score: float | None) -> str:
    return NONE if score is None else in_figures(score, ".1f")


def _part(score: CanopyScore, name: PartName) -> str:
    share = score.part(name)
    if share is None:
        return NONE
    words = translate("ScoreRule", "{value} % \u2192 {worth}")
    return words.format(value=in_figures(share.value, ".1f"), worth=in_figures(share.desirability, ".2f"))


def counted_words_of(counted: CountedOf | None) -> str:
    """What coverage and uniformity of the trays are a share of; empty where nothing is read."""
    match counted:
        case CountedOf.BED:
            return translate("ScoreRule", "Coverage and uniformity count the growing bed: what is neither "
                             "rim nor wall of the tray. Limits of coverage mean what is seen from straight "
                             "above; leaves over the wall make the bed look fuller, so 30 % of it stands at "
                             "47 % of the bed.")  # fmt: skip
        case CountedOf.INNER:
            return translate("ScoreRule", "Coverage and uniformity count the inner area, for not every photo "
                             "of these trays tells its growing bed.")  # fmt: skip
        case None:
            return ""


def mold_words(rule: MoldRule) -> str:
    """What mold that a person has confirmed does."""
    match rule:
        case MoldRule.ZERO:
            return translate("ScoreRule", "a tray with mold scores 0")
        case MoldRule.BY_AREA:
            return translate("ScoreRule", "mold counts by its area")
        case MoldRule.APART:
            return translate("ScoreRule", "a tray with mold gets no score and is counted apart")


def trouble_of(rule: ScoreRule) -> str:
    """Why a rule cannot be kept; empty where it can."""
    counted = {name: part for name, part in rule.parts.items() if part.weight > 0}
    for name, part in counted.items():
        if name is not PartName.MOLD and part.good <= part.bad:
            words = translate("ScoreRule", "{part}: what is best must lie above what is worthless.")
            return words.format(part=begun(spoken(part_words(name))))
    if not any(name in counted for name in PREVIEWED):
        return translate("ScoreRule", "Give at least one part a weight.")
    return ""
