"""Levelled pictures: two lamps look alike, a pale tray stays pale, nothing of the edge is left."""

import cv2
import numpy as np
from numpy.typing import NDArray

from vision.cielab import lab, linear
from vision.levelled import levelled

Pixels = NDArray[np.uint8]


def a_top(green: tuple[int, int, int] = (70, 120, 40)) -> Pixels:
    """Leaves with glints over a brown medium."""
    chance = np.random.default_rng(3)
    top = np.empty((508, 1016, 3), np.uint8)
    top[:] = (96, 74, 58)
    for _ in range(900):
        y, x = int(chance.integers(0, 508)), int(chance.integers(0, 1016))
        leaf = np.clip(np.array(green) * chance.uniform(0.7, 1.2), 0, 255).tolist()
        cv2.ellipse(top, (x, y), (15, 9), 0, 0, 360, leaf, -1)
        cv2.circle(top, (x, y), 4, (205, 208, 203), -1)
    return top


def under(top: Pixels, *gain: float) -> Pixels:
    """The same tray under another lamp."""
    light = np.clip(linear(top) * np.array(gain), 0, 1)
    curve = np.where(light <= 0.0031308, 12.92 * light, 1.055 * light ** (1 / 2.4) - 0.055)
    return np.asarray(np.rint(255 * curve), np.uint8)


def test_a_dim_warm_lamp_and_a_bright_one_look_alike() -> None:
    top = a_top()

    dim, bright = levelled(under(top, 0.72, 0.66, 0.61)), levelled(under(top, 1.15, 1.15, 1.15))

    before = np.abs(lab(under(top, 0.72, 0.66, 0.61)) - lab(under(top, 1.15, 1.15, 1.15))).mean()
    after = np.abs(lab(dim) - lab(bright)).mean()
    assert after < 1.0 < before


def test_a_pale_canopy_stays_paler_than_a_green_one() -> None:
    green, pale = a_top(), a_top(green=(150, 150, 70))

    seen = [np.hypot(*lab(levelled(top))[..., 1:].reshape(-1, 2).mean(axis=0)) for top in (green, pale)]
    hue = [np.degrees(np.arctan2(*lab(levelled(top))[..., :0:-1].reshape(-1, 2).mean(axis=0)))
           for top in (green, pale)]  # fmt: skip

    assert hue[0] - hue[1] > 5  # degrees: green lies beyond yellow
    assert min(seen) > 5


def test_the_edge_where_a_tag_could_look_in_is_cut_off() -> None:
    top = a_top()
    top[:12] = 255
    top[:, -12:] = 255

    assert levelled(top).shape == (508 - 60, 1016 - 60, 3)
    assert (levelled(top) == 255).all(axis=2).mean() < 0.01


def test_a_black_picture_and_a_white_one_are_left_whole() -> None:
    for code in (0, 255):
        top = np.full((508, 1016, 3), code, np.uint8)
        assert np.isfinite(levelled(top).astype(float)).all()
