"""Factors: numbers about a medium that nobody measures on the rack, with range, unit, source, year and who.

In    what a person types; the defaults here, each with where it was read
Out   `Factor`s; which one holds (the person's own before a default); why one cannot be
Not   keeping them (`chapters/materialbook.py`), reckoning with them (`footprint.py`, `costs.py`)

A default is of every medium; a factor of one medium has none, for nobody but the grower knows the mat's mass.
A value without a range looks surer than it is and is refused; what is exact has its value three times.
Where "guess" stands as the source nothing could be looked up, and the range is wide on purpose.
"""

import math
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum
from types import MappingProxyType

from data.sentence import Sentence

__all__ = ["DEFAULTS", "KINDS", "Factor", "FactorGroup", "FactorKind", "chosen", "default_of", "wrong_factor"]


class FactorGroup(StrEnum):
    """What a factor is about."""

    BILL = "what goes into a tray"
    WAY = "the way to you"
    MEASURES = "measures"
    MONEY = "money"
    FEED = "feed"
    CLIMATE = "climate factors"


@dataclass(frozen=True, slots=True, kw_only=True)
class FactorKind:
    """What a factor is, whatever its value; `most` is what it can be at all (common practice, wide)."""

    name: str
    group: FactorGroup
    unit: str
    about: Sentence
    of_medium: bool
    most: float
    usual: float | None = None  # a typical size: a number 28 or 1000 times off is asked about


@dataclass(frozen=True, slots=True, kw_only=True)
class Factor:
    """One number with its range. `value` is the most likely one; None where it must be typed in."""

    name: str
    value: float | None
    low: float | None
    high: float | None
    unit: str
    source: str
    year: int | None = None
    medium: str | None = None
    who: str = ""
    entered_at: datetime | None = None  # None: a default

    @property
    def is_default(self) -> bool:
        """Whether it came with the program."""
        return self.entered_at is None

    @property
    def is_guess(self) -> bool:
        """Whether nothing could be looked up for it."""
        return self.source.startswith("guess")


def _entry(
    name: str, group: FactorGroup, unit: str, about: Sentence, most: float, usual: float | None = None
) -> FactorKind:
    return FactorKind(
        name=name, group=group, unit=unit, about=about, most=most, usual=usual,
        of_medium=group is not FactorGroup.CLIMATE,
    )  # fmt: skip


BILL, WAY, MEASURES = FactorGroup.BILL, FactorGroup.WAY, FactorGroup.MEASURES
MONEY, FEED, CLIMATE = FactorGroup.MONEY, FactorGroup.FEED, FactorGroup.CLIMATE

KINDS: Mapping[str, FactorKind] = MappingProxyType(
    {
        kind.name: kind
        for kind in (
            _entry("peat", BILL, "kg/tray", Sentence("dry peat in a tray"), 10, 0.7),
            _entry("perlite", BILL, "kg/tray", Sentence("perlite in a tray"), 10, 0.05),
            _entry("coir", BILL, "kg/tray", Sentence("dry coir in a tray"), 10, 0.4),
            _entry("wood fibre", BILL, "kg/tray", Sentence("dry wood fibre in a tray"), 10, 0.3),
            _entry("plant fibre", BILL, "kg/tray", Sentence("dry hemp, flax, jute or kenaf"), 10, 0.15),
            _entry("needled fibre", BILL, "kg/tray", Sentence("of that, needled into a mat"), 10, 0.15),
            _entry("plastic tray", BILL, "kg/tray", Sentence("mass of the plastic tray"), 5, 0.2),
            _entry("tray uses", BILL, "times", Sentence("how often a plastic tray is used"), 10_000),
            _entry("electricity", BILL, "kWh/tray", Sentence("electricity that you count for a tray"), 500),
            _entry("truck way", WAY, "km", Sentence("by truck"), 20_000),
            _entry("van way", WAY, "km", Sentence("by van"), 20_000),
            _entry("rail way", WAY, "km", Sentence("by rail"), 20_000),
            _entry("ship way", WAY, "km", Sentence("by ship"), 50_000),
            _entry("thickness", MEASURES, "mm", Sentence("thickness of the medium in the tray"), 200, 20),
            _entry("dry mass", MEASURES, "g/tray", Sentence("dry mass of the medium in a tray"), 10_000, 400),
            _entry("solid density", MEASURES, "g/cm³", Sentence("density of its solids"), 5),
            _entry("minerals", MEASURES, "%", Sentence("share of minerals in its solids, by volume"), 100),
            _entry("stored before", MEASURES, "l/tray", Sentence("room on the shelf before use"), 100, 2),
            _entry("stored after", MEASURES, "l/tray", Sentence("room on the heap after use"), 100, 2),
            _entry("wet after", MEASURES, "g/tray", Sentence("mass to carry away after a cut"), 20_000, 1200),
            _entry("price", MONEY, "/tray", Sentence("price of the medium for a tray"), 1000),
            _entry("feed dilution", FEED, "ml/l", Sentence("feed in a litre of water"), 1000),
            _entry("feed every", FEED, "days", Sentence("days from one feed to the next"), 60),
            _entry("feed odour", FEED, "1-5", Sentence("smell at the rack, 1 none to 5 not bearable"), 5),
            _entry("peat carbon", CLIMATE, "kg CO2e/kg", Sentence("peat's own carbon, fully oxidised"), 10),
            _entry("peat upstream", CLIMATE, "share", Sentence("peat: land, haul, on top of its carbon"), 5),
            _entry("perlite made", CLIMATE, "kg CO2e/kg", Sentence("expanded perlite"), 20),
            _entry("coir made", CLIMATE, "kg CO2e/kg", Sentence("coir, washed and pressed, to the port"), 20),
            _entry("wood fibre made", CLIMATE, "kg CO2e/kg", Sentence("wood fibre, steamed and ground"), 20),
            _entry("plant fibre made", CLIMATE, "kg CO2e/kg", Sentence("plant fibre, to the factory"), 20),
            _entry("needling", CLIMATE, "kg CO2e/kg", Sentence("needling fibre into a mat"), 20),
            _entry("plastic made", CLIMATE, "kg CO2e/kg", Sentence("plastic, formed"), 30),
            _entry("truck", CLIMATE, "kg CO2e/t km", Sentence("truck"), 5),
            _entry("van", CLIMATE, "kg CO2e/t km", Sentence("van, diesel"), 10),
            _entry("rail", CLIMATE, "kg CO2e/t km", Sentence("rail"), 5),
            _entry("ship", CLIMATE, "kg CO2e/t km", Sentence("container ship"), 5),
            _entry("grid", CLIMATE, "kg CO2e/kWh", Sentence("your electricity"), 3),
        )
    }
)  # fmt: skip

