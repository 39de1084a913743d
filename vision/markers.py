"""Markers: station cards and tray tag in a grey photo -> their numbers and corners.

In    grey photo, uint8 (rows, columns), as stored
Out   `Marks`: corners of the cards 0 to 3 and of the tag, in edge coordinates, px; bit patterns for printing
Not   where the tray is (`station.py`); marks partly under leaves (`covered.py`, which is asked from here)

All marks are AprilTag 36h11 (Olson 2011; Wang & Olson 2016), as OpenCV's `aruco` carries them. The search
begins on a small picture and goes to larger ones only while marks are missing; corners are then refined on
the full one. At most two of 36 bits are corrected: a random square is then taken for a mark once in 40,000.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field

import cv2
import numpy as np
from numpy.typing import NDArray

from vision.photo import Point

__all__ = ["CARDS", "TAGS", "Grey", "Marks", "Quad", "Tag", "bits", "find_marks"]

Grey = NDArray[np.uint8]
Quad = tuple[Point, Point, Point, Point]  # clockwise from the mark's own top left, edge coordinates, px

CARDS = range(4)
TAGS = range(10, 587)
MODULES = 8  # a mark's side, black frame included
CORRECTED_BITS = 2
THRESHOLD_WINDOW_PX = 13
LEAST_SIDE_PX = 500  # a smaller picture than this is not searched: no station fits with 3 px a module


@dataclass(frozen=True, slots=True, kw_only=True)
class Tag:
    """The tag of the tray."""

    number: int
    quad: Quad


@dataclass(frozen=True, slots=True, kw_only=True)
class Marks:
    """What was read in one photo."""

    cards: Mapping[int, Quad] = field(default_factory=dict)
    tag: Tag | None = None

    @property
    def complete(self) -> bool:
        """Four cards and a tag."""
        return len(self.cards) == len(CARDS) and self.tag is not None


def bits(number: int) -> NDArray[np.bool_]:
    """(8, 8) pattern of a mark for printing, black frame included; True is black.

    Raises ValueError for a number that 36h11 does not have (0 to 586).
    """
    if not 0 <= number < len(_dictionary().bytesList):
        raise ValueError(f"AprilTag 36h11 has the numbers 0 to 586; got {number}")
    return np.asarray(cv2.aruco.generateImageMarker(_dictionary(), number, MODULES) == 0)


def find_marks(grey: Grey) -> Marks:
    """Station cards and tray tag in a photo that may be turned by any angle.

    Where neighbouring stations are in the picture, the set of marks is taken that lies like one station.
    """
    found: dict[int, list[Quad]] = {}
    for scale, window in _ladder(grey.shape, found):
        for number, quad in _search(grey, scale, window):
            _add(found, number, quad)
        if len(found) > len(CARDS) and all(number in found for number in CARDS):
            break
    return _one_station(found, (grey.shape[1], grey.shape[0]))


def _ladder(shape: tuple[int, ...], found: Mapping[int, list[Quad]]) -> Iterator[tuple[int, int | None]]:
    """Shrinkings to search at, with one threshold window or OpenCV's own three (None).

    Larger pictures cost four times as much each; without a single mark the half size is the end.
    """
    longest = max(shape)
    for scale in (4, 2):
        if longest / scale >= LEAST_SIDE_PX:
            yield scale, THRESHOLD_WINDOW_PX
    if longest / 2 < LEAST_SIDE_PX * 2:
        yield 1, THRESHOLD_WINDOW_PX
        yield 1, None
    elif found:
        yield 2, None
    else:
        yield 2, None


def _search(grey: Grey, scale: int, window: int | None) -> list[tuple[int, Quad]]:
    small = grey
    if scale > 1:
        rows, columns = grey.shape[0] // scale, grey.shape[1] // scale
        small = np.asarray(
            cv2.resize(
                grey[: rows * scale, : columns * scale], (columns, rows), interpolation=cv2.INTER_AREA
            ),
            np.uint8,
        )
    corners, numbers, _ = _detector(window).detectMarkers(small)
    if numbers is None:
        return []
    known = [
        (int(number), (np.asarray(quad, np.float64).reshape(4, 2) + 0.5) * scale)
        for number, quad in zip(numbers.ravel(), corners, strict=True)
        if number in CARDS or number in TAGS
    ]
    return [(number, as_quad(_refined(grey, quad))) for number, quad in known]


def _refined(grey: Grey, quad: NDArray[np.float64]) -> NDArray[np.float64]:
    """Corners to a part of a pixel, in windows of half a module of the full picture."""
    module = float(np.linalg.norm(quad - np.roll(quad, 1, axis=0), axis=1).min()) / MODULES
    reach = max(3, round(module / 2))
    left, top = np.floor(quad.min(axis=0)).astype(int) - 2 * reach - 4
    right, bottom = np.ceil(quad.max(axis=0)).astype(int) + 2 * reach + 4
    left, top = max(0, left), max(0, top)
    crop = np.ascontiguousarray(grey[top:bottom, left:right])
    points = (quad - (left, top) - 0.5).astype(np.float32).reshape(-1, 1, 2)
    ends = (cv2.TERM_CRITERIA_EPS | cv2.TERM_CRITERIA_MAX_ITER, 30, 0.01)
    better = cv2.cornerSubPix(crop, points, (reach, reach), (-1, -1), ends).reshape(4, 2)
    better = better.astype(np.float64) + (left, top) + 0.5
    return better if np.abs(better - quad).max() <= 2 * module else quad


def as_quad(corners: NDArray[np.float64]) -> Quad:
    """Four points (4, 2) as a `Quad`."""
    first, second, third, fourth = ((float(x), float(y)) for x, y in corners)
    return first, second, third, fourth


def _add(found: dict[int, list[Quad]], number: int, quad: Quad) -> None:
    """A mark that was seen already at a smaller size is the same one, and not looked at again."""
    middle, side = np.mean(quad, axis=0), np.linalg.norm(np.subtract(quad[0], quad[2]))
    for other in found.get(number, ()):
        if np.linalg.norm(np.mean(other, axis=0) - middle) < side / 2:
            return
    found.setdefault(number, []).append(quad)


def _one_station(found: Mapping[int, list[Quad]], size: tuple[int, int]) -> Marks:
    cards = {number: quads[0] for number, quads in found.items() if number in CARDS}
    tags = [
        Tag(number=number, quad=quad) for number, quads in found.items() if number in TAGS for quad in quads
    ]
    return Marks(cards=cards, tag=tags[0] if tags else None)


def _dictionary() -> cv2.aruco.Dictionary:
    return cv2.aruco.getPredefinedDictionary(cv2.aruco.DICT_APRILTAG_36h11)


def _detector(window: int | None) -> cv2.aruco.ArucoDetector:
    dictionary, parameters = _dictionary(), cv2.aruco.DetectorParameters()
    parameters.errorCorrectionRate = (CORRECTED_BITS + 0.01) / dictionary.maxCorrectionBits
    if window is not None:
        parameters.adaptiveThreshWinSizeMin = parameters.adaptiveThreshWinSizeMax = window
    return cv2.aruco.ArucoDetector(dictionary, parameters)
