"""Alignment: two top views of one tray, a day or so apart -> how the later lies on the earlier.

In    two top views at 2 px/mm
Out   `Alignment`: the affine map in mm, or None with a `Reason`; whether the tray was put in turned round
Not   what changed (`change.py`), where the tray lies in the photo (`station.py`)

The rim is laid on the rim already, to about 1 mm. But the medium lies centimetres lower and leaves rise
above it: seen from another spot they move by up to a centimetre against the rim. So what is looked for is
the surface that stays, whichever that is. Places all over the tray are compared by phase correlation
(Kuglin & Hines 1975, The phase correlation image alignment method) on local contrast, in which light and
exposure cancel out; an affine map is then fitted to the places that agree (Fischler & Bolles 1981, Random
sample consensus; both from memory). A canopy that closes from one day to the next leaves nothing that stays:
then no map is given.
"""

from dataclasses import dataclass

import cv2
import numpy as np
from numpy.typing import NDArray

from vision.reason import Reason
from vision.tissue import Pixels
from vision.topview import LONG_MM, PX_PER_MM, SHORT_MM, TOP_HEIGHT, TOP_WIDTH

__all__ = ["AS_PLACED", "Affine", "Alignment", "align", "moved", "turned_round"]

Affine = tuple[tuple[float, float, float], tuple[float, float, float]]
Picture = NDArray[np.float32]
Points = NDArray[np.float64]

AS_PLACED: Affine = ((1.0, 0.0, 0.0), (0.0, 1.0, 0.0))

SIDE = 128  # of a place that is compared, px: 64 mm
ROWS, COLUMNS = 7, 15  # of places, overlapping by half and more
REACH_PX = 12  # a place moves no further than that from what all places have in common
FINEST = 0.12  # cycles/px: finer patterns are noise and differ between two photos
AGREE_PX = 2.0  # 1 mm
LEAST, FULL = 0.5, 1.0  # share of places that agree: nothing is told, all is told; chance gives 0.25
LEAST_PEAK = 7.5  # of the correlation over all places, in standard deviations; unlike pictures reach that
LEAST_TURNED_PEAK = 9.0  # the tray's walls look alike both ways
CLEARLY = 1.5  # a turned tray has to match so many times better
SURE = 0.5


@dataclass(frozen=True, slots=True, kw_only=True)
class Alignment:
    """How the later top view lies on the earlier one."""

    matrix: Affine | None
    """Earlier (x, y) mm -> later (x, y) mm, from the top left corner; None where nothing sure is found."""
    turned: bool
    """The tray stands turned by 180 degrees; the matrix holds that too. May be known without a matrix."""
    confidence: float
    """0-1, from the share of places that agree; a half and more is sure."""
    reason: Reason | None = None

    @property
    def placed(self) -> Affine:
        """The matrix, or the rim laid on the rim where there is none."""
        return self.matrix or (turned_round(AS_PLACED) if self.turned else AS_PLACED)

    @property
    def is_sure(self) -> bool:
        """Whether single leaves may be compared."""
        return self.matrix is not None


