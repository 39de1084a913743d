"""Expected day of cut."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from data.growing.cutday import EarlierTray, RestsOn, expected_cut
from data.statistics.estimate import Estimate

HALF = Estimate(value=4.0, low=3.8, high=4.2)
EARLIER = [EarlierTray(day_cut=9.0 + k, day_50=3.5 + k) for k in (0.0, 0.5, -0.5, 0.2)]


def test_the_own_curve_moves_the_day_by_the_lag_of_earlier_trays():
    told = expected_cut(HALF, EARLIER)

    assert told.day.value == pytest.approx(4.0 + 5.5)
    assert told.rests_on is RestsOn.OWN_CURVE
    assert told.sentence == "From its own growth and the 4 trays of the crop cut before."


def test_one_more_tray_is_less_sure_than_the_mean_of_earlier_ones():
    sure = Estimate(value=4.0, low=4.0, high=4.0)
    earlier = [EarlierTray(day_cut=8 + lag, day_50=3.0) for lag in (0.0, 1.0, 2.0)]

    told = expected_cut(sure, earlier)

    # lags 5, 6, 7: mean 6, s 1; t(2) 4.302653 x sqrt(1 + 1/3)
    assert told.day.value == 10
    assert told.day.high - 10 == pytest.approx(4.302653 * (4 / 3) ** 0.5, abs=1e-5)


def test_a_slow_tray_is_cut_later():
    late = Estimate(value=5.0, low=4.8, high=5.2)

    assert expected_cut(late, EARLIER).day.value == expected_cut(HALF, EARLIER).day.value + 1


def test_without_a_curve_the_earlier_cuts_tell():
    told = expected_cut(None, [EarlierTray(day_cut=day) for day in (8, 9, 10)])

    # mean 9, s 1, prediction of one more: t(2) 4.302653 x sqrt(1 + 1/3)
    assert told.day.value == 9
    assert told.day.high - 9 == pytest.approx(4.302653 * (4 / 3) ** 0.5, abs=1e-5)
    assert told.rests_on is RestsOn.EARLIER


def test_one_tray_cut_before_does_not_tell_but_the_trade_does():
    told = expected_cut(HALF, EARLIER[:1], usual=(6, 10))

    assert (told.day.low, told.day.value, told.day.high) == (6, 8, 10)
    assert told.sentence == "Usual for the crop is day 6 to 10; your own trays do not tell it yet."


def test_nothing_known_says_what_is_missing():
    told = expected_cut(None, [])

    assert told.day is None
    assert told.sentence == "The day of the cut can be told once 3 trays of the crop were cut."


def test_a_tray_that_still_stands_is_not_cut_in_the_past():
    told = expected_cut(HALF, EARLIER, today=11.0)

    assert told.day.low == 11.0
    assert told.day.value == 11.0


@settings(deadline=None, max_examples=50)
@given(st.floats(0.01, 3))
def test_an_unsure_curve_gives_an_unsure_day(width):
    earlier = [EarlierTray(day_cut=9.0 + k, day_50=3.5) for k in (0.0, 0.5, -0.5, 0.2)]
    sure = expected_cut(Estimate(value=4, low=4, high=4), earlier).day
    unsure = expected_cut(Estimate(value=4, low=4 - width, high=4 + width), earlier).day

    assert unsure.high - unsure.value >= min(width, sure.high - sure.value)


def test_a_curve_without_an_interval_adds_nothing_to_how_unsure_the_day_is():
    """Lags 5, 6, 7: mean 6, s 1; t(2) 4.302653 x sqrt(1 + 1/3), as if the own day were known."""
    earlier = [EarlierTray(day_cut=8 + lag, day_50=3.0) for lag in (0.0, 1.0, 2.0)]

    told = expected_cut(Estimate(value=4.0), earlier)

    assert told.day.value == 10
    assert told.day.high - 10 == pytest.approx(4.302653 * (4 / 3) ** 0.5, abs=1e-5)


def test_where_all_earlier_trays_took_as_long_the_own_curve_alone_makes_the_day_unsure():
    earlier = [EarlierTray(day_cut=9.0 + k, day_50=3.5 + k) for k in (0.0, 0.5, -0.5)]

    told = expected_cut(HALF, earlier)

    assert (told.day.low, told.day.high) == pytest.approx((4.0 + 5.5 - 0.2, 4.0 + 5.5 + 0.2))


def test_both_doubts_are_added_as_squares_with_the_degrees_of_freedom_of_welch_and_satterthwaite():
    """Lags 5, 6, 7 leave s2 (1 + 1/3) = 4/3; the own day's half width 1.96 is one standard error, 1.

    So 7/3 in all, on 2 (7/4)^2 = 6.125 degrees of freedom: t of 6 is 2.4469, of 7 2.3646 (table).
    """
    earlier = [EarlierTray(day_cut=8 + lag, day_50=3.0) for lag in (0.0, 1.0, 2.0)]

    told = expected_cut(Estimate(value=4.0, low=4.0 - 1.959964, high=4.0 + 1.959964), earlier)

    assert 2.3646 < (told.day.high - 10) / (7 / 3) ** 0.5 < 2.4469


@pytest.mark.parametrize(
    ("earlier", "usual", "trays"),
    [([], (6, 10), 0), ([], None, 0), (EARLIER, None, 4), (EARLIER[:3], None, 3)],
)
def test_how_many_trays_it_rests_on_is_told(earlier, usual, trays):
    assert expected_cut(HALF, earlier, usual).trays == trays
