"""Germination from counts."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from data.growing.germination import germination_of, wilson


def test_half_way_between_two_counts():
    told = germination_of([1, 2, 3], [0, 4, 6], sown=20)

    assert told.t50_farooq == pytest.approx(2 + (5 - 4) / 6)  # 4 up on day 2, 10 on day 3: target 5
    assert told.t50_coolbear == pytest.approx(2 + (5.5 - 4) / 6)
    assert told.share.value == 50


def test_counts_with_days_left_out():
    told = germination_of([2, 5], [2, 8])

    assert told.t50_farooq == pytest.approx(2 + (5 - 2) * 3 / 8)


def test_nothing_up_has_no_t50_and_says_why():
    told = germination_of([1, 2], [0, 0], sown=100)

    assert told.t50_coolbear is None
    assert told.mean_time is None
    assert told.share.value == 0
    assert told.share.low == 0
    assert told.reasons["t50_farooq"] == "Nothing has come up yet."


def test_up_before_the_first_count_has_no_t50_and_says_why():
    told = germination_of([3, 4], [80, 10])

    assert told.t50_farooq is None
    assert told.reasons["t50_coolbear"] == "Half of them were up before the first count."


def test_more_up_than_sown_is_a_wrong_count():
    told = germination_of([3, 4], [80, 30], sown=100)

    assert told.share is None
    assert told.reasons["share"] == "110 came up of 100 sown: one of the counts is wrong."


def test_days_must_ascend():
    with pytest.raises(ValueError, match="ascend"):
        germination_of([2, 2], [1, 1])


@settings(deadline=None)
@given(st.integers(1, 1000).flatmap(lambda n: st.tuples(st.integers(0, n), st.just(n))))
def test_a_share_lies_within_its_interval_and_the_interval_within_0_to_100(counts):
    found, of = counts
    share = wilson(found, of)

    assert -1e-9 <= share.low <= share.value + 1e-9
    assert share.value - 1e-9 <= share.high <= 100 + 1e-9


@settings(deadline=None)
@given(st.integers(0, 20), st.integers(2, 50))
def test_the_interval_shrinks_with_more_seeds(found, times):
    few, many = wilson(found, 20), wilson(found * times, 20 * times)

    assert many.high - many.low < few.high - few.low


@settings(deadline=None)
@given(st.lists(st.integers(0, 40), min_size=2, max_size=14))
def test_coolbears_half_never_comes_before_farooqs(new):
    told = germination_of(range(len(new)), new)

    if told.t50_coolbear is not None and told.t50_farooq is not None:
        assert told.t50_coolbear >= told.t50_farooq
