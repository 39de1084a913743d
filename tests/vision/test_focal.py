"""Photos that were zoomed, cropped or shown on a screen: the camera is found, or the answer is not sure."""

import math
from dataclasses import replace

import cv2
import numpy as np
import pytest

from vision.camera import focal_from_exif
from vision.markers import Marks, find_marks
from vision.photo import grey
from vision.pose import EXIF_SPREAD, usual_aside, usual_focal
from vision.station import station_corners

SURE = 0.5


def corner_aside(marks: Marks, px: float) -> Marks:
    """As a leaf leaves it that lies over a corner of card 2."""
    first, (x, y), third, fourth = marks.cards[2]
    return replace(marks, cards={**marks.cards, 2: (first, (x - px, y + px / 2), third, fourth)})


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


@pytest.mark.parametrize(("focal_35mm", "told"), [(52.0, 26.0), (26.0, 52.0), (13.0, 26.0)])
def test_leaves_over_a_mark_hide_no_wrong_focal_length(draw_station, focal_35mm, told):
    """With one corner 3 px aside no camera suited the marks well: sure corners lay two centimetres off."""
    station = draw_station(focal_35mm=focal_35mm, distance_mm=640 * focal_35mm / 26, tilt_deg=12.0)
    marks = corner_aside(find_marks(station.grey), px=3.0)

    corners = station_corners(marks, station.photo(focal_35mm=told))

    assert station.worst_mm(corners.points) < 4.0
    assert corners.confidence > SURE


def test_where_another_focal_length_suits_the_marks_better_but_not_well_the_answer_is_not_sure(draw_station):
    station = draw_station(focal_35mm=26.0, tilt_deg=12.0)
    marks = corner_aside(find_marks(station.grey), px=12.0)

    told = station_corners(marks, station.photo(focal_35mm=26.0))
    wrong = station_corners(marks, station.photo(focal_35mm=45.0))

    assert told.confidence > SURE
    assert wrong.confidence < SURE or station.worst_mm(wrong.points) < 4.0


@pytest.mark.parametrize("told", [4.2, 0.01, 65535.0])
def test_a_focal_length_that_no_phone_has_is_not_believed(draw_station, told):
    """Some cameras note the length in mm that the lens really has, or the largest number."""
    station = draw_station(tilt_deg=12.0)

    corners = station_corners(find_marks(station.grey), station.photo(focal_35mm=told))

    assert station.worst_mm(corners.points) < 2.0
    assert corners.confidence > SURE


def test_a_photo_of_which_one_side_was_cut_off_is_measured_all_the_same(draw_station):
    """Its middle is no longer where the camera looked: believed so, sure corners lay 14 mm off."""
    station = draw_station(tilt_deg=16.0, distance_mm=940)
    photo = replace(station.photo(), pixels=np.ascontiguousarray(station.pixels[120:1080, 320:]))

    corners = station_corners(find_marks(grey(photo)), photo)

    assert corners.confidence > SURE
    assert station.worst_mm([(x + 320, y + 120) for x, y in corners.points]) < 2.0


@pytest.mark.parametrize("cut", [(240, 0, 0, 0), (0, 240, 0, 0), (0, 0, 200, 0), (0, 0, 0, 200)])
@pytest.mark.parametrize("focal_35mm", [26.0, None])
def test_a_photo_of_which_a_part_of_one_side_was_cropped_is_measured_all_the_same(
    draw_station, cut, focal_35mm
):
    """Its middle was believed as long as the marks did not cry out: sure corners lay 7 to 15 mm off."""
    station = draw_station(tilt_deg=14.0, distance_mm=900)
    left, right, top, bottom = cut
    part = station.pixels[top : 1200 - bottom, left : 1600 - right]
    photo = replace(station.photo(focal_35mm), pixels=np.ascontiguousarray(part))

    corners = station_corners(find_marks(grey(photo)), photo)

    assert corners.confidence > SURE
    assert station.worst_mm([(x + left, y + top) for x, y in corners.points]) < 3.0


@pytest.mark.parametrize("tilt_deg", [6.0, 10.0, 14.0])
def test_the_screen_of_a_phone_that_shows_a_photo_lays_no_sure_corners_a_centimetre_off(
    draw_station, tilt_deg
):
    """Its diagonal is twice that of the photo, so the focal length that most phones have is far too long."""
    station = draw_station(tilt_deg=tilt_deg)
    screen = cv2.copyMakeBorder(station.pixels, 1130, 1130, 0, 0, cv2.BORDER_CONSTANT)
    photo = replace(station.photo(None), pixels=np.asarray(screen, np.uint8))

    corners = station_corners(find_marks(grey(photo)), photo)

    off_mm = station.worst_mm([(x, y - 1130) for x, y in corners.points])
    assert corners.confidence < SURE or off_mm < 10.0


@pytest.mark.parametrize("size", [(4032, 3024), (3024, 4032), (6000, 4000), (4032, 2268), (3024, 3024)])
def test_of_a_photo_of_a_shape_that_cameras_make_the_middle_is_believed(size):
    assert usual_aside(size) is None


@pytest.mark.parametrize("size", [(3600, 3024), (3024, 3500), (4032, 2000)])
def test_of_a_photo_of_any_other_shape_it_is_not(size):
    assert usual_aside(size) == pytest.approx(0.08 * math.hypot(*size))


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
