"""A picture whose colours were taken out of it is told from one of things that have little colour."""

from pathlib import Path

import cv2
import numpy as np
import pytest
from skimage.color import lab2rgb

from vision.cielab import encoded, linear
from vision.fading import Fading, colours_apart, fading
from vision.photo import Pixels, read_photo

PHOTOS = Path(__file__).parents[1] / "photos"
LUMINANCE = np.array([0.213, 0.715, 0.072])
SEPIA = np.array([[0.393, 0.769, 0.189], [0.349, 0.686, 0.168], [0.272, 0.534, 0.131]])
WOOD = (150, 105, 60)


@pytest.fixture(scope="module")
def photo() -> Pixels:
    return read_photo(PHOTOS / "handheld.jpg").pixels


def saturated(pixels: Pixels, share: float) -> Pixels:
    """The filter `saturate` of W3C, Filter Effects Module Level 1 (matrix from memory)."""
    return mixed(pixels, np.eye(3) * share + LUMINANCE * (1 - share))


def mixed(pixels: Pixels, matrix: np.ndarray) -> Pixels:
    return np.clip(np.rint(pixels @ matrix.T), 0, 255).astype(np.uint8)


def test_a_photo_keeps_its_colours_apart_and_is_not_faded(photo):
    assert fading(photo, photo) is Fading.NONE


@pytest.mark.parametrize("share", [0.02, 0.1, 0.2])
def test_a_photo_without_most_of_its_colour_is_lost(photo, share):
    grey = saturated(photo, share)

    assert fading(grey, grey) is Fading.LOST


def test_a_sepia_photo_is_lost_although_it_is_coloured_all_over(photo):
    """The filter `sepia` of the same module."""
    brown = mixed(photo, SEPIA)

    assert np.median(np.ptp(brown, axis=2)) > 15
    assert fading(brown, brown) is Fading.LOST


def test_between_the_two_a_photo_is_doubtful(photo):
    assert fading(saturated(photo, 0.28), photo) is Fading.DOUBTFUL


def test_a_grey_tray_on_a_wooden_bench_is_doubtful_and_not_lost(photo):
    grey = saturated(photo, 0.1)
    around = cv2.copyMakeBorder(grey, 80, 80, 80, 80, cv2.BORDER_CONSTANT, value=WOOD)

    assert fading(grey, np.asarray(around, np.uint8)) is Fading.DOUBTFUL


@pytest.mark.parametrize("light", [0.35, 0.7, 1.0])
def test_bare_paper_with_seeds_on_it_has_no_colour_to_lose(light):
    paper = sown_paper(light)

    assert colours_apart(paper) < 15
    assert fading(paper, paper) is Fading.NONE


def test_leaves_on_paper_in_a_grey_picture_are_lost():
    rng = np.random.default_rng(1)
    leaves = sown_paper(0.8)
    for column, row in rng.integers(0, (1016, 508), (1500, 2)).tolist():
        cv2.ellipse(
            leaves, (column, row), (11, 7), rng.uniform(0, 180), 0, 360, [rng.uniform(70, 120)] * 3, -1
        )

    assert fading(leaves, leaves) is Fading.LOST


def test_a_dense_canopy_with_little_contrast_is_lost_in_a_grey_picture_and_no_paper():
    """Two fifths of it in shade: of bare paper no more than a fifth is dark."""
    shade = np.random.default_rng(2).random((127, 254)) < 0.4
    canopy = np.where(np.kron(shade, np.ones((4, 4))) > 0, 160, 210).astype(np.uint8)
    grey = np.repeat(canopy[:, :, None], 3, axis=2)

    assert fading(grey, grey) is Fading.LOST


def sown_paper(light: float) -> Pixels:
    """A tray with white paper and 2 dark seeds a cm2, as amaranth is sown, in so much light."""
    rng = np.random.default_rng(0)
    paper = np.full((508, 1016), 0.6, np.float32) * rng.normal(1, 0.08, (508, 1016))
    paper = np.repeat(cv2.GaussianBlur(paper, (0, 0), 1.0)[:, :, None], 3, axis=2)
    for column, row in rng.integers(0, (1016, 508), (2600, 2)).tolist():
        cv2.circle(paper, (column, row), 1, (0.03, 0.03, 0.03), -1)
    return encoded(paper * light)


