"""Alike: which growing conditions were alike for all treatments that are compared, which not, which unknown.

In    the compared trays of one crop or several, with the treatment of each; their plan
Out   `Compared`: of each condition and crop how many trays of each treatment had what
Not   words (`conditionwords.py`), what the plan varies (`apart.py`), what was measured
      (`data/report/given.py`)

Treatments need not have one value to be alike: with one tray of each on every shelf the shelf is alike, too.
Held within a crop, for that is where treatments are compared. What all trays of a block have alike cannot
make treatments differ there, though some lack a tray in a block: a verdict compares within blocks.
"""

from collections import Counter
from collections.abc import Callable, Hashable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from enum import Enum, auto
from fractions import Fraction

from data.medium.feeds import is_plain
from data.numbers import TrayId
from data.records import Tray
from data.trial import Plan

__all__ = ["CONDITIONS", "Compared", "Standing", "Value", "compare_conditions"]

Value = str | float | bool | date
Counts = Mapping[str, Counter[Value | None]]  # by treatment
DAY = timedelta(days=1)


class Standing(Enum):
    """How a condition stands between treatments."""

    ALIKE = auto()  # each treatment had the same, or as much of everything
    APART = auto()
    NOTED_OF_SOME = auto()  # and nothing else of the others
    NOT_NOTED = auto()


def _days_dark(tray: Tray) -> float | None:
    """Covered days, to a half: a walk takes its time; None where no covered time was noted."""
    if tray.blackout_from is None or tray.blackout_to is None:
        return None
    return round(2 * (tray.blackout_to - tray.blackout_from) / DAY) / 2


def _dark_as_planned(plan: Plan | None) -> Callable[[Tray], float | None]:
    """Of a crop that is never covered by its plan no covered time means none, not that nobody noted it."""
    never = {crop.name for crop in plan.crops if crop.blackout_days == 0} if plan is not None else set()

    def days(tray: Tray) -> float | None:
        noted = _days_dark(tray)
        return 0.0 if noted is None and tray.crop in never else noted

    return days


CONDITIONS: Mapping[str, Callable[[Tray], Value | None]] = {
    "sown on": lambda tray: tray.sown_at.date(),
    "tray type": lambda tray: tray.tray_type,
    "seed lot": lambda tray: tray.seed_lot,
    "seed": lambda tray: tray.sowing_rate_g,
    "soaked": lambda tray: tray.soak_hours,
    "seating": lambda tray: tray.seating,
    "dark": _days_dark,
    "stacking": lambda tray: tray.stacked,
    "watering": lambda tray: tray.watering,
    "feed": lambda tray: "none" if tray.feed and is_plain(tray.feed) else tray.feed,
    "heat mat": lambda tray: tray.heat_mat,
    "light": lambda tray: tray.light,
    "shelf": lambda tray: tray.shelf or None,
}  # in the order in which a tray meets them; what a plan can vary has the plan's name


@dataclass(frozen=True, slots=True, kw_only=True)
class Compared:
    """One condition of one crop."""

    name: str  # a key of `CONDITIONS`
    crop: str
    counts: Counts
    by_block: bool = False  # the trays of each block have it alike

    @property
    def standing(self) -> Standing:
        """How the treatments stand to each other."""
        values = set[Value | None]().union(*self.counts.values())
        if values == {None}:
            return Standing.NOT_NOTED
        if len(values) == 1 or (None not in values and self._is_balanced):
            return Standing.ALIKE
        return Standing.NOTED_OF_SOME if len(values - {None}) == 1 else Standing.APART

    @property
    def _is_balanced(self) -> bool:
        shares: set[Hashable] = {
            frozenset((value, Fraction(n, counter.total())) for value, n in counter.items())
            for counter in self.counts.values()
        }
        return len(shares) == 1

    @property
    def values(self) -> tuple[Value | None, ...]:
        """What any tray had, in the order of the trays."""
        return tuple(dict.fromkeys(value for counter in self.counts.values() for value in counter))


def compare_conditions(
    trays: Sequence[Tray], treatments: Mapping[TrayId, str], plan: Plan | None
) -> tuple[Compared, ...]:
    """All conditions, each crop by crop; trays without a treatment are compared with nothing."""
    treated = [tray for tray in trays if tray.id in treatments]
    crops = dict.fromkeys(tray.crop for tray in treated)
    conditions = {**CONDITIONS, "dark": _dark_as_planned(plan)}
    return tuple(
        Compared(
            name=name,
            crop=crop,
            counts=_counts(treated, crop, of, treatments),
            by_block=_is_by_block([tray for tray in treated if tray.crop == crop], of),
        )
        for name, of in conditions.items()
        for crop in crops
    )


def _is_by_block(trays: Sequence[Tray], of: Callable[[Tray], Value | None]) -> bool:
    values: dict[str | None, set[Value | None]] = {}
    for tray in trays:
        values.setdefault(tray.block, set()).add(of(tray))
    return None not in values and all(len(one) == 1 for one in values.values())


def _counts(
    trays: Sequence[Tray],
    crop: str,
    of: Callable[[Tray], Value | None],
    treatments: Mapping[TrayId, str],
) -> Counts:
    counts: dict[str, Counter[Value | None]] = {}
    for tray in trays:
        if tray.crop == crop:
            counts.setdefault(treatments[tray.id], Counter())[of(tray)] += 1
    return counts
