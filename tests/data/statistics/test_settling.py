"""What a trial repeats, and the trays that would settle it."""

import numpy as np
import pytest

from data.statistics.leastsquares import design_of
from data.statistics.ownspread import own_difference
from data.statistics.settling import Enough, Repeats, enough_of, repeats_of


def a_trial(*trays):
    """Design and values of trays, each (block, medium, value)."""
    blocks, media, values = zip(*trays, strict=True)
    return design_of(blocks, media), np.array(values, float)


def test_with_one_spread_a_tray_repeats_and_scatters_as_all_do():
    design, values = a_trial(
        ("a", "peat", 1), ("a", "mat", 2), ("b", "peat", 4), ("b", "mat", 3), ("c", "peat", 2)
    )
    fit = design.fit(values)

    assert repeats_of(fit, values, 1, 0, None) == Repeats(sd=pytest.approx(float(fit.mse) ** 0.5), free=None)


def test_without_blocks_each_tray_adds_satterthwaites_degrees_of_freedom():
    """Variances 4 and 9 by hand: a mean of 6.5; (4 + 9)^2 / (4^2 + 9^2) = 169/97, of any number of trays."""
    media = {"peat": (1, 3, 5), "mat": (10, 13, 16), "coir": (0, 50, 90, 20)}
    design, values = a_trial(*(("", name, v) for name, there in media.items() for v in there))

    found = repeats_of(design.fit(values), values, 1, 0, own_difference(design, values, 1, 0))

    assert (found.sd, found.free, found.on_each) == pytest.approx((6.5**0.5, 169 / 97, 1.0))


def test_block_by_block_a_block_with_both_repeats_and_holds_the_trays_of_the_fuller():
    """Differences 2, 4, 3 of the three blocks with both: sd 1, of one medium 1/root 2; peat 2, 1, 2 trays."""
    design, values = a_trial(
        ("a", "peat", 10), ("a", "peat", 12), ("a", "mat", 13),
        ("b", "peat", 20), ("b", "mat", 24),
        ("c", "peat", 29), ("c", "peat", 31), ("c", "mat", 33),
        ("d", "peat", 50), ("d", "peat", 60), ("d", "peat", 70), ("d", "peat", 40),
    )  # fmt: skip

    found = repeats_of(design.fit(values), values, 1, 0, own_difference(design, values, 1, 0))

    assert (found.sd, found.free, found.on_each) == pytest.approx((0.5**0.5, 1.0, 5 / 3))


def test_whole_trays_fill_whole_shelves_and_blocks():
    repeats = Repeats(sd=1.0, free=1.0)

    once = enough_of(repeats, 2.0, 1, 0.0, 1.0)
    filled = enough_of(Repeats(sd=1.0, free=1.0, on_each=1.2), 2.0, 1, 0.0, 2.5)

    assert once.trays == once.shelves
    assert filled == Enough(trays=once.trays * 2 * 3, shelves=once.trays * 2)
    assert enough_of(repeats, 0.0, 1, 0.0, 1.0) is None
