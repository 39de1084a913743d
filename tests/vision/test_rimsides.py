"""Moves of a laid inner area: what they must be by projective geometry, and what is had of them."""

import math

import cv2
import numpy as np
import pytest

from vision.framefit import CORNERS_MM, through
from vision.lens import Bend
from vision.pose import Pose
from vision.rimsides import MOVES, Beside, Laid
from vision.traytype import TrayType

RIM = TrayType().inner_corners()
SIZE = (4032, 3024)


def camera(tilt_deg: float, focal_px: float = 3000.0, aside: tuple[float, float] = (0.0, 0.0)) -> Pose:
    level = np.diag([1.0, -1.0, -1.0])
    turn = cv2.Rodrigues(np.array([0.6, 0.8, 0.0]) * math.radians(tilt_deg))[0] @ level
    return Pose(
        turn=np.asarray(turn, float),
        shift=np.array([20.0, -9.0, 640.0]),
        focal_px=focal_px,
        size=SIZE,
        aside=aside,
    )


def test_the_corners_of_an_unmoved_area_stay():
    laid = Laid(camera(7.0).project(RIM))
    assert laid.moved(np.zeros(4)).corners == pytest.approx(laid.corners)


@pytest.mark.parametrize("tilt_deg", [0.0, 9.0, 30.0])
@pytest.mark.parametrize("height_mm", [-60.4, 35.0])
def test_from_one_level_plane_to_another_a_move_without_turn_is_all_there_is(tilt_deg, height_mm):
    """Hartley & Zisserman 2004, section 8.4 (from memory): parallel planes share their vanishing line."""
    pose = camera(tilt_deg)
    rim, other = Laid(pose.project(RIM)), Laid(pose.project(RIM + np.array([0.0, 0.0, height_mm])))

    move = other.move_to(rim)

    assert np.abs(other.moved(move).corners - rim.corners).max() < 0.01
    assert move[3] == pytest.approx(0.0, abs=1e-6)


@pytest.mark.parametrize("move", [(5.0, 0.0, 0.0, 0.0), (0.0, -4.0, 3.0, 0.0), (1.0, 2.0, -6.0, 2.0)])
def test_a_move_is_found_again(move):
    laid = Laid(camera(8.0).project(RIM))
    assert laid.move_to(laid.moved(np.array(move))) == pytest.approx(move, abs=0.05)


def test_a_shift_to_the_right_by_a_millimetre_shows_on_left_and_right_alone():
    laid = Laid(CORNERS_MM + 300.0)
    beside = laid.beside(laid.moved(np.array([1.0, 0.0, 0.0, 0.0])))
    assert beside == pytest.approx([0, 0, 0, 0, 1, 1, 1, 1])


def test_a_leaf_taken_for_half_a_side_pulls_the_move_little():
    true = np.array([3.0, -2.0, 1.0, 0.0])
    off = MOVES @ true
    off[6] += 12.0
    seen = Beside(off, np.ones(8))

    move, covariance = seen.move(np.zeros(4), np.diag([30.0] * 4) ** 2)

    assert np.abs(move - true).max() < 1.5
    assert np.linalg.eigvalsh(covariance).min() > 0


def test_what_is_not_seen_is_as_expected():
    blind = Beside(np.full(8, 7.0), np.full(8, 1e6))
    expected = np.array([2.0, 1.0, 0.0, -1.0])

    move, _ = blind.move(expected, np.eye(4))

    assert move == pytest.approx(expected, abs=1e-3)


@pytest.mark.parametrize(("right_px", "inside"), [(0.0, True), (300.0, False)])
def test_a_rim_beyond_the_photo_is_told(right_px, inside):
    laid = Laid(camera(0.0).project(RIM) + np.array([right_px * 4, 0.0]))
    assert laid.within(SIZE) is inside


def test_sides_that_a_lens_has_bent_lie_straight_in_the_tray():
    bend = Bend.of((-0.035, 0.004), SIZE)
    flat = camera(7.0)
    x = np.linspace(-250.0, 250.0, 11)
    lower = np.column_stack([x, np.full(11, 127.0)])
    laid = Laid(bend.bent(flat.project(RIM)), bend)
    seen = bend.bent(through(Laid(flat.project(RIM)).matrix, lower))

    straight = Laid(laid.corners).places_of(seen)

    assert laid.places_of(seen) == pytest.approx(lower, abs=0.01)
    assert np.ptp(straight[:, 1]) > 0.8
    assert laid.scaled(0.25).places_of(seen / 4) == pytest.approx(lower, abs=0.01)
