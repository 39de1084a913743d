"""Frame: where no station is seen, the tray's inner area found in the photo, with an honest confidence.

In    `Photo`
Out   `Corners` in the stored photo with a confidence; None where no tray can even be guessed
Not   the networks (`framenet.py`), what they see of the sides (`framesides.py`), the fit (`framefit.py`),
      how far a finding can be trusted (`framedoubt.py`), stations (`station.py`)

First a network says where the tray lies in the whole photo. Then a rectified view is cut out and a second
network gives, for every column, the chance of each row to hold the upper or lower inner side, for every row
the same for left and right; a tray of known size is fitted to that. It is done again with six views of other
sizes, mirrorings and tones (`search`). Last, a view twice as fine puts the sides right, and another one, the
other way round, cut out from there, does it once more (`refined`).
"""

import math
from dataclasses import replace

import cv2
import numpy as np
from numpy.typing import NDArray

from vision.corners import Corners, CornersFrom, order_by_upright
from vision.framedoubt import Closer, Finding, confidence, guessed_mm
from vision.framefit import (
    CORNERS_MM,
    HALF_MM,
    LENS_SPREAD,
    Array,
    Points,
    Pose,
    distances,
    first_pose,
    fitted,
    inverse,
    through,
)  # fmt: skip
from vision.framenet import COARSE, FINE, place_map
from vision.framesides import ALIKE, Way, best_weight, look_at, points_of
from vision.photo import Photo, Pixels, in_srgb

__all__ = ["find_frame", "reduced", "refined", "search"]

LEAST_AREA = 0.02  # of the map: anything smaller is no tray that could be scored
LIKELY = 0.5
WINDOWS_MM = (384.0, 40.0, 20.0)  # on either side that is looked at, from first to last
FINE_WINDOWS_MM = (20.0, 8.0)

# Mirrored, moved and toned differently: where they disagree, nobody should be sure.
WAYS = (
    Way(),
    Way(zoom=1.06, right_mm=7.0, down_mm=-5.0, mirror_x=-1),
    Way(zoom=0.95, right_mm=-6.0, down_mm=6.0, mirror_y=-1),
    Way(zoom=1.02, right_mm=4.0, down_mm=8.0, mirror_x=-1, mirror_y=-1),
    Way(zoom=0.98, right_mm=9.0, down_mm=-6.0, mirror_x=-1, tone=1),
    Way(zoom=1.08, right_mm=-7.0, down_mm=-7.0, mirror_y=-1, tone=2),
)
# One after the other, each from where the last one put the tray: that gains more than two at once.
FINE_WAYS = (Way(), Way(mirror_x=-1, mirror_y=-1))
NO_TRAY_MM = 100.0  # photos without a tray give 45 to 500, trays up to 41

LIGHTER, DARKER = 0.7, 1.4  # gamma
GREYNESS = 0.7


def find_frame(photo: Photo) -> Corners | None:
    """The tray's inner area in a photo without station.

    Returns
    -------
    Corners or None
        `confidence` 0 to 1, from 0.5 on it may be used unasked; None where nothing looks like a tray.

    Raises
    ------
    ModelDamaged
        If the networks' files are not those of this version.
    """
    width, height = photo.size_stored
    near = in_srgb(reduced(photo.pixels, FINE.longest_px), photo.profile)
    finding = search(reduced(near, COARSE.longest_px), photo.focal_35mm)
    if finding is None or guessed_mm(finding) > NO_TRAY_MM:
        return None
    closer = refined(finding.pose, near)
    stretch = np.array([width / near.shape[1], height / near.shape[0]])
    points = [(float(x), float(y)) for x, y in closer.pose.corners * stretch]
    # Without the lens: told by one tray it is hardly nearer than none (`training/NOTES.md`).
    return Corners(
        points=order_by_upright(points, photo.turns, photo.size_stored),
        found_by=CornersFrom.FRAME,
        confidence=confidence(finding, closer),
        tilt_deg=closer.pose.tilt_deg,
        focal_px=math.exp(closer.pose.values[6]) * float(stretch.mean()),
    )


