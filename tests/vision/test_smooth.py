"""What lies over a tray and is smooth, as a hand is, is told from bare ground, leaves, felt and walls."""

from pathlib import Path

import cv2
import numpy as np
import pytest

from vision.photo import Pixels, read_photo
from vision.smooth import MOST_SMOOTH_PCT, smooth_pct
from vision.tissue import Label, Labels

PHOTOS = Path(__file__).parents[1] / "photos"
SKIN, STEEL, RUBBER = (196, 146, 120), (185, 188, 190), (28, 28, 30)
HAND = (((380, 508), (380, 300), 130), *(((330 + 50 * k, 300), (300 + 70 * k, 120), 36) for k in range(4)))
BLADES = (((300, 120), (620, 290), 30), ((300, 300), (620, 140), 30))
HOSE = (((0, 200), (500, 330), 34), ((500, 330), (1016, 180), 34))

Tray = tuple[Pixels, Labels]
Strokes = tuple[tuple[tuple[int, int], tuple[int, int], int], ...]


@pytest.fixture(params=["top_young", "top_felt"])
def tray(request: pytest.FixtureRequest) -> Tray:
    """A rendered tray from above and what each of its pixels truly shows."""
    labels = cv2.imread(str(PHOTOS / f"{request.param}_labels.png"), cv2.IMREAD_GRAYSCALE)
    return read_photo(PHOTOS / f"{request.param}.jpg").pixels, np.asarray(labels, np.uint8)


def under(tray: Tray, strokes: Strokes, colour: tuple[int, int, int]) -> Tray:
    """The tray with round strokes over it, shaded to their sides, with noise of 1 code."""
    mask = np.zeros(tray[1].shape, np.uint8)
    for start, end, width in strokes:
        cv2.line(mask, start, end, 1, width)
    shade = np.clip(cv2.distanceTransform(mask, cv2.DIST_L2, 5) / 16, 0, 1)[:, :, None] * 0.35 + 0.65
    noise = np.random.default_rng(0).normal(0, 1, tray[0].shape)
    thing = np.clip(np.array(colour) * shade + noise, 0, 255).astype(np.uint8)
    covered = np.where(mask[:, :, None] > 0, thing, tray[0])
    return covered, np.where(mask > 0, np.uint8(Label.MEDIUM), tray[1])


def test_a_tray_with_nothing_on_it_has_hardly_a_smooth_place(tray):
    assert smooth_pct(*tray, 2.0) < 0.3


@pytest.mark.parametrize(("strokes", "colour"), [(HAND, SKIN), (BLADES, STEEL), (HOSE, RUBBER)])
def test_a_hand_a_blade_and_a_hose_hide_part_of_the_tray(tray, strokes, colour):
    assert smooth_pct(*under(tray, strokes, colour), 2.0) > MOST_SMOOTH_PCT


def test_a_drop_on_the_lens_hides_what_it_blurs(tray):
    top, labels = tray
    drop = cv2.circle(np.zeros(labels.shape, np.uint8), (500, 250), 110, 1, -1) > 0
    seen = np.where(drop[:, :, None], cv2.GaussianBlur(top, (0, 0), 20), top)

    assert smooth_pct(seen, np.where(drop, np.uint8(Label.MEDIUM), labels), 2.0) > MOST_SMOOTH_PCT


def test_a_card_on_the_ground_hides_its_own_share(tray):
    """A window of 6 mm at either border sees its edge."""
    top, labels = (picture.copy() for picture in tray)
    top[150:350, 300:600], labels[150:350, 300:600] = 200, Label.MEDIUM

    assert smooth_pct(top, labels, 2.0) == pytest.approx(100 * (200 - 16) * (300 - 16) / labels.size, rel=0.1)


@pytest.mark.parametrize(("label", "hides"), [(Label.GREEN, False), (Label.RED, False), (Label.FUZZ, True)])
def test_smooth_leaves_hide_nothing_and_a_glove_that_passes_for_felt_does(tray, label, hides):
    top, labels = (picture.copy() for picture in tray)
    top[150:350, 300:600], labels[150:350, 300:600] = (90, 140, 60), label

    assert (smooth_pct(top, labels, 2.0) > MOST_SMOOTH_PCT) is hides


def test_the_tray_s_own_smooth_walls_hide_nothing(tray):
    top, labels = (picture.copy() for picture in tray)
    for side in (np.s_[:64], np.s_[-64:], np.s_[:, :64], np.s_[:, -64:]):
        top[side], labels[side] = 40, Label.RIM

    assert smooth_pct(top, labels, 2.0) < 0.3


def test_a_photo_that_is_soft_all_over_hides_nothing(tray):
    """Blur by 1 mm: the edges' rise is then just short of what is refused."""
    top, labels = tray

    assert smooth_pct(np.asarray(cv2.GaussianBlur(top, (0, 0), 2), np.uint8), labels, 2.0) < MOST_SMOOTH_PCT


@pytest.mark.parametrize("size", [(64, 64), (508, 60)])
def test_a_picture_with_nothing_far_from_its_sides_is_no_error(size):
    assert smooth_pct(np.full((*size, 3), 120, np.uint8), np.full(size, Label.MEDIUM, np.uint8), 2.0) == 0


@pytest.mark.parametrize(("grain", "hides"), [(2, True), (9, False)])
def test_fine_grain_beside_coarse_is_not_smooth(grain, hides):
    """Contrast of 0.010 and 0.045 where the tray's own is 0.18: less than two fifths of it, both."""
    rng = np.random.default_rng(1)
    top = np.clip(110 + rng.normal(0, 35, (508, 1016, 1)), 0, 255)
    top[150:350, 300:600] = 110 + rng.normal(0, grain, (200, 300, 1))

    labels = np.full((508, 1016), Label.MEDIUM, np.uint8)

    assert (smooth_pct(top.repeat(3, axis=2).astype(np.uint8), labels, 2.0) > MOST_SMOOTH_PCT) is hides
