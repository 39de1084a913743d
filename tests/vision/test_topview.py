"""The top view shows the inner area where it is, at 2 px/mm, as sharp as it was and no sharper."""

from dataclasses import replace
from io import BytesIO

import cv2
import numpy as np
import pytest
from PIL import Image

from vision.camera import homography
from vision.corners import Corners, CornersFrom
from vision.photo import Photo, decode_photo
from vision.topview import TOP_HEIGHT, TOP_WIDTH, make_top_view, tray_quad

TILTED = ((110.0, 95.0), (905.0, 140.0), (960.0, 570.0), (60.0, 520.0))


def a_photo(pixels: np.ndarray, **special) -> Photo:
    tiny = BytesIO()
    Image.new("RGB", (64, 64)).save(tiny, "PNG")
    return replace(decode_photo(tiny.getvalue(), "tray.png"), pixels=pixels, **special)


def corners_at(points, **special) -> Corners:
    return Corners(points=tuple(points), found_by=CornersFrom.HAND, confidence=1.0, **special)


def whole(width: int, height: int) -> Corners:
    return corners_at([(0.0, 0.0), (width, 0.0), (width, height), (0.0, height)])


def a_tray_seen_through(points, size=(1000, 640), lens=(0.0, 0.0)) -> np.ndarray:
    """A photo whose red and green tell where on the tray each pixel looks: top-view x / 4 and y / 2."""
    to_top = np.linalg.inv(
        homography(np.array([(0, 0), (1016, 0), (1016, 508), (0, 508)], float), np.array(points))
    )
    x, y = np.meshgrid(np.arange(size[0]) + 0.5, np.arange(size[1]) + 0.5)
    middle, reach = np.array(size) / 2, np.hypot(*size) / 2
    bent = np.stack([x - middle[0], y - middle[1]]) / reach
    straight = bent
    for _ in range(30):
        square = (straight**2).sum(axis=0)
        straight = bent / (1 + lens[0] * square + lens[1] * square**2)
    x, y = straight * reach + middle[:, None, None]
    across, down, below = (to_top[k, 0] * x + to_top[k, 1] * y + to_top[k, 2] for k in range(3))
    place = np.stack([across / below / 4, down / below / 2, np.full_like(x, 100)], axis=-1)
    return np.clip(np.rint(place), 0, 255).astype(np.uint8)


def places_shown(top: np.ndarray) -> np.ndarray:
    """Where on the tray the top view's inner pixels say that they look, top-view px, less where they are."""
    rows, columns = np.mgrid[20 : TOP_HEIGHT - 20, 20 : TOP_WIDTH - 20]
    inner = top[20 : TOP_HEIGHT - 20, 20 : TOP_WIDTH - 20].astype(float)
    return np.stack([inner[..., 0] * 4 - columns - 0.5, inner[..., 1] * 2 - rows - 0.5])


def test_a_photo_that_is_a_top_view_already_stays_in_its_place():
    ramp = np.tile(np.linspace(0, 254, TOP_WIDTH).astype(np.uint8)[None, :, None], (TOP_HEIGHT, 1, 3))

    top = make_top_view(a_photo(ramp), whole(TOP_WIDTH, TOP_HEIGHT))

    np.testing.assert_allclose(top.pixels.astype(int), ramp, atol=1)
    assert top.photo_px_per_mm == pytest.approx(2.0)


def test_every_place_of_a_tilted_tray_is_shown_where_it_is():
    top = make_top_view(a_photo(a_tray_seen_through(TILTED)), corners_at(TILTED))

    off = places_shown(top.pixels)

    assert np.abs(off.mean(axis=(1, 2))).max() < 0.3  # no half pixel; averaging four codes rounds up
    assert np.abs(off).max() < 3.5  # of which 2 is the step of the codes


def test_a_lens_that_bends_is_straightened():
    lens = (0.04, 0.02)
    middle, reach = np.array((500, 320)), np.hypot(1000, 640) / 2
    straight = (np.array(TILTED) - middle) / reach
    square = (straight**2).sum(axis=1, keepdims=True)
    bent = straight * (1 + lens[0] * square + lens[1] * square**2) * reach + middle
    photo = a_photo(a_tray_seen_through(TILTED, lens=lens))

    known = places_shown(make_top_view(photo, corners_at(map(tuple, bent), lens=lens)).pixels)
    ignored = places_shown(make_top_view(photo, corners_at(map(tuple, bent))).pixels)

    assert np.abs(known).max() < 3.5
    assert np.abs(ignored).max() > 5


