"""Measures of agreement against their authors' examples, as carried by R's packages."""

import numpy as np
import pytest

from data.statistics.agreement import icc, kappa, limits_of_agreement, spearman
from tests.published.trialdata import JUDGES, LARGE, MINI


# Shrout & Fleiss (1979), 6 targets x 4 judges, ICC(2,1): psych in R and pingouin, equal; printed (as
# remembered) .29
def test_intraclass_correlation():
    assert icc(JUDGES) == pytest.approx(0.289764, abs=1e-5)


# Cohen (1968): .492 and .348, documentation of R's psych
def test_weighted_kappa_of_cohen():
    table = np.array([[0.44, 0.07, 0.09], [0.05, 0.20, 0.05], [0.01, 0.03, 0.06]])
    weights = np.array([[0, 1, 3], [1, 0, 6], [3, 6, 0]], dtype=float)

    found = kappa(table, weights)

    assert (found.plain, found.weighted) == pytest.approx((0.49152542, 0.34782609), abs=1e-6)


# the same table: scikit-learn 1.9.1, counts x 100
def test_weights_by_distance_of_grades():
    table = np.array([[44, 7, 9], [5, 20, 5], [1, 3, 6]], dtype=float)
    steps = np.abs(np.arange(3.0)[:, None] - np.arange(3.0))

    assert kappa(table).weighted == pytest.approx(0.45454545, abs=1e-6)
    assert kappa(table, steps).weighted == pytest.approx(0.47368421, abs=1e-6)


# data set `SexualFun` of R's vcd, with equal-spacing and squared weights; recomputed in vcd
def test_kappa_of_four_grades():
    table = np.array([[7, 7, 2, 3], [2, 8, 3, 7], [1, 5, 4, 9], [2, 8, 9, 14]], dtype=float)
    steps = np.abs(np.arange(4.0)[:, None] - np.arange(4.0))

    assert kappa(table).plain == pytest.approx(0.12933, abs=1e-5)
    assert kappa(table, steps).weighted == pytest.approx(0.23738, abs=1e-5)
    assert kappa(table).weighted == pytest.approx(0.33205, abs=1e-5)


# Bland & Altman (1986), printed -2.1, 38.8, -79.7 and 75.5 with 2 sd; recomputed with numpy
def test_limits_of_agreement_of_two_meters():
    found = limits_of_agreement(np.array(LARGE, float), np.array(MINI, float), times=2)

    assert (found.mean, found.sd) == pytest.approx((-2.117647, 38.765130), abs=1e-6)
    assert (found.low, found.high) == pytest.approx((-79.6479, 75.4126), abs=1e-4)


# an old textbook pair, rho = -29/165; p by the t approximation, scipy
def test_spearman_of_ten_pairs():
    x = [106, 100, 86, 101, 99, 103, 97, 113, 112, 110]
    y = [7, 27, 2, 50, 28, 29, 20, 12, 6, 17]

    found = spearman(x, y)

    assert found.rho == pytest.approx(-29 / 165, abs=1e-7)
    assert found.p == pytest.approx(0.62719, abs=1e-5)


def test_spearman_with_ties_agrees_with_scipy():
    from scipy.stats import spearmanr

    x, y = [1, 2, 2, 3, 5, 5, 5, 8], [2, 1, 4, 4, 6, 5, 9, 9]
    theirs = spearmanr(x, y)

    found = spearman(x, y)

    assert (found.rho, found.p) == pytest.approx((theirs.statistic, theirs.pvalue), abs=1e-9)
