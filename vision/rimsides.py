"""Rim sides: an inner area laid into a photo -> how far beside it its sides are seen, and how to move it.

In    four corners in a picture, its lens; what the frame networks say of the sides there (`framesides.py`)
Out   `Laid`, which moves; `Beside`: distances at two places a side, their errors, the move that suits them
Not   which move is believed (`rim.py`)

All lengths are mm of the nominal tray: of one that is as large in proportion they mean its own share.
"""

import math
from dataclasses import dataclass
from functools import cached_property

import numpy as np
from numpy.typing import NDArray

from vision.camera import homography
from vision.framefit import CORNERS_MM, HALF_MM, Points, inverse, through
from vision.framenet import Fineness
from vision.framesides import Way, look_at, points_of
from vision.lens import Bend
from vision.photo import Pixels

__all__ = ["CLIPPED", "MOVES", "Beside", "Laid", "seen_beside"]

Array = NDArray[np.float64]

LEAST_MM = 0.7  # what half a side that is seen sharply is off by
BLIND_MM = 50.0  # the same of one that is not seen at all
CLIPPED = 3.0  # errors: a leaf that is taken for a side tells no more
HUBER, ROUNDS = 2.0, 5
RIM_MM = 20.0  # its width, and a little

# two places a side, the sides as `framefit.py` numbers them: top, bottom, left, right; which way is beside it
_HALVES = (-0.5, 0.5)
PLACES_MM = HALF_MM * np.array(
    [(x, y) for y in (-1.0, 1.0) for x in _HALVES] + [(x, y) for x in (-1.0, 1.0) for y in _HALVES]
)
ASIDE = np.repeat(np.array([[0.0, 1.0], [0.0, 1.0], [1.0, 0.0], [1.0, 0.0]]), 2, axis=0)
REACH_MM = float(np.hypot(*HALF_MM))


def _turned(places: Array) -> Array:
    """A quarter turn of places about the middle, clockwise."""
    return np.asarray(places[:, ::-1] * (-1.0, 1.0))


# A move: shift to the right and down, corners outwards, corners around (mm). How far each of the places comes
# to lie beside its side by a mm of each of the four.
MOVES = np.column_stack(
    [ASIDE, *((ASIDE * way).sum(axis=1) / REACH_MM for way in (PLACES_MM, _turned(PLACES_MM)))]
)


@dataclass(frozen=True)
class Laid:
    """A tray's inner area laid into a picture."""

    corners: Array  # (4, 2) px, clockwise from the top left of the top view
    bend: Bend | None = None  # None: straight lines are straight

    @cached_property
    def matrix(self) -> Array:
        """Homography from mm (middle, y down) to px. Raises ValueError where three corners lie in line."""
        return homography(CORNERS_MM, self.corners)

    def scaled(self, times: float) -> "Laid":
        """The same in the same picture with so many times as many px."""
        return Laid(self.corners * times, self.bend.scaled(times) if self.bend else None)

    def moved(self, move: Array) -> "Laid":
        """Shifted, grown and turned in its own plane by a move (4,), mm."""
        grown = CORNERS_MM * (1 + move[2] / REACH_MM) + _turned(CORNERS_MM) * (move[3] / REACH_MM)
        return Laid(through(self.matrix, grown + move[:2]), self.bend)

    def places_of(self, points: Array) -> Array:
        """Points (n, 2) px of sides as bent by the lens, mm in the tray, where they are straight."""
        if self.bend is None:
            return through(inverse(self.matrix), points)
        flat = homography(CORNERS_MM, self.bend.freed(self.corners))
        return through(inverse(flat), self.bend.freed(points))

    def beside(self, other: "Laid") -> Array:
        """(8,) how far beside the places here those of another lie, mm."""
        way = through(inverse(self.matrix), through(other.matrix, PLACES_MM)) - PLACES_MM
        return np.asarray((way * ASIDE).sum(axis=1))

    def move_to(self, other: "Laid") -> Array:
        """The move that brings it nearest to another."""
        return np.asarray(np.linalg.lstsq(MOVES, self.beside(other), rcond=None)[0])

    def within(self, size: tuple[int, int]) -> bool:
        """Whether the rim around it lies in a picture of that width and height, px."""
        outwards = RIM_MM * ASIDE * np.sign(PLACES_MM)
        rim = through(self.matrix, PLACES_MM + outwards)
        return bool(((rim > 0) & (rim < size)).all())


@dataclass(frozen=True, slots=True)
class Beside:
    """How far beside a laid inner area its sides are seen, at two places each, and the errors of that, mm."""

    off_mm: Array  # (8,) to the right or down
    error_mm: Array  # (8,)

    @property
    def misfit(self) -> float:
        """Sum of squares in errors, none above `CLIPPED`."""
        return float(self._misfits().sum())

    @property
    def misfit_of_others(self) -> float:
        """The same without the side that adds most to it."""
        sides = self._misfits().reshape(4, 2).sum(axis=1)
        return float(sides.sum() - sides.max())

    def _misfits(self) -> Array:
        return np.asarray(np.minimum((self.off_mm / self.error_mm) ** 2, CLIPPED**2))

    def move(self, expected: Array, covariance: Array) -> tuple[Array, Array]:
        """The move that suits best what is seen and what is expected, its covariance; robust."""
        weights, prior = self.error_mm**-2, np.linalg.inv(covariance)
        move, told = expected, prior
        for _ in range(ROUNDS):
            rest = np.abs(self.off_mm - MOVES @ move) / self.error_mm
            counts = weights * np.minimum(1, HUBER / np.maximum(rest, 1e-9))
            told = MOVES.T @ (MOVES * counts[:, None]) + prior
            move = np.linalg.solve(told, MOVES.T @ (counts * self.off_mm) + prior @ expected)
        return move, np.asarray(np.linalg.inv(told))


def seen_beside(laid: Laid, picture: Pixels, fineness: Fineness, window_mm: float) -> Beside:
    """What a network sees of the sides within a window on either side of where they are laid."""
    points = points_of(look_at(laid, [picture], [Way()], fineness), laid, window_mm)
    if fineness.as_bent:
        return _by_halves(laid.places_of(points.places), points)
    return _by_halves(through(inverse(laid.matrix), points.places), points)


def _by_halves(places_mm: Array, points: Points) -> Beside:
    along = np.where(points.sides < 2, places_mm[:, 0], places_mm[:, 1])
    half = 2 * points.sides + (along > 0)
    off = ((places_mm - PLACES_MM[half]) * ASIDE[half]).sum(axis=1)
    means, errors = np.zeros(8), np.full(8, BLIND_MM)
    for k in range(8):
        each, weights = off[half == k], points.weights[half == k]
        if weights.sum() > BLIND_MM**-2:
            means[k] = _robust_mean(each, weights)
            errors[k] = math.hypot(LEAST_MM, weights.sum() ** -0.5)
    return Beside(means, errors)


def _robust_mean(each: Array, weights: Array) -> float:
    """Weighted mean, the few far from it counting less (Huber 1964; formula from memory)."""
    counts, mean = weights, 0.0
    for _ in range(ROUNDS):
        mean = float((counts * each).sum() / counts.sum())
        counts = weights * np.minimum(1, HUBER / np.maximum(np.abs(each - mean) * np.sqrt(weights), 1e-9))
    return mean
