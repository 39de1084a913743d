"""Which card was moved: stations seen through a camera that is known, with the noise of found corners."""

import math
from dataclasses import replace
from pathlib import Path

import cv2
import numpy as np
import pytest

from vision.markers import Marks, Tag, as_quad
from vision.photo import read_photo
from vision.pose import Pose
from vision.stationcheck import Found, StationCheck, check_marks, check_photo
from vision.traytype import TAG_HEIGHT_MM, TAG_MARK_MM, TrayType, square

STATION = Path(__file__).parent.parent / "photos" / "station.jpg"
PHONE, NOISE_PX, FOCAL_35MM = (4032, 3024), 0.3, 26.0
FAR_LEFT, FAR_RIGHT, NEAR_RIGHT, NEAR_LEFT = range(4)
Pushed = dict[int, tuple[float, float]]


def camera(tilt_deg: float, turned_deg: float, size: tuple[int, int] = PHONE, height_mm: float = 640) -> Pose:
    focal = FOCAL_35MM * math.hypot(*size) / 43.267
    level = cv2.Rodrigues(np.array([0.0, 0.0, math.radians(turned_deg)]))[0] @ np.diag([1.0, -1.0, -1.0])
    turn = cv2.Rodrigues(np.array([math.radians(tilt_deg), 0.0, 0.0]))[0] @ level
    shift = np.array([4.0, -6.0, height_mm])
    return Pose(turn=turn, shift=shift, focal_px=focal, size=size, lens=(0.01, -0.004))


def checked(
    pushed: Pushed | None = None,
    *,
    pose: Pose | None = None,
    cards: tuple[int, ...] = (0, 1, 2, 3),
    tag: bool = True,
    seed: int = 1,
    tray: TrayType | None = None,
    focal_35mm: float | None = FOCAL_35MM,
) -> StationCheck:
    pose, tray = pose or camera(3.0, 3.0), tray or TrayType()
    noise = np.random.default_rng(seed)

    def seen(places_mm: np.ndarray) -> tuple:
        return as_quad(pose.project(places_mm) + noise.normal(0, NOISE_PX, (4, 2)))

    moved = {number: np.array([*(pushed or {}).get(number, (0.0, 0.0)), 0.0]) for number in cards}
    quads = {number: seen(tray.card_quad(number) + moved[number]) for number in cards}
    at_rim = square(TAG_MARK_MM) + np.array([-40.0, -tray.outer_short_mm / 2 - 60, TAG_HEIGHT_MM])
    marks = Marks(cards=quads, tag=Tag(number=42, quad=seen(at_rim)) if tag else None)
    return check_marks(marks, pose.size, focal_35mm, tray)


@pytest.mark.parametrize("seed", range(4))
@pytest.mark.parametrize(("tilt", "turned"), [(2, 3), (12, -20), (5, 180)])
@pytest.mark.parametrize("tag", [True, False])
def test_a_true_station_is_told_to_be_true(seed: int, tilt: float, turned: float, tag: bool) -> None:
    check = checked(pose=camera(tilt, turned), seed=seed, tag=tag)

    assert check.found is Found.TRUE
    assert max(place.away_mm for place in check.places) < 1.0
    assert check.tilt_deg == pytest.approx(tilt, abs=0.6)


@pytest.mark.parametrize("seed", range(3))
@pytest.mark.parametrize("number", range(4))
@pytest.mark.parametrize("way", [(3.0, 0.0), (0.0, -3.0), (-2.5, 2.5)])
def test_a_card_three_mm_off_is_named_with_its_way(seed: int, number: int, way: tuple[float, float]) -> None:
    check = checked({number: way}, seed=seed)

    assert check.found is Found.ONE_CARD
    assert check.moved.number == number
    assert check.moved.right_mm == pytest.approx(way[0], abs=0.7)
    assert check.moved.far_mm == pytest.approx(way[1], abs=0.7)


@pytest.mark.parametrize("turned", [0, 90, 180])
def test_left_and_right_are_those_of_the_station_however_the_photo_is_turned(turned: float) -> None:
    check = checked({NEAR_RIGHT: (3.0, 0.0)}, pose=camera(3, turned))

    assert check.moved.number == NEAR_RIGHT
    assert check.moved.right_mm == pytest.approx(3.0, abs=0.7)


def test_a_card_that_lies_far_off_is_named() -> None:
    check = checked({NEAR_LEFT: (20.0, -10.0)})

    assert check.moved.number == NEAR_LEFT
    assert (check.moved.right_mm, check.moved.far_mm) == pytest.approx((20, -10), abs=1)


