"""The fit of curves against certified and recomputed results."""

import numpy as np
import pytest

from data.statistics.curve import fit_curve
from data.statistics.estimate import Estimate

# NIST StRD nonlinear regression, data set Misra1a
MISRA_X = [77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0]
MISRA_Y = [10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.40, 75.47, 81.78]


# certified values of Misra1a, y = b1 (1 - exp(-b2 x)), from both starts that NIST gives
@pytest.mark.parametrize("begin", [(500, 0.0001), (250, 0.0005)])
def test_misra1a_is_the_certified_fit(begin):
    fit = fit_curve(lambda x, one, two: one * (1 - np.exp(-two * x)), MISRA_X, MISRA_Y, begin)

    assert fit.parameters == pytest.approx((2.3894212918e02, 5.5015643181e-04), rel=1e-6)
    assert fit.errors == pytest.approx((2.7070075241, 7.2668688436e-06), rel=1e-5)
    assert fit.rss == pytest.approx(1.2455138894e-01, rel=1e-6)


def test_the_error_of_a_mean_by_hc3_is_that_of_its_closed_form():
    """MacKinnon & White (1985): sum of (r / (1 - 1/n))^2 / n^2, here 14/9; with one spread s2/n = 14/12."""
    fit = fit_curve(lambda t, mean: mean + 0 * t, [1, 2, 3, 4], [1, 2, 3, 6], [1.0])

    assert fit.error_of(lambda mean: mean) ** 2 == pytest.approx(14 / 12)
    assert fit.own_error_of(lambda mean: mean)[0] ** 2 == pytest.approx(14 / 9)


def test_a_number_that_rests_on_few_points_has_few_degrees_of_freedom():
    """Two lines that meet nowhere, the first through three points, the second through two.

    By hand: weights t / sum of t2, so (sum t2)^2 / (sum t4) of 1, 2, 3: 196 / 98 = 2 points; 3 df are left.
    """

    def two_lines(t, one, two):
        return np.where(t < 10, one * t, two * t)

    fit = fit_curve(two_lines, [1, 2, 3, 11, 12], [1, 2.2, 3.1, 11.3, 12.4], [1.0, 1.0])
    first, second = fit.own_error_of(lambda one, _two: one), fit.own_error_of(lambda _one, two: two)

    assert fit.df == 3
    assert first[1] == pytest.approx(2.0)
    assert second[1] == pytest.approx((11**2 + 12**2) ** 2 / (11**4 + 12**4))
    assert fit.reach_of(lambda one, _two: one) == pytest.approx(
        max(3.18245 * fit.errors[0], 4.30265 * first[0]), rel=1e-5
    )  # Student's t, 97.5 %, of 3 and of 2 df (any table)


# mass left in % over days; k, its error and interval recomputed with scipy 1.17.1, curve_fit of one
# parameter (exponential loss: Olson 1963, Ecology 44, 322-331, original not opened)
def test_exponential_loss_with_one_parameter_and_its_interval():
    days, left = [30, 60, 120, 180, 365], [88, 79, 62, 51, 26]

    fit = fit_curve(lambda t, k: 100 * np.exp(-k * t), days, left, [0.01])
    pace = Estimate.of(fit.parameters[0], fit.errors[0], fit.df)

    assert pace.value == pytest.approx(0.003810099, rel=1e-5)
    assert fit.errors[0] == pytest.approx(0.0000709924, rel=1e-4)
    assert (pace.low, pace.high) == pytest.approx((0.00361299, 0.00400721), rel=1e-5)
    assert fit.rss == pytest.approx(5.088164, rel=1e-5)
    half = pace.turned(lambda k: np.log(2) / k)
    assert half.value == pytest.approx(181.924, abs=1e-3)
    assert half.low < half.value < half.high


# means of litter bags of pine needles after Hobbie et al., data set of the R package litterfitter; recomputed
# with scipy and with R's nls
def test_pine_needles_agree_with_two_programs():
    years = [0.3616438, 0.8383562, 1.8383562, 2.8356164, 3.8328767, 4.8301370]
    left = [0.97369, 0.84960, 0.58362, 0.37805, 0.34254, 0.30730]

    fit = fit_curve(lambda t, k: np.exp(-k * t), years, left, [0.5])

    assert fit.parameters[0] == pytest.approx(0.2780220, rel=1e-5)
    assert fit.errors[0] == pytest.approx(0.0220122, rel=1e-4)
    assert fit.rss == pytest.approx(0.01637637, rel=1e-5)
