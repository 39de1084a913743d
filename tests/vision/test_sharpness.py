"""The width of the best edges tells blur in mm, whatever is in the tray."""

from io import BytesIO
from pathlib import Path

import cv2
import numpy as np
import pytest
from PIL import Image

from vision.corners import Corners, CornersFrom
from vision.photo import decode_photo
from vision.sharpness import edge_rise_mm, edge_sigma_px, laplacian_variance, smear
from vision.topview import make_top_view

PHOTOS = Path(__file__).parents[1] / "photos"


def discs(sigma: float, noise: float = 0.0) -> np.ndarray:
    """Light discs on dark ground, edges in every direction, blurred by a Gaussian of `sigma` px."""
    picture = np.full((400, 400), 50, np.float32)
    for x, y in ((100, 100), (290, 120), (130, 300), (300, 300)):
        cv2.circle(picture, (x, y), 70, 200, -1)
    picture = cv2.GaussianBlur(picture, (0, 0), sigma)
    picture += np.random.default_rng(0).normal(0, noise, picture.shape)
    return np.clip(np.rint(picture), 0, 255).astype(np.uint8)


@pytest.mark.parametrize("sigma", [0.8, 1.2, 2.0, 3.0])
def test_the_blur_of_an_edge_comes_back(sigma):
    assert edge_sigma_px(discs(sigma)) == pytest.approx(sigma, rel=0.2)


def test_noise_does_not_pass_for_sharpness():
    assert edge_sigma_px(discs(2.0, noise=3.0)) == pytest.approx(2.0, rel=0.25)


def test_a_hand_that_moved_sideways_is_seen_though_edges_along_its_way_stay_sharp():
    moved = cv2.blur(discs(0.8), (15, 1))

    assert edge_sigma_px(moved) > 2.5


def grains(seed: int = 0) -> np.ndarray:
    """Fine stuff with slopes every way, as a canopy or peat has."""
    loose = np.random.default_rng(seed).normal(0, 1, (400, 700)).astype(np.float32)
    soft = cv2.GaussianBlur(loose, (0, 0), 1.5)
    return np.clip(np.rint(120 + 40 * soft / soft.std()), 0, 255).astype(np.uint8)


@pytest.mark.parametrize("way_deg", [0, 20, 45, 70, 90, 110, 135, 160])
def test_streaks_of_fine_stuff_tell_whichever_way_the_hand_moved(way_deg):
    """Their sides are sharp again, so that the width of edges alone tells no such blur."""
    level = np.zeros((21, 21), np.float32)
    level[10] = 1.0
    way = cv2.warpAffine(level, cv2.getRotationMatrix2D((10, 10), way_deg, 1.0), (21, 21))

    moved = cv2.filter2D(grains(), -1, way / way.sum())

    assert smear(moved) > 2.0


@pytest.mark.parametrize("sigma", [0.0, 1.0, 3.0])
def test_stuff_that_is_sharp_or_soft_all_over_is_not_smeared(sigma):
    picture = grains() if sigma == 0 else cv2.GaussianBlur(grains(), (0, 0), sigma)

    assert smear(picture) == pytest.approx(1.0, abs=0.08)


@pytest.mark.parametrize(("contrast", "is_told"), [(1.0, True), (0.4, True), (0.1, False)])
def test_how_smeared_hardly_depends_on_contrast_until_all_is_noise(contrast, is_told):
    """Slopes below six codes a pixel are those of noise."""
    moved = cv2.blur(grains(), (9, 1))
    pale = np.asarray(np.rint(120 + contrast * (moved.astype(float) - 120)), np.uint8)

    assert (smear(pale) is not None) is is_told
    assert not is_told or smear(pale) == pytest.approx(smear(moved), rel=0.05)


def test_ribs_have_slopes_one_way_only_and_are_sharp():
    ribs = np.tile(np.repeat([60, 180], 8).astype(np.uint8), (300, 20))

    assert smear(ribs) > 10
    assert edge_sigma_px(ribs) < 0.8


def test_a_few_straight_rims_are_no_smear():
    picture = grains()
    picture[::130] = 255

    assert smear(picture) < 1.3


def test_a_picture_without_edges_has_no_blur_that_could_be_told():
    plain = np.random.default_rng(0).normal(100, 2, (300, 300)).astype(np.uint8)

    assert edge_sigma_px(plain) is None
    assert smear(plain) is None
    assert smear(np.full((300, 300), 100, np.uint8)) is None


def test_bare_paper_has_little_laplacian_variance_and_sharp_edges_all_the_same():
    paper = cv2.GaussianBlur(np.random.default_rng(0).integers(170, 190, (400, 700), np.uint8), (0, 0), 2)
    tray = cv2.GaussianBlur(
        cv2.copyMakeBorder(paper, 30, 30, 30, 30, cv2.BORDER_CONSTANT, value=30), (0, 0), 0.8
    )

    assert laplacian_variance(paper) < 20
    assert edge_sigma_px(tray) == pytest.approx(0.8, abs=0.3)


@pytest.mark.parametrize("sigma_mm", [0.8, 1.2])
def test_a_blurred_photo_is_told_from_the_same_photo_sharp(sigma_mm):
    photo = decode_photo((PHOTOS / "handheld.jpg").read_bytes(), "handheld.jpg")
    points = ((143.22, 160.6), (1082.35, 237.31), (1112.54, 696.31), (82.34, 678.47))  # handheld.json
    corners = Corners(points=points, found_by=CornersFrom.HAND, confidence=1.0)
    top = make_top_view(photo, corners)
    sharp = edge_rise_mm(photo, top)
    out = BytesIO()
    soft = cv2.GaussianBlur(photo.pixels, (0, 0), sigma_mm * top.photo_px_per_mm)
    Image.fromarray(soft).save(out, "PNG")
    blurred = edge_rise_mm(decode_photo(out.getvalue(), "soft.png"), top)

    assert sharp is not None
    assert blurred is not None
    assert sharp < 1.6
    assert blurred == pytest.approx(2.56 * sigma_mm, rel=0.35)
