"""Growth of a tray: curve, day at half coverage, and what cannot be told yet."""

import math
import subprocess
import sys
import time
from itertools import pairwise

import numpy as np
import pytest
from hypothesis import assume, example, given, settings
from hypothesis import strategies as st

from data.growth import Curve, fit_growth, growth_of


def a_tray(days=range(1, 11), upper=92.0, middle=4.5, pace=0.8, noise=0.0, seed=1, **bad):
    """(day, coverage) of an ordinary tray; `bad` puts another coverage on a day, d3=0 say."""
    rng = np.random.default_rng(seed)
    points = [
        (float(d), float(upper / (1 + math.exp(-(d - middle) / pace)) + noise * rng.normal())) for d in days
    ]
    return [(d, bad.get(f"d{d:.0f}", min(100.0, max(0.0, y)))) for d, y in points]


def test_an_ordinary_tray_tells_its_day_at_half_coverage():
    told = growth_of(a_tray(noise=1.0))

    truth = 4.5 - 0.8 * math.log(92 / 50 - 1)
    assert told.reasons == {}
    assert told.day_50.low < truth < told.day_50.high
    assert told.day_50.high - told.day_50.low < 0.4
    assert told.curve.at(told.day_50.value) == pytest.approx(50, abs=1e-6)


def test_uneven_times_and_missing_days_make_no_difference():
    days = [0.9, 2.1, 3.4, 3.9, 5.0, 7.3, 9.8]

    told = growth_of(a_tray(days))

    assert told.curve.parameters == pytest.approx((92, 4.5, 0.8), rel=1e-4)


def test_photos_without_coverage_are_passed_over():
    told = growth_of([*a_tray(), (11.0, None), (12.0, math.nan)])

    assert told.curve.parameters == pytest.approx((92, 4.5, 0.8), rel=1e-4)


def test_order_does_not_matter():
    assert growth_of(reversed(a_tray(noise=2))).day_50.value == pytest.approx(
        growth_of(a_tray(noise=2)).day_50.value
    )


def test_one_bad_photo_does_not_move_the_curve():
    good, bad = growth_of(a_tray(noise=1)), growth_of(a_tray(noise=1, d8=12.0))

    assert bad.left_out == (7,)
    assert bad.day_50.value == pytest.approx(good.day_50.value, abs=0.1)


def test_a_photo_a_third_too_thin_is_bad_and_one_a_little_off_is_not():
    assert growth_of(a_tray(noise=1, d8=60.0)).left_out == (7,)
    assert growth_of(a_tray(noise=1, d8=82.0)).left_out == ()


def test_a_photo_far_too_full_is_left_out_too():
    assert growth_of(a_tray(noise=1, d2=95.0)).left_out == (1,)


def test_four_days_are_too_few_and_it_says_so():
    told = growth_of(a_tray(range(1, 5)))

    assert told.curve is None
    assert told.reasons["day_50"] == "Photos of 4 days are there; a growth curve needs 5."


def test_several_photos_of_one_day_are_one_day():
    points = [(4.0 + k / 100, 40.0) for k in range(12)]

    assert growth_of(points).reasons["curve"].startswith("Photos of one day ")


def test_a_tray_below_half_cannot_be_told_yet():
    told = growth_of(a_tray([0, 1, 2, 3, 4, 5], middle=6.5))

    assert told.curve is None
    assert "half of its growth" in told.reasons["curve"]


def test_a_bare_tray_is_not_up_yet():
    assert "not up yet" in growth_of([(d, 0.4) for d in range(1, 8)]).reasons["curve"]


def test_a_tray_first_seen_full_cannot_be_told():
    told = growth_of([(6, 84.0), (7, 90.0), (8, 91.0), (9, 92.0), (10, 92.0), (11, 92.5)])

    assert told.curve is None
    assert "after half" in told.reasons["curve"]


def test_coverage_that_goes_up_and_down_is_no_growth_curve():
    told = growth_of([(1, 5), (2, 70), (3, 10), (4, 80), (5, 15), (6, 90), (7, 20)])

    assert told.curve is None
    assert told.reasons["curve"]


def test_a_poor_tray_never_reaches_half():
    told = growth_of(a_tray(upper=38.0))

    assert told.curve is not None
    assert told.day_50 is None
    assert told.reasons["day_50"] == "The growth ends at 38 % coverage: 50 % is never reached."


def test_no_curve_ends_above_a_full_tray():
    told = growth_of(a_tray(range(1, 8), upper=115, middle=5, pace=1.0))

    assert told.curve.parameters[0] <= 100


def test_a_chart_gets_points_of_the_curve():
    line = growth_of(a_tray()).curve.line(0, 10, points=11)

    assert [day for day, _ in line] == list(range(11))
    assert all(one <= two for (_, one), (_, two) in pairwise(line))


def test_the_curve_has_an_interval_that_widens_where_no_photo_is():
    curve = growth_of(a_tray([2, 3, 4, 4.4, 5, 9], noise=1)).curve

    inside, between = curve.coverage_on(4.4), curve.coverage_on(7)

    assert inside.low < curve.at(4.4) < inside.high
    assert between.high - between.low > inside.high - inside.low
    assert curve.coverage_on(30).high <= 100