def test_the_lens_of_a_cropped_photo_is_straightened_about_the_place_that_the_camera_looked_at():
    """About the middle of what is left, places came out up to 0.7 mm aside on crops of rendered photos."""
    lens, left, top = (0.14, 0.02), 0, 60
    middle, reach = np.array((500, 320)), np.hypot(1000, 640) / 2
    straight = (np.array(TILTED) - middle) / reach
    square = (straight**2).sum(axis=1, keepdims=True)
    bent = straight * (1 + lens[0] * square + lens[1] * square**2) * reach + middle
    whole = a_tray_seen_through(TILTED, lens=lens)
    part = a_photo(np.ascontiguousarray(whole[top:, left:930]))
    # radii count in half diagonals of the photo that is left
    smaller = np.hypot(*part.size_stored) / 2 / reach
    own = (lens[0] * smaller**2, lens[1] * smaller**4)
    points = [(float(x - left), float(y - top)) for x, y in bent]
    axis = (500.0 - left, 320.0 - top)

    known = places_shown(make_top_view(part, corners_at(points, lens=own, axis_px=axis)).pixels)
    taken_for_its_middle = places_shown(make_top_view(part, corners_at(points, lens=own)).pixels)

    seen = np.s_[:, :, : 930 - 60]  # what the crop has left of the tray
    assert np.abs(known[seen]).max() < 3.6
    assert np.abs(taken_for_its_middle[seen]).max() > 5


def test_a_turn_asked_for_by_the_camera_costs_nothing_and_changes_nothing():
    upright = a_tray_seen_through(TILTED)
    stored = np.ascontiguousarray(np.rot90(upright))  # a quarter turn back
    points = [(y, 1000 - x) for x, y in TILTED]

    as_stored = make_top_view(a_photo(stored, turns=1), corners_at(points))
    as_upright = make_top_view(a_photo(upright), corners_at(TILTED))

    assert np.abs(as_stored.pixels.astype(int) - as_upright.pixels).max() <= 1


@pytest.mark.parametrize("shrink", [1.3, 2.8, 3.4, 4.5])
def test_a_large_photo_is_averaged_and_not_thinned_out(shrink):
    size = (round(TOP_WIDTH * shrink), round(TOP_HEIGHT * shrink))
    noise = np.random.default_rng(0).integers(0, 256, (size[1], size[0], 3), np.uint8)
    texture = np.asarray(cv2.GaussianBlur(noise, (0, 0), 0.7), np.uint8)
    truth = cv2.resize(texture, (TOP_WIDTH, TOP_HEIGHT), interpolation=cv2.INTER_AREA).astype(float)

    top = make_top_view(a_photo(texture), whole(*size)).pixels.astype(float)

    rmse = np.sqrt(np.mean((top - truth) ** 2))
    sharp = cv2.Laplacian(top, cv2.CV_64F).var() / cv2.Laplacian(truth, cv2.CV_64F).var()
    assert rmse < 3.0  # of noise with a deviation of 40; a plain warp has 12 and more
    assert 0.75 < sharp < 1.25  # a plain warp has 2.7 and more


def test_a_part_of_the_tray_outside_the_photo_is_black():
    photo = a_photo(np.full((300, 400, 3), 200, np.uint8))

    top = make_top_view(photo, corners_at([(-200.0, 50.0), (350.0, 50.0), (350.0, 250.0), (-200.0, 250.0)]))

    assert top.pixels[250, 20].tolist() == [0, 0, 0]
    assert top.pixels[250, 900].tolist() == [200, 200, 200]


def test_the_scale_told_is_the_least_one():
    far_side_small = ((300.0, 100.0), (700.0, 100.0), (900.0, 500.0), (100.0, 500.0))

    top = make_top_view(a_photo(np.zeros((600, 1000, 3), np.uint8)), corners_at(far_side_small))

    assert top.photo_px_per_mm < 400 / 508


def test_tilt_is_that_of_the_corners_where_it_was_solved():
    photo = a_photo(a_tray_seen_through(TILTED))

    assert make_top_view(photo, corners_at(TILTED, tilt_deg=12.5)).tilt_deg == 12.5
    assert make_top_view(photo, corners_at(TILTED)).tilt_deg is not None


def test_three_corners_on_a_line_are_a_mistake_of_ours():
    with pytest.raises(ValueError, match="one line"):
        make_top_view(
            a_photo(np.zeros((600, 1000, 3), np.uint8)),
            corners_at([(0.0, 0.0), (10.0, 10.0), (20.0, 20.0), (0.0, 20.0)]),
        )


def test_the_tray_can_be_found_back_in_the_photo():
    top = make_top_view(a_photo(a_tray_seen_through(TILTED)), corners_at(TILTED))

    np.testing.assert_allclose(tray_quad(top), TILTED, atol=1e-6)
    assert (tray_quad(top, 1.1)[0] < TILTED[0]).all()
