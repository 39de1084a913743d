"""Doubt: a number that looks as if it were in another unit -> the question to ask before it is kept.

In    a number in the book's unit, its quantity, earlier numbers of the same tray, or what is usual
Out   `Doubt`: the question and the other number; None where nothing is odd
Not   what a number can be at all (`readings.py`), reading text (`units.py`)

Asked about, never mended silently: a tray that seems to weigh a 28th of its last weight was weighed in ounces
and typed as grams. The ratios are exact; how near they must come is common practice.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from statistics import median

from data.entry.units import Quantity, UnitSystem, convert, say
from data.sentence import Sentence

__all__ = ["Doubt", "doubt"]

PLAIN = 3.0  # times the ordinary number and more, or a third of it: odd
NEAR = 1.6  # times: the other reading comes as near as that
PLAIN_KELVIN = 12.0
NEAR_KELVIN = 8.0
RATIOS = {  # (the unit that was taken for the other) -> how many of the book's unit the other one is
    Quantity.MASS: (("oz", "g"), ("g", "oz"), ("kg", "g"), ("g", "kg"), ("lb", "g"), ("g", "lb")),
    Quantity.VOLUME: (("fl oz", "ml"), ("ml", "fl oz"), ("l", "ml"), ("ml", "l"), ("qt", "ml"), ("ml", "qt")),
    Quantity.LENGTH: (("in", "mm"), ("mm", "in"), ("cm", "mm"), ("mm", "cm")),
    Quantity.TEMPERATURE: (("F", "C"), ("C", "F")),
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Doubt:
    """A question to ask: was it `instead`?"""

    sentence: Sentence
    instead: float  # in the book's unit


def doubt(
    value: float,
    quantity: Quantity,
    earlier: Sequence[float],
    usual: tuple[float, float] | None = None,
    system: UnitSystem = UnitSystem.METRIC,
) -> Doubt | None:
    """Whether a number was probably meant in another unit.

    Parameters
    ----------
    value, earlier
        In the book's unit; `earlier` of the same tray and kind, newest last.
    usual
        From, to: asked only where there are no earlier numbers.
    """
    if quantity not in RATIOS or value == 0:
        return None
    near = _near(quantity, earlier[-5:], usual)
    if near is None or near.holds(value):
        return None
    others = [(one, meant) for one, meant in _others(value, quantity) if near.fits(one)]
    if not others:
        return None
    instead, meant = min(others, key=lambda other: near.distance(other[0]))
    fields = {
        "given": say(value, quantity, system),
        "meant": f"°{meant}" if quantity is Quantity.TEMPERATURE else meant,
        "instead": say(instead, quantity, system),
    }
    return Doubt(sentence=_question(fields, first=not earlier), instead=instead)


@dataclass(frozen=True, slots=True)
class _Ratio:
    """What is near by ratio: masses, volumes, lengths."""

    low: float
    high: float

    def holds(self, value: float) -> bool:
        return self.low / PLAIN < value < self.high * PLAIN

    def fits(self, value: float) -> bool:
        return self.low / NEAR <= value <= self.high * NEAR

    def distance(self, value: float) -> float:
        middle: float = (self.low * self.high) ** 0.5
        return max(value / middle, middle / value)


@dataclass(frozen=True, slots=True)
class _Kelvin:
    """What is near by difference: temperatures."""

    low: float
    high: float

    def holds(self, value: float) -> bool:
        return self.low - PLAIN_KELVIN < value < self.high + PLAIN_KELVIN

    def fits(self, value: float) -> bool:
        return self.low - NEAR_KELVIN <= value <= self.high + NEAR_KELVIN

    def distance(self, value: float) -> float:
        return abs(value - (self.low + self.high) / 2)


def _near(
    quantity: Quantity, earlier: Sequence[float], usual: tuple[float, float] | None
) -> _Ratio | _Kelvin | None:
    kind = _Kelvin if quantity is Quantity.TEMPERATURE else _Ratio
    if earlier:
        middle = median(earlier)
        return kind(middle, middle) if kind is _Kelvin or middle > 0 else None
    return None if usual is None else kind(*usual)


def _others(value: float, quantity: Quantity) -> Iterator[tuple[float, str]]:
    """What the number would be, had it been taken in one unit and meant in another."""
    for meant, taken in RATIOS[quantity]:
        if value > 0 or quantity is Quantity.TEMPERATURE:
            yield _meant(value, taken, meant, quantity), meant


def _meant(value: float, taken: str, meant: str, quantity: Quantity) -> float:
    own = {Quantity.MASS: "g", Quantity.VOLUME: "ml", Quantity.LENGTH: "mm", Quantity.TEMPERATURE: "C"}[
        quantity
    ]
    return convert(convert(value, own, taken), meant, own)


def _question(fields: Mapping[str, str], *, first: bool) -> Sentence:
    """The `first` number of a tray was held against what is usual, later ones against those before."""
    if first:
        return Sentence(
            "{given} is far from what is usual; read in {meant} it would be {instead}. Which one is it?",
            **fields,
        )
    return Sentence(
        "{given} is far from what it was before; read in {meant} it would be {instead}. Which one is it?",
        **fields,
    )
