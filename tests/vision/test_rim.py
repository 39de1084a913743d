"""The rim at a station: a rendered photo cropped, zoomed and told wrong, its truth kept beside it."""

import json
from dataclasses import replace
from pathlib import Path

import cv2
import numpy as np
import pytest

import vision.rim
from vision.camera import homography
from vision.corners import Corners
from vision.framefit import HALF_MM, through
from vision.markers import Marks, find_marks
from vision.photo import Photo, Pixels, grey, read_photo
from vision.rim import Plane, rim_corners
from vision.rimsides import REACH_MM, Beside, Laid
from vision.station import station_corners
from vision.traytype import TrayType

PHOTOS = Path(__file__).parent.parent / "photos"
SURE = 0.5
TRAY = TrayType()


@pytest.fixture(scope="module")
def station() -> Photo:
    return read_photo(PHOTOS / "station.jpg")


@pytest.fixture(scope="module")
def marks(station: Photo) -> Marks:
    return find_marks(grey(station))


def worst_mm(corners: Corners, begin: tuple[int, int] = (0, 0)) -> float:
    """How far the worst corner lies from the truth, in a photo that begins there in the whole one."""
    true = np.array(json.loads((PHOTOS / "station.json").read_text(encoding="utf-8"))["corners_px"])
    px_per_mm = np.linalg.norm(true[1] - true[0]) / TRAY.inner_long_mm
    return float(np.linalg.norm(np.array(corners.points) + begin - true, axis=1).max() / px_per_mm)


def cropped(photo: Photo, left: int, top: int, right: int, bottom: int) -> Photo:
    return replace(photo, pixels=np.ascontiguousarray(photo.pixels[top:bottom, left:right]))


def test_where_the_rim_is_seen_where_the_marks_lay_it_the_marks_are_believed(station, marks):
    assert rim_corners(marks, station, TRAY) == station_corners(marks, station, TRAY)


@pytest.mark.parametrize("begin", [(0, 0), (121, 0), (0, 91), (121, 91)])
def test_a_crop_that_keeps_the_shape_of_a_camera_is_measured_all_the_same(station, begin):
    """A tenth of both sides cut off towards a corner; its middle was believed: sure, and 8 to 20 mm off."""
    left, top = begin
    photo = cropped(station, left, top, left + 1089, top + 816)
    marks = find_marks(grey(photo))

    believed, held = station_corners(marks, photo, TRAY), rim_corners(marks, photo, TRAY)

    assert believed.confidence > SURE
    assert worst_mm(believed, begin) > 5.0
    assert worst_mm(held, begin) < 3.0 or held.confidence < SURE


@pytest.mark.parametrize("told", [20.0, 22.0, 31.0, 35.0, 50.0])
@pytest.mark.parametrize("tag", [True, False], ids=["tag", "no tag"])
def test_a_false_focal_length_lays_no_sure_corners_aside(station, marks, told, tag):
    held = rim_corners(marks if tag else replace(marks, tag=None), replace(station, focal_35mm=told), TRAY)

    assert worst_mm(held) < 4.0 or held.confidence < SURE


@pytest.mark.parametrize("aside", [(4.0, 0.0), (0.0, -4.0), (-5.0, 5.0)])
def test_a_tray_set_down_beside_its_place_is_measured_where_it_stands(station, marks, aside):
    """The marks alone lay its corners as far aside as the tray is, and were sure of it."""
    shifted = TrayType(cards_off_mm=(aside,) * 4)

    believed, held = station_corners(marks, station, shifted), rim_corners(marks, station, shifted)

    assert worst_mm(believed) > 3.5
    assert believed.confidence > SURE
    assert worst_mm(held) < 2.5
    assert held.confidence > SURE


def test_a_rim_that_lies_half_outside_the_photo_is_not_looked_for_beside_its_edge(station, marks):
    """The edge is easily taken for a side: one photo came out sure and 8 mm off."""
    true = np.array(json.loads((PHOTOS / "station.json").read_text(encoding="utf-8"))["corners_px"])
    right = int(true[:, 0].max()) + 8
    photo = cropped(station, 0, 0, right, station.pixels.shape[0])
    held = rim_corners(find_marks(grey(photo)), photo, TRAY)

    assert held is None or held.confidence < SURE or worst_mm(held) < 3.0


def test_where_marks_and_rim_agree_on_no_place_nobody_is_sure(station, marks):
    """As a tray that stands askew across its station."""
    askew = TrayType(cards_off_mm=((12.0, 12.0), (12.0, -12.0), (-12.0, -12.0), (-12.0, 12.0)))

    held = rim_corners(marks, station, askew)

    assert held.confidence < SURE or worst_mm(held) < 4.0