def reduced(pixels: Pixels, longest_px: int) -> Pixels:
    """The longer side no longer than that; by halves as long as that goes, which is many times faster."""
    while max(pixels.shape) >= 2 * longest_px and pixels.shape[0] % 2 == pixels.shape[1] % 2 == 0:
        half = (pixels.shape[1] // 2, pixels.shape[0] // 2)
        pixels = np.asarray(cv2.resize(pixels, half, interpolation=cv2.INTER_AREA), np.uint8)
    share = min(1.0, longest_px / max(pixels.shape))
    size = (max(1, round(pixels.shape[1] * share)), max(1, round(pixels.shape[0] * share)))
    return np.asarray(cv2.resize(pixels, size, interpolation=cv2.INTER_AREA), np.uint8)


def search(small: Pixels, focal_35mm: float | None) -> Finding | None:
    """The tray in a photo reduced to 640 px."""
    chance, to_photo = place_map(small)
    start = _guess(chance, to_photo, (small.shape[1], small.shape[0]), focal_35mm)
    if start is None:
        return None
    first = look_at(start, [small], WAYS[:1], COARSE)
    pose = start
    for window in WINDOWS_MM[:2]:
        pose = fitted(pose, points_of(first, pose, window))
    looks = look_at(pose, _toned(small), WAYS, COARSE)
    pose = fitted(pose, points_of(looks, pose, WINDOWS_MM[1]))
    points = points_of(looks, pose, WINDOWS_MM[2])
    last = fitted(pose, points)
    alone = [fitted(last, points_of(one, last, WINDOWS_MM[1]), rounds=3) for one in looks.each()]
    back = inverse(last.matrix)
    apart = [np.linalg.norm(through(back, pose.corners) - CORNERS_MM, axis=1).max() for pose in alone]
    return Finding(
        pose=last,
        spread_mm=last.spread_mm,
        discord_mm=float(np.max(apart)),
        misfit=_misfit(last, points),
        sight=_sight(points),
        rim=float(np.mean([(one.rim > LIKELY).mean() for one in looks.maps])),
        peak=float(chance.max()),
    )


def refined(pose: Pose, near: Pixels) -> Closer:
    """The tray in a photo reduced less, fitted again to what is seen there twice as finely."""
    pose = replace(pose.scaled(near.shape[1] / pose.size[0]), lens_spread=LENS_SPREAD)
    for way in FINE_WAYS:
        looks = look_at(pose, [near], (way,), FINE)
        for window in FINE_WINDOWS_MM:
            pose = fitted(pose, points_of(looks, pose, window))
    return Closer(pose=pose, misfit=_misfit(pose, points_of(looks, pose, FINE_WINDOWS_MM[0])))


def _guess(
    chance: NDArray[np.float32], to_photo: Array, size: tuple[int, int], focal: float | None
) -> Pose | None:
    """Pose from the outline of the largest likely patch; None where there is none."""
    likely = (chance > LIKELY).astype(np.uint8)
    outlines, _ = cv2.findContours(likely, cv2.RETR_EXTERNAL, cv2.CHAIN_APPROX_NONE)
    if not outlines:
        return None
    outline = max(outlines, key=cv2.contourArea)
    if cv2.contourArea(outline) < LEAST_AREA * chance.size:
        return None
    box = cv2.boxPoints(cv2.minAreaRect(outline)) + 0.5
    rows, columns = chance.shape
    ring = outline[:, 0]
    inner = (ring > 0).all(axis=1) & (ring[:, 0] < columns - 1) & (ring[:, 1] < rows - 1)
    edge = through(to_photo, ring[inner] + 0.5)
    quad = through(to_photo, np.asarray(box, float))
    if np.linalg.norm(quad[1] - quad[0]) < np.linalg.norm(quad[2] - quad[1]):
        quad = np.roll(quad, -1, axis=0)
    pose = first_pose(quad, size, focal)
    if len(edge) < 12:
        return pose
    for _ in range(4):
        pose = fitted(pose, _nearest(pose, edge), rounds=3)
    return pose


def _nearest(pose: Pose, edge: Array) -> Points:
    """Outline points with the sides that they lie nearest to."""
    places = through(inverse(pose.matrix), edge)
    off = np.column_stack(
        [
            places[:, 1] + HALF_MM[1],
            places[:, 1] - HALF_MM[1],
            places[:, 0] + HALF_MM[0],
            places[:, 0] - HALF_MM[0],
        ]
    )
    sides = np.abs(off).argmin(axis=1)
    return Points(places=edge, sides=sides, weights=np.full(len(edge), 1 / 8.0**2 / ALIKE))


def _toned(small: Pixels) -> tuple[Pixels, Pixels, Pixels]:
    """The reduced photo as it is, lighter, and darker and nearly grey."""
    steps = np.arange(256) / 255
    lighter = cv2.LUT(small, np.asarray(255 * steps**LIGHTER, np.uint8))
    grey = cv2.cvtColor(cv2.cvtColor(small, cv2.COLOR_RGB2GRAY), cv2.COLOR_GRAY2RGB)
    faded = cv2.addWeighted(small, 1 - GREYNESS, grey, GREYNESS, 0)
    darker = cv2.LUT(faded, np.asarray(255 * steps**DARKER, np.uint8))
    return small, np.asarray(lighter, np.uint8), np.asarray(darker, np.uint8)


def _misfit(pose: Pose, points: Points) -> float:
    """Root of the weighted mean square distance of the points from the fitted sides, in their own errors."""
    off = distances(pose, points)
    return float(np.sqrt((points.weights * off**2).sum() / points.weights.sum()))


def _sight(points: Points) -> tuple[float, float, float, float]:
    """Mean weight by side, 1 where the whole side is seen as sharply as can be."""
    best = best_weight(COARSE) / len(WAYS)
    each = [
        float(points.weights[points.sides == side].mean()) if (points.sides == side).any() else 0.0
        for side in range(4)
    ]
    top, bottom, left, right = (value / best for value in each)
    return top, bottom, left, right
