"""Drawn trays: squares of leaf on plain media, of which one can count the pixels."""

from pathlib import Path

import cv2
import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.made.excess import ExcessGreenTissue
from vision.planes import Pixels
from vision.tissue import Label, Labels, Mask, PlainTissue, Tissue, canopy

PHOTOS = Path(__file__).parent.parent / "photos"

# sRGB as seen in photographs of trays: medians of rendered trays in white light
PEAT, COIR, HEMP, PAPER = (52, 42, 34), (94, 68, 48), (150, 126, 90), (186, 184, 172)
GREEN, YELLOW, MAGENTA, PURPLE = (84, 140, 60), (190, 178, 70), (160, 50, 78), (122, 84, 118)
WALL = (38, 38, 39)


def a_medium(colour: tuple[int, int, int], *, grain: float = 6.0, seed: int = 0) -> Pixels:
    """A bare top view at 2 px/mm: one colour with grain, walls of 12 mm around."""
    rng = np.random.default_rng(seed)
    light = cv2.GaussianBlur(rng.normal(0, 3 * grain, (508, 1016, 1)), (5, 5), 0)[..., None]
    top = np.clip(np.array(colour) + light, 0, 255).astype(np.uint8)
    walls = np.ones((508, 1016), bool)
    walls[24:-24, 24:-24] = False
    top[walls] = WALL
    return top


def squares(step: int = 40, side: int = 20) -> Mask:
    """Squares in rows, all inside the walls: (side / step)**2 of the ground."""
    rows, columns = np.mgrid[:508, :1016]
    inside = (rows >= 40) & (rows < 468) & (columns >= 40) & (columns < 976)
    return inside & (rows % step < side) & (columns % step < side)


def a_tray(medium: tuple[int, int, int], leaf: tuple[int, int, int]) -> Pixels:
    """A medium with squares of leaf."""
    top = a_medium(medium)
    top[squares()] = leaf
    return top


def labels_of(top: Pixels, px_per_mm: float | None = 2.0) -> Labels:
    return PlainTissue().label(top, px_per_mm).labels


def share(mask: Mask) -> float:
    return 100 * float(mask.mean())


def in_other_light(top: Pixels, gain: tuple[float, float, float]) -> Pixels:
    """The same tray with each channel's light multiplied."""
    code = np.arange(256) / 255
    light = np.where(code <= 0.04045, code / 12.92, ((code + 0.055) / 1.055) ** 2.4)[:, None] * np.array(gain)
    back = np.where(light <= 0.0031308, 12.92 * light, 1.055 * np.clip(light, 0, 1) ** (1 / 2.4) - 0.055)
    return cv2.LUT(top, np.clip(np.round(255 * back), 0, 255).astype(np.uint8).reshape(1, 256, 3))


@pytest.mark.parametrize("medium", [PEAT, COIR, HEMP, PAPER], ids=["peat", "coir", "hemp", "paper"])
@pytest.mark.parametrize(
    ("leaf", "label"),
    [(GREEN, Label.GREEN), (YELLOW, Label.PALE), (MAGENTA, Label.RED), (PURPLE, Label.RED)],
    ids=["green", "yellow", "magenta", "purple"],
)
def test_leaves_of_any_colour_are_found_on_any_medium(medium, leaf, label):
    labels = labels_of(a_tray(medium, leaf))

    assert (labels[squares()] == label).mean() > 0.98
    assert share(canopy(labels)) == pytest.approx(share(squares()), abs=1.0)


@pytest.mark.parametrize("medium", [PEAT, COIR, HEMP, PAPER], ids=["peat", "coir", "hemp", "paper"])
def test_a_bare_tray_has_no_canopy(medium):
    assert share(canopy(labels_of(a_medium(medium)))) < 0.5


def test_walls_are_rim_and_the_medium_is_not():
    labels = labels_of(a_medium(HEMP))

    assert (labels[:20] == Label.RIM).mean() > 0.95
    assert (labels[:, :20] == Label.RIM).mean() > 0.95
    assert (labels[60:-60, 60:-60] == Label.RIM).mean() < 0.01


def test_without_a_scale_nothing_is_rim_or_fuzz():
    labels = labels_of(a_medium(HEMP), None)

    assert not np.isin(labels, [Label.RIM, Label.FUZZ]).any()


def test_labels_have_the_pictures_own_size_whatever_it_is():
    assert labels_of(a_tray(PEAT, GREEN)[:97, :131], None).shape == (97, 131)


