"""Score: one photo -> everything that can be told of its tray, or the reason why not.

In    a photo or the path of one; a method that tells tissues apart; corners where a person gave them
Out   `Scored` (the numbers, the top view, the labels) or `Refused`
Not   the records (`scored.py`), which tray of the book it is and what is stored (the book), drawing
      (`picture.py`)

This is the plot of the room: marks, corners, top view, light, tissue, stand, colour, suspects. Corners by
hand win over the station, the station over the frame. A frame that is not sure is scored all the same; its
confidence says so.
"""

from collections.abc import Callable, Sequence
from dataclasses import replace
from pathlib import Path
from time import perf_counter

import cv2
import numpy as np

from vision.colour import Colour, measure_colour, no_colour
from vision.corners import MOST_CUT_OFF, Corners, by_hand, cut_off
from vision.light import BLACK, Light, judge_light, judge_pixels, white_balance
from vision.markers import Marks
from vision.ownmm import stand_of, suspects_of
from vision.photo import (
    Photo,
    PhotoRefused,
    Pixels,
    Point,
    in_srgb,
    preview,
    read_photo,
    upright_points,
)
from vision.place import SURE, TrayOf, far_side_first, find_corners, marks_and_tray
from vision.reason import Reason
from vision.scored import Refused, Score, Scored, explained
from vision.smooth import MOST_SMOOTH_PCT, smooth_pct
from vision.stand import measure_stand
from vision.station import patches
from vision.suspects import find_suspects
from vision.tissue import Labels, Tissue
from vision.topview import TOP_WIDTH, make_top_view, top_scale
from vision.veil import without_veil

__all__ = [
    "PIPELINE",
    "Refused",
    "Score",
    "Scored",
    "method_of",
    "score_file",
    "score_photo",
    "score_whole",
    "score_whole_file",
]

PIPELINE = "9"  # goes up with every change around the tissue method that moves a number
MOST_USELESS_PCT = 50.0  # black or burnt, of a picture that is a top view already
LEAST_EXPOSURE = 5.0  # mean L* of such a picture: below it everything is black
MOST_WHOLE_PX = 4_000_000  # larger pictures of unknown scale are labelled smaller: memory


def score_file(
    path: Path,
    tissue: Tissue,
    corners_upright: Sequence[Point] | None = None,
    trays: TrayOf | None = None,
) -> Scored | Refused:
    """Score the photo in a file; `corners_upright` are four points of the upright photo, in any order."""

    def score(photo: Photo) -> Scored | Refused:
        corners = None if corners_upright is None else by_hand(corners_upright, photo)
        return score_photo(photo, tissue, corners=corners, trays=trays)

    return _read_and(path, score)


def score_whole_file(path: Path, tissue: Tissue) -> Scored | Refused:
    """Score the picture in a file that already is a top view, of unknown scale."""
    return _read_and(path, lambda photo: score_whole(photo, tissue))


def score_photo(
    photo: Photo,
    tissue: Tissue,
    *,
    corners: Corners | None = None,
    trays: TrayOf | None = None,
    keep_order: bool = False,
) -> Scored | Refused:
    """Everything that can be told of the tray in a photo.

    Parameters
    ----------
    photo : as read
    tissue : the method that tells tissues apart
    corners : by hand, of the stored photo; None lets them be found
    trays : which kind of tray carries a tag at a time; None: all are nominal
    keep_order : a canopy was drawn, or numbers are kept, on the top view of these corners: it is not turned

    Returns
    -------
    Scored or Refused
        Refused where no tray is seen, part of it lies outside the photo or the light is of no use; the tag
        is told all the same.
    """
    started = perf_counter()
    marks, tray = marks_and_tray(photo, trays)
    if corners is not None and not keep_order:
        corners = far_side_first(corners, marks)
    found = find_corners(photo, marks, tray) if corners is None else corners
    if found is None:
        return _refused(photo, _why_no_tray(photo), marks)
    if found.confidence >= SURE and cut_off(found.points, photo.size_stored) > MOST_CUT_OFF:
        return _refused(photo, Reason.CUT_OFF, marks)
    scored = _through(photo, found, (tray.inner_long_mm, tray.inner_short_mm), marks, tissue)
    return _timed(scored, started)


def _through(
    photo: Photo, found: Corners, inner_mm: tuple[float, float], marks: Marks, tissue: Tissue
) -> Scored | Refused:
    """The score of what is seen between corners; refused where its light is of no use."""
    view = make_top_view(photo, found, inner_mm)
    white = patches(marks, photo)
    light = judge_light(photo, view, white)
    if light.refusal is not None:
        return _refused(photo, _why_not(photo, found, light.refusal), marks)
    top = without_veil(white_balance(view.pixels, white), light.veil)
    scale = top_scale(*inner_mm)
    tissues = tissue.label(top, scale)
    light = _with_hidden(light, top, tissues.labels, scale)
    score = Score(
        name=photo.name,
        digest=photo.digest,
        taken_at=photo.taken_at,
        camera=photo.camera,
        utc_offset=photo.utc_offset,
        tag_number=marks.number,
        corners=found,
        corners_px=_four(upright_points(photo, found.points)),
        light=light,
        stand=stand_of(tissues.labels, inner_mm),
        colour=_colour(top, tissues.labels, light),
        suspects=suspects_of(find_suspects(top, tissues, scale), inner_mm),
        px_per_mm=view.photo_px_per_mm,
        tilt_deg=view.tilt_deg,
        method=method_of(tissue),
        seconds=0.0,
        inner_mm=inner_mm,
        coverage_sd=None if light.doubts else tissues.coverage_sd,
        notes=photo.notes + light.doubts + tissues.notes + ((Reason.TWO_TAGS,) if marks.rivals else ()),
    )
    return Scored(score=explained(score), top=top, labels=tissues.labels)


