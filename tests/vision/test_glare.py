"""Glare on a tray is told from leaves, bright ground and small glints."""

from pathlib import Path

import cv2
import numpy as np
import pytest

from vision.cielab import encoded, linear
from vision.glare import MOST_HIDDEN_PCT, hidden, hidden_pct
from vision.photo import Pixels, read_photo

PHOTOS = Path(__file__).parents[1] / "photos"


@pytest.fixture(scope="module", params=["top_young.jpg", "top_felt.jpg"])
def top(request: pytest.FixtureRequest) -> Pixels:
    return read_photo(PHOTOS / request.param).pixels


def veiled(top: Pixels, reach_px: float, peak: float) -> Pixels:
    """White light over the middle of the top view, added to what is there as a wet film or a lens does."""
    rows, columns = np.mgrid[: top.shape[0], : top.shape[1]]
    away = np.hypot(rows - top.shape[0] / 2, columns - top.shape[1] / 2) / reach_px
    return encoded(linear(top) + (peak * np.exp(-(away**2) / 2))[:, :, None])


def test_a_tray_without_glare_has_nothing_hidden(top):
    assert hidden_pct(top) < 1


@pytest.mark.parametrize(("reach_px", "peak"), [(60, 1.2), (100, 0.9), (130, 0.3)])
def test_glare_hides_part_of_the_tray_also_where_nothing_is_burnt_out(top, reach_px, peak):
    assert hidden_pct(veiled(top, reach_px, peak)) > MOST_HIDDEN_PCT


def test_glints_on_leaves_hide_nothing(top):
    glints = top.copy()
    for row in range(10, top.shape[0], 40):
        for column in range(10, top.shape[1], 40):
            cv2.circle(glints, (column, row), 5, (255, 255, 255), -1)

    assert hidden_pct(glints) < 1


def test_a_label_is_hidden_ground_by_its_own_share(top):
    labelled = top.copy()
    labelled[100:300, 200:400] = 240

    share = 100 * 200 * 200 / (top.shape[0] * top.shape[1])
    assert hidden_pct(labelled) == pytest.approx(share, rel=0.1)


@pytest.mark.parametrize("code", [150, 200, 235])
def test_white_paper_all_over_the_tray_is_no_glare(top, code):
    assert hidden_pct(np.full_like(top, code)) < MOST_HIDDEN_PCT


def test_bright_ground_beside_dark_is_no_glare_as_long_as_it_is_far_from_white(top):
    ground = np.full_like(top, 20)
    ground[:, :500] = 60

    assert hidden_pct(ground) < 1


@pytest.mark.parametrize(("paper", "glare", "lit"), [(120, 150, False), (120, 180, True), (60, 120, False)])
def test_glare_is_twice_as_light_as_the_middle_of_the_tray_and_a_fifth_of_white(paper, glare, lit):
    """Codes 120, 150, 180 are 0.188, 0.305, 0.456 of white in linear light, 60 is 0.045 (IEC 61966-2-1)."""
    top = np.full((200, 400, 3), paper, np.uint8)
    top[50:150, 100:200] = glare

    assert hidden_pct(top) == (pytest.approx(12.5, rel=0.05) if lit else 0)


@pytest.mark.parametrize(("side_mm", "lit"), [(8, False), (10, True)])
def test_only_what_is_wider_than_nine_millimetres_is_glare(side_mm, lit):
    top = np.full((200, 400, 3), 20, np.uint8)
    top[50 : 50 + 2 * side_mm, 100 : 100 + 2 * side_mm] = 250

    assert (hidden_pct(top) > 0) is lit
    assert hidden(top)[30, 55] == lit  # half as large as the top view


@pytest.mark.parametrize("colour", [(250, 250, 20), (250, 20, 250), (20, 250, 250)])
def test_bright_colours_are_no_glare_which_is_light_in_every_channel(colour):
    top = np.full((200, 400, 3), 20, np.uint8)
    top[50:150, 100:200] = colour

    assert hidden_pct(top) == 0
