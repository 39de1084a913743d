"""Light that cannot be used is refused with its own reason; white balance makes grey things grey."""

from dataclasses import fields, replace
from pathlib import Path

import cv2
import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from vision.cielab import encoded, linear
from vision.corners import Corners, CornersFrom
from vision.light import Light, judge_light, judge_pixels, surroundings_tint, white_balance
from vision.photo import Photo, Pixels, read_photo
from vision.reason import Reason
from vision.sharpness import smear
from vision.station import Patches
from vision.topview import make_top_view

PHOTOS = Path(__file__).parents[1] / "photos"
RIM = ((143.22, 160.6), (1082.35, 237.31), (1112.54, 696.31), (82.34, 678.47))  # handheld.json
CORNERS = Corners(points=RIM, found_by=CornersFrom.HAND, confidence=1.0)
GREY_CARD = (0.20, 0.20, 0.20)


@pytest.fixture(scope="module")
def handheld() -> Photo:
    return read_photo(PHOTOS / "handheld.jpg")


def lit(photo: Photo, red: float = 1.0, green: float = 1.0, blue: float = 1.0) -> Photo:
    """The same scene with its light multiplied, as a camera would take it without correcting anything."""
    light = np.clip(linear(photo.pixels) * np.array([red, green, blue], np.float32), 0, 1)
    code = np.where(light <= 0.0031308, 12.92 * light, 1.055 * light ** (1 / 2.4) - 0.055)
    return replace(photo, pixels=np.rint(255 * code).astype(np.uint8))


def painted(photo: Photo, colour: tuple[int, int, int]) -> Photo:
    """The same tray, filled up with leaves of that colour."""
    pixels = photo.pixels.copy()
    cv2.fillConvexPoly(pixels, np.round(RIM).astype(np.int32), colour)
    return replace(photo, pixels=pixels)


def judged(photo: Photo, patches: Patches | None = None) -> Light:
    return judge_light(photo, make_top_view(photo, CORNERS), patches)


def silent_fields(light: Light) -> set[str]:
    """Fields that are None without a reason, or have both."""
    missing = {field.name for field in fields(light) if getattr(light, field.name) is None} - {"refusal"}
    return missing ^ set(light.reasons)


def test_a_good_photo_is_used_and_every_missing_number_says_why(handheld):
    light = judged(handheld)

    assert light.refusal is None
    assert light.corrected_by == "none"
    assert light.reasons["cast"] is Reason.NO_PATCH
    assert silent_fields(light) == set()
    assert 20 < light.exposure < 70


@pytest.mark.parametrize("stops", [-2, -1, 1])
def test_a_stop_too_little_or_too_much_is_still_used(handheld, stops):
    assert judged(lit(handheld, *[2.0**stops] * 3)).refusal is None


def test_a_photo_six_stops_too_dark_is_refused(handheld):
    assert judged(lit(handheld, *[2.0**-6] * 3)).refusal is Reason.TOO_DARK


def test_a_photo_four_stops_too_bright_is_refused(handheld):
    assert judged(lit(handheld, *[2.0**4] * 3)).refusal is Reason.TOO_BRIGHT


def test_a_blurred_photo_is_refused(handheld):
    blurred = replace(handheld, pixels=np.asarray(cv2.GaussianBlur(handheld.pixels, (0, 0), 4), np.uint8))

    assert judged(blurred).refusal is Reason.BLURRED


def smaller(photo: Photo, times: float) -> tuple[Photo, Corners]:
    pixels = cv2.resize(photo.pixels, None, fx=1 / times, fy=1 / times, interpolation=cv2.INTER_AREA)
    one, two, three, four = ((x / times, y / times) for x, y in RIM)
    return replace(photo, pixels=np.asarray(pixels, np.uint8)), replace(
        CORNERS, points=(one, two, three, four)
    )


@pytest.mark.parametrize("times", [4, 6])
def test_a_sharp_photo_with_too_few_pixels_of_the_tray_is_to_be_taken_nearer_and_not_held_still(
    handheld, times
):
    """Sent small by a messenger, or taken from across the room."""
    photo, corners = smaller(handheld, times)

    assert judge_light(photo, make_top_view(photo, corners), None).refusal is Reason.TOO_FAR


def test_a_small_photo_that_is_blurred_is_refused_as_blurred(handheld):
    photo, corners = smaller(handheld, 4)
    blurred = replace(photo, pixels=np.asarray(cv2.GaussianBlur(photo.pixels, (0, 0), 2), np.uint8))

    assert judge_light(blurred, make_top_view(blurred, corners), None).refusal is Reason.BLURRED


