"""Card places: distances measured between the station's marks -> how far each card lies from its drawn place.

In    a tray type; distances between middles of marks, mm, by the two cards' numbers
Out   how far each card is off, mm to the right and to the far side; or that the distances do not fit together
Not   the same from a photo (`stationcheck.py`), the camera (`pose.py`)

Distances tell the shape that the four cards make, not where it lies about the tray. The tray stands where
most cards are right: so of all ways to lay the shape, the one is taken in which the cards have moved least in
sum. That leaves a single moved card alone off its place (least absolute deviations, by reweighted least
squares; Weiszfeld 1937, from memory).
"""

from collections.abc import Mapping
from dataclasses import replace
from itertools import combinations

import numpy as np
from numpy.typing import NDArray

from vision.traytype import TrayType

__all__ = ["PAIRS", "DistancesError", "cards_off", "distances"]

Points = NDArray[np.float64]
Pair = tuple[int, int]

PAIRS: tuple[Pair, ...] = tuple(combinations(range(4), 2))

TAPE_MM = 0.5  # what a steel rule or a tape is read to
USUAL_MM = 2.0  # what a card is off by
LEAST_MM = 0.02
MOST_REST_MM = 1.5  # of a measured distance against the shape that fits best
MOST_OFF_MM = 30.0
ROUNDS = 60


class DistancesError(ValueError):
    """No four cards have these distances: one of them was misread, or is another pair's."""

    def __init__(self, pair: Pair, rest_mm: float) -> None:
        super().__init__(f"cards {pair[0]} and {pair[1]}: {rest_mm:.1f} mm from what the others say")
        self.pair, self.rest_mm = pair, rest_mm


def distances(tray: TrayType) -> dict[Pair, float]:
    """Between the middles of each two marks, mm, where the cards of this type lie."""
    places = tray.card_centres()[:, :2]
    return {(one, two): float(np.linalg.norm(places[one] - places[two])) for one, two in PAIRS}


def cards_off(tray: TrayType, measured: Mapping[Pair, float]) -> tuple[tuple[float, float], ...]:
    """How far each card lies from its drawn place, mm to the right and to the far side.

    Parameters
    ----------
    measured : all six distances, or some of them; what is not told of stays as drawn.

    Raises
    ------
    DistancesError
        Where no four cards near their places have these distances.
    """
    drawn = replace(tray, cards_off_mm=()).card_centres()[:, :2]
    off: Points = np.zeros((4, 2))
    for _ in range(ROUNDS):
        rests, slopes = _rests(drawn + off, measured)
        still = 1 / (USUAL_MM * np.maximum(np.linalg.norm(off, axis=1), LEAST_MM))
        told = slopes.T @ slopes / TAPE_MM**2 + np.diag(np.repeat(still, 2))
        wanted = slopes.T @ (rests + slopes @ off.ravel()) / TAPE_MM**2
        off = np.asarray(np.linalg.solve(told, wanted).reshape(4, 2), np.float64)
    rests, _ = _rests(drawn + off, measured)
    worst = int(np.abs(rests).argmax())
    if abs(rests[worst]) > MOST_REST_MM or np.linalg.norm(off, axis=1).max() > MOST_OFF_MM:
        raise DistancesError(list(measured)[worst], float(abs(rests[worst])))
    return tuple((float(right), float(far)) for right, far in off)


def _rests(places: Points, measured: Mapping[Pair, float]) -> tuple[Points, Points]:
    """Measured less present distances (n,), and how the latter change with each card's place (n, 8)."""
    rests, slopes = np.zeros(len(measured)), np.zeros((len(measured), 8))
    for k, ((one, two), distance) in enumerate(measured.items()):
        way = places[one] - places[two]
        length = float(np.linalg.norm(way))
        rests[k] = distance - length
        slopes[k, 2 * one : 2 * one + 2] = way / length
        slopes[k, 2 * two : 2 * two + 2] = -way / length
    return rests, slopes
