"""The crop table warns of what is unusual, and never of what growers do every day."""

from dataclasses import replace
from datetime import date, timedelta

import pytest

from data.demo import trays
from data.growing.conditions import TrayType
from data.growing.croptable import (
    CROPS,
    bands_of,
    doubt_of_cut,
    doubt_of_reading,
    doubt_of_type,
    doubts_of_tray,
)
from data.readings import ReadingKind
from tests.data.builders import SOWN, a_tray

LARGE = TrayType(
    name="30 x 60 cm", outer_long_mm=620, outer_short_mm=320, inner_long_mm=600, inner_short_mm=300
)


@pytest.mark.parametrize(
    ("said", "crop"),
    [
        ("red radish", "radish"),
        ("Radish, China rose", "radish"),
        ("Peas", "pea"),
        ("wheatgrass", "wheat grass"),
        ("red cabbage", "red cabbage"),
        ("Sunflower (black)", "sunflower"),
        ("Brokkoli", "broccoli"),
        ("Radieschen, rot", "radish"),
        ("Erbsen", "pea"),
        ("Rotkohl", "red cabbage"),
        ("Weizengras", "wheat grass"),
    ],
)
def test_a_crop_is_known_by_its_words(said: str, crop: str) -> None:
    assert bands_of(said) is CROPS[crop]


@pytest.mark.parametrize("said", ["peat", "cabbage", "spear", "", "basil"])
def test_what_only_looks_alike_is_no_crop_of_the_table(said: str) -> None:
    assert bands_of(said) is None


def test_every_band_holds_what_is_usual() -> None:
    for bands in CROPS.values():
        assert bands.seed_g.holds(bands.usual_seed_g)
        assert bands.stacked_d.high <= bands.blackout_d.high


def test_the_demonstration_raises_no_doubt() -> None:
    assert [doubts_of_tray(tray) for tray in trays()] == [()] * 18


def test_a_slipped_digit_in_the_sowing_rate_is_noticed() -> None:
    (doubt,) = doubts_of_tray(a_tray(crop="broccoli", sowing_rate_g=180.0))
    assert doubt.startswith("180 g of dry seed is unusual for broccoli on this tray: 12 to 25 g")


def test_two_published_trays_of_other_size_are_usual_there() -> None:
    """Pea 430 g, sunflower 220 g, radish 70 g on 30 x 60 cm, as growers give them (common practice)."""
    for crop, grams in (("pea", 430.0), ("sunflower", 220.0), ("radish", 70.0)):
        assert doubts_of_tray(a_tray(crop=crop, sowing_rate_g=grams, soak_hours=None), LARGE) == ()


def test_what_growers_sow_on_a_tray_of_ten_by_twenty_inches_is_usual() -> None:
    """Radish 80 g, sunflower 150 g, pea 200 g, as a grower's page gives them (common practice)."""
    for crop, grams in (("radish", 80.0), ("sunflower", 150.0), ("pea", 200.0)):
        assert doubts_of_tray(a_tray(crop=crop, sowing_rate_g=grams, soak_hours=None)) == ()


@pytest.mark.parametrize(
    ("crop", "hours", "words"), [("radish", 12.0, "sown dry"), ("pea", 0.0, "8 to 24 h")]
)
def test_soaking_is_looked_at(crop: str, hours: float, words: str) -> None:
    (doubt,) = doubts_of_tray(a_tray(crop=crop, soak_hours=hours))
    assert words in doubt


def test_a_long_blackout_and_times_that_cannot_be_are_told() -> None:
    long = a_tray(blackout_from=SOWN, blackout_to=SOWN + timedelta(days=9))
    assert "9.0 days covered is unusual" in doubts_of_tray(long)[0]
    turned = replace(long, blackout_to=SOWN - timedelta(days=1))
    assert "ends before it begins" in doubts_of_tray(turned)[0]
    assert "3 days ahead" in doubts_of_tray(a_tray(), today=(SOWN - timedelta(days=3)).date())[0]
    assert "a day ahead" in doubts_of_tray(a_tray(), today=(SOWN - timedelta(days=1)).date())[0]
    assert doubts_of_tray(a_tray(), today=date(2026, 3, 8)) == ()


def test_an_unknown_crop_is_taken_as_it_comes() -> None:
    assert doubts_of_tray(a_tray(crop="shiso", sowing_rate_g=900.0, soak_hours=90.0)) == ()
    assert doubt_of_reading(ReadingKind.FRESH_MASS, 5.0, crop="shiso") is None


@pytest.mark.parametrize(
    ("kind", "usual", "odd"),
    [
        (ReadingKind.WEIGHT, 812.0, 28.6),
        (ReadingKind.AIR_TEMPERATURE, 21.0, 68.0),
        (ReadingKind.HEIGHT, 60.0, 600.0),
        (ReadingKind.WATER, 300.0, 0.3),
    ],
)
def test_a_number_in_another_unit_is_noticed(kind: ReadingKind, usual: float, odd: float) -> None:
    assert doubt_of_reading(kind, usual) is None
    assert "unit" in str(doubt_of_reading(kind, odd))


def test_a_weight_is_held_against_the_one_before() -> None:
    assert doubt_of_reading(ReadingKind.WEIGHT, 760.0, last_weight_g=812.0) is None
    assert "8120 g stands against 812 g" in str(
        doubt_of_reading(ReadingKind.WEIGHT, 8120.0, last_weight_g=812.0)
    )


def test_yield_and_day_of_the_cut_are_held_against_the_crop() -> None:
    assert doubt_of_reading(ReadingKind.FRESH_MASS, 210.0, crop="broccoli") is None
    assert doubt_of_reading(ReadingKind.FRESH_MASS, 2100.0, crop="broccoli") is not None
    assert doubt_of_reading(ReadingKind.FRESH_MASS, 500.0, crop="radish", tray_type=LARGE) is None
    assert doubt_of_cut("radish", 8) is None
    assert "day 6 to 10" in str(doubt_of_cut("radish", 15))
    assert doubt_of_cut("shiso", 90) is None


def test_a_tray_of_another_shape_is_told_what_is_doubtful() -> None:
    assert doubt_of_type(TrayType(name="10 x 20 inch")) is None
    assert doubt_of_type(LARGE) is None
    square = TrayType(name="10 x 10 inch", outer_long_mm=278, inner_long_mm=254)
    assert "1.00 times as long as wide" in str(doubt_of_type(square))
    assert "41 % off" in str(doubt_of_type(square))
