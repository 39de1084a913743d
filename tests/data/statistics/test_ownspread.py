"""Own spread: differences from two media's trays alone, and whether spreads differ."""

import numpy as np
import pytest

from data.statistics.leastsquares import design_of
from data.statistics.ownspread import (
    block_means,
    is_uneven,
    own_difference,
    pair_apart,
    pairs_q,
    sidak_q,
    spreads,
    unequal_chance,
)


def laid(**values):
    """Design and values of media with a number in each block; None where a tray is missing."""
    rows = [
        (str(block), medium, value)
        for medium, numbers in values.items()
        for block, value in enumerate(numbers)
        if value is not None
    ]
    blocks, media, numbers = zip(*rows, strict=True)
    return design_of(blocks, media), np.array(numbers, float)


def in_one_block(**values):
    """The same without blocks."""
    rows = [(medium, value) for medium, numbers in values.items() for value in numbers]
    media, numbers = zip(*rows, strict=True)
    return design_of(["all"] * len(rows), media), np.array(numbers, float)


def test_blocks_that_hold_only_one_of_two_media_say_nothing_of_their_difference():
    """By hand: 2, 4 and 3 in the three blocks with both: mean 3, standard error 1 / root 3."""
    design, values = laid(peat=(10, 20, 30, 40, None), mat=(12, 24, 33, None, 90))

    apart = own_difference(design, values, 1, 0)

    assert (apart.difference, apart.se, apart.df) == pytest.approx((3.0, 3**-0.5, 2))
    assert np.isnan(block_means(design, values)[3:].sum(axis=1)).all()


def test_trays_of_one_medium_in_a_block_count_by_their_mean_and_two_blocks_are_enough():
    """By hand: 12 - 10 and (22 + 26) / 2 - 20 are 2 and 4; standard error 1 with one degree of freedom."""
    design = design_of(["a", "a", "b", "b", "b"], ["peat", "mat", "peat", "mat", "mat"])

    apart = own_difference(design, np.array([10.0, 12.0, 20.0, 22.0, 26.0]), 1, 0)

    assert (apart.difference, apart.se, apart.df) == pytest.approx((3.0, 1.0, 1))


@pytest.mark.parametrize("mat", [(12, None, None), (None, None, 33)])
def test_one_block_with_both_tells_no_difference(mat):
    assert own_difference(*laid(peat=(10, 20, 30), mat=mat), 1, 0) is None


def test_without_blocks_two_trays_of_each_are_needed():
    assert own_difference(*in_one_block(peat=(10, 12, 14), mat=(20,)), 1, 0) is None
    assert own_difference(*in_one_block(peat=(10, 12, 14), mat=(20,)), 0, 1) is None
    apart = own_difference(*in_one_block(peat=(10, 12, 14), mat=(20, 22)), 1, 0)
    assert (apart.difference, apart.se) == pytest.approx((9.0, (4 / 3 + 2 / 2) ** 0.5))


@pytest.mark.parametrize("size", [0.0, 1e6, -1e6])
def test_what_differs_by_rounding_alone_has_no_error_at_all(size):
    peat = [size + 0.1 * n for n in range(1, 7)]
    mat = [one + 0.2 for one in peat]

    assert own_difference(*laid(peat=peat, mat=mat), 1, 0).se == 0.0
    mat[0] += 1e-4
    assert own_difference(*laid(peat=peat, mat=mat), 1, 0).se > 0


@pytest.mark.parametrize(
    ("few", "many", "own"), [(2, 2, False), (2, 3, True), (3, 4, False), (3, 5, True), (4, 12, False)]
)
def test_two_or_three_trays_beside_clearly_more_have_their_own_degrees_of_freedom(few, many, own):
    """Mickey & Brown (1966): n - 1 of the fewer never fails too often. Else Welch, by scipy."""
    from scipy.stats import ttest_ind

    chance = np.random.default_rng(few + many)
    one, other = chance.normal(size=few), chance.normal(size=many)

    wanted = few - 1 if own else ttest_ind(one, other, equal_var=False).df
    assert pair_apart(one, other).df == pytest.approx(wanted)
    assert pair_apart(other, one).df == pytest.approx(wanted)


