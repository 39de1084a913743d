"""Drawn trays moved by a known amount: the map is found, or it is said that nothing stayed."""

import cv2
import numpy as np
import pytest

from vision.alignment import Alignment, align, moved, turned_round
from vision.reason import Reason

CORNERS = [(0.0, 0.0), (508.0, 0.0), (508.0, 254.0), (0.0, 254.0), (254.0, 127.0)]


def a_tray(seed: int = 1) -> np.ndarray:
    """A medium with fibres, as a top view with 40 mm more on each side."""
    rng = np.random.default_rng(seed)
    canvas = np.full((668, 1176, 3), (110, 84, 60), np.uint8)
    for _ in range(3000):
        x, y = rng.uniform(0, (1176, 668))
        angle, length = rng.uniform(0, np.pi), rng.uniform(6, 24)
        end = (int(x + length * np.cos(angle)), int(y + length * np.sin(angle)))
        cv2.line(canvas, (int(x), int(y)), end, (110 + rng.uniform(-50, 50, 3)).tolist(), 2, cv2.LINE_AA)
    return canvas


def seen(tray: np.ndarray, shift_mm=(0.0, 0.0), turn_deg=0.0, stretch=1.0) -> tuple[np.ndarray, np.ndarray]:
    """Its top view moved, and the map in mm that was used, 2 x 3."""
    around = np.radians(turn_deg)
    linear = stretch * np.array([[np.cos(around), -np.sin(around)], [np.sin(around), np.cos(around)]])
    middle = np.array([254.0, 127.0])
    offset = middle - linear @ middle + shift_mm
    margin = np.array([40.0, 40.0])
    # canvas px (centres) -> top view px (centres)
    shift = 2 * (offset - linear @ margin) + 0.5 * (linear.sum(axis=1) - 1)
    top = cv2.warpAffine(tray, np.column_stack([linear, shift]), (1016, 508), flags=cv2.INTER_CUBIC)
    return top, np.column_stack([linear, offset])


def worst_mm(found: Alignment, truth: np.ndarray) -> float:
    assert found.matrix is not None
    right = [truth @ (x, y, 1.0) for x, y in CORNERS]
    return max(np.hypot(*(moved(found.matrix, *p) - r)) for p, r in zip(CORNERS, right, strict=True))


@pytest.mark.parametrize(
    "how",
    [
        {"shift_mm": (0.0, 0.0)},
        {"shift_mm": (3.3, -2.1)},
        {"shift_mm": (-12.0, 9.0)},
        {"turn_deg": 1.0},
        {"turn_deg": -0.6, "stretch": 1.01, "shift_mm": (4.0, 4.0)},
    ],
    ids=["still", "a little", "far", "askew", "all at once"],
)
def test_a_moved_tray_is_laid_back_to_within_half_a_millimetre(how):
    tray = a_tray()
    earlier, _ = seen(tray)
    later, truth = seen(tray, **how)

    found = align(earlier, later)

    assert worst_mm(found, truth) < 0.5
    assert not found.turned
    assert found.is_exact


def test_a_tray_that_was_put_in_turned_round_is_told_and_laid_right():
    tray = a_tray()
    earlier, _ = seen(tray)
    later, truth = seen(tray, shift_mm=(2.0, -3.0))
    half_turn = np.array([[-1.0, 0.0, 508.0], [0.0, -1.0, 254.0]]) @ np.vstack([truth, (0, 0, 1)])

    found = align(earlier, np.ascontiguousarray(later[::-1, ::-1]))

    assert found.turned
    assert worst_mm(found, half_turn) < 0.5


def test_a_tray_that_looks_alike_both_ways_and_grew_is_not_told_to_be_turned():
    """Only its two ends stayed, and each looks like the other turned round."""
    ends = a_tray(1)[80:588, 80:1096]
    ends = (ends // 2 + ends[::-1, ::-1] // 2).astype(np.uint8)
    earlier, later = (a_tray(seed)[80:588, 80:1096].copy() for seed in (2, 3))
    for top in (earlier, later):
        top[:, :100], top[:, -100:] = ends[:, :100], ends[:, -100:]

    assert not align(earlier, later).turned


def test_other_light_and_colour_move_nothing():
    tray = a_tray()
    earlier, _ = seen(tray)
    later, truth = seen(tray, shift_mm=(3.0, 1.0))
    fade = np.linspace(0.5, 1.0, 1016)[None, :, None]
    dim = np.clip(later * fade * (1.0, 0.9, 0.7), 0, 255).astype(np.uint8)

    assert worst_mm(align(earlier, dim), truth) < 0.5


@pytest.mark.parametrize("from_column", [900, 800, 508])
def test_a_part_of_the_tray_that_changed_altogether_does_not_matter(from_column):
    tray, other = a_tray(), a_tray(seed=2)
    earlier, _ = seen(tray)
    later, truth = seen(tray, shift_mm=(3.0, 1.0))
    later[:, from_column:] = seen(other)[0][:, from_column:]

    assert worst_mm(align(earlier, later), truth) < 1.0


def test_with_all_but_a_strip_changed_nothing_is_said():
    later, _ = seen(a_tray(), shift_mm=(3.0, 1.0))
    later[:, 90:] = seen(a_tray(seed=2))[0][:, 90:]

    found = align(seen(a_tray())[0], later)

    assert (found.matrix, found.reason) == (None, Reason.NOTHING_STAYED)


def test_leaves_that_rose_over_most_of_the_tray_make_the_map_less_sure():
    """Each patch of leaves moves its own way, up to 4 mm, as leaves of unlike height do."""
    rng = np.random.default_rng(5)
    earlier, _ = seen(a_tray())
    later, _ = seen(a_tray(), shift_mm=(2.0, 1.0))
    still = align(earlier, later)
    for y in range(0, 508, 127):
        for x in range(0, 1016, 127):
            if rng.random() < 0.75:
                way = (2 + rng.uniform(-4, 4), 1 + rng.uniform(-4, 4))
                later[y : y + 127, x : x + 127] = seen(a_tray(), way)[0][y : y + 127, x : x + 127]
    risen = align(earlier, later)

    assert still.error_mm is not None
    assert risen.error_mm is None or risen.error_mm > 2 * still.error_mm


def test_two_unlike_trays_are_not_laid_on_each_other():
    found = align(seen(a_tray(seed=1))[0], seen(a_tray(seed=2))[0])

    assert found.matrix is None
    assert found.error_mm is None
    assert found.reason is Reason.NOTHING_STAYED
    assert not found.turned


@pytest.mark.parametrize("code", [0, 128, 255])
def test_pictures_without_any_pattern_give_no_map(code):
    plain = np.full((508, 1016, 3), code, np.uint8)

    assert align(plain, plain).matrix is None


def test_a_half_turn_twice_is_none():
    matrix = ((1.01, 0.02, 3.0), (-0.02, 0.99, -2.0))

    assert np.allclose(turned_round(turned_round(matrix)), matrix)


def test_another_size_is_no_top_view():
    with pytest.raises(ValueError, match="508, 1016"):
        align(np.zeros((508, 1016, 3), np.uint8), np.zeros((100, 100, 3), np.uint8))