def between_both(seed, days=range(1, 10), noise=2.0):
    """Points half way between a logistic and a Gompertz curve: chance alone says which one fits better."""
    rng = np.random.default_rng(seed)
    return [
        (
            float(d),
            46 / (1 + math.exp(-(d - 4.5) / 0.8)) + 47 * math.exp(-math.exp(-0.75 * (d - 4.05)))
            + noise * rng.normal(),
        )
        for d in days
    ]  # fmt: skip


@pytest.mark.parametrize(("seed", "alike"), [(6, True), (7, False), (0, False), (5, False)])
def test_where_photos_do_not_tell_the_curves_apart_the_interval_spans_both(seed, alike):
    """Alike: Akaike's criterion, n ln(RSS) with as many parameters, apart by 2 at most (from memory)."""
    told = growth_of(between_both(seed))
    of_curve, of_other = told.curve.day_of(50), told.other.day_of(50)

    assert (9 * math.log(told.other.fit.rss / told.curve.fit.rss) <= 2) is alike
    assert told.day_50.value == of_curve.value
    low, high = (min(of_curve.low, of_other.low), max(of_curve.high, of_other.high))
    wanted = (low, high) if alike else (of_curve.low, of_curve.high)
    assert (told.day_50.low, told.day_50.high) == wanted
    assert (low, high) != (of_curve.low, of_curve.high)


@pytest.mark.parametrize("coverage", [-3.0, 101.0, 250.0])
def test_a_coverage_that_cannot_be_is_passed_over(coverage):
    told = growth_of([*a_tray(), (6.5, coverage)])

    assert told.curve.parameters == pytest.approx((92, 4.5, 0.8), rel=1e-4)
    assert told.left_out == ()


def test_intervals_hold_as_often_as_they_say():
    truth = 4.5 - 0.8 * math.log(92 / 50 - 1)
    days = [growth_of(a_tray(noise=1.5, seed=seed)).day_50 for seed in range(100)]

    held = sum(day.low <= truth <= day.high for day in days)

    assert held >= 88  # 95 of 100, less three standard errors


def test_intervals_hold_where_a_closing_stand_is_read_less_surely_than_a_bare_or_full_one():
    """Spread of 3 points at half coverage, hardly any at the ends: with one spread for all 54 of 100 held."""
    truth, days = 4.5, np.arange(1, 11)
    full = 100 / (1 + np.exp(-(days - truth) / 0.6))
    spread = 0.3 + 2.7 * np.sqrt(4 * full * (100 - full)) / 100
    held = 0
    for seed in range(100):
        seen = np.clip(full + spread * np.random.default_rng(seed).normal(size=len(days)), 0, 100)
        day = growth_of(list(zip(days.tolist(), seen.tolist(), strict=True))).day_50
        held += day.low <= truth <= day.high

    assert held >= 88  # 95 of 100 (counted over 400 of them too), less three standard errors


shapes = st.tuples(st.floats(60, 98), st.floats(3, 6), st.floats(0.4, 1.2))


@settings(max_examples=30, deadline=None)
@given(shapes, st.floats(0.5, 3))
def test_a_tray_sown_later_is_the_same_tray_later(shape, later):
    upper, middle, pace = shape
    one = growth_of(a_tray(upper=upper, middle=middle, pace=pace))
    two = growth_of([(day + later, y) for day, y in a_tray(upper=upper, middle=middle, pace=pace)])

    assume(one.day_50 is not None)
    assert two.day_50.value - one.day_50.value == pytest.approx(later, abs=1e-3)


@settings(max_examples=30, deadline=None)
@given(st.lists(st.tuples(st.floats(0, 20), st.floats(0, 100) | st.none()), max_size=15))
@example([(0.0, 0.0), (2.0, 4.0), (4.0, 30.0), (6.0, 72.0), (7.0, None), (8.0, 92.0), (10.0, 97.0)])
def test_whatever_is_photographed_there_is_a_curve_or_a_sentence(points):
    told = growth_of(points)

    assert (told.curve is None) == ("curve" in told.reasons)
    assert (told.day_50 is None) == ("day_50" in told.reasons)
    if told.curve is not None:
        assert 0 < told.curve.parameters[0] <= 100


@settings(max_examples=20, deadline=None)
@given(shapes)
def test_both_curves_only_rise(shape):
    upper, middle, pace = shape
    points = a_tray(upper=upper, middle=middle, pace=pace)
    for curve in Curve:
        fitted = fit_growth([d for d, _ in points], [y for _, y in points], curve)
        heights = [y for _, y in fitted.line(0, 20)]
        assert heights == sorted(heights)


def test_a_curve_takes_less_than_20_ms_of_the_processor():
    points = a_tray(noise=1.5)
    growth_of(points)
    took = []
    for _ in range(7):
        begun = time.process_time()
        growth_of(points)
        took.append(time.process_time() - begun)

    assert min(took) < 0.02


def test_importing_growth_loads_neither_numpy_nor_scipy():
    code = "import sys, data.growth, data.growing.cutday; print(*sys.modules)"
    loaded = subprocess.run(
        [sys.executable, "-c", code], capture_output=True, text=True, check=True
    ).stdout.split()

    assert not {"numpy", "scipy"} & set(loaded)
