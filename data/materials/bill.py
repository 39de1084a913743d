"""Material bill: what a grower has entered about a medium -> the terms and ranges of its footprint.

In    the grower's own factors, the names of the media, yields
Out   `Bills`: a bill for each medium that has one, the inputs of all, and what is missing for the others
Not   the arithmetic (`footprint.py`), the factors and their sources (`medium/factors.py`)

An input of one medium is named "peat of coir mix", one that all share "truck": so shared ones cancel.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from data.footprint import Bill, Yield
from data.medium.factors import Factor, chosen
from data.sentence import Sentence
from data.statistics.budget import Range, Term

__all__ = ["ELECTRICITY", "PEAT", "Bills", "bills_of", "input_name"]

PEAT, ELECTRICITY = "peat's own carbon", "electricity"
MADE = {  # ingredient -> the factor of making it
    "perlite": "perlite made",
    "coir": "coir made",
    "wood fibre": "wood fibre made",
    "plant fibre": "plant fibre made",
    "needled fibre": "needling",
}
CARRIED = ("peat", "perlite", "coir", "wood fibre", "plant fibre")
WAYS = ("truck", "van", "rail", "ship")
KM_T = 1e-3  # kg km -> t km


@dataclass(frozen=True, slots=True, kw_only=True)
class Bills:
    """Bills with all their inputs; `missing` says for a medium why it has none, `notes` what is left out."""

    bills: tuple[Bill, ...]
    inputs: Mapping[str, Range]
    factors: Mapping[str, Factor]  # by the name of the input
    missing: Mapping[str, Sentence]
    notes: Mapping[str, tuple[Sentence, ...]]


def input_name(factor: str, medium: str) -> str:
    """How an input of one medium is called."""
    return f"{factor} of {medium}"


def bills_of(own: Sequence[Factor], media: Sequence[str], yields: Mapping[str, Yield]) -> Bills:
    """The bills of the media."""
    reader = _Reader(own)
    bills, missing, notes = [], {}, {}
    for medium in media:
        terms = reader.terms(medium)
        if not terms:
            missing[medium] = Sentence(
                "Weigh what goes into a tray, dry, and type it in with its range: 5 minutes."
            )
            continue
        notes[medium] = tuple(reader.notes_of(medium))
        bills.append(Bill(medium=medium, terms=tuple(terms), fresh=yields.get(medium)))
    return Bills(
        bills=tuple(bills), inputs=reader.inputs, factors=reader.factors, missing=missing, notes=notes
    )


class _Reader:
    """Takes factors one by one, and remembers each as an input."""

    def __init__(self, own: Sequence[Factor]) -> None:
        self._own = own
        self.inputs: dict[str, Range] = {}
        self.factors: dict[str, Factor] = {}

    def _input(self, name: str, medium: str | None = None) -> str | None:
        """The name of an input; None where there is no number."""
        found = chosen(self._own, name, medium)
        if found is None or found.value is None or found.low is None or found.high is None:
            return None
        key = name if medium is None or found.medium is None else input_name(name, medium)
        self.inputs[key] = Range(found.low, found.value, found.high)
        self.factors[key] = found
        return key

    def terms(self, medium: str) -> list[Term]:
        """All that can be reckoned."""
        found: list[Term] = []
        peat, carbon, upstream = (
            self._input("peat", medium),
            self._input("peat carbon", medium),
            self._input("peat upstream", medium),
        )
        if peat and carbon:
            found.append(Term(PEAT, (peat, carbon)))
            if upstream:
                found.append(Term("peat: land, extraction, haul", (peat, carbon, upstream)))
        for name, made in MADE.items():
            mass, factor = self._input(name, medium), self._input(made, medium)
            if mass and factor:
                found.append(Term(name, (mass, factor)))
        if not found:
            return found
        return [*found, *self._ways(medium), *self._tray(medium), *self._power(medium)]

    def _ways(self, medium: str) -> list[Term]:
        masses = [key for name in CARRIED if (key := self._input(name, medium))]
        return [
            Term("transport", (mass, way, factor), KM_T)
            for name in WAYS
            if (way := self._input(f"{name} way", medium)) and (factor := self._input(name, medium))
            for mass in masses
        ]

    def _tray(self, medium: str) -> list[Term]:
        mass = self._input("plastic tray", medium)
        made, uses = self._input("plastic made", medium), self._input("tray uses", medium)
        return [Term("plastic tray", (mass, made), below=(uses,))] if mass and made and uses else []

    def _power(self, medium: str) -> list[Term]:
        kwh, grid = self._input("electricity", medium), self._input("grid", medium)
        return [Term(ELECTRICITY, (kwh, grid))] if kwh and grid else []

    def notes_of(self, medium: str) -> list[Sentence]:
        """What is not in it."""
        found = []
        if not any(self._input(f"{name} way", medium) for name in WAYS):
            found.append(Sentence("No way to you is entered: transport is not in it."))
        if self._input("plastic tray", medium) is None:
            found.append(Sentence("No plastic tray is entered: it is not in it."))
        if self._input("electricity", medium) is None:
            found.append(Sentence("No electricity is entered: light and heat are not in it."))
        elif self._input("grid", medium) is None:
            found.append(
                Sentence("Electricity is entered, but not what your grid gives off: type its kg CO2e/kWh in.")
            )
        return found
