"""Canopy mask: strokes of a brush on a tray of 1016 x 508 pixels."""

import time

import numpy as np
import pytest

from gui.mend.canopymask import CanopyMask, Patch


def a_mask(covered_columns: int = 508) -> CanopyMask:
    """The left part of the tray is canopy."""
    canopy = np.zeros((508, 1016), np.bool_)
    canopy[:, :covered_columns] = True
    return CanopyMask(canopy)


def stroke(mask: CanopyMask, *points: tuple[float, float], radius: float = 20, paint: bool = True) -> None:
    mask.begin()
    for x, y in points:
        mask.move(x, y, radius, paint=paint)
    mask.end()


def test_a_dab_covers_the_area_of_its_circle() -> None:
    mask = a_mask(0)

    stroke(mask, (500, 250), radius=40)

    assert np.count_nonzero(mask.now) == pytest.approx(np.pi * 40**2, rel=0.01)
    assert mask.now[250, 500]


def test_a_fast_stroke_leaves_no_hole_between_its_points() -> None:
    mask = a_mask(0)

    stroke(mask, (100, 100), (900, 400), radius=10)

    t = np.linspace(0, 1, 500)
    assert mask.now[(100 + 300 * t).astype(int), (100 + 800 * t).astype(int)].all()


def test_coverage_follows_the_brush_and_the_scored_one_stays() -> None:
    mask = a_mask(508)
    assert mask.coverage == 50

    stroke(mask, (700, 250), radius=50)
    assert mask.coverage == pytest.approx(50 + 100 * np.pi * 50**2 / (508 * 1016), abs=0.05)

    stroke(mask, (200, 250), radius=50, paint=False)
    assert mask.coverage == pytest.approx(50, abs=0.05)
    assert mask.coverage_before == 50


def test_strokes_go_back_and_again_one_by_one() -> None:
    mask = a_mask()
    stroke(mask, (700, 250))
    first = mask.now.copy()
    stroke(mask, (600, 250), (900, 300), paint=True)
    both = mask.now.copy()

    mask.undo()
    assert (mask.now == first).all()
    mask.undo()
    assert (mask.now == mask.scored).all()
    assert not mask.can_undo
    mask.redo()
    mask.redo()
    assert (mask.now == both).all()
    assert not mask.can_redo


def test_a_new_stroke_ends_what_could_be_done_again() -> None:
    mask = a_mask()
    stroke(mask, (700, 250))
    mask.undo()

    stroke(mask, (800, 250))

    assert not mask.can_redo


def test_painting_canopy_over_canopy_is_no_stroke() -> None:
    mask = a_mask(508)

    stroke(mask, (100, 100))

    assert not mask.can_undo
    assert not mask.is_changed


@pytest.mark.parametrize("point", [(-60.0, 250.0), (1100.0, 250.0), (500.0, 600.0)])
def test_a_brush_beside_the_tray_touches_nothing(point: tuple[float, float]) -> None:
    mask = a_mask(0)
    mask.begin()

    assert mask.move(*point, 20, paint=True) is None
    assert not mask.end()


def test_a_brush_over_the_edge_touches_only_what_is_tray() -> None:
    mask = a_mask(0)
    mask.begin()

    assert mask.move(0, 0, 10, paint=True) == Patch(left=0, top=0, right=11, bottom=11)


def test_a_move_of_a_stroke_takes_less_than_a_third_of_a_frame() -> None:
    mask = a_mask()
    mask.begin()
    took = []
    for n in range(200):
        began = time.perf_counter()
        mask.move(300 + 2 * n, 250 + 40 * np.sin(n / 9), 40, paint=True)
        took.append(time.perf_counter() - began)

    assert sorted(took)[180] < 0.005  # 90th of a hundred; a frame has 0.0167 s
