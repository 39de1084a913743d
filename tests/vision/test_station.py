"""Rim corners, confidence and patches: a drawn station whose camera is known, and two rendered photos."""

import json
import math
from dataclasses import replace
from pathlib import Path

import cv2
import numpy as np
import pytest

from tests.vision.profiles import wide_gamut_profile
from vision.camera import focal_from_exif
from vision.corners import CornersFrom
from vision.light import white_balance
from vision.markers import Marks, Tag, find_marks
from vision.photo import grey, in_srgb, read_photo
from vision.pose import EXIF_SPREAD, usual_focal
from vision.station import PATCH_SHARE, Patches, confidence, patches, station_corners
from vision.topview import make_top_view
from vision.traytype import PATCH_MM, TAG_MARK_MM, WHITE_MM, square

PHOTOS = Path(__file__).parent.parent / "photos"
SURE = 0.5


def only(marks: Marks, cards: tuple[int, ...], *, tag: bool) -> Marks:
    return Marks(cards={n: marks.cards[n] for n in cards}, tag=marks.tag if tag else None)


def test_four_cards_and_a_tag_give_the_rim_within_a_millimetre(draw_station):
    station = draw_station()

    corners = station_corners(find_marks(station.grey), station.photo())

    assert corners.found_by is CornersFrom.STATION
    assert station.worst_mm(corners.points) < 1.0
    assert corners.confidence > 0.9
    assert corners.tilt_deg == pytest.approx(7.0, abs=0.4)


def test_a_homography_through_the_low_cards_would_be_wrong_by_centimetres(draw_station):
    """Why the pose is solved at all: the cards lie 60.4 mm below the rim."""
    station = draw_station()
    marks = find_marks(station.grey)
    centres = np.array([np.mean(marks.cards[n], axis=0) for n in range(4)], np.float32)
    flat = np.array([[-220, 217], [220, 217], [220, -217], [-220, -217]], np.float32)
    rim = np.array([[[-254.0, 127], [254, 127], [254, -127], [-254, -127]]])

    naive = cv2.perspectiveTransform(rim, cv2.getPerspectiveTransform(flat, centres))[0]

    assert station.worst_mm(naive) > 20
    assert station.worst_mm(station_corners(marks, station.photo()).points) < 1.0


@pytest.mark.parametrize("turned_deg", [-170, -90, -35, 50, 90, 180])
def test_the_far_side_comes_first_however_the_photo_is_turned(draw_station, turned_deg):
    station = draw_station(turned_deg=turned_deg, distance_mm=820)

    corners = station_corners(find_marks(station.grey), station.photo())

    assert station.worst_mm(corners.points) < 1.5


@pytest.mark.parametrize("hidden", range(4))
def test_one_hidden_card_does_not_matter(draw_station, hidden):
    station = draw_station(cards=[n for n in range(4) if n != hidden])

    corners = station_corners(find_marks(station.grey), station.photo())

    assert station.worst_mm(corners.points) < 1.5
    assert corners.confidence > 0.8


def test_two_cards_leave_more_open_than_four_and_say_so(draw_station):
    station = draw_station()
    marks, photo = find_marks(station.grey), station.photo()

    sure = [
        station_corners(only(marks, cards, tag=False), photo).confidence
        for cards in ((0, 1, 2, 3), (0, 2), (0, 1))
    ]

    assert sure == sorted(sure, reverse=True)
    assert sure[0] > 0.9 > sure[1]


@pytest.mark.parametrize("cards", [(0, 1), (0, 2), (1, 3), (2, 3), (0, 3), (1, 2), (0,), (2,)])
@pytest.mark.parametrize("tag", [True, False])
def test_an_answer_that_is_sure_is_never_a_centimetre_off(draw_station, cards, tag):
    if len(cards) + tag < 2:
        pytest.skip("one mark is no station")
    station = draw_station()

    corners = station_corners(only(find_marks(station.grey), cards, tag=tag), station.photo())

    assert corners.confidence < SURE or station.worst_mm(corners.points) < 5.0


@pytest.mark.parametrize(("cards", "tag"), [((), True), ((1,), False), ((), False)])
def test_one_mark_is_no_station(draw_station, cards, tag):
    station = draw_station()

    assert station_corners(only(find_marks(station.grey), cards, tag=tag), station.photo()) is None


@pytest.mark.parametrize("focal_35mm", [24.0, 28.0])
def test_a_photo_without_focal_length_is_measured_all_the_same(draw_station, focal_35mm):
    station = draw_station(focal_35mm=focal_35mm, tilt_deg=9.0, distance_mm=660)

    corners = station_corners(find_marks(station.grey), station.photo(focal_35mm=None))

    assert station.worst_mm(corners.points) < 2.0
    assert corners.confidence > SURE


def test_a_wrong_focal_length_in_the_photo_does_not_move_the_rim_far(draw_station):
    station = draw_station(focal_35mm=26.0, tilt_deg=9.0)

    corners = station_corners(find_marks(station.grey), station.photo(focal_35mm=27.0))

    assert station.worst_mm(corners.points) < 2.0