@pytest.mark.parametrize("sigma", [16, 32])
def test_a_photo_blurred_until_no_edge_is_left_is_refused_too(handheld, sigma):
    blurred = replace(handheld, pixels=np.asarray(cv2.GaussianBlur(handheld.pixels, (0, 0), sigma), np.uint8))

    assert judged(blurred).blur_mm is None
    assert judged(blurred).refusal is Reason.BLURRED


def moved(pixels: Pixels, length_px: int, way_deg: float) -> Pixels:
    """What a hand that moves makes of a picture: light adds up on its way, before codes are made of it."""
    half = length_px // 2
    level = np.zeros((2 * half + 1, 2 * half + 1), np.float32)
    level[half] = 1.0
    way = cv2.warpAffine(level, cv2.getRotationMatrix2D((half, half), way_deg, 1.0), level.shape)
    return encoded(cv2.filter2D(linear(pixels), -1, way / way.sum()))


def framed(top: Pixels) -> tuple[Pixels, Corners]:
    """A top view in a dark rim on a bright bench, and where it lies."""
    for width, colour in ((20, (35, 35, 35)), (150, (150, 145, 140))):
        top = np.asarray(cv2.copyMakeBorder(top, *[width] * 4, cv2.BORDER_CONSTANT, value=colour), np.uint8)
    top = np.asarray(cv2.GaussianBlur(top, (0, 0), 0.6), np.uint8)  # as a lens leaves it
    return top, replace(CORNERS, points=((170, 170), (1186, 170), (1186, 678), (170, 678)))


@pytest.mark.parametrize("way_deg", [0, 30, 60, 90, 120, 150])
@pytest.mark.parametrize(
    ("moved_mm", "refusal"), [(1.0, None), (5.0, Reason.BLURRED), (10.0, Reason.BLURRED)]
)
def test_a_photo_taken_with_a_moving_hand_is_refused_though_its_streaks_have_sharp_sides(
    handheld, moved_mm, refusal, way_deg
):
    pixels, corners = framed(read_photo(PHOTOS / "top_young.jpg").pixels)

    photo = replace(handheld, pixels=moved(pixels, round(2 * moved_mm), way_deg))

    assert judge_light(photo, make_top_view(photo, corners), None).refusal is refusal


@pytest.mark.parametrize("turned", [False, True])
def test_a_ribbed_mat_is_not_taken_for_streaks_of_a_moving_hand(handheld, turned):
    """Slopes one way only, and the rim is sharp."""
    wave = np.tile(np.repeat([70.0, 140.0], 5), 102)[:1016]
    ribs = np.tile(wave[:508], (1016, 1)).T if turned else np.tile(wave, (508, 1))
    uneven = ribs + np.random.default_rng(0).normal(0, 4, ribs.shape)
    pixels, corners = framed(np.clip(uneven[:, :, None] * (0.8, 1.0, 0.6), 0, 255).astype(np.uint8))
    photo = replace(handheld, pixels=pixels)

    view = make_top_view(photo, corners)

    assert smear(np.asarray(cv2.cvtColor(view.pixels, cv2.COLOR_RGB2GRAY), np.uint8)) > 2
    assert judge_light(photo, view, None).refusal is None


@pytest.mark.parametrize("gains", [(1.0, 0.4, 1.0), (1.3, 0.5, 0.9), (0.9, 0.5, 1.4)])
def test_purple_light_is_refused(handheld, gains):
    assert judged(lit(handheld, *gains)).refusal is Reason.PURPLE


@pytest.mark.parametrize("gains", [(1.4, 1.0, 0.6), (0.8, 1.0, 1.3), (1.0, 1.0, 1.0), (1.1, 1.2, 0.9)])
def test_white_light_from_warm_to_cold_is_never_purple(handheld, gains):
    assert judged(lit(handheld, *gains)).refusal is None


def test_a_red_cloth_in_warm_light_is_no_purple_light(handheld):
    """All else around is yellow there, and told nothing: the cloth alone was the witness."""
    pixels = handheld.pixels.copy()
    pixels[20:90, 300:900] = (170, 60, 90)

    assert judged(lit(replace(handheld, pixels=pixels), 1.3, 1.0, 0.45)).refusal is None
    assert judged(lit(replace(handheld, pixels=pixels), 1.0, 0.4, 1.0)).refusal is Reason.PURPLE