IPCC = (
    "IPCC 2006 Guidelines, vol. 4, ch. 7, table 7.5 (seen in a copy of the IPCC emission factor database): "
    "0.45, 0.40 and 0.34 t C/t x 44/12"
)
CLEARY = (
    "Cleary, Roulet & Moore 2005, Greenhouse gas emissions from Canadian peat extraction, Ambio 34, 456-461: "
    "(15 + 10 + 4)/71; the range is a guess"
)
FIBRE = (
    "de Beus & Carus 2019, Carbon footprint and sustainability of different natural fibres; Singh, Kumar & "
    "Mitra 2018, Indian J. Agric. Sci. 88(8); the high end is a guess"
)
CONVERSION = "UK Government GHG Conversion Factors 2025 (read from a public copy)"


def _default(
    name: str, low: float | None, value: float | None, high: float | None, source: str, year: int | None
) -> Factor:
    return Factor(name=name, value=value, low=low, high=high, unit=KINDS[name].unit, source=source, year=year)


DEFAULTS: Mapping[str, Factor] = MappingProxyType(
    {
        one.name: one
        for one in (
            _default("peat carbon", 1.25, 1.65, 1.65, IPCC, 2006),
            _default("peat upstream", 0.2, 0.4, 0.6, CLEARY, 2005),
            _default("perlite made", 0.4, 0.9, 1.6, "guess: fuel-fired expansion and haul", None),
            _default("coir made", 0.1, 0.3, 1.0, "guess: wet storage may give off methane, high end", None),
            _default("wood fibre made", 0.1, 0.3, 0.8, "guess: electricity and steam dominate", None),
            _default("plant fibre made", 0.35, 0.50, 1.0, FIBRE, 2019),
            _default("needling", 0.1, 0.3, 0.5, "guess: electricity of the needling line", None),
            _default("plastic made", 2.0, 2.58, 5.0, f"{CONVERSION}, polypropylene; range a guess", 2025),
            _default("truck", 0.0743, 0.1016, 0.1223, f"{CONVERSION}, all heavy goods vehicles", 2025),
            _default("van", 0.37, 0.63, 0.86, f"{CONVERSION}, vans up to 3.5 t", 2025),
            _default("rail", 0.02, 0.0278, 0.04, f"{CONVERSION}; the range is a guess", 2025),
            _default("ship", 0.0127, 0.0161, 0.0368, f"{CONVERSION}, container ships", 2025),
            _default("grid", None, None, None, "yours: of your own supplier, with year and country", None),
            _default("solid density", 1.4, 1.5, 1.6, "guess: organic fibre; from memory", None),
            _default("minerals", 0.0, 2.0, 10.0, "guess: more with perlite in it", None),
            _default("tray uses", 5.0, 30.0, 100.0, "guess: count your own", None),
        )
    }
)


def default_of(name: str) -> Factor | None:
    """What holds where the grower has said nothing; None where there is no default."""
    return DEFAULTS.get(name)


def chosen(own: Iterable[Factor], name: str, medium: str | None = None) -> Factor | None:
    """The one that holds: the grower's for this medium, then for all, then the default."""
    found = [one for one in own if one.name == name and one.medium in (medium, None)]
    return max(found, key=lambda one: one.medium is not None, default=default_of(name))


def wrong_factor(factor: Factor) -> Sentence | None:
    """Why a factor cannot be kept, or None."""
    kind = KINDS.get(factor.name)
    if kind is None:
        return Sentence("“{name}” is no factor of this program.", name=factor.name)
    about = str(kind.about)
    numbers = (factor.low, factor.value, factor.high)
    given = [one for one in numbers if one is not None]
    if any(not math.isfinite(one) or one < 0 for one in given):
        return Sentence("{about}: a number below zero cannot be.", about=about)
    if factor.value is None:
        return Sentence("{about}: type the most likely value.", about=about)
    if factor.low is None or factor.high is None:
        return Sentence(
            "{about}: say how low and how high it can be. A number without a range looks surer than it is; "
            "type it three times if it is exact.",
            about=about,
        )
    if not factor.low <= factor.value <= factor.high:
        return Sentence(
            "{about}: {value:g} does not lie between {low:g} and {high:g}.",
            about=about, value=factor.value, low=factor.low, high=factor.high,
        )  # fmt: skip
    if factor.high > kind.most:
        return Sentence(
            "{about}: {high:g} {unit} is more than can be. Look at the unit.",
            about=about, high=factor.high, unit=kind.unit,
        )  # fmt: skip
    if factor.name == "tray uses" and factor.low < 1:
        return Sentence("A tray is used once at least.")
    if not factor.source.strip():
        return Sentence("{about}: say where the number comes from, your own scale for instance.", about=about)
    return None
