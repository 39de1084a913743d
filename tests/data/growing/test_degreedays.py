"""Warmth above a base temperature."""

from datetime import datetime, timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from data.growing.degreedays import logged_degree_days

MIDNIGHT = datetime(2026, 3, 4)
DAY = timedelta(days=1)


def hourly(*temperatures, step=1.0):
    return [(MIDNIGHT + timedelta(hours=step * k), t) for k, t in enumerate(temperatures)]


def test_a_logged_day_counts_each_hour_by_itself():
    told = logged_degree_days(hourly(*[4.0] * 12, *[17.0] * 12), 5, MIDNIGHT, MIDNIGHT + DAY)

    assert told.total == pytest.approx(6.0)  # 12 h of nothing, 12 h of 12 K
    assert (told.known, told.unknown) == (24, 0)
    assert told.mean == pytest.approx(10.5)


def test_hours_without_a_logger_are_unknown_not_cold():
    told = logged_degree_days(hourly(15.0, 15.0), 5, MIDNIGHT, MIDNIGHT + DAY)

    assert (told.known, told.unknown) == (2, 22)
    assert told.total == pytest.approx(10 * 2 / 24)


def test_a_night_without_a_logger_tells_nothing():
    told = logged_degree_days([], 5, MIDNIGHT, MIDNIGHT + DAY)

    assert (told.total, told.mean) == (None, None)
    assert (told.known, told.unknown) == (0, 24)


temperatures = st.floats(-10, 40)


@settings(deadline=None)
@given(st.lists(temperatures, min_size=1, max_size=30), st.floats(0, 12), st.floats(0.1, 3))
def test_a_time_is_the_sum_of_its_parts(logged, base, step):
    samples, noon, end = hourly(*logged, step=step), MIDNIGHT + DAY / 2, MIDNIGHT + DAY

    parts = [logged_degree_days(samples, base, *half) for half in ((MIDNIGHT, noon), (noon, end))]
    whole = logged_degree_days(samples, base, MIDNIGHT, end)

    assert whole.known == pytest.approx(sum(part.known for part in parts))
    assert (whole.total or 0) == pytest.approx(sum(part.total or 0 for part in parts), abs=1e-9)


def test_a_log_may_be_in_any_order():
    samples = hourly(15.0, 25.0, 10.0, 30.0)

    assert logged_degree_days(samples[::-1], 5, MIDNIGHT, MIDNIGHT + DAY) == logged_degree_days(
        samples, 5, MIDNIGHT, MIDNIGHT + DAY
    )
    assert logged_degree_days(samples, 5, MIDNIGHT, MIDNIGHT + DAY).total == pytest.approx(60 / 24)
