"""Station: marks in a photo -> the corners of the inner area at rim height, and the tag's patches.

In    `Marks`, `Photo`, `TrayType`
Out   `Corners` with a confidence; `Patches`: mean linear light of the tag's white and grey patch
Not   finding marks (`markers.py`), the fit itself (`posefit.py`), the rim as it is seen (`rim.py`), white
      balance (`light.py`)

The cards lie lower than the rim, so a plain homography through them is wrong by centimetres: the camera's
pose is solved and the rim's corners are projected.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace

import cv2
import numpy as np
from numpy.typing import NDArray

from vision.cielab import linear
from vision.corners import Corners, CornersFrom
from vision.freefit import free_fit
from vision.markers import Marks, as_quad
from vision.photo import Photo, Pixels, Point, in_srgb
from vision.pose import Pose, Seen, usual_focal
from vision.posefit import Fit, best_fit
from vision.stray import without_strays
from vision.traytype import GREY_MM, PATCH_MM, TAG_MARK_MM, WHITE_MM, TrayType, square

__all__ = [
    "HALF_SURE_MM",
    "Patches",
    "TrayType",
    "axis_of",
    "confidence",
    "corners_of",
    "fit_station",
    "patches",
    "station_corners",
]

Linear = tuple[float, float, float]

HALF_SURE_MM = 3.0  # standard error of the worst corner at which the confidence is a half
LEAST_PATCH_PX = 100  # common practice
CLIPPED = 254
# A fit of a zoomed or cropped photo must suit all marks, so much better than the plain one and than one
# without any of the cards, and its focal length be far from the told one: cards a few mm aside make it seem
# up to 12 % longer or shorter. Of 1200 simulated photos of four cards and a tag, one card pushed, all laid
# carelessly, or too near or too far by up to 1 %, none was misled; without the tag one in twenty: there it is
# not tried (`tests/bench/test_zoomed_photos.py`). Marks under leaves suit no fit so well: there it must be
# four times better; one that is only twice better is not believed, but makes the plain one less sure.
FREE_FITS, FREE_GAIN, FREE_CLEAR, FREE_FAR_BETTER = 1.15, 2.0, 1.25, 4.0
LIKE_TOLD = (0.75, 1.15)
PUSHED = 3.0  # misfit from which a card may have been pushed
PUSHED_GAIN, PUSHED_CLEAR = 3.0, 2.0  # the fit without it must be so much better, also than without another
STRAYED, STRAY_ROUNDS = 1.3, 3  # misfit from which corners may stray
PATCH_SHARE = 0.6  # of the patch's side: its edges are blurred
# Standard deviation by mean of red by green and of blue by green over a patch, noise smoothed: in 14 photos
# that we learn from up to 0.035; a leaf drawn over a twentieth of a patch gives 0.24, a shadow's edge none.
MOST_COLOURS = 0.12
LEAST_LIGHTER = 1.5  # white by grey in each channel: reflectances 0.85 and 0.20, and a camera's shoulder


@dataclass(frozen=True, slots=True, kw_only=True)
class Patches:
    """Mean linear light (0-1) of sRGB's red, green, blue on the tag's patches; None where clipped, too small
    or under a leaf."""

    white: Linear | None
    grey: Linear | None


def station_corners(marks: Marks, photo: Photo, tray: TrayType | None = None) -> Corners | None:
    """Corners of the inner area, far left first as the station stands; None with fewer than two marks.

    With two cards the confidence tells how much they leave open.
    """
    tray = tray or TrayType()
    fit = fit_station(marks, photo.size_stored, photo.focal_35mm, tray)
    if fit is None:
        return None
    return corners_of(fit, tray)


def corners_of(fit: Fit, tray: TrayType) -> Corners:
    """Corners of the inner area as a fitted camera sees them, with how sure that is."""
    rim = tray.inner_corners()
    return Corners(
        points=as_quad(fit.pose.project(rim)),
        found_by=CornersFrom.STATION,
        confidence=confidence(fit.spread(rim)),
        tilt_deg=fit.pose.tilt_deg,
        lens=fit.pose.lens,
        focal_px=fit.pose.focal_px,
        axis_px=axis_of(fit.pose),
    )


def axis_of(pose: Pose) -> Point | None:
    """Where a camera's axis meets its photo; None: in its middle."""
    x, y = (float(part) for part in pose.middle)
    return None if pose.aside == (0.0, 0.0) else (x, y)


def confidence(spread_mm: float) -> float:
    """0 to 1: a half where the standard error of the worst corner is 3 mm (then 10 mm are three of them)."""
    return float(0.5 ** ((spread_mm / HALF_SURE_MM) ** 2))


def fit_station(marks: Marks, size: tuple[int, int], focal_35mm: float | None, tray: TrayType) -> Fit | None:
    """The best pose for the marks; None with fewer than two of them or no card."""
    seen = [
        Seen(corners=np.array(quad), quad_mm=tray.card_quad(number))
        for number, quad in sorted(marks.cards.items())
    ]
    if marks.tag is not None:
        seen.append(Seen(corners=np.array(marks.tag.quad), quad_mm=None))
    if not marks.cards or len(seen) < 2:
        return None
    seen, fit = _best_without_strays(seen, size, focal_35mm)
    if fit is None or fit.misfit <= FREE_GAIN:  # no fit is better than 1
        return fit
    free = _far_fit(seen, size, focal_35mm, fit) if marks.complete else None
    if free is None and fit.misfit < PUSHED:
        return fit
    others = _without_each(seen, marks, size, focal_35mm, fit)
    kept = _without_pushed(fit, others)
    if free is None or free.misfit >= kept.misfit / FREE_GAIN:
        return kept
    return free if _is_another(free, kept, others) else replace(kept, rival=free.pose)


