"""What two ways of judging the same trays tell, down to the fewest trays that tell anything."""

import numpy as np
import pytest

from data.statistics.agreement import limits_of_agreement, spearman


def test_limits_lie_two_standard_deviations_off_the_mean_unless_said_otherwise() -> None:
    """Bland & Altman (1986): mean -+ 1.96 sd; here differences of 0 and 2, mean 1, sd root 2 (by hand)."""
    found = limits_of_agreement(np.array([5.0, 9.0]), np.array([5.0, 7.0]))

    assert found is not None
    assert (found.low, found.high) == pytest.approx((1 - 1.96 * 2**0.5, 1 + 1.96 * 2**0.5))


def test_one_tray_has_no_limits() -> None:
    assert limits_of_agreement(np.array([5.0]), np.array([4.0])) is None


def test_three_trays_have_a_rank_correlation_and_two_have_none() -> None:
    """Ranks 1, 2, 3 against 1, 3, 2: by hand 1 - 6 x 2 / 24."""
    found = spearman([1.0, 2.0, 3.0], [10.0, 30.0, 20.0])

    assert found is not None
    assert (found.rho, found.n) == (pytest.approx(0.5), 3)
    assert spearman([1.0, 2.0], [10.0, 30.0]) is None


@pytest.mark.parametrize("flat", [0, 1])
def test_an_eye_or_a_photo_that_tells_no_tray_from_another_has_no_ranks(flat: int) -> None:
    sides = [[1.0, 2.0, 3.0, 4.0], [1.0, 2.0, 3.0, 4.0]]
    sides[flat] = [7.0] * 4

    assert spearman(*sides) is None


@pytest.mark.parametrize(("other", "rho"), [([1.0, 4.0, 9.0, 16.0], 1.0), ([9.0, 7.0, 5.0, 1.0], -1.0)])
def test_the_same_order_is_one_and_the_other_way_round_is_minus_one_to_the_last_digit(
    other: list[float], rho: float
) -> None:
    found = spearman([1.0, 2.0, 3.0, 4.0], other)

    assert found is not None
    assert (found.rho, found.p) == (rho, 0.0)
