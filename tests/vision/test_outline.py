"""Drawn trays whose chances are blurred: the photo's own colours give the edges back."""

import cv2
import numpy as np
import pytest

from vision.outline import order
from vision.planes import Pixels
from vision.tissue import Mask

STRAW, YELLOW, GREEN, RED = (196, 168, 110), (214, 206, 60), (84, 140, 60), (150, 50, 90)


def a_tray(leaf: tuple[int, int, int], side: int = 10) -> tuple[Pixels, Mask]:
    """Small leaves on a mat of straw with grain, and where they are."""
    rng = np.random.default_rng(3)
    drawn = np.zeros((240, 320), np.uint8)
    for x, y in rng.integers(10, (310, 230), (240, 2)).tolist():
        cv2.circle(drawn, (x, y), side // 2, 1, -1)
    grain = rng.normal(0, 9, (240, 320, 1))
    top = np.where(drawn[..., None] > 0, np.array(leaf), np.array(STRAW)) + grain
    return np.clip(top, 0, 255).astype(np.uint8), drawn > 0


def blurred(leaves: Mask, sd: float = 4.0) -> np.ndarray:
    return np.asarray(cv2.GaussianBlur(leaves.astype(np.float32), (0, 0), sd), np.float32)


def found(chance: np.ndarray, value: np.ndarray | None = None) -> Mask:
    """As many of the first pixels by value (or chance) as the chances add up to."""
    wanted = round(float(chance.sum(dtype=np.float64)))
    first = np.argsort(-(chance if value is None else value), axis=None, kind="stable")[:wanted]
    mask = np.zeros(chance.shape, np.bool_)
    mask.flat[first] = True
    return mask


def overlap(one: Mask, other: Mask) -> float:
    return float((one & other).sum() / (one | other).sum())


@pytest.mark.parametrize("leaf", [YELLOW, GREEN, RED])
def test_the_outline_keeps_to_leaves_where_chances_are_blurred(leaf):
    top, leaves = a_tray(leaf)
    chance = blurred(leaves)

    assert overlap(found(chance, order(top, chance)), leaves) > overlap(found(chance), leaves) + 0.1


def test_where_all_has_one_colour_the_chances_alone_decide():
    leaves = a_tray(GREEN)[1]
    chance = blurred(leaves, 1.0)
    flat = np.full((*leaves.shape, 3), 120, np.uint8)

    assert overlap(found(chance, order(flat, chance)), found(chance)) > 0.97


@pytest.mark.parametrize("leaf", [YELLOW, GREEN, RED])
def test_a_colour_that_is_canopy_all_over_the_photo_outweighs_a_weak_doubt_in_one_place(leaf):
    top = np.full((80, 160, 3), STRAW, np.uint8)
    leaves = (np.arange(160) // 20 % 2 == 0)[None].repeat(80, axis=0)
    top[leaves] = leaf
    chance = np.where(leaves, 0.95, 0.05).astype(np.float32)
    chance[:, 140:] = 0.6  # the last strip of straw is taken for canopy, a little
    chance[:, 120:140] = 0.3  # and the last of leaves is doubted

    found = order(top, chance)

    assert found[:, 125:135].min() > found[:, 145:155].max()


def test_chances_of_none_and_all_are_put_in_an_order_too():
    top, _ = a_tray(GREEN)

    for chance in (0.0, 1.0):
        assert np.isfinite(order(top, np.full(top.shape[:2], chance, np.float32))).all()