@pytest.mark.parametrize("seed", range(3))
@pytest.mark.parametrize(
    "pushed",
    [
        {FAR_LEFT: (3, 0), FAR_RIGHT: (3, 0)}, {FAR_RIGHT: (0, 4), NEAR_RIGHT: (4, 0)},
        {FAR_LEFT: (4, 0), NEAR_LEFT: (-3, 2)}, {NEAR_RIGHT: (5, 0), NEAR_LEFT: (0, 5)},
    ],
)  # fmt: skip
def test_with_two_cards_moved_it_cannot_be_told_which(seed: int, pushed: Pushed) -> None:
    check = checked(pushed, seed=seed)

    assert check.found is Found.UNSURE
    assert check.moved is None


def test_few_pairs_of_moved_cards_pass_for_one_and_none_for_true() -> None:
    """Three cards that still look like a smaller or larger station are the known limit."""
    ways, found = np.random.default_rng(5), []
    for seed in range(20):
        pose = camera(float(ways.uniform(0, 10)), float(ways.uniform(-180, 180)))
        pair = ways.choice(4, 2, replace=False)
        pushed = {
            int(number): (3.5 * math.cos(angle), 3.5 * math.sin(angle))
            for number, angle in zip(pair, ways.uniform(0, 2 * math.pi, 2), strict=True)
        }
        found.append(checked(pushed, pose=pose, seed=seed).found)

    assert Found.TRUE not in found
    assert found.count(Found.ONE_CARD) <= 3


@pytest.mark.parametrize("number", range(4))
def test_two_mm_off_is_not_called_true(number: int) -> None:
    assert checked({number: (1.4, 1.4)}).found is not Found.TRUE


def test_no_card_is_named_wrongly_whatever_the_camera() -> None:
    """What cannot be told is left open: tilted, turned, without the focal length."""
    wrong, named = 0, 0
    ways = np.random.default_rng(3)
    for seed in range(24):
        number, angle = int(ways.integers(4)), float(ways.uniform(0, 2 * math.pi))
        pose = camera(float(ways.uniform(0, 15)), float(ways.uniform(-180, 180)))
        check = checked(
            {number: (3 * math.cos(angle), 3 * math.sin(angle))},
            pose=pose, seed=seed, focal_35mm=None if seed % 2 else FOCAL_35MM,
        )  # fmt: skip
        named += check.moved is not None
        wrong += check.moved is not None and check.moved.number != number

    assert wrong == 0
    assert named >= 12


@pytest.mark.parametrize("tag", [True, False])
def test_a_missing_card_is_named_as_missing(tag: bool) -> None:
    check = checked(cards=(0, 1, 3), tag=tag)

    assert (check.found, check.missing, check.moved) == (Found.MISSING, (2,), None)


def test_nothing_seen_is_no_station() -> None:
    assert checked(cards=(), tag=False).found is Found.NO_MARKS


def test_marks_that_are_small_in_the_photo_are_not_measured() -> None:
    assert checked(pose=camera(3, 3, size=(1600, 1200))).found is Found.SMALL


def test_another_kind_of_tray_has_another_station() -> None:
    half = TrayType(outer_long_mm=278, outer_short_mm=278, inner_long_mm=254, inner_short_mm=254)

    assert checked(tray=half).found is Found.TRUE
    assert checked({FAR_RIGHT: (0.0, 4.0)}, tray=half).moved.number == FAR_RIGHT


def test_a_photo_of_a_station_is_checked_whole() -> None:
    check = check_photo(read_photo(STATION))

    assert check.tilt_deg is not None
    assert check.blur_mm is not None
    assert check.refusal is None
    assert check.moved is None


def test_an_empty_grey_tray_at_a_grey_station_has_no_colour_to_lose(draw_station) -> None:
    """Studs keep its ground from being flat; a camera's noise keeps the picture from being quite grey."""
    station = draw_station()
    noise = np.random.default_rng(3).normal(0, 3, station.pixels.shape)
    rows, columns = np.mgrid[: station.pixels.shape[0], : station.pixels.shape[1]]
    inside = np.zeros(rows.shape, np.uint8)
    cv2.fillConvexPoly(inside, np.round(station.rim).astype(np.int32), 1)
    studs = np.where((inside > 0) & ((rows % 14 < 7) == (columns % 14 < 7)), 55.0, 0.0)
    pixels = np.clip(station.pixels + studs[:, :, None] + noise, 0, 255).astype(np.uint8)

    assert check_photo(replace(station.photo(), pixels=pixels)).refusal is None
