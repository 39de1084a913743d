"""From a photo to its score, on two small rendered photos whose truth is known, and on what goes wrong."""

import json
from dataclasses import fields, replace
from io import BytesIO
from pathlib import Path

import cv2
import numpy as np
import pytest
from PIL import Image

import vision.place
import vision.score
from vision.cielab import encoded, linear
from vision.corners import Corners, CornersFrom
from vision.markers import Marks
from vision.photo import Photo, decode_photo, read_photo
from vision.place import find_corners
from vision.reason import Reason
from vision.score import Refused, Score, Scored, score_file, score_photo, score_whole
from vision.tissue import Label, PlainTissue, TissueMap

PHOTOS = Path(__file__).parents[1] / "photos"


class Painted:
    """A tissue method whose answer is plain to see: green where green is the strongest channel."""

    name = "painted"
    version = "7"

    def label(self, top, px_per_mm):
        green = (top[..., 1] > top[..., 0]) & (top[..., 1] > top[..., 2])
        return TissueMap(labels=np.where(green, Label.GREEN, Label.MEDIUM).astype(np.uint8))


@pytest.fixture(scope="module")
def at_the_station() -> Scored:
    result = score_file(PHOTOS / "station.jpg", PlainTissue())
    assert isinstance(result, Scored)
    return result


@pytest.fixture(scope="module")
def by_hand_held_phone() -> Scored:
    result = score_file(PHOTOS / "handheld.jpg", PlainTissue())
    assert isinstance(result, Scored)
    return result


class Sure(Painted):
    """The same, and it says how far coverage may be off."""

    def label(self, top, px_per_mm):
        return replace(super().label(top, px_per_mm), coverage_sd=1.0)


def truth(name: str) -> dict:
    return json.loads((PHOTOS / f"{name}.json").read_text(encoding="utf-8"))


def worst_corner_mm(score: Score, name: str, *, either_way_round: bool) -> float:
    """How far the worst corner lies from the truth; without a station both ways round are right."""
    want = np.array(truth(name)["corners_px"])
    px_per_mm = np.linalg.norm(want[1] - want[0]) / 508
    ways = (0, 2) if either_way_round else (0,)
    off = [np.linalg.norm(np.roll(score.corners_px, way, axis=0) - want, axis=1).max() for way in ways]
    return min(off) / px_per_mm


def a_picture(size=(200, 400), left=(60, 150, 70), right=(110, 80, 60), share=0.5) -> bytes:
    """A PNG whose left half, or other share, has one colour and whose rest another."""
    pixels = np.empty((*size, 3), np.uint8)
    border = int(size[1] * share)
    pixels[:, :border] = left
    pixels[:, border:] = right
    stream = BytesIO()
    Image.fromarray(pixels).save(stream, "PNG")
    return stream.getvalue()


def turned(photo: Photo, orientation: int) -> Photo:
    """The same picture as a camera held another way would store it."""
    stream = BytesIO()
    exif = Image.Exif()
    exif[0x0112] = orientation
    Image.fromarray(photo.pixels).save(stream, "PNG", exif=exif)
    return decode_photo(stream.getvalue(), "turned.png")


def corners(confidence: float, found_by: CornersFrom = CornersFrom.FRAME) -> Corners:
    square = ((10.0, 10.0), (110.0, 10.0), (110.0, 60.0), (10.0, 60.0))
    return Corners(points=square, found_by=found_by, confidence=confidence)


# golden values: the truth of a rendering, with the tolerance that the plain method is allowed
def test_at_the_station_corners_tag_and_coverage_are_those_of_the_rendered_tray(at_the_station):
    score = at_the_station.score

    assert score.corners_from is CornersFrom.STATION
    assert score.frame_confidence > 0.5
    assert score.tag_number == truth("station")["tag_number"]
    assert worst_corner_mm(score, "station", either_way_round=False) < 2.0
    assert score.stand.coverage == pytest.approx(truth("station")["coverage_pct"], abs=6.0)
    assert np.abs(np.array(score.stand.cells) - truth("station")["cells_pct"]).mean() < 8.0


def test_by_hand_the_frame_and_the_coverage_are_those_of_the_rendered_tray(by_hand_held_phone):
    score = by_hand_held_phone.score

    assert score.corners_from is CornersFrom.FRAME
    assert score.tag_number is None
    assert worst_corner_mm(score, "handheld", either_way_round=True) < 8.0
    assert score.stand.coverage == pytest.approx(truth("handheld")["coverage_pct"], abs=6.0)


