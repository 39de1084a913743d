"""Drying curves and when a tray will be dry."""

import math
from datetime import datetime, timedelta

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from data.medium.drying import DryingForm, fit_drying, hours_until, plausible
from data.medium.outlook import outlook, since_watering
from data.water import DryWeight, dry_weight

MORNING = datetime(2026, 3, 4, 7)
DRY = dry_weight([(MORNING, 500.0), (MORNING, 1100.0)])  # 500 dry, 1100 full: dry below 680


def weighed(*hours_grams, begin=MORNING):
    return [(begin + timedelta(hours=h), float(g)) for h, g in hours_grams]


def test_two_weighings_leave_steady_and_exponential_open():
    assert {one.form for one in plausible([0, 10], [600, 500])} == {DryingForm.STEADY, DryingForm.EXPONENTIAL}
    found = hours_until([0, 10], [600, 500], 200)

    assert found.value == pytest.approx(40)  # the steady one: the sooner, and a warning is wanted
    assert found.low < 40
    assert found.high > 60.26  # ln(600/200)/ln(600/500) x 10: the exponential one


def test_a_bend_tells_the_exponential_one():
    hours = [0, 10, 20, 30, 40]

    forms = [one.form for one in plausible(hours, [600 * math.exp(-0.03 * h) for h in hours])]

    assert forms[0] is DryingForm.EXPONENTIAL
    assert DryingForm.STEADY not in forms


def test_a_wet_surface_first_and_a_dry_one_later_are_two_stages():
    hours = list(range(0, 60, 5))
    water = [700 - 14 * h if h <= 20 else 420 * math.exp(-(h - 20) / 30) for h in hours]

    best = plausible(hours, water, scatter=2)[0]

    assert best.form is DryingForm.TWO_STAGE
    assert best.rate_at(5) == pytest.approx(14, rel=1e-3)
    assert best.rate_at(50) == pytest.approx(14 * math.exp(-1), rel=1e-3)


def test_what_gains_weight_is_not_drying():
    assert fit_drying([0, 5, 10], [500, 520, 560], DryingForm.STEADY) is None
    assert plausible([0, 5, 10], [500, 520, 560]) == []


def test_one_weighing_is_no_curve():
    assert plausible([0], [500]) == []


def test_it_never_dries_below_nothing():
    drying = fit_drying([0, 10, 20], [600, 450, 340], DryingForm.EXPONENTIAL)

    assert drying.hours_until(0) is None
    assert drying.hours_until(-5) is None


def test_intervals_hold_as_often_as_they_say():
    truth = math.log(600 / 200) / 0.03
    hours = np.arange(0, 30, 4.0)
    held = 0
    for seed in range(100):
        noise = np.random.default_rng(seed).normal(0, 5, len(hours))
        found = hours_until(list(hours), list(600 * np.exp(-0.03 * hours) + noise), 200)
        held += found.low <= truth <= found.high

    assert held >= 88  # 95 of 100, less three standard errors; curves that may hold too make it wider


# --- the outlook of a tray


def test_tonight_it_will_be_below_its_dry_weight():
    told = outlook(weighed((0, 1000), (3, 940), (6, 880)), DRY, now=MORNING + timedelta(hours=6))

    assert told.falls_at == datetime(2026, 3, 4, 23, 0)
    assert told.sentence == "It will be below its dry weight of 680 g tonight at 23:00."
    assert told.sureness.startswith("Give or take ")
    assert told.earliest < told.falls_at < told.latest
    assert told.loss_g_per_h == pytest.approx(20)
    assert not told.is_dry


def test_tomorrow_it_will_be_below_its_dry_weight():
    told = outlook(weighed((0, 1000), (4, 960)), DRY, now=MORNING + timedelta(hours=4))

    assert told.sentence == "It will be below its dry weight of 680 g tomorrow at 15:00."


