"""Water: weights of a tray or of a medium -> how much water it holds, and the weight at which it is dry.

In    masses in g, volume in cm3, density of the solids in g/cm3
Out   shares of water and air, `Wetting` (what a wetting test tells), `DryWeight`; what cannot be told is None
      with a sentence
Not   how fast it dries (`medium/drying.py`)

th = (W - D)/V, bulk density rb = D/V, porosity phi = 1 - rb/rs, air-filled porosity phi - th, with water of
1 g/cm3. Holding capacity is th after soaking and free drainage in the tray at its own height: a
thin mat drains less than a tall pot, so book values of tall columns do not hold. Definitions as in textbooks
of soil physics (from memory).
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from enum import StrEnum

from data.sentence import Sentence

__all__ = ["DryFrom", "DryWeight", "Wetting", "air_filled", "dry_weight", "water_by_volume", "wetting_of"]

MOST_DRAINED = 1.02  # times the soaked weight: more is a slip, not the scale (common practice)
LEAST_DRAINED_MIN = 30.0  # minutes of free drainage before "drained" means it
RESERVE = 0.3  # of the water it holds: below that a tray is called dry; from memory, a starting value
WETTED_TIMES = 1.3  # a tray that weighs so many times its first weight was dry before (common practice)
MOST_TIMES = 8.0  # more than that no wetting does to a whole tray: a slip, or another unit (common practice)
FULL_WITHIN = timedelta(hours=24)  # of wetting, the greatest weight is that of a full tray


@dataclass(frozen=True, slots=True, kw_only=True)
class Wetting:
    """What a wetting test of a medium tells; masses in g, without the tray."""

    capacity_g: float | None  # water it holds after free drainage
    rewetted: float | None  # share of the capacity that it took up again from dry, 0-1
    reasons: Mapping[str, Sentence]


class DryFrom(StrEnum):
    """What a dry weight was reckoned from."""

    OWN = "the tray's own first weighings"
    OWN_AND_TEST = "the tray's own first weighing and the wetting test of its medium"


@dataclass(frozen=True, slots=True, kw_only=True)
class DryWeight:
    """The weight of a whole tray at which it is called dry; all None where it cannot be told."""

    grams: float | None  # dry_g and a reserve of what it holds
    dry_g: float | None  # without any water
    full_g: float | None  # soaked and drained
    rests_on: DryFrom | None
    sentence: Sentence


# --- shares of the volume


def water_by_volume(water_g: float, volume_cm3: float) -> float:
    """Share of the medium's volume that is water, 0-1."""
    return water_g / volume_cm3


def air_filled(by_volume: float, dry_g: float, volume_cm3: float, solid_g_cm3: float) -> float:
    """Share of the volume that is air: its pores less the water in them; below 0 a number is wrong."""
    return 1 - dry_g / volume_cm3 / solid_g_cm3 - by_volume


# --- a test of a medium


def wetting_of(
    dry_g: float,
    soaked_g: float | None,
    drained_g: float | None,
    *,
    drained_minutes: float | None = None,
    rewetted_g: float | None = None,
) -> Wetting:
    """What a wetting test tells: dry, soaked, drained, and wetted again after it had dried."""
    capacity = _capacity(dry_g, soaked_g, drained_g, drained_minutes)
    told = {"capacity_g": capacity, "rewetted": _rewetted(capacity, dry_g, rewetted_g)}
    numbers = {name: None if isinstance(one, Sentence) else one for name, one in told.items()}
    reasons = {name: one for name, one in told.items() if isinstance(one, Sentence)}
    return Wetting(reasons=reasons, **numbers)


def _capacity(
    dry_g: float, soaked_g: float | None, drained_g: float | None, drained_minutes: float | None
) -> float | Sentence:
    if drained_g is None:
        return Sentence("Weigh it again half an hour after soaking, drained.")
    if drained_g < dry_g:
        return Sentence(
            "Dry it weighs {dry:.0f} g and wet {wet:.0f} g: one of the two is wrong.",
            dry=dry_g, wet=drained_g,
        )  # fmt: skip
    if soaked_g is not None and drained_g > MOST_DRAINED * soaked_g:
        return Sentence("Drained it weighs more than soaked: one of the two is wrong.")
    if drained_minutes is not None and drained_minutes < LEAST_DRAINED_MIN:
        return Sentence(
            "It drained for {minutes:.0f} minutes only; {least:.0f} are needed.",
            minutes=drained_minutes,
            least=LEAST_DRAINED_MIN,
        )
    return drained_g - dry_g


