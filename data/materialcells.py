"""Material cells: what is known of one medium -> its cells of the table, each with n, range and source.

In    `MediumFacts`: numbers of its trays, its tests with readings, its factors, the mean of its yields
Out   `Cell`s by row; a gap says what to do and how long it takes
Not   the climate rows (`materialreading.py` draws them for all media at once), the table (`materials.py`)
"""

import math
from collections import Counter
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import timedelta

from data.benchtest import BenchKind, BenchTest, WettingFound, readings_of_step, wetting_found
from data.breakdown import by_eye, decay_of
from data.costs import Labour, for_trays, mean_of_trays
from data.estimate import Estimate
from data.factors import Factor, chosen
from data.feeds import feed_caution, is_plain
from data.heat import CAUTION, areal_capacity, capacity, cooling_of, lift_over_mat
from data.materials import Cell, Origin
from data.readings import Reading, ReadingKind
from data.sentence import Sentence

__all__ = ["MediumFacts", "cells_of", "factor_cell", "origin_of"]

MARKS = (1.0, 5.0)
Tests = Sequence[tuple[BenchTest, Sequence[Reading]]]


@dataclass(frozen=True, slots=True, kw_only=True)
class MediumFacts:
    """All that the book knows of a medium; lists hold one number a tray."""

    medium: str
    area_cm2: float
    feed: str | None = None
    seating: str | None = None
    watering: str | None = None
    tests: Tests = ()
    factors: Sequence[Factor] = ()  # the grower's own, of all media
    trays_a_week: float = 10.0
    capacities: Sequence[float] = ()  # g, from the trays' own weighings
    dry_after: Sequence[float] = ()  # h, from the trays' own weighings
    minutes: Mapping[Labour, Sequence[float]] = field(default_factory=dict)
    cut_quality: Sequence[float] = ()
    fresh_g: Sequence[float] = ()
    sweepings_g: Sequence[float] = ()
    sweepings_marks: Sequence[float] = ()
    cold_nights: tuple[float | None, int] = (None, 0)  # K h a night, nights

    def factor(self, name: str) -> Factor | None:
        """The one that holds for this medium."""
        return chosen(self.factors, name, self.medium)


def origin_of(factor: Factor) -> Origin:
    """Where a factor came from."""
    if not factor.is_default:
        return Origin.TYPED
    return Origin.GUESS if factor.is_guess else Origin.DEFAULT


def cells_of(facts: MediumFacts) -> dict[str, Cell]:
    """Every cell but those of the climate."""
    wettings = _wettings(facts)
    held = _capacity(facts, wettings)
    return {
        "capacity": held,
        **_volumes(facts, held),
        "dry after": _dry_after(facts, wettings),
        "rewetting": _rewetting(wettings),
        "heat": _heat(facts, held),
        **_warmth(facts),
        "cold nights": _cold_nights(facts),
        **_after_use(facts),
        "price": factor_cell(facts, "price", Sentence("Type in what the medium for a tray costs: 1 minute.")),
        **_weekly(facts),
        **_work(facts),
        "feed": _feed(facts),
    }


# --- water


def _usual(facts: MediumFacts, kind: BenchKind) -> tuple[Tests, int]:
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


def _wettings(facts: MediumFacts) -> tuple[list[WettingFound], tuple[Sentence, ...]]:
    tests, left_out = _usual(facts, BenchKind.WETTING)
    found = [one for _, readings in tests if (one := wetting_found(readings)) is not None]
    notes = []
    if tests:
        test = tests[0][0]
        told = ", ".join(part for part in (test.seating, _watered(test.watering), test.tray_type) if part)
        notes.append(Sentence("Wetting tests {conditions}.", conditions=told or "without conditions"))
    if left_out:
        notes.append(
            Sentence("{n} tests under other conditions are kept apart and not in this number.", n=left_out)
        )
    return found, tuple(notes)


def _watered(watering: str | None) -> str | None:
    return None if watering is None else f"watered from {watering}"


Wettings = tuple[list[WettingFound], tuple[Sentence, ...]]


def _capacity(facts: MediumFacts, wettings: Wettings) -> Cell:
    tested = [one.wetting.capacity_g for one in wettings[0] if one.wetting.capacity_g is not None]
    gap = Sentence("Weigh 3 trays dry and again after soaking, or do the wetting test: 5 minutes.")
    if len(tested) >= max(2, len(facts.capacities)) or (tested and not facts.capacities):
        return _mean(tested, "tests", gap, *wettings[1])
    if facts.capacities:
        more = Sentence("From the trays' own first weighings, dry and soaked.")
        return _mean(facts.capacities, "trays", gap, more)
    why = [one.wetting.reasons["capacity_g"] for one in wettings[0] if "capacity_g" in one.wetting.reasons]
    return Cell.missing(why[0] if why else gap)


