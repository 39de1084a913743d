"""Footprint: bill of materials and factors with ranges -> kg CO2e of a tray and of a kg of cut.

In    `Bill`s: terms, each a product of named inputs; inputs as (low, most likely, high)
Out   `Footprint`s, differences from the trusted medium with interval
Not   the factors themselves (`medium/factors.py`), making bills from them (`materials/bill.py`), the share of
      each input in the variance (`statistics/budget.py`)

Monte Carlo: JCGM 101:2008, the 2.5 and 97.5 percentiles of the draws. Two media that share an input (the
truck, the grid) get the same draws of it, so that what is shared cancels in their difference. A screening
estimate, no certified assessment.
"""

import math
import zlib
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from data.sentence import Sentence
from data.statistics.budget import Range, Term, shares_of_variance

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Draws = NDArray[np.float64]

__all__ = [
    "DRAWS", "NOTE", "Bill", "Difference", "Footprint", "Yield", "differences", "ends_of", "footprints",
]  # fmt: skip

DRAWS = 100_000
LOW, HIGH = 2.5, 97.5  # %

NOTE = Sentence(
    "A screening estimate from your inputs: no certified assessment, and not for labels. Medium, ways, tray "
    "and the electricity that you enter are in it. Seed, light and heating are not unless you enter them, "
    "and often outweigh the medium. Carbon that plant fibre took up and gives back counts as nought; peat's "
    "counts."
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Yield:
    """Fresh mass of a tray, kg."""

    mean: float
    sd: float  # of the mean as it is known
    df: float = math.inf  # degrees of freedom of `sd`: of few trays the mean is drawn by Student's t


@dataclass(frozen=True, slots=True, kw_only=True)
class Bill:
    """What a tray of a medium is made of."""

    medium: str
    terms: tuple[Term, ...]
    fresh: Yield | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Footprint:
    """kg CO2e of a tray; per kg of cut where the yield is known. `parts` are shares 0-1 of the mean."""

    medium: str
    mean: float
    sd: float
    median: float
    low: float
    high: float
    per_kg: tuple[float, float, float] | None  # low, median, high: a ratio is skewed
    parts: Mapping[str, float]
    variance: Mapping[str, float]  # share of each input, 0-1
    reason: Sentence | None = None  # why there is none by the kg


@dataclass(frozen=True, slots=True, kw_only=True)
class Difference:
    """New minus trusted, kg CO2e a tray; `settles` is the input with the greatest share of its variance."""

    medium: str
    mean: float
    low: float
    high: float
    settles: str | None
    settles_share: float  # 0-1


def footprints(
    bills: Sequence[Bill], inputs: Mapping[str, Range], draws: int = DRAWS, seed: int = 1
) -> tuple[Footprint, ...]:
    """One for each bill; raises `ValueError` where an input is no range or is missing."""
    drawn = _Drawn(inputs, draws, seed)
    return tuple(_footprint(bill, drawn) for bill in bills)


def differences(
    bills: Sequence[Bill],
    inputs: Mapping[str, Range],
    trusted: str,
    draws: int = DRAWS,
    seed: int = 1,
    *,
    paired: bool = True,
) -> tuple[Difference, ...]:
    """Each other medium against the trusted one; `paired=False` draws shared inputs anew for each."""
    base = next((bill for bill in bills if bill.medium == trusted), None)
    if base is None:
        return ()
    drawn = _Drawn(inputs, draws, seed)
    other = drawn if paired else _Drawn(inputs, draws, seed + 1)
    reference = other.sum_of(base.terms)
    return tuple(
        _difference(bill, base, drawn.sum_of(bill.terms) - reference, inputs)
        for bill in bills
        if bill is not base
    )


def _difference(bill: Bill, base: Bill, off: "Draws", inputs: Mapping[str, Range]) -> Difference:
    low, high = ends_of(off)
    turned = tuple(Term(term.part, term.inputs, -term.times, term.below) for term in base.terms)
    shares = shares_of_variance((*bill.terms, *turned), inputs)
    first = next(iter(shares), None)
    return Difference(
        medium=bill.medium,
        mean=float(off.mean()),
        low=low,
        high=high,
        settles=first if first is not None and shares[first] > 0 else None,
        settles_share=0.0 if first is None else shares[first],
    )


def _footprint(bill: Bill, drawn: "_Drawn") -> Footprint:
    import numpy as np

    total = drawn.sum_of(bill.terms)
    low, high = ends_of(total)
    means: dict[str, float] = {}
    for term in bill.terms:
        means[term.part] = means.get(term.part, 0.0) + float(drawn.product(term).mean())
    mean = float(total.mean())
    per_kg = _per_kg(bill, total, drawn)
    return Footprint(
        medium=bill.medium,
        mean=mean,
        sd=float(total.std()),
        median=float(np.median(total)),
        low=low,
        high=high,
        per_kg=None if isinstance(per_kg, Sentence) else per_kg,
        parts={part: one / mean if mean else 0.0 for part, one in means.items()},
        variance=shares_of_variance(bill.terms, drawn.inputs),
        reason=per_kg if isinstance(per_kg, Sentence) else None,
    )


def _per_kg(bill: Bill, total: "Draws", drawn: "_Drawn") -> tuple[float, float, float] | Sentence:
    """Low, median, high by the kg of cut, or why there is none."""
    import numpy as np

    if bill.fresh is None:
        return Sentence("Weigh the cut of a tray: then it can be reckoned by the kg.")
    if bill.fresh.mean <= 0:
        return Sentence("The yield is zero: nothing can be reckoned by the kg of cut.")
    mass = drawn.mass(f"yield of {bill.medium}", bill.fresh)
    ratio = total / np.maximum(mass, 0.02 * bill.fresh.mean)  # a cut below a fiftieth is no cut
    low, high = ends_of(ratio)
    return low, float(np.median(ratio)), high


def ends_of(values: "Draws") -> tuple[float, float]:
    """The 2.5 and 97.5 percentiles."""
    import numpy as np

    low, high = np.percentile(values, (LOW, HIGH))
    return float(low), float(high)


class _Drawn:
    """Draws of the inputs, each by a stream of its own, so that a new medium changes no old number."""

    def __init__(self, inputs: Mapping[str, Range], draws: int, seed: int) -> None:
        self.inputs = inputs
        self._draws, self._seed = draws, seed
        self._of: dict[str, Draws] = {}
        for name, one in inputs.items():
            if not one.low <= one.mode <= one.high:
                raise ValueError(f"{name}: {one.mode} does not lie between {one.low} and {one.high}")

    def _stream(self, name: str) -> "np.random.Generator":
        import numpy as np

        return np.random.default_rng((self._seed, zlib.crc32(name.encode())))

    def mass(self, name: str, fresh: Yield) -> "Draws":
        """A mean as few trays tell it: a scaled and shifted t (JCGM 101:2008, 6.4.9; from memory)."""
        stream = self._stream(name)
        if math.isinf(fresh.df):
            drawn: Draws = stream.normal(fresh.mean, fresh.sd, self._draws)
            return drawn
        scaled: Draws = fresh.mean + fresh.sd * stream.standard_t(fresh.df, self._draws)
        return scaled

    def of(self, name: str) -> "Draws | float":
        one = self.inputs[name]
        if one.low == one.high:
            return one.mode
        if name not in self._of:
            self._of[name] = self._stream(name).triangular(one.low, one.mode, one.high, self._draws)
        return self._of[name]

    def product(self, term: Term) -> "Draws":
        import numpy as np

        found = np.full(self._draws, term.times)
        for name in term.inputs:
            found *= self.of(name)
        for name in term.below:
            found /= self.of(name)
        return found

    def sum_of(self, terms: Sequence[Term]) -> "Draws":
        import numpy as np

        total = np.zeros(self._draws)
        for term in terms:
            total += self.product(term)
        return total
