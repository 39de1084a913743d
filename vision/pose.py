"""Pose: where a camera was, its focal length, its lens; first guesses of it from the cards alone.

In    marks: corners in the photo (edge coordinates, px) and in tray axes (mm); size of the photo; what is
      known of the focal length
Out   `Pose`, which projects tray axes to the photo; first poses
Not   finding marks (`markers.py`), the pose that explains them best (`posefit.py`)

Pixels are square; the principal point lies in the middle of the photo, unless that was cropped. Lens: Brown's
two radial terms, radius in half diagonals, r' = r (1 + k1 r^2 + k2 r^4) (Brown 1971, Photogrammetric
Engineering 37).
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass

import cv2
import numpy as np
from numpy.typing import NDArray

from vision.camera import USUAL_FOCAL_35MM, focal_from_exif
from vision.lens import Bend

__all__ = ["ASIDE_SPREAD", "Pose", "Seen", "first_poses", "usual_aside", "usual_focal"]

Array = NDArray[np.float64]

EXIF_SPREAD = 0.015  # the 35 mm figure is a whole number, and makers round freely
UNKNOWN_SPREAD = 0.06
SENSORS = (4 / 3, 3 / 2)  # long by short side of phones and of other cameras
CUTS = (16 / 9, 1.0)  # shapes that phones cut from the sensor's middle
LIKE_SENSOR = 0.02
# of a photo that a person cropped: of the axis, by its diagonal; of the logarithm of the focal length
ASIDE_SPREAD, CROPPED_SPREAD = 0.08, 0.5


@dataclass(frozen=True, slots=True, kw_only=True)
class Pose:
    """A camera seen from tray axes; `turn` (3, 3) and `shift` (3,) mm take tray axes to camera axes."""

    turn: Array
    shift: Array
    focal_px: float
    size: tuple[int, int]
    lens: tuple[float, float] = (0.0, 0.0)
    aside: tuple[float, float] = (0.0, 0.0)
    """Of the optical axis from the photo's middle, px: a cropped photo."""

    @property
    def middle(self) -> Array:
        """Where the optical axis meets the photo, (2,) px."""
        return np.array(self.size) / 2 + self.aside

    @property
    def bend(self) -> Bend:
        """What its lens does to its photo."""
        x, y = self.middle
        return Bend.of(self.lens, self.size, (x, y))

    @property
    def tilt_deg(self) -> float:
        """Angle between the optical axis and straight down, 0-180 degrees."""
        return math.degrees(math.acos(float(np.clip(-self.turn[2, 2], -1, 1))))

    def project(self, places_mm: Array) -> Array:
        """(n, 3) mm in tray axes -> (n, 2) px in the photo, edge coordinates."""
        seen = places_mm @ self.turn.T + self.shift
        flat = self.focal_px * seen[:, :2] / np.maximum(seen[:, 2:], 1.0)
        return self.bend.bent(flat + self.middle)

    def plane(self, height_mm: float) -> Array:
        """Homography (3, 3) from x, y in mm on the level plane at `height_mm` to the photo; without lens."""
        x, y = self.middle
        middle = np.array([[self.focal_px, 0, x], [0, self.focal_px, y], [0, 0, 1]])
        columns = (self.turn[:, 0], self.turn[:, 1], self.turn[:, 2] * height_mm + self.shift)
        return np.asarray(middle @ np.column_stack(columns))


@dataclass(frozen=True, slots=True, kw_only=True)
class Seen:
    """Corners (4, 2) px as seen; `quad_mm` (4, 3) where they lie, None for the tag, which slides."""

    corners: Array
    quad_mm: Array | None


def usual_focal(size: tuple[int, int], focal_35mm: float | None) -> tuple[float, float]:
    """Focal length in px from the 35 mm figure, or that of most phones; and its relative spread.

    The figure is one of diagonals. Of a photo that a phone cuts to 16:9 or to a square it may still be that
    of the whole sensor (from memory: makers differ), so both are allowed for. What is left of a cropped
    photo, or is shown on a screen with black around, may have any.
    """
    if usual_aside(size) is not None:
        return focal_from_exif(focal_35mm or USUAL_FOCAL_35MM, size), CROPPED_SPREAD
    if focal_35mm is None:
        return focal_from_exif(USUAL_FOCAL_35MM, size), UNKNOWN_SPREAD
    longer = _sensor_by_photo(size)
    spread = math.hypot(EXIF_SPREAD, math.log(longer) / 2)
    return focal_from_exif(focal_35mm, size) * math.sqrt(longer), spread


def usual_aside(size: tuple[int, int]) -> float | None:
    """How far the camera's axis may lie from the photo's middle, px; None for a shape that cameras make.

    Of 120 photos of a station of which one side was cut off, 53 were laid over 5 mm off and called sure as
    long as middle and focal length were believed; 6 since. Of 24 on the screen of a phone 14, now 3.
    """
    if any(_is_like(size, shape) for shape in SENSORS + CUTS):
        return None
    return ASIDE_SPREAD * math.hypot(*size)


def _is_like(size: tuple[int, int], shape: float) -> bool:
    return abs(max(size) / min(size) / shape - 1) < LIKE_SENSOR


def _sensor_by_photo(size: tuple[int, int]) -> float:
    """Diagonal of the 4:3 sensor that a photo of another shape was cut from, by the photo's; else 1."""
    if any(_is_like(size, sensor) for sensor in SENSORS):
        return 1.0
    whole = 5 / 4 * max(size) if max(size) / min(size) > SENSORS[0] else 5 / 3 * min(size)
    return whole / math.hypot(*size)


def first_poses(seen: Sequence[Seen], size: tuple[int, int], focal_px: float) -> list[Pose]:
    """Poses from the cards alone, without lens: up to two, for a plane seen from far has a mirror pose."""
    cards = [s for s in seen if s.quad_mm is not None]
    if not cards:
        return []
    mm = np.concatenate([s.quad_mm for s in cards if s.quad_mm is not None])
    px = np.concatenate([s.corners for s in cards])
    middle, low = np.array([*mm[:, :2].mean(0), 0.0]), np.array([0.0, 0.0, mm[0, 2]])
    k = np.array([[focal_px, 0, size[0] / 2], [0, focal_px, size[1] / 2], [0, 0, 1.0]])
    count, turns, shifts, _ = cv2.solvePnPGeneric(mm - middle - low, px, k, None, flags=cv2.SOLVEPNP_IPPE)
    found = []
    for turn_vector, shift in zip(turns[:count], shifts[:count], strict=True):
        turn = np.asarray(cv2.Rodrigues(turn_vector)[0], dtype=np.float64)
        where = shift.ravel() - turn @ (middle + low)
        if turn[2, 2] < 0:  # from above; from below the marks could not be read
            found.append(Pose(turn=turn, shift=where, focal_px=focal_px, size=size))
    return found
