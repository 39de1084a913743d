"""Shares of the bed on the scale of limits: ends and order kept, a difference as wide as it is from above."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from data.bedscale import from_above
from data.desirability import PartName, Seen, score_canopy

shares = st.floats(min_value=0.0, max_value=100.0)


@given(shares, shares)
def test_the_ends_stay_and_more_bed_is_never_less(one: float, other: float) -> None:
    assert from_above(0.0) == 0.0
    assert from_above(100.0) == 100.0
    assert (from_above(one) - from_above(other)) * (one - other) >= 0.0
    assert 0.0 <= from_above(one) <= one


@pytest.mark.parametrize(("above", "bed"), [(30.0, 46.9), (60.0, 70.6), (80.0, 86.4), (95.0, 98.3)])
def test_it_takes_back_what_was_measured(above: float, bed: float) -> None:
    """23.2 + 0.79 times what is seen from above: a line through 60 drawn photos that we learn from."""
    assert from_above(bed) == pytest.approx(above, abs=3.0)


def test_a_share_of_the_bed_is_no_more_worth_for_being_counted_of_less() -> None:
    """Where 80 % is seen from above: 82.9 % of the inner area (14.1 + 0.86 times it), 86.4 % of the bed."""

    def worth(**seen: object) -> float:
        part = score_canopy(Seen(uniformity=90.0, colour=90.0, **seen)).part(PartName.COVERAGE)
        assert part is not None
        return part.desirability

    inner, bed, raw = worth(coverage=82.9), worth(coverage=86.4, of_bed=True), worth(coverage=86.4)
    assert bed == pytest.approx(inner, abs=0.02)
    assert raw - inner > 0.04


def test_the_part_still_shows_the_share_that_was_measured() -> None:
    part = score_canopy(Seen(coverage=86.4, uniformity=90.0, colour=90.0, of_bed=True)).part(
        PartName.COVERAGE
    )
    assert part is not None
    assert part.value == 86.4
