"""Layers drawn over a plain grey tray: what is marked, and that what was handed in stays as it was."""

import cv2
import numpy as np
import pytest

from vision.picture import (
    CANOPY,
    GAPS,
    SUSPECTS,
    encode_jpeg,
    encode_labels,
    thumbnail,
    with_canopy,
    with_cells,
    with_everything,
    with_gaps,
    with_suspects,
)
from vision.stand import measure_stand
from vision.suspect import Suspect
from vision.tissue import Label


def a_grey_tray():
    tray = np.full((508, 1016, 3), 120, np.uint8)
    tray.flags.writeable = False  # a layer that writes into it fails
    return tray


def labels_with_canopy(rows, columns):
    labels = np.full((508, 1016), Label.MEDIUM, np.uint8)
    labels[rows, columns] = Label.GREEN
    return labels


def a_suspect(x_mm=100.0, y_mm=100.0, area_cm2=4.0):
    return Suspect(x_mm=x_mm, y_mm=y_mm, area_cm2=area_cm2, confidence=0.7, why="white web", outline_mm=())


def is_colour(picture, colour):
    return (picture == colour).all(axis=-1)


def test_the_canopys_outline_runs_along_its_border_pixels_only():
    drawn = is_colour(
        with_canopy(a_grey_tray(), labels_with_canopy(slice(100, 200), slice(300, 500))), CANOPY
    )

    assert drawn.sum() == 2 * 200 + 2 * 98
    assert drawn[100, 300:500].all()
    assert not drawn[101:199, 301:499].any()


def test_specks_of_canopy_get_no_outline():
    picture = with_canopy(a_grey_tray(), labels_with_canopy(slice(100, 105), slice(300, 305)))

    assert (picture == 120).all()


def test_a_gap_is_hatched_inside_and_the_canopy_around_it_is_left_alone():
    labels = labels_with_canopy(slice(None), slice(None))
    labels[100:200, 300:500] = Label.MEDIUM

    drawn = is_colour(with_gaps(a_grey_tray(), labels, measure_stand(labels)), GAPS)

    assert drawn[100, 300:500].all()  # outline
    assert 0.05 < drawn[110:190, 310:490].mean() < 0.12  # one line in twelve
    outside = np.ones(drawn.shape, bool)
    outside[100:200, 300:500] = False
    assert not drawn[outside].any()


def test_an_islet_of_canopy_in_a_gap_is_not_hatched():
    labels = labels_with_canopy(slice(140, 160), slice(380, 420))

    drawn = is_colour(with_gaps(a_grey_tray(), labels, measure_stand(labels)), GAPS)

    assert not drawn[141:159, 381:419].any()


def test_a_bare_cell_is_darker_than_a_full_one():
    labels = labels_with_canopy(slice(None), slice(0, 508))

    picture = with_cells(a_grey_tray(), measure_stand(labels))

    assert picture[40, 40].tolist() == [120, 120, 120]
    assert picture[40, 1000].tolist() == [54, 54, 54]  # 120 * (1 - 0.55)


def test_a_suspect_gets_a_dashed_ring_around_its_place():
    drawn = is_colour(with_suspects(a_grey_tray(), [a_suspect()]), SUSPECTS)

    rows, columns = np.nonzero(drawn[:, :238])  # its number stands right of that
    away = np.hypot(rows - 199.5, columns - 199.5)
    assert away.min() > 34
    assert away.max() < 42  # the patch of 4 cm2 is a disc of 11.3 mm, 22.6 px: well inside
    turn = np.degrees(np.arctan2(rows - 199.5, columns - 199.5)) % 36
    assert ((turn > 6) & (turn < 12)).any()  # in the middle of a dash of 18 degrees
    assert not ((turn > 24) & (turn < 30)).any()  # in the middle of the space behind it


def test_a_suspect_at_the_right_edge_keeps_its_number_inside_the_picture():
    drawn = is_colour(with_suspects(a_grey_tray(), [a_suspect(x_mm=506.0)]), SUSPECTS)

    ring_left = 1011 - 52
    assert drawn[190:210, ring_left - 26 : ring_left - 4].any()


def test_all_layers_leave_what_was_handed_in_as_it_was():
    labels = labels_with_canopy(slice(0, 300), slice(None))
    labels.flags.writeable = False
    top = a_grey_tray()

    picture = with_everything(top, labels, measure_stand(labels), [a_suspect()])

    assert (top == 120).all()
    assert picture.shape == top.shape
    assert (picture != top).any()


def test_a_picture_too_small_for_numbers_is_drawn_all_the_same():
    labels = np.full((64, 64), Label.GREEN, np.uint8)
    labels[20:] = Label.MEDIUM

    picture = with_everything(np.full((64, 64, 3), 120, np.uint8), labels, measure_stand(labels, None), [])

    assert picture.shape == (64, 64, 3)


def test_a_thumbnail_is_the_mean_of_what_it_shows():
    stripes = np.zeros((508, 1016, 3), np.uint8)
    stripes[:, ::2] = 200

    small = thumbnail(stripes)

    assert small.shape == (160, 320, 3)
    assert small.mean() == pytest.approx(100, abs=1)
    assert small.std() < 25  # picked pixels would be 0 or 200: a deviation of 100


def test_labels_come_back_from_their_file_exactly():
    labels = np.random.default_rng(0).integers(0, 10, (508, 1016)).astype(np.uint8)

    back = cv2.imdecode(np.frombuffer(encode_labels(labels), np.uint8), cv2.IMREAD_UNCHANGED)

    assert back.dtype == np.uint8
    assert (back == labels).all()


def test_a_jpeg_keeps_red_red():
    red = np.zeros((64, 64, 3), np.uint8)
    red[..., 0] = 200

    back = cv2.imdecode(np.frombuffer(encode_jpeg(red), np.uint8), cv2.IMREAD_COLOR_RGB)

    assert np.abs(back.astype(int) - red).max() < 8
