"""What a person types, and how numbers are said."""

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from data.entry.units import Quantity, UnitSystem, convert, own_unit, parse, quantity_of, say, units_of
from data.readings import ReadingKind

MASS, WARMTH, WATER, LENGTH = Quantity.MASS, Quantity.TEMPERATURE, Quantity.VOLUME, Quantity.LENGTH


@pytest.mark.parametrize(
    ("text", "quantity", "value"),
    [
        ("812", MASS, 812),
        (" 812 g ", MASS, 812),
        ("812g", MASS, 812),
        ("0.812 kg", MASS, 812),
        ("28.6 oz", MASS, 28.6 * 28.349523125),
        ("28,6 oz", MASS, 28.6 * 28.349523125),
        ("1 lb 12 oz", MASS, 28 * 28.349523125),
        ("1lb, 12.5oz", MASS, 28.5 * 28.349523125),
        ("2 lbs", MASS, 907.18474),
        ("812.", MASS, 812),
        (".5 kg", MASS, 500),
        ("1.234,5", MASS, 1234.5),
        ("1,234.5 g", MASS, 1234.5),
        ("1 234,5 g", MASS, 1234.5),
        ("1'234.5", MASS, 1234.5),
        ("68 F", WARMTH, 20),
        ("68 °f", WARMTH, 20),
        ("20,5 °C", WARMTH, 20.5),
        ("-4", WARMTH, -4),
        ("−4 C", WARMTH, -4),
        ("250", WATER, 250),
        ("0,25 l", WATER, 250),
        ("0.25 L", WATER, 250),
        ("8 fl oz", WATER, 236.5882365),
        ("8 oz", WATER, 236.5882365),
        ("1 quart", WATER, 946.352946),
        ("1 gal", WATER, 3785.411784),
        ("43", LENGTH, 43),
        ("4.3 cm", LENGTH, 43),
        ('2"', LENGTH, 50.8),
        ("55 %", Quantity.SHARE, 55),
        ("1.5 h", Quantity.TIME, 90),
    ],
)
def test_what_a_metric_grower_types(text, quantity, value):
    typed = parse(text, quantity)

    assert typed.reason is None
    assert typed.value == pytest.approx(value, rel=1e-12)


@pytest.mark.parametrize(
    ("text", "quantity", "value"),
    [("28.6", MASS, 28.6 * 28.349523125), ("68", WARMTH, 20), ("8", WATER, 236.5882365), ("2", LENGTH, 50.8),
     ("812 g", MASS, 812)],
)  # fmt: skip
def test_what_an_american_grower_types(text, quantity, value):
    assert parse(text, quantity, UnitSystem.US).value == pytest.approx(value, rel=1e-12)


@pytest.mark.parametrize(
    "text", ["", " ", "g", "heavy", "8 1 2 x 5", "1.2.3,4,5", "12,34,5.6.7", "--4", "1e400", "9" * 80]
)
def test_what_is_no_number_says_so(text):
    typed = parse(text, MASS)

    assert typed.value is None
    assert typed.reason.endswith("type one such as 812 g.") or "is no unit" in typed.reason


def test_a_unit_of_something_else_is_named():
    typed = parse("812 ml", MASS)

    assert typed.value is None
    assert typed.reason == "“ml” is no unit of mass: use g, kg, oz, lb."


def test_a_comma_before_three_digits_can_mean_two_things():
    typed = parse("1,234", MASS)

    assert (typed.value, typed.instead) == (1.234, 1234)
    assert parse("1,234", MASS, decimal=",").instead is None
    assert parse("1,234", MASS, decimal=".").value == 1234
    assert parse("0,234 kg", MASS).instead is None


@pytest.mark.parametrize(
    ("value", "quantity", "metric", "us"),
    [
        (812.4, MASS, "812 g", "28.7 oz"),
        (12.34, MASS, "12.3 g", "0.4 oz"),
        (12_345, MASS, "12.35 kg", "27.22 lb"),
        (20.0, WARMTH, "20.0 °C", "68.0 °F"),
        (-0.01, WARMTH, "0.0 °C", "32.0 °F"),
        (250, WATER, "250 ml", "8.5 fl oz"),
        (1250, WATER, "1.25 l", "1.32 qt"),
        (43, LENGTH, "43 mm", "1.7 in"),
    ],
)
def test_how_numbers_are_said(value, quantity, metric, us):
    assert say(value, quantity) == metric
    assert say(value, quantity, UnitSystem.US) == us


