"""Trial: what a grower fixes before sowing, as one frozen record.

In    the grower's choices: question, crops, what varies, the trusted treatment, measures with their margins
Out   `Plan` and its versions (`KeptPlan`); which treatment a tray got
Not   how many trays (`statistics/power.py`), blocks (`plan/blocks.py`), places (`plan/drawing.py`), its text
      (`plan/plantext.py`), keeping it (`chapters/planbook.py`)

The tray is the unit. Margin, measure, day and the weights of the canopy score are fixed before
sowing (ICH E9, 1998; Piaggio et al. 2012, JAMA 308, 2594-2604); a later change is a new version with its own
date and reason, so that a verdict can say so.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date, datetime
from enum import StrEnum
from itertools import product
from typing import Any, NewType

from data.records import Tray

__all__ = [
    "CONFIDENCE", "FACTORS", "MEDIUM", "WATERINGS", "YES_NO", "Block", "CropPlan", "Factor", "KeptPlan",
    "Measure", "MeasureKind", "Plan", "PlanId", "Question", "Spread", "Treatment", "crossed", "setting_of",
    "treatment_of",
]  # fmt: skip

PlanId = NewType("PlanId", int)

MEDIUM = "medium"
CONFIDENCE = 0.95  # of each side of an interval, for all media together
WATERINGS = ("bottom", "top", "both")  # the book knows no other
FACTORS = ("medium", "feed", "watering", "seating", "heat mat", "light", "stacking")
YES_NO = {"heat mat": ("with heat mat", "without heat mat"), "stacking": ("stacked", "not stacked")}


class Question(StrEnum):
    """What the trial is asked."""

    AS_GOOD = "as good"  # is the new one as good as the trusted one, within the margin?
    BEST = "best"  # which of several is best?
    GAP = "gap"  # does feed (or another change) close the gap to the trusted one?


class MeasureKind(StrEnum):
    """The one number a tray that is compared."""

    SCORE = "canopy score"  # points, 0-100
    YIELD = "yield"  # g fresh mass a tray
    EYE = "eye score"  # points, 0-100


@dataclass(frozen=True, slots=True, kw_only=True)
class Factor:
    """Something that the trial varies, and its settings."""

    name: str  # one of FACTORS
    levels: tuple[str, ...]
    by_shelf: bool = (
        False  # a whole shelf gets one setting (heat mat, watering line): then shelves are the units
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Treatment:
    """One combination of what the trial varies. Where only the medium varies, its name is the medium's."""

    name: str
    settings: Mapping[str, str]  # factor -> level

    @property
    def medium(self) -> str | None:
        """The medium, if it is among what varies."""
        return self.settings.get(MEDIUM)


@dataclass(frozen=True, slots=True, kw_only=True)
class CropPlan:
    """How one crop is grown and when it is read; None where nobody said."""

    name: str
    read_on_day: int  # days since sowing, the same for all trays, fixed beforehand
    sowing_rate_g: float | None = None  # dry seed a tray
    soak_hours: float | None = None
    blackout_days: float | None = None
    seed_lot: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Measure:
    """What is compared, and the difference that still counts as "as good"."""

    kind: MeasureKind
    margin: float  # > 0, in `unit`
    unit: str = "points"  # "points" or "%" of the trusted treatment's mean


@dataclass(frozen=True, slots=True, kw_only=True)
class Block:
    """Trays that share place and sowing: one shelf and day; several shelves where shelves get settings."""

    name: str
    shelves: tuple[str, ...]
    sow_on: date
    round: int = 1
    first_place: int = 1  # along the shelf; a long shelf can hold several blocks
    window_end: str = "first"  # which end of the shelf gets other light or draught: "first", "last" or ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Spread:
    """How far trays of one treatment lie apart within a block (standard deviation), and how that is known."""

    sd: float  # in the unit of the first measure's margin
    source: str
    df: int | None = None  # None: a guess


