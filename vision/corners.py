"""Corners: where the tray's inner area lies in a photo, and how that is known.

In    four points, from the station, from the frame finder or from a person
Out   `Corners` in the order top left, top right, bottom right, bottom left of the top view
Not   finding them (`station.py`, `frame.py`), looking through them (`topview.py`)

Points are (x, y) in edge coordinates of the photo as stored, px.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum

import cv2
import numpy as np

from vision.lens import Bend
from vision.photo import Photo, Point, quarter_turned, stored_points

__all__ = [
    "ANY_TRAY",
    "MOST_CUT_OFF",
    "SURE",
    "Corners",
    "CornersFrom",
    "Point",
    "by_hand",
    "cut_off",
    "order_by_upright",
    "plausible",
]

SURE = 0.5  # from this confidence on corners may be used unasked
MOST_CUT_OFF = 0.015  # of the inner area; what is not seen would count as bare. Corners may be 3 mm off
FLAT_SIN = 0.34  # sine of 20 degrees: a long side steeper than that has no upper side worth the name
LEAST_SHARE = 0.02  # of the photo's area
MOST_OUTSIDE = 0.10  # a corner may lie this share of the photo's longer side beyond its edge
LONG_TO_SHORT = (1.05, 4.0)  # 2 seen from above; 45 degrees of tilt make it 1.4 or 2.8
ANY_TRAY = (1.0, 6.0)  # the same of trays from square to three times as long as wide
NEARLY_SQUARE = 1.1  # longer by shorter sides: below, their lengths do not tell which are the long ones
MOST_TAPER = 2.5  # far side against near side


class CornersFrom(StrEnum):
    """How the corners were found."""

    STATION = "station"
    FRAME = "frame"
    HAND = "hand"
    WHOLE = "whole"


@dataclass(frozen=True, slots=True, kw_only=True)
class Corners:
    """The four corners of the inner area at the height of the rim."""

    points: tuple[
        Point, Point, Point, Point
    ]  # stored photo, top left first, clockwise as the top view shows them
    found_by: CornersFrom
    confidence: float  # 0 to 1; from 0.5 on it may be used unasked
    tilt_deg: float | None = (
        None  # between the camera's axis and the tray's upright; None where nobody solved it
    )
    lens: tuple[float, float] = (0.0, 0.0)  # r_d = r (1 + k1 r^2 + k2 r^4), r in half diagonals (Brown 1971)
    focal_px: float | None = None
    axis_px: Point | None = None  # where the camera's axis meets the stored photo; None: in its middle

    def bend(self, size: tuple[int, int]) -> Bend:
        """What the lens does to a stored photo of that width and height."""
        return Bend.of(self.lens, size, self.axis_px)


def by_hand(points_upright: Sequence[Point], photo: Photo) -> Corners:
    """Corners as a person put them on the upright photo, in any order."""
    points = stored_points(photo, points_upright)
    return Corners(
        points=order_by_upright(points, photo.turns, photo.size_stored),
        found_by=CornersFrom.HAND,
        confidence=1.0,
    )


def order_by_upright(
    points: Sequence[Point], turns: int, size: tuple[int, int]
) -> tuple[Point, Point, Point, Point]:
    """The same four points: the first side is a long one, and the upper one in the upright photo.

    Where the long sides stand nearly upright (within 20 degrees) the left one counts as the upper one. Of a
    tray that looks square the sides that lie flatter count as the long ones.

    Parameters
    ----------
    points : four points of the stored photo, in any order.
    turns : quarter turns clockwise that make the photo upright.
    size : width and height of the stored photo, px.
    """
    if len(points) != 4:
        raise ValueError(f"a tray has four corners; got {len(points)}")
    upright = np.array([quarter_turned(point, turns, size) for point in points])
    middle = upright.mean(axis=0)
    around = np.argsort(np.arctan2(*(upright - middle).T[::-1]), kind="stable")  # clockwise, for y runs down
    ring = upright[around]
    sides = np.linalg.norm(np.roll(ring, -1, axis=0) - ring, axis=1)
    start = 0 if _is_long(sides, ring[1] - ring[0]) else 1
    if not _is_upper(ring[start] + ring[start + 1] - 2 * middle):
        start += 2
    first, second, third, fourth = (points[k] for k in np.roll(around, -start))
    return first, second, third, fourth


def _is_long(sides: np.ndarray, first: np.ndarray) -> bool:
    """True where the first side, which runs that way, and the third are the long ones."""
    these, others = sides[0] + sides[2], sides[1] + sides[3]
    if max(these, others) <= NEARLY_SQUARE * min(these, others):
        return bool(abs(first[0]) >= abs(first[1]))
    return bool(these > others)


def _is_upper(outwards: np.ndarray) -> bool:
    """True where a side whose outward direction is this one is the upper of the two."""
    x, y = outwards / max(float(np.hypot(*outwards)), 1e-9)
    return bool(x < 0) if abs(y) < FLAT_SIN else bool(y < 0)


def plausible(
    points: Sequence[Point],
    size: tuple[int, int],
    long_to_short: tuple[float, float] = LONG_TO_SHORT,
    outside: float = MOST_OUTSIDE,
) -> bool:
    """True where four points, in turn around the tray, can be a photo of a tray, of sides 2 to 1 if not said.

    Parameters
    ----------
    points : of the photo.
    size : width and height of that photo, px.
    long_to_short : least and most that the longer sides may be of the shorter ones.
    outside : a corner may lie this share of the photo's longer side beyond its edge.
    """
    quad = np.array(points, float)
    if quad.shape != (4, 2) or not np.isfinite(quad).all():
        return False
    beyond = outside * max(size)
    if (quad < -beyond).any() or (quad > np.array(size) + beyond).any():
        return False
    side = np.roll(quad, -1, axis=0) - quad
    turn = side[:, 0] * np.roll(side[:, 1], -1) - side[:, 1] * np.roll(side[:, 0], -1)
    if not ((turn > 0).all() or (turn < 0).all()):  # not convex, or crossed
        return False
    x, y = quad.T
    area = abs(np.dot(x, np.roll(y, -1)) - np.dot(y, np.roll(x, -1))) / 2
    length = np.linalg.norm(side, axis=1)
    pairs = sorted((length[0] + length[2], length[1] + length[3]))
    taper = max(max(length[k], length[k + 2]) / min(length[k], length[k + 2]) for k in (0, 1))
    return bool(
        area >= LEAST_SHARE * size[0] * size[1]
        and long_to_short[0] <= pairs[1] / pairs[0] <= long_to_short[1]
        and taper <= MOST_TAPER
    )


def cut_off(points: Sequence[Point], size: tuple[int, int]) -> float:
    """Share of a tray, 0 to 1, that lies outside its photo of that width and height, px.

    The four points go in turn around the tray, either way.
    """
    quad, (width, height) = np.array(points, np.float32), size
    photo = np.array([[0, 0], [width, 0], [width, height], [0, height]], np.float32)
    seen, _ = cv2.intersectConvexConvex(quad, photo)
    return float(np.clip(1 - seen / max(cv2.contourArea(quad), 1e-6), 0, 1))