def test_a_decimal_comma_is_said_where_it_is_wanted():
    assert say(20.5, WARMTH, decimal=",") == "20,5 °C"


def test_units_of_two_quantities_are_not_converted():
    with pytest.raises(ValueError, match="no units of one quantity"):
        convert(1, "g", "ml")


pairs = st.sampled_from([(a, b) for q in Quantity for a in units_of(q) for b in units_of(q)])


@settings(deadline=None)
@given(st.floats(-1e6, 1e6), pairs)
def test_there_and_back_is_the_same(value, pair):
    one, two = pair

    assert convert(convert(value, one, two), two, one) == pytest.approx(value, rel=1e-12, abs=1e-9)


@settings(deadline=None)
@given(st.floats(-1e6, 1e6), st.floats(-1e6, 1e6), pairs)
def test_more_stays_more(a, b, pair):
    low, high = sorted((a, b))

    assert convert(low, *pair) <= convert(high, *pair)


@settings(deadline=None)
@given(st.floats(0.1, 1e6), st.sampled_from(list(Quantity)), st.sampled_from(list(UnitSystem)))
def test_what_is_said_can_be_typed(value, quantity, system):
    typed = parse(say(value, quantity, system), quantity, system)

    own = convert(1.0, "F", "C") - convert(0.0, "F", "C") if quantity is WARMTH else 0.06 * value + 30
    assert typed.reason is None
    assert typed.value == pytest.approx(value, abs=max(own, 2.0))
    assert typed.unit in units_of(quantity)


@settings(deadline=None)
@given(st.text(max_size=80), st.sampled_from(list(Quantity)), st.sampled_from(list(UnitSystem)))
def test_any_text_gives_a_number_or_a_sentence(text, quantity, system):
    typed = parse(text, quantity, system)

    assert (typed.value is None) == (typed.reason is not None)
    assert typed.value is None or math.isfinite(typed.value)


@settings(deadline=None)
@given(st.floats(-1e5, 1e5), st.sampled_from([".", ","]), st.sampled_from(list(Quantity)))
def test_both_decimal_signs_are_read(value, decimal, quantity):
    text = f"{value:.2f}".replace(".", decimal)

    assert parse(text, quantity).value == pytest.approx(float(f"{value:.2f}"))
    assert own_unit(quantity) == units_of(quantity)[0]


@pytest.mark.parametrize("quantity", Quantity)
def test_a_unit_of_the_book_names_its_quantity(quantity):
    assert quantity_of(own_unit(quantity)) is quantity
    assert all(quantity_of(unit) is None for unit in units_of(quantity)[1:])


def test_a_small_amount_is_read_back_as_it_was_typed_and_no_half_becomes_none():
    assert [say(v, Quantity.TIME) for v in (0.5, 3.5, 3.0, 12.4)] == ["0.5 min", "3.5 min", "3 min", "12 min"]
    assert [say(v, Quantity.VOLUME) for v in (2.5, 250.4)] == ["2.5 ml", "250 ml"]


def test_marks_are_no_quantity():
    marks = {kind for kind in ReadingKind if quantity_of(kind.unit) is None}
    assert marks == {
        ReadingKind.CUT_QUALITY, ReadingKind.SLID, ReadingKind.TASTE, ReadingKind.SWEEPINGS_EYE,
        ReadingKind.BREAKDOWN_EYE,
    }  # fmt: skip


def test_days_are_read_as_days_and_said_again():
    assert parse("9 days", Quantity.DAYS).value == parse("9", Quantity.DAYS).value == 9
    assert parse("9 Tage", Quantity.DAYS).unit == "d"
    assert parse("9 h", Quantity.DAYS).value is None
    assert (say(9, Quantity.DAYS), say(9.5, Quantity.DAYS)) == ("9 d", "9.5 d")
