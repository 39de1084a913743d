"""Water cells: how a medium holds water and the warmth in it, as cells of the table.

In    `MediumFacts`
Out   cells of water held, by volume, air, hours until dry, taken up again, heat stored
Not   the formulas (`water.py`, `medium/drying.py`, `heat.py`), other cells (`cells.py`)
"""

from data.heat import STILL_AIR, areal_capacity, capacity, time_constant
from data.materials.facts import DRY_MASS, MediumFacts, factor_estimate, mean_cell, told_cell, usual_tests
from data.materials.table import Cell
from data.medium.benchtest import BenchKind, WettingFound, wetting_found
from data.sentence import Sentence
from data.statistics.estimate import Estimate
from data.water import air_filled, water_by_volume

__all__ = ["water_cells"]


def water_cells(facts: MediumFacts) -> dict[str, Cell]:
    """All that rests on its weighings."""
    wettings = _wettings(facts)
    held = _capacity(facts, wettings)
    return {
        "capacity": held,
        **_volumes(facts, held),
        "dry after": _dry_after(facts, wettings),
        "rewetting": _rewetting(wettings),
        "heat": _heat(facts, held),
    }


def _wettings(facts: MediumFacts) -> tuple[list[WettingFound], tuple[Sentence, ...]]:
    tests, left_out = usual_tests(facts, BenchKind.WETTING)
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
        return mean_cell(tested, "tests", gap, *wettings[1])
    if facts.capacities:
        more = Sentence("From the trays' own first weighings, dry and soaked.")
        return mean_cell(facts.capacities, "trays", gap, more)
    why = [one.wetting.reasons["capacity_g"] for one in wettings[0] if "capacity_g" in one.wetting.reasons]
    return Cell.missing(why[0] if why else gap)


def _volume(facts: MediumFacts) -> Estimate | None:
    """cm3 of medium in a tray."""
    thickness = facts.factor("thickness")
    if thickness is None or not thickness.value:
        return None
    return factor_estimate(thickness).turned(lambda mm: mm / 10 * facts.area_cm2)


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
        return {"by volume": cell, "air": Cell.missing(DRY_MASS)}

    def air(water: float, grams: float, density: float, cm3: float) -> float:
        return 100 * air_filled(water / 100, grams, cm3, density)

    low_dry, high_dry = dry.low or dry.value, dry.high or dry.value
    low = high = None
    if by_volume.low is not None and by_volume.high is not None:
        low = air(by_volume.high, high_dry, solids.low or solids.value, volume.low or volume.value)
        high = air(by_volume.low, low_dry, solids.high or solids.value, volume.high or volume.value)
    value = air(by_volume.value, dry.value, solids.value, volume.value)
    if value < 0:
        more = Sentence("There is more water than pores: look at the thickness and the dry mass.")
        return {"by volume": cell, "air": Cell.missing(more)}
    note = Sentence("Porosity less water; solids of {density:g} g/cm³.", density=solids.value)
    found = Estimate(value=value, low=None if low is None else max(low, 0.0), high=high)
    told = Cell.of_estimate(found, held.n, held.of, notes=(note,), sources=(solids.source,))
    return {"by volume": cell, "air": told}


def _over(held: Cell, volume: Estimate) -> Estimate:
    value = 100 * water_by_volume(held.value or 0.0, volume.value)
    if held.low is None or held.high is None or not volume.low or not volume.high:
        return Estimate(value=value)
    return Estimate(
        value=value,
        low=100 * water_by_volume(held.low, volume.high),
        high=100 * water_by_volume(held.high, volume.low),
    )


def _dry_after(facts: MediumFacts, wettings: Wettings) -> Cell:
    tested = [one.dry_after_h for one in wettings[0] if one.dry_after_h is not None]
    if tested:
        note = Sentence("Without a crop; shoots drink and make it shorter.")
        return told_cell(tested, "tests", _DRY_TEST, note, *wettings[1])
    if facts.dry_after:
        note = Sentence("From the weighings of trays with a crop, after one watering.")
        return told_cell(facts.dry_after, "trays", _DRY_TEST, note)
    begun = (one.dry_reason for one in wettings[0] if one.dry_reason is not None)
    return Cell.missing(next(begun, _DRY_TEST), *wettings[1])


_DRY_TEST = Sentence("Do the wetting test and weigh after 6, 12, 24 and 48 hours: 5 minutes in all.")


def _rewetting(wettings: Wettings) -> Cell:
    shares = [100 * one.wetting.rewetted for one in wettings[0] if one.wetting.rewetted is not None]
    gap = Sentence("Let the medium of the wetting test dry, wet it again and weigh it: 3 minutes.")
    return mean_cell(shares, "tests", gap, *wettings[1])


def _heat(facts: MediumFacts, held: Cell) -> Cell:
    volume, dry = _volume(facts), facts.factor("dry mass")
    thickness = facts.factor("thickness")
    solids, minerals = facts.factor("solid density"), facts.factor("minerals")
    if held.value is None or volume is None or thickness is None or not thickness.value:
        return Cell.missing(held.gap or Sentence("Measure how thick it lies, and type it in: 1 minute."))
    if dry is None or not dry.value or solids is None or not solids.value or minerals is None:
        return Cell.missing(DRY_MASS)
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
    notes = (note, _follows(one.value))
    return Cell.of_estimate(one, held.n, held.of, notes=notes, sources=(solids.source,))


def _follows(areal_kj: float) -> Sentence:
    """What so much stored heat means for cold roots, before anybody has done the cooling test."""
    least, most = STILL_AIR
    return Sentence(
        "In still air it should follow the shelf in {low:.1f} to {high:.1f} h (if its faces lose {least:.0f} "
        "to {most:.0f} W/m²K, from memory); the cooling test measures that.",
        low=time_constant(areal_kj, most),
        high=time_constant(areal_kj, least),
        least=least,
        most=most,
    )
