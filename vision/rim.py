"""Rim: where the tray's own rim is seen at a station, held against where its marks lay it.

In    photo, marks, kind of tray
Out   `Corners`: as the marks say where the rim is seen there; moved to where it is seen; or not sure
Not   the camera that the marks tell (`station.py`), what is seen of the sides (`rimsides.py`), a tray without
      marks (`frame.py`)

A photo that was cropped, zoomed or stored anew keeps a focal length and a middle that are no longer its own,
and a tray is set down a little aside. Marks tell nothing of the latter, and of the former nothing to a camera
that looks straight down, for they lie in one plane 60 mm below the rim. Whatever the camera: once the image
of one level plane is known, that of another is three numbers away (the vanishing point of the upright, times
the height; Hartley & Zisserman 2004, section 8.4, from memory). In its own plane they are a shift and a
growth. The rim is seen where they are right.
"""

import math
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from vision.corners import SURE, Corners
from vision.frame import reduced
from vision.framefit import CORNERS_MM, inverse, through
from vision.framenet import COARSE, FINE, Fineness
from vision.freefit import FREE_SPREAD
from vision.markers import Marks, as_quad
from vision.photo import Photo, Pixels, in_srgb
from vision.pose import ASIDE_SPREAD, Pose
from vision.posefit import Fit, fit_pose
from vision.rimsides import CLIPPED, MOVES, Beside, Laid, seen_beside
from vision.station import HALF_SURE_MM, axis_of, confidence, corners_of, fit_station
from vision.traytype import TrayType

__all__ = ["is_known", "rim_corners"]

Array = NDArray[np.float64]

LIKE_NOMINAL = 0.03  # how far a tray's shape may be from the nominal one
FEWEST_CARDS = 3  # that hold a plane
WINDOW_MM = {COARSE: 40.0, FINE: 20.0}
LOOKS = (COARSE, COARSE, FINE, FINE)  # from where the marks lay it to where it is
# Chosen on 24 station photos and 700 crops and false focal lengths of them: up to such a misfit the sides are
# seen where they are laid. At the first look none that was over 3 mm off passed, and six of the 24 unaltered
# had to be looked at more closely, two of them for leaves over sides that were seen no better than DIM_MM.
AGREES = {COARSE: 3.0, FINE: 12.0}
MOST_MISFIT = 8.0  # at the first look, where a closer one agrees; that alone let one pass that was 8 mm off
DIM_MM = {COARSE: 2.25, FINE: 1.6}  # mean error of half a side
# So much less a misfit must a move leave: where marks were over 4 mm off it left at least 19 less.
CLEARER = 18.0
ONE_SIDE = 2 * CLIPPED**2
# So much must the other sides, too, speak against the marks, or the person is asked. A tray that stood end to
# end with another, its own rim under leaves, was drawn 3 to 5 mm towards it in 9 of 480 composites, for up to
# 4.1; of 271 moves that were right one had less, another 5.0.
OTHER_SIDES = 4.5
# How far a tray is set down beside its place, to the right and down; the same of its size, for a focal length
# that is told twice too long draws the marks' own after it; turned.
OPEN_MM = (5.0, 5.0, 5.0, 2.0)
UNSURE = 0.4


@dataclass(frozen=True, slots=True)
class Plane:
    """The inner area by the marks and any camera, and the covariance of moves that this leaves open."""

    laid: Laid
    covariance: Array
    pose: Pose


def is_known(tray: TrayType) -> bool:
    """Whether a tray is about twice as long as wide: the networks have learned from no others."""
    return abs(tray.inner_long_mm / (2 * tray.inner_short_mm) - 1) <= LIKE_NOMINAL


def rim_corners(marks: Marks, photo: Photo, tray: TrayType) -> Corners | None:
    """Corners of the inner area at a station; None with fewer than two marks.

    Of a tray of another shape the networks know nothing: there the marks are believed.
    """
    fit = fit_station(marks, photo.size_stored, photo.focal_35mm, tray)
    if fit is None:
        return None
    told = corners_of(fit, tray)
    if not is_known(tray):
        return told
    try:
        return _settled(told, fit, tray, _Rim(photo))
    except (ValueError, np.linalg.LinAlgError):  # seen from the side, or from nowhere
        return _unsure(told)


