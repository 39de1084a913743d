"""Rim corners and confidence: a drawn station whose camera is known, and two rendered photos."""

import json
from pathlib import Path

import cv2
import numpy as np
import pytest

from vision.corners import CornersFrom
from vision.markers import Marks, Tag, find_marks
from vision.photo import grey, read_photo
from vision.station import TrayType, confidence, fit_station, station_corners

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


CONTRADICTING = {
    "three cards": (
        {
            0: ((1198.0, 2195.0), (1212.0, 2194.0), (1223.0, 2213.0), (1196.0, 2221.0)),
            1: ((2084.0, 2602.0), (2102.0, 2606.0), (2100.0, 2621.0), (2083.0, 2620.0)),
            2: ((814.0, 766.0), (1156.0, 888.0), (1332.0, 1248.0), (899.0, 1176.0)),
        },
        (1872.0, 2789.0),
    ),
    "four cards": (
        {
            0: ((2127.0, 2144.0), (3569.0, 2034.0), (3574.0, 3842.0), (2022.0, 3691.0)),
            1: ((21.0, 1045.0), (47.0, 1036.0), (37.0, 1049.0), (22.0, 1056.0)),
            2: ((3798.0, 1733.0), (3821.0, 1734.0), (3827.0, 1760.0), (3802.0, 1754.0)),
            3: ((2870.0, 349.0), (2890.0, 356.0), (2890.0, 377.0), (2867.0, 373.0)),
        },
        (450.0, 407.0),
    ),
}


@pytest.mark.parametrize("focal_35mm", [None, 26.0, 3000.0])
@pytest.mark.parametrize("case", CONTRADICTING)
def test_marks_that_contradict_each_other_are_sure_of_nothing(case, focal_35mm):
    """Squares taken for marks; the confidence was no number, or there was no answer at all but an error."""
    cards, (x, y) = CONTRADICTING[case]
    tag = Tag(number=50, quad=((x, y), (x + 200, y), (x + 200, y + 200), (x, y + 200)))

    fit = fit_station(Marks(cards=cards, tag=tag), (4032, 3024), focal_35mm, TrayType())

    assert fit is None or confidence(fit.spread(TrayType().inner_corners())) < 0.01


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
