"""Open checklist: where the attributes of the MIAPPE checklist stand in a trial book.

In    a book
Out   lines (section, number within it, attribute, value), for one file beside the tables of an export
Not   the tables themselves (`tables.py`)

MIAPPE 1.2, the checklist of the plant phenotyping community (Papoutsoglou et al. 2020, New Phytologist 227,
260-273, for 1.1; attributes of the checklist's data model at github.com/MIAPPE/MIAPPE). An attribute that a
trial book does not know is left out where the checklist lets it, and else said to be not recorded.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import TYPE_CHECKING

from data.plan.placing import entered_blocks
from data.records import Tray
from data.trial import KeptPlan, Plan, setting_of

if TYPE_CHECKING:
    from data.book import Book

__all__ = ["VERSION", "Line", "checklist"]

VERSION = "1.2"
NOT_RECORDED = "not recorded"
FILES = (
    ("trays.csv", "one row for each tray with its growing conditions"),
    ("scores.csv", "one row for each photograph and version of the scoring method"),
    ("cells.csv", "coverage of the 72 cells of each scored photograph"),
    ("bed_cells.csv", "the same as a share of the growing bed"),
    ("readings.csv", "weights, temperatures, humidity, water, height, fresh mass, what the cut is worth"),
    ("events.csv", "what was done and what happened"),
    ("compared.csv", "the one number of each tray that was compared"),
)
# id, trait, method, scale
VARIABLES = (
    (
        "coverage_pct",
        "canopy cover",
        "share of the tray's inner area, segmented photograph",
        "%",
    ),
    (
        "bed_share_pct",
        "canopy cover of the growing bed",
        "share of what is neither rim nor wall of the tray, segmented photograph",
        "%",
    ),
    ("uniformity_pct", "evenness of the stand", "Christiansen's coefficient over 6 x 12 cells", "%"),
    ("gap_share_pct", "gaps in the stand", "connected pieces of at least 4 cm2 without canopy", "%"),
    ("dark_green", "canopy colour", "dark green colour index of the canopy's mean colour", "0-1"),
    (
        "bed_uniformity_pct",
        "evenness of the stand on the growing bed",
        "Christiansen's coefficient over 6 x 12 cells, each of its own bed",
        "%",
    ),
    (
        "canopy score",
        "canopy quality",
        "desirability of coverage, uniformity (of the growing bed where all trays tell it), colour and mold",
        "0-100",
    ),
    ("weight", "mass of tray, medium, water and plants", "scale", "g"),
    ("fresh mass", "yield", "mass of the cut shoots of a tray, scale", "g"),
    ("height", "shoot height", "ruler, from the medium", "mm"),
    ("shelf life", "keeping of the cut", "days from the cut until look or smell is no longer good", "d"),
    ("taste", "taste of the cut", "mark by a person, from 1 (off) to 5 (as it should be)", "1-5"),
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Line:
    """One attribute. `number` tells the studies, factors and trays of a section apart."""

    section: str
    number: int
    attribute: str
    value: str


def checklist(book: "Book") -> Iterator[Line]:
    """The attributes of the book as one investigation, each of its trials as a study."""
    yield from _section(
        "Investigation",
        1,
        {"Investigation title": f"Trial book {book.folder.name}", "MIAPPE version": VERSION},
    )
    for number, trial in enumerate(book.trials(), start=1):
        trays, plans = book.trial_trays(trial), book.plans(trial)
        plan = plans[-1] if plans else None
        yield from _study(number, trial, trays, plan, _placing(book, trial))
        yield from _environment(number, plan)
        yield from _factors(number, trays, plan)
        yield from _materials(trays)
        for tray in trays:
            yield from _unit(tray, plan)
            yield from _events(book, tray)
    for number, (file, about) in enumerate(FILES, start=1):
        yield from _section("Data file", number, {"Data file link": file, "Data file description": about})
    for number, (name, trait, method, scale) in enumerate(VARIABLES, start=1):
        yield from _section(
            "Observed variable",
            number,
            {
                "Variable ID": name,
                "Trait": trait,
                "Method": method,
                "Scale": scale,
                "Time scale": "Date/Time",
            },
        )


def _section(section: str, number: int, values: dict[str, str | None]) -> Iterator[Line]:
    for attribute, value in values.items():
        if value:
            yield Line(section=section, number=number, attribute=attribute, value=value)


def _placing(book: "Book", trial: str) -> str:
    """How treatments came to their places: of those entered by hand the grower's own words."""
    draws = book.draws(trial)
    if not draws:
        return "placed in a way that is not recorded"
    blocks = {place.block for place in draws[-1].draw.places}
    entered = entered_blocks(draws)
    if not entered:
        return "at random"
    words = "; ".join(dict.fromkeys(why for why in entered.values() if why))
    by_hand = f"by hand ({words})" if words else "by hand"
    return (
        f"placed {by_hand}"
        if len(entered) == len(blocks)
        else (f"at random, {by_hand} in {', '.join(entered)},")
    )


