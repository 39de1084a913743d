"""Excess green, excess red and Otsu's threshold against worked values."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.made.excess import ExcessGreenTissue, excess_green, excess_red, split
from vision.tissue import Label

# Woebbecke et al. (1995) Trans. ASAE 38, 259-269: ExG = 2g - r - b of the chromatic coordinates.
# Meyer & Neto (2008) Comput. Electron. Agric. 63, 282-293: ExR = 1.4 r - g; plant where ExG - ExR > 0.
# The papers are cited from memory; the values are exact arithmetic on the formulas.
WORKED = [
    ("leaf", (60, 120, 40), 0.636364, -0.163636, 0.800000),
    ("brown", (120, 90, 60), 0.0, 0.288889, -0.288889),
    ("pale", (200, 190, 180), 0.0, 0.157895, -0.157895),
    ("red canopy", (90, 30, 60), -0.5, 0.533333, -1.033333),
]


@pytest.mark.parametrize(("name", "rgb", "green", "red", "difference"), WORKED)
def test_excess_green_and_red_follow_their_formulas(name, rgb, green, red, difference):
    pixel = np.array([[rgb]], np.uint8)

    assert excess_green(pixel)[0, 0] == pytest.approx(green, abs=1e-6)
    assert excess_red(pixel)[0, 0] == pytest.approx(red, abs=1e-6)
    assert (excess_green(pixel) - excess_red(pixel))[0, 0] == pytest.approx(difference, abs=1e-6)


def test_black_has_no_index_and_is_no_plant():
    black = np.zeros((1, 1, 3), np.uint8)

    assert excess_green(black)[0, 0] == 0
    assert excess_red(black)[0, 0] == 0


# Otsu (1979) IEEE Trans. SMC 9, 62-66, applied to the textbook histogram [8, 7, 2, 6, 9, 4] (from memory);
# between-class variance 2.628715 and within-class variance 0.490884 were computed from his formula, and
# scikit-image 0.26 and OpenCV 5.0 both give threshold 2.
def test_the_textbook_histogram_splits_after_level_two():
    levels = np.repeat(np.arange(6, dtype=np.uint8), [8, 7, 2, 6, 9, 4]).reshape(1, -1)

    found = split(levels)

    assert found.threshold == 2
    assert found.separability == pytest.approx(2.628715 / (2.628715 + 0.490884), abs=1e-6)


# Thresholds of scikit-image 0.26 `threshold_otsu` on its own pictures: camera 102, coins 107.
@pytest.mark.parametrize(("picture", "threshold"), [("camera", 102), ("coins", 107)])
def test_known_pictures_split_where_another_library_splits_them(picture, threshold):
    data = pytest.importorskip("skimage.data")

    assert split(getattr(data, picture)()).threshold == threshold


@given(st.integers(40, 120), st.integers(40, 120), st.integers(40, 120))
def test_pixels_at_the_threshold_belong_to_the_lower_class(red, green, blue):
    """Otsu (1979): class 0 holds the levels up to and with k. A plain soil is one level, often k itself."""
    soil = sorted((red, green, blue), reverse=True)
    picture = np.full((20, 40, 3), soil, np.uint8)
    picture[:, 20:] = (60, 130, 45)

    labels = ExcessGreenTissue().label(picture, None).labels

    assert (labels[:, :20] == Label.MEDIUM).all()
    assert (labels[:, 20:] == Label.GREEN).all()
