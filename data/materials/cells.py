"""Material cells: what is known of one medium -> its cells of the table, each with n, range and source.

In    `MediumFacts`
Out   `Cell`s by row; a gap says what to do and how long it takes
Not   the climate rows (`reading.py` draws them for all media at once), the table (`table.py`)
"""

import math
from collections.abc import Sequence
from datetime import datetime, timedelta
from statistics import fmean

from data.breakdown import by_eye, decay_of
from data.costs import Labour, for_trays, mean_of_trays
from data.growing.mediumkind import ALIKE, kind_follows, kind_words
from data.heat import CAUTION, cooling_of, lift_over_mat, temperature_after
from data.materials.facts import (
    DRY_MASS,
    MARKS,
    MediumFacts,
    factor_cell,
    mean_cell,
    share_cell,
    usual_tests,
)
from data.materials.table import Cell, Origin
from data.materials.watercells import water_cells
from data.medium.benchtest import BenchKind, readings_of_step
from data.medium.feeds import feed_caution, is_plain
from data.readings import Reading, ReadingKind
from data.sentence import Sentence
from data.statistics.estimate import Estimate

__all__ = ["cells_of", "weekly_cells"]

TAP_C, AIR_C = 10.0, 20.0  # an example: a cold tap, a heated room (common practice)
SOON_H, NIGHT_H = 3.0, 12.0
SLID = Sentence("Of the trays of which it was noted, 1 or 0; of the others nobody knows.")


def cells_of(facts: MediumFacts) -> dict[str, Cell]:
    """Every cell but those of the climate."""
    return {
        "kind": _kind(facts),
        **water_cells(facts),
        **_warmth(facts),
        "cold nights": _cold_nights(facts),
        "root warmth": _root_warmth(facts),
        **_after_use(facts),
        "price": factor_cell(facts, "price", Sentence("Type in what the medium for a tray costs: 1 minute.")),
        **weekly_cells(facts),
        **_work(facts),
        "feed": _feed(facts),
    }


def _kind(facts: MediumFacts) -> Cell:
    notes = (kind_follows(facts.kind), ALIKE)
    if not facts.kind:
        return Cell.missing(Sentence("Say whether it is a mat or a loose mix: 1 minute."), *notes)
    return Cell(text=kind_words(facts.kind), n=1, of="entries", origin=Origin.TYPED, notes=notes)


# --- warmth


def _warmth(facts: MediumFacts) -> dict[str, Cell]:
    tests, _ = usual_tests(facts, BenchKind.COOLING)
    readings = [found for _, found in tests]
    return {"cooling": _cooling(readings), "lift": _lift(readings)}


def _cooling(tests: Sequence[Sequence[Reading]]) -> Cell:
    """Hours in which it loses most of its warmth; the interval of a single test is its fit's own."""
    found = [cooling_of(_cooled(readings), _air(readings)) for readings in tests]
    constants = [one.hours for one in found if one.hours is not None]
    reasons = [one.reason for one in found if one.hours is None and one.reason is not None]
    gap = Sentence("Read the medium twice, an hour apart, with the heat mat off: 4 minutes.")
    if len(constants) == 1:
        return Cell.of_estimate(constants[0], 1, "tests", notes=(_cold_tap(constants[0].value), CAUTION))
    if constants:
        hours = [one.value for one in constants]
        return mean_cell(hours, "tests", gap, _cold_tap(fmean(hours)), CAUTION)
    return Cell.missing(next(iter(reasons), gap), CAUTION)


def _cold_tap(hours: float) -> Sentence:
    """How long roots stand cold after a watering, by the time constant that was measured."""
    return Sentence(
        "Wetted from the tap at {tap:.0f} °C in air of {air:.0f} °C it stands at {soon:.0f} °C after "
        "{hours:.0f} hours and at {later:.0f} °C after {night:.0f}; what dries off keeps it somewhat colder.",
        tap=TAP_C,
        air=AIR_C,
        soon=temperature_after(TAP_C, AIR_C, SOON_H, hours),
        later=temperature_after(TAP_C, AIR_C, NIGHT_H, hours),
        hours=SOON_H,
        night=NIGHT_H,
    )


