"""Desirability: several numbers of one tray -> one canopy score from 0 to 100.

In    coverage, uniformity, colour and mold of one photo; the grower's own limits and weights
Out   `CanopyScore`: the score with each part visible, and what was left out
Not   measuring the parts (`vision`), comparing media (`verdict`)

Derringer & Suich (1980) Simultaneous optimization of several response variables, Journal of Quality
Technology 12, 214-219; NIST/SEMATECH e-Handbook 5.5.3.2.2. Each part becomes a desirability d from 0 to 1;
the score is 100 times their weighted geometric mean, so that no part can make up for one that is worthless. A
part that cannot be had is left out with its weight, and that is said.

Limits of coverage are meant for what covers the tray; a share of the growing bed is put on that scale first
(`bedscale.py`), so that a score means the same either way. The usual limits and weights are common practice
at best: they are the grower's to set, before sowing. An open suspect never changes a score. What a patch does
that a person called mold is decided beforehand.
"""

import math
from collections.abc import Mapping, Sequence
from dataclasses import asdict, dataclass, field
from enum import StrEnum
from typing import Any

from data.bedscale import from_above
from vision.reason import Reason

__all__ = [
    "USUAL", "CanopyScore", "MoldRule", "Part", "PartName", "ScoreRule", "Seen", "Share", "combined",
    "kept_rule", "rule_of", "rule_text", "score_canopy",
]  # fmt: skip

LARGEST = 1e9  # beyond it a number is no limit, weight or power that anybody has set


class PartName(StrEnum):
    """What the score is made of."""

    COVERAGE = "coverage"  # % of the growing bed or of the inner area (`verdict/countedof.py`)
    UNIFORMITY = "uniformity"  # Christiansen, %
    COLOUR = "colour"  # % of the canopy that is green or red, not pale
    MOLD = "mold"  # cm2 that a person called mold


class MoldRule(StrEnum):
    """What mold that a person has confirmed does to a tray's score; decided before sowing."""

    ZERO = "zero"  # the tray is worth nothing: its score is 0
    BY_AREA = "by area"  # a part of its own, smaller is better
    APART = "apart"  # the tray gets no score; trays lost to mold are counted on their own


@dataclass(frozen=True, slots=True, kw_only=True)
class Part:
    """How one number becomes a desirability.

    `good` above `bad` is larger-is-better, below it smaller-is-better. With `too_much` it is a target:
    worthless at `bad` and at `too_much`, best at `good`.
    """

    bad: float
    good: float
    too_much: float | None = None
    power: float = 1.0  # 1 straight; above 1 only the best count
    power_above: float = 1.0  # beyond a target
    weight: float = 1.0  # 0 leaves the part out

    def desirability(self, value: float) -> float:
        """From 0, worthless, to 1, as good as wanted."""
        if self.too_much is not None and value > self.good:
            return float(_ramp(value, self.too_much, self.good) ** self.power_above)
        return float(_ramp(value, self.bad, self.good) ** self.power)


def _ramp(value: float, bad: float, good: float) -> float:
    """0 at `bad` and beyond, 1 at `good` and beyond, straight between; equal limits are a step."""
    if bad == good:
        return 1.0 if value >= good else 0.0
    return min(max((value - bad) / (good - bad), 0.0), 1.0)


@dataclass(frozen=True, slots=True, kw_only=True)
class ScoreRule:
    """A grower's limits and weights."""

    parts: Mapping[PartName, Part]
    mold: MoldRule = MoldRule.ZERO


