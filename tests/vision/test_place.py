"""Trays of another kind: the tag tells the kind, and corners, areas and lengths follow it."""

from dataclasses import dataclass, replace
from datetime import datetime

import numpy as np
import pytest

from vision.corners import Corners, CornersFrom, by_hand
from vision.markers import Marks, find_marks
from vision.ownmm import stand_of, suspects_of
from vision.place import far_side_first, find_corners, marks_and_tray
from vision.score import Scored, score_photo
from vision.sharpness import edge_rise_mm
from vision.station import station_corners
from vision.suspect import Suspect
from vision.tissue import Label, PlainTissue, TissueMap
from vision.topview import make_top_view, top_scale
from vision.traytype import TrayType

LARGE = TrayType(
    outer_long_mm=620, outer_short_mm=320, inner_long_mm=580, inner_short_mm=290, rim_height_mm=50
)
SMALL = TrayType(
    outer_long_mm=420, outer_short_mm=230, inner_long_mm=385, inner_short_mm=195, rim_height_mm=40
)
SQUARE = TrayType(outer_long_mm=278, outer_short_mm=278, inner_long_mm=254, inner_short_mm=254)


@dataclass
class UnderTag42:
    """Tag 42 is on a tray of this kind, all others are on nominal ones."""

    tray: TrayType

    @property
    def kinds(self) -> tuple[TrayType, ...]:
        return tuple(dict.fromkeys((TrayType(), self.tray)))

    def __call__(self, tag: int | None, at: datetime | None) -> TrayType:
        assert at is None  # a drawn photo has no time
        return self.tray if tag == 42 else TrayType()


@pytest.mark.parametrize("share", [1.0, 0.9], ids=["as drawn", "darker"])
@pytest.mark.parametrize(("tray", "away_mm"), [(LARGE, 760), (SMALL, 640)], ids=["large", "small"])
def test_the_tag_tells_the_kind_and_the_rim_is_found_by_it(draw_station, tray, away_mm, share):
    station = draw_station(tray=tray, distance_mm=away_mm)
    photo = station.photo()
    photo = replace(photo, pixels=(share * photo.pixels).astype(np.uint8))

    marks, told = marks_and_tray(photo, UnderTag42(tray))

    assert (told, marks.tag.number, len(marks.cards)) == (tray, 42, 4)
    assert station.worst_mm(find_corners(photo, marks, told).points) < 1.5
    taken_for_nominal = station_corners(marks, photo)
    assert station.worst_mm(taken_for_nominal.points) > 8


def test_without_other_kinds_every_tray_is_nominal(draw_station):
    station = draw_station()
    marks, tray = marks_and_tray(station.photo(), None)
    assert (tray, marks.tag.number) == (TrayType(), 42)
    assert marks_and_tray(station.photo(), UnderTag42(TrayType()))[1] == TrayType()


def test_a_photo_without_a_mark_is_searched_once_however_many_kinds_there_are(monkeypatch, draw_station):
    station = draw_station(cards=(), tag=None)
    searched = []

    def find(picture, *kind):
        searched.append(kind)
        return find_marks(picture, *kind)

    monkeypatch.setattr("vision.place.find_marks", find)

    marks, told = marks_and_tray(station.photo(), UnderTag42(LARGE))

    assert (marks, told) == (Marks(), TrayType())
    assert len(searched) == 1


@pytest.mark.parametrize("turned_deg", [3.0, 178.0])
def test_corners_by_hand_at_a_station_begin_at_the_far_side_from_wherever_it_was_photographed(
    draw_station, turned_deg
):
    """By the upright photo alone the tray came out upside down: sides and suspects changed places."""
    station = draw_station(turned_deg=turned_deg)
    photo = station.photo()
    tinted = replace(photo, pixels=(photo.pixels * (0.9, 1.0, 0.7)).astype(np.uint8))

    result = score_photo(tinted, PlainTissue(), corners=by_hand(station.rim.tolist(), tinted))

    assert isinstance(result, Scored)
    assert station.worst_mm(result.score.corners.points) < 0.1


@pytest.mark.parametrize("turned_deg", [3.0, 178.0])
def test_a_frame_at_a_station_begins_at_the_far_side_too(monkeypatch, draw_station, turned_deg):
    station = draw_station(turned_deg=turned_deg)
    photo = station.photo()
    frame = replace(by_hand(station.rim.tolist(), photo), found_by=CornersFrom.FRAME)
    monkeypatch.setattr("vision.place.rim_corners", lambda *_: None)
    monkeypatch.setattr("vision.place.find_frame", lambda _: frame)

    found = find_corners(photo, find_marks(station.grey), TrayType())

    assert station.worst_mm(found.points) < 0.1


def test_without_a_card_the_upright_photo_tells_what_is_above(draw_station):
    corners = by_hand(draw_station().rim.tolist(), draw_station().photo())
    assert far_side_first(corners, Marks()) == corners


