"""A tray without a station is found, or the finder says that it is not sure.

Trays are drawn through a pinhole camera, so their true corners are known to a part of a pixel.
"""

import math
from dataclasses import dataclass, replace

import cv2
import numpy as np
import pytest

from vision import framenet
from vision.corners import CornersFrom
from vision.frame import find_frame, refined
from vision.framefit import CORNERS_MM, LENS_SPREAD, Points, first_pose, fitted, inverse, through
from vision.framenet import ModelDamaged
from vision.lens import Bend
from vision.photo import Photo, upright_points

SIZE = (1600, 1200)
FOCAL_35MM = 27.0


@dataclass(frozen=True)
class Camera:
    """Looks at the middle of the tray from `far` mm, leaning `tilt` degrees towards `towards` degrees."""

    far: float = 640.0
    tilt: float = 0.0
    towards: float = 0.0
    turn: float = 3.0

    @property
    def matrix(self) -> np.ndarray:
        focal = FOCAL_35MM * math.hypot(*SIZE) / 43.267
        lean, towards, turn = np.radians([self.tilt, self.towards, self.turn])
        axis = np.array([math.cos(towards), math.sin(towards), 0.0]) * lean
        spin = cv2.Rodrigues(np.array([0.0, 0.0, turn]))[0]
        view = np.column_stack([(cv2.Rodrigues(axis)[0] @ spin)[:, :2], [10.0, -8.0, self.far]])
        return np.array([[focal, 0, SIZE[0] / 2], [0, focal, SIZE[1] / 2], [0, 0, 1]]) @ view


def rectangle(long_mm: float, short_mm: float) -> np.ndarray:
    return CORNERS_MM * np.array([long_mm / 508.0, short_mm / 254.0])


def bench(shade: int = 176) -> np.ndarray:
    rng = np.random.default_rng(1)
    soft = cv2.GaussianBlur(rng.normal(0, 60, (SIZE[1], SIZE[0], 1)).astype(np.float32), (0, 0), 6)
    return np.clip(np.array([shade, shade - 4, shade - 12]) + soft[..., None], 0, 255).astype(np.uint8)


def filled(picture: np.ndarray, corners: np.ndarray, colour: tuple[int, int, int]) -> None:
    places = np.round((corners - 0.5) * 256).astype(np.int32)
    cv2.fillConvexPoly(picture, places, colour, cv2.LINE_AA, 8)


def tray(camera: Camera, *, leaves_over: str | None = None, from_share: float = -1.0) -> Photo:
    """A dark tray with brown medium; leaves hang over one long or short side, from a share of it on."""
    picture = bench()
    for size, colour in (((545, 278), (52, 52, 54)), ((508, 254), (24, 24, 25)), ((496, 242), (112, 78, 50))):
        filled(picture, through(camera.matrix, rectangle(*size)), colour)
    rng = np.random.default_rng(2)
    for x, y in rng.uniform(-1, 1, (1500, 2)) * (243, 116):
        leaf(picture, camera, x, y, 3.0, (130, 104, 74))
    if leaves_over is not None:
        for along, across in rng.uniform(-1, 1, (900, 2)):
            if along < from_share:
                continue
            x, y = (
                (along * 254, 127 + across * 40)
                if leaves_over == "long"
                else (254 + across * 40, along * 127)
            )
            leaf(picture, camera, x, y, 9.0, (60 + int(30 * along), 140 + int(30 * across), 50))
    return photo(cv2.GaussianBlur(picture, (0, 0), 0.8))


def leaf(
    picture: np.ndarray, camera: Camera, x: float, y: float, radius: float, colour: tuple[int, ...]
) -> None:
    around = np.radians(np.arange(0, 360, 30))
    filled(
        picture,
        through(camera.matrix, np.column_stack([x + radius * np.cos(around), y + radius * np.sin(around)])),
        colour,
    )


def photo(picture: np.ndarray, turns: int = 0, focal: float | None = FOCAL_35MM) -> Photo:
    return Photo(
        name="drawn",
        digest="0" * 64,
        pixels=np.ascontiguousarray(picture),
        turns=turns,
        profile=None,
        taken_at=None,
        utc_offset=None,
        focal_35mm=focal,
        camera=None,
        notes=(),
    )


def worst_mm(found: np.ndarray, camera: Camera) -> float:
    """The worst corner's distance from its true place, mm on the tray; half a turn is the same tray."""
    places = through(np.linalg.inv(camera.matrix), np.array(found))
    return min(float(np.linalg.norm(np.roll(places, k, axis=0) - CORNERS_MM, axis=1).max()) for k in (0, 2))


@pytest.mark.parametrize(
    "camera",
    [
        Camera(),
        Camera(turn=91.0, far=820.0),
        Camera(turn=38.0, far=820.0),
        Camera(tilt=14.0, towards=20.0),
        Camera(tilt=22.0, towards=100.0, far=700.0),
    ],
    ids=["from above", "upright", "askew", "tilted", "tilted a lot"],
)
def test_a_bare_tray_is_found_within_six_mm_and_surely(camera):
    found = find_frame(tray(camera))

    assert found is not None
    assert found.found_by is CornersFrom.FRAME
    assert found.confidence >= 0.5
    assert worst_mm(found.points, camera) < 6.0
    assert found.tilt_deg == pytest.approx(camera.tilt, abs=4.0)


