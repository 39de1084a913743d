"""A lens bends a flat picture; what it has bent is laid flat again (against OpenCV: `tests/published`)."""

import numpy as np
import pytest

from vision.lens import Bend

SIZE = (2016, 1512)
PLACES = np.array([[1008.0, 756.0], [1500.0, 200.0], [30.0, 40.0], [2000.0, 900.0]])


@pytest.mark.parametrize("terms", [(0.0, 0.0), (-0.05, 0.012), (0.045, -0.015)])
def test_what_a_lens_has_bent_is_laid_flat_again(terms):
    lens = Bend.of(terms, SIZE)
    assert lens.freed(lens.bent(PLACES)) == pytest.approx(PLACES, abs=1e-6)


def test_a_corner_of_the_photo_moves_by_the_sum_of_the_terms():
    """In a corner r is 1, so r_d = 1 + k1 + k2 (Brown 1971)."""
    corner = Bend.of((0.03, -0.01), SIZE).bent(np.array([[2016.0, 0.0]]))
    assert corner == pytest.approx(np.array([[1008 * 2.02, 756 - 756 * 1.02]]))


def test_the_middle_of_the_lens_stays_where_a_crop_has_put_it():
    lens = Bend.of((0.04, 0.0), SIZE, (700.0, 900.0))
    assert lens.bent(np.array([[700.0, 900.0]])) == pytest.approx(np.array([[700.0, 900.0]]))


def test_in_a_photo_made_smaller_the_lens_does_the_same():
    lens = Bend.of((0.04, -0.01), SIZE)
    assert lens.scaled(0.25).bent(PLACES / 4) == pytest.approx(lens.bent(PLACES) / 4)
