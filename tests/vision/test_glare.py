"""Glare on a tray is told from leaves, bright ground and small glints."""

from pathlib import Path

import cv2
import numpy as np
import pytest

from vision.cielab import encoded, linear
from vision.glare import MOST_HIDDEN_PCT, hidden_pct
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
