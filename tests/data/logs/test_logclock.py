"""An instrument's clock and the rack's, through the nights when the clocks are changed."""

from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

from hypothesis import given, settings
from hypothesis import strategies as st

from data.logs.clock import Clock, zone_of

BERLIN = ZoneInfo("Europe/Berlin")


# In the European Union clocks go forward on 29 March 2026 at 2:00 and back on 25 October 2026 at 3:00
# (Directive 2000/84/EC: last Sundays of March and October, 1:00 UTC)
def test_a_time_that_the_clock_skipped_is_none():
    clock = Clock(None, BERLIN)

    assert clock.local(datetime(2026, 3, 29, 1, 50)).at is not None
    assert clock.local(datetime(2026, 3, 29, 2, 10)).at is None
    assert clock.local(datetime(2026, 3, 29, 3, 10)).at is not None


def test_the_hour_that_came_twice_is_told_apart_by_the_order_of_rows():
    clock = Clock(BERLIN, ZoneInfo("UTC"))

    hours = [
        clock.local(datetime(2026, 10, 25, h, m))
        for h, m in [(1, 30), (2, 10), (2, 50), (2, 10), (2, 50), (3, 10)]
    ]

    assert [hour.at.strftime("%H:%M") for hour in hours] == [
        "23:30",
        "00:10",
        "00:50",
        "01:10",
        "01:50",
        "02:10",
    ]


def test_the_hour_that_came_twice_on_the_racks_own_clock_is_named():
    hours = [Clock(None, BERLIN).local(datetime(2026, 10, 25, h, 10)) for h in (1, 2, 3)]

    assert [hour.twice for hour in hours] == [False, True, False]


def test_a_logger_in_utc_is_an_hour_behind_in_winter_and_two_in_summer():
    clock = Clock(zone_of("UTC"), BERLIN)

    assert clock.local(datetime(2026, 1, 5, 12)).at == datetime(2026, 1, 5, 13)
    assert clock.local(datetime(2026, 7, 5, 12)).at == datetime(2026, 7, 5, 14)


def test_zones_by_name_and_by_offset():
    assert zone_of("+02:00").utcoffset(None) == timedelta(hours=2)
    assert zone_of("-0530").utcoffset(None) == -timedelta(hours=5, minutes=30)
    assert zone_of("Europe/Berlin") is not None
    assert zone_of("Nowhere/Place") is None
    assert zone_of("../../etc/passwd") is None


@settings(deadline=None)
@given(st.datetimes(datetime(2001, 1, 1), datetime(2098, 1, 1)))
def test_any_time_on_any_zone_goes_there_and_back(at):
    at = at.replace(microsecond=0)
    there = at.replace(tzinfo=UTC).astimezone(BERLIN).replace(tzinfo=None)

    assert Clock(None, BERLIN).absolute(at.replace(tzinfo=UTC)).at == there
    hour = Clock(BERLIN, ZoneInfo("UTC")).local(there)
    assert hour.at in {at, at - timedelta(hours=1)}  # the hour that came twice is taken for the first