@pytest.mark.parametrize("end", [-1, 1], ids=["left", "right"])
def test_one_side_alone_that_is_seen_aside_moves_nothing(station, marks, end):
    """As the rim of the next tray, where leaves hide its own: such trays were surely 3 to 5 mm aside."""
    held = rim_corners(marks, replace(station, pixels=end_moved(station.pixels, 5.0 * end)), TRAY)

    assert worst_mm(held) < 1.5


def end_moved(pixels: Pixels, by_mm: float) -> Pixels:
    """The rim of one end, and 20 mm on either side, painted so far outwards along the tray."""
    true = np.array(json.loads((PHOTOS / "station.json").read_text(encoding="utf-8"))["corners_px"])
    half = np.array([TRAY.inner_long_mm, TRAY.inner_short_mm]) / 2
    to_px = homography(half * [(-1, -1), (1, -1), (1, 1), (-1, 1)], true)
    moved = to_px @ np.array([[1, 0, by_mm], [0, 1, 0], [0, 0, 1.0]]) @ np.linalg.inv(to_px)
    size = (pixels.shape[1], pixels.shape[0])
    strip = half * [(1, -1.2), (1, -1.2), (1, 1.2), (1, 1.2)] + np.array(
        [[-15.0, 0], [40, 0], [40, 0], [-15, 0]]
    )
    strip[:, 0] *= np.sign(by_mm)
    where = np.zeros(pixels.shape[:2], np.uint8)
    cv2.fillConvexPoly(where, np.round(through(to_px, strip)).astype(np.int32), 1)
    return np.where(where[:, :, None] > 0, cv2.warpPerspective(pixels, moved, size), pixels)


class EndAside:
    """A rim of which the right end is seen 5 mm outwards, each long side less than that, all 1 mm unsure."""

    def __init__(self, size: tuple[int, int], long_sides_mm: float) -> None:
        self.size = size
        self._off = np.array([*[-long_sides_mm] * 2, *[long_sides_mm] * 2, 0.0, 0.0, 5.0, 5.0])

    def is_at(self, laid: Laid) -> bool:
        return False

    def found(self, plane: Plane, begin: Laid) -> tuple[Laid, Beside, np.ndarray]:
        after = begin.moved(np.array([2.5, 0.0, 2.5 * REACH_MM / HALF_MM[0], 0.0]))
        return after, Beside(self._off + after.beside(begin), np.ones(8)), np.eye(4)


@pytest.mark.parametrize(
    ("long_sides_mm", "sure", "moved"), [(0.3, True, False), (0.9, False, False), (1.2, True, True)]
)
def test_where_but_one_side_plainly_speaks_against_the_marks_the_person_is_asked(
    station, marks, monkeypatch, long_sides_mm, sure, moved
):
    """The others of it: 4 x 0.3, 0.9 and 1.2 mm squared are 0.4, 3.2 and 5.8 (bar 4.5)."""
    monkeypatch.setattr(vision.rim, "_Rim", lambda photo: EndAside(photo.size_stored, long_sides_mm))

    held = rim_corners(marks, station, TRAY)

    assert (held.confidence >= SURE) is sure
    assert (held.points != station_corners(marks, station, TRAY).points) is moved


def test_of_a_tray_of_another_shape_the_marks_are_believed(station, marks):
    square = TrayType(outer_long_mm=278, outer_short_mm=278, inner_long_mm=254, inner_short_mm=254)
    assert rim_corners(marks, station, square) == station_corners(marks, station, square)


def test_one_mark_is_no_station(station):
    assert rim_corners(Marks(), station, TRAY) is None


@pytest.mark.parametrize("code", [0, 128, 255])
def test_where_no_rim_is_seen_at_all_the_marks_are_believed(station, marks, code):
    blank = replace(station, pixels=np.full_like(station.pixels, code))
    assert rim_corners(marks, blank, TRAY) == station_corners(marks, station, TRAY)


def test_marks_that_contradict_each_other_give_no_error(station, marks):
    mixed = replace(marks, cards={**marks.cards, 0: marks.cards[2], 1: marks.cards[3]})

    held = rim_corners(mixed, station, TRAY)

    assert held is None or held.confidence < SURE


def test_a_small_photo_is_no_error(station):
    pixels = np.asarray(cv2.resize(station.pixels, (605, 454), interpolation=cv2.INTER_AREA), np.uint8)
    photo = replace(station, pixels=pixels)

    held = rim_corners(find_marks(grey(photo)), photo, TRAY)

    assert held is None or worst_mm(replace(held, points=tuple((2 * x, 2 * y) for x, y in held.points))) < 4.0
