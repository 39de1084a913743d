"""What a medium holds, and the weight at which a tray is dry."""

from datetime import datetime, timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from data.water import DryFrom, dry_weight, wetting_of

SOWN = datetime(2026, 3, 2, 9)


def weighed(*hours_grams):
    """(time, g) from (hours after sowing, g)."""
    return [(SOWN + timedelta(hours=h), g) for h, g in hours_grams]


def test_a_wetting_test():
    told = wetting_of(300, 1500, 1200, drained_minutes=40, rewetted_g=1110)

    assert told.capacity_g == 900
    assert told.rewetted == pytest.approx(0.9)
    assert told.reasons == {}


@pytest.mark.parametrize(
    ("soaked", "drained", "words"),
    [
        (None, 250, "Dry it weighs 300 g and wet 250 g: one of the two is wrong."),
        (1200, 1500, "Drained it weighs more than soaked: one of the two is wrong."),
    ],
)
def test_weighings_that_cannot_be_tell_no_capacity_and_say_which(soaked, drained, words):
    told = wetting_of(300, soaked, drained, rewetted_g=1110)

    assert (told.capacity_g, told.rewetted) == (None, None)
    assert told.reasons["capacity_g"] == words


def test_what_drains_nothing_off_may_weigh_a_little_more_on_the_scale():
    assert wetting_of(300, 1200, 1204).capacity_g == 904


def test_a_medium_that_took_up_less_than_nothing_was_weighed_wrong():
    assert "one of the two is wrong" in wetting_of(300, 1200, 1100, rewetted_g=290).reasons["rewetted"]


def test_a_wetting_test_that_drained_too_short_tells_no_capacity():
    told = wetting_of(300, 1500, 1200, drained_minutes=10)

    assert told.capacity_g is None
    assert told.reasons["capacity_g"] == "It drained for 10 minutes only; 30 are needed."


def test_a_wetting_test_just_begun_says_what_comes_next():
    told = wetting_of(300, None, None)

    assert told.capacity_g is None
    assert told.reasons["capacity_g"] == "Weigh it again half an hour after soaking, drained."


def test_a_tray_weighed_dry_and_full_knows_its_dry_weight():
    told = dry_weight(weighed((0, 520), (1, 1180), (20, 1090), (60, 800)))

    assert (told.dry_g, told.full_g) == (520, 1180)
    assert told.grams == pytest.approx(520 + 0.3 * 660)
    assert told.rests_on is DryFrom.OWN
    assert told.sentence == "30 % of the 660 g of water that it holds are left at 718 g."


def test_a_tray_set_up_wet_takes_the_rest_from_the_wetting_test():
    told = dry_weight(weighed((0, 1180), (20, 1090)), capacity_g=660)

    assert (told.dry_g, told.full_g) == (520, 1180)
    assert told.rests_on is DryFrom.OWN_AND_TEST


def test_a_first_weight_in_another_unit_makes_no_dry_weight():
    told = dry_weight(weighed((0, 40.0), (1, 1130.0), (20, 1090.0)))

    assert told.grams is None
    assert told.sentence == "The first weight, 40 g, is far below the second, 1130 g: mend one of them."


def test_a_tray_watered_between_two_weighings_was_not_dry_before():
    assert dry_weight(weighed((0, 1100), (24, 1180))).grams is None


def test_a_dry_weight_that_a_person_knows_is_taken():
    assert dry_weight(weighed((0, 1180)), dry_g=520).grams == pytest.approx(718)


def test_a_dry_weight_and_a_wetting_test_tell_it_before_the_first_weighing():
    told = dry_weight([], capacity_g=660, dry_g=520)

    assert (told.dry_g, told.full_g) == (520, 1180)
    assert told.rests_on is DryFrom.OWN_AND_TEST
    assert told.grams == pytest.approx(718)


def test_a_dry_weight_alone_tells_nothing_before_the_first_weighing():
    told = dry_weight([], dry_g=520)

    assert told.grams is None
    assert "never weighed" in told.sentence


@pytest.mark.parametrize(("days", "dry"), [(0, 520), (1, 520), (-1, None)])
def test_a_first_weighing_after_the_day_of_sowing_is_no_dry_tray(days, dry):
    """A tray that stands for days is not empty: its next weight is what it drank, not all that it holds."""
    sown = (SOWN + timedelta(days=days)).date()

    assert dry_weight(weighed((0, 520), (1, 1180)), sown_on=sown).dry_g == dry


def test_without_any_of_them_it_says_what_to_do():
    assert "weigh it dry" in dry_weight([]).sentence
    assert "wetting test" in dry_weight(weighed((0, 1180))).sentence


def test_a_medium_that_holds_more_than_the_tray_weighs_is_doubted():
    told = dry_weight(weighed((0, 600)), capacity_g=660)

    assert told.grams is None
    assert "look at the weighings" in told.sentence


masses = st.floats(1, 5000)


@settings(deadline=None)
@given(masses, masses, st.floats(0, 1), st.floats(0, 1))
def test_a_larger_reserve_is_a_heavier_dry_weight(dry, water, one, two):
    low, high = sorted((one, two))
    weights = weighed((0, dry), (1, dry + min(max(water, dry), 6 * dry)))

    assert dry_weight(weights, reserve=low).grams <= dry_weight(weights, reserve=high).grams
