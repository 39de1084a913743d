"""Germination: counts of what came up -> share with interval, T50, mean time.

In    days (any spacing) and how many came up; how many were sown
Out   share in % with its Wilson interval, T50 by Coolbear and by Farooq, mean time; days since sowing
Not   coverage of photographs (`growth.py`), late trays (`looklist/emergence.py`)

T50 refers to those that came up, not to those sown: show the share beside it. Coolbear, Francis & Grierson
(1984) J. Exp. Bot. 35, 1609-1617: target (N + 1)/2; Farooq et al. (2005) J. Integr. Plant Biol. 47, 187-193:
target N/2 (originals not opened; formulas as germination packages quote them).
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from itertools import accumulate, pairwise

from data.sentence import Sentence
from data.statistics.estimate import LEVEL, Estimate

__all__ = ["Germination", "germination_of", "wilson"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Germination:
    """What the counts of one tray tell; `reasons` says by field name why a number is missing."""

    sown: int | None
    emerged: int
    share: Estimate | None  # % of the seeds sown
    t50_coolbear: float | None  # days
    t50_farooq: float | None  # days
    mean_time: float | None  # days
    reasons: Mapping[str, Sentence]


def wilson(found: int, of: int, level: float = LEVEL) -> Estimate:
    """A share in % with Wilson's score interval (Wilson 1927, J. Am. Stat. Assoc. 22, 209-212; from memory).

    Raises
    ------
    ValueError
        Unless 0 <= found <= of and of > 0.
    """
    from scipy import special

    if of <= 0 or not 0 <= found <= of:
        raise ValueError(f"a share needs 0 <= found <= of, of > 0; got {found} of {of}")
    z = float(special.ndtri(0.5 + level / 2))
    share = found / of
    middle = (share + z * z / (2 * of)) / (1 + z * z / of)
    reach = z / (1 + z * z / of) * (share * (1 - share) / of + z * z / (4 * of * of)) ** 0.5
    low = 0.0 if found == 0 else 100 * (middle - reach)
    high = 100.0 if found == of else 100 * (middle + reach)
    return Estimate(value=100 * share, low=low, high=high)


def germination_of(days: Sequence[float], new: Sequence[int], sown: int | None = None) -> Germination:
    """Germination of one tray from counts of the newly emerged, `new`, on `days` since sowing (ascending).

    Raises
    ------
    ValueError
        For counts below zero, or days that do not ascend: a mistake of ours.
    """
    if len(days) != len(new) or any(b <= a for a, b in pairwise(days)) or any(count < 0 for count in new):
        raise ValueError("days must ascend, one count of zero or more for each")
    total = sum(new)
    cumulative = list(accumulate(new))
    t50 = {
        "t50_coolbear": _crossing(days, cumulative, (total + 1) / 2),
        "t50_farooq": _crossing(days, cumulative, total / 2),
    }
    reasons: dict[str, Sentence] = {}
    if total == 0:
        none = Sentence("Nothing has come up yet.")
        reasons |= dict.fromkeys(("t50_coolbear", "t50_farooq", "mean_time"), none)
    else:
        early = Sentence("Half of them were up before the first count.")
        reasons |= {name: early for name, day in t50.items() if day is None}
    share = _share(total, sown, reasons)
    return Germination(
        sown=sown,
        emerged=total,
        share=share,
        **t50,
        mean_time=sum(n * t for n, t in zip(new, days, strict=True)) / total if total else None,
        reasons=reasons,
    )


def _share(total: int, sown: int | None, reasons: dict[str, Sentence]) -> Estimate | None:
    if sown is None or sown <= 0:
        reasons["share"] = Sentence("How many seeds were sown is not known.")
        return None
    if total > sown:
        reasons["share"] = Sentence(
            "{emerged} came up of {sown} sown: one of the counts is wrong.", emerged=total, sown=sown
        )
        return None
    return wilson(total, sown)


def _crossing(days: Sequence[float], cumulative: Sequence[int], target: float) -> float | None:
    """Where the straight line between two counts reaches the target; None if the first count is there."""
    for at, (one, two) in enumerate(pairwise(cumulative)):
        if one < target <= two:
            return days[at] + (target - one) * (days[at + 1] - days[at]) / (two - one)
    return None