@pytest.mark.parametrize(("focal_35mm", "told"), [(52.0, 26.0), (14.0, 26.0), (52.0, None)])
def test_a_photo_that_was_zoomed_or_cropped_without_a_word_is_measured_all_the_same(
    draw_station, focal_35mm, told
):
    """Believed, the told focal length laid sure corners two centimetres off."""
    station = draw_station(focal_35mm=focal_35mm, distance_mm=640 * focal_35mm / 26, tilt_deg=12.0)

    corners = station_corners(find_marks(station.grey), station.photo(focal_35mm=told))

    assert corners.confidence > SURE
    assert station.worst_mm(corners.points) < 4.0


def test_a_photo_of_which_one_side_was_cut_off_is_measured_all_the_same(draw_station):
    """Its middle is no longer where the camera looked: believed so, sure corners lay 14 mm off."""
    station = draw_station(tilt_deg=16.0, distance_mm=940)
    photo = replace(station.photo(), pixels=np.ascontiguousarray(station.pixels[120:1080, 320:]))

    corners = station_corners(find_marks(grey(photo)), photo)

    assert corners.confidence > SURE
    assert station.worst_mm([(x + 320, y + 120) for x, y in corners.points]) < 2.0


@pytest.mark.parametrize(
    "pushed",
    [
        *({1: (mm, -mm / 2)} for mm in (2.0, 4.0, 8.0)),
        {0: (-2.0, 0.0), 1: (2.0, 0.0), 2: (2.0, 0.0), 3: (-2.0, 0.0)},
        {0: (0.0, -2.0), 1: (0.0, -2.0), 2: (0.0, 2.0), 3: (0.0, 2.0)},
    ],
    ids=["2 mm", "4 mm", "8 mm", "all too wide", "all too near"],
)
def test_cards_a_little_out_of_place_are_not_taken_for_another_focal_length(draw_station, pushed):
    station = draw_station(pushed=pushed)

    corners = station_corners(find_marks(station.grey), station.photo())

    told = focal_from_exif(26.0, (1600, 1200))
    assert corners.focal_px == pytest.approx(told, rel=0.1)


@pytest.mark.parametrize(
    ("size", "diagonal"), [((4032, 2268), 5040), ((3024, 3024), 5040), ((900, 1600), 2000)]
)
def test_of_a_photo_cut_to_another_shape_both_readings_of_the_focal_length_are_likely(size, diagonal):
    """35 mm figures are of diagonals, those of the photo or of the 4:3 sensor it was cut from."""
    focal, spread = usual_focal(size, 26.0)

    of_photo, of_sensor = focal_from_exif(26.0, size), 26.0 * diagonal / 43.267
    assert focal * math.exp(-spread) < of_photo < of_sensor < focal * math.exp(spread)


@pytest.mark.parametrize("size", [(4032, 3024), (3024, 4032), (6000, 4000), (1600, 1200)])
def test_of_a_photo_with_the_shape_of_a_sensor_the_told_focal_length_is_believed(size):
    assert usual_focal(size, 26.0) == (focal_from_exif(26.0, size), EXIF_SPREAD)


def test_a_card_that_was_pushed_is_left_out(draw_station):
    station = draw_station(pushed={3: (25.0, -18.0)})

    corners = station_corners(find_marks(station.grey), station.photo())

    assert station.worst_mm(corners.points) < 2.0


def test_cards_laid_carelessly_make_the_answer_less_sure(draw_station):
    careless = {0: (3.0, -2.0), 1: (-2.0, 3.0), 2: (2.0, 3.0), 3: (-3.0, -2.0)}
    neat, untidy = draw_station(), draw_station(pushed=careless)

    tidy = station_corners(find_marks(neat.grey), neat.photo())
    loose = station_corners(find_marks(untidy.grey), untidy.photo())

    assert loose.confidence < tidy.confidence
    assert untidy.worst_mm(loose.points) < 8.0


def test_confidence_is_a_half_at_three_millimetres():
    assert [confidence(mm) for mm in (0.0, 3.0, 6.0)] == pytest.approx([1.0, 0.5, 0.0625])


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


@pytest.mark.parametrize("name", ["station", "covered"])
def test_rendered_photos_give_rim_and_tag(name):
    truth = json.loads((PHOTOS / f"{name}.json").read_text(encoding="utf-8"))
    photo = read_photo(PHOTOS / f"{name}.jpg")
    marks = find_marks(grey(photo))

    corners = station_corners(marks, photo)

    rim = np.array(truth["corners_px"])
    px_per_mm = np.linalg.norm(rim[1] - rim[0]) / 508
    assert marks.tag.number == truth["tag_number"]
    assert np.linalg.norm(np.array(corners.points) - rim, axis=1).max() / px_per_mm < 1.5
    assert corners.confidence > 0.9
