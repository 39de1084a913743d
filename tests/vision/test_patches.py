"""The tag's white and grey patch: their light, and when they are not believed."""

from dataclasses import replace

import cv2
import numpy as np
import pytest

from tests.vision.profiles import wide_gamut_profile
from vision.light import white_balance
from vision.markers import Marks, Tag, find_marks
from vision.photo import in_srgb
from vision.station import PATCH_SHARE, Patches, patches, station_corners
from vision.topview import make_top_view
from vision.traytype import PATCH_MM, TAG_MARK_MM, WHITE_MM, square


# IEC 61966-2-1 (sRGB): code 232 is 0.806952 of full light, code 124 is 0.201556.
def test_patches_are_mean_linear_light(draw_station):
    station = draw_station()

    found = patches(find_marks(station.grey), station.photo())

    assert found.white == pytest.approx([0.806952] * 3, abs=0.005)
    assert found.grey == pytest.approx([0.201556] * 3, abs=0.003)


def test_patches_of_a_phone_with_wide_colours_are_told_in_the_colours_of_the_top_view(draw_station):
    """Phones write Display P3: read as sRGB, a patch in warm light would be set 5 % off grey."""
    station = draw_station()
    warm = white_balance(
        station.pixels, Patches(white=None, grey=(0.5, 0.6, 1.0))
    )  # 1.2, 1, 0.6 of the light
    photo = replace(station.photo(), pixels=warm, profile=wide_gamut_profile())
    same = replace(photo, pixels=in_srgb(warm, photo.profile), profile=None)
    marks = find_marks(station.grey)

    found, wanted = patches(marks, photo), patches(marks, same)

    assert found.white == pytest.approx(wanted.white, abs=1e-6)
    assert found.grey == pytest.approx(wanted.grey, abs=1e-6)
    top = make_top_view(photo, station_corners(marks, photo))
    inside = white_balance(top.pixels, found)[200:300, 400:600]  # the drawn ground is grey
    assert np.ptp(inside.mean(axis=(0, 1))) < 1.5


def test_a_burnt_white_patch_is_refused_and_the_grey_one_kept(draw_station):
    station = draw_station()
    burnt = np.where(station.pixels > 200, 255, station.pixels).astype(np.uint8)

    found = patches(find_marks(station.grey), replace(station.photo(), pixels=burnt))

    assert found.white is None
    assert found.grey is not None


@pytest.mark.parametrize("share", [0.1, 0.3, 0.6, 1.0])
def test_a_patch_under_a_leaf_is_not_believed_and_the_other_one_is(draw_station, share):
    """Leaves hang over the rim where the tag lies; their green would turn the whole picture purple."""
    station = draw_station()
    marks = find_marks(station.grey)
    leafy = under_a_leaf(station.pixels, marks.tag, WHITE_MM, share)

    found = patches(marks, replace(station.photo(), pixels=leafy))

    assert found.white is None
    assert found.grey == pytest.approx([0.201556] * 3, abs=0.003)


def test_a_shadow_over_half_a_patch_does_not_matter_for_it_has_no_colour(draw_station):
    station = draw_station()
    marks = find_marks(station.grey)
    shady = under_a_leaf(station.pixels, marks.tag, WHITE_MM, 0.5, code=(150, 150, 150))

    found = patches(marks, replace(station.photo(), pixels=shady))

    assert found.white is not None
    assert max(found.white) / min(found.white) == pytest.approx(1.0, abs=0.01)


def test_noise_of_a_dim_photo_does_not_make_a_patch_uneven(draw_station):
    station = draw_station()
    marks = find_marks(station.grey)
    noise = np.random.default_rng(3).normal(0, 8.0, station.pixels.shape)
    dim = np.clip(station.pixels * 0.5 + noise, 0, 255).astype(np.uint8)  # two stops less

    found = patches(marks, replace(station.photo(), pixels=dim))

    assert found.white is not None
    assert found.grey is not None


def under_a_leaf(pixels, tag, middle_mm, share, code=(110, 150, 60)):
    """A leaf from the right over that share of the inner part of a patch."""
    level = square(TAG_MARK_MM)[:, :2].astype(np.float32)
    own = cv2.getPerspectiveTransform(level, np.array(tag.quad, np.float32))
    half = PATCH_MM * PATCH_SHARE / 2
    x, y = middle_mm
    left = x + half - 2 * half * share
    ring = np.array([[(left, y - 8), (x + 20, y - 8), (x + 20, y + 8), (left, y + 8)]], np.float32)
    leaf = cv2.perspectiveTransform(ring, own)[0] - 0.5
    return cv2.fillConvexPoly(pixels.copy(), np.round(leaf).astype(np.int32), code)


def test_patches_of_a_tag_too_small_or_cut_off_are_refused(draw_station):
    station = draw_station()
    photo = station.photo()
    tiny = Tag(number=42, quad=((100, 100), (112, 100), (112, 112), (100, 112)))
    at_the_edge = Tag(number=42, quad=((1540, 100), (1590, 100), (1590, 150), (1540, 150)))

    assert patches(Marks(tag=tiny), photo).white is None
    assert patches(Marks(tag=at_the_edge), photo).white is None


def test_without_a_tag_there_are_no_patches(draw_station):
    station = draw_station(tag=None)

    assert patches(find_marks(station.grey), station.photo()) is None
