"""Sharpness and white balance against values worked out elsewhere."""

import cv2
import numpy as np
import pytest

from vision.light import white_balance
from vision.sharpness import laplacian_variance
from vision.station import Patches


def checker(squares: int) -> np.ndarray:
    return (np.indices((squares, squares)).sum(axis=0) % 2 * 255).astype(np.uint8)


# Laplacian variance (Pech-Pacheco et al. 2000, "Diatom autofocusing in brightfield microscopy", ICPR; from
# memory).
# First three: by hand, with the border mirrored about its last pixel.
def test_laplacian_variance_of_a_single_bright_pixel():
    dot = np.zeros((9, 9), np.uint8)
    dot[4, 4] = 1  # -4 in its place, 1 at each of four neighbours: 20 / 81 with a mean of 0

    assert laplacian_variance(dot) == pytest.approx(20 / 81, rel=1e-6)


def test_laplacian_variance_of_a_step():
    step = np.zeros((10, 10), np.uint8)
    step[:, 5:] = 100  # 100 on one side of the edge, -100 on the other: a fifth of the pixels

    assert laplacian_variance(step) == pytest.approx(2000.0, rel=1e-6)


def test_laplacian_variance_of_a_checkerboard():
    assert laplacian_variance(checker(8)) == pytest.approx(1_040_400.0, rel=1e-6)  # (4 x 255) squared


# The "camera" picture that scikit-image carries (0.26.0); values by OpenCV 5.0.0, cv2.Laplacian(p,
# cv2.CV_64F,
# ksize=1).var() of p and of cv2.GaussianBlur(p, (0, 0), sigma)
@pytest.mark.parametrize(("sigma", "expected"), [(0, 1133.163), (1, 49.904), (2, 7.446), (4, 1.698)])
def test_laplacian_variance_of_the_camera_picture_and_of_the_same_blurred(sigma, expected):
    from skimage import data

    picture = data.camera()
    blurred = cv2.GaussianBlur(picture, (0, 0), sigma) if sigma else picture

    assert laplacian_variance(np.asarray(blurred, np.uint8)) == pytest.approx(expected, abs=5e-4)


# Grey card seen as sRGB (200, 180, 150), gains in linear light (IEC 61966-2-1) anchored on green:
# (0.79021205, 1, 1.49649183); a pixel of (90, 130, 60) becomes (80.279, 130.000, 73.539). Worked out
# with the standard's formulas; a table of whole codes rounds them.
def test_white_balance_in_linear_light():
    card = Patches(white=None, grey=(0.57758044, 0.45641102, 0.30498731))

    balanced = white_balance(np.array([[(90, 130, 60), (200, 180, 150)]], np.uint8), card)

    assert balanced[0, 0].tolist() == pytest.approx([80.279, 130.0, 73.539], abs=0.5)
    assert balanced[0, 1].tolist() == [180, 180, 180]
