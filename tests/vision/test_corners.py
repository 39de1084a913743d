"""Four points become the corners of a tray in one fixed order, whatever order they came in."""

from itertools import permutations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from vision.corners import ANY_TRAY, CornersFrom, by_hand, cut_off, order_by_upright, plausible
from vision.photo import Photo

LYING = [(100.0, 100.0), (500.0, 110.0), (510.0, 310.0), (90.0, 300.0)]  # as the top view wants them
SIZE = (640, 480)


def a_photo(turns: int = 0, size: tuple[int, int] = SIZE) -> Photo:
    return Photo(
        name="tray.jpg",
        digest="0" * 64,
        pixels=np.zeros((size[1], size[0], 3), np.uint8),
        turns=turns,
        profile=None,
        taken_at=None,
        utc_offset=None,
        focal_35mm=None,
        camera=None,
        notes=(),
    )


def turned_about_its_middle(degrees: float) -> list[tuple[float, float]]:
    """The corners of a tray of 400 x 200 px, turned clockwise as seen."""
    angle = np.radians(degrees)
    turn = np.array([[np.cos(angle), -np.sin(angle)], [np.sin(angle), np.cos(angle)]])
    quad = np.array([(-200, -100), (200, -100), (200, 100), (-200, 100)]) @ turn.T + (320, 240)
    return [(float(x), float(y)) for x, y in quad]


@pytest.mark.parametrize("points", list(permutations(LYING)))
def test_any_order_of_the_four_points_gives_the_same_corners(points):
    assert list(order_by_upright(points, 0, SIZE)) == LYING


@given(st.floats(-69, 69))
def test_up_to_seventy_degrees_the_upper_long_side_comes_first(degrees):
    quad = turned_about_its_middle(degrees)

    assert list(order_by_upright(quad[2:] + quad[:2], 0, SIZE)) == quad


@pytest.mark.parametrize("degrees", [-85, 85])
def test_of_a_tray_that_stands_upright_the_left_side_comes_first(degrees):
    ordered = order_by_upright(turned_about_its_middle(degrees), 0, SIZE)

    assert np.mean([x for x, _ in ordered[:2]]) < 320


@pytest.mark.parametrize("turns", [0, 1, 2, 3])
def test_corners_by_hand_are_up_in_the_upright_photo_and_told_in_the_stored_one(turns):
    photo = a_photo(turns)
    width, height = photo.size_upright
    upright = [(0.2 * width, 0.4 * height), (0.8 * width, 0.4 * height)]
    upright += [(0.8 * width, 0.55 * height), (0.2 * width, 0.55 * height)]

    corners = by_hand(upright[::-1], photo)

    first = {0: (0.2 * 640, 0.4 * 480), 1: (0.4 * 640, 480 - 0.2 * 480)}
    first |= {2: (640 - 0.2 * 640, 480 - 0.4 * 480), 3: (640 - 0.4 * 640, 0.2 * 480)}
    assert corners.points[0] == pytest.approx(first[turns])
    assert corners.found_by is CornersFrom.HAND
    assert corners.confidence == 1.0


def test_three_points_are_a_mistake_of_ours():
    with pytest.raises(ValueError, match="four corners; got 3"):
        order_by_upright(LYING[:3], 0, SIZE)


def test_a_tray_is_plausible_either_way_round():
    assert plausible(LYING, SIZE)
    assert plausible(LYING[::-1], SIZE)
    assert plausible(turned_about_its_middle(40), SIZE)


@pytest.mark.parametrize(
    "points",
    [
        pytest.param([LYING[0], LYING[2], LYING[1], LYING[3]], id="crossed"),
        pytest.param([(100, 100), (500, 100), (300, 150), (100, 300)], id="dented"),
        pytest.param([(0, 0), (30, 0), (30, 15), (0, 15)], id="tiny"),
        pytest.param([(100, 100), (300, 100), (300, 300), (100, 300)], id="square"),
        pytest.param([(10, 100), (630, 100), (630, 200), (10, 200)], id="a shelf"),
        pytest.param([(200, 100), (300, 100), (600, 300), (20, 300)], id="a road"),
        pytest.param([(-200, 100), (500, 110), (510, 310), (-190, 300)], id="beyond the photo"),
        pytest.param([(float("nan"), 100), *LYING[1:]], id="no number"),
    ],
)
def test_what_cannot_be_a_tray_is_not_plausible(points):
    assert not plausible(points, SIZE)


def test_by_hand_a_square_tray_is_one_too():
    square = [(100.0, 100.0), (300.0, 100.0), (300.0, 300.0), (100.0, 300.0)]
    crossed = [square[0], square[2], square[1], square[3]]

    assert plausible(square, SIZE, ANY_TRAY)
    assert not plausible(crossed, SIZE, ANY_TRAY)


@given(st.floats(-40, 40), st.floats(-3, 3), st.floats(-3, 3), st.permutations(range(4)))
def test_a_square_tray_is_never_a_quarter_turn_off_for_a_few_pixels(degrees, wider, higher, order):
    angle = np.radians(degrees)
    turn = np.array([[np.cos(angle), -np.sin(angle)], [np.sin(angle), np.cos(angle)]])
    half = np.array([100 + wider, 100 + higher])
    quad = [tuple(p) for p in np.array([(-1, -1), (1, -1), (1, 1), (-1, 1)]) * half @ turn.T + (320, 240)]

    assert list(order_by_upright([quad[k] for k in order], 0, SIZE)) == quad


@pytest.mark.parametrize("turn", [1, -1])
@pytest.mark.parametrize("begin", range(4))
@pytest.mark.parametrize(
    ("left", "share"), [(10.0, 0.0), (0.0, 0.0), (-40.0, 0.1), (-200.0, 0.5), (600.0, 0.9), (700.0, 1.0)]
)
def test_how_much_of_a_tray_the_photo_does_not_show_is_told(left, share, begin, turn):
    quad = [(left, 100.0), (left + 400, 100.0), (left + 400, 300.0), (left, 300.0)]

    assert cut_off((quad[begin:] + quad[:begin])[::turn], SIZE) == pytest.approx(share, abs=1e-6)


def test_how_far_outside_the_photo_a_corner_may_lie_is_said():
    quad = [(-120.0, 100.0), (380.0, 110.0), (390.0, 310.0), (-110.0, 300.0)]

    assert not plausible(quad, SIZE, ANY_TRAY)
    assert plausible(quad, SIZE, ANY_TRAY, outside=0.25)
