"""Frame: where no station is seen, the tray's inner area found in the photo, with an honest confidence.

In    `Photo`
Out   `Corners` in the stored photo with a confidence; None where no tray can even be guessed
Not   the networks (`framenet.py`), the geometry of the fit (`framefit.py`), stations (`station.py`)

First a network says where the tray lies in the whole photo. Then a rectified view is cut out and a second
network gives, for every column, the chance of each row to hold the upper or lower inner side, for every row
the same for left and right; a tray of known size is fitted to that. It is done again with four views of other
sizes and mirrorings. How much the four disagree, how sharp the sides are seen and how well a rigid tray suits
them decide the confidence (`confidence`): it was fitted on trays that the networks had not seen.
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import NamedTuple

import cv2
import numpy as np
from numpy.typing import NDArray

from vision.corners import Corners, CornersFrom, order_by_upright, plausible
from vision.framefit import CORNERS_MM, HALF_MM, Array, Points, Pose, first_pose, fitted, inverse, through
from vision.framenet import VIEW_MM, VIEW_SIZE, SideMaps, place_map, side_maps
from vision.photo import Photo, Pixels, in_srgb

__all__ = ["Finding", "find_frame", "search"]

LONGEST_PX = 640  # of the reduced photo: twice as fine as the rectified view
LEAST_AREA = 0.02  # of the map: anything smaller is no tray that could be scored
LIKELY = 0.5
CELL_MM = 2 * VIEW_MM[0] / VIEW_SIZE[0]
SHARPEST_MM = 1.5  # no side is trusted better than that at one place
ALIKE = 10.0  # neighbouring places that err together
WINDOWS = (96.0, 10.0, 5.0)  # cells on either side that are looked at, from first to last


class Way(NamedTuple):
    """How one view differs from the plain one."""

    zoom: float = 1.0
    right_mm: float = 0.0
    down_mm: float = 0.0
    mirror_x: int = 1
    mirror_y: int = 1
    tone: int = 0  # 0 as it is, 1 lighter, 2 darker and nearly grey


# Mirrored, moved and toned differently: where they disagree, nobody should be sure.
WAYS = (
    Way(),
    Way(zoom=1.06, right_mm=7.0, down_mm=-5.0, mirror_x=-1),
    Way(zoom=0.95, right_mm=-6.0, down_mm=6.0, mirror_y=-1),
    Way(zoom=1.02, right_mm=4.0, down_mm=8.0, mirror_x=-1, mirror_y=-1),
    Way(zoom=0.98, right_mm=9.0, down_mm=-6.0, mirror_x=-1, tone=1),
    Way(zoom=1.08, right_mm=-7.0, down_mm=-7.0, mirror_y=-1, tone=2),
)
# Logarithm of the worst corner's error in mm: constant, then by logarithm of discord, misfit, spread and the
# worst side's sight. Fitted by `training/judge_frame.py` on trays that the networks had not seen.
CALIBRATED = (-1.37, 0.08, 0.67, 1.62, -0.33)
HALF_SURE_MM = 4.0
STEEPNESS = 3.3
NO_TRAY_MM = 100.0  # photos without a tray give 45 to 500, trays up to 41
MOST_BEYOND = 0.01  # of the photo's longer side
UNSURE = 0.4

LIGHTER, DARKER = 0.7, 1.4  # gamma
GREYNESS = 0.7


@dataclass(frozen=True, slots=True, kw_only=True)
class Finding:
    """A tray fitted to what the networks say, and what tells how far it can be trusted."""

    pose: Pose  # in the reduced photo
    spread_mm: float  # standard error of the least certain corner, from the fit
    discord_mm: float  # by how much the views disagree about the worst corner
    misfit: float  # of a rigid tray, in expected errors
    sight: tuple[
        float, float, float, float
    ]  # how sharply each side is seen: top, bottom, left, right; 1 is well
    rim: float  # share of the rim seen
    peak: float  # highest chance in the map of the whole photo


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
    small = _reduced(photo.pixels)
    finding = search(in_srgb(small, photo.profile), photo.focal_35mm)
    if finding is None or expected_mm(finding) > NO_TRAY_MM:
        return None
    stretch = np.array([width / small.shape[1], height / small.shape[0]])
    points = [(float(x), float(y)) for x, y in finding.pose.corners * stretch]
    return Corners(
        points=order_by_upright(points, photo.turns, photo.size_stored),
        found_by=CornersFrom.FRAME,
        confidence=confidence(finding),
        tilt_deg=finding.pose.tilt_deg,
        focal_px=math.exp(finding.pose.values[6]) * float(stretch.mean()),
    )


def _reduced(pixels: Pixels) -> Pixels:
    """The longer side at most 640 px; by halves as long as that goes, which is many times faster."""
    while max(pixels.shape) >= 2 * LONGEST_PX and pixels.shape[0] % 2 == pixels.shape[1] % 2 == 0:
        half = (pixels.shape[1] // 2, pixels.shape[0] // 2)
        pixels = np.asarray(cv2.resize(pixels, half, interpolation=cv2.INTER_AREA), np.uint8)
    share = min(1.0, LONGEST_PX / max(pixels.shape))
    size = (max(1, round(pixels.shape[1] * share)), max(1, round(pixels.shape[0] * share)))
    return np.asarray(cv2.resize(pixels, size, interpolation=cv2.INTER_AREA), np.uint8)


def search(small: Pixels, focal_35mm: float | None) -> Finding | None:
    """The tray in a photo reduced to 640 px."""
    chance, to_photo = place_map(small)
    start = _guess(chance, to_photo, (small.shape[1], small.shape[0]), focal_35mm)
    if start is None:
        return None
    view = _view(start, WAYS[0])
    maps = side_maps([(small, view)])
    pose = start
    for window in WINDOWS[:2]:
        pose = fitted(pose, _points(maps, [view], WAYS[:1], pose, window))
    views = [_view(pose, way) for way in WAYS]
    tones = _toned(small)
    maps = side_maps([(tones[way.tone], seen) for way, seen in zip(WAYS, views, strict=True)])
    pose = fitted(pose, _points(maps, views, WAYS, pose, WINDOWS[1]))
    points = _points(maps, views, WAYS, pose, WINDOWS[2])
    last = fitted(pose, points)
    alone = [
        fitted(last, _points([one], [seen], (way,), last, WINDOWS[1]), rounds=3)
        for one, seen, way in zip(maps, views, WAYS, strict=True)
    ]
    back = inverse(last.matrix)
    apart = [np.linalg.norm(through(back, pose.corners) - CORNERS_MM, axis=1).max() for pose in alone]
    return Finding(
        pose=last,
        spread_mm=last.spread_mm,
        discord_mm=float(np.max(apart)),
        misfit=_misfit(last, points),
        sight=_sight(points),
        rim=float(np.mean([(one.rim > LIKELY).mean() for one in maps])),
        peak=float(chance.max()),
    )


def confidence(finding: Finding) -> float:
    """Chance, 0 to 1, that no corner is off by more than 4 mm.

    Of the trays that the networks had not seen, none found with 0.5 or more was off by 8 mm
    (`training/NOTES.md`). A corner beyond the photo's edge keeps it below 0.5.
    """
    chance = 1 / (1 + (expected_mm(finding) / HALF_SURE_MM) ** STEEPNESS)
    return round(float(chance if _within(finding.pose) else min(chance, UNSURE)), 3)


def expected_mm(finding: Finding) -> float:
    """By how much the worst corner may be off, mm."""
    constant, discord, misfit, spread, sight = CALIBRATED
    return math.exp(
        constant
        + discord * math.log(max(finding.discord_mm, 0.3))
        + misfit * math.log(max(finding.misfit, 0.2))
        + spread * math.log(finding.spread_mm)
        + sight * math.log(max(min(finding.sight), 1e-3))
    )


def _within(pose: Pose) -> bool:
    """True where the corners can be a tray's and none lies beyond the photo."""
    beyond = MOST_BEYOND * max(pose.size)
    corners = pose.corners
    inside = (corners > -beyond).all() and (corners < np.array(pose.size) + beyond).all()
    points = [(float(x), float(y)) for x, y in corners]
    return bool(inside) and plausible(points, pose.size)


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


