"""Focal length and tilt come out of four corners as they went in."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from vision.camera import focal_from_exif, focal_from_plane, homography, local_scale, tilt_deg

SIZE = (4032, 3024)
TRAY = np.array([(-254, -127), (254, -127), (254, 127), (-254, 127)], float)


def seen(tilt: float, azimuth: float, focal: float, distance: float = 700.0) -> np.ndarray:
    """Corners as a camera over the tray's middle sees them; the tray is tilted about an axis in its plane."""
    t, a = np.radians([tilt, azimuth])
    axis = np.array([np.cos(a), np.sin(a), 0])
    cross = np.array([[0, -axis[2], axis[1]], [axis[2], 0, -axis[0]], [-axis[1], axis[0], 0]])
    turn = np.eye(3) + np.sin(t) * cross + (1 - np.cos(t)) * cross @ cross
    there = np.column_stack([TRAY, np.zeros(4)]) @ turn.T + (0, 0, distance)
    return focal * there[:, :2] / there[:, 2:] + np.array(SIZE) / 2


@given(st.floats(8, 40), st.floats(0, 360), st.floats(2200, 4500))
def test_a_tilted_tray_tells_focal_length_and_tilt(tilt, azimuth, focal):
    plane = homography(TRAY, seen(tilt, azimuth, focal))

    assert focal_from_plane(plane, SIZE) == pytest.approx(focal, rel=1e-3)
    assert tilt_deg(plane, SIZE, None) == pytest.approx(tilt, abs=0.05)


def test_a_tray_seen_straight_on_cannot_tell_the_focal_length_and_has_no_tilt():
    plane = homography(TRAY, seen(0.0, 0.0, 3000.0))

    assert focal_from_plane(plane, SIZE) is None
    assert tilt_deg(plane, SIZE, None) == pytest.approx(0.0, abs=0.05)


def test_the_camera_s_own_focal_length_goes_before():
    plane = homography(TRAY, seen(10.0, 20.0, 3000.0))
    film_mm = 3000.0 * 43.267 / np.hypot(*SIZE)

    assert tilt_deg(plane, SIZE, film_mm) == pytest.approx(10.0, abs=0.05)
    assert tilt_deg(plane, SIZE, 1.1 * film_mm) > 10.5  # a wrong one would show


def test_a_focal_length_on_film_is_as_many_diagonals_long_in_the_photo():
    assert focal_from_exif(43.267, (300, 400)) == pytest.approx(500)


def test_scale_of_a_plane_seen_straight_on_is_the_same_all_over():
    plane = homography(TRAY, 3 * TRAY + 1000)

    assert local_scale(plane, 100.0, -50.0) == pytest.approx((3.0, 3.0, 3.0))


@pytest.mark.parametrize("points", [[(0, 0), (1, 1), (2, 2), (0, 2)], [(0, 0), (1, 0), (1, 0), (0, 1)]])
def test_corners_on_one_line_are_a_mistake(points):
    with pytest.raises(ValueError, match="one line"):
        homography(TRAY, np.array(points, float))