USUAL = ScoreRule(
    parts={
        PartName.COVERAGE: Part(bad=30.0, good=100.0, weight=2.0),
        PartName.UNIFORMITY: Part(bad=30.0, good=100.0),
        PartName.COLOUR: Part(bad=30.0, good=100.0),
        PartName.MOLD: Part(bad=50.0, good=0.0),
    }
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Seen:
    """The numbers of one tray on one photo; coverage and uniformity counted of the same for all trays."""

    coverage: float | None
    uniformity: float | None
    colour: float | None  # % of the canopy that is green or red
    of_bed: bool = False  # coverage and uniformity are shares of the growing bed, else of the inner area
    mold_cm2: float = 0.0  # that a person confirmed
    open_suspects: int = 0
    reasons: Mapping[str, Reason | str] = field(default_factory=dict)


@dataclass(frozen=True, slots=True, kw_only=True)
class Share:
    """One part of a score."""

    name: PartName
    value: float  # the number as measured
    desirability: float  # 0-1
    weight: float


@dataclass(frozen=True, slots=True, kw_only=True)
class CanopyScore:
    """A score with its parts."""

    score: float | None  # 0-100
    parts: tuple[Share, ...]
    left_out: Mapping[PartName, Reason | str] = field(default_factory=dict)  # and why; their weight with them
    mold_cm2: float = 0.0
    open_suspects: int = 0
    of_bed: bool = False  # as in `Seen`

    def part(self, name: PartName) -> Share | None:
        """One part, if it was had."""
        return next((share for share in self.parts if share.name is name), None)


def combined(desirabilities: Sequence[float], weights: Sequence[float]) -> float | None:
    """Weighted geometric mean, 0-1; None where nothing has weight."""
    whole = sum(weights)
    if whole <= 0:
        return None
    if any(d <= 0 and w > 0 for d, w in zip(desirabilities, weights, strict=True)):
        return 0.0
    logs = sum(w * math.log(d) for d, w in zip(desirabilities, weights, strict=True) if w > 0)
    return math.exp(logs / whole)


def score_canopy(seen: Seen, rule: ScoreRule = USUAL) -> CanopyScore:
    """The canopy score of one tray on one photo."""
    values = {
        PartName.COVERAGE: seen.coverage,
        PartName.UNIFORMITY: seen.uniformity,
        PartName.COLOUR: seen.colour,
    }
    if rule.mold is MoldRule.BY_AREA:
        values[PartName.MOLD] = seen.mold_cm2
    shares, left_out = [], {}
    for name, value in values.items():
        part = rule.parts.get(name)
        if part is None or part.weight <= 0:
            continue
        if value is None:
            left_out[name] = seen.reasons.get(str(name), Reason.NO_CANOPY)
        else:
            meant = from_above(value) if seen.of_bed and name is PartName.COVERAGE else value
            worth = part.desirability(meant)
            shares.append(Share(name=name, value=value, desirability=worth, weight=part.weight))
    return CanopyScore(
        score=_score(seen, rule, shares),
        parts=tuple(shares),
        left_out=left_out,
        mold_cm2=seen.mold_cm2,
        open_suspects=seen.open_suspects,
        of_bed=seen.of_bed,
    )


def _score(seen: Seen, rule: ScoreRule, shares: Sequence[Share]) -> float | None:
    if seen.mold_cm2 > 0:
        if rule.mold is MoldRule.ZERO:
            return 0.0
        if rule.mold is MoldRule.APART:
            return None
    if seen.coverage is None:
        return None  # without canopy told from medium no other part means anything
    together = combined([share.desirability for share in shares], [share.weight for share in shares])
    return None if together is None else 100 * together


# --- as a plan keeps it


def rule_text(rule: ScoreRule) -> dict[str, Any]:
    """The rule as plain numbers and words, for a plan."""
    return {"mold": str(rule.mold), "parts": {str(name): asdict(part) for name, part in rule.parts.items()}}


def rule_of(body: Mapping[str, Any]) -> ScoreRule:
    """The rule that `rule_text` wrote; what is not said is as usual.

    Raises
    ------
    ValueError
        If a part or a number is none that this program knows.
    """
    try:
        parts = dict(USUAL.parts) | {
            PartName(name): Part(**said) for name, said in dict(body.get("parts", {})).items()
        }
        rule = ScoreRule(parts=parts, mold=MoldRule(body.get("mold", USUAL.mold)))
    except (TypeError, AttributeError) as error:
        raise ValueError("these are no limits and weights of a canopy score") from error
    if not all(map(_is_sound, rule.parts.values())):
        raise ValueError("a limit or weight of the canopy score is no number to work with")
    return rule


def kept_rule(body: Mapping[str, Any]) -> ScoreRule | None:
    """The rule of a kept plan; None where it cannot be read, since a plan may come from elsewhere."""
    try:
        return rule_of(body)
    except ValueError:
        return None


def _is_sound(part: Part) -> bool:
    numbers: list[object] = [v for name, v in asdict(part).items() if name != "too_much" or v is not None]
    if not all(isinstance(v, int | float) and abs(v) <= LARGEST for v in numbers):
        return False
    return min(part.power, part.power_above) >= 0.0
