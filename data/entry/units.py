"""Units: what a person types -> a number in the book's unit, and back into words.

In    text such as "812", "812 g", "28.6 oz", "68 F", "1 lb 12 oz", "20,5", the quantity that is expected
Out   `Typed`: the number in grams, Celsius, millilitres or millimetres; or a sentence that says what is wrong
Not   what a number can be at all (`readings.py`), whether it is in the wrong unit (`doubt.py`)

The factors are exact by definition: pound 453.59237 g, inch 25.4 mm (international yard and pound agreement,
1959); US gallon 231 cubic inches. NIST Special Publication 811, appendix B (from memory).
"""

import math
import re
from dataclasses import dataclass
from enum import StrEnum
from fractions import Fraction

from data.sentence import Sentence

__all__ = [
    "BARE", "Quantity", "Typed", "UnitSystem", "convert", "own_unit", "parse", "quantity_of", "say",
    "units_of",
]  # fmt: skip


class Quantity(StrEnum):
    """What is measured; the book keeps g, C, ml, mm, %, min, d."""

    MASS = "mass"
    TEMPERATURE = "temperature"
    VOLUME = "volume"
    LENGTH = "length"
    SHARE = "share"
    TIME = "time"
    DAYS = "days"


class UnitSystem(StrEnum):
    """What a person thinks in."""

    METRIC = "metric"
    US = "US"


POUND = Fraction(45359237, 100000)  # g
GALLON = Fraction(231) * Fraction(254, 100) ** 3  # ml
# unit -> how many of the book's unit it is; the first of a quantity is the book's own
FACTORS: dict[Quantity, dict[str, Fraction]] = {
    Quantity.MASS: {"g": Fraction(1), "kg": Fraction(1000), "oz": POUND / 16, "lb": POUND},
    Quantity.VOLUME: {
        "ml": Fraction(1),
        "l": Fraction(1000),
        "fl oz": GALLON / 128,
        "cup": GALLON / 16,
        "pt": GALLON / 8,
        "qt": GALLON / 4,
        "gal": GALLON,
    },
    Quantity.LENGTH: {"mm": Fraction(1), "cm": Fraction(10), "in": Fraction(254, 10)},
    Quantity.SHARE: {"%": Fraction(1)},
    Quantity.TIME: {"min": Fraction(1), "h": Fraction(60)},
    Quantity.DAYS: {"d": Fraction(1)},
    Quantity.TEMPERATURE: {"C": Fraction(1), "F": Fraction(5, 9)},
}
LEAST_WHOLE = 10  # from here on minutes and ml are said whole
ZERO_F = Fraction(32)  # 0 C in F
SPELLINGS = {
    "gram": "g", "grams": "g", "gr": "g", "kilo": "kg", "kilos": "kg", "ounce": "oz", "ounces": "oz",
    "pound": "lb", "pounds": "lb", "lbs": "lb", "#": "lb",
    "c": "C", "°c": "C", "ºc": "C", "℃": "C", "degc": "C", "celsius": "C", "deg c": "C",
    "f": "F", "°f": "F", "ºf": "F", "℉": "F", "degf": "F", "fahrenheit": "F", "deg f": "F",
    "millilitre": "ml", "millilitres": "ml", "milliliter": "ml", "milliliters": "ml", "cc": "ml", "cm3": "ml",
    "litre": "l", "litres": "l", "liter": "l", "liters": "l", "floz": "fl oz", "fl. oz": "fl oz",
    "fl.oz": "fl oz", "cups": "cup", "pint": "pt", "pints": "pt", "quart": "qt", "quarts": "qt", "qts": "qt",
    "gallon": "gal", "gallons": "gal", "gals": "gal",
    "millimetre": "mm", "millimeter": "mm", "centimetre": "cm", "centimeter": "cm",
    "inch": "in", "inches": "in", '"': "in", "″": "in", "''": "in",
    "pct": "%", "percent": "%", "%rh": "%", "% rh": "%", "rh": "%",
    "minute": "min", "minutes": "min", "mins": "min", "hour": "h", "hours": "h", "hr": "h", "hrs": "h",
    "day": "d", "days": "d", "tag": "d", "tage": "d",
}  # fmt: skip
BARE = {  # the unit of a number without one
    UnitSystem.METRIC: {q: next(iter(units)) for q, units in FACTORS.items()},
    UnitSystem.US: {
        Quantity.MASS: "oz",
        Quantity.TEMPERATURE: "F",
        Quantity.VOLUME: "fl oz",
        Quantity.LENGTH: "in",
        Quantity.SHARE: "%",
        Quantity.TIME: "min",
        Quantity.DAYS: "d",
    },
}

