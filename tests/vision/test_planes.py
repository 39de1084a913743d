"""Shapes in masks have the sizes that are told of them."""

import numpy as np
import pytest

from vision.planes import disc, mm_from_edge, outline_of


def test_the_distance_from_the_edge_is_that_of_the_pixel_s_centre_to_its_nearest_side():
    away = mm_from_edge((4, 6), 2.0)

    assert away.shape == (4, 6)
    assert away[0].tolist() == [0.25] * 6
    assert away[1].tolist() == [0.25, 0.75, 0.75, 0.75, 0.75, 0.25]
    assert (away == away[::-1, ::-1]).all()


@pytest.mark.parametrize(("width_mm", "side"), [(0.0, 1), (0.4, 1), (1.0, 3), (3.0, 7), (16.0, 33)])
def test_a_disc_is_as_wide_as_it_is_told_and_odd(width_mm, side):
    assert disc(width_mm, 2.0).shape == (side, side)
    assert disc(width_mm, 2.0).max() == 1


def test_an_outline_runs_through_the_border_pixels_of_the_largest_piece():
    piece = np.zeros((20, 30), np.bool_)
    piece[5:15, 4:24] = True
    piece[0, 0] = True

    assert sorted(outline_of(piece).tolist()) == [[4, 5], [4, 14], [23, 5], [23, 14]]
