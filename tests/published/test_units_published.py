"""Units against their definitions."""

import pytest

from data.entry.units import convert


# NIST Special Publication 811 (2008), appendix B.8: factors printed in bold are exact (from memory; each
# follows from pound = 0.45359237 kg, inch = 2.54 cm, US gallon = 231 cubic inches)
@pytest.mark.parametrize(
    ("value", "unit", "into", "expected"),
    [
        (1, "lb", "g", 453.59237),
        (1, "oz", "g", 28.349523125),
        (1, "in", "mm", 25.4),
        (1, "gal", "ml", 3785.411784),
        (1, "qt", "ml", 946.352946),
        (1, "fl oz", "ml", 29.5735295625),
        (1, "pt", "ml", 473.176473),
        (32, "F", "C", 0),
        (212, "F", "C", 100),
        (-40, "C", "F", -40),
        (37, "C", "F", 98.6),
    ],
)
def test_units_are_what_they_are_defined_to_be(value, unit, into, expected):
    assert convert(value, unit, into) == pytest.approx(expected, rel=1e-15, abs=1e-15)
