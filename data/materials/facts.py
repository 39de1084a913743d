"""Medium facts: what the book knows of one medium, and cells that are a mean or a factor.

In    numbers of its trays, its tests with readings, the grower's factors
Out   `MediumFacts`; a mean or a factor as a `Cell`; the tests under the usual conditions
Not   what is reckoned from them (`watercells.py`, `cells.py`), reading the book (`trays.py`)
"""

import math
from collections import Counter
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from statistics import fmean

from data.costs import Labour, mean_of_trays
from data.materials.table import Cell, Origin
from data.medium.benchtest import BenchKind, BenchTest
from data.medium.factors import Factor, chosen
from data.readings import Reading
from data.sentence import Sentence
from data.statistics.estimate import Estimate
from data.statistics.share import share_of

__all__ = [
    "DRY_MASS", "MARKS", "MediumFacts", "factor_cell", "factor_estimate", "mean_cell", "origin_of",
    "share_cell", "told_cell", "usual_tests",
]  # fmt: skip

MARKS = (1.0, 5.0)
DRY_MASS = Sentence("Weigh the dry medium of one tray, and type it in: 2 minutes.")
Tests = Sequence[tuple[BenchTest, Sequence[Reading]]]


@dataclass(frozen=True, slots=True, kw_only=True)
class MediumFacts:
    """All that the book knows of a medium; lists hold one number a tray."""

    medium: str
    kind: str = ""
    area_cm2: float
    feed: str | None = None
    seating: str | None = None
    watering: str | None = None
    tests: Tests = ()
    factors: Sequence[Factor] = ()  # the grower's own, of all media
    trays_a_week: float = 10.0
    capacities: Sequence[float] = ()  # g, from the trays' own weighings
    dry_after: Sequence[Estimate] = ()  # h, from the trays' own weighings
    minutes: Mapping[Labour, Sequence[float]] = field(default_factory=dict)
    cut_quality: Sequence[float] = ()
    slid: Sequence[float] = ()  # 1 where the medium gave way at a cut of the tray, else 0
    shelf_days: Sequence[float] = ()
    taste: Sequence[float] = ()
    fresh_g: Sequence[float] = ()
    sweepings_g: Sequence[float] = ()
    sweepings_marks: Sequence[float] = ()
    root_warmth: Sequence[float] = ()  # degrees C
    cold_nights: tuple[float | None, int] = (None, 0)  # K h a night, nights

    def factor(self, name: str) -> Factor | None:
        """The one that holds for this medium."""
        return chosen(self.factors, name, self.medium)


def origin_of(factor: Factor) -> Origin:
    """Where a factor came from."""
    if not factor.is_default:
        return Origin.TYPED
    return Origin.GUESS if factor.is_guess else Origin.DEFAULT


def usual_tests(facts: MediumFacts, kind: BenchKind) -> tuple[Tests, int]:
    """Tests under the medium's usual conditions (else the most common ones), and how many are left out."""
    tests = [(test, readings) for test, readings in facts.tests if test.kind is kind]
    conditions = Counter((test.seating, test.watering, test.tray_type) for test, _ in tests)
    if not conditions:
        return (), 0

    def fits(condition: tuple[str | None, str | None, str | None]) -> tuple[bool, int]:
        return (condition[:2] == (facts.seating, facts.watering), conditions[condition])

    usual = max(conditions, key=fits)
    kept = [
        (test, readings) for test, readings in tests if (test.seating, test.watering, test.tray_type) == usual
    ]
    return kept, len(tests) - len(kept)


def mean_cell(
    values: Sequence[float],
    of: str,
    gap: Sentence,
    *notes: Sentence,
    ends: tuple[float, float] = (0.0, math.inf),
) -> Cell:
    """Mean with its interval, as far as that can be at all."""
    mean = mean_of_trays(values)
    if mean is None:
        return Cell.missing(gap, *notes)
    if mean.n == 1:
        notes = (*notes, Sentence("One of {of}: an interval needs two.", of=of))
    elif mean.estimate.low is None:
        notes = (*notes, Sentence("All alike: how sure the mean is cannot be told from that."))
    one, (least, most) = mean.estimate, ends
    low = None if one.low is None else max(one.low, least)
    high = None if one.high is None else min(one.high, most)
    return Cell(value=one.value, low=low, high=high, n=mean.n, of=of, notes=notes)


def share_cell(noted: Sequence[float], gap: Sentence, *notes: Sentence) -> Cell:
    """Of how many of the trays something is true, %, where 1 is yes and 0 is no."""
    if not noted:
        return Cell.missing(gap, *notes)
    share = share_of(sum(value > 0 for value in noted), len(noted))
    return Cell.of_estimate(share.turned(lambda part: 100 * part), len(noted), notes=notes)


def told_cell(found: Sequence[Estimate], of: str, gap: Sentence, *notes: Sentence) -> Cell:
    """Mean of estimates; no surer than they are on the average, for what they all rest on may be wrong."""
    if len(found) == 1:
        return Cell.of_estimate(found[0], 1, of, notes=notes)
    cell = mean_cell([one.value for one in found], of, gap, *notes)
    lows = [one.low for one in found if one.low is not None]
    highs = [one.high for one in found if one.high is not None]
    if cell.low is None or cell.high is None or len(lows) < len(found) or len(highs) < len(found):
        return cell
    return replace(cell, low=min(cell.low, fmean(lows)), high=max(cell.high, fmean(highs)))


def factor_estimate(factor: Factor) -> Estimate:
    """Its value and range."""
    return Estimate(value=factor.value or 0.0, low=factor.low, high=factor.high)


def factor_cell(
    facts: MediumFacts, name: str, gap: Sentence, turned: Callable[[Estimate], Estimate] | None = None
) -> Cell:
    """A cell that is a factor."""
    factor = facts.factor(name)
    if factor is None or factor.value is None:
        return Cell.missing(gap)
    one = factor_estimate(factor)
    return Cell.of_estimate(
        one if turned is None else turned(one),
        1,
        "entries",
        origin=origin_of(factor),
        sources=(_source(factor),),
    )


def _source(factor: Factor) -> str:
    year = "" if factor.year is None else f", {factor.year}"
    who = f" ({factor.who})" if factor.who else ""
    return f"{factor.source}{year}{who}"