def test_a_tray_found_a_little_beside_its_place_is_put_right_by_a_closer_look():
    camera = Camera(tilt=8.0, towards=30.0)
    corners = through(camera.matrix, CORNERS_MM)
    along = np.linspace(0.05, 0.95, 15)[:, None]
    sides = ((0, 1), (3, 2), (0, 3), (1, 2))
    beside = corners + np.array([[22.0, -16.0], [16.0, -10.0], [20.0, -8.0], [24.0, -12.0]])
    places = [beside[a] + (beside[b] - beside[a]) * along for a, b in sides]
    points = Points(places=np.concatenate(places), sides=np.repeat(np.arange(4), 15), weights=np.ones(60))
    found = fitted(first_pose(beside, SIZE, FOCAL_35MM), points, rounds=12)
    closer = cv2.resize(tray(camera).pixels, (1280, 960), interpolation=cv2.INTER_AREA)

    right = refined(found, closer).pose.scaled(SIZE[0] / 1280)

    assert worst_mm(found.corners, camera) > 10.0
    assert worst_mm(right.corners, camera) < 5.0


@pytest.mark.parametrize("side", ["long", "short"])
def test_leaves_over_half_a_side_do_not_lead_the_finder_astray(side):
    camera = Camera()

    bare, hidden = find_frame(tray(camera)), find_frame(tray(camera, leaves_over=side, from_share=0.0))

    assert bare is not None
    assert hidden is not None
    assert hidden.confidence < bare.confidence
    assert worst_mm(hidden.points, camera) < 10.0


@pytest.mark.parametrize("camera", [Camera(), Camera(tilt=10.0, towards=50.0)], ids=["from above", "tilted"])
@pytest.mark.parametrize("side", ["long", "short"])
def test_with_a_whole_side_under_leaves_the_finder_does_not_say_that_it_is_sure(side, camera):
    found = find_frame(tray(camera, leaves_over=side))

    assert found is not None
    assert found.confidence < 0.5


def test_a_photo_without_a_tray_gives_none_or_says_that_it_is_not_sure():
    rng = np.random.default_rng(3)
    noise = rng.integers(0, 256, (SIZE[1], SIZE[0], 3), dtype=np.uint8)

    for picture in (bench(), np.zeros((SIZE[1], SIZE[0], 3), np.uint8), noise):
        found = find_frame(photo(picture))
        assert found is None or found.confidence < 0.5


def test_a_tray_that_leaves_the_photo_is_not_said_to_be_sure():
    camera = Camera(far=430.0)

    found = find_frame(tray(camera))

    assert found is None or found.confidence < 0.5


def test_a_turned_photo_gives_the_same_corners_with_the_upper_side_of_the_upright_one_first():
    lying = tray(Camera())
    stored = photo(np.rot90(lying.pixels), turns=1)  # clockwise once makes it upright again

    one, other = find_frame(lying), find_frame(stored)

    assert one is not None
    assert other is not None
    assert np.allclose(upright_points(stored, other.points), one.points, atol=4.0)


def test_without_a_focal_length_in_the_file_the_tray_is_found_all_the_same():
    camera = Camera(tilt=10.0)
    drawn = tray(camera)

    found = find_frame(photo(drawn.pixels, focal=None))

    assert found is not None
    assert worst_mm(found.points, camera) < 6.0


def test_the_fit_gives_back_a_pose_from_points_on_its_sides():
    camera = Camera(tilt=17.0, towards=50.0)
    along = np.linspace(-0.9, 0.9, 15)
    mm = [np.column_stack([along * 254, np.full(15, y)]) for y in (-127.0, 127.0)]
    mm += [np.column_stack([np.full(15, x), along * 127]) for x in (-254.0, 254.0)]
    seen = through(camera.matrix, np.concatenate(mm))
    points = Points(places=seen, sides=np.repeat(np.arange(4), 15), weights=np.full(60, 1.0))
    start = first_pose(through(Camera(far=700.0, turn=6.0).matrix, CORNERS_MM), SIZE, FOCAL_35MM)

    pose = fitted(start, points, rounds=12)

    assert worst_mm(pose.corners, camera) < 0.5
    assert pose.tilt_deg == pytest.approx(17.0, abs=0.5)


def test_sides_that_a_lens_has_bent_give_the_corners_where_the_lens_is_fitted_too():
    """Of a phone, after its own correction: 3 % in the corner, as of the rendered photos learned from."""
    camera, lens = Camera(tilt=6.0, towards=50.0), Bend.of((-0.035, 0.004), SIZE)
    along = np.linspace(-0.9, 0.9, 15)
    mm = [np.column_stack([along * 254, np.full(15, y)]) for y in (-127.0, 127.0)]
    mm += [np.column_stack([np.full(15, x), along * 127]) for x in (-254.0, 254.0)]
    seen = lens.bent(through(camera.matrix, np.concatenate(mm)))
    points = Points(places=seen, sides=np.repeat(np.arange(4), 15), weights=np.full(60, 3.0))
    begin = first_pose(through(camera.matrix, CORNERS_MM), SIZE, FOCAL_35MM)

    stiff = fitted(begin, points, rounds=12)
    bending = fitted(replace(begin, lens_spread=LENS_SPREAD), points, rounds=12)

    def off_mm(pose):
        flat = lens.freed(pose.corners)
        return np.linalg.norm(through(inverse(camera.matrix), flat) - CORNERS_MM, axis=1).max()

    assert off_mm(stiff) > 0.8
    assert off_mm(bending) < 0.3


def test_a_damaged_network_is_refused_with_a_sentence(monkeypatch):
    monkeypatch.setitem(framenet.DIGESTS, "frame_place", "0" * 64)

    with pytest.raises(ModelDamaged, match="install the program again"):
        find_frame(tray(Camera()))