def test_a_tray_below_its_dry_weight_says_so():
    told = outlook(weighed((0, 760), (6, 670)), DRY, now=MORNING + timedelta(hours=7))

    assert told.is_dry
    assert told.sentence == "It weighs 670 g, below its dry weight of 680 g."


def test_a_tray_that_must_have_dried_since_is_to_be_weighed():
    told = outlook(weighed((0, 800), (6, 700)), DRY, now=MORNING + timedelta(hours=20))

    assert told.sentence == "It has probably been below its dry weight of 680 g for hours: weigh it."


def test_a_wet_cool_tray_stays_above_for_days():
    told = outlook(weighed((0, 1100), (10, 1090)), DRY, now=MORNING + timedelta(hours=10))

    assert told.falls_at is None
    assert told.sentence == "It stays above its dry weight of 680 g for three days and more."


def test_watering_begins_a_new_course_whether_noted_or_seen():
    weights = weighed((0, 900), (6, 820), (7, 1080), (13, 1000))

    assert [len(one) for one in since_watering(weights, [])] == [2, 2]
    assert [len(one) for one in since_watering(weights[:2], [MORNING + timedelta(hours=1)])] == [1, 1]
    assert since_watering(weights, [MORNING + timedelta(hours=20)])[-1] == []


def test_watered_after_the_last_weighing_it_must_be_weighed_again():
    told = outlook(
        weighed((0, 900), (6, 820)),
        DRY,
        now=MORNING + timedelta(hours=9),
        waterings=[MORNING + timedelta(hours=8)],
    )

    assert told.falls_at is None
    assert told.sentence == "It was not weighed since it was last watered: weigh it."


def test_just_watered_it_goes_as_it_went_before():
    told = outlook(weighed((0, 1000), (6, 880), (7, 1000)), DRY, now=MORNING + timedelta(hours=7))

    assert told.falls_at == datetime(2026, 3, 5, 6, 0)
    assert told.sureness == "That is how it dried before; another weighing tells more."


def test_one_weighing_asks_for_another():
    told = outlook(weighed((0, 1000)), DRY, now=MORNING + timedelta(hours=1))

    assert told.sentence == "One more weighing, two hours or more later, tells how fast it dries."


def test_a_curve_of_the_medium_helps_where_the_tray_was_weighed_once():
    pattern = fit_drying([0, 10], [600, 400], DryingForm.STEADY)

    told = outlook(weighed((0, 1000)), DRY, now=MORNING, pattern=pattern)

    assert told.falls_at == datetime(2026, 3, 4, 23, 0)


def test_without_a_dry_weight_it_says_what_is_missing():
    none = DryWeight(grams=None, dry_g=None, full_g=None, rests_on=None, sentence=dry_weight([]).sentence)

    assert outlook(weighed((0, 900), (6, 820)), none, now=MORNING).sentence == none.sentence


@settings(deadline=None, max_examples=50)
@given(
    st.lists(st.tuples(st.floats(0, 200), st.floats(300, 1500)), max_size=12),
    st.lists(st.floats(0, 200), max_size=4),
    st.floats(0, 250),
)
def test_whatever_was_weighed_there_is_a_sentence(weights, waterings, now):
    told = outlook(
        weighed(*weights),
        DRY,
        MORNING + timedelta(hours=now),
        [MORNING + timedelta(hours=h) for h in waterings],
    )

    assert told.sentence
    if told.falls_at is not None and told.earliest is not None:
        assert told.earliest <= told.falls_at <= told.latest


@settings(deadline=None, max_examples=30)
@given(st.floats(300, 900), st.floats(0.005, 0.1), st.floats(10, 290))
def test_less_water_left_takes_longer(first, pace, left):
    hours = [0, 4, 9, 15, 22]
    drying = fit_drying(hours, [first * math.exp(-pace * h) for h in hours], DryingForm.EXPONENTIAL)

    assert drying.hours_until(left).value < drying.hours_until(left * 0.9).value
