"""Patterns: a mark's bits -> its picture; a look at a mark -> where exactly it lies, what its modules show.

In    grey photo; a homography (3, 3) from a mark's modules to the photo
Out   `Reading`: the homography moved onto the mark; modules that are black, white or cannot be told
Not   where to look (`covered.py`)

Module coordinates: x and y from 0 to 10, a white module all round; the mark itself reaches from 1 to 9.
Marks are aligned as by Lucas & Kanade (1981, IJCAI 674-679; from memory) with Tukey's weights, so that a leaf
over a part of the mark does not pull at the rest.
"""

from dataclasses import dataclass
from functools import lru_cache
from typing import Any

import cv2
import numpy as np
from numpy.typing import NDArray

__all__ = [
    "FRAME",
    "MARK",
    "SIDE",
    "Grey",
    "Reading",
    "all_codes",
    "bits",
    "dictionary",
    "frame_picture",
    "picture",
    "read_modules",
    "rectified",
]

Array = NDArray[np.float64]
Grey = NDArray[np.uint8]

MODULES = 8  # a mark's side, black frame included
SIDE = MODULES + 2  # with a white module all round
MARK = np.array([[1.0, 1.0], [9.0, 1.0], [9.0, 9.0], [1.0, 9.0]])  # corners in module coordinates
FINE = 6  # px a module in the rectified picture
LEAST_CONTRAST = 20.0  # grey levels between black and white
BLACK, WHITE = 0.22, 0.75  # share of the way from black to white
ENOUGH, STRAY = (
    6,
    1,
)  # of the 16 inner pixels of a module: so many show its colour, at most so many the other one
FRAME = np.ones((MODULES, MODULES), bool)
FRAME[1:-1, 1:-1] = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Reading:
    """One look at a mark."""

    place: Array  # (3, 3) from modules to the photo
    told: NDArray[np.bool_]  # (8, 8) module is clearly black or clearly white
    black: NDArray[np.bool_]  # (8, 8)
    contrast: float  # grey levels

    @property
    def corners(self) -> Array:
        """(4, 2) px, edge coordinates, clockwise from the mark's own top left."""
        return np.asarray(cv2.perspectiveTransform(MARK[None], self.place)[0], np.float64)


@lru_cache(maxsize=1)
def dictionary() -> cv2.aruco.Dictionary:
    """AprilTag 36h11 as OpenCV carries it; shared, not to be changed."""
    return cv2.aruco.getPredefinedDictionary(cv2.aruco.DICT_APRILTAG_36h11)


def bits(number: int) -> NDArray[np.bool_]:
    """(8, 8) pattern of a mark for printing, black frame included; True is black.

    Raises ValueError for a number that 36h11 does not have (0 to 586).
    """
    if not 0 <= number < len(dictionary().bytesList):
        raise ValueError(f"AprilTag 36h11 has the numbers 0 to 586; got {number}")
    return np.asarray(cv2.aruco.generateImageMarker(dictionary(), number, MODULES) == 0)


@lru_cache(maxsize=1)
def all_codes() -> NDArray[np.bool_]:
    """(587, 8, 8) all patterns; True is black."""
    codes = np.stack([bits(number) for number in range(len(dictionary().bytesList))])
    codes.flags.writeable = False
    return codes


@lru_cache(maxsize=16)
def picture(number: int | None) -> tuple[Array, Array]:
    """Rectified picture of a mark, 1 white, 0 black, slightly blurred; which pixels count (0 or 1).

    Without a number: the black frame and the white around it, the same on every mark.
    """
    black = np.pad(FRAME if number is None else bits(number), 1)
    counts = np.ones((SIDE, SIDE)) if number is not None else np.pad(FRAME, 1, constant_values=True)
    fine = np.kron(1.0 - black, np.ones((FINE, FINE)))
    weight = np.kron(counts, np.ones((FINE, FINE)))
    return cv2.GaussianBlur(fine, (0, 0), FINE * 0.15).astype(np.float64), weight.astype(np.float64)


def frame_picture(px_per_module: float) -> tuple[NDArray[Any], NDArray[Any]]:
    """The frame alone at another size, with its mask, for `cv2.matchTemplate`."""
    side = round(SIDE * px_per_module)
    fine, weight = picture(None)
    small = cv2.resize(fine.astype(np.float32), (side, side), interpolation=cv2.INTER_AREA)
    mask = cv2.resize(weight.astype(np.float32), (side, side), interpolation=cv2.INTER_AREA)
    return small, (mask > 0.5).astype(np.float32)


def read_modules(grey: Grey, place: Array, number: int | None, *, rounds: int = 12) -> Reading | None:
    """Move a homography onto the mark and read the modules there.

    Parameters
    ----------
    grey : uint8 (rows, columns)
    place : (3, 3), from modules to the photo, off by at most about a module
    number : the mark that is expected there; None looks for the frame only

    Returns
    -------
    Reading or None
        None where it lies outside the photo, there is no contrast, or the place ran away.
    """
    target, counts = picture(number)
    slope = _slopes(target)
    moved = place
    for step in range(rounds):
        patch = rectified(grey, moved)
        if patch is None:
            return None
        levels = _levels(patch, target, counts)
        if levels is None:
            return None
        off = (patch - levels[0]) / (levels[1] - levels[0]) - target
        wide = max(0.35, 0.9 - 0.08 * step)
        weight = counts.ravel() * np.clip(1 - (off.ravel() / wide) ** 2, 0, None) ** 2
        normal = slope.T @ (slope * weight[:, None]) + _STIFF
        move = -np.linalg.solve(normal, slope.T @ (weight * off.ravel()))
        moved = moved @ _step(np.clip(move, -0.15, 0.15))
        moved = moved / moved[2, 2]
        if np.abs(move).max() < 2e-4:
            break
    patch = rectified(grey, moved)
    levels = None if patch is None else _levels(patch, target, counts)
    if patch is None or levels is None or not _still_there(place, moved):
        return None
    return _reading((patch - levels[0]) / (levels[1] - levels[0]), moved, levels[1] - levels[0])


