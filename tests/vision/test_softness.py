"""A tray that is blurred in part is told from one that is sharp, and from one that is blurred all over."""

from dataclasses import replace
from pathlib import Path

import cv2
import numpy as np
import pytest

from vision.corners import Corners, CornersFrom
from vision.light import judge_light
from vision.photo import Photo, Pixels, read_photo
from vision.reason import Reason
from vision.softness import MOST_SOFT_PCT, soft_pct
from vision.topview import TopView, make_top_view

PHOTOS = Path(__file__).parents[1] / "photos"
RIM = ((143.22, 160.6), (1082.35, 237.31), (1112.54, 696.31), (82.34, 678.47))  # handheld.json
CORNERS = Corners(points=RIM, found_by=CornersFrom.HAND, confidence=1.0)


@pytest.fixture(scope="module")
def photo() -> Photo:
    return read_photo(PHOTOS / "handheld.jpg")


@pytest.fixture(scope="module")
def top(photo: Photo) -> TopView:
    return make_top_view(photo, CORNERS)


def blurred(pixels: Pixels, sd: float, where: np.ndarray) -> Pixels:
    soft = cv2.GaussianBlur(pixels, (0, 0), sd)
    return np.where(where[..., None], soft, pixels).astype(np.uint8)


def left_of(pixels: Pixels, share: float) -> np.ndarray:
    _, columns = np.mgrid[: pixels.shape[0], : pixels.shape[1]]
    return np.asarray(columns < share * pixels.shape[1])


def test_a_tray_that_is_sharp_everywhere_has_no_soft_places(top):
    assert soft_pct(top.pixels) < 1


@pytest.mark.parametrize("sd", [2.5, 3.0, 4.0])
def test_a_side_that_is_out_of_focus_is_told(top, sd):
    """By 1.2 to 2 mm; a third of the tray."""
    assert MOST_SOFT_PCT < soft_pct(blurred(top.pixels, sd, left_of(top.pixels, 0.33))) < 40


def test_a_strip_beside_the_rim_is_not_asked_for(top):
    assert soft_pct(blurred(top.pixels, 4.0, left_of(top.pixels, 0.05))) < MOST_SOFT_PCT


def test_what_is_blurred_all_over_is_left_to_sharpness(top):
    assert soft_pct(np.asarray(cv2.GaussianBlur(top.pixels, (0, 0), 3), np.uint8)) < MOST_SOFT_PCT


@pytest.mark.parametrize("light", [0.3, 0.6])
def test_shade_over_a_part_is_no_blur(top, light):
    shaded = np.where(left_of(top.pixels, 0.4)[..., None], top.pixels * light, top.pixels).astype(np.uint8)

    assert soft_pct(shaded) < MOST_SOFT_PCT


def test_a_picture_of_one_colour_tells_nothing():
    assert soft_pct(np.full((508, 1016, 3), 120, np.uint8)) == 0


def test_a_photo_in_portrait_mode_is_used_and_in_doubt(photo):
    part = left_of(photo.pixels, 0.35)
    soft = replace(photo, pixels=blurred(photo.pixels, 3, part))

    light = judge_light(soft, make_top_view(soft, CORNERS), None)

    assert light.refusal is None
    assert light.doubts == (Reason.HIDDEN,)
    assert judge_light(photo, make_top_view(photo, CORNERS), None).doubts == ()