def _plane(fit: Fit, tray: TrayType) -> Plane | None:
    """None where the marks are too few to hold a plane, or suit no camera."""
    if sum(mark.quad_mm is not None for mark in fit.seen) < FEWEST_CARDS:
        return None
    aside = ASIDE_SPREAD * math.hypot(*fit.pose.size)
    free = fit_pose(fit.seen, fit.pose, FREE_SPREAD, aside_spread=aside)
    if free is None:
        return None
    rim = tray.inner_corners()
    laid = Laid(free.pose.project(rim), free.pose.bend)
    open_moves = free.covariance_of(lambda pose: laid.move_to(Laid(pose.project(rim))))
    return Plane(laid, open_moves + np.diag(OPEN_MM) ** 2, free.pose)


def _settled(told: Corners, fit: Fit, tray: TrayType, rim: "_Rim") -> Corners:
    """Corners as told, moved, or as told and unsure."""
    before = Laid(np.array(told.points), told.bend(rim.size))
    sure = told.confidence >= SURE
    if sure and rim.is_at(before):
        return told
    plane = _plane(fit, tray)
    moved = rim.found(plane, before) if plane is not None else None
    if plane is None or moved is None:
        return told if sure and rim.agrees(before) else _unsure(told)
    after, rest, covariance = moved
    of_told = replace(rest, off_mm=rest.off_mm - after.beside(before))
    if sure and not _is_elsewhere(after, rest, before, of_told):
        return told
    if rest.misfit > AGREES[FINE] or (sure and of_told.misfit_of_others < OTHER_SIDES):
        return _unsure(told)
    return replace(
        told,
        points=as_quad(after.corners),
        confidence=confidence(math.sqrt(float(np.trace(covariance)))),
        tilt_deg=plane.pose.tilt_deg,
        lens=plane.pose.lens,
        focal_px=plane.pose.focal_px,
        axis_px=axis_of(plane.pose),
    )


def _is_elsewhere(after: Laid, rest: Beside, before: Laid, of_told: Beside) -> bool:
    """Whether what is seen beside an inner area speaks against the one before.

    A side that no move explains does not: there a leaf is taken for it. More than one does.
    """
    apart = through(inverse(after.matrix), before.corners) - CORNERS_MM
    return bool(
        np.linalg.norm(apart, axis=1).max() > HALF_SURE_MM
        and rest.error_mm.mean() <= DIM_MM[FINE]
        and of_told.misfit > max(AGREES[FINE], min(ONE_SIDE, rest.misfit) + CLEARER)
    )


def _unsure(told: Corners) -> Corners:
    return replace(told, confidence=min(told.confidence, UNSURE))


class _Rim:
    """The rim in a photo, looked at as closely as is asked for."""

    def __init__(self, photo: Photo) -> None:
        self._photo = photo
        self.size = photo.size_stored
        self._pictures: dict[Fineness, Pixels] = {}

    def is_at(self, laid: Laid) -> bool:
        """Whether the sides are seen where they are laid; False also where leaves hide too much."""
        first = self._beside(laid, COARSE)
        if first.error_mm.mean() > DIM_MM[COARSE]:
            return False
        return first.misfit <= AGREES[COARSE] or self.agrees(laid)

    def agrees(self, laid: Laid) -> bool:
        """Whether what is seen of the sides, be it little, does not speak against it at a closer look."""
        first, second = (self._beside(laid, fineness) for fineness in (COARSE, FINE))
        return first.misfit <= MOST_MISFIT and second.misfit <= AGREES[FINE]

    def found(self, plane: Plane, begin: Laid) -> tuple[Laid, Beside, Array] | None:
        """The inner area where it is seen in a plane, what is seen beside it, the covariance of its move.

        None where its rim reaches beyond the photo, whose edge is easily taken for a side.
        """
        if not begin.within(self.size):
            return None
        move, expected = plane.laid.move_to(begin), np.zeros(4)
        for fineness in LOOKS:
            laid = plane.laid.moved(move)
            if not laid.within(self.size):
                return None
            seen = self._beside(laid, fineness)
            further, covariance = seen.move(expected - move, plane.covariance)
            move = move + further
        rest = replace(seen, off_mm=seen.off_mm - MOVES @ further)
        return plane.laid.moved(move), rest, covariance

    def _beside(self, laid: Laid, fineness: Fineness) -> Beside:
        picture = self._picture(fineness)
        here = laid.scaled(picture.shape[1] / self._photo.pixels.shape[1])
        return seen_beside(here, picture, fineness, WINDOW_MM[fineness])

    def _picture(self, fineness: Fineness) -> Pixels:
        if fineness not in self._pictures:
            small = reduced(self._photo.pixels, fineness.longest_px)
            self._pictures[fineness] = in_srgb(small, self._photo.profile)
        return self._pictures[fineness]