def test_the_score_tells_how_and_by_which_method_it_was_had(at_the_station):
    score = at_the_station.score

    assert score.method == f"plain {PlainTissue.version} / pipeline {vision.score.PIPELINE}"
    assert score.taken_at is not None
    assert score.light.corrected_by == "patch"
    assert score.px_per_mm == pytest.approx(1.6, abs=0.1)
    assert 0 < score.seconds < 60
    assert len(score.digest) == 64


def test_the_top_view_and_its_labels_are_handed_on_at_two_pixels_a_millimetre(at_the_station):
    assert at_the_station.top.shape == (508, 1016, 3)
    assert at_the_station.labels.shape == (508, 1016)
    share = 100 * np.isin(at_the_station.labels, (4, 5, 6)).mean()
    assert share == pytest.approx(at_the_station.score.stand.coverage)


def test_no_number_of_a_score_is_missing_without_a_reason(at_the_station, by_hand_held_phone):
    for scored in (at_the_station, by_hand_held_phone):
        score = scored.score
        parts = (score, score.stand, score.colour, score.light)
        missing = {f.name for part in parts for f in fields(part) if getattr(part, f.name) is None}
        assert missing - {"refusal", "utc_offset"} == set(score.missing)  # what a camera notes is no number


def test_a_photo_stored_lying_on_its_side_gives_the_same_corners_in_the_upright_photo(at_the_station):
    photo = read_photo(PHOTOS / "station.jpg")
    upright = np.ascontiguousarray(np.rot90(photo.pixels))  # a turn to the left, which orientation 6 undoes
    lying = replace(turned(replace(photo, pixels=upright), 6), focal_35mm=photo.focal_35mm)

    score = score_photo(lying, PlainTissue()).score

    assert np.abs(np.array(score.corners_px) - at_the_station.score.corners_px).max() < 0.7
    assert score.stand.coverage == pytest.approx(at_the_station.score.stand.coverage, abs=0.5)


def test_corners_by_hand_win_over_the_station(at_the_station):
    given = [(x + 40.0, y) for x, y in at_the_station.score.corners_px]

    result = score_file(PHOTOS / "station.jpg", PlainTissue(), given)

    assert result.score.corners_from is CornersFrom.HAND
    assert result.score.frame_confidence == 1.0
    assert np.array(sorted(result.score.corners_px)) == pytest.approx(np.array(sorted(given)))


def test_a_tray_under_purple_light_is_refused_with_its_tag_still_told():
    photo = read_photo(PHOTOS / "station.jpg")
    purple = (photo.pixels * np.array([1.0, 0.35, 1.0])).astype(np.uint8)

    result = score_photo(replace(photo, pixels=purple), PlainTissue())

    assert isinstance(result, Refused)
    assert result.reason is Reason.PURPLE
    assert result.tag_number == truth("station")["tag_number"]
    assert result.digest == photo.digest


def test_a_blurred_photo_is_refused(at_the_station):
    photo = read_photo(PHOTOS / "station.jpg")
    blurred = np.asarray(cv2.GaussianBlur(photo.pixels, (0, 0), 5), np.uint8)

    result = score_photo(replace(photo, pixels=blurred), PlainTissue(), corners=at_the_station.score.corners)

    assert isinstance(result, Refused)
    assert result.reason is Reason.BLURRED


@pytest.mark.parametrize(("share", "refused"), [(0.10, True), (0.06, True), (0.005, False)])
def test_a_tray_that_the_photo_does_not_show_whole_is_refused_and_not_counted_as_bare(
    at_the_station, share, refused
):
    """Four cards can be in the picture while the tray's end, nearer to the camera, is not."""
    photo, corners = read_photo(PHOTOS / "station.jpg"), at_the_station.score.corners
    left = min(x for x, _ in corners.points)
    cut = round(left + share * (max(x for x, _ in corners.points) - left))
    shifted = replace(corners, points=tuple((x - cut, y) for x, y in corners.points))

    result = score_photo(
        replace(photo, pixels=np.ascontiguousarray(photo.pixels[:, cut:])), PlainTissue(), corners=shifted
    )

    assert isinstance(result, Refused) is refused
    assert not refused or result.reason is Reason.CUT_OFF