NUMBER = r"[+\-−]?(?:\d[\d.,'’  ]*|[.,]\d+)"  # parts of thousands and decimals are told apart below
ONE = re.compile(rf"\s*(?P<number>{NUMBER})\s*(?P<unit>[^\d\s.,+\-−][^\d]*?)?\s*")
POUNDS_OUNCES = re.compile(
    rf"\s*(?P<lb>{NUMBER})\s*(?:lbs?|pounds?|#)\.?\s*,?\s*(?P<oz>{NUMBER})\s*(?:oz|ounces?)\.?\s*",
    re.IGNORECASE,
)
LONGEST = 60  # letters that a person types for one number


@dataclass(frozen=True, slots=True, kw_only=True)
class Typed:
    """What was typed. `value` is in the book's unit; None where it cannot be read, `reason` says why then.

    `instead` is the other value that the text could mean (1,234 as 1234): to be asked about.
    """

    text: str
    value: float | None
    unit: str | None  # as it was understood
    reason: Sentence | None = None
    instead: float | None = None


def own_unit(quantity: Quantity) -> str:
    """The unit in which the book keeps a quantity."""
    return next(iter(FACTORS[quantity]))


def quantity_of(unit: str) -> Quantity | None:
    """What the book counts in a unit; None where it is no measure, as with marks."""
    return next((quantity for quantity in Quantity if own_unit(quantity) == unit), None)


def units_of(quantity: Quantity) -> tuple[str, ...]:
    """All units of a quantity, the book's own first."""
    return tuple(FACTORS[quantity])


def convert(value: float, unit: str, into: str) -> float:
    """The same amount in another unit of its quantity; rounded once, at the end.

    Raises
    ------
    ValueError
        For units that are none, or of different quantities.
    """
    for units in FACTORS.values():
        if unit in units and into in units:
            if not math.isfinite(value):
                raise ValueError(f"an amount is finite; got {value}")
            exact = Fraction(value) - (ZERO_F if unit == "F" else 0)
            exact = exact * units[unit] / units[into] + (ZERO_F if into == "F" else 0)
            return float(exact)
    raise ValueError(f"{unit} and {into} are no units of one quantity")


def parse(
    text: str, quantity: Quantity, system: UnitSystem = UnitSystem.METRIC, decimal: str | None = None
) -> Typed:
    """Read what a person typed.

    Parameters
    ----------
    system
        Gives the unit of a bare number: 812 is 812 g, or 812 oz.
    decimal
        The sign before the decimals, where it is known: "." or ",". Else both are read, and 1,234 is doubted.
    """
    both = POUNDS_OUNCES.fullmatch(text) if quantity is Quantity.MASS and len(text) <= LONGEST else None
    if both is not None:
        pounds, ounces = (_number(both[name], decimal)[0] for name in ("lb", "oz"))
        if pounds is not None and ounces is not None:
            grams = convert(pounds, "lb", "g") + convert(ounces, "oz", "g")
            return Typed(text=text, value=grams, unit="lb")
    found = ONE.fullmatch(text) if len(text) <= LONGEST else None
    value, other = (None, None) if found is None else _number(found["number"], decimal)
    if found is None or value is None:
        return _refused(text, Sentence("“{text}” is no number: type one such as 812 g.", text=text[:LONGEST]))
    unit = _unit(found["unit"], quantity, system)
    if unit is None:
        return _refused(
            text,
            Sentence(
                "“{unit}” is no unit of {quantity}: use {units}.",
                unit=found["unit"].strip(),
                quantity=str(quantity),
                units=", ".join(units_of(quantity)),
            ),
        )
    own = own_unit(quantity)
    instead = None if other is None else convert(other, unit, own)
    return Typed(text=text, value=convert(value, unit, own), unit=unit, instead=instead)