def _mean(
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
    one, (least, most) = mean.estimate, ends
    low = None if one.low is None else max(one.low, least)
    high = None if one.high is None else min(one.high, most)
    return Cell(value=one.value, low=low, high=high, n=mean.n, of=of, notes=notes)


def _volume(facts: MediumFacts) -> Estimate | None:
    """cm3 of medium in a tray."""
    thickness = facts.factor("thickness")
    if thickness is None or not thickness.value:
        return None
    return _factor_estimate(thickness).turned(lambda mm: mm / 10 * facts.area_cm2)


def _factor_estimate(factor: Factor) -> Estimate:
    return Estimate(value=factor.value or 0.0, low=factor.low, high=factor.high)


def _volumes(facts: MediumFacts, held: Cell) -> dict[str, Cell]:
    volume = _volume(facts)
    if held.value is None or volume is None:
        why = held.gap or Sentence("Measure how thick it lies in the tray, and type it in: 1 minute.")
        return {"by volume": Cell.missing(why), "air": Cell.missing(why)}
    by_volume = _over(held, volume)
    if by_volume.value > 100:
        wrong = Sentence("There is more water than medium: look at the thickness.")
        return {"by volume": Cell.missing(wrong), "air": Cell.missing(wrong)}
    cell = Cell.of_estimate(by_volume, held.n, held.of, notes=held.notes)
    dry, solids = facts.factor("dry mass"), facts.factor("solid density")
    if dry is None or not dry.value or solids is None or not solids.value:
        return {"by volume": cell, "air": Cell.missing(_DRY_MASS)}

    def air(water: float, grams: float, density: float, cm3: float) -> float:
        return 100 * (1 - grams / cm3 / density) - water

    low_dry, high_dry = dry.low or dry.value, dry.high or dry.value
    low = high = None
    if by_volume.low is not None and by_volume.high is not None:
        low = air(by_volume.high, high_dry, solids.low or solids.value, volume.low or volume.value)
        high = air(by_volume.low, low_dry, solids.high or solids.value, volume.high or volume.value)
    value = air(by_volume.value, dry.value, solids.value, volume.value)
    if value < 0:
        more = Sentence("There is more water than pores: look at the thickness and the dry mass.")
        return {"by volume": cell, "air": Cell.missing(more)}
    note = Sentence("Porosity less water; solids of {density:g} g/cm3.", density=solids.value)
    found = Estimate(value=value, low=None if low is None else max(low, 0.0), high=high)
    told = Cell.of_estimate(found, held.n, held.of, notes=(note,), sources=(solids.source,))
    return {"by volume": cell, "air": told}


_DRY_MASS = Sentence("Weigh the dry medium of one tray, and type it in: 2 minutes.")


def _over(held: Cell, volume: Estimate) -> Estimate:
    value = 100 * (held.value or 0.0) / volume.value
    if held.low is None or held.high is None or not volume.low or not volume.high:
        return Estimate(value=value)
    return Estimate(value=value, low=100 * held.low / volume.high, high=100 * held.high / volume.low)


def _dry_after(facts: MediumFacts, wettings: Wettings) -> Cell:
    tested = [one.dry_after_h for one in wettings[0] if one.dry_after_h is not None]
    if len(tested) == 1:
        note = Sentence("Without a crop; shoots drink and make it shorter.")
        return Cell.of_estimate(tested[0], 1, "tests", notes=(note, *wettings[1]))
    if tested:
        return _mean([one.value for one in tested], "tests", _DRY_TEST, *wettings[1])
    note = Sentence("From the weighings of trays with a crop, after one watering.")
    return _mean(facts.dry_after, "trays", _DRY_TEST, note) if facts.dry_after else Cell.missing(_DRY_TEST)


_DRY_TEST = Sentence("Do the wetting test and weigh after 6, 12, 24 and 48 hours: 5 minutes in all.")


def _rewetting(wettings: Wettings) -> Cell:
    shares = [100 * one.wetting.rewetted for one in wettings[0] if one.wetting.rewetted is not None]
    gap = Sentence("Let the medium of the wetting test dry, wet it again and weigh it: 3 minutes.")
    return _mean(shares, "tests", gap, *wettings[1])


# --- warmth


def _heat(facts: MediumFacts, held: Cell) -> Cell:
    volume, dry = _volume(facts), facts.factor("dry mass")
    thickness = facts.factor("thickness")
    solids, minerals = facts.factor("solid density"), facts.factor("minerals")
    if held.value is None or volume is None or thickness is None or not thickness.value:
        return Cell.missing(held.gap or Sentence("Measure how thick it lies, and type it in: 1 minute."))
    if dry is None or not dry.value or solids is None or not solids.value or minerals is None:
        return Cell.missing(_DRY_MASS)
    share = (minerals.value or 0.0) / 100
    solid_cm3 = dry.value / solids.value

    def stored(water_g: float) -> float:
        """Thickness cancels: what counts is how much water and solids lie on an area."""
        parts = (share * solid_cm3, (1 - share) * solid_cm3, water_g)
        by_volume = capacity(*(part / volume.value for part in parts))
        return areal_capacity(by_volume, thickness.value or 0.0)

    if (solid_cm3 + max(held.value, held.high or 0.0)) > volume.value:
        return Cell.missing(Sentence("Water and solids need more room than there is: look at the thickness."))
    note = Sentence("Drained; from its water and solids, after de Vries (1963).")
    one = Estimate(value=held.value, low=held.low, high=held.high).turned(stored)
    return Cell.of_estimate(one, held.n, held.of, notes=(note,), sources=(solids.source,))


def _warmth(facts: MediumFacts) -> dict[str, Cell]:
    tests, _ = _usual(facts, BenchKind.COOLING)
    constants: list[Estimate] = []
    lifts: list[float] = []
    reasons: list[Sentence] = []
    lift_reasons: list[Sentence] = []
    for _, readings in tests:
        air = next((one.value for one in readings if one.kind is ReadingKind.AIR_TEMPERATURE), None)
        cooled = [
            (one.taken_at, one.value)
            for step in ("off", "cooling")
            for one in readings_of_step(readings, step)
        ]
        found = cooling_of(cooled, air)
        if found.hours is not None:
            constants.append(found.hours)
        elif found.reason is not None:
            reasons.append(found.reason)
        over = [(one.taken_at, one.value) for one in readings_of_step(readings, "over the mat")]
        lift, why = lift_over_mat(over, air)
        if lift is not None:
            lifts.append(lift)
        elif why is not None:
            lift_reasons.append(why)
    gap = Sentence("Read the medium twice, two hours apart, with the heat mat off: 4 minutes.")
    if len(constants) == 1:
        cooling = Cell.of_estimate(constants[0], 1, "tests", notes=(CAUTION,))
    elif constants:
        cooling = _mean([one.value for one in constants], "tests", gap, CAUTION)
    else:
        cooling = Cell.missing(reasons[0] if reasons else gap, CAUTION)
    over_mat = Sentence("Read the medium on a heat mat after half a day, and the air: 2 minutes.")
    if not lifts and lift_reasons:
        over_mat = lift_reasons[0]
    return {"cooling": cooling, "lift": _mean(lifts, "tests", over_mat, CAUTION)}


def _cold_nights(facts: MediumFacts) -> Cell:
    value, nights = facts.cold_nights
    if value is None:
        return Cell.missing(
            Sentence(
                "Put a logger into the medium of one tray for a night, and bring its file in: 5 minutes."
            )
        )
    return Cell(value=value, n=nights, of="nights", notes=(Sentence("From 20:00 to 8:00, logged in it."),))


# --- after use


def _after_use(facts: MediumFacts) -> dict[str, Cell]:
    tests, _ = _usual(facts, BenchKind.BREAKDOWN)
    begin = Sentence(
        "Bury or compost a weighed piece in a net bag, and weigh it after weeks: 5 minutes each."
    )
    best: dict[str, Cell] = {"half gone": Cell.missing(begin), "nearly gone": Cell.missing(begin)}
    most = -1
    for test, readings in tests:
        masses = [one for one in readings if one.kind is ReadingKind.WEIGHT]
        if len(masses) <= most or not masses or masses[0].value <= 0:
            continue
        most = len(masses)
        first = masses[0]
        days = [(one.taken_at - first.taken_at) / timedelta(days=1) for one in masses[1:]]
        decay = decay_of(days, [100 * one.value / first.value for one in masses[1:]])
        notes = [Sentence("{place}; weighings: {n}.", place=test.place or "no place said", n=most)]
        notes += [one for one in (decay.warning,) if one is not None]
        if decay.remains_pct is not None:
            notes.append(
                Sentence("Late weighings flatten: {share:.0f} % seem to stay.", share=decay.remains_pct)
            )
        notes += _seen_by_eye(readings)
        for row, one in (("half gone", decay.half_weeks), ("nearly gone", decay.nearly_gone_weeks)):
            if one is None:
                best[row] = Cell.missing(decay.reason or begin, *notes)
            else:
                best[row] = Cell.of_estimate(one, most - 1, "weighings", notes=tuple(notes))
    return best


def _seen_by_eye(readings: Sequence[Reading]) -> list[Sentence]:
    marks = [one for one in readings if one.kind is ReadingKind.BREAKDOWN_EYE]
    if not marks:
        return []
    begin = readings[0].taken_at
    seen = by_eye([(one.taken_at - begin) / timedelta(days=1) for one in marks], [one.value for one in marks])
    if seen.high_weeks is None:
        return [] if seen.reason is None else [seen.reason]
    return [
        Sentence(
            "By eye it fell to crumbs between week {low:.0f} and week {high:.0f}.",
            low=seen.low_weeks or 0.0,
            high=seen.high_weeks,
        )
    ]


# --- money, room, work


def factor_cell(
    facts: MediumFacts, name: str, gap: Sentence, turned: Callable[[Estimate], Estimate] | None = None
) -> Cell:
    """A cell that is a factor."""
    factor = facts.factor(name)
    if factor is None or factor.value is None:
        return Cell.missing(gap)
    one = _factor_estimate(factor)
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


def _weekly(facts: MediumFacts) -> dict[str, Cell]:
    trays = facts.trays_a_week

    def weekly(one: Estimate) -> Estimate:
        return for_trays(one, trays)

    def in_kg(one: Estimate) -> Estimate:
        return for_trays(one, trays / 1000)

    before = Sentence("Measure the room that the medium of a tray takes on the shelf: 2 minutes.")
    after = Sentence("Measure the room that a used one takes on the heap: 2 minutes.")
    wet = Sentence("Weigh what is left of a tray after the cut: 1 minute.")
    return {
        "room before": factor_cell(facts, "stored before", before, weekly),
        "room after": factor_cell(facts, "stored after", after, weekly),
        "mass before": factor_cell(facts, "dry mass", _DRY_MASS, in_kg),
        "mass after": factor_cell(facts, "wet after", wet, in_kg),
    }


def _work(facts: MediumFacts) -> dict[str, Cell]:
    set_up = Sentence("Note the minutes of setting up on the tray sheet, as labour: 1 minute.")
    clean = Sentence("Note the minutes of cleaning and disposal, as labour, once a tray is done: 1 minute.")
    cut = Sentence("Give the cut of 3 trays a mark from 1 to 5 on their tray sheets: 2 minutes.")
    sweep = Sentence("Weigh what is swept up after 3 trays, or give it a mark: 3 minutes.")
    quality = mean_of_trays(facts.cut_quality)
    varies = Cell.missing(cut)
    if quality is not None and quality.sd is not None:
        note = Sentence("Standard deviation from tray to tray: how far a cut can be counted on.")
        varies = Cell(value=quality.sd, n=quality.n, notes=(note,))
    return {
        "set-up": _mean(facts.minutes.get(Labour.SET_UP, ()), "trays", set_up),
        "clean-up": _mean(facts.minutes.get(Labour.AFTER, ()), "trays", clean),
        "cut quality": _mean(facts.cut_quality, "trays", cut, ends=MARKS),
        "cut quality varies": varies,
        "sweepings": _mean(facts.sweepings_g, "trays", sweep),
        "sweepings by eye": _mean(facts.sweepings_marks, "trays", sweep, ends=MARKS),
    }


def _feed(facts: MediumFacts) -> Cell:
    if facts.feed is None:
        return Cell.missing(Sentence("Say what you feed it with, or that you do not: 1 minute."))
    if is_plain(facts.feed):
        return Cell(text="none", n=1, of="entries", origin=Origin.TYPED)
    caution = feed_caution(facts.feed)
    notes = [] if caution is None else [caution]
    for name in ("feed dilution", "feed every", "feed odour"):
        factor = facts.factor(name)
        if factor is not None and factor.value is not None:
            notes.append(
                Sentence(
                    "{about}: {value:g} {unit}. {source}", about=name, value=factor.value,
                    unit=factor.unit, source=factor.source,
                )
            )  # fmt: skip
    return Cell(text=facts.feed, n=1, of="entries", origin=Origin.TYPED, notes=tuple(notes))