def score_whole(photo: Photo, tissue: Tissue) -> Scored | Refused:
    """Everything that can be told of a picture that already is a top view, of unknown scale.

    Nothing is searched or warped. Labels have the upright picture's own size; lengths and areas are None.
    """
    started = perf_counter()
    top = in_srgb(np.ascontiguousarray(np.rot90(photo.pixels, -photo.turns)), photo.profile)
    small = _not_too_large(top)
    light, doubts = _forgiving(judge_pixels(small))
    if light.refusal is not None:
        return _refused(photo, light.refusal, None)
    tissues = tissue.label(small, None)
    small_labels = tissues.labels
    size = (top.shape[1], top.shape[0])
    labels = np.asarray(cv2.resize(small_labels, size, interpolation=cv2.INTER_NEAREST_EXACT), np.uint8)
    score = Score(
        name=photo.name,
        digest=photo.digest,
        taken_at=photo.taken_at,
        camera=photo.camera,
        utc_offset=photo.utc_offset,
        tag_number=None,
        corners=None,
        corners_px=None,
        light=light,
        stand=measure_stand(labels, None),
        colour=_colour(small, small_labels, light),
        suspects=(),
        px_per_mm=None,
        tilt_deg=None,
        method=method_of(tissue),
        seconds=0.0,
        coverage_sd=None if light.doubts else tissues.coverage_sd,
        notes=photo.notes + doubts + light.doubts + tissues.notes,
    )
    return _timed(Scored(score=explained(score), top=top, labels=labels), started)


def _read_and(path: Path, score: Callable[[Photo], Scored | Refused]) -> Scored | Refused:
    started = perf_counter()
    try:
        photo = read_photo(path)
    except PhotoRefused as refused:
        return Refused(name=path.name, digest=None, reason=refused.reason)
    return _timed(score(photo), started)


def method_of(tissue: Tissue) -> str:
    """What a score names as its method: the tissue method and the pipeline around it, each with its
    version."""
    return f"{tissue.name} {tissue.version} / pipeline {PIPELINE}"


def _why_no_tray(photo: Photo) -> Reason:
    """A photo that is black, burnt out or grey shows no tray either: then that is what has to be mended."""
    return judge_pixels(_without_bars(preview(photo, TOP_WIDTH))).refusal or Reason.NO_TRAY


def _without_bars(pixels: Pixels) -> Pixels:
    """Without the black bars of a screenshot, which are no darkness of the photo in it."""
    for axis in (0, 1):
        lit = np.flatnonzero(np.median(pixels.max(axis=2), axis=1 - axis) > BLACK)
        if lit.size:
            pixels = np.take(pixels, range(lit[0], lit[-1] + 1), axis=axis)
    return pixels


def _why_not(photo: Photo, found: Corners, refusal: Reason) -> Reason:
    """Why the light is of no use; what a guess of the tray sees beyond the photo's edge is not dark."""
    dark = refusal is Reason.TOO_DARK and cut_off(found.points, photo.size_stored) > MOST_CUT_OFF
    return _why_no_tray(photo) if dark else refusal


def _with_hidden(light: Light, top: Pixels, labels: Labels, px_per_mm: float) -> Light:
    """With a doubt where something smooth lies over the tray; what is white and glares is one already."""
    told = {Reason.GLARE, Reason.HIDDEN} & set(light.doubts)
    if told or smooth_pct(top, labels, px_per_mm) <= MOST_SMOOTH_PCT:
        return light
    return replace(light, doubts=(*light.doubts, Reason.HIDDEN))


def _colour(top: Pixels, labels: Labels, light: Light) -> Colour:
    """The canopy's colour; of faded colours none is told, for it would pass for a crop that pales."""
    return no_colour(Reason.FADED) if Reason.FADED in light.doubts else measure_colour(top, labels)


def _forgiving(light: Light) -> tuple[Light, tuple[Reason, ...]]:
    """The same for a close-up: white paper or black cloth around a plant is no bad light.

    Too dark and too bright are only noted where at least half of the picture is of use.
    """
    doubtful = light.refusal in (Reason.TOO_DARK, Reason.TOO_BRIGHT)
    of_use = max(light.dark_pct, light.glare_pct) < MOST_USELESS_PCT and light.exposure > LEAST_EXPOSURE
    if light.refusal is None or not doubtful or not of_use:
        return light, ()
    return replace(light, refusal=None), (light.refusal,)


def _not_too_large(top: Pixels) -> Pixels:
    rows, columns = top.shape[:2]
    times = int(np.ceil(np.sqrt(rows * columns / MOST_WHOLE_PX)))
    if times <= 1:
        return top
    return np.asarray(
        cv2.resize(top, (columns // times, rows // times), interpolation=cv2.INTER_AREA), np.uint8
    )


def _refused(photo: Photo, reason: Reason, marks: Marks | None) -> Refused:
    return Refused(
        name=photo.name,
        digest=photo.digest,
        reason=reason,
        tag_number=None if marks is None else marks.number,
        taken_at=photo.taken_at,
        camera=photo.camera,
        utc_offset=photo.utc_offset,
    )


def _four(points: Sequence[Point]) -> tuple[Point, Point, Point, Point]:
    first, second, third, fourth = points
    return first, second, third, fourth


def _timed(result: Scored | Refused, started: float) -> Scored | Refused:
    if isinstance(result, Refused):
        return result
    return replace(result, score=replace(result.score, seconds=perf_counter() - started))