def test_trays_of_no_spread_have_the_degrees_of_freedom_of_both():
    assert pair_apart(np.array([5.0, 5.0, 5.0]), np.array([4.0, 4.0, 4.0, 4.0])).df == 5.0


# Student's t, one-sided: 0.95 with 5 df 2.0150, 0.975 with 10 df 2.2281 (any table); two media: 0.95^(1/2)
def test_limits_of_several_media_hold_together():
    assert sidak_q(1, 5) == pytest.approx(2.0150, abs=1e-4)
    assert sidak_q(2, 10, confidence=0.975**2) == pytest.approx(2.2281, abs=1e-4)
    assert sidak_q(2, 10) > sidak_q(1, 10)


def test_all_pairs_of_media_hold_together():
    """Two media: Student's t, two-sided 95 %, 5 df 2.5706; three, known spread: 2.388 (tables of Sidak)."""
    assert pairs_q(2, 5) == pytest.approx(2.5706, abs=1e-4)
    assert pairs_q(3, 1e7) == pytest.approx(2.388, abs=1e-3)


def test_the_spread_of_each_medium_without_blocks_is_that_of_its_own_trays():
    design, values = in_one_block(peat=(10, 12, 17), mat=(20, 26, 21, 25))

    assert spreads(design.fit(values)) == pytest.approx(
        [np.std((10, 12, 17), ddof=1), np.std((20, 26, 21, 25), ddof=1)]
    )


def test_the_spread_of_each_medium_in_uneven_blocks_counts_what_the_fit_left_of_its_trays():
    """Sum of squared residuals over the sum of 1 - h of the hat matrix, by plain least squares."""
    blocks = ["a", "a", "a", "b", "b", "c", "c", "c", "c"]
    media = ["peat", "mat", "coir", "peat", "mat", "peat", "mat", "coir", "coir"]
    values = np.array([3.0, 5.5, 4.0, 2.5, 7.0, 1.0, 4.5, 3.5, 6.0])
    columns = [[float(b == name) for b in blocks] for name in "abc"]
    columns += [[float(m == name) for m in media] for name in ("mat", "coir")]
    x = np.array(columns).T
    hat = x @ np.linalg.inv(x.T @ x) @ x.T
    left, free = values - hat @ values, 1 - np.diag(hat)
    own = [np.array(media) == name for name in ("peat", "mat", "coir")]

    found = spreads(design_of(blocks, media).fit(values))

    assert found == pytest.approx([((left[m] ** 2).sum() / free[m].sum()) ** 0.5 for m in own])


def test_whether_spreads_differ_agrees_with_scipys_levene():
    """Of three media without blocks; counted among a thousand, so to 0.03. scipy's F is itself near only."""
    from scipy.stats import levene

    chance = np.random.default_rng(4)
    for times in (1.0, 1.6, 2.5, 8.0):
        groups = chance.normal(size=(3, 12)) * np.array([[times], [1.0], [1.0]])
        design, values = in_one_block(peat=groups[0], mat=groups[1], coir=groups[2])

        told = unequal_chance(design.fit(values))

        assert told == pytest.approx(levene(*groups, center="mean").pvalue, abs=0.03)
        assert told == unequal_chance(design.fit(7 + 3 * values))  # of no unit


def test_of_four_trays_nobody_can_tell_their_spread():
    noise = np.random.default_rng(4).normal(size=(2, 5))

    for least, told in ((5, True), (4, False)):
        design, values = in_one_block(peat=noise[0], mat=noise[1][:least])
        assert (unequal_chance(design.fit(values)) is not None) is told
    alone, values = in_one_block(peat=noise[0])
    assert unequal_chance(alone.fit(values)) is None


@pytest.mark.parametrize(
    ("trays", "uneven"),
    [((4, 2), True), ((4, 3), False), ((5, 3), False), ((6, 3, 6), True), ((4, 1, 3), False)],
)
def test_twice_as_many_trays_of_a_medium_are_uneven_and_one_alone_does_not_count(trays, uneven):
    media = [f"m{m}" for m, n in enumerate(trays) for _ in range(n)]

    assert is_uneven(design_of(["all"] * len(media), media)) is uneven
