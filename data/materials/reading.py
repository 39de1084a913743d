"""Material reading: a book -> the table of its media, with the climate drawn for all of them at once.

In    a book; it is read in a background thread
Out   `MaterialReading`: table, tests with what is due, limits, differences of the footprint in words
Not   cells (`cells.py`), the arithmetic of the footprint (`footprint.py`)
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import TYPE_CHECKING

from data.costs import mean_of_trays
from data.footprint import NOTE, Difference, Footprint, Yield, differences, footprints
from data.growing.conditions import Medium
from data.materials.bill import ELECTRICITY, PEAT, Bills, bills_of
from data.materials.cells import cells_of
from data.materials.facts import MediumFacts, origin_of
from data.materials.sidebyside import side_by_side
from data.materials.table import Beside, Cell, Origin, Standing, Table, standing_of, table_of
from data.materials.trays import TrayMaterials
from data.medium.benchtest import BenchTest, Due, due_of
from data.medium.factors import KINDS, Factor
from data.readings import BenchTestId, Reading
from data.sentence import Sentence
from data.statistics.estimate import Estimate

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["ClimateAnswer", "DueTest", "MaterialReading", "climate_sentence", "read_materials"]

WORST = (Origin.GUESS, Origin.DEFAULT, Origin.TYPED)
ONE_TRAY = Sentence("One of {of}: an interval needs two.", of="trays")
TELLING = 0.1  # share of the variance from which an input's origin counts for the whole


@dataclass(frozen=True, slots=True, kw_only=True)
class DueTest:
    """A test that goes on, and what comes next in it."""

    test: BenchTest
    due: Due


@dataclass(frozen=True, slots=True, kw_only=True)
class ClimateAnswer:
    """One medium against the trusted one, in words."""

    medium: str
    sentence: Sentence
    settles: Sentence | None


@dataclass(frozen=True, slots=True, kw_only=True)
class MaterialReading:
    """All that the place Materials shows."""

    table: Table
    media: tuple[Medium, ...] = ()
    factors: tuple[Factor, ...] = ()
    tests: tuple[BenchTest, ...] = ()
    test_readings: Mapping[BenchTestId, tuple[Reading, ...]] | None = None
    due: tuple[DueTest, ...] = ()
    limits: Mapping[str, tuple[float | None, float | None]] | None = None
    standing: tuple[Standing, ...] = ()
    climate: tuple[ClimateAnswer, ...] = ()
    trays_a_week: float = 10.0
    now: datetime | None = None


def read_materials(book: "Book") -> MaterialReading:
    """Everything, from the book; a second at most for a book of years."""
    media = book.media_known()
    names = [medium.name for medium in media]
    trusted = _trusted(book, media)
    factors, tests = book.factors(), book.bench_tests()
    readings = {test: tuple(found) for test, found in book.test_readings().items()}
    gathered = TrayMaterials(book, media)
    known: dict[str, MediumFacts] = {}
    for medium in media:
        own = [(test, readings.get(test.id, ())) for test in tests if test.medium == medium.name]
        known[medium.name] = gathered.facts(medium, own, factors, book.trays_a_week())
    cells = {(row, name): cell for name in names for row, cell in cells_of(known[name]).items()}
    bills = bills_of(factors, names, _yields(known))
    found = {one.medium: one for one in footprints(bills.bills, bills.inputs)}
    for name in names:
        cells |= _climate_cells(name, bills, found.get(name), gathered.trays_weighed(name))
    off = () if trusted is None else differences(bills.bills, bills.inputs, trusted)
    paired = {("footprint", one.medium): Estimate(value=one.mean, low=one.low, high=one.high) for one in off}
    grown = {} if trusted is None else _grown(gathered, names, trusted)
    table = table_of(names, trusted, cells, paired, grown)
    now, limits = book.now(), book.limits()
    return MaterialReading(
        table=table,
        media=media,
        factors=factors,
        tests=tests,
        test_readings=readings,
        due=tuple(_due(tests, readings, now)),
        limits=limits,
        standing=standing_of(table, limits),
        climate=tuple(_answer(one, trusted or "", bills) for one in off),
        trays_a_week=book.trays_a_week(),
        now=now,
    )


def _grown(gathered: TrayMaterials, names: Sequence[str], trusted: str) -> Mapping[tuple[str, str], Beside]:
    """Differences of trays side by side; of kg there is none where the weighed trays are of other crops."""
    other_crops = Beside(
        difference=None,
        words=Sentence(
            "The weighed trays are of other crops than those of {trusted}: a kg of one is no kg of the "
            "other.",
            trusted=trusted,
        ),
    )
    weighed = {name: gathered.crops_weighed(name) for name in names if gathered.crops_weighed(name)}
    unlike = [name for name, crops in weighed.items() if crops != weighed.get(trusted, crops)]
    return {
        **side_by_side(gathered.numbers(), trusted),
        **{("footprint by kg", name): other_crops for name in unlike},
    }


def _yields(known: Mapping[str, MediumFacts]) -> dict[str, Yield]:
    """By medium; those without a weighed tray are left out."""
    found = {name: _yield_of(facts) for name, facts in known.items()}
    return {name: mass for name, mass in found.items() if mass is not None}


def _yield_of(facts: MediumFacts) -> Yield | None:
    """Fresh mass of a tray in kg, with the standard error of its mean; None where none was weighed."""
    mass = mean_of_trays([one / 1000 for one in facts.fresh_g])
    if mass is None:
        return None
    if mass.sd is None:
        return Yield(mean=mass.estimate.value, sd=0.0)
    return Yield(mean=mass.estimate.value, sd=mass.sd / mass.n**0.5, df=mass.n - 1)


def _trusted(book: "Book", media: Sequence[Medium]) -> str | None:
    """The one that the grower has named, else that of the last plan."""
    names = [one.name for one in media]
    marked = next((one.name for one in media if one.trusted), None)
    planned = [kept.plan.trusted_medium for kept in book.plans()]
    return marked or next((name for name in reversed(planned) if name in names), None)


def _due(
    tests: Sequence[BenchTest], readings: Mapping[BenchTestId, tuple[Reading, ...]], now: datetime
) -> list[DueTest]:
    found = []
    for test in tests:
        due = due_of(test, readings.get(test.id, ()), now)
        if due is not None:
            found.append(DueTest(test=test, due=due))
    return sorted(found, key=lambda one: one.due.at)


# --- climate


def _climate_cells(
    medium: str, bills: Bills, found: Footprint | None, weighed: int
) -> dict[tuple[str, str], Cell]:
    rows = ("footprint", medium), ("footprint by kg", medium)
    if found is None:
        gap = Cell.missing(bills.missing[medium], NOTE)
        return dict.fromkeys(rows, gap)
    telling = [name for name, share in found.variance.items() if share >= TELLING]
    origins = {origin_of(bills.factors[name]) for name in telling}
    origin = next((one for one in WORST if one in origins), Origin.TYPED)
    sources = tuple(dict.fromkeys(bills.factors[name].source for name in found.variance))
    notes = (*_parts(found, bills), *bills.notes.get(medium, ()), NOTE)
    tray = Cell(
        value=found.mean, low=found.low, high=found.high, n=len(found.variance), of="inputs", origin=origin,
        notes=notes, sources=sources,
    )  # fmt: skip
    if found.per_kg is None:
        by_kg = Cell.missing(found.reason or NOTE, NOTE)
    else:
        low, middle, high = found.per_kg
        alone = (ONE_TRAY,) if weighed == 1 else ()  # how far its yield may be off nobody knows
        by_kg = Cell(
            value=middle, low=None if alone else low, high=None if alone else high, n=weighed, of="trays",
            origin=origin, notes=(*alone, *notes), sources=sources,
        )  # fmt: skip
    return {rows[0]: tray, rows[1]: by_kg}


def _about(bills: Bills, name: str) -> Sentence:
    """What an input is, in words."""
    return KINDS[bills.factors[name].name].about


def _parts(found: Footprint, bills: Bills) -> tuple[Sentence, ...]:
    peat, grid = found.parts.get(PEAT, 0.0), found.parts.get(ELECTRICITY, 0.0)
    said = [
        Sentence(
            "Peat's own carbon is {peat:.0f} % of it, electricity from the grid {grid:.0f} %.",
            peat=100 * peat,
            grid=100 * grid,
        )
    ]
    first = next(iter(found.variance.items()), None)
    if first is not None and first[1] > 0:
        said.append(
            Sentence(
                "What makes it most unsure: {name}, {share:.0f} % of the variance.",
                name=_about(bills, first[0]),
                share=100 * first[1],
            )
        )
    return tuple(said)


def climate_sentence(one: Difference, trusted: str) -> Sentence:
    """One medium against the trusted one."""
    if one.high < 0:
        return Sentence(
            "{medium} gives off {less:.2f} kg CO2e a tray less than {trusted} ({low:.2f} to {high:.2f}).",
            medium=one.medium, trusted=trusted, less=-one.mean, low=-one.high, high=-one.low,
        )  # fmt: skip
    if one.low > 0:
        return Sentence(
            "{medium} gives off {more:.2f} kg CO2e a tray more than {trusted} ({low:.2f} to {high:.2f}).",
            medium=one.medium, trusted=trusted, more=one.mean, low=one.low, high=one.high,
        )  # fmt: skip
    return Sentence(
        "Whether {medium} gives off less than {trusted} cannot be told: {low:+.2f} to {high:+.2f} kg "
        "CO2e a tray.",
        medium=one.medium, trusted=trusted, low=one.low, high=one.high,
    )  # fmt: skip


def _answer(one: Difference, trusted: str, bills: Bills) -> ClimateAnswer:
    settles = None
    if one.settles is not None:
        settles = Sentence(
            "To know it better, find out “{name}”: {share:.0f} % of what is unsure in it.",
            name=_about(bills, one.settles),
            share=100 * one.settles_share,
        )
    return ClimateAnswer(medium=one.medium, sentence=climate_sentence(one, trusted), settles=settles)