def rectified(grey: Grey, place: Array) -> Array | None:
    """The mark with its white surrounding, (60, 60), sampled without aliasing; None outside the photo."""
    ring = cv2.perspectiveTransform(np.array([[[0.0, 0], [SIDE, 0], [SIDE, SIDE], [0, SIDE]]]), place)[0]
    if not np.isfinite(ring).all() or np.abs(ring).max() > 1e5:
        return None
    (left, top), (right, bottom) = np.floor(ring.min(axis=0)) - 2, np.ceil(ring.max(axis=0)) + 2
    rows, columns = grey.shape
    if right - left < SIDE or left < -SIDE or top < -SIDE or right > columns + SIDE or bottom > rows + SIDE:
        return None
    left, top = int(max(0, left)), int(max(0, top))
    crop = grey[top : int(bottom), left : int(right)]
    times = max(1, int((right - left) / SIDE / (FINE * 1.4)))
    rows, columns = crop.shape[0] // times, crop.shape[1] // times
    if rows < SIDE or columns < SIDE:
        return None
    if times > 1:
        crop = np.asarray(
            cv2.resize(
                crop[: rows * times, : columns * times], (columns, rows), interpolation=cv2.INTER_AREA
            ),
            np.uint8,
        )
    to_crop = np.array([[1 / times, 0, -left / times - 0.5], [0, 1 / times, -top / times - 0.5], [0, 0, 1.0]])
    to_modules = np.array([[1 / FINE, 0, 0.5 / FINE], [0, 1 / FINE, 0.5 / FINE], [0, 0, 1.0]])
    size = (SIDE * FINE, SIDE * FINE)
    flags = cv2.INTER_LINEAR | cv2.WARP_INVERSE_MAP
    patch = cv2.warpPerspective(crop, to_crop @ place @ to_modules, size, flags=flags, borderValue=128.0)
    return patch.astype(np.float64)


def _levels(patch: Array, target: Array, counts: Array) -> tuple[float, float] | None:
    """Grey of the mark's black and of its white: quantiles, for leaves lie over some of either."""
    dark = patch[(target < 0.05) & (counts > 0)]
    bright = patch[(target > 0.95) & (counts > 0)]
    black, white = float(np.quantile(dark, 0.3)), float(np.quantile(bright, 0.7))
    return (black, white) if white - black >= LEAST_CONTRAST else None


def _reading(share: Array, place: Array, contrast: float) -> Reading:
    """What each module shows, by the inner 4 x 4 of its 6 x 6 pixels.

    A module is one colour all over, so a part that no leaf covers is enough; leaves are mostly in between.
    """
    blocks = share.reshape(SIDE, FINE, SIDE, FINE).transpose(0, 2, 1, 3)[1:-1, 1:-1, 1:-1, 1:-1]
    black = (blocks < BLACK).sum(axis=(2, 3))
    white = (blocks > WHITE).sum(axis=(2, 3))
    told = (np.maximum(black, white) >= ENOUGH) & (np.minimum(black, white) <= STRAY)
    return Reading(place=place, told=told, black=black > white, contrast=contrast)


def _still_there(before: Array, after: Array) -> bool:
    """The mark may move by two modules and change its size by a fifth, not more."""
    old = cv2.perspectiveTransform(MARK[None], before)[0]
    new = cv2.perspectiveTransform(MARK[None], after)[0]
    side, other = np.linalg.norm(old[2] - old[0]), np.linalg.norm(new[2] - new[0])
    moved = np.linalg.norm(new.mean(axis=0) - old.mean(axis=0))
    return bool(moved < side / 11.3 * 2.2 and 0.8 < other / side < 1.25)


_HALF = SIDE / 2
_STIFF = np.diag([2.0, 2.0, 0.2, 2.0, 2.0, 0.2, 40.0, 40.0])  # little bends it but what all sides agree on


def _slopes(target: Array) -> Array:
    """(3600, 8): change of the picture for each number of a small homography about the mark's middle."""
    down, across = np.gradient(target)
    down, across = down.ravel() * FINE * _HALF, across.ravel() * FINE * _HALF
    y, x = (np.mgrid[: target.shape[0], : target.shape[1]].reshape(2, -1) + 0.5) / FINE / _HALF - 1
    both = across * x + down * y
    return np.column_stack([across * x, across * y, across, down * x, down * y, down, -x * both, -y * both])


def _step(move: Array) -> Array:
    """The small homography, from modules to modules."""
    small = np.array(
        [[1 + move[0], move[1], move[2]], [move[3], 1 + move[4], move[5]], [move[6], move[7], 1]]
    )
    out = np.array([[_HALF, 0, _HALF], [0, _HALF, _HALF], [0, 0, 1.0]])
    return np.asarray(out @ small @ np.linalg.inv(out))
