"""Drying curves and when a tray will be dry."""

import math
from datetime import datetime, timedelta

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import brentq, curve_fit

from data.medium.drying import DryingForm, fit_drying, hours_until, plausible, stretches

MORNING = datetime(2026, 3, 4, 7)


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
    assert best.parameters == pytest.approx((700, 14, 420), rel=1e-3)  # 420 g are left after 20 h
    assert best.at(50) == pytest.approx(420 / math.e, rel=1e-3)


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


@pytest.mark.parametrize("hours", [(0, 6, 12), (0, 6, 12, 24), (0, 8, 16, 22)])
def test_a_forecast_from_the_wet_stage_holds_though_the_dry_one_begins_unseen(hours):
    """700 g, 14 g/h until 420 g are left at 20 h, then falling: 210 g at 20 + 30 ln 2 = 40.79 h.

    Drawn a hundred times with 5 g of scatter. The steady line alone held in 4 of them with four weighings.
    """
    truth, held = 20 + 30 * math.log(2), 0
    course = [700 - 14 * h if h <= 20 else 420 * math.exp(-(h - 20) / 30) for h in hours]
    for seed in range(100):
        water = np.array(course) + np.random.default_rng(seed).normal(0, 5, len(hours))
        found = hours_until(list(hours), list(water), 210)
        held += found.low <= truth <= found.high

    assert held >= 88  # 95 of 100, less three standard errors


def test_what_was_weighed_until_it_was_dry_needs_no_forecast():
    """Steady to the last weighing, which is drier still: 700 - 10 h are 210 g at 49 h, give or take 1 h."""
    found = hours_until([0, 10, 20, 30, 40, 52], [700, 600, 500, 400, 300, 180], 210)

    assert (found.low, found.high) == pytest.approx((49, 49), abs=1.5)


def test_a_forecast_from_two_weighings_is_as_unsure_as_a_kitchen_scale_of_five_grams():
    """By hand: 600 and 500 g, ten hours apart: at 40 h the line is off by 5 x root(4^2 + 3^2) g, 2.5 h."""
    found = hours_until([0, 10], [600, 500], 200)

    assert found.low == pytest.approx(40 - 1.96 * 2.5, abs=0.01)


@pytest.mark.parametrize(("gained", "count"), [(19.0, 1), (20.0, 2)])
def test_what_shoots_and_scales_gain_is_no_watering(gained, count):
    assert len(stretches(weighed((0, 900), (6, 820), (7, 820 + gained)))) == count


@pytest.mark.parametrize(
    ("hours", "water"),
    [([], []), ([5, 5, 5], [600, 590, 580]), ([0, 10, 20], [100, 40, -5]), ([0, 10, 20], [0, 0, 0])],
)
def test_weighings_that_cannot_be_of_one_drying_tell_no_curve(hours, water):
    assert plausible(hours, water) == []
    assert hours_until(hours, water, 10) is None


def test_weighings_tell_the_same_in_any_order():
    hours, water = [0, 5, 10, 20, 35, 50], [700, 630, 560, 420, 254.7, 154.5]
    turned = [(h, w) for h, w in zip(hours, water, strict=True)][::-1]

    in_turn, backwards = hours_until(hours, water, 100), hours_until(*zip(*turned, strict=True), 100)

    assert (backwards.value, backwards.low, backwards.high) == pytest.approx(
        (in_turn.value, in_turn.low, in_turn.high), rel=1e-5
    )
    assert 20 + 30 * math.log(420 / 100) == pytest.approx(in_turn.value, rel=0.01)


def test_two_stages_take_five_weighings():
    """Three numbers and a bend; 14 g/h until 420 g at 20 h, then falling."""
    hours = [0, 10, 20, 35, 50]
    water = [700, 560, 420, 420 * math.exp(-0.5), 420 * math.exp(-1)]

    assert fit_drying(hours, water, DryingForm.TWO_STAGE).parameters == pytest.approx(
        (700, 14, 420), rel=5e-3
    )
    assert fit_drying(hours[:4], water[:4], DryingForm.TWO_STAGE) is None


def test_watering_begins_a_new_stretch():
    weights = weighed((0, 900), (6, 820), (7, 1080), (13, 1000))

    assert stretches(weights) == [weights[:2], weights[2:]]
    assert stretches([]) == []


@settings(deadline=None, max_examples=30)
@given(st.floats(300, 900), st.floats(0.005, 0.1), st.floats(10, 290))
def test_less_water_left_takes_longer(first, pace, left):
    hours = [0, 4, 9, 15, 22]
    drying = fit_drying(hours, [first * math.exp(-pace * h) for h in hours], DryingForm.EXPONENTIAL)

    assert drying.hours_until(left).value < drying.hours_until(left * 0.9).value


# --- which curves are left, and how surely


def test_curves_are_left_as_akaikes_criterion_leaves_them():
    """Steady weighings near a line; the exponential one lies off by rss / scatter^2, and 2 is the limit.

    Burnham & Anderson (2002, from memory). polyfit and curve_fit give the residual sums of squares.
    """
    hours, water = [0, 10, 20, 30], [600.0, 500.0, 404.0, 302.0]
    line = np.polyfit(hours, water, 1, full=True)[1][0]
    (first, pace), _ = curve_fit(lambda t, m, k: m * np.exp(-k * t), hours, water, (600, 0.02))
    bent = sum((first * math.exp(-pace * h) - w) ** 2 for h, w in zip(hours, water, strict=True))

    for criterion, left in ((1.8, 2), (2.2, 1)):
        assert len(plausible(hours, water, scatter=((bent - line) / criterion) ** 0.5)) == left


