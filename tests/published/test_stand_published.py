"""Numbers of the stand against worked examples of the formulas and against published programs.

Where a row says "recomputed", the figure was made outside this program with the versions named there. The
grids stand upright (12 rows x 6 columns) as they were computed; the program's cells lie (6 x 12), which
changes nothing.
"""

import numpy as np
import pytest

from vision.cells import christiansen, low_quarter, variation
from vision.stand import expected_clumping, gradient, morans_i

# four rows of three cells; sums by hand: mean 80, sum of absolute deviations 140, lowest three 50, 60, 70
A = np.array([[80, 90, 100], [70, 60, 80], [90, 100, 50], [80, 70, 90]], dtype=float)
ROW, COLUMN = np.mgrid[0:12, 0:6].astype(float)
B = 80 + 2 * ROW - COLUMN


# Christiansen (1942) Irrigation by Sprinkling; low quarter: Keller & Bliesner (1990). Formulas as in
# irrigation handbooks (originals not opened); values recomputed with numpy 2.4.6 from the formulas
@pytest.mark.parametrize(
    ("measure", "grid", "expected"),
    [
        (christiansen, A, 85.416667),
        (low_quarter, A, 75.0),
        (variation, A, 19.217653),
        (christiansen, B, 93.094790),
        (low_quarter, B, 89.579409),
        (variation, B, 8.092776),
    ],
)
def test_evenness_of_the_worked_grids(measure, grid, expected):
    assert measure(grid) == pytest.approx(expected, abs=1e-6)
    assert measure(grid.T) == pytest.approx(expected, abs=1e-6)


# follows from Christiansen's formula: sum of |x - m| is n m
def test_half_full_and_half_bare_is_exactly_zero():
    half = np.where(COLUMN < 3, 100.0, 0.0)
    assert christiansen(half) == 0.0


# follows from Christiansen's formula: 100 (1 - 2 * 71/72)
def test_one_covered_cell_of_72_is_far_below_zero():
    one = np.zeros((12, 6))
    one[0, 0] = 100.0
    assert christiansen(one) == pytest.approx(-97.22, abs=1e-2)


# for normally spread cells CU = 100 - sqrt(2/pi) CV and DUlq = 100 - 1.2711 CV, 1.2711 = phi(z_.25) / .25
def test_normally_spread_cells_agree_with_the_theory_of_the_normal_distribution():
    cells = np.random.default_rng(3).normal(80, 8, 200_000)

    assert christiansen(cells) == pytest.approx(100 - 0.7979 * variation(cells), abs=0.05)
    assert low_quarter(cells) == pytest.approx(100 - 1.2711 * variation(cells), abs=0.05)


# least-squares plane of B over 254 x 508 mm, cell centres 254/6 and 508/12 mm apart; recomputed with numpy
# lstsq
def test_gradient_of_a_plane_is_the_planes_own_slope():
    across, along = gradient(B, (254 / 6, 508 / 12))

    assert across == pytest.approx(-2.362205, abs=1e-6)
    assert along == pytest.approx(4.724409, abs=1e-6)


def test_gradient_equals_a_general_least_squares_fit():
    cells = np.random.default_rng(5).uniform(0, 100, (6, 12))
    y, x = np.mgrid[0:6, 0:12] * 42.0
    design = np.column_stack([np.ones(72), x.ravel(), y.ravel()])

    fitted = 100 * np.linalg.lstsq(design, cells.ravel(), rcond=None)[0][1:]

    assert gradient(cells, (42.0, 42.0)) == pytest.approx(tuple(fitted), abs=1e-9)


# Moran (1950) Notes on continuous stochastic phenomena. Biometrika 37, 17-23.
# Recomputed with libpysal 4.14.1 lat2W(12, 6) and esda 2.9.0 Moran(..., transformation="B"), rook
@pytest.mark.parametrize(
    ("grid", "expected"),
    [
        (2 * ROW + COLUMN, 0.899270),
        ((ROW + COLUMN) % 2, -1.0),
        (np.where(COLUMN < 3, 1.0, 0.0), 0.809524),
        (A, -0.352941),
    ],
    ids=["plane", "checker", "half", "worked grid"],
)
def test_clumping_of_the_published_patterns(grid, expected):
    assert morans_i(grid) == pytest.approx(expected, abs=1e-6)
    assert morans_i(grid.T) == pytest.approx(expected, abs=1e-6)


# E(I) = -1/(n - 1), Cliff & Ord (1981), as in the documentation of esda
def test_expected_clumping_of_72_cells():
    assert expected_clumping() == pytest.approx(-1 / 71, abs=1e-12)
    assert expected_clumping(78) == pytest.approx(-0.012987012987, abs=1e-12)  # esda's documented example


def morans_i_with_weights(values, weights):
    """The formula written out with a full matrix of weights: I = n/S0 * z'Wz / z'z."""
    z = values.ravel() - values.mean()
    return values.size / weights.sum() * (z @ weights @ z) / (z @ z)


def rook_weights(rows, columns):
    place = np.array([(r, c) for r in range(rows) for c in range(columns)])
    return (np.abs(place[:, None] - place).sum(axis=2) == 1).astype(float)


# S0 = 252 for rook neighbours on 12 x 6: libpysal 4.14.1
def test_the_fast_form_equals_the_formula_with_all_weights_written_out():
    weights = rook_weights(12, 6)
    grid = np.random.default_rng(7).uniform(0, 100, (12, 6))

    assert weights.sum() == 252
    assert morans_i(grid) == pytest.approx(morans_i_with_weights(grid, weights), abs=1e-12)


# mean and variance under normality: E = -1/71, Var = 0.00752398 (Cliff & Ord 1981; recomputed with esda
# 2.9.0)
def test_strewn_cells_clump_as_the_theory_of_random_cells_says():
    rng = np.random.default_rng(11)

    found = np.array([morans_i(rng.normal(size=(12, 6))) for _ in range(4000)])

    assert found.mean() == pytest.approx(-1 / 71, abs=0.005)
    assert found.var() == pytest.approx(0.00752398, rel=0.1)
