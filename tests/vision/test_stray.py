"""Corners of marks that a leaf draws aside: they move the rim no longer."""

from dataclasses import replace

import numpy as np
import pytest

from vision.markers import Marks, Quad, find_marks
from vision.pose import Seen
from vision.posefit import best_fit
from vision.station import station_corners
from vision.stray import without_strays
from vision.traytype import TrayType


def drawn_aside(marks: Marks, corners: dict[int, tuple[int, float, float]]) -> Marks:
    """Corner k of some cards so many px to the right and down."""
    cards: dict[int, Quad] = dict(marks.cards)
    for number, (k, right, down) in corners.items():
        points = list(cards[number])
        points[k] = (points[k][0] + right, points[k][1] + down)
        cards[number] = (points[0], points[1], points[2], points[3])
    return replace(marks, cards=cards)


@pytest.mark.parametrize(
    "strays",
    [{2: (0, 9.0, 3.0)}, {3: (1, -11.0, 2.0)}, {0: (2, 4.0, 4.0), 3: (1, 0.0, -12.0)}],
    ids=["one", "another", "two"],
)
def test_a_corner_under_a_leaf_moves_the_rim_by_little(draw_station, strays):
    """A single one drew its card's middle along and laid the rim up to 1.4 mm aside."""
    station = draw_station(tilt_deg=9.0)
    marks, photo = find_marks(station.grey), station.photo()

    neat = station_corners(marks, photo)
    strayed = station_corners(drawn_aside(marks, strays), photo)

    assert station.worst_mm(neat.points) < 0.5
    assert station.worst_mm(strayed.points) < 0.6
    assert strayed.confidence > 0.9


def seen(marks: Marks) -> list[Seen]:
    tray = TrayType()
    cards = [Seen(corners=np.array(quad), quad_mm=tray.card_quad(n)) for n, quad in marks.cards.items()]
    return [*cards, Seen(corners=np.array(marks.tag.quad), quad_mm=None)]


def test_corners_are_expected_where_they_are_seen_blur_and_all(draw_station):
    marks = seen(find_marks(draw_station(tilt_deg=9.0).grey))
    fit = best_fit(marks, (1600, 1200), 26.0)

    for mark in marks[:4]:
        assert np.abs(fit.expected(mark.quad_mm) - mark.corners).max() < 0.25


def test_marks_without_a_stray_corner_are_left_alone(draw_station):
    station = draw_station()
    marks = seen(find_marks(station.grey))
    assert without_strays(marks, best_fit(marks, (1600, 1200), 26.0)) is None


def test_a_card_that_was_pushed_is_no_stray_corner(draw_station):
    """All its corners go together: `station.py` leaves it out."""
    station = draw_station(pushed={1: (9.0, -6.0)})
    marks = seen(find_marks(station.grey))
    assert without_strays(marks, best_fit(marks, (1600, 1200), 26.0)) is None


def test_the_stray_corner_is_laid_where_it_was_and_no_other_is_touched(draw_station):
    station = draw_station()
    marks = find_marks(station.grey)
    neat, bent = seen(marks), seen(drawn_aside(marks, {1: (3, 6.0, -6.0)}))

    mended = without_strays(bent, best_fit(bent, (1600, 1200), 26.0))

    assert np.abs(mended[1].corners - neat[1].corners).max() < 1.0
    for k in (0, 2, 3, 4):
        assert mended[k] is bent[k]
