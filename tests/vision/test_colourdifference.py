"""How far apart two canopies look, and when that is not told."""

import subprocess
import sys
from dataclasses import replace
from pathlib import Path

import cv2
import numpy as np
import pytest

from vision.cielab import linear
from vision.colourdifference import CanopyColour, Seen, colour_difference, mean_colour, seen
from vision.reason import Reason

ROOT = Path(__file__).resolve().parents[2]
GREEN = CanopyColour(lightness=45.0, a=-28.0, b=30.0, corrected_by="patch", method="learned 3")
YELLOWER = replace(GREEN, a=-18.0, b=40.0)
BARE = replace(GREEN, lightness=None, a=None, b=None)
AS_SHOT = replace(GREEN, corrected_by="none")


def test_a_canopy_is_not_apart_from_itself():
    found = colour_difference(GREEN, GREEN)

    assert (found.value, found.even, found.lighter, found.reason) == (0.0, 0.0, 0.0, None)


def test_it_is_as_far_one_way_as_the_other():
    there, back = colour_difference(GREEN, YELLOWER), colour_difference(YELLOWER, GREEN)

    assert there.value == pytest.approx(back.value)
    assert there.value > 5.0


@pytest.mark.parametrize(
    ("one", "other", "why"),
    [
        (GREEN, BARE, Reason.NO_CANOPY),
        (BARE, GREEN, Reason.NO_CANOPY),
        (GREEN, AS_SHOT, Reason.ONE_PATCH),
        (AS_SHOT, GREEN, Reason.ONE_PATCH),
        (AS_SHOT, AS_SHOT, Reason.NO_PATCH),
        (AS_SHOT, replace(GREEN, corrected_by=None), Reason.NO_PATCH),
        (GREEN, replace(GREEN, method="plain 1"), Reason.OTHER_METHODS),
    ],
)
def test_colours_that_were_had_by_other_means_are_not_compared(one, other, why):
    found = colour_difference(one, other)

    assert (found.value, found.even, found.lighter) == (None, None, None)
    assert found.reason is why


def the_colour_of(light):
    """Of linear sRGB: through codes of 8 bit it would be rounded."""
    fine = np.array([[light]], np.float32)
    lightness, a, b = (float(x) for x in cv2.cvtColor(fine, cv2.COLOR_LRGB2Lab)[0, 0])
    return replace(GREEN, lightness=lightness, a=a, b=b)


def test_a_darker_photo_of_the_same_canopy_is_apart_by_its_light_alone():
    light = linear(np.array([[(70, 125, 45)]], np.uint8))[0, 0]
    as_it_was, darker = the_colour_of(light), the_colour_of(light * 0.79)

    found = colour_difference(darker, as_it_was)

    assert found.value > 3.0
    assert found.even < 0.05
    assert found.lighter < 0


def test_a_yellower_canopy_stays_apart_when_both_are_equally_light():
    found = colour_difference(replace(YELLOWER, lightness=52.0), GREEN)

    assert found.even > 5.0


def test_the_mean_of_canopies_is_the_mean_of_each_axis():
    mean = mean_colour([GREEN, replace(YELLOWER, lightness=47.0)])

    assert mean.lab == pytest.approx((46.0, -23.0, 35.0))
    assert mean.means == GREEN.means


@pytest.mark.parametrize("colours", [[], [GREEN, BARE], [GREEN, AS_SHOT]])
def test_no_mean_of_what_cannot_be_compared(colours):
    with pytest.raises(ValueError, match="a mean colour needs"):
        mean_colour(colours)


# bounds 1, 2 and 3.5: Mokrzycki & Tatol (2011) as quoted in the manual of colour 0.4.7
@pytest.mark.parametrize(
    ("difference", "what"),
    [
        (0.0, Seen.NOT),
        (0.9, Seen.NOT),
        (1.0, Seen.CLOSELY),
        (2.0, Seen.BESIDE),
        (3.5, Seen.PLAINLY),
        (40.0, Seen.PLAINLY),
    ],
)
def test_what_the_eye_makes_of_it(difference, what):
    assert seen(difference) is what


def test_the_library_is_loaded_by_the_first_difference_and_not_before():
    asked = (
        "import sys; from vision.colourdifference import *; "
        "one = CanopyColour(lightness=45., a=-28., b=30., corrected_by='patch', method='m'); "
        "before = 'skimage' in sys.modules, 'numpy' in sys.modules; "
        "colour_difference(one, one); print(before, 'skimage' in sys.modules)"
    )
    done = subprocess.run(
        [sys.executable, "-c", asked], cwd=ROOT, capture_output=True, text=True, check=True, timeout=60
    )
    assert done.stdout.strip() == "(False, False) True"