def align(earlier: Pixels, later: Pixels) -> Alignment:
    """Lay the later top view on the earlier one; both uint8 (508, 1016, 3).

    On rendered trays, disturbed by up to 8 mm and 1 degree: median 0.1, worst 0.3 mm. From one day to the
    next: median 0.6, 95 % 1.4, worst 2.9 mm; none is given while a canopy closes (days 5 to 7 there).

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
    first, second = _contrast(earlier), _contrast(later)
    straight = _found(first, second)
    if straight.is_sure:
        return Alignment(matrix=_in_mm(straight.matrix), turned=False, confidence=straight.confidence)
    turned = _found(first, np.ascontiguousarray(second[::-1, ::-1]))
    is_turned = turned.peak > max(LEAST_TURNED_PEAK, CLEARLY * straight.peak)
    if is_turned and turned.is_sure:
        matrix = turned_round(_in_mm(turned.matrix))
        return Alignment(matrix=matrix, turned=True, confidence=turned.confidence)
    return Alignment(
        matrix=None,
        turned=is_turned,
        confidence=turned.confidence if is_turned else straight.confidence,
        reason=Reason.NOTHING_STAYED,
    )


def moved(matrix: Affine, x_mm: float, y_mm: float) -> tuple[float, float]:
    """Where a point of the earlier top view lies in the later one, mm."""
    (a, b, c), (d, e, f) = matrix
    return a * x_mm + b * y_mm + c, d * x_mm + e * y_mm + f


def turned_round(matrix: Affine) -> Affine:
    """The same map, then a half turn about the middle of the tray."""
    (a, b, c), (d, e, f) = matrix
    return (-a, -b, LONG_MM - c), (-d, -e, SHORT_MM - f)


# --- one fit


@dataclass(frozen=True, slots=True, kw_only=True)
class _Fit:
    matrix: Points  # (2, 3), px, edge coordinates
    agreeing: float
    peak: float

    @property
    def confidence(self) -> float:
        share = float(np.clip((self.agreeing - LEAST) / (FULL - LEAST), 0, 1))
        return share if self.peak > LEAST_PEAK else min(share, SURE / 2)

    @property
    def is_sure(self) -> bool:
        return self.confidence >= SURE


def _found(first: Picture, second: Picture) -> _Fit:
    """A rough fit, then one from its end that lets unequal scales in: corners may be set by hand."""
    rough = _fit(first, second)
    half = np.array([[1, 0, 0.5], [0, 1, 0.5], [0, 0, 1.0]])
    whole = np.vstack([rough.matrix, (0, 0, 1)])
    back = np.linalg.inv(half) @ whole @ half  # OpenCV counts from pixel centres
    flags = cv2.INTER_LINEAR | cv2.WARP_INVERSE_MAP
    laid = cv2.warpAffine(second, back[:2], (second.shape[1], second.shape[0]), flags=flags)
    rest = _fit(first, np.asarray(laid, np.float32), sheared=True)
    if rest.confidence < rough.confidence / 2:  # led astray
        return rough
    joined = whole @ np.vstack([rest.matrix, (0, 0, 1)])
    return _Fit(matrix=joined[:2], agreeing=rest.agreeing, peak=rest.peak)


def _fit(first: Picture, second: Picture, sheared: bool = False) -> _Fit:
    surfaces = _correlated(first, second)
    common = surfaces.mean(axis=(0, 1))
    row, column = (int(k) for k in np.unravel_index(int(common.argmax()), common.shape))
    shifts = _peaks(_pooled(surfaces), row, column).reshape(-1, 2)
    places = _places()
    estimate = cv2.estimateAffine2D if sheared else cv2.estimateAffinePartial2D
    matrix, agree = estimate(
        places, places + shifts, method=cv2.RANSAC, ransacReprojThreshold=AGREE_PX, confidence=0.999
    )
    if matrix is None:  # pictures without any pattern
        return _Fit(matrix=np.array(AS_PLACED), agreeing=0.0, peak=0.0)
    peak = float(common.max() / max(float(common.std()), 1e-12))
    return _Fit(matrix=np.asarray(matrix, np.float64), agreeing=float(agree.mean()), peak=peak)


def _contrast(top: Pixels) -> Picture:
    """Local contrast: how far a pixel stands out from its surroundings, against how far others there do."""
    light = np.log(cv2.cvtColor(top, cv2.COLOR_RGB2GRAY).astype(np.float32) + 8)
    fine = cv2.GaussianBlur(light, (0, 0), 0.5 * PX_PER_MM)
    apart = fine - cv2.GaussianBlur(fine, (0, 0), 4 * PX_PER_MM)
    usual = cv2.GaussianBlur(np.abs(apart), (0, 0), 8 * PX_PER_MM)
    return np.asarray(apart / (usual + 0.05), np.float32)


def _starts() -> tuple[list[int], list[int]]:
    rows = np.linspace(0, TOP_HEIGHT - SIDE, ROWS).round().astype(int)
    columns = np.linspace(0, TOP_WIDTH - SIDE, COLUMNS).round().astype(int)
    return rows.tolist(), columns.tolist()


def _places() -> Points:
    """Middles of the places, (n, 2) as (x, y), row by row."""
    rows, columns = _starts()
    return np.array([(x + SIDE / 2, y + SIDE / 2) for y in rows for x in columns], np.float64)


def _spectra(picture: Picture) -> NDArray[np.complex64]:
    rows, columns = _starts()
    bell = np.hanning(SIDE + 2)[1:-1].astype(np.float32)
    window = np.outer(bell, bell)
    tiles = [[picture[y : y + SIDE, x : x + SIDE] * window for x in columns] for y in rows]
    return np.asarray(np.fft.rfft2(np.array(tiles)), np.complex64)


def _correlated(first: Picture, second: Picture) -> Picture:
    """Phase correlation of each place, (ROWS, COLUMNS, SIDE, SIDE); no shift lies in the middle."""
    cross = _spectra(second) * np.conj(_spectra(first))
    cross /= np.abs(cross) + 1e-9
    down, across = np.fft.fftfreq(SIDE)[:, None], np.fft.rfftfreq(SIDE)[None]
    cross *= np.exp(-(down**2 + across**2) / (2 * FINEST**2))
    surfaces = np.fft.irfft2(cross, s=(SIDE, SIDE))
    return np.asarray(np.fft.fftshift(surfaces, axes=(-2, -1)), np.float32)


def _pooled(surfaces: Picture) -> Picture:
    """Each place with its neighbours: they move alike, so what is common to them is no chance."""
    wide = surfaces.reshape(ROWS, COLUMNS, -1)
    pooled = np.empty_like(wide)
    for row in range(ROWS):
        for column in range(COLUMNS):
            near = wide[max(0, row - 1) : row + 2, max(0, column - 1) : column + 2]
            pooled[row, column] = near.mean(axis=(0, 1))
    return pooled.reshape(surfaces.shape)


def _peaks(surfaces: Picture, row: int, column: int) -> Points:
    """Shift of each place, (ROWS, COLUMNS, 2) as (x, y) px, near the peak that all have in common."""
    top, left = max(1, row - REACH_PX), max(1, column - REACH_PX)
    near = surfaces[..., top : min(SIDE - 1, row + REACH_PX + 1), left : min(SIDE - 1, column + REACH_PX + 1)]
    best = near.reshape(ROWS, COLUMNS, -1).argmax(axis=-1)
    down, across = best // near.shape[-1] + top, best % near.shape[-1] + left
    j, k = np.indices(best.shape)
    middle = surfaces[j, k, down, across]
    x = across + _vertex(surfaces[j, k, down, across - 1], middle, surfaces[j, k, down, across + 1])
    y = down + _vertex(surfaces[j, k, down - 1, across], middle, surfaces[j, k, down + 1, across])
    return np.stack([x, y], axis=-1) - SIDE // 2


def _vertex(before: Picture, middle: Picture, after: Picture) -> Points:
    """Where the parabola through three neighbours has its top, -0.5 to 0.5 from the middle one."""
    bend = before - 2 * middle + after
    apex = np.divide(before - after, 2 * bend, out=np.zeros_like(bend), where=np.abs(bend) > 1e-12)
    return np.asarray(np.clip(apex, -0.5, 0.5), np.float64)


def _in_mm(matrix: Points) -> Affine:
    (a, b, c), (d, e, f) = matrix.tolist()
    return (a, b, c / PX_PER_MM), (d, e, f / PX_PER_MM)