def _lift(tests: Sequence[Sequence[Reading]]) -> Cell:
    """Degrees over the air on a heat mat."""
    found = [lift_over_mat(_course(readings, "over the mat"), _air(readings)) for readings in tests]
    lifts = [lift for lift, _ in found if lift is not None]
    reasons = [why for lift, why in found if lift is None and why is not None]
    gap = Sentence("Read the medium on a heat mat after half a day, and the air: 2 minutes.")
    return mean_cell(lifts, "tests", next(iter(reasons), gap), CAUTION)


def _air(readings: Sequence[Reading]) -> float | None:
    return next((one.value for one in readings if one.kind is ReadingKind.AIR_TEMPERATURE), None)


def _cooled(readings: Sequence[Reading]) -> list[tuple[datetime, float]]:
    return [*_course(readings, "off"), *_course(readings, "cooling")]


def _course(readings: Sequence[Reading], step: str) -> list[tuple[datetime, float]]:
    return [(one.taken_at, one.value) for one in readings_of_step(readings, step)]


def _cold_nights(facts: MediumFacts) -> Cell:
    value, nights = facts.cold_nights
    if value is None:
        return Cell.missing(
            Sentence(
                "Put a logger into the medium of one tray for a night, and bring its file in: 5 minutes."
            )
        )
    return Cell(value=value, n=nights, of="nights", notes=(Sentence("From 20:00 to 8:00, logged in it."),))


def _root_warmth(facts: MediumFacts) -> Cell:
    """What a probe in the trays read; a mean of the readings of each tray."""
    gap = Sentence("Read a probe in the medium of 3 trays, each morning at the same hour: 2 minutes.")
    same_hour = Sentence("As noted, at any hour: media tell something only where they were read together.")
    return mean_cell(facts.root_warmth, "trays", gap, same_hour, ends=(-math.inf, math.inf))


# --- after use


def _after_use(facts: MediumFacts) -> dict[str, Cell]:
    tests, _ = usual_tests(facts, BenchKind.BREAKDOWN)
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


def weekly_cells(facts: MediumFacts) -> dict[str, Cell]:
    """Room and mass a week, by the factors alone."""
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
        "mass before": factor_cell(facts, "dry mass", DRY_MASS, in_kg),
        "mass after": factor_cell(facts, "wet after", wet, in_kg),
    }


def _work(facts: MediumFacts) -> dict[str, Cell]:
    care = Sentence("Note the minutes of watering and moving on the tray sheet, as labour: 1 minute a day.")
    set_up = Sentence("Note the minutes of setting up on the tray sheet, as labour: 1 minute.")
    clean = Sentence("Note the minutes of cleaning and disposal, as labour, once a tray is done: 1 minute.")
    cut = Sentence("Give the cut of 3 trays a mark from 1 to 5 on their tray sheets: 2 minutes.")
    slid = Sentence("Note of every tray at the cut whether the medium slid, 1 or 0: 1 second a tray.")
    sweep = Sentence("Weigh what is swept up after 3 trays, or give it a mark: 3 minutes.")
    keeps = Sentence("Note how many days the cut of 3 trays keeps, on their tray sheets: 1 minute a day.")
    taste = Sentence(
        "Give the taste of 3 trays without mold a mark from 1 to 5 on their tray sheets: 2 minutes."
    )
    quality = mean_of_trays(facts.cut_quality)
    varies = Cell.missing(cut)
    if quality is not None and quality.sd is not None:
        note = Sentence("Standard deviation from tray to tray: how far a cut can be counted on.")
        varies = Cell(value=quality.sd, n=quality.n, notes=(note,))
    return {
        "set-up": mean_cell(facts.minutes.get(Labour.SET_UP, ()), "trays", set_up),
        "care": mean_cell(facts.minutes.get(Labour.CARE, ()), "trays", care),
        "clean-up": mean_cell(facts.minutes.get(Labour.AFTER, ()), "trays", clean),
        "cut quality": mean_cell(facts.cut_quality, "trays", cut, ends=MARKS),
        "slid": share_cell(facts.slid, slid, SLID),
        "cut quality varies": varies,
        "shelf life": mean_cell(facts.shelf_days, "trays", keeps),
        "taste": mean_cell(facts.taste, "trays", taste, ends=MARKS),
        "sweepings": mean_cell(facts.sweepings_g, "trays", sweep),
        "sweepings by eye": mean_cell(facts.sweepings_marks, "trays", sweep, ends=MARKS),
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
