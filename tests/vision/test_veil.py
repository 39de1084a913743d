"""A veil of light over all of a photo is measured and taken off; a clear photo stays as it is."""

from pathlib import Path

import numpy as np
import pytest

from vision.cielab import encoded, linear
from vision.learned import LearnedTissue
from vision.photo import Pixels, read_photo
from vision.tissue import canopy
from vision.veil import MOST_VEIL, veil_of, without_veil

PHOTOS = Path(__file__).parents[1] / "photos"


@pytest.fixture(scope="module", params=["top_young.jpg", "top_felt.jpg"])
def top(request: pytest.FixtureRequest) -> Pixels:
    return read_photo(PHOTOS / request.param).pixels


def steamed(pixels: Pixels, share: float, light: float = 0.7) -> Pixels:
    """So much of the light is the steam's own, the same everywhere (Koschmieder's law at one distance)."""
    return encoded(linear(pixels) * (1 - share) + share * light)


def test_a_clear_photo_has_no_veil_and_stays_as_it_is(top):
    assert veil_of(top, top) == 0
    assert without_veil(top, 0.0) is top


@pytest.mark.parametrize("share", [0.15, 0.25, 0.4])
def test_steam_on_the_lens_is_measured_and_taken_off(top, share):
    """Against the known share of what lies over the lightest twentieth of the tray."""
    seen = steamed(top, share)
    lightest = float(np.percentile(linear(seen).max(axis=2), 95))

    veil = veil_of(seen, seen)

    assert veil > MOST_VEIL
    assert veil == pytest.approx(share * 0.7 / lightest, abs=0.02)
    lighter = lightest / float(np.percentile(linear(top).max(axis=2), 95))
    off = np.abs(linear(without_veil(seen, veil)) - np.minimum(linear(top) * lighter, 1))
    assert float(off.mean()) < 0.008


def test_leaves_that_steam_has_made_invisible_to_the_model_are_seen_again(top):
    """A quarter of the light from steam: 1 and 34 % in place of 50 and 94 %."""
    learned = LearnedTissue()
    seen = steamed(top, 0.25)
    was, steamy, clear = (
        100 * float(canopy(learned.label(one, 2.0).labels).mean())
        for one in (top, seen, without_veil(seen, veil_of(seen, seen)))
    )

    assert steamy < was - 40
    assert clear == pytest.approx(was, abs=1)


def test_with_the_veil_off_the_lightest_things_are_as_light_as_before(top):
    seen = steamed(top, 0.3)

    clear = without_veil(seen, veil_of(seen, seen))

    was, now = (np.percentile(linear(one).max(axis=2), 95) for one in (seen, clear))
    assert now == pytest.approx(was, abs=0.01)
    assert np.percentile(linear(clear).min(axis=2), 1) < 0.01


def test_what_is_dark_anywhere_in_the_photo_or_the_tray_shows_that_there_is_no_veil(top):
    pale = steamed(top, 0.3)

    assert veil_of(pale, top) == veil_of(top, pale) == 0


@pytest.mark.parametrize(
    ("darkest", "left"),
    [(40, None), (60, None), (64, 0.04873), (70, 0.03876), (90, 0.006), (120, 0.006)],
)
def test_of_a_veil_as_much_is_left_as_a_clear_photo_has(darkest, left):
    """Codes 40, 60, 64, 70, 90, 120 are 0.021, 0.045, 0.051, 0.061, 0.102, 0.188 of white (IEC 61966-2-1).

    Up to 0.05 nothing is taken off, beyond as much less is left as there is more, down to 0.006.
    """
    picture = np.full((100, 100, 3), 255, np.uint8)
    picture[:10] = (255, darkest, 255)
    seen = float(linear(np.full((1, 1, 3), darkest, np.uint8))[0, 0, 0])

    veil = veil_of(picture, picture)

    assert veil == (0 if left is None else pytest.approx((seen - left) / (1 - left), abs=1e-4))


@pytest.mark.parametrize(("columns", "clear"), [(4, True), (1, False)])
def test_a_hundredth_of_the_picture_has_to_be_dark(columns, clear):
    """4 and 1 of 250 columns: every second one of them is looked at."""
    picture = np.full((250, 250, 3), 255, np.uint8)
    picture[:, :columns] = 0

    assert (veil_of(picture, picture) == 0) is clear


def test_a_veil_begins_without_a_jump(top):
    shares = np.linspace(0, 0.08, 21)
    steam = [steamed(np.ascontiguousarray(top[::3, ::3]), share) for share in shares]

    steps = np.diff([veil_of(seen, seen) for seen in steam])

    assert steps.min() > -0.003
    assert steps.max() < 0.04


def test_a_black_picture_has_no_veil():
    black = np.zeros((100, 100, 3), np.uint8)

    assert veil_of(black, black) == 0


def test_a_picture_that_is_dark_in_one_channel_has_no_veil():
    red = np.full((100, 100, 3), (250, 10, 200), np.uint8)

    assert veil_of(red, red) == 0


@pytest.mark.parametrize("code", [1, 40, 128, 255])
def test_of_a_picture_of_one_colour_nothing_is_taken_off(code):
    """All of it may be veil: then nothing is left without it, and no number is made of that."""
    flat = np.full((100, 100, 3), code, np.uint8)

    with np.errstate(all="raise"):
        clear = without_veil(flat, veil_of(flat, flat))

    assert (clear == flat).all()


def test_around_the_tray_the_same_light_is_taken_off_however_light_a_card_there_is():
    """Of the card's light more would be taken, and what is dark there would have lost all of its colour."""
    tray, around = np.full((2, 100, 100, 3), (60, 40, 30), np.uint8)
    tray[:20], around[:20] = 140, 240
    tray[-10:] = around[-10:] = 5
    seen, beyond = steamed(tray, 0.2), steamed(around, 0.2)

    clear = linear(without_veil(beyond, veil_of(seen, beyond), seen))[50, 50]

    assert clear / clear[0] == pytest.approx((linear(around)[50, 50] / linear(around)[50, 50, 0]), abs=0.05)
