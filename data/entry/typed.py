"""Typed: what a person types for a reading -> its number in the book's unit, and what to ask before keeping.

In    text such as "812 g" or "28.6 oz", the kind of reading, earlier readings of the same tray and kind
Out   `TypedReading`: the number, or why it is none; the questions, each with the number it offers instead
Not   keeping it (`chapters/readingbook.py`), the shape of numbers and units (`units.py`)
"""

from collections.abc import Sequence
from dataclasses import dataclass

from data.entry.doubt import Doubt, doubt
from data.entry.units import Quantity, UnitSystem, parse, quantity_of, say
from data.readings import YES_OR_NO, ReadingKind, impossible
from data.sentence import Sentence

__all__ = ["TypedReading", "read_typed"]

SAID_SO = dict.fromkeys(("yes", "y", "ja", "j"), "1") | dict.fromkeys(("no", "n", "nein"), "0")
# where a first reading of a tray is held against; common practice, wide: a tray of 10 x 20 inch, a rack
USUAL = {
    ReadingKind.WEIGHT: (200.0, 5000.0),
    ReadingKind.AIR_TEMPERATURE: (10.0, 32.0),
    ReadingKind.MEDIUM_TEMPERATURE: (10.0, 32.0),
    ReadingKind.WATER: (30.0, 4000.0),
    ReadingKind.FEED: (30.0, 4000.0),
    ReadingKind.HEIGHT: (5.0, 300.0),
    ReadingKind.FRESH_MASS: (30.0, 1500.0),
}


@dataclass(frozen=True, slots=True, kw_only=True)
class TypedReading:
    """What was typed. `value` is in the unit of the kind; None where it cannot be, `reason` says why then."""

    value: float | None
    reason: Sentence | None
    doubt: Doubt | None  # to be asked before it is kept: `doubt.instead` is the other number


def read_typed(
    text: str,
    kind: ReadingKind,
    earlier: Sequence[float] = (),
    system: UnitSystem = UnitSystem.METRIC,
    decimal: str | None = None,
) -> TypedReading:
    """Read what a person typed for one reading; `earlier` numbers in the book's unit, newest last."""
    quantity = quantity_of(kind.unit)
    if kind.unit == YES_OR_NO:
        text = SAID_SO.get(text.strip().casefold(), text)
    typed = parse(text, quantity or Quantity.SHARE, system, decimal)  # a mark is a bare number
    if typed.value is None:
        return TypedReading(value=None, reason=typed.reason, doubt=None)
    value = typed.value
    wrong = impossible(kind, value)
    other = None if quantity is None else doubt(value, quantity, earlier, USUAL.get(kind), system)
    if wrong is not None and other is None:
        return TypedReading(value=None, reason=wrong, doubt=None)
    if other is None and typed.instead is not None and impossible(kind, typed.instead) is None:
        other = _two_meanings(text, value, typed.instead, quantity or Quantity.SHARE, system)
    return TypedReading(value=value if wrong is None else None, reason=wrong, doubt=other)


def _two_meanings(text: str, value: float, instead: float, quantity: Quantity, system: UnitSystem) -> Doubt:
    return Doubt(
        sentence=Sentence(
            "“{text}” can be {one} or {two}. Which one is it?",
            text=text.strip(),
            one=say(value, quantity, system),
            two=say(instead, quantity, system),
        ),
        instead=instead,
    )