def _view(pose: Pose, way: Way) -> Array:
    """Homography from view px to the reduced photo: inner area in the middle, a little off where asked."""
    mm = VIEW_MM[0] / VIEW_SIZE[0] / way.zoom
    x, y = mm * way.mirror_x, mm * way.mirror_y
    to_mm = np.array(
        [[x, 0, way.right_mm - x * VIEW_SIZE[0] / 2], [0, y, way.down_mm - y * VIEW_SIZE[1] / 2], [0, 0, 1]]
    )
    return np.asarray(pose.matrix @ to_mm, float)


def _toned(small: Pixels) -> tuple[Pixels, Pixels, Pixels]:
    """The reduced photo as it is, lighter, and darker and nearly grey."""
    steps = np.arange(256) / 255
    lighter = cv2.LUT(small, np.asarray(255 * steps**LIGHTER, np.uint8))
    grey = cv2.cvtColor(cv2.cvtColor(small, cv2.COLOR_RGB2GRAY), cv2.COLOR_GRAY2RGB)
    faded = cv2.addWeighted(small, 1 - GREYNESS, grey, GREYNESS, 0)
    darker = cv2.LUT(faded, np.asarray(255 * steps**DARKER, np.uint8))
    return small, np.asarray(lighter, np.uint8), np.asarray(darker, np.uint8)