def _study(
    number: int, trial: str, trays: tuple[Tray, ...], kept: KeptPlan | None, placing: str
) -> Iterator[Line]:
    begin = min((tray.sown_at for tray in trays), default=None)
    ends = [tray.done_at for tray in trays]
    blocks = len({tray.block for tray in trays if tray.block})
    design = (
        f"{blocks} blocks, treatments {placing} within each; blocks are fixed effects in the comparison"
        if kept is not None
        else NOT_RECORDED
    )
    yield from _section(
        "Study",
        number,
        {
            "Study unique ID": trial,
            "Study title": trial,
            "Study description": kept.plan.words if kept is not None else None,
            "Start date of study": begin.isoformat() if begin else NOT_RECORDED,
            "End date of study": max(end for end in ends if end).isoformat() if ends and all(ends) else None,
            "Contact institution": NOT_RECORDED,
            "Geographic location (country)": NOT_RECORDED,
            "Experimental site name": NOT_RECORDED,
            "Description of the experimental design": design,
            "Observation unit level hierarchy": "study>block>tray",
            "Observation unit description": "one growing tray and what grows in it from sowing to cut",
            "Description of growth facility": "rack with shelves, indoors",
            "Map of experimental design": "draws.csv" if kept is not None else None,
        },
    )


def _environment(number: int, kept: KeptPlan | None) -> Iterator[Line]:
    """What the plan keeps the same for all trays."""
    for factor, level in (kept.plan.same if kept is not None else {}).items():
        values: dict[str, str | None] = {
            "Environment parameter": factor,
            "Environment parameter value": level,
        }
        yield from _section("Environment", number, values)


def _factors(number: int, trays: tuple[Tray, ...], kept: KeptPlan | None) -> Iterator[Line]:
    if kept is None:
        levels = {"medium": tuple(dict.fromkeys(tray.medium for tray in trays))}
    else:
        levels = {factor.name: factor.levels for factor in kept.plan.factors}
    for name, values in levels.items():
        if len(values) > 1:
            yield from _section(
                "Experimental factor",
                number,
                {"Experimental Factor type": name, "Experimental Factor values": " ; ".join(values)},
            )


def _materials(trays: tuple[Tray, ...]) -> Iterator[Line]:
    lots = dict.fromkeys((tray.crop, tray.seed_lot) for tray in trays)
    for number, (crop, lot) in enumerate(lots, start=1):
        yield from _section(
            "Biological material",
            number,
            {"Biological material ID": f"{crop}, {lot or 'lot not recorded'}", "Organism": crop},
        )


def _unit(tray: Tray, kept: KeptPlan | None) -> Iterator[Line]:
    where = [f"shelf:{tray.shelf}", f"place:{tray.position}"]
    yield from _section(
        "Observation unit",
        int(tray.id),
        {
            "Observation unit ID": f"tray_id:{tray.id}",
            "Observation unit type": "tray",
            "Spatial distribution": "; ".join([f"block:{tray.block}", *where] if tray.block else where),
            "Observation unit factor value": _levels(tray, kept.plan if kept is not None else None),
        },
    )


def _levels(tray: Tray, plan: Plan | None) -> str:
    if plan is None:
        return tray.medium
    return " ; ".join(str(setting_of(tray, factor.name)) for factor in plan.factors)


def _events(book: "Book", tray: Tray) -> Iterator[Line]:
    for event in book.events(tray.id):
        yield from _section(
            "Event",
            int(tray.id),
            {
                "Event type": str(event.kind),
                "Event description": event.note or None,
                "Event date": event.at.isoformat(),
            },
        )