def test_the_numbers_of_labels_never_change():
    """They stand in the pictures of labels that books and other programs keep."""
    names = ["OUTSIDE", "RIM", "MEDIUM", "HULL", "PALE", "GREEN", "RED", "ROOT_HAIR", "FUZZ", "OTHER"]

    assert [(label.name, label.value) for label in Label] == [(name, k) for k, name in enumerate(names)]


def test_a_single_pixel_is_labelled_too():
    assert labels_of(np.full((1, 1, 3), GREEN, np.uint8), None)[0, 0] == Label.GREEN


@pytest.mark.parametrize("picture", [np.zeros((4, 4), np.uint8), np.zeros((4, 4, 3), np.float32)])
def test_what_is_no_colour_picture_is_refused_loudly(picture):
    with pytest.raises(ValueError, match="uint8"):
        PlainTissue().label(picture, None)


def test_a_scale_must_be_positive():
    with pytest.raises(ValueError, match="px_per_mm"):
        PlainTissue().label(a_medium(PEAT), 0.0)


LEAVES = st.sampled_from([GREEN, YELLOW, MAGENTA, PURPLE])
MEDIA = st.sampled_from([PEAT, COIR, HEMP, PAPER])


@settings(max_examples=12, deadline=None)
@given(MEDIA, LEAVES, st.floats(0.7, 1.3))
def test_a_darker_or_brighter_photo_has_the_same_coverage(medium, leaf, light):
    top = a_tray(medium, leaf)

    assert share(canopy(labels_of(in_other_light(top, (light,) * 3)))) == pytest.approx(
        share(canopy(labels_of(top))), abs=1.0
    )


@settings(max_examples=8, deadline=None)
@given(MEDIA, LEAVES)
def test_turning_the_tray_turns_the_labels(medium, leaf):
    top = a_tray(medium, leaf)
    turned = np.ascontiguousarray(np.rot90(top, 2))

    assert (np.rot90(labels_of(turned), 2) == labels_of(top)).mean() > 0.999


@settings(max_examples=6, deadline=None)
@given(MEDIA, LEAVES)
def test_twice_the_pixels_give_the_same_coverage(medium, leaf):
    top = a_tray(medium, leaf)
    larger = top.repeat(2, 0).repeat(2, 1)

    assert share(canopy(labels_of(larger, 4.0))) == pytest.approx(share(canopy(labels_of(top))), abs=0.5)


@pytest.mark.parametrize(
    "gain", [(1.1, 1.0, 0.9), (0.9, 1.0, 1.1)], ids=["a little too warm", "a little too cold"]
)
def test_a_green_stand_survives_a_wrong_white_balance(gain):
    top = a_tray(HEMP, GREEN)

    assert share(canopy(labels_of(in_other_light(top, gain)))) == pytest.approx(share(squares()), abs=1.0)


def test_a_little_red_among_green_leaves_is_not_a_red_crop():
    """Soil and stones in a bluish light are as red as a young red cabbage."""
    top = a_tray(PEAT, GREEN)
    top[60:80, 60:120] = (118, 104, 112)

    assert (labels_of(top)[60:80, 60:120] == Label.RED).mean() < 0.05


def test_a_few_red_seeds_on_reddish_soil_are_no_red_crop():
    top = np.full((508, 1016, 3), (118, 104, 112), np.uint8)
    top[squares(step=60, side=6)] = MAGENTA

    assert share(canopy(labels_of(top))) < 2.0


@pytest.mark.parametrize("tissue", [PlainTissue(), ExcessGreenTissue()], ids=["plain", "excess green"])
def test_every_method_names_itself_and_keeps_to_the_labels(tissue: Tissue):
    labels = tissue.label(a_tray(COIR, GREEN), 2.0).labels

    assert tissue.name
    assert tissue.version
    assert labels.dtype == np.uint8
    assert set(np.unique(labels)) <= set(Label)


@pytest.mark.parametrize(("name", "points"), [("top_felt", 3.0), ("top_young", 12.0)])
def test_coverage_of_rendered_trays_is_near_their_truth(name, points):
    """Broccoli of day 9 and radish of day 5 on fibre mats; pale shoots on a mat are the weaker case."""
    top = np.ascontiguousarray(cv2.imread(str(PHOTOS / f"{name}.jpg"))[..., ::-1])
    truth = cv2.imread(str(PHOTOS / f"{name}_labels.png"), cv2.IMREAD_GRAYSCALE)

    assert share(canopy(labels_of(top))) == pytest.approx(share(canopy(truth)), abs=points)