@dataclass(frozen=True, slots=True, kw_only=True)
class Plan:
    """All that is fixed before sowing. `measures[0]` is the one that decides."""

    trial: str
    question: Question
    words: str  # the question in the grower's own words
    crops: tuple[CropPlan, ...]
    factors: tuple[Factor, ...]
    treatments: tuple[Treatment, ...]
    trusted: str  # name of the trusted treatment
    measures: tuple[Measure, ...]
    blocks: tuple[Block, ...]
    per_block: int = 1  # trays of each treatment and crop in a block
    spread: Spread | None = None
    power: float = 0.8  # chance wanted to show "as good" when there truly is no difference
    level: float = CONFIDENCE  # of the one-sided limit; no other is kept
    score: Mapping[str, Any] = field(
        default_factory=dict
    )  # weights and limits of the canopy score; {}: the usual
    same: Mapping[str, str] = field(default_factory=dict)  # what stays the same: factor -> level
    tray_type: str = "10 x 20 inch"
    copied_from: str = ""  # name of the trial that this one repeats with one change

    @property
    def primary(self) -> Measure:
        """The measure that decides."""
        return self.measures[0]

    @property
    def new_treatments(self) -> tuple[str, ...]:
        """All but the trusted one, in order."""
        return tuple(one.name for one in self.treatments if one.name != self.trusted)

    @property
    def trusted_medium(self) -> str | None:
        """The medium of the trusted treatment."""
        return self.treatment(self.trusted).settings.get(MEDIUM, self.same.get(MEDIUM))

    @property
    def trays_per_treatment(self) -> int:
        """Of each crop."""
        return self.per_block * len(self.blocks)

    @property
    def trays(self) -> int:
        """In all."""
        return self.trays_per_treatment * len(self.treatments) * len(self.crops)

    @property
    def shelf_factor(self) -> Factor | None:
        """The factor that belongs to whole shelves, if there is one."""
        return next((factor for factor in self.factors if factor.by_shelf), None)

    def treatment(self, name: str) -> Treatment:
        """By its name; raises `KeyError`."""
        for one in self.treatments:
            if one.name == name:
                return one
        raise KeyError(name)

    def crop(self, name: str) -> CropPlan:
        """By its name; raises `KeyError`."""
        for one in self.crops:
            if one.name == name:
                return one
        raise KeyError(name)

    def measure(self, kind: MeasureKind) -> Measure | None:
        """The measure of a kind, if the plan has it."""
        return next((one for one in self.measures if one.kind == kind), None)


@dataclass(frozen=True, slots=True, kw_only=True)
class KeptPlan:
    """One version of a trial's plan, as the book keeps it."""

    id: PlanId
    plan: Plan
    version: int  # 1, 2, ...
    kept_at: datetime
    why: str  # of this version; "" for the first
    first_sown_at: datetime | None  # of the trial's trays; None: none is sown yet

    @property
    def after_sowing(self) -> bool:
        """Whether it was kept only after the first tray was sown."""
        return self.first_sown_at is not None and self.kept_at > self.first_sown_at


# --- treatments


def crossed(factors: Sequence[Factor]) -> tuple[Treatment, ...]:
    """Every combination of the factors' settings, the last factor changing fastest."""
    return tuple(
        Treatment(
            name=", ".join(
                _in_words(factor.name, level) for factor, level in zip(factors, levels, strict=True)
            ),
            settings=dict(zip((factor.name for factor in factors), levels, strict=True)),
        )
        for levels in product(*(factor.levels for factor in factors))
        if factors
    )


def _in_words(factor: str, level: str) -> str:
    """A setting so that it can stand alone: "weekly" of feed is "feed weekly", "none" is "no feed"."""
    if factor not in ("feed", "watering", "light"):
        return level
    if level == "none":
        return f"no {factor}"
    return level if factor in level else f"{factor} {level}"


def setting_of(tray: Tray, factor: str) -> str | None:
    """What a tray got of a factor, in the words of the plan; None where nobody noted it."""
    match factor:
        case "heat mat":
            return _yes_no(tray.heat_mat, factor)
        case "stacking":
            return _yes_no(tray.stacked, factor)
        case "medium" | "feed" | "watering" | "seating" | "light":
            value: str | None = getattr(tray, factor)
            return value
        case _:
            return None


def _yes_no(value: bool | None, factor: str) -> str | None:
    return None if value is None else YES_NO[factor][0 if value else 1]


def treatment_of(tray: Tray, plan: Plan) -> str | None:
    """The name of the treatment that a tray got; None where it is none of the plan's."""
    for treatment in plan.treatments:
        if all(setting_of(tray, name) == level for name, level in treatment.settings.items()):
            return treatment.name
    return None