def test_a_tray_that_is_not_twice_as_long_as_wide_needs_its_corners_by_hand(monkeypatch, draw_station):
    frame = Corners(
        points=((0, 0), (9, 0), (9, 9), (0, 9)), found_by=CornersFrom.FRAME, confidence=0.9, tilt_deg=None
    )
    monkeypatch.setattr("vision.place.rim_corners", lambda *_: None)
    monkeypatch.setattr("vision.place.find_frame", lambda _: frame)
    photo = draw_station().photo()
    marks, _ = marks_and_tray(photo, None)

    assert find_corners(photo, marks, LARGE).confidence == 0.9
    assert find_corners(photo, marks, SQUARE).confidence < 0.5


def test_the_scale_of_the_top_view_keeps_areas():
    assert top_scale(508, 254) == 2.0
    for tray in (LARGE, SMALL, SQUARE):
        scale = top_scale(tray.inner_long_mm, tray.inner_short_mm)
        assert 1016 * 508 / scale**2 == pytest.approx(tray.inner_long_mm * tray.inner_short_mm)


class HalfBare:
    """The left half canopy, in the right one a bare patch of a known share."""

    name, version = "half bare", "1"

    def label(self, top: np.ndarray, px_per_mm: float | None) -> TissueMap:
        assert px_per_mm == top_scale(580, 290)
        labels = np.full(top.shape[:2], Label.GREEN, np.uint8)
        labels[100:300, 600:900] = Label.MEDIUM
        return TissueMap(labels=labels)


def test_a_gap_on_a_large_tray_has_the_area_that_it_has(draw_station):
    station = draw_station(tray=LARGE, distance_mm=760)

    photo = station.photo()
    tinted = (photo.pixels * (0.9, 1.0, 0.85)).astype(np.uint8)  # a grey picture would be refused

    result = score_photo(replace(photo, pixels=tinted), HalfBare(), trays=UnderTag42(LARGE))

    assert isinstance(result, Scored)
    share = 200 * 300 / (1016 * 508)
    (gap,) = result.score.stand.gaps
    assert gap.area_cm2 == pytest.approx(share * 58.0 * 29.0, rel=0.01)
    assert result.score.stand.coverage == pytest.approx(100 * (1 - share), abs=0.1)
    assert result.score.inner_mm == (580, 290)
    assert (gap.x_mm, gap.y_mm) == pytest.approx((750 / 1016 * 580, 200 / 508 * 290), abs=1.0)


@pytest.mark.parametrize("tray", [LARGE, SMALL, SQUARE], ids=["large", "small", "square"])
def test_scale_and_blur_of_a_tray_of_another_kind_are_in_its_own_mm(draw_station, tray):
    """The same camera from the same height sees all of them alike."""
    nominal, other = draw_station(distance_mm=760), draw_station(tray=tray, distance_mm=760)

    views = [
        make_top_view(
            one.photo(), station_of(one), inner_mm=(one.tray.inner_long_mm, one.tray.inner_short_mm)
        )
        for one in (nominal, other)
    ]

    scales = [view.photo_px_per_mm for view in views]
    blurs = [edge_rise_mm(one.photo(), view) for one, view in zip((nominal, other), views, strict=True)]
    assert scales[1] == pytest.approx(scales[0], rel=0.06)
    assert blurs[1] == pytest.approx(blurs[0], rel=0.12)


def station_of(station) -> Corners:
    """The corners as they were drawn."""
    points = tuple((float(x), float(y)) for x, y in station.rim)
    return Corners(points=points, found_by=CornersFrom.STATION, confidence=1.0, tilt_deg=7.0)


LONG = (600.0, 200.0)  # three times as long as wide


def test_places_are_right_on_a_tray_of_another_shape():
    labels = np.full((508, 1016), Label.GREEN, np.uint8)
    labels[254:354, 508:708] = Label.MEDIUM  # 118 x 39 mm, from the middle of the tray

    stand = stand_of(labels, LONG)

    (gap,) = stand.gaps
    assert gap.area_cm2 == pytest.approx(60.0 * 20.0 * 200 * 100 / (1016 * 508), rel=0.01)
    assert (gap.x_mm, gap.y_mm) == pytest.approx((608 / 1016 * 600, 304 / 508 * 200), abs=0.5)
    xs, ys = zip(*gap.outline_mm, strict=True)
    assert (max(xs) - min(xs), max(ys) - min(ys)) == pytest.approx((118.1, 39.4), abs=1.5)


def test_gradients_are_for_each_hundred_mm_of_their_own_direction():
    labels = np.full((508, 1016), Label.MEDIUM, np.uint8)
    for column in range(1016):
        labels[: column // 2, column] = Label.GREEN  # 0 to 100 % from left to right

    assert stand_of(labels, LONG).gradient_x == pytest.approx(100 / 6.0, rel=0.02)
    assert stand_of(labels, (508, 254)).gradient_x == pytest.approx(100 / 5.08, rel=0.02)


def test_a_suspect_keeps_its_area_and_gets_its_place():
    found = Suspect(x_mm=100.0, y_mm=50.0, area_cm2=6.0, confidence=0.5, why="", outline_mm=((90.0, 40.0),))
    scale = top_scale(*LONG)
    (one,) = suspects_of([found], LONG)
    assert one.area_cm2 == 6.0
    assert (one.x_mm, one.y_mm) == pytest.approx((100 * scale / 1016 * 600, 50 * scale / 508 * 200))
    assert suspects_of([found], (508, 254)) == (found,)
