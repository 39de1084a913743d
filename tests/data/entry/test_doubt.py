"""Numbers that look as if they were in another unit are asked about."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from data.entry.doubt import doubt
from data.entry.units import Quantity, UnitSystem, convert

TRAY = [1180, 1120, 1065, 1010]  # g, earlier weights of a tray


def test_an_ordinary_weight_is_not_doubted():
    assert doubt(960, Quantity.MASS, TRAY) is None
    assert doubt(1500, Quantity.MASS, TRAY) is None  # just watered


def test_ounces_typed_as_grams_are_asked_about():
    asked = doubt(34.0, Quantity.MASS, TRAY)

    assert asked.instead == pytest.approx(34 * 28.349523125)
    assert asked.sentence == (
        "34.0 g is far from what it was before; read in oz it would be 964 g. Which one is it?"
    )


def test_kilograms_typed_as_grams_are_asked_about():
    assert doubt(0.96, Quantity.MASS, TRAY).instead == pytest.approx(960)


def test_grams_typed_by_one_who_thinks_in_ounces_are_asked_about():
    typed = convert(960, "oz", "g")  # 960, taken for ounces

    asked = doubt(typed, Quantity.MASS, TRAY, system=UnitSystem.US)

    assert asked.instead == pytest.approx(960)
    assert "33.9 oz" in asked.sentence


def test_fahrenheit_typed_as_celsius_is_asked_about():
    asked = doubt(70.0, Quantity.TEMPERATURE, [20.5, 21.0, 21.5])

    assert asked.instead == pytest.approx(21.1, abs=0.05)


def test_celsius_typed_as_fahrenheit_is_asked_about():
    typed = convert(21.0, "F", "C")  # -6.1

    assert doubt(typed, Quantity.TEMPERATURE, [20.5, 21.0, 21.5]).instead == pytest.approx(21)


def test_the_first_weight_is_held_against_what_is_usual():
    asked = doubt(28.6, Quantity.MASS, [], usual=(300, 4000))

    assert asked.instead == pytest.approx(810.8, abs=0.1)
    assert "from what is usual" in asked.sentence  # nothing was weighed before
    assert doubt(28.6, Quantity.MASS, []) is None


def test_a_number_that_no_unit_mends_is_left_to_others():
    assert doubt(5.0, Quantity.MASS, TRAY) is None


def test_humidity_has_one_unit_only():
    assert doubt(0.5, Quantity.SHARE, [50, 60]) is None


@settings(deadline=None)
@given(st.floats(100, 5000), st.floats(0.8, 1.25), st.sampled_from(["oz", "kg", "lb"]))
def test_whatever_the_tray_a_mixed_up_unit_is_found(weight, change, unit):
    meant = weight * change

    asked = doubt(convert(meant, "g", unit), Quantity.MASS, [weight])

    assert asked is not None
    ratios = [meant, meant * 1000 / 453.59237, meant * 453.59237 / 1000]  # kg and lb lie near each other
    assert min(abs(asked.instead / one - 1) for one in ratios) < 1e-9


@settings(deadline=None)
@given(st.lists(st.floats(100, 5000), min_size=1, max_size=5), st.floats(0.4, 2.5))
def test_an_ordinary_change_is_never_doubted(earlier, change):
    middle = sorted(earlier)[len(earlier) // 2] if len(earlier) % 2 else None

    if middle is not None:
        assert doubt(middle * change, Quantity.MASS, earlier) is None
