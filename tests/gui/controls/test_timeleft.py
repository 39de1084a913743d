"""Time left: told only when it can be known, and in steps that a person would say."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from gui.controls.timeleft import seconds_left


def test_a_quarter_done_in_half_a_minute_leaves_a_minute_and_a_half() -> None:
    assert seconds_left(36, 144, 30.0) == 90


@pytest.mark.parametrize(("done", "seconds"), [(0, 10.0), (1, 10.0), (20, 1.0)])
def test_nobody_knows_at_the_beginning(done: int, seconds: float) -> None:
    assert seconds_left(done, 144, seconds) is None


@given(st.integers(2, 999), st.floats(2, 1e5))
def test_it_is_never_over_before_it_is_over(done: int, seconds: float) -> None:
    left = seconds_left(done, 1000, seconds)
    assert left is not None
    assert left >= 5
