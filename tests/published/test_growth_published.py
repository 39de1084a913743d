"""Growth curves and degree days against published data and programs.

Where a row says "recomputed", the figure was made outside this program with the program named there.
"""

import math
from datetime import datetime, timedelta

import pytest

from data.growing.degreedays import logged_degree_days
from data.growth import Curve, fit_growth

# NIST StRD nonlinear regression, data set Rat42 (Ratkowsky 1983): pasture yield over days
RAT42_X = [9, 14, 21, 28, 42, 57, 63, 70, 79]
RAT42_Y = [8.93, 10.80, 18.59, 22.33, 39.35, 56.11, 61.73, 64.62, 67.08]

# data set ChickWeight of R, chick 1: weight in g over days
CHICK_X = [0, 2, 4, 6, 8, 10, 12, 14, 16, 18, 20, 21]
CHICK_Y = [42, 51, 59, 64, 76, 93, 106, 125, 149, 171, 199, 205]

# data set DNase of R, run 1: concentration and density
DNASE_X = [
    math.log(c) for c in (0.04882812, 0.1953125, 0.390625, 0.78125, 1.5625, 3.125, 6.25, 12.5) for _ in "12"
]
DNASE_Y = [
    0.017, 0.018, 0.121, 0.124, 0.206, 0.215, 0.377, 0.374, 0.614, 0.609, 1.019, 1.001,
    1.334, 1.364, 1.730, 1.710,
]  # fmt: skip


# certified values of NIST StRD Rat42: b1, b2, b3 of b1/(1 + exp(b2 - b3 x)); tm = b2/b3, s = 1/b3
def test_logistic_curve_of_rat42_is_the_certified_one():
    fitted = fit_growth(RAT42_X, RAT42_Y, Curve.LOGISTIC, bound=None)

    upper, middle, pace = fitted.parameters
    assert upper == pytest.approx(7.2462237576e01, rel=1e-6)
    assert middle / pace == pytest.approx(2.6180768402, rel=1e-6)
    assert 1 / pace == pytest.approx(6.7359200066e-02, rel=1e-6)
    assert fitted.fit.rss == pytest.approx(8.0565229338, rel=1e-6)
    assert fitted.errors[0] == pytest.approx(1.7340283401, rel=1e-5)
    assert fitted.fit.error_of(lambda *p: p[1] / p[2]) == pytest.approx(8.8295217536e-02, rel=1e-4)
    assert fitted.fit.error_of(lambda *p: 1 / p[2]) == pytest.approx(3.4465663377e-03, rel=1e-4)


# recomputed from the certified parameters: A/(4 s)
def test_greatest_rate_of_rat42():
    fitted = fit_growth(RAT42_X, RAT42_Y, Curve.LOGISTIC, bound=None)

    assert fitted.greatest_rate == pytest.approx(1.220250, abs=1e-6)
    assert fitted.steepest_day == pytest.approx(38.86739, abs=1e-5)


# recomputed with scipy 1.17.1, curve_fit on A exp(-b exp(-c t))
def test_gompertz_curve_of_rat42():
    fitted = fit_growth(RAT42_X, RAT42_Y, Curve.GOMPERTZ, bound=None)

    upper, inflection, pace = fitted.parameters
    assert upper == pytest.approx(82.83221, rel=1e-5)
    assert math.exp(pace * inflection) == pytest.approx(3.399790, rel=1e-5)
    assert pace == pytest.approx(0.03707489, rel=1e-5)
    assert fitted.fit.rss == pytest.approx(21.79399, rel=1e-5)
    assert inflection == pytest.approx(33.00653, rel=1e-5)
    assert fitted.greatest_rate == pytest.approx(1.129756, rel=1e-5)


# recomputed with R 4.2.2: nls(density ~ SSlogis(log(conc), ...)), nls(density ~ SSgompertz(log(conc), ...))
def test_both_curves_of_dnase_agree_with_r():
    logistic = fit_growth(DNASE_X, DNASE_Y, Curve.LOGISTIC, bound=None)
    gompertz = fit_growth(DNASE_X, DNASE_Y, Curve.GOMPERTZ, bound=None)

    assert logistic.parameters == pytest.approx((2.345182, 1.483092, 1.041455), rel=1e-5)
    upper, inflection, pace = gompertz.parameters
    assert upper == pytest.approx(4.603334, rel=1e-5)
    assert math.exp(pace * inflection) == pytest.approx(2.271339, rel=1e-5)
    assert math.exp(-pace) == pytest.approx(0.716467, rel=1e-5)


# recomputed with R 4.2.2, nls(weight ~ SSlogis(Time, ...)): A = 937 with standard error 466
def test_the_chick_has_a_level_that_is_badly_told():
    fitted = fit_growth(CHICK_X, CHICK_Y, Curve.LOGISTIC, bound=None)

    assert fitted.parameters[0] == pytest.approx(937, abs=0.5)
    assert fitted.errors[0] == pytest.approx(466, abs=0.5)


# McMaster & Wilhelm (1997) method 2, base 5 C, recomputed by hand: half a day at each extreme
@pytest.mark.parametrize(("highest", "lowest", "total"), [(24, 18, 16), (22, 16, 14), (6, 2, 0.5)])
def test_degree_days_of_a_day_by_its_extremes(highest, lowest, total):
    begin = datetime(2026, 3, 4)
    logged = [(begin + timedelta(hours=h), lowest if h < 12 else highest) for h in range(24)]

    assert logged_degree_days(logged, 5, begin, begin + timedelta(days=1)).total == pytest.approx(total)
