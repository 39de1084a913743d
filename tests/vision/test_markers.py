"""Which marks are read, and where exactly, in a drawn station and under leaves."""

import json
from pathlib import Path

import cv2
import numpy as np
import pytest

from vision.markers import CARDS, Marks, find_marks
from vision.photo import grey, read_photo
from vision.traytype import TAG_MARK_MM, TrayType, square

PHOTOS = Path(__file__).parent.parent / "photos"


def off_px(quad, truth: np.ndarray) -> float:
    return float(np.linalg.norm(np.array(quad) - truth, axis=1).max())


def test_all_marks_of_a_drawn_station_are_read_where_they_are(draw_station):
    station = draw_station(tag=313)

    marks = find_marks(station.grey)

    assert marks.complete
    assert marks.tag.number == 313
    for number in range(4):
        assert off_px(marks.cards[number], station.pose.project(TrayType().card_quad(number))) < 1.0
    place = station.pose.project(square(TAG_MARK_MM) + np.array([-40.0, -201.0, 2.0]))
    assert off_px(marks.tag.quad, place) < 1.0


def test_the_tag_is_read_anywhere_along_the_rim(draw_station):
    for x in (-200.0, 0.0, 180.0):
        station = draw_station(tag=555, tag_mm=(x, -201.0), turned_deg=180.0)

        assert find_marks(station.grey).tag.number == 555


def test_a_station_without_tag_is_given_none(draw_station):
    marks = find_marks(draw_station(tag=None).grey)

    assert marks.tag is None
    assert sorted(marks.cards) == [0, 1, 2, 3]


@pytest.mark.parametrize("other", [(99, 120.0, -201.0, False), (99, 60.0, 201.0, True)])
def test_two_tags_on_one_tray_name_none_of_two(draw_station, other):
    """On the same side, or one on each, upright for who stands there."""
    marks = find_marks(draw_station(tag=313, further=[other]).grey)

    assert marks.rivals == (99, 313)
    assert marks.number is None
    assert marks.tag is not None  # its patches still tell the colour of the light


@pytest.mark.parametrize("other", [(99, 60.0, 215.0, False), (99, 60.0, -330.0, False)])
def test_the_tag_of_a_tray_behind_or_before_is_no_rival(draw_station, other):
    """Behind stands a tray whose tag reaches over to this one's rim; it is upside down for this tray."""
    marks = find_marks(draw_station(tag=313, further=[other], distance_mm=1000.0).grey)

    assert marks.rivals == ()
    assert marks.number == 313


def test_the_same_tag_twice_is_one(draw_station):
    marks = find_marks(draw_station(tag=313, further=[(313, 120.0, -201.0, False)]).grey)

    assert marks.number == 313


def test_a_number_below_ten_is_a_card_and_never_a_tag(draw_station):
    assert find_marks(draw_station(tag=9).grey).tag is None


def test_a_leaf_over_the_frame_of_a_card_and_of_the_tag_hides_neither(draw_station):
    leaves = ((-198.0, 236.0, -40.0, 15.0), (240.0, -200.0, -30.0, 15.0), (-31.0, -192.0, 20.0, 6.0))
    station = draw_station(tag=77, leaves=leaves)

    marks = find_marks(station.grey)

    assert sorted(marks.cards) == [0, 1, 2, 3]
    assert marks.tag.number == 77
    assert off_px(marks.cards[0], station.pose.project(TrayType().card_quad(0))) < 3.0


def test_marks_under_leaves_lie_where_they_were_drawn_in_a_photo_of_twelve_megapixels_too(draw_station):
    """There the search for them goes through a smaller picture."""
    times, leaves = 2.5, ((-198.0, 236.0, -40.0, 15.0), (-31.0, -192.0, 20.0, 6.0))
    station = draw_station(tag=77, leaves=leaves)
    large = cv2.resize(station.grey, None, fx=times, fy=times, interpolation=cv2.INTER_CUBIC)

    marks = find_marks(np.asarray(large, np.uint8))

    assert sorted(marks.cards) == [0, 1, 2, 3]
    assert marks.tag.number == 77
    for number in CARDS:
        drawn = times * station.pose.project(TrayType().card_quad(number))
        assert off_px(marks.cards[number], drawn) < 3.0 * times


def test_a_station_with_a_leaf_over_every_card_is_found(draw_station):
    leaves = tuple((x * 199.0, y * 196.0, -40.0, 12.0) for x in (-1, 1) for y in (-1, 1))
    station = draw_station(tag=None, leaves=leaves)

    assert sorted(find_marks(station.grey).cards) == [0, 1, 2, 3]


def test_a_tag_quite_under_a_leaf_is_not_guessed(draw_station):
    station = draw_station(tag=77, leaves=((-36.0, -196.0, 20.0, 19.0),))

    assert find_marks(station.grey).tag is None


def test_a_neighbour_s_tag_away_from_this_rim_is_not_taken_for_this_tray_s(draw_station):
    station = draw_station(tag=200, tag_mm=(0.0, 0.0))

    assert find_marks(station.grey).tag is None


@pytest.mark.parametrize("seed", range(3))
def test_noise_and_squares_are_no_marks(seed):
    chance = np.random.default_rng(seed)
    picture = np.full((1200, 1600), 200, np.uint8)
    for _ in range(150):
        x, y, side = chance.integers(0, 1500), chance.integers(0, 1100), chance.integers(30, 90)
        cells = chance.integers(0, 2, (8, 8)) * 200 + 20
        block = np.kron(cells, np.ones((side // 8, side // 8))).astype(np.uint8)
        rows, columns = picture[y : y + len(block), x : x + len(block)].shape
        picture[y : y + rows, x : x + columns] = block[:rows, :columns]

    marks = find_marks(picture)

    assert not marks.cards
    assert marks.tag is None


@pytest.mark.parametrize("shape", [(64, 64), (80, 2000), (300, 400)])
def test_a_small_or_narrow_picture_has_no_marks_and_no_error(shape):
    assert not find_marks(np.full(shape, 128, np.uint8)).cards


def test_marks_of_a_rendered_photo_lie_where_they_were_rendered():
    truth = json.loads((PHOTOS / "covered.json").read_text(encoding="utf-8"))

    marks = find_marks(grey(read_photo(PHOTOS / "covered.jpg")))

    for number in range(4):
        middle = np.mean(truth["marks_px"][f"station_{number}"], axis=0)
        assert np.linalg.norm(np.mean(marks.cards[number], axis=0) - middle) < 2.0
    assert marks.tag.number == truth["tag_number"]


def test_a_strip_longer_than_any_photo_has_no_marks_and_is_no_error():
    assert find_marks(np.full((64, 65_500), 110, np.uint8)) == Marks()
