"""Frame fit: places where the tray's inner sides seem to be -> the pose of the tray, and how sure it is.

In    points of the photo, each with the side it should lie on and how far it may be off (mm)
Out   `Pose`: where the tray stands before the camera; corners, focal length, tilt, spread of the corners
Not   finding the points (`frame.py`, `framenet.py`)

The tray is a flat rectangle of known size, the camera a pinhole with square pixels looking through the middle
of the photo, so six numbers and the focal length say all but the lens, whose two terms bend the sides by a mm
or two (`lens.py`); where sides are looked at closely, these are fitted too. It is done by Gauss-Newton with
robust weights (Huber 1964; formula from memory) to distances in mm on the tray, with priors where points
cannot tell: trays are photographed from above, the focal length is that of Exif or a phone's, lenses bend
little.
"""

import math
from dataclasses import dataclass, replace

import cv2
import numpy as np
from numpy.typing import NDArray

from vision.camera import FILM_DIAGONAL_MM, USUAL_FOCAL_35MM
from vision.lens import Bend

__all__ = [
    "LENS_SPREAD",
    "Array",
    "Points",
    "Pose",
    "distances",
    "first_pose",
    "fitted",
    "inverse",
    "through",
]

Array = NDArray[np.float64]

HALF_MM = np.array([254.0, 127.0])
# y runs down as in the photo; top left, top right, bottom right, bottom left
CORNERS_MM = HALF_MM * np.array([[-1.0, -1.0], [1.0, -1.0], [1.0, 1.0], [-1.0, 1.0]])
TILT_SPREAD = 0.15  # rad, of each of two axes
EXIF_SPREAD = 0.03  # of the logarithm of the focal length: the 35 mm figure is a whole number
UNKNOWN_SPREAD = 0.10
NO_LENS = (1e-6, 1e-6)
# Half as much again as in the photos learned from: where sides hide, nobody should be sure of a lens.
LENS_SPREAD = (0.03, 0.008)
HUBER = 2.0
NUMBERS = 9
STEP = 1e-4  # of each
LENS_ROUNDS = 3


@dataclass(frozen=True, slots=True, kw_only=True)
class Points:
    """Points (n, 2) px of the photo; side 0 top, 1 bottom, 2 left, 3 right; weight 1/mm2."""

    places: Array
    sides: NDArray[np.int64]
    weights: Array


@dataclass(frozen=True, slots=True, kw_only=True)
class Pose:
    """Two tilts and a turn (rad), place (in distances), logs of distance and focal length, two lens terms."""

    values: Array  # tilt x, tilt y, turn, x / z, y / z, log z (mm), log of the focal length (px), k1, k2
    size: tuple[int, int]
    expected: tuple[float, float]  # log of the focal length and its spread
    lens_spread: tuple[float, float] = NO_LENS  # of the two terms about none
    covariance: Array | None = None

    @property
    def matrix(self) -> Array:
        """Homography (3, 3) from mm on the tray (middle, y down) to px of the photo freed from its lens."""
        return _matrix(self.values, self.size)

    @property
    def corners(self) -> Array:
        """(4, 2) px, top left, top right, bottom right, bottom left."""
        return _bend(self.values, self.size).bent(through(self.matrix, CORNERS_MM))

    def scaled(self, times: float) -> "Pose":
        """The same tray in the same photo, reduced less: `times` as many px."""
        closer = np.array([0, 0, 0, 0, 0, 0, math.log(times), 0, 0])
        width, height = self.size
        return replace(
            self,
            values=self.values + closer,
            size=(round(width * times), round(height * times)),
            expected=(self.expected[0] + math.log(times), self.expected[1]),
        )

    @property
    def tilt_deg(self) -> float:
        """Between the camera's axis and the tray's upright."""
        return math.degrees(math.hypot(self.values[0], self.values[1]))

    @property
    def spread_mm(self) -> float:
        """Standard error of the least certain corner, mm on the tray; from the fit alone."""
        if self.covariance is None:
            return math.inf
        back = inverse(self.matrix)
        stepped = [replace(self, values=self.values + step).corners for step in STEP * np.eye(NUMBERS)]
        free = _bend(self.values, self.size).freed
        moved = [through(back, free(corners)) - CORNERS_MM for corners in stepped]
        slopes = np.stack(moved, -1) / STEP
        each = np.einsum("nik,kl,nil->n", slopes, self.covariance, slopes)
        return float(np.sqrt(each.max()))


