"""Dates and times as instruments write them."""

from datetime import date, datetime, timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from data.logs.times import DateOrder, date_of, likely_orders, looks_like_time, possible_orders, stamp_of

TODAY = date(2026, 12, 1)


@pytest.mark.parametrize(
    ("cell", "parts", "clock", "hours"),
    [
        ("2026-03-02T21:40:00+01:00", ("2026", "03", "02"), (21, 40, 0), 1),
        ("2026-03-02 21:40:05.123Z", ("2026", "03", "02"), (21, 40, 5), 0),
        ("2026/03/02 21:40", ("2026", "03", "02"), (21, 40, 0), None),
        ("02.03.26 21:40", ("02", "03", "26"), (21, 40, 0), None),
        ("3/2/2026 9:40 PM", ("3", "2", "2026"), (21, 40, 0), None),
        ("3/2/2026 12:05:00 a.m.", ("3", "2", "2026"), (0, 5, 0), None),
        ("3/2/2026, 12:05 pm", ("3", "2", "2026"), (12, 5, 0), None),
        ("2 Mar 2026 21:40", ("2026", "3", "2"), (21, 40, 0), None),
        ("Mon, 2 March 2026 21:40:00", ("2026", "3", "2"), (21, 40, 0), None),
        ("02-Okt-26 21h40", ("2026", "10", "02"), (21, 40, 0), None),
        ("March 2, 2026 21:40", ("2026", "3", "2"), (21, 40, 0), None),
        ("20260302T214005", ("2026", "03", "02"), (21, 40, 5), None),
        ("2026-03-02 24:00", ("2026", "03", "02"), (24, 0, 0), None),
        ("2026-03-02", ("2026", "03", "02"), None, None),
        ("21:40", None, (21, 40, 0), None),
    ],
)
def test_times_in_parts(cell, parts, clock, hours):
    stamp = stamp_of(cell)

    assert (stamp.parts, stamp.clock) == (parts, clock)
    assert stamp.offset == (None if hours is None else timedelta(hours=hours))


@pytest.mark.parametrize("cell", ["1772484000", "1772484000.5", "1772484000000"])
def test_seconds_since_1970(cell):
    assert stamp_of(cell).unix == pytest.approx(1772484000, abs=1)


@pytest.mark.parametrize(
    "cell", ["", "21.5", "812 g", "A1", "25:00", "13:40 pm", "2026-03-02 10:61", "12345", "shelf 2, left"]
)
def test_what_is_no_time(cell):
    assert not looks_like_time(cell)


def test_only_one_order_is_possible_after_the_twelfth():
    assert possible_orders([("02", "03", "2026"), ("13", "03", "2026")]) == (DateOrder.DMY,)
    assert possible_orders([("03", "13", "2026")]) == (DateOrder.MDY,)
    assert possible_orders([("2026", "03", "02")]) == (DateOrder.YMD,)


def test_days_that_follow_each_other_tell_the_order():
    assert likely_orders([("1", "2", "2026"), ("2", "2", "2026"), ("3", "2", "2026")], TODAY) == (
        DateOrder.DMY,
    )
    assert likely_orders([("2", "1", "2026"), ("2", "2", "2026"), ("2", "3", "2026")], TODAY) == (
        DateOrder.MDY,
    )


def test_one_day_leaves_two_readings():
    assert likely_orders([("3", "2", "2026")], TODAY) == (DateOrder.DMY, DateOrder.MDY)


def test_no_reading_lies_ahead_of_today():
    assert likely_orders([("3", "2", "2026")], today=date(2026, 2, 20)) == (DateOrder.DMY,)


def test_years_of_two_digits_can_stand_first():
    assert DateOrder.YMD in possible_orders([("26", "03", "02")])
    assert date_of(("26", "03", "02"), DateOrder.YMD) == date(2026, 3, 2)


FORMATS = [
    "%Y-%m-%d %H:%M:%S",
    "%d.%m.%Y %H:%M:%S",
    "%m/%d/%Y %I:%M:%S %p",
    "%d %b %Y %H:%M:%S",
    "%Y%m%dT%H%M%S",
]
ORDERS = [DateOrder.YMD, DateOrder.DMY, DateOrder.MDY, DateOrder.YMD, DateOrder.YMD]


@settings(deadline=None)
@given(
    st.datetimes(datetime(2001, 1, 1), datetime(2098, 1, 1)),
    st.sampled_from(list(zip(FORMATS, ORDERS, strict=True))),
)
def test_any_time_in_any_form_is_read(at, how):
    form, order = how
    stamp = stamp_of(at.strftime(form))

    assert date_of(stamp.parts, order) == at.date()
    assert stamp.clock == (at.hour, at.minute, at.second)


@settings(deadline=None)
@given(st.text(max_size=70))
def test_any_text_is_a_time_or_none(text):
    stamp = stamp_of(text)

    assert stamp is None or stamp.parts or stamp.clock or stamp.unix


@settings(deadline=None)
@given(st.from_regex(r"[0-3]\d[./-]\d\d[./-]20\d\d[ T]\d\d:\d\d(:\d\d)?", fullmatch=True))
def test_the_usual_form_is_read_as_any_other(cell):
    plain, with_blank = stamp_of(cell), stamp_of(f" {cell}")  # a blank takes the longer way

    assert plain == with_blank
