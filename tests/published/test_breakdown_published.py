"""Break-down against published and certified fits."""

import math

import numpy as np
import pytest

from data.breakdown import decay_of
from data.statistics.curve import fit_curve

DAYS_A_YEAR = 365.0


# Olson 1963, one parameter; made-up masses, recomputed with scipy 1.17.1 curve_fit
def test_five_weighings_over_a_year():
    decay = decay_of([30, 60, 120, 180, 365], [88, 79, 62, 51, 26])

    assert decay.rate.value == pytest.approx(0.003810099, rel=1e-5)
    assert (decay.rate.low, decay.rate.high) == pytest.approx((0.00361299, 0.00400721), rel=1e-5)
    assert decay.half_weeks.value * 7 == pytest.approx(181.924, rel=1e-5)
    assert decay.rss == pytest.approx(5.088164, rel=1e-5)
    # 95 % gone at 786 days lies beyond twice the year that was seen: not told
    assert decay.nearly_gone_weeks is None
    assert "Cannot tell yet" in decay.reason


# pine needles, means after Hobbie et al., carried by the R package litterfitter; fit recomputed with scipy
# 1.17.1 curve_fit and with R nls
def test_pine_needles():
    years = [0.3616438, 0.8383562, 1.8383562, 2.8356164, 3.8328767, 4.8301370]
    left = [97.369, 84.960, 58.362, 37.805, 34.254, 30.730]

    decay = decay_of([year * DAYS_A_YEAR for year in years], left)

    assert decay.rate.value * DAYS_A_YEAR == pytest.approx(0.2780220, rel=1e-5)
    assert decay.rate.low * DAYS_A_YEAR == pytest.approx(0.2214, abs=1e-4)
    assert decay.rate.high * DAYS_A_YEAR == pytest.approx(0.3346, abs=1e-4)
    assert decay.rss / 1e4 == pytest.approx(0.01637637, rel=1e-5)
    assert decay.half_weeks.value * 7 / DAYS_A_YEAR == pytest.approx(2.4931, abs=1e-4)
    assert decay.nearly_gone_weeks is None  # 10.8 years, more than twice what was seen


# Olson 1963: k = 0.5 a year; half 1.38629, 95 % gone 5.99146 years
def test_half_and_nearly_all_of_a_known_rate():
    days = [200 * step for step in range(1, 13)]
    decay = decay_of(days, [100 * math.exp(-0.5 * day / DAYS_A_YEAR) for day in days])

    assert decay.half_weeks.value * 7 / DAYS_A_YEAR == pytest.approx(1.38629, abs=1e-5)
    assert decay.nearly_gone_weeks.value * 7 / DAYS_A_YEAR == pytest.approx(5.99146, abs=1e-5)


# NIST Statistical Reference Datasets, Misra1a, certified values
def test_misra1a():
    x = [77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0]
    y = [10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.40, 75.47, 81.78]

    fit = fit_curve(lambda t, one, two: one * (1 - np.exp(-two * t)), x, y, (250, 5e-4))

    assert fit.parameters == pytest.approx((2.3894212918e02, 5.5015643181e-04), rel=1e-6)
    assert fit.errors == pytest.approx((2.7070075241, 7.2668688436e-06), rel=1e-5)
    assert fit.rss == pytest.approx(1.2455138894e-01, rel=1e-6)
