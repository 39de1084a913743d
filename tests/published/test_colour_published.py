"""Colour against standards, published tables and scikit-image, a library that shares no code with ours."""

import colorsys

import numpy as np
import pytest
from skimage.color import deltaE_ciede2000, rgb2lab

from vision.cielab import encoded, lab, linear
from vision.colour import dark_green_index, measure_colour
from vision.colourdifference import CanopyColour, colour_difference
from vision.tissue import Label


def a_canopy(lightness, a, b):
    return CanopyColour(lightness=lightness, a=a, b=b, corrected_by="patch", method="learned 3")


def a_pixel(*rgb):
    return np.array([[rgb]], dtype=np.uint8)


# IEC 61966-2-1:1999, transfer function; values recomputed with colour-science 0.4.7 and the formula
@pytest.mark.parametrize(
    ("code", "light"),
    [
        (0, 0.0),
        (10, 0.00303527),
        (11, 0.00334654),
        (64, 0.05126946),
        (119, 0.18447499),
        (128, 0.21586050),
        (188, 0.50288646),
        (255, 1.0),
    ],
)
def test_linear_light_of_srgb_codes(code, light):
    assert linear(a_pixel(code, code, code))[0, 0, 1] == pytest.approx(light, abs=1e-7)


def test_light_encoded_by_the_srgb_curve_gives_back_every_code_and_nothing_beyond():
    """IEC 61966-2-1:1999: one curve and its inverse."""
    codes = np.arange(256, dtype=np.uint8)

    assert encoded(linear(np.repeat(codes, 3).reshape(1, 256, 3)))[0, :, 1].tolist() == codes.tolist()
    assert encoded(np.array([-0.5, 1.7])).tolist() == [0, 255]


# ISO/CIE 11664-4:2019, D65, 2 degrees; values recomputed with scikit-image 0.26.0. Libraries round the matrix
# and the white differently: tolerance 0.05
@pytest.mark.parametrize(
    ("rgb", "expected"),
    [
        ((255, 0, 0), (53.2406, 80.0923, 67.2028)),
        ((0, 255, 0), (87.7351, -86.1830, 83.1797)),
        ((0, 0, 255), (32.2957, 79.1856, -107.8573)),
        ((128, 128, 128), (53.5850, 0, 0)),
        ((60, 120, 40), (45.0064, -35.3777, 36.8525)),
    ],
)
def test_cielab_of_known_colours(rgb, expected):
    assert tuple(lab(a_pixel(*rgb))[0, 0]) == pytest.approx(expected, abs=0.05)


# chroma and hue of the same table
@pytest.mark.parametrize(
    ("rgb", "chroma", "hue"),
    [
        ((255, 0, 0), 104.551, 39.999),
        ((0, 255, 0), 119.776, 136.016),
        ((0, 0, 255), 133.804, 306.285),
        ((60, 120, 40), 51.0851, 133.830),
    ],
)
def test_chroma_and_hue_of_known_colours(rgb, chroma, hue):
    colour = measure_colour(a_pixel(*rgb), np.full((1, 1), Label.GREEN, np.uint8))

    assert colour.chroma == pytest.approx(chroma, abs=0.05)
    assert colour.hue == pytest.approx(hue, abs=0.05)


def test_cielab_of_the_whole_cube_of_colours_agrees_with_another_library_unseen_by_the_eye():
    steps = np.arange(0, 256, 5)
    cube = np.stack(np.meshgrid(steps, steps, steps), -1).reshape(1, -1, 3).astype(np.uint8)
    assert cube.shape == (1, 140_608, 3)  # one wide row, as the rows of a photo; a column takes another way

    ours, theirs = lab(cube).astype(np.float64), rgb2lab(cube)

    assert deltaE_ciede2000(ours, theirs).max() < 0.1


# Sharma, Wu & Dalal (2005) The CIEDE2000 color-difference formula. Color Res. Appl. 30, 21-30, table 1 (12 of
# its 34 pairs, read in copies of the table)
@pytest.mark.parametrize(
    ("one", "other", "expected"),
    [
        ((50, 2.6772, -79.7751), (50, 0, -82.7485), 2.0425),
        ((50, 3.1571, -77.2803), (50, 0, -82.7485), 2.8615),
        ((50, -1.3802, -84.2814), (50, 0, -82.7485), 1.0000),
        ((50, 0, 0), (50, -1, 2), 2.3669),
        ((50, 2.4900, -0.0010), (50, -2.4900, 0.0009), 7.1792),
        ((50, 2.4900, -0.0010), (50, -2.4900, 0.0011), 7.2195),
        ((50, 2.5, 0), (50, 0, -2.5), 4.3065),
        ((50, 2.5, 0), (73, 25, -18), 27.1492),
        ((60.2574, -34.0099, 36.2677), (60.4626, -34.1751, 39.4387), 1.2644),
        ((35.0831, -44.1164, 3.7933), (35.0232, -40.0716, 1.5901), 1.8645),
        ((90.8027, -2.0831, 1.4410), (91.1528, -1.6435, 0.0447), 1.4441),
        ((2.0776, 0.0795, -1.1350), (0.9033, -0.0636, -0.5514), 0.9082),
    ],
)
def test_colour_difference_agrees_with_the_published_pairs(one, other, expected):
    found = colour_difference(a_canopy(*one), a_canopy(*other))

    assert found.value == pytest.approx(expected, abs=1e-4)


# Karcher & Richardson (2003) Crop Science 43, 943-951: formula as quoted by a secondary page; hue, saturation
# and brightness by Python's colorsys, shared with nobody
GREENS = [
    ((60, 120, 40), 0.537582),
    ((40, 90, 30), 0.604575),
    ((150, 180, 60), 0.292484),
    ((0, 128, 0), 0.499346),
    ((200, 200, 50), 0.155229),
]


@pytest.mark.parametrize(("rgb", "expected"), GREENS)
def test_dark_green_index_of_known_greens(rgb, expected):
    index, _ = dark_green_index(a_pixel(*rgb), np.ones((1, 1), dtype=bool))

    assert index == pytest.approx(expected, abs=1e-6)


@pytest.mark.parametrize("rgb", [(60, 120, 40), (40, 90, 30), (150, 180, 60), (0, 128, 0), (90, 140, 80)])
def test_dark_green_index_agrees_with_colorsys(rgb):
    hue, saturation, brightness = colorsys.rgb_to_hsv(*(code / 255 for code in rgb))
    by_hand = ((hue * 360 - 60) / 60 + (1 - saturation) + (1 - brightness)) / 3

    index, _ = dark_green_index(a_pixel(*rgb), np.ones((1, 1), dtype=bool))

    assert index == pytest.approx(by_hand, abs=1e-6)


# the yellow painted disc of Rorie et al. (2011), hue 50, saturation 87 %, brightness 91 %, is said to have
# the index 0.0733 (from memory): that holds only with the hue floored at 60 degrees
def test_a_hue_below_yellow_counts_as_yellow():
    rgb = tuple(round(255 * part) for part in colorsys.hsv_to_rgb(50 / 360, 0.87, 0.91))

    index, clipped = dark_green_index(a_pixel(*rgb), np.ones((1, 1), dtype=bool))

    assert index == pytest.approx(0.0733, abs=2e-3)
    assert clipped == 100.0
