"""Hours of likely leaf wetness, and what always holds of moist air."""

from datetime import datetime, timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from data.growing.air import AirSample, air_samples, deficit, dew_point, saturation, wet_hours

NOON = datetime(2026, 3, 4, 12)


def hourly(*air, begin=NOON, step=1.0):
    """Samples every `step` hours, (temperature, humidity) each."""
    return [
        AirSample(at=begin + timedelta(hours=step * k), temperature=t, humidity=h)
        for k, (t, h) in enumerate(air)
    ]


def test_wet_hours_of_a_stack():
    told = wet_hours(
        hourly((20, 70), (20, 95), (24, 95), (24, 95), (20, 60)), NOON, NOON + timedelta(hours=5)
    )

    assert (told.wet, told.warm_and_wet, told.longest) == (3, 2, 3)
    assert (told.known, told.unknown) == (5, 0)
    assert told.sentence == "Leaves were likely wet for 3 of 5 logged hours, 2 of them warm."


def test_only_the_time_asked_for_counts():
    told = wet_hours(hourly(*[(20, 95)] * 10), NOON + timedelta(hours=2.5), NOON + timedelta(hours=4))

    assert told.wet == 1.5
    assert told.longest == 1.5


def test_a_silent_logger_is_unknown_not_dry():
    samples = hourly((20, 95)) + hourly((20, 95), (20, 95), begin=NOON + timedelta(hours=10))

    told = wet_hours(samples, NOON, NOON + timedelta(hours=12))

    assert told.known == 4  # two hours after the first, two of the last
    assert told.unknown == 8
    assert told.longest == 2  # what lies on both sides of the silence is no stretch


def test_nothing_logged_is_none_and_says_so():
    told = wet_hours([], NOON, NOON + timedelta(hours=12))

    assert told.wet is None
    assert told.unknown == 12
    assert told.sentence == "No temperature and humidity were logged in this time."


def test_a_sensor_that_says_a_little_over_100_is_wet_and_one_that_fails_is_passed_over():
    told = wet_hours(hourly((20, 101.5), (-127, 99), (20, 50)), NOON, NOON + timedelta(hours=3))

    assert told.wet == 2  # the failed hour is bridged by the one before


def test_humidity_takes_the_nearest_temperature():
    warm = [(NOON, 20.0), (NOON + timedelta(hours=1), 24.0)]
    humid = [(NOON + timedelta(minutes=50), 80.0), (NOON + timedelta(minutes=30), 70.0)]

    assert air_samples(warm, humid) == (
        AirSample(at=NOON + timedelta(minutes=50), temperature=24.0, humidity=80.0),
    )


def test_dry_air_has_no_dew_point():
    assert dew_point(20, 0) is None


def test_more_than_all_the_water_is_no_humidity():
    with pytest.raises(ValueError, match="between 0 and 100"):
        deficit(20, 140)


temperatures = st.floats(-10, 50)
humidities = st.floats(1, 100)


@settings(deadline=None)
@given(temperatures, humidities)
def test_air_at_its_dew_point_is_full(temperature, humidity):
    dew = dew_point(temperature, humidity)

    assert saturation(dew) == pytest.approx(saturation(temperature) * humidity / 100)
    assert dew <= temperature + 1e-9


@settings(deadline=None)
@given(temperatures, temperatures, humidities)
def test_warmer_air_lacks_more(one, two, humidity):
    cool, warm = sorted((one, two))

    assert deficit(cool, humidity) <= deficit(warm, humidity) + 1e-12


air = st.lists(st.tuples(st.floats(-10, 45), st.floats(0, 105)), max_size=40)


@settings(deadline=None)
@given(air, st.floats(0.1, 5))
def test_hours_add_up(samples, step):
    told = wet_hours(hourly(*samples, step=step), NOON, NOON + timedelta(hours=48))

    assert told.known + told.unknown == pytest.approx(48)
    if told.wet is not None:
        assert told.warm_and_wet <= told.wet + 1e-9
        assert told.longest <= told.wet + 1e-9
        assert told.wet <= told.known + 1e-9