def test_a_close_up_of_one_colour_is_never_called_lost(photo):
    assert fading(saturated(photo, 0.1), None) is Fading.DOUBTFUL


@pytest.mark.parametrize("stops", [-2, -1])
def test_colours_lie_as_far_apart_in_less_light(photo, stops):
    darker = encoded(linear(photo) * 2.0**stops)

    assert colours_apart(darker) == pytest.approx(colours_apart(photo), rel=0.12)


def test_one_colour_has_nothing_apart_and_the_dark_tells_nothing():
    assert colours_apart(np.full((50, 60, 3), (70, 130, 50), np.uint8)) == pytest.approx(0, abs=1e-3)
    assert colours_apart(np.full((50, 60, 3), 5, np.uint8)) is None


@pytest.mark.parametrize("size", [(1, 400), (5, 1016), (1016, 9), (20, 1016)])
def test_a_strip_of_a_picture_is_no_error(size):
    """A photo of 64 x 12,000 px, reduced to be told why it shows no tray, ended in one."""
    strip = np.full((*size, 3), (120, 100, 60), np.uint8)
    assert fading(strip, strip) is Fading.NONE


def test_two_colours_lie_apart_by_the_difference_of_their_tones():
    """60,120,40: L* 45.006, a* -35.378, b* 36.853 (scikit-image `rgb2lab`); grey has no tone."""
    two = np.full((50, 60, 3), 119, np.uint8)
    two[:, :10] = (60, 120, 40)

    length = float(np.hypot(-35.3777, 36.8525)) * 100 / (45.0064 + 16)
    assert colours_apart(two) == pytest.approx(length, abs=0.1)


def patches(tone: float, size: tuple[int, int] = (508, 1016)) -> Pixels:
    """Light and dark grey squares of 8 px with contrast enough for leaves; each tenth row of them has a tone.

    A tone t is 100 a*/(L* + 16), so a* = t (L* + 16)/100 (scikit-image `lab2rgb`).
    """
    rows, columns = (np.arange(n) // 8 for n in size)
    light = np.where((rows[:, None] + columns) % 2 > 0, 60.0, 30.0)
    toned = np.where(rows[:, None] % 10 == 0, tone * (light + 16) / 100, 0.0)
    return np.rint(255 * lab2rgb(np.stack([light, toned, 0 * light], axis=2))).astype(np.uint8)


@pytest.mark.parametrize(
    ("tone", "around", "told"),
    [
        (14.0, 20.0, Fading.LOST),
        (14.0, 25.0, Fading.LOST),
        (14.0, 27.5, Fading.DOUBTFUL),  # the photo has more colour elsewhere
        (16.0, 20.0, Fading.DOUBTFUL),
        (21.0, 20.0, Fading.DOUBTFUL),
        (23.5, 20.0, Fading.NONE),
    ],
)
def test_how_far_tones_lie_apart_says_whether_coverage_is_lost_or_doubtful(tone, around, told):
    """Limits at 15 and 22 tones of the tray, 26 of all around: as measured, see the module."""
    assert colours_apart(patches(tone)) == pytest.approx(tone, abs=1.0)
    assert fading(patches(tone), patches(around)) is told


@pytest.mark.parametrize(
    ("contrast", "spots", "bare"),
    [(0.13, 0.02, True), (0.16, 0.0, False), (0.05, 0.2, True), (0.05, 0.27, False)],
)
def test_paper_is_bare_up_to_little_contrast_and_a_quarter_of_dark_spots(contrast, spots, bare):
    """Squares of 20 mm that much lighter or darker; spots of 4 mm, a quarter darker. Limits 0.15, 25 %."""
    squares = np.kron(np.indices((13, 26)).sum(axis=0) % 2 * 2.0 - 1, np.ones((40, 40)))[:504, :1016]
    dark = np.kron(np.random.default_rng(4).random((63, 127)) < spots, np.ones((8, 8)))
    light = 90.0 * (1 + contrast * squares) * np.where(dark > 0, 0.75, 1.0)
    grey = np.rint(255 * lab2rgb(np.stack([light - 16, 0 * light, 0 * light], axis=2))).astype(np.uint8)

    assert (fading(grey, grey) is Fading.NONE) is bare