@pytest.mark.parametrize("leaf", [(190, 40, 90), (150, 90, 160), (120, 20, 60)])
def test_a_tray_full_of_red_leaves_is_no_purple_light(handheld, leaf):
    assert judged(painted(handheld, leaf)).refusal is None


def test_a_brick_red_bench_is_no_purple_light_as_long_as_something_pale_lies_there(handheld):
    pixels = np.full_like(handheld.pixels, (170, 80, 65))
    tray = np.round((np.array(RIM) - np.mean(RIM, axis=0)) * 1.1 + np.mean(RIM, axis=0)).astype(np.int32)
    inside = cv2.fillConvexPoly(np.zeros(pixels.shape[:2], np.uint8), tray, 1) > 0
    pixels[inside] = handheld.pixels[inside]
    pixels[20:90, 300:900] = (225, 224, 220)  # a sheet of paper

    assert judged(replace(handheld, pixels=pixels)).refusal is None


def test_green_leaves_do_not_hide_purple_light(handheld):
    purple = lit(handheld, 1.0, 0.4, 1.0)

    assert surroundings_tint(painted(purple, (60, 120, 40)), make_top_view(purple, CORNERS)) < -0.2


def test_the_white_patch_decides_where_it_is_seen(handheld):
    white = Patches(white=(0.8, 0.85, 0.8), grey=None)
    purple = Patches(white=(0.8, 0.3, 0.8), grey=None)

    assert judged(lit(handheld, 1.0, 0.4, 1.0), white).refusal is None
    assert judged(handheld, purple).refusal is Reason.PURPLE


@pytest.mark.parametrize(("tint", "refusal"), [(-0.15, None), (-0.25, Reason.PURPLE)])
def test_light_is_purple_from_a_fifth_of_a_stop_too_little_green_on(handheld, tint, refusal):
    assert judged(handheld, Patches(white=(0.5, 0.5 * 2**tint, 0.5), grey=None)).refusal is refusal


def test_a_black_and_white_photo_is_refused_though_it_is_stored_in_colour(handheld):
    grey = cv2.cvtColor(handheld.pixels, cv2.COLOR_RGB2GRAY)

    assert judged(replace(handheld, pixels=np.repeat(grey[:, :, None], 3, axis=2))).refusal is Reason.GREY


def sepia(pixels: Pixels, share: float = 1.0) -> Pixels:
    """The filter of W3C, Filter Effects Module Level 1 (matrix from memory), or a part of it."""
    full = np.array([[0.393, 0.769, 0.189], [0.349, 0.686, 0.168], [0.272, 0.534, 0.131]])
    return np.clip(np.rint(pixels @ (full * share + np.eye(3) * (1 - share)).T), 0, 255).astype(np.uint8)


@pytest.mark.parametrize("patches", [None, Patches(white=(0.8, 0.75, 0.6), grey=None)])
def test_a_photo_in_sepia_is_refused_though_nothing_of_it_is_grey(handheld, patches):
    assert judged(replace(handheld, pixels=sepia(handheld.pixels)), patches).refusal is Reason.FADED


def test_colours_that_have_faded_half_way_are_a_doubt_and_no_refusal(handheld):
    light = judged(replace(handheld, pixels=sepia(handheld.pixels, 0.75)))

    assert (light.refusal, light.doubts) == (None, (Reason.FADED,))


def test_a_close_up_in_one_colour_is_doubted_and_not_refused(handheld):
    light = judge_pixels(sepia(handheld.pixels))

    assert (light.refusal, light.doubts) == (None, (Reason.FADED,))


def test_glare_over_part_of_the_tray_is_a_doubt(handheld):
    pixels = handheld.pixels.copy()
    veil = np.zeros(pixels.shape[:2], np.float32)
    cv2.circle(veil, (500, 400), 120, 0.35, -1)
    shining = replace(handheld, pixels=encoded(linear(pixels) + veil[:, :, None]))

    light = judged(shining)

    assert (light.refusal, light.doubts) == (None, (Reason.GLARE,))
    assert judged(handheld).doubts == ()


def test_steam_on_the_lens_is_a_doubt_and_its_light_is_told(handheld):
    steam = encoded(linear(handheld.pixels) * 0.75 + 0.25 * 0.7)

    light = judged(replace(handheld, pixels=steam))

    assert (light.refusal, light.doubts) == (None, (Reason.FADED,))
    assert light.veil > 0.2
    assert judged(handheld).veil == 0