def _rewetted(capacity: float | Sentence, dry_g: float, rewetted_g: float | None) -> float | Sentence:
    """Share of the first capacity, 0-1 and somewhat above."""
    if isinstance(capacity, Sentence) or capacity <= 0 or rewetted_g is None:
        return Sentence("Let it dry, wet it again the same way, drain it and weigh it.")
    if rewetted_g < dry_g:
        return Sentence("Wetted again it weighs less than dry: one of the two is wrong.")
    return (rewetted_g - dry_g) / capacity


# --- the dry weight of a tray


def dry_weight(
    weights: Sequence[tuple[datetime, float]],
    capacity_g: float | None = None,
    dry_g: float | None = None,
    reserve: float = RESERVE,
    sown_on: date | None = None,
) -> DryWeight:
    """The weight at which a tray is called dry, from its own first weighings.

    A tray whose second weight is far above its first was weighed dry first, if that was by the day of sowing:
    later it was merely watered in between. Else its greatest weight of the
    first day is that of a full one, and the wetting test of its medium tells the rest.

    Parameters
    ----------
    weights
        (time, g) of the whole tray since it was set up, in any order.
    capacity_g
        Water that the medium of a whole tray holds, from its wetting test, where there is one.
    dry_g
        The whole tray without any water, where a person says so.
    reserve
        Share of the water held that must be there, 0-1.
    sown_on
        None: the first weighing was at the setting up, whenever that was.
    """
    ordered = sorted(weights)
    wrong = _wrong_weights(ordered, is_known=dry_g is not None and capacity_g is not None)
    if wrong is not None:
        return _untold(wrong)
    at_set_up = bool(ordered) and (sown_on is None or ordered[0][0].date() <= sown_on)
    wetted = at_set_up and len(ordered) > 1 and ordered[1][1] >= WETTED_TIMES * ordered[0][1]
    soaked = ordered[1:] if wetted else ordered
    full = max((g for at, g in soaked if at <= soaked[0][0] + FULL_WITHIN), default=None)
    if dry_g is None and wetted:
        dry_g = ordered[0][1]
    if dry_g is not None and full is not None:
        return _told(dry_g, full, DryFrom.OWN, reserve)
    if dry_g is not None and capacity_g is not None:
        return _told(dry_g, dry_g + capacity_g, DryFrom.OWN_AND_TEST, reserve)
    if full is not None and capacity_g is not None:
        return _told(full - capacity_g, full, DryFrom.OWN_AND_TEST, reserve)
    return _untold(
        Sentence(
            "Weigh a tray dry and again after wetting, or do the wetting test with its medium: 5 minutes."
        )
    )


def _wrong_weights(ordered: Sequence[tuple[datetime, float]], *, is_known: bool) -> Sentence | None:
    """Why nothing can be told from these weighings; `is_known` where a person and a test tell all."""
    if not ordered and not is_known:
        return Sentence("The tray was never weighed: weigh it dry, then soaked and drained.")
    if len(ordered) > 1 and ordered[1][1] > MOST_TIMES * ordered[0][1]:
        return Sentence(
            "The first weight, {first:.0f} g, is far below the second, {second:.0f} g: mend one of them.",
            first=ordered[0][1],
            second=ordered[1][1],
        )
    return None


def _told(dry_g: float, full_g: float, rests_on: DryFrom, reserve: float) -> DryWeight:
    if dry_g <= 0 or full_g <= dry_g:
        return _untold(
            Sentence(
                "Full it weighs {full:.0f} g, of which {water:.0f} g would be water: look at the weighings.",
                full=full_g,
                water=full_g - dry_g,
            )
        )
    grams = dry_g + reserve * (full_g - dry_g)
    return DryWeight(
        grams=grams,
        dry_g=dry_g,
        full_g=full_g,
        rests_on=rests_on,
        sentence=Sentence(
            "{share:.0f} % of the {held:.0f} g of water that it holds are left at {grams:.0f} g.",
            share=100 * reserve,
            held=full_g - dry_g,
            grams=grams,
        ),
    )


def _untold(why: Sentence) -> DryWeight:
    return DryWeight(grams=None, dry_g=None, full_g=None, rests_on=None, sentence=why)
