"""Measures of evenness at the edges of what they are defined for."""

import numpy as np
import pytest

from vision.cells import christiansen, low_quarter, mean_of, variation


@pytest.mark.parametrize("measure", [christiansen, low_quarter, variation])
def test_a_bare_grid_has_no_evenness(measure):
    assert measure(np.zeros((6, 12))) is None


def test_one_cell_varies_from_nothing_and_two_already_tell():
    """n - 1 in the denominator: one value has no standard deviation (textbook definition)."""
    assert variation(np.array([40.0])) is None
    assert variation(np.array([30.0, 50.0])) == pytest.approx(100 * 200**0.5 / 40)


def test_a_mean_of_one_percent_is_no_bare_tray():
    thin = np.array([0.0, 0.0, 1.0, 3.0])

    assert christiansen(thin) == pytest.approx(0.0)  # mean 1, mean deviation (1 + 1 + 0 + 2) / 4
    assert low_quarter(thin) == 0.0
    assert variation(thin) == pytest.approx(100 * 2**0.5)


@pytest.mark.parametrize("few", [1, 2, 3])
def test_of_fewer_than_four_cells_the_lowest_one_is_the_low_quarter(few):
    cells = np.array([20.0, 30.0, 70.0])[:few]

    assert low_quarter(cells) == pytest.approx(100 * 20 / cells.mean())


@pytest.mark.parametrize("cells", [np.array([]), np.array([50.0, np.nan]), np.array([50.0, np.inf])])
def test_no_mean_is_told_of_no_cells_or_of_one_that_is_no_number(cells):
    with pytest.raises(ValueError, match="finite values are needed"):
        mean_of(cells)