def test_a_picture_of_unknown_scale_is_judged_without_blur(handheld):
    light = judge_pixels(handheld.pixels)

    assert light.refusal is None
    assert light.reasons["blur_mm"] is Reason.NO_SCALE
    assert silent_fields(light) == set()


def strips(*colours: tuple[int, int, int]) -> Pixels:
    """Ten columns of each colour."""
    return np.repeat(np.array([colours], np.uint8), 10, axis=1).repeat(20, axis=0)


@pytest.mark.parametrize(
    ("ends", "share", "refusal"),
    [
        ((255, 255, 255), 0.07, None),  # glare on a few leaves
        ((255, 255, 255), 0.10, Reason.TOO_BRIGHT),  # burnt: no colour is left there
        ((255, 255, 60), 0.13, None),
        ((255, 60, 255), 0.13, None),
        ((60, 255, 255), 0.13, None),
        ((255, 255, 60), 0.18, Reason.TOO_BRIGHT),  # faded: two channels at their end, whichever
        ((255, 60, 255), 0.18, Reason.TOO_BRIGHT),
        ((60, 255, 255), 0.18, Reason.TOO_BRIGHT),
        ((255, 90, 60), 0.50, None),  # one channel alone still tells leaves apart
        ((0, 0, 0), 0.08, None),  # shadow
        ((0, 0, 0), 0.13, Reason.TOO_DARK),
    ],
)
def test_a_photo_is_refused_by_the_share_of_it_that_shows_nothing(ends, share, refusal):
    """Limits: common practice, 5 to 10 % of a picture at its end, and the trials named in `light.py`."""
    pixels = np.full((100, 200, 3), (70, 130, 50), np.uint8)
    pixels[:, : round(200 * share)] = ends

    assert judge_pixels(pixels).refusal is refusal


def test_shares_are_counted_by_hand():
    white, red_end, dark, green = (255, 255, 255), (255, 90, 60), (2, 3, 1), (60, 120, 40)
    light = judge_pixels(strips(white, red_end, dark, green))

    assert light.clipped_pct == pytest.approx(50.0)  # white and red
    assert light.glare_pct == pytest.approx(25.0)  # white alone has no colour
    assert light.dark_pct == pytest.approx(25.0)


# white balance


@given(st.tuples(*[st.floats(0.12, 0.3)] * 3))
def test_the_grey_card_comes_out_grey_and_green_keeps_its_value(card):
    code = np.where(np.array(card) > 0.0031308, 1.055 * np.array(card) ** (1 / 2.4) - 0.055, 0) * 255
    seen = np.rint(code).astype(np.uint8).reshape(1, 1, 3)

    balanced = white_balance(seen, Patches(white=None, grey=card))

    assert np.ptp(balanced.astype(int)) <= 2
    assert balanced[0, 0, 1] == seen[0, 0, 1]


def test_without_a_patch_nothing_is_changed(handheld):
    assert white_balance(handheld.pixels, None) is handheld.pixels
    assert white_balance(handheld.pixels, Patches(white=None, grey=None)) is handheld.pixels


def test_light_that_is_too_coloured_is_not_amplified(handheld):
    lamp = Patches(white=None, grey=(0.3, 0.2, 0.09))

    assert white_balance(handheld.pixels, lamp) is handheld.pixels
    assert judged(handheld, lamp).corrected_by == "none"
    assert judged(handheld, lamp).doubts == (Reason.COLOURED,)


def test_a_warm_lamp_that_the_patch_sets_right_is_no_doubt(handheld):
    assert judged(handheld, Patches(white=None, grey=(0.3, 0.2, 0.11))).doubts == ()


def test_cast_is_the_strongest_over_the_weakest_channel(handheld):
    light = judged(handheld, Patches(white=None, grey=(0.20, 0.20, 0.16)))

    assert light.cast == pytest.approx(1.25)
    assert light.corrected_by == "patch"
    assert "cast" not in light.reasons


def test_a_neutral_patch_leaves_every_colour_as_it_was(handheld):
    balanced = white_balance(handheld.pixels, Patches(white=(0.85, 0.85, 0.85), grey=GREY_CARD))

    np.testing.assert_array_equal(balanced, handheld.pixels)


@pytest.mark.parametrize(("colour", "refusal"), [((20, 36, 18), Reason.TOO_DARK), ((30, 55, 25), None)])
def test_a_picture_whose_lightest_tenth_is_nearly_black_is_too_dark(colour, refusal):
    """L* of 12 and 20, none of it black: what has no light in it has no colour either."""
    assert judge_pixels(np.full((60, 80, 3), colour, np.uint8)).refusal is refusal
