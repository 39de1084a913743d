"""Alignment: two top views of one tray, a day or so apart -> how the later lies on the earlier.

In    two top views at 2 px/mm
Out   `Alignment`: the affine map in mm and how far it may be off, or None with a `Reason`; whether the tray
      was put in turned round
Not   how places have moved (`correlation.py`), what changed (`change.py`), where the tray lies in the photo
      (`station.py`)

The rim is laid on the rim already, to half a millimetre. But the medium lies centimetres lower and leaves
rise above it: seen from another spot they move by up to a centimetre against the rim. So what is looked for
is the surface that stays, whichever that is: the bare ground in the first days, the leaves later. Seen in
rim coordinates a level plane only shifts and grows, wherever the camera was; turning, stretching and shearing
come from corners that are off, and are believed only as far as many places agree on them.

Some places agree and others do not (leaves that grew over them): each place counts by its chance of being
one of those that do (expectation and maximisation, Dempster, Laird & Rubin 1977, from memory). What is told
of the error comes from how many agree and how well. While a canopy closes nothing stays: then no map is
given.
"""

from dataclasses import dataclass

import cv2
import numpy as np
from numpy.typing import NDArray

from vision.correlation import MIDDLE_PX, Picture, Places, Shared, contrast, correlated
from vision.planes import Pixels
from vision.reason import Reason
from vision.topview import LONG_MM, PX_PER_MM, SHORT_MM, TOP_HEIGHT, TOP_WIDTH

__all__ = ["AS_PLACED", "Affine", "Alignment", "align", "in_own_mm", "moved", "turned_round"]

Affine = tuple[tuple[float, float, float], tuple[float, float, float]]
Points = NDArray[np.float64]

AS_PLACED: Affine = ((1.0, 0.0, 0.0), (0.0, 1.0, 0.0))

LEAST_PEAK = 8.0  # of what places share, standard deviations; 80 pairs of unlike trays reach 7
LEAST_TURNED_PEAK = 9.0  # the tray's walls look alike both ways
CLEARLY = 1.5  # a turned tray has to match so many times better
FIRST_REACH_PX, REACH_PX = 8, 5  # around what all places share, then around the first fit
USUAL = (
    0.05,
    0.003,
    0.003,
    0.003,
)  # scale of a surface nearer to the camera; turn, stretch, shear by corners 1 mm off
ALIKE = 6.0  # places that overlap tell the same: so many count as one
FINEST_PX, COARSEST_PX = 0.15, 1.5  # how well places agree that agree
ROUNDS = 30
LEAST_SHARE = 0.2  # of places that agree: a strip of the tray tells nothing of the rest
TIMES = 3.0  # the error told is so many standard errors: leaves do not rise evenly
MOST_ERROR_MM = 2.4  # a map that may be off by more is none
EXACT_MM = 1.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Alignment:
    """How the later top view lies on the earlier one."""

    matrix: Affine | None
    """Earlier (x, y) mm -> later (x, y) mm, from the top left corner; None where nothing sure is found."""
    turned: bool
    """The tray stands turned by 180 degrees; the matrix holds that too. May be known without a matrix."""
    error_mm: float | None
    """How far the matrix may be off at the worst place; None without one."""
    reason: Reason | None = None

    @property
    def placed(self) -> Affine:
        """The matrix, or the rim laid on the rim where there is none."""
        return self.matrix or self.by_rim

    @property
    def by_rim(self) -> Affine:
        """The rim laid on the rim; nearer to the truth than the matrix for what lies under leaves."""
        return turned_round(AS_PLACED) if self.turned else AS_PLACED

    @property
    def is_sure(self) -> bool:
        """Whether canopy may be compared with canopy, which leaves room for leaves that nod."""
        return self.matrix is not None

    @property
    def is_exact(self) -> bool:
        """Whether places lie on each other to within a millimetre."""
        return self.error_mm is not None and self.error_mm <= EXACT_MM


def align(earlier: Pixels, later: Pixels) -> Alignment:
    """Lay the later top view on the earlier one; both uint8 (508, 1016, 3).

    On rendered trays at the station, from one day to the next, against level planes: where the error told
    is 1 mm or less (74 of 126 pairs, all before the canopy closes) median 0.2, 95 % 0.6, worst 1.1 mm; of
    all maps given (100) median 0.2, 95 % 1.4, worst 2.4 mm.

    Raises
    ------
    ValueError
        If one of them is no top view of that size.
    """
    for top in (earlier, later):
        if top.shape != (TOP_HEIGHT, TOP_WIDTH, 3) or top.dtype != np.uint8:
            raise ValueError(
                f"a top view is uint8 ({TOP_HEIGHT}, {TOP_WIDTH}, 3), not {top.dtype} {top.shape}"
            )
    first, second = contrast(earlier), contrast(later)
    straight = _found(first, second)
    if straight.is_sure:
        return Alignment(matrix=straight.matrix, turned=False, error_mm=straight.error_mm)
    turned = _found(first, np.ascontiguousarray(second[::-1, ::-1]))
    is_turned = turned.peak > max(LEAST_TURNED_PEAK, CLEARLY * straight.peak)
    if is_turned and turned.is_sure:
        return Alignment(matrix=turned_round(turned.matrix), turned=True, error_mm=turned.error_mm)
    return Alignment(matrix=None, turned=is_turned, error_mm=None, reason=Reason.NOTHING_STAYED)


def moved(matrix: Affine, x_mm: float, y_mm: float) -> tuple[float, float]:
    """Where a point of the earlier top view lies in the later one, mm."""
    (a, b, c), (d, e, f) = matrix
    return a * x_mm + b * y_mm + c, d * x_mm + e * y_mm + f


