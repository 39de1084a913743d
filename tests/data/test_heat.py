"""Warmth of a medium at its limits: what still counts, and what no longer does."""

from datetime import datetime, timedelta

import pytest

from data.heat import cooling_of, degree_hours_below, lift_over_mat

NOON, HOUR = datetime(2026, 3, 8, 12), timedelta(hours=1)


def test_a_night_warmer_than_the_floor_has_no_cold_hours():
    night = [(datetime(2026, 3, 8, 20) + n * HOUR, 20.0 + n % 2) for n in range(13)]

    assert degree_hours_below(night, 18.0) == (0.0, 1)


@pytest.mark.parametrize(("spread", "steady"), [(0.4, True), (0.5, True), (0.6, False)])
def test_over_a_mat_half_a_kelvin_within_three_hours_is_steady(spread, steady):
    lift, why = lift_over_mat([(NOON, 24.0), (NOON + 3 * HOUR, 24.0 + spread)], 18.0)

    assert (lift is not None) is steady
    assert (why is None) is steady


@pytest.mark.parametrize(("last", "counts"), [(1.2, True), (1.0, True), (0.9, False)])
def test_a_reading_counts_down_to_one_kelvin_above_the_air(last, counts):
    """8, 5 and 3 K fall by about a third within an hour; a fourth reading six hours on makes it slower."""
    fallen = [(NOON, 26.0), (NOON + HOUR, 23.0), (NOON + 2 * HOUR, 21.0)]

    without = cooling_of(fallen, 18.0).hours.value
    found = cooling_of([*fallen, (NOON + 6 * HOUR, 18.0 + last)], 18.0).hours.value

    assert (found > without + 0.01) is counts
