"""What a person types for a reading."""

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from data.entry.typed import read_typed
from data.entry.units import UnitSystem
from data.readings import ReadingKind, impossible

WEIGHT = ReadingKind.WEIGHT
TRAY = [1180.0, 1120.0, 1065.0]


def test_an_ordinary_weight_is_kept_without_a_question():
    typed = read_typed("1010", WEIGHT, TRAY)

    assert (typed.value, typed.reason, typed.doubt) == (1010, None, None)


def test_ounces_without_their_unit_are_asked_about():
    typed = read_typed("35.6", WEIGHT, TRAY)

    assert typed.value == pytest.approx(35.6)
    assert typed.doubt.instead == pytest.approx(1009.2, abs=0.1)


def test_the_first_weight_of_a_tray_is_held_against_what_trays_weigh():
    assert read_typed("0.812", WEIGHT).doubt.instead == pytest.approx(812)
    assert read_typed("812", WEIGHT).doubt is None


def test_an_american_who_types_grams_is_asked():
    assert read_typed("812", WEIGHT, system=UnitSystem.US).doubt.instead == pytest.approx(812)


def test_fahrenheit_typed_for_celsius_is_asked_about():
    assert read_typed("68", ReadingKind.AIR_TEMPERATURE).doubt.instead == pytest.approx(20)


def test_a_comma_before_the_unit_that_fits_a_tray_is_taken_without_a_question():
    """As a mark of thousands it would be a tray of more than a tonne."""
    typed = read_typed("1,234 kg", WEIGHT)

    assert typed.value == pytest.approx(1234)
    assert typed.doubt is None


def test_thousands_with_a_comma_are_asked_about():
    typed = read_typed("1,065", WEIGHT, [1120.0])

    assert typed.doubt.instead == pytest.approx(1065)


def test_a_mark_is_a_bare_number():
    assert read_typed("4", ReadingKind.CUT_QUALITY).value == 4
    assert read_typed("9", ReadingKind.CUT_QUALITY).value is None
    assert read_typed("9", ReadingKind.CUT_QUALITY).reason.startswith("cut quality can be 1 to 5")


def test_what_cannot_be_is_no_reading():
    typed = read_typed("-5", WEIGHT, TRAY)

    assert typed.value is None
    assert typed.reason


@settings(deadline=None)
@given(st.text(max_size=20), st.sampled_from(list(ReadingKind)), st.lists(st.floats(1, 5000), max_size=3))
def test_any_text_gives_a_possible_number_or_a_reason(text, kind, earlier):
    typed = read_typed(text, kind, earlier)

    assert (typed.value is None) == (typed.reason is not None)
    assert typed.value is None or (math.isfinite(typed.value) and impossible(kind, typed.value) is None)


@pytest.mark.parametrize(("text", "value"), [("ja", 1.0), ("No", 0.0), ("1", 1.0), ("0", 0.0), ("2", None)])
def test_what_is_yes_or_no_is_typed_as_either_or_as_a_figure(text: str, value: float | None) -> None:
    assert read_typed(text, ReadingKind.SLID).value == value


def test_a_mark_is_no_yes() -> None:
    assert read_typed("ja", ReadingKind.CUT_QUALITY).value is None