def turned_round(matrix: Affine) -> Affine:
    """The same map, then a half turn about the middle of the tray."""
    (a, b, c), (d, e, f) = matrix
    return (-a, -b, LONG_MM - c), (-d, -e, SHORT_MM - f)


def in_own_mm(matrix: Affine, inner_mm: tuple[float, float]) -> Affine:
    """The same map for places in mm of a tray whose inner area has these sides, long and short."""
    across, down = inner_mm[0] / LONG_MM, inner_mm[1] / SHORT_MM
    (a, b, c), (d, e, f) = matrix
    return (a, b * across / down, c * across), (d * down / across, e, f * down)


# --- one fit


@dataclass(frozen=True, slots=True, kw_only=True)
class _Fit:
    """Shift (2) px, scale, turn, stretch, shear about the middle; standard error of the worst corner."""

    values: Points
    spread_mm: float
    share: float  # of places that agree
    peak: float

    @property
    def error_mm(self) -> float:
        return TIMES * self.spread_mm

    @property
    def is_sure(self) -> bool:
        return self.peak > LEAST_PEAK and self.share > LEAST_SHARE and self.error_mm < MOST_ERROR_MM

    @property
    def matrix(self) -> Affine:
        """In mm from the top left corner."""
        linear, shift = _linear(self.values), self.values[:2]
        offset = (MIDDLE_PX + shift - linear @ MIDDLE_PX) / PX_PER_MM
        (a, b), (d, e) = linear.tolist()
        return (a, b, float(offset[0])), (d, e, float(offset[1]))


def _found(first: Picture, second: Picture) -> _Fit:
    """A first fit, then one from its end: places that lie on each other already correlate better."""
    places = correlated(first, second)
    shared = places.shared()
    rough = _fit(places, _values_of(shared), np.zeros(6), FIRST_REACH_PX, shared.peak)
    if shared.peak <= LEAST_PEAK:
        return rough
    again = correlated(first, _laid_back(second, rough.values))
    return _fit(again, rough.values, rough.values, REACH_PX, shared.peak)


def _values_of(shared: Shared) -> Points:
    return np.array([*shared.shift, shared.scale, shared.turn, 0.0, 0.0])


def _laid_back(second: Picture, values: Points) -> Picture:
    """The later picture where the earlier one has it, by a map so far."""
    linear = _linear(values)
    middle = MIDDLE_PX - 0.5  # OpenCV counts from pixel centres
    place = np.column_stack([linear, middle + values[:2] - linear @ middle])
    size = (second.shape[1], second.shape[0])
    flags = cv2.INTER_LINEAR | cv2.WARP_INVERSE_MAP
    return np.asarray(cv2.warpAffine(second, place, size, flags=flags), np.float32)


def _fit(places: Places, start: Points, laid_by: Points, reach_px: int, peak: float) -> _Fit:
    """The map on which most places agree, near `start`; the pictures are laid on each other by `laid_by`."""
    design = _design(places.from_middle)
    expected = (design @ (start - laid_by)).reshape(-1, 2)
    shifts = places.shifts(expected, reach_px).ravel() + design @ laid_by
    values, told, share = _agreed(design, shifts, start, float(2 * reach_px + 1) ** 2)
    corners = _design(np.array([(x, y) for x in (-1, 1) for y in (-1, 1)]) * (MIDDLE_PX - 30))
    each = corners.reshape(4, 2, 6)
    spread = np.sqrt(np.einsum("nij,jk,nik->n", each, np.linalg.inv(told), each).max())
    return _Fit(values=values, spread_mm=float(spread) / PX_PER_MM, share=share, peak=peak)


def _agreed(design: Points, shifts: Points, start: Points, area: float) -> tuple[Points, Points, float]:
    """Values on which places agree, what is told of them (inverse covariance), the share that agrees.

    A shift is one of those that agree, scattered by a normal distribution, or lies anywhere in `area` px2.
    """
    prior = np.diag([0.0, 0.0, *(1 / np.square(USUAL))])
    values, scatter, share = start.copy(), COARSEST_PX, 0.5
    for _ in range(ROUNDS):
        off = np.square((shifts - design @ values).reshape(-1, 2)).sum(axis=1)
        agree = share * np.exp(-off / (2 * scatter**2)) / (2 * np.pi * scatter**2)
        chance = agree / (agree + (1 - share) / area)
        share = float(np.clip(chance.mean(), 0.05, 0.98))
        within = float((chance * off).sum() / (2 * chance.sum() + 1e-9))
        scatter = float(np.clip(np.sqrt(within), FINEST_PX, COARSEST_PX))
        weight = np.repeat(chance, 2) / (scatter**2 * ALIKE)
        told = design.T @ (design * weight[:, None]) + prior
        told[:2, :2] += 1e-9 * np.eye(2)
        values = np.asarray(np.linalg.solve(told, design.T @ (weight * shifts)), np.float64)
    return values, np.asarray(told, np.float64), share


def _design(points: Points) -> Points:
    """How each value moves each point (x, y) from the middle: (2 n, 6)."""
    x, y = points.T
    none, one = np.zeros(len(points)), np.ones(len(points))
    across = np.column_stack([one, none, x, -y, x, y])
    down = np.column_stack([none, one, y, x, -y, x])
    return np.stack([across, down], axis=1).reshape(-1, 6)


def _linear(values: Points) -> Points:
    """(2, 2): points from the middle before the shift."""
    scale, turn, stretch, shear = values[2:]
    return np.array([[1 + scale + stretch, shear - turn], [shear + turn, 1 + scale - stretch]])