def _refused(text: str, reason: Sentence) -> Typed:
    return Typed(text=text, value=None, unit=None, reason=reason)


def _unit(text: str | None, quantity: Quantity, system: UnitSystem) -> str | None:
    if text is None or not text.strip():
        return BARE[system][quantity]
    plain = " ".join(text.strip().lower().rstrip(".").split())
    name = SPELLINGS.get(plain, plain)
    if quantity is Quantity.VOLUME and name == "oz":
        name = "fl oz"  # nobody means a weight of water here
    return name if name in FACTORS[quantity] else None


def _number(text: str, decimal: str | None) -> tuple[float | None, float | None]:
    """The number, and the other one that the signs could mean."""
    plain = re.sub(r"['’  ]", "", text).replace("−", "-")
    comma, point = plain.count(","), plain.count(".")
    if decimal is None and comma and point:
        decimal = "," if plain.rfind(",") > plain.rfind(".") else "."
    if decimal is None and (comma > 1 or point > 1):
        decimal = "." if comma > 1 else ","
    if decimal is None:
        thousands = re.fullmatch(r"[+-]?[1-9]\d{0,2},\d{3}", plain)
        return _float(plain.replace(",", ".")), _float(plain.replace(",", "")) if thousands else None
    parts = plain.replace("," if decimal == "." else ".", "_")
    if "_" in parts and not re.fullmatch(r"[+-]?\d{1,3}(_\d{3})+([.,]\d*)?", parts):
        return None, None
    return _float(parts.replace("_", "").replace(",", ".")), None


def _float(text: str) -> float | None:
    try:
        return float(text)
    except ValueError:
        return None


# --- in words


def say(value: float, quantity: Quantity, system: UnitSystem = UnitSystem.METRIC, decimal: str = ".") -> str:
    """A number of the book in a person's own unit, rounded as one would say it: "812 g", "28.6 oz"."""
    unit, decimals = _spoken(abs(value), quantity, system)
    number = f"{convert(value, own_unit(quantity), unit):.{decimals}f}"
    number = number.removeprefix("-") if float(number) == 0 else number
    shown = f"°{unit}" if quantity is Quantity.TEMPERATURE else unit
    return f"{number.replace('.', decimal)} {shown}"


def _tenths(size: float) -> int:
    """Half a minute of cleaning is not none: a small amount is said with its tenths, where it has any."""
    return int(size < LEAST_WHOLE and round(size, 1) != round(size))


def _spoken(size: float, quantity: Quantity, system: UnitSystem) -> tuple[str, int]:
    """Unit and decimals for an amount of that size in the book's unit."""
    metric = system is UnitSystem.METRIC
    match quantity:
        case Quantity.MASS:
            if metric:
                return ("g", 0 if size >= 100 else 1) if size < 10_000 else ("kg", 2)
            return ("oz", 1) if size < 2268 else ("lb", 2)  # 80 oz
        case Quantity.VOLUME:
            if metric:
                return ("ml", _tenths(size)) if size < 1000 else ("l", 2)
            return ("fl oz", 1) if size < 946 else ("qt", 2)  # one quart
        case Quantity.LENGTH:
            return ("mm", 0) if metric else ("in", 1)
        case Quantity.TEMPERATURE:
            return ("C" if metric else "F"), 1
        case Quantity.SHARE:
            return "%", 0
        case Quantity.TIME:
            return "min", _tenths(size)
        case Quantity.DAYS:
            return "d", 0 if size == round(size) else 1