def _points(
    maps: Sequence[SideMaps],
    views: Sequence[Array],
    ways: Sequence[Way],
    pose: Pose,
    window: float,
) -> Points:
    """Where the sides are, place by place, as far as seen within a window around the pose."""
    places, sides, weights = [], [], []
    for one, view, way in zip(maps, views, ways, strict=True):
        ring = through(inverse(view), pose.corners) / 2
        mirror_x, mirror_y = way.mirror_x < 0, way.mirror_y < 0
        for side, (first, second) in enumerate(((0, 1), (3, 2), (0, 3), (1, 2))):
            across = 1 if side < 2 else 0
            swapped = mirror_y if side < 2 else mirror_x
            table = (one.top, one.bottom, one.left, one.right)[side ^ swapped]
            found, weight = _along(table, ring[first], ring[second], across, window)
            places.append(through(view, 2 * found))
            sides.append(np.full(len(found), side))
            weights.append(weight * way.zoom**2 / len(maps))
    return Points(places=np.concatenate(places), sides=np.concatenate(sides), weights=np.concatenate(weights))


def _along(table: NDArray[np.float32], a: Array, b: Array, across: int, window: float) -> tuple[Array, Array]:
    """Points (n, 2) in cells and their weights, for one side of one view that runs from a to b."""
    place = np.arange(0, len(table), 2) + 0.5
    share = (place - a[1 - across]) / (b - a)[1 - across]
    expected = a[across] + share * (b - a)[across]
    counts = (share > 0.03) & (share < 0.97) & (expected > 0) & (expected < table.shape[1])
    place, expected, chance = place[counts], expected[counts], table[::2][counts].astype(float)
    cell = np.arange(table.shape[1]) + 0.5
    chance = chance * (np.abs(cell - expected[:, None]) <= window)
    mass = chance.sum(axis=1) + 1e-9
    mean = (chance * cell).sum(axis=1) / mass
    var = (chance * (cell - mean[:, None]) ** 2).sum(axis=1) / mass
    weight = mass / (CELL_MM**2 * var + SHARPEST_MM**2) / (ALIKE / 2)
    points = np.empty((len(place), 2))
    points[:, 1 - across], points[:, across] = place, mean
    return points, weight


def _misfit(pose: Pose, points: Points) -> float:
    """Root of the weighted mean square distance of the points from the fitted sides, in their own errors."""
    places = through(inverse(pose.matrix), points.places)
    off = np.where(points.sides < 2, places[:, 1], places[:, 0])
    off = off - np.array([-HALF_MM[1], HALF_MM[1], -HALF_MM[0], HALF_MM[0]])[points.sides]
    return float(np.sqrt((points.weights * off**2).sum() / points.weights.sum()))


def _sight(points: Points) -> tuple[float, float, float, float]:
    """Mean weight by side, 1 where the whole side is seen as sharply as can be."""
    best = 1 / (CELL_MM**2 * 0.7 + SHARPEST_MM**2) / (ALIKE / 2) / len(WAYS)
    each = [
        float(points.weights[points.sides == side].mean()) if (points.sides == side).any() else 0.0
        for side in range(4)
    ]
    top, bottom, left, right = (value / best for value in each)
    return top, bottom, left, right