def first_pose(quad: Array, size: tuple[int, int], focal_35mm: float | None) -> Pose:
    """Pose looking straight down on a quadrangle (4, 2) px whose first side is a long one."""
    known = focal_35mm is not None
    focal = (focal_35mm or USUAL_FOCAL_35MM) * math.hypot(*size) / FILM_DIAGONAL_MM
    along = quad[1] - quad[0] + quad[2] - quad[3]
    scale = math.hypot(*along) / 2 / (2 * HALF_MM[0])
    middle = (quad.mean(axis=0) - np.array(size) / 2) / focal
    log_focal = math.log(focal)
    turn = math.atan2(along[1], along[0])
    values = np.array([0, 0, turn, *middle, math.log(focal / scale), log_focal, 0, 0])
    spread = EXIF_SPREAD if known else UNKNOWN_SPREAD
    return Pose(values=values, size=size, expected=(log_focal, spread))


def fitted(pose: Pose, points: Points, rounds: int = 6) -> Pose:
    """The pose that suits the points and the priors best, with the covariance of its numbers."""
    values = pose.values.copy()
    wanted = np.zeros(NUMBERS)
    wanted[6] = pose.expected[0]
    spread = np.array([TILT_SPREAD, TILT_SPREAD, *([np.inf] * 4), pose.expected[1], *pose.lens_spread])
    firm = spread**-2
    left = np.eye(NUMBERS)
    for _ in range(rounds):
        off = _distances(values, pose.size, points)
        slopes = np.stack(
            [(_distances(values + step, pose.size, points) - off) / STEP for step in STEP * np.eye(NUMBERS)],
            -1,
        )
        scaled = np.abs(off) * np.sqrt(points.weights)
        weight = points.weights * np.minimum(1.0, HUBER / np.maximum(scaled, 1e-9))
        left = (slopes * weight[:, None]).T @ slopes + np.diag(firm) + np.eye(NUMBERS) * 1e-6
        right = slopes.T @ (weight * off) + firm * (values - wanted)
        step = np.linalg.solve(left, right)
        step[:3] = np.clip(step[:3], -0.2, 0.2)
        step[3:] = np.clip(step[3:], -0.3, 0.3)
        values = values - step
        values[:2] = np.clip(values[:2], -0.9, 0.9)
        if np.abs(step).max() < 1e-5:
            break
    return replace(pose, values=values, covariance=inverse(left))


def distances(pose: Pose, points: Points) -> Array:
    """How far, mm on the tray, each point lies beyond its side (to the right or below)."""
    return _distances(pose.values, pose.size, points)


def through(matrix: Array, points: Array) -> Array:
    """Points (n, 2) through a homography."""
    seen = points @ matrix[:, :2].T + matrix[:, 2]
    return np.asarray(seen[:, :2] / seen[:, 2:])


def inverse(matrix: Array) -> Array:
    """The way back through a homography, or a covariance from its information."""
    return np.asarray(np.linalg.inv(matrix), float)


def _distances(values: Array, size: tuple[int, int], points: Points) -> Array:
    flat = _bend(values, size).freed(points.places, LENS_ROUNDS)
    places = through(inverse(_matrix(values, size)), flat)
    off = np.where(points.sides < 2, places[:, 1], places[:, 0])
    return np.asarray(off - np.array([-HALF_MM[1], HALF_MM[1], -HALF_MM[0], HALF_MM[0]])[points.sides])


def _matrix(values: Array, size: tuple[int, int]) -> Array:
    tilt_x, tilt_y, turn, x, y, log_far, log_focal = values[:7]
    lean = cv2.Rodrigues(np.array([tilt_x, tilt_y, 0.0]))[0]
    spin = np.array([[math.cos(turn), -math.sin(turn)], [math.sin(turn), math.cos(turn)], [0.0, 0.0]])
    axes = lean @ spin
    far, focal = math.exp(log_far), math.exp(log_focal)
    view = np.column_stack([axes, np.array([x * far, y * far, far])])
    camera = np.array([[focal, 0, size[0] / 2], [0, focal, size[1] / 2], [0, 0, 1]])
    return np.asarray(camera @ view, float)


def _bend(values: Array, size: tuple[int, int]) -> Bend:
    return Bend.of((float(values[7]), float(values[8])), size)
