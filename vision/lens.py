"""Lens: how a camera's lens bends a flat picture, and the way back.

In    points of a photo, px
Out   `Bend`: points where the lens puts them, or where they would lie without it
Not   finding its terms (`posefit.py`, `framefit.py`), bending a whole picture (`topview.py`)

Brown's radial model (1971): r_d = r (1 + k1 r^2 + k2 r^4), r in half diagonals.
"""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

__all__ = ["Bend"]

Array = NDArray[np.float64]

ROUNDS = 20  # lenses of phones need five for a hundredth of a px


@dataclass(frozen=True, slots=True)
class Bend:
    """Two terms, where the camera's axis meets the photo, half the photo's diagonal."""

    terms: tuple[float, float]
    middle: tuple[float, float]  # px
    reach: float  # px

    @classmethod
    def of(
        cls, terms: tuple[float, float], size: tuple[int, int], middle: tuple[float, float] | None = None
    ) -> "Bend":
        """In a photo of that width and height; None where its middle is the lens's."""
        half = np.array(size) / 2
        across, down = half if middle is None else middle
        return cls(terms, (float(across), float(down)), float(np.hypot(*half)))

    def scaled(self, times: float) -> "Bend":
        """The same in the same photo with so many times as many px."""
        across, down = self.middle
        return Bend(self.terms, (across * times, down * times), self.reach * times)

    def bent(self, flat: Array) -> Array:
        """Points (n, 2) of a flat picture where the lens puts them."""
        away = flat - np.array(self.middle)
        return np.asarray(self.middle + away * self._growth(away / self.reach))

    def freed(self, points: Array, rounds: int = ROUNDS) -> Array:
        """Points (n, 2) of the photo where they would lie without the lens, by iteration."""
        away = (points - np.array(self.middle)) / self.reach
        flat = away
        for _ in range(rounds):
            flat = away / self._growth(flat)
        return np.asarray(self.middle + flat * self.reach)

    def _growth(self, away: Array) -> Array:
        square = (away**2).sum(axis=-1, keepdims=True)
        return np.asarray(1 + self.terms[0] * square + self.terms[1] * square**2)
