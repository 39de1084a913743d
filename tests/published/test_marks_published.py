"""Marks and pose against what others print or compute."""

import cv2
import numpy as np
import pytest

from vision.markers import bits
from vision.pose import Pose

FRAME_FREE = (slice(1, -1), slice(1, -1))


# Olson (2011) AprilTag: A robust and flexible visual fiducial system, ICRA: the family 36h11 has 36 bits and
# a least Hamming distance of 11 over all turns; it has 587 codes (from memory; the codes are OpenCV 5's).
def test_36h11_numbers_differ_in_at_least_eleven_modules_however_they_are_turned():
    codes = np.stack([bits(number)[FRAME_FREE] for number in range(587)])
    flat = codes.reshape(587, 36).astype(int)
    nearest = 36
    for quarter in range(4):
        turned = np.rot90(codes, quarter, axes=(1, 2)).reshape(587, 36).astype(int)
        apart = flat @ (1 - turned.T) + (1 - flat) @ turned.T
        if quarter == 0:
            np.fill_diagonal(apart, 36)
        nearest = min(nearest, int(apart.min()))

    assert nearest == 11


def test_there_are_587_numbers_and_no_more():
    assert bits(586).shape == (8, 8)
    with pytest.raises(ValueError, match="0 to 586"):
        bits(587)
    with pytest.raises(ValueError, match="0 to 586"):
        bits(-1)


def test_a_printed_pattern_has_a_black_frame_and_is_read_back_by_the_reference_library():
    for number in (0, 3, 10, 586):
        pattern = bits(number)
        frame = np.ones((8, 8), bool)
        frame[FRAME_FREE] = False
        assert pattern[frame].all()
        printed = np.pad(np.kron(~pattern, np.ones((12, 12))).astype(np.uint8) * 255, 40, constant_values=255)
        dictionary = cv2.aruco.getPredefinedDictionary(cv2.aruco.DICT_APRILTAG_36h11)
        _, numbers, _ = cv2.aruco.ArucoDetector(dictionary).detectMarkers(printed)  # OpenCV 5
        assert numbers.ravel().tolist() == [number]


# Brown (1971) r' = r (1 + k1 r^2 + k2 r^4). OpenCV's projectPoints takes the radius in focal lengths, ours is
# in half diagonals: k1 (f / half)^2, k2 (f / half)^4.
def test_projection_agrees_with_the_reference_library_through_a_bent_lens():
    turn = cv2.Rodrigues(np.array([3.0, 0.2, -0.1]))[0]
    shift = np.array([10.0, -20.0, 650.0])
    size, focal, lens = (2016, 1512), 1500.0, (-0.03, 0.012)
    places = np.array([[-254.0, 127, 0], [254, 127, 0], [220, -217, -60.4], [0, 0, 40]])

    ours = Pose(turn=turn, shift=shift, focal_px=focal, size=size, lens=lens).project(places)

    per_half = focal / (np.hypot(*size) / 2)
    bend = np.array([lens[0] * per_half**2, lens[1] * per_half**4, 0, 0, 0])
    matrix = np.array([[focal, 0, size[0] / 2], [0, focal, size[1] / 2], [0, 0, 1.0]])
    theirs, _ = cv2.projectPoints(places, cv2.Rodrigues(turn)[0], shift, matrix, bend)
    np.testing.assert_allclose(ours, theirs.reshape(-1, 2), atol=1e-6)