def test_the_interval_spans_all_curves_that_are_left_and_the_best_one_tells_the_hour():
    hours, water = [0, 10, 20, 30], [600.0, 500.0, 404.0, 302.0]
    curves = plausible(hours, water, scatter=20.0)
    ends = [curve.hours_until(200, scatter=20.0) for curve in curves]

    found = hours_until(hours, water, 200, scatter=20.0)

    assert [curve.form for curve in curves] == [DryingForm.STEADY, DryingForm.EXPONENTIAL]
    assert found.value == pytest.approx(ends[0].value)
    assert found.low == pytest.approx(min(end.low for end in ends))
    assert found.high >= max(end.high for end in ends)


@pytest.mark.parametrize(("uneven", "left"), [(30.0, 2), (20.0, 1)])
def test_weighings_that_scatter_more_than_the_scale_count_as_they_scatter(uneven, left):
    """The better curve's own variance, 4 points less 2 parameters, in place of that of a scale of 1 g."""
    hours, water = [0, 10, 20, 30], [600.0 - uneven, 500.0 + uneven, 400.0 + uneven, 300.0 - uneven]
    line = np.polyfit(hours, water, 1, full=True)[1][0]
    (first, pace), _ = curve_fit(lambda t, m, k: m * np.exp(-k * t), hours, water, (600, 0.02))
    bent = sum((first * math.exp(-pace * h) - w) ** 2 for h, w in zip(hours, water, strict=True))

    assert (bent - line) / 1.0 > 2  # by the scale alone the line is surely the better one
    assert bool((bent - line) / (line / 2) <= 2) is (left == 2)
    assert len(plausible(hours, water, scatter=1.0)) == left


def test_weighings_on_a_line_are_no_surer_than_the_scale():
    """By the formula of a straight line: 200 g of 600 - 10 h are left at 40 h; weighings of 5 g each."""
    hours = np.array([0.0, 10.0, 20.0, 30.0, 35.0])

    steady = fit_drying(hours.tolist(), (600 - 10 * hours).tolist(), DryingForm.STEADY)
    found = steady.hours_until(200, scatter=5.0)

    error = 0.5 * (1 / 5 + (40 - hours.mean()) ** 2 / ((hours - hours.mean()) ** 2).sum()) ** 0.5
    assert (found.low, found.high) == pytest.approx((40 - 1.95996 * error, 40 + 1.95996 * error), rel=1e-4)
    assert hours_until(hours.tolist(), (600 - 10 * hours).tolist(), 200).low == pytest.approx(found.low)


def test_without_a_known_scatter_the_weighings_tell_it_themselves():
    """Student's t with 2 degrees of freedom, 4.3027 (any table), and numpy's own covariance of a line."""
    hours, water = [0.0, 10.0, 20.0, 30.0], [600.0, 505.0, 398.0, 301.0]
    (slope, first), covariance = np.polyfit(hours, water, 1, cov=True)

    found = fit_drying(hours, water, DryingForm.STEADY).hours_until(200)

    by = np.array([(first - 200) / slope**2, -1 / slope])  # of the hour by slope and start
    assert found.value == pytest.approx((200 - first) / slope, rel=1e-5)
    assert found.high - found.value == pytest.approx(4.3027 * (by @ covariance @ by) ** 0.5, rel=1e-3)


def test_two_stages_were_both_weighed_or_it_is_another_curve():
    """900 - 10 h with 3 g of scatter: a bend before the first or after the last weighing is none."""
    hours = [0, 8, 16, 24, 32, 40]
    for seed in range(15):
        water = [
            900 - 10 * h + e for h, e in zip(hours, np.random.default_rng(seed).normal(0, 3, 6), strict=True)
        ]

        two = fit_drying(hours, water, DryingForm.TWO_STAGE)

        assert two is None or 0 < (two.parameters[0] - two.parameters[2]) / two.parameters[1] < 40
        found = hours_until(hours, water, 200)
        assert found.low < 70 < found.high < 240


def test_a_steady_surface_is_dry_to_the_last_gram_and_a_tray_may_weigh_nothing_more():
    steady = fit_drying([0, 5, 10], [300, 150, 0], DryingForm.STEADY)

    assert steady.hours_until(0).value == pytest.approx(10)
    assert steady.hours_until(-30).value == pytest.approx(11)
    assert fit_drying([0, 5, 10], [300, 100, 33], DryingForm.EXPONENTIAL).hours_until(0) is None


def test_a_mass_for_each_time_is_asked_for():
    with pytest.raises(ValueError, match="a mass for each time"):
        fit_drying([0, 5, 10], [300, 150], DryingForm.STEADY)


@pytest.mark.parametrize(("hours", "last"), [([0, 10, 20, 30, 40], 40), ([0, 5, 10, 15, 40], 40)])
def test_a_forecast_counts_on_a_wet_stage_that_ended_as_early_as_the_weighings_allow(hours, last):
    """scipy's brentq: the earliest end that lies within 10 g, two of the scale's 5, of the last weighing.

    So rounded weighings told five million hours: two stages fit a line as well, and tell no second stage.
    """
    water = [900.0 - 10 * h for h in hours]
    before = hours[-2]

    def two_stages(hour, end):
        left = 900 - 10 * end
        return 900 - 10 * hour if hour <= end else left * math.exp(-10 / left * (hour - end))

    def unnoticed(end):
        return two_stages(last, end) - (900 - 10 * last) - 2 * 5.0

    end = before if unnoticed(before) <= 0 else brentq(unnoticed, before, last)
    left = 900 - 10 * end
    late = end + left / 10 * math.log(left / 200)
    steady = fit_drying(hours, water, DryingForm.STEADY).hours_until(200, scatter=5.0)

    found = hours_until(hours, water, 200)

    assert found.value == pytest.approx(70)
    assert found.high == pytest.approx(late + steady.high - steady.value, rel=1e-4)