def _best_without_strays(
    seen: list[Seen], size: tuple[int, int], focal_35mm: float | None
) -> tuple[list[Seen], Fit | None]:
    """The marks and their best fit; without corners that stray where those are what it suits badly.

    Of a wrong focal length they take but a part of the misfit.
    """
    first = best_fit(seen, size, focal_35mm)
    if first is None or first.misfit <= STRAYED:
        return seen, first
    kept, fit = seen, first
    for _ in range(STRAY_ROUNDS):
        mended = without_strays(seen, fit)
        again = None if mended is None else best_fit(mended, size, focal_35mm, fit.misfit)
        if mended is None or again is None:
            break
        kept, fit = mended, again
    return (kept, fit) if fit.misfit <= max(STRAYED, first.misfit / 2) else (seen, first)


def _far_fit(seen: Sequence[Seen], size: tuple[int, int], focal_35mm: float | None, plain: Fit) -> Fit | None:
    """A fit with a focal length far from the told one that suits the marks so much better; None without."""
    most = plain.misfit / FREE_GAIN
    free = free_fit(seen, size, focal_35mm, most)
    told, _ = usual_focal(size, focal_35mm)
    if free is None or LIKE_TOLD[0] < free.pose.focal_px / told < LIKE_TOLD[1]:
        return None
    return free if free.misfit < most else None


def _is_another(free: Fit, kept: Fit, others: Sequence[Fit]) -> bool:
    """Whether the photo was zoomed or cropped, rather than that its cards lie a little aside."""
    suits = free.misfit < max(FREE_FITS, kept.misfit / FREE_FAR_BETTER)
    return suits and all(free.misfit < other.misfit / FREE_CLEAR for other in others)


def _without_each(
    seen: Sequence[Seen], marks: Marks, size: tuple[int, int], focal_35mm: float | None, whole: Fit
) -> list[Fit]:
    """The fits without one card each, of three and more, as far as they suit the marks better than all."""
    if len(marks.cards) < 3:
        return []
    fits = (
        best_fit([*seen[:k], *seen[k + 1 :]], size, focal_35mm, whole.misfit) for k in range(len(marks.cards))
    )
    return sorted((fit for fit in fits if fit is not None), key=lambda fit: fit.misfit)


def _without_pushed(fit: Fit, others: Sequence[Fit]) -> Fit:
    """The fit without a card that was pushed, where there clearly is one."""
    if fit.misfit < PUSHED or not others:
        return fit
    first, *rest = others
    clear = all(first.misfit < other.misfit / PUSHED_CLEAR for other in rest)
    return first if clear and first.misfit < fit.misfit / PUSHED_GAIN else fit


def patches(marks: Marks, photo: Photo) -> Patches | None:
    """Mean linear light of both patches, found from the tag's own mark; None where no tag was read."""
    if marks.tag is None:
        return None
    level = square(TAG_MARK_MM)[:, :2].astype(np.float32)
    own = np.asarray(cv2.getPerspectiveTransform(level, np.array(marks.tag.quad, np.float32)), np.float64)
    white, grey = _patch(photo, own, WHITE_MM), _patch(photo, own, GREY_MM)
    if white is not None and grey is not None and not _lighter(white, grey):  # all of it lies under a leaf
        white = None
    return Patches(white=white, grey=grey)


def _lighter(white: Linear, grey: Linear) -> bool:
    return all(more > LEAST_LIGHTER * less for more, less in zip(white, grey, strict=True))


def _patch(photo: Photo, own: NDArray[np.float64], middle_mm: tuple[float, float]) -> Linear | None:
    side = square(PATCH_MM * PATCH_SHARE)[:, :2] + middle_mm
    quad = cv2.perspectiveTransform(side.reshape(1, -1, 2), own).reshape(-1, 2) - 0.5
    height, width = photo.pixels.shape[:2]
    left, top = np.floor(quad.min(axis=0)).astype(int)
    right, bottom = np.ceil(quad.max(axis=0)).astype(int) + 1
    if left < 0 or top < 0 or right > width or bottom > height:
        return None
    inside = np.zeros((bottom - top, right - left), np.uint8)
    cv2.fillConvexPoly(inside, np.round(quad - (left, top)).astype(np.int32), 1)
    part = photo.pixels[top:bottom, left:right]
    codes = part[inside > 0]
    if (
        len(codes) < LEAST_PATCH_PX
        or (codes >= CLIPPED).any(axis=1).mean() > 0.01
        or _many_coloured(part, inside)
    ):
        return None
    light = linear(in_srgb(codes[None], photo.profile))  # as the top view that it sets right
    red, green, blue = light.mean(axis=(0, 1), dtype=np.float64).tolist()
    return red, green, blue


def _many_coloured(part: Pixels, inside: NDArray[np.uint8]) -> bool:
    """True where something of another colour lies over a part of the patch."""
    light = linear(np.asarray(cv2.blur(part, (3, 3)), np.uint8))[inside > 0] + 0.01  # black has no colour
    shares = light[:, (0, 2)] / light[:, 1:2]
    return bool((shares.std(axis=0) > MOST_COLOURS * shares.mean(axis=0)).any())