def test_half_a_tray_is_not_called_too_dark_for_what_lies_beyond_the_picture(at_the_station):
    photo = read_photo(PHOTOS / "station.jpg")
    points = tuple((x - 500.0, y) for x, y in at_the_station.score.corners.points)
    guess = Corners(points=points, found_by=CornersFrom.FRAME, confidence=0.1)

    result = score_photo(photo, PlainTissue(), corners=guess)

    assert isinstance(result, Refused)
    assert result.reason is Reason.NO_TRAY


def test_a_picture_without_a_tray_is_refused():
    result = score_photo(
        decode_photo(a_picture((600, 800), (120, 100, 80), (130, 112, 90)), "wall.png"), Painted()
    )

    assert isinstance(result, Refused)
    assert result.reason is Reason.NO_TRAY


def test_the_black_bars_of_a_screenshot_are_not_called_darkness(monkeypatch):
    monkeypatch.setattr(vision.place, "find_frame", lambda _: None)
    wall = decode_photo(a_picture((600, 800), (120, 100, 80), (130, 112, 90)), "wall.png")
    screen = np.pad(wall.pixels, ((500, 500), (0, 0), (0, 0)))
    screen[40:60, 30:110] = 255  # the time

    result = score_photo(replace(wall, pixels=screen), Painted())

    assert isinstance(result, Refused)
    assert result.reason is Reason.NO_TRAY


def test_a_black_picture_is_refused_as_too_dark_and_not_for_its_missing_tray():
    result = score_photo(decode_photo(a_picture((600, 800), (6, 4, 4), (4, 4, 6)), "night.png"), Painted())

    assert isinstance(result, Refused)
    assert result.reason is Reason.TOO_DARK


def test_a_file_that_cannot_be_read_is_refused_with_its_own_reason(tmp_path):
    (tmp_path / "a.jpg").write_bytes(b"")

    result = score_file(tmp_path / "a.jpg", Painted())

    assert result == Refused(name="a.jpg", digest=None, reason=Reason.EMPTY)


def test_a_picture_that_is_a_top_view_already_is_scored_as_it_is():
    result = score_whole(decode_photo(a_picture(), "crop.png"), Painted())

    score = result.score
    assert score.stand.coverage == 50.0
    assert (score.corners, score.corners_px, score.px_per_mm) == (None, None, None)
    assert score.corners_from is CornersFrom.WHOLE
    assert score.method == f"painted 7 / pipeline {vision.score.PIPELINE}"
    assert result.labels.shape == (200, 400)
    assert score.missing["gap_share"] is Reason.NO_SCALE


def test_white_paper_beside_a_plant_is_noted_and_a_picture_of_nothing_but_white_is_refused():
    beside = score_whole(decode_photo(a_picture(right=(255, 255, 255), share=0.6), "a.png"), Painted())
    nothing = score_whole(
        decode_photo(a_picture(left=(255, 255, 255), right=(255, 253, 240)), "b.png"), Painted()
    )

    assert beside.score.notes == (Reason.TOO_BRIGHT,)
    assert isinstance(nothing, Refused)


def test_a_whole_picture_is_turned_upright_first():
    stream = BytesIO()
    exif = Image.Exif()
    exif[0x0112] = 6  # turn to the right
    Image.open(BytesIO(a_picture())).save(stream, "PNG", exif=exif)

    result = score_whole(decode_photo(stream.getvalue(), "crop.png"), Painted())

    assert result.labels.shape == (400, 200)
    assert (result.labels[:200] == Label.GREEN).all()  # what was left is now above


def test_a_large_whole_picture_gets_labels_of_its_own_size():
    result = score_whole(decode_photo(a_picture((2001, 2503)), "large.png"), Painted())

    assert result.labels.shape == (2001, 2503)
    assert result.score.stand.coverage == pytest.approx(50, abs=0.1)


@pytest.mark.parametrize(
    ("station", "frame", "expected"),
    [
        (corners(0.9, CornersFrom.STATION), corners(0.99), CornersFrom.STATION),
        (corners(0.2, CornersFrom.STATION), corners(0.8), CornersFrom.FRAME),
        (corners(0.4, CornersFrom.STATION), corners(0.3), CornersFrom.STATION),
        (corners(0.2, CornersFrom.STATION), None, CornersFrom.STATION),
        (None, corners(0.1), CornersFrom.FRAME),
    ],
    ids=["sure station", "surer frame", "surer of two unsure", "only the station", "only the frame"],
)
def test_the_station_wins_where_it_is_sure_else_the_surer_of_the_two(monkeypatch, station, frame, expected):
    monkeypatch.setattr(vision.place, "rim_corners", lambda *_: station)
    monkeypatch.setattr(vision.place, "find_frame", lambda _: frame)

    assert find_corners(decode_photo(a_picture(), "a.png"), Marks()).found_by is expected


