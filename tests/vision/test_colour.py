"""Trays painted in one colour, whose colour is known, and what happens where a colour cannot be told."""

from dataclasses import fields

import numpy as np
import pytest

from vision.colour import Colour, dark_green_index, measure_colour
from vision.reason import Reason
from vision.tissue import Label

GREEN = (60, 120, 40)
RED = (110, 40, 70)
BROWN = (90, 70, 50)


def a_painted_tray(*colours):
    """A top view of vertical stripes of equal width, one per colour."""
    return np.repeat(np.array([colours], dtype=np.uint8), 60, axis=0).repeat(12, axis=1)


def striped_labels(*labels):
    return np.repeat(np.array([labels], dtype=np.uint8), 60, axis=0).repeat(12, axis=1)


def silent_fields(colour: Colour) -> set[str]:
    return {f.name for f in fields(colour) if getattr(colour, f.name) is None} ^ set(colour.reasons)


def test_the_colour_is_that_of_the_canopy_alone():
    colour = measure_colour(a_painted_tray(GREEN, BROWN), striped_labels(Label.GREEN, Label.MEDIUM))

    assert (colour.lightness, colour.a, colour.b) == pytest.approx((45.006, -35.378, 36.853), abs=0.05)
    assert colour.chroma == pytest.approx(51.085, abs=0.05)
    assert colour.hue == pytest.approx(133.83, abs=0.1)
    assert colour.spread == pytest.approx(0, abs=1e-3)


def test_two_colours_spread_by_half_their_distance():
    colour = measure_colour(a_painted_tray(GREEN, GREEN, RED, RED), striped_labels(5, 5, 6, 6))
    green = measure_colour(a_painted_tray(GREEN), striped_labels(5))
    red = measure_colour(a_painted_tray(RED), striped_labels(6))

    distance = np.hypot(np.hypot(green.lightness - red.lightness, green.a - red.a), green.b - red.b)
    assert colour.spread == pytest.approx(distance / 2, rel=1e-4)


def test_a_hue_next_to_zero_is_averaged_across_the_seam():
    seam = measure_colour(a_painted_tray((200, 60, 110), (200, 60, 80)), striped_labels(6, 6)).hue

    assert seam is not None
    assert min(seam, 360 - seam) < 20


def test_without_canopy_there_is_no_colour_and_the_reason_is_given():
    colour = measure_colour(a_painted_tray(BROWN), striped_labels(Label.MEDIUM))

    assert set(colour.reasons.values()) == {Reason.NO_CANOPY}
    assert silent_fields(colour) == set()


def test_grey_shoots_have_a_lightness_but_no_hue():
    colour = measure_colour(a_painted_tray((180, 180, 180)), striped_labels(Label.PALE))

    assert colour.lightness == pytest.approx(73.0, abs=0.5)
    assert colour.hue is None
    assert colour.reasons["hue"] is Reason.NO_HUE
    assert silent_fields(colour) == set()


def test_a_red_crop_has_no_dark_green_index():
    colour = measure_colour(a_painted_tray(RED, RED, GREEN), striped_labels(6, 6, 5))

    assert colour.dark_green is None
    assert colour.reasons["dark_green"] is Reason.NOT_GREEN
    assert silent_fields(colour) == set()


def test_a_darker_green_has_a_higher_index():
    light = measure_colour(a_painted_tray((150, 180, 60)), striped_labels(5)).dark_green
    dark = measure_colour(a_painted_tray((40, 90, 30)), striped_labels(5)).dark_green

    assert dark > light


def test_the_share_of_pixels_outside_the_indexs_range_of_hue_is_told():
    stripes = a_painted_tray(GREEN, (200, 150, 50))  # hue 40 degrees: more orange than yellow

    _, clipped = dark_green_index(stripes, np.ones(stripes.shape[:2], dtype=bool))

    assert clipped == 50.0


def test_pictures_and_labels_of_different_size_are_our_mistake_and_loud():
    with pytest.raises(ValueError, match="differ in size"):
        measure_colour(a_painted_tray(GREEN), striped_labels(5, 5))
    with pytest.raises(ValueError, match="at least one pixel"):
        dark_green_index(a_painted_tray(GREEN), np.zeros((60, 12), dtype=bool))
