"""Homography, scale, self-calibration and parallax against values worked out elsewhere."""

import cv2
import numpy as np
import pytest
from skimage.transform import ProjectiveTransform

from vision.camera import focal_from_plane, homography, local_scale, tilt_deg
from vision.pose import Pose

# Hartley & Zisserman (2004) Multiple View Geometry, section 4.1: four points, last element 1 (from memory).
# Expected values: an 8 x 8 system solved apart, OpenCV 5.0.0 and scikit-image 0.26.0 agreed on all digits
# shown.
TRAY_MM = np.array([(0, 0), (254, 0), (254, 508), (0, 508)], float)
PHOTO_PX = np.array([(310, 220), (1210, 260), (1330, 2100), (180, 2040)], float)


def test_homography_of_the_worked_example():
    expected = [
        [3.52523509, -0.332793663, 310],
        [0.153597075, 2.71127812, 220],
        [-1.49355382e-5, -4.27156393e-4, 1],
    ]

    np.testing.assert_allclose(homography(TRAY_MM, PHOTO_PX), expected, rtol=2e-6)


def test_the_tray_s_middle_in_the_worked_example():
    u, v, w = homography(TRAY_MM, PHOTO_PX) @ (127, 254, 1)

    assert (u / w, v / w) == pytest.approx((756.71215, 1043.35181), abs=1e-4)


def test_homography_agrees_with_two_libraries():
    ours = homography(TRAY_MM, PHOTO_PX)

    theirs = cv2.getPerspectiveTransform(TRAY_MM.astype(np.float32), PHOTO_PX.astype(np.float32))
    others = ProjectiveTransform.from_estimate(TRAY_MM, PHOTO_PX)

    np.testing.assert_allclose(ours, theirs, rtol=1e-6)
    np.testing.assert_allclose(ours, others.params / others.params[2, 2], rtol=1e-6)


def test_least_local_scale_of_the_worked_example():
    matrix = homography(TRAY_MM, PHOTO_PX)

    assert min(local_scale(matrix, x, y)[0] for x, y in TRAY_MM) == pytest.approx(2.79456, abs=1e-5)
    assert local_scale(matrix, 254, 0)[0] == pytest.approx(2.79456, abs=1e-5)


@pytest.mark.parametrize(("x", "y"), [(127.0, 254.0), (20.0, 400.0)])
def test_local_scale_is_the_derivative_of_what_a_library_projects(x, y):
    matrix = homography(TRAY_MM, PHOTO_PX)
    step = 1e-3
    around = np.array([[(x + step, y), (x - step, y), (x, y + step), (x, y - step)]])

    right, left, down, up = cv2.perspectiveTransform(around, matrix)[0]  # OpenCV 5.0.0
    jacobian = np.column_stack([right - left, down - up]) / (2 * step)
    greatest, least = np.linalg.svd(jacobian, compute_uv=False)

    area = np.sqrt(abs(np.linalg.det(jacobian)))
    assert local_scale(matrix, x, y) == pytest.approx((least, greatest, area), rel=1e-6)


# Zhang (2000) A flexible new technique for camera calibration, IEEE Trans. PAMI 22, 1330-1334 (from
# memory): f 3000 px,
# middle (2000, 1500), 700 mm to the tray's middle, tilt 10 degrees, azimuth 20 degrees gives these corners.
def test_focal_length_and_tilt_come_back_from_four_rounded_corners():
    corners = np.array([(1850.38, 219.69), (2928.76, 634.00), (2130.05, 2612.83), (1157.05, 2285.98)])

    plane = homography(TRAY_MM, corners)

    assert focal_from_plane(plane, (4000, 3000)) == pytest.approx(3000, abs=2)
    assert tilt_deg(plane, (4000, 3000), None) == pytest.approx(10.0, abs=0.02)


# Similar triangles: a leaf h above the tray, r from the point below the lens, Z from it, moves outwards by
# r h / (Z - h) and looks (Z / (Z - h)) squared larger in area. Z 700, h 50, r 254 mm: 19.54 mm; 1.160.
def straight_down(height_mm: float) -> Pose:
    turn = np.diag([1.0, -1.0, -1.0])
    return Pose(turn=turn, shift=np.array([0.0, 0.0, height_mm]), focal_px=700.0, size=(1000, 1000))


def test_a_leaf_above_the_tray_is_seen_further_out():
    seen = straight_down(700.0).project(np.array([(254.0, 0.0, 50.0), (254.0, 0.0, 0.0)]))

    assert seen[0, 0] - seen[1, 0] == pytest.approx(19.54, abs=0.01)  # 1 px is 1 mm in the tray's plane


def test_a_leaf_above_the_tray_looks_larger():
    square = np.array([(0.0, 0.0), (10.0, 0.0), (10.0, 10.0), (0.0, 10.0)])

    def area(height_mm: float) -> float:
        seen = straight_down(700.0).project(np.column_stack([square, np.full(4, height_mm)]))
        return float(cv2.contourArea(seen.astype(np.float32)))

    assert area(50.0) / area(0.0) == pytest.approx(1.160, abs=0.001)