def test_where_glare_lies_on_the_tray_the_score_says_so_and_promises_no_accuracy(at_the_station):
    photo = read_photo(PHOTOS / "station.jpg")
    corners = at_the_station.score.corners
    pixels = photo.pixels.copy()
    middle = np.mean(corners.points, axis=0).astype(int)
    cv2.circle(pixels, (int(middle[0]), int(middle[1])), 70, (250, 250, 250), -1)

    clear = score_photo(photo, Sure(), corners=corners).score
    shining = score_photo(replace(photo, pixels=pixels), Sure(), corners=corners).score

    assert (clear.notes, clear.coverage_sd) == ((), 1.0)
    assert (shining.notes, shining.coverage_sd) == ((Reason.GLARE,), None)
    assert shining.missing["coverage_sd"] is Reason.GLARE


def test_where_a_hand_lies_over_the_tray_the_score_says_so_and_promises_no_accuracy(at_the_station):
    photo = read_photo(PHOTOS / "station.jpg")
    corners = at_the_station.score.corners
    pixels = photo.pixels.copy()
    middle = np.mean(corners.points, axis=0).astype(int)
    cv2.circle(pixels, (int(middle[0]), int(middle[1])), 70, (150, 105, 85), -1)

    score = score_photo(replace(photo, pixels=pixels), Sure(), corners=corners).score

    assert (score.notes, score.coverage_sd) == ((Reason.HIDDEN,), None)
    assert score.missing["coverage_sd"] is Reason.HIDDEN


def test_a_photo_through_a_steamed_lens_has_the_coverage_of_the_clear_one_and_a_note(at_the_station):
    photo = read_photo(PHOTOS / "station.jpg")
    corners = at_the_station.score.corners
    steam = replace(photo, pixels=encoded(linear(photo.pixels) * 0.75 + 0.25 * 0.7))

    clear = score_photo(photo, PlainTissue(), corners=corners).score
    steamed = score_photo(steam, PlainTissue(), corners=corners).score

    assert steamed.notes == (Reason.FADED,)
    assert steamed.stand.coverage == pytest.approx(clear.stand.coverage, abs=3)
    assert steamed.colour.lightness is None


def test_faded_colours_are_no_colour_of_a_canopy(at_the_station):
    """A third of the saturation: W3C, Filter Effects Module Level 1 (matrix from memory)."""
    photo = read_photo(PHOTOS / "station.jpg")
    matrix = np.eye(3) * 0.33 + np.array([0.213, 0.715, 0.072]) * 0.67
    pixels = np.clip(np.rint(photo.pixels @ matrix.T), 0, 255).astype(np.uint8)

    score = score_photo(
        replace(photo, pixels=pixels), PlainTissue(), corners=at_the_station.score.corners
    ).score

    assert score.notes == (Reason.FADED,)
    assert score.stand.coverage > 0
    assert score.colour.lightness is None
    assert {score.missing[name] for name in ("lightness", "chroma", "dark_green")} == {Reason.FADED}


def test_of_two_tags_on_one_tray_none_names_it_and_the_score_says_so(draw_station):
    station = draw_station(tag=313, further=[(99, 120.0, -201.0, False)])
    pixels = np.asarray(station.pixels.copy(), np.uint8)
    rng = np.random.default_rng(3)
    for x, y in rng.uniform((-220, -100), (220, 100), (700, 2)):
        centre = station.pose.project(np.array([[x, y, 0.0]]))[0]
        cv2.circle(pixels, (int(centre[0]), int(centre[1])), 5, (60, int(rng.uniform(90, 190)), 40), -1)

    result = score_photo(
        decode_photo(cv2.imencode(".png", pixels[:, :, ::-1])[1].tobytes(), "two.png"), PlainTissue()
    )

    assert isinstance(result, Scored)
    assert result.score.tag_number is None
    assert Reason.TWO_TAGS in result.score.notes
    assert result.score.missing["tag_number"] is Reason.TWO_TAGS
