import pytest
from hypothesis import given
from hypothesis import strategies as st

from gui.photo.viewport import Viewport

WIDE = Viewport(picture=(4000, 3000), window=(800, 600)).fitted()


def test_a_fitted_picture_just_fills_the_window():
    assert WIDE.zoom == pytest.approx(0.2)
    assert WIDE.to_window(0, 0) == pytest.approx((0, 0))
    assert WIDE.to_window(4000, 3000) == pytest.approx((800, 600))


def test_a_fitted_picture_stays_fitted_when_the_window_grows():
    assert WIDE.resized(1600, 1200).zoom == pytest.approx(0.4)


def test_looking_closer_keeps_the_point_under_the_cursor():
    before = WIDE.to_picture(200, 150)

    closer = WIDE.zoomed(4, 200, 150)

    assert closer.zoom == pytest.approx(0.8)
    assert closer.to_picture(200, 150) == pytest.approx(before)


def test_no_empty_border_is_pushed_into_the_window():
    pushed = WIDE.zoomed(4, 400, 300).moved(10_000, 10_000)

    assert pushed.to_window(0, 0) == pytest.approx((0, 0))


def test_one_cannot_step_back_further_than_the_whole_picture():
    assert WIDE.zoomed(3, 10, 10).zoomed(0.01, 700, 500) == WIDE


def test_a_margin_leaves_room_around_the_picture():
    roomy = Viewport(picture=(4000, 3000), window=(800, 600), margin=30).fitted()

    assert roomy.to_window(0, 0)[1] == pytest.approx(30)


places = st.floats(-2000, 2000)


@given(zoom=st.floats(0.1, 50), x=st.floats(0, 800), y=st.floats(0, 600), right=places, down=places)
def test_wherever_one_goes_the_window_is_full_and_points_come_back(zoom, x, y, right, down):
    view = WIDE.zoomed(zoom, x, y).moved(right, down)

    left, top = view.to_window(0, 0)
    far_right, bottom = view.to_window(4000, 3000)
    assert left <= 1e-6
    assert top <= 1e-6
    assert far_right >= 800 - 1e-6
    assert bottom >= 600 - 1e-6
    assert view.to_window(*view.to_picture(x, y)) == pytest.approx((x, y), abs=1e-6)


def test_room_around_the_picture_makes_the_whole_of_it_smaller_and_is_seen_on_all_sides() -> None:
    view = Viewport(picture=(800, 600), window=(800, 600)).fitted()

    roomy = view.with_room(200)

    assert roomy.is_fitted
    assert roomy.zoom < view.zoom
    assert roomy.to_window(-200, -200)[0] >= 0
    assert roomy.to_window(1000, 800)[1] <= 600
    assert roomy.with_room(0) == view


def test_from_close_by_the_room_around_the_picture_can_be_pushed_into_sight() -> None:
    view = Viewport(picture=(800, 600), window=(800, 600)).fitted().zoomed(4, 400, 300)

    far = view.with_room(200).moved(1e6, 0)

    assert far.zoom == view.zoom
    assert far.to_picture(0, 0)[0] == pytest.approx(-200)
