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
from itertools import product

import cv2
import numpy as np
from numpy.typing import NDArray

from vision.covered import covered_card, covered_tag, lone_cards
from vision.patterns import MODULES, Grey, bits, dictionary
from vision.photo import Point
from vision.pose import Pose, Seen, first_poses, fit_pose, usual_focal
from vision.traytype import TAG_HEIGHT_MM, TAG_MARK_MM, TrayType

__all__ = ["CARDS", "TAGS", "Grey", "Marks", "Quad", "Tag", "bits", "find_marks"]

Quad = tuple[Point, Point, Point, Point]  # clockwise from the mark's own top left, edge coordinates, px

CARDS = range(4)
TAGS = range(10, 587)
CORRECTED_BITS = 2
THRESHOLD_WINDOW_PX = 13
DEEP_WINDOW_PX, DEEP = 71, 60
TAG_REACH_MM, TAG_SLACK_MM = (
    100.0,
    25.0,
)  # a tag lies at most so far outside the rim; what a first pose is off
MOST_WAYS = 64
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


def find_marks(grey: Grey, tray: TrayType | None = None) -> Marks:
    """Station cards and tray tag in a photo that may be turned by any angle.

    Where neighbouring stations are in the picture, the set of marks is taken that lies like one station.
    """
    tray = tray or TrayType()
    size = (grey.shape[1], grey.shape[0])
    found: dict[int, list[Quad]] = {}
    for scale, window, constant in _ladder(max(size)):
        for number, quad in _search(grey, scale, window, constant):
            _add(found, number, quad)
        if _complete(found):
            break
    marks = _one_station(found, size, tray)
    return marks if marks.complete else _with_covered(grey, marks, size, tray)


def _with_covered(grey: Grey, marks: Marks, size: tuple[int, int], tray: TrayType) -> Marks:
    """The marks and those partly under leaves, looked for where they must be."""
    cards = dict(marks.cards)
    if not cards:
        cards = {number: as_quad(corners) for number, corners in lone_cards(grey).items()}
    tag = marks.tag
    for reach in (25.0, 12.0):
        pose = _pose(cards, tag, size, tray)
        if pose is None:
            break
        for number in CARDS:
            corners = covered_card(grey, pose, number, tray, reach) if number not in cards else None
            if corners is not None:
                cards[number] = as_quad(corners)
                pose = _pose(cards, tag, size, tray) or pose
        if tag is None and (found := covered_tag(grey, pose, tray)) is not None:
            tag = Tag(number=found[0], quad=as_quad(found[1]))
    return Marks(cards=cards, tag=tag)


def _pose(cards: Mapping[int, Quad], tag: Tag | None, size: tuple[int, int], tray: TrayType) -> Pose | None:
    """Where the camera probably was, for a search; the focal length is that of most phones."""
    seen = [Seen(corners=np.array(quad), quad_mm=tray.card_quad(number)) for number, quad in cards.items()]
    if tag is not None:
        seen.append(Seen(corners=np.array(tag.quad), quad_mm=None))
    focal, spread = usual_focal(size, None)
    fits = [fit_pose(seen, start, spread) for start in first_poses(seen, size, focal)]
    return min(fits, key=lambda fit: fit.misfit).pose if fits else None


def _ladder(longest: int) -> Iterator[tuple[int, int | None, int]]:
    """Shrinking, threshold window (None: OpenCV's own three) and depth, in the order of the search."""
    scales = [scale for scale in (4, 2, 1) if longest / scale >= LEAST_SIDE_PX][:2]
    for scale in scales:
        yield scale, THRESHOLD_WINDOW_PX, 7
    last = scales[-1] if scales else 1
    yield last, DEEP_WINDOW_PX, DEEP  # leaves count as white: they do not reach so deep
    yield last, None, 7


def _complete(found: Mapping[int, list[Quad]]) -> bool:
    return all(number in found for number in CARDS) and len(found) > len(CARDS)


def _search(grey: Grey, scale: int, window: int | None, constant: int) -> list[tuple[int, Quad]]:
    small = grey
    if scale > 1:
        rows, columns = grey.shape[0] // scale, grey.shape[1] // scale
        small = np.asarray(
            cv2.resize(
                grey[: rows * scale, : columns * scale], (columns, rows), interpolation=cv2.INTER_AREA
            ),
            np.uint8,
        )
    corners, numbers, _ = _detector(window, constant).detectMarkers(small)
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


def _one_station(found: Mapping[int, list[Quad]], size: tuple[int, int], tray: TrayType) -> Marks:
    """One quad a number: of all ways to choose, the one that lies most like a station."""
    numbers = sorted(number for number in found if number in CARDS)
    ways = [dict(zip(numbers, quads, strict=True)) for quads in product(*(found[n] for n in numbers))][
        :MOST_WAYS
    ]
    cards = min(ways, key=lambda way: _misfit(way, tray)) if len(ways) > 1 else ways[0]
    tags = [Tag(number=n, quad=quad) for n, quads in found.items() if n in TAGS for quad in quads]
    pose = _pose(cards, None, size, tray)
    if pose is not None and len(cards) >= 2:
        tags = [tag for tag in tags if _at_the_rim(tag, pose, tray)]
    middle = np.array(size) / 2 if pose is None else pose.project(np.zeros((1, 3)))[0]
    tags.sort(key=lambda tag: float(np.linalg.norm(np.mean(tag.quad, axis=0) - middle)))
    return Marks(cards=cards, tag=tags[0] if tags else None)


def _misfit(cards: Mapping[int, Quad], tray: TrayType) -> float:
    """How little some cards look like one station, px: rests of a homography, or sizes that differ."""
    quads = np.concatenate([np.array(quad) for quad in cards.values()])
    places = np.concatenate([tray.card_quad(number)[:, :2] for number in cards])
    matrix, _ = cv2.findHomography(places, quads)
    if matrix is None:
        return float("inf")
    rests = cv2.perspectiveTransform(places[None], matrix)[0] - quads
    return float(np.sqrt((rests**2).mean()))


def _at_the_rim(tag: Tag, pose: Pose, tray: TrayType) -> bool:
    """A tag of this tray lies along a long side and has its size there; others are of neighbours."""
    back = np.linalg.inv(pose.plane(TAG_HEIGHT_MM))
    corners = cv2.perspectiveTransform(np.array([tag.quad]), back)[0]
    side = float(np.linalg.norm(corners - np.roll(corners, 1, axis=0), axis=1).mean())
    x, y = np.abs(corners.mean(axis=0))
    rim = tray.outer_short_mm / 2
    near = rim - TAG_SLACK_MM <= y <= rim + TAG_REACH_MM + TAG_SLACK_MM
    return bool(0.8 < side / TAG_MARK_MM < 1.25 and near and x <= tray.outer_long_mm / 2 + TAG_SLACK_MM)


def _detector(window: int | None, constant: int) -> cv2.aruco.ArucoDetector:
    known, parameters = dictionary(), cv2.aruco.DetectorParameters()
    parameters.errorCorrectionRate = (CORRECTED_BITS + 0.01) / known.maxCorrectionBits
    parameters.adaptiveThreshConstant = constant
    if window is not None:
        parameters.adaptiveThreshWinSizeMin = parameters.adaptiveThreshWinSizeMax = window
    return cv2.aruco.ArucoDetector(known, parameters)
