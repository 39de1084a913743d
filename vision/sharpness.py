"""Sharpness: how wide an edge that should be sharp is.

In    a grey picture, or a photo with the tray's corners and their scale
Out   Laplacian variance; the 10-90 % rise of the best edges, mm; how much a moving hand has smeared
Not   whether that is good enough (`light.py`)

The Laplacian variance tells more about what is in the picture than about the lens: bare paper has little,
grass has much. So it is only reported. The width of the strongest edges, of rim, cards and leaves alike,
hardly depends on what is there. A hand that moved far leaves streaks, whose sides are sharp again: those
are told by slopes that are steep across the way and flat along it.
"""

import math

import cv2
import numpy as np
from numpy.typing import NDArray

from vision.photo import Photo
from vision.topview import PX_PER_MM, TopView, tray_quad

__all__ = ["edge_rise_mm", "edge_sigma_px", "laplacian_variance", "smear"]

RISE_PER_SIGMA = 2.5631  # from 10 to 90 % of a step blurred by a Gaussian
AROUND = 1.15  # rim and the bench beside it give edges even where the tray is bare
AGAIN_PX = 1.0  # sd of the blur that is added
LEAST_SIGMA_PX = 0.3  # a pixel's own width: nothing sharper can be told
OWN_SQUARE_PX = 1 / 3  # variance of the two pixels over which a slope is taken
STRONGEST = 0.004  # share of pixels, of each direction, that count as edges
LEAST_EDGES = 60
LEAST_OF_STEEPEST = 0.15  # corners and shading have gentler slopes than edges that a moving hand has blurred
LEAST_CONTRAST = 6.0  # codes per px: a weaker gradient is noise
TAN_22 = math.tan(math.pi / 8)
WAYS = 8  # in which slopes are compared, 22.5 degrees apart
STEEP = 0.99  # share of the slopes one way: a few rims and wires do not count

Picture = NDArray[np.float32]


def laplacian_variance(grey: NDArray[np.uint8]) -> float:
    """Population variance of the Laplacian with the kernel of four neighbours, in squared codes.

    References
    ----------
    Pech-Pacheco, J. L. et al. (2000) Diatom autofocusing in brightfield microscopy. ICPR.
    """
    _, deviation = cv2.meanStdDev(cv2.Laplacian(grey, cv2.CV_16S, ksize=1))
    return float(deviation[0, 0] ** 2)


def edge_rise_mm(photo: Photo, top: TopView) -> float | None:
    """10-90 % rise of the best edges on the tray and close around it, mm; None where there are none.

    Measured at 2 px/mm, where a sharp photo has about 0.7 mm: finer blur does not reach the top view.
    """
    quad = tray_quad(top, AROUND)
    width, height = photo.size_stored
    left, upper = np.clip(np.floor(quad.min(axis=0)), 0, (width - 1, height - 1)).astype(int)
    right, lower = np.clip(np.ceil(quad.max(axis=0)), (left + 1, upper + 1), (width, height)).astype(int)
    part = photo.pixels[upper:lower, left:right]
    grey = np.asarray(cv2.cvtColor(part, cv2.COLOR_RGB2GRAY), np.uint8)
    finer = top.photo_px_per_mm / PX_PER_MM
    if finer > 1:
        size = (max(1, round(part.shape[1] / finer)), max(1, round(part.shape[0] / finer)))
        grey = np.asarray(cv2.resize(grey, size, interpolation=cv2.INTER_AREA), np.uint8)
    sigma = edge_sigma_px(grey)
    return None if sigma is None else RISE_PER_SIGMA * sigma / min(top.photo_px_per_mm, PX_PER_MM)


def edge_sigma_px(grey: NDArray[np.uint8]) -> float | None:
    """Blur of the strongest edges as the sd of a Gaussian, px; None where there are no edges.

    An edge that is blurred once more by a known amount loses the more of its slope the sharper it was
    (Zhuo & Sim 2011, Defocus map estimation from a single image, Pattern Recognition 44; from memory). Taken
    for four directions apart, and the worst of them told: a hand that moves blurs across its way only.
    """
    across, down = _slopes(grey)
    slope = np.sqrt(across * across + down * down)  # cv2.magnitude rounds by the address
    steep = slope >= LEAST_CONTRAST
    if np.count_nonzero(steep) < LEAST_EDGES:
        return None
    blurred = _slopes(np.asarray(cv2.GaussianBlur(grey, (0, 0), AGAIN_PX), np.uint8))
    slopes, again = slope[steep], np.hypot(*(part[steep] for part in blurred))
    least = LEAST_OF_STEEPEST * float(np.partition(slopes, -LEAST_EDGES)[-LEAST_EDGES])
    widths = []
    for one in _directions(across, down):
        mine = one[steep] & (slopes >= least)
        widths.append(
            _width(slopes[mine], again[mine], max(LEAST_EDGES, int(STRONGEST * np.count_nonzero(one))))
        )
    return max((width for width in widths if width is not None), default=None)


def smear(grey: NDArray[np.uint8]) -> float | None:
    """How many times steeper slopes are one way than another; None where there are no edges.

    Shoots and media have slopes every way: 1.04 in the middle of 248 rendered top views at 2 px/mm, 1.29 at
    most, where blades of wheatgrass lie one way. Moved by 4 mm 122 of 126 pictures of them had over 1.5.
    Ribs and rows have slopes one way, too, and none of their edges is wide (`edge_rise_mm`).
    """
    across, down = (slope[::2, ::2].ravel() for slope in _slopes(grey))
    rank = int(STEEP * (across.size - 1))
    steep = []
    for way in (math.pi * number / WAYS for number in range(WAYS)):
        slopes = np.abs(np.float32(math.cos(way)) * across + np.float32(math.sin(way)) * down)
        slopes.partition(rank)
        steep.append(float(slopes[rank]))
    return max(steep) / max(min(steep), 1 / LEAST_CONTRAST) if max(steep) >= LEAST_CONTRAST else None


def _slopes(grey: NDArray[np.uint8]) -> tuple[Picture, Picture]:
    """Codes per px across and down, at every second pixel of every second row: edges are longer than that."""
    across, down = cv2.spatialGradient(grey)  # Sobel 3 x 3, int16, eight times the slope
    eighth = np.float32(1 / 8)
    return np.multiply(across[::2, ::2], eighth), np.multiply(down[::2, ::2], eighth)


def _directions(across: Picture, down: Picture) -> tuple[NDArray[np.bool_], ...]:
    """Four masks: slopes that run across, down, and along either diagonal, 45 degrees each."""
    wide, high = np.abs(across), np.abs(down)
    level, upright = high <= TAN_22 * wide, wide < TAN_22 * high
    alike = (across > 0) == (down > 0)
    return level, upright, ~(level | upright) & alike, ~(level | upright) & ~alike


def _width(slope: Picture, again: Picture, count: int) -> float | None:
    """The middle blur of the `count` strongest edges of one direction, px."""
    if slope.size < LEAST_EDGES:
        return None
    if slope.size > count:
        strongest = np.argpartition(slope, -count)[-count:]
        slope, again = slope[strongest], again[strongest]
    loss = float(np.median(slope / np.maximum(again, 0.125)))
    square = AGAIN_PX**2 / max(loss * loss - 1.0, 1e-4) - OWN_SQUARE_PX
    return math.sqrt(max(square, LEAST_SIGMA_PX**2))
