"""The camera that explains marks best, from marks whose camera is known."""

import math
from dataclasses import replace

import cv2
import numpy as np
import pytest

from vision.camera import focal_from_exif
from vision.pose import Pose, Seen, first_poses
from vision.posefit import best_fit, fit_pose
from vision.traytype import TAG_HEIGHT_MM, TAG_MARK_MM, TrayType, square

TRAY = TrayType()
RIM = TRAY.inner_corners()
SIZE = (4032, 3024)


def camera(
    *,
    tilt_deg: float = 9.0,
    turned_deg: float = 4.0,
    lens: tuple[float, float] = (0.0, 0.0),
    focal_35mm: float = 26.0,
) -> Pose:
    focal = focal_from_exif(focal_35mm, SIZE)
    level = cv2.Rodrigues(np.array([0.0, 0.0, math.radians(turned_deg)]))[0] @ np.diag([1.0, -1.0, -1.0])
    turn = cv2.Rodrigues(np.array([math.radians(tilt_deg), math.radians(tilt_deg / 3), 0.0]))[0] @ level
    far = 650.0 * focal_35mm / 26.0
    return Pose(turn=turn, shift=np.array([7.0, -9.0, far]), focal_px=focal, size=SIZE, lens=lens)


def marks_seen(
    pose: Pose, *, bench_mm: float = 0.0, shrunk_px: float = 0.7, cards=(0, 1, 2, 3)
) -> list[Seen]:
    """Cards and a tag as that camera sees them, corners drawn inwards by blur."""
    quads = [TRAY.card_quad(n) for n in cards]
    places = [quad + np.array([0.0, 0.0, bench_mm]) for quad in quads]
    tag_turn = np.array(
        [[math.cos(0.06), -math.sin(0.06), 0], [math.sin(0.06), math.cos(0.06), 0], [0, 0, 1]]
    )
    places.append(square(TAG_MARK_MM) @ tag_turn.T + np.array([-60.0, -204.0, TAG_HEIGHT_MM]))
    seen = []
    for place, quad in zip(places, [*quads, None], strict=True):
        corners = pose.project(place)
        arms = corners - corners.mean(axis=0)
        corners = corners - shrunk_px * arms / np.linalg.norm(arms, axis=1, keepdims=True)
        seen.append(Seen(corners=corners, quad_mm=quad))
    return seen


def off_mm(found: Pose, true: Pose) -> float:
    px_per_mm = np.linalg.norm(np.subtract(*true.project(RIM)[:2])) / TRAY.inner_long_mm
    return float(np.linalg.norm(found.project(RIM) - true.project(RIM), axis=1).max() / px_per_mm)


@pytest.mark.parametrize("lens", [(0.0, 0.0), (0.015, -0.006), (-0.015, 0.006)])
def test_the_camera_and_its_lens_are_found_from_four_cards_and_a_tag(lens):
    """Brown's radial terms by the pinhole model (Brown 1971), projected here by `Pose.project`."""
    true = camera(lens=lens)

    fit = best_fit(marks_seen(true), SIZE, 26.0)

    assert fit.misfit == 1.0
    assert off_mm(fit.pose, true) < 0.3
    assert fit.pose.focal_px == pytest.approx(true.focal_px, rel=0.01)
    assert fit.pose.lens[0] == pytest.approx(lens[0], abs=0.004)


def scattered(seen: list[Seen], rng: np.random.Generator, times: float) -> list[Seen]:
    """Corners moved as those scatter that were refined to a part of a pixel, so many times as far."""
    moved = []
    for one in seen:
        arms = one.corners - one.corners.mean(axis=0)
        arms = arms / np.linalg.norm(arms, axis=1, keepdims=True)
        shape = rng.normal(0, 0.30, (4, 2))
        shape = shape - shape.mean(axis=0)
        shape = shape - (shape * arms).sum(axis=1).mean() * arms
        together = rng.normal(0, 0.15, 2) - rng.normal(0, 0.35) * arms
        moved.append(replace(one, corners=one.corners + times * (shape + together)))
    return moved


@pytest.mark.parametrize(("times", "least", "most"), [(1.0, 0.6, 1.1), (3.0, 0.75, 1.2)])
def test_the_standard_error_told_is_that_by_which_corners_are_off(times, least, most):
    """Over 60 cameras drawn as the fit expects them; where corners scatter more it must notice by itself."""
    rng = np.random.default_rng(5)
    ratios, misfits = [], []
    for _ in range(60):
        true = camera(
            tilt_deg=rng.uniform(2, 15),
            turned_deg=rng.uniform(-8, 8),
            lens=(rng.normal(0, 0.015), rng.normal(0, 0.008)),
            focal_35mm=26.0 * math.exp(rng.normal(0, 0.015)),
        )
        seen = marks_seen(true, bench_mm=rng.normal(0, 0.7), shrunk_px=0.7 + rng.normal(0, 1.0))
        fit = best_fit(scattered(seen, rng, times), SIZE, 26.0)
        ratios.append(off_mm(fit.pose, true) / fit.spread(RIM))
        misfits.append(fit.misfit)

    assert least < np.sqrt(np.mean(np.square(ratios))) < most
    assert np.mean(misfits) == pytest.approx(times, rel=0.1)


def test_a_fit_that_runs_away_is_none():
    """What is no number is greater than nothing: such a fit looked like the best there is."""
    true = camera()
    seen = marks_seen(true)

    assert fit_pose(seen, replace(true, shift=np.full(3, np.nan)), 0.015) is None


def test_a_fit_is_given_up_where_it_is_hopeless_and_only_there():
    true = camera()
    seen = marks_seen(true)
    seen[0] = replace(seen[0], corners=seen[0].corners + 12.0)
    start = first_poses(seen, SIZE, true.focal_px)[0]
    misfit = fit_pose(seen, start, 0.015).misfit

    assert misfit > 3
    assert fit_pose(seen, start, 0.015, hopeless=misfit / 3) is None
    assert fit_pose(seen, start, 0.015, hopeless=misfit * 3).misfit == misfit
