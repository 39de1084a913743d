"""The spread of trays is learned within blocks, from what the grower has grown already."""

import pytest

from data.plan.spread import Told, learn_spread, spread_limits


def told(group: str, block: str, treatment: str, value: float) -> Told:
    return Told(group=group, block=block, treatment=treatment, value=value)


def test_what_blocks_and_media_explain_is_no_spread() -> None:
    """Two blocks 10 apart, two media 4 apart, and nothing else."""
    learned = learn_spread(
        [told("t", "1", "a", 70), told("t", "1", "b", 74), told("t", "2", "a", 80), told("t", "2", "b", 84)]
    )

    assert learned is not None
    assert learned.sd == pytest.approx(0, abs=1e-9)
    assert (learned.df, learned.trays) == (1, 4)


def test_spread_is_the_residual_of_blocks_and_media() -> None:
    """Barley of `immer` (R, MASS; 6 places, 5 varieties): residual mean square 110.825442 on 20 df."""
    yields = {
        "UF": (80.85, 93.85, 100.05, 98.45, 91.25), "W": (123.50, 128.75, 131.45, 169.60, 126.90),
        "M": (92.70, 91.20, 97.45, 135.60, 109.60), "C": (109.35, 91.65, 110.10, 133.15, 100.25),
        "GR": (82.65, 69.45, 82.90, 75.60, 92.20), "D": (77.30, 71.90, 73.15, 96.80, 95.05),
    }  # fmt: skip

    learned = learn_spread(
        told("barley", place, variety, value)
        for place, row in yields.items()
        for variety, value in zip("MSVTP", row, strict=True)
    )

    assert learned is not None
    assert learned.sd**2 == pytest.approx(110.825442, rel=1e-6)
    assert learned.df == 20


def test_trays_that_nothing_repeats_tell_no_spread() -> None:
    assert learn_spread([told("t", "1", "a", 70), told("t", "1", "b", 74)]) is None


def test_trays_of_a_trial_without_repeats_are_not_counted_among_those_that_told_it() -> None:
    """By hand: 2, -2, -2, 2 about blocks and media leaves 16 on one degree of freedom."""
    repeated = [("1", "a", 72), ("1", "b", 70), ("2", "a", 78), ("2", "b", 84)]

    learned = learn_spread(
        [told("t", *one) for one in repeated] + [told("other", "1", "a", 10), told("other", "1", "b", 90)]
    )

    assert learned is not None
    assert (learned.sd, learned.df, learned.trays) == (pytest.approx(4.0), 1, 4)


def test_two_degrees_of_freedom_leave_almost_everything_open() -> None:
    """n = 3: 0.52 to 6.28 times the estimate (chi-square table: 7.378 and 0.0506 with 2 df)."""
    assert spread_limits(1.0, 2) == pytest.approx((0.52, 6.28), abs=0.01)
