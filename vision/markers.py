"""Markers: station cards and tray tag in a grey photo -> their numbers and corners.

In    grey photo, uint8 (rows, columns), as stored
Out   `Marks`: corners of the cards 0 to 3 and of the tag, in edge coordinates, px; bit patterns for printing
Not   where the tray is (`station.py`); marks partly under leaves (`covered.py`, which is asked from here)

All marks are AprilTag 36h11 (Olson 2011; Wang & Olson 2016), as OpenCV's `aruco` carries them. The search
begins on a small picture and goes to larger ones only while marks are missing; corners are then refined on
the full one. At most two of 36 bits are corrected: a random square is then taken for a mark once in 40,000.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from itertools import product

import cv2
import numpy as np
from numpy.typing import NDArray

from vision.covered import covered_card, covered_tag, lone_cards
from vision.patterns import MODULES, Grey, bits, dictionary
from vision.photo import Point
from vision.pose import Pose, Seen, first_poses, usual_focal
from vision.posefit import best_fit
from vision.traytype import TAG_HEIGHT_MM, TAG_MARK_MM, TrayType

__all__ = ["CARDS", "TAGS", "Grey", "Marks", "Quad", "Tag", "bits", "find_marks"]

Quad = tuple[Point, Point, Point, Point]  # clockwise from the mark's own top left, edge coordinates, px

Way = tuple[int, int | None, int]  # shrinking, threshold window (None: OpenCV's own three), depth

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
NEAR, LEAST_LOOK_PX = 2.0, 32  # a missing card is looked for so many of its sizes around its place
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
    rivals: tuple[int, ...] = ()
    """Numbers of tags that all hang on this tray's rim: which of them is the tray's own nobody can say."""

    @property
    def number(self) -> int | None:
        """The number that names the tray; None where no tag was read, or more than one."""
        return None if self.tag is None or self.rivals else self.tag.number

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
    search = _Search(grey)
    first, *ways = _ladder(max(size))
    search.look(first)
    marks = _one_station(search.found, size, tray, strange=False)
    if not marks.complete and len(marks.cards) >= 2 and marks.tag is not None:
        marks = _with_covered(grey, _with_near(search, ways, marks, tray), size, tray)
    if marks.complete:
        return marks
    for way in ways:
        if search.is_complete and _one_station(search.found, size, tray, strange=False).tag is not None:
            break
        search.look(way)
    return _with_covered(grey, _one_station(search.found, size, tray, strange=True), size, tray)


def _with_near(search: "_Search", ways: Sequence[Way], marks: Marks, tray: TrayType) -> Marks:
    """The marks and those cards in the open that are seen only closer, looked at where they must be."""
    cards = dict(marks.cards)
    pose = _first_pose(cards, search.size, tray)
    for number, way in product(CARDS, ways):
        if pose is not None and number not in cards:
            quads = search.look(way, near=pose.project(tray.card_quad(number)))
            cards |= {n: quad for n, quad in quads if n == number}
    return replace(marks, cards=cards)


def _with_covered(grey: Grey, marks: Marks, size: tuple[int, int], tray: TrayType) -> Marks:
    """The marks and those partly under leaves, looked for where they must be."""
    cards, tag = dict(marks.cards), marks.tag
    if not cards:
        cards = {number: as_quad(corners) for number, corners in lone_cards(grey).items()}
    for reach in (25.0, 12.0):
        pose = None if len(cards) == len(CARDS) and tag is not None else _pose(cards, tag, size, tray)
        if pose is None:
            break
        for number in CARDS:
            corners = covered_card(grey, pose, number, tray, reach) if number not in cards else None
            if corners is None:
                continue
            cards[number] = as_quad(corners)
            if tag is None or len(cards) < len(CARDS):  # something is still to be looked for
                pose = _pose(cards, tag, size, tray) or pose
        if tag is None and (found := covered_tag(grey, pose, tray)) is not None:
            tag = Tag(number=found[0], quad=as_quad(found[1]))
    return replace(marks, cards=cards, tag=tag)


def _pose(cards: Mapping[int, Quad], tag: Tag | None, size: tuple[int, int], tray: TrayType) -> Pose | None:
    """Where the camera probably was, for a search; the focal length is that of most phones."""
    seen = _seen(cards, tray)
    if tag is not None:
        seen.append(Seen(corners=np.array(tag.quad), quad_mm=None))
    fit = best_fit(seen, size, None)
    return None if fit is None else fit.pose


def _first_pose(cards: Mapping[int, Quad], size: tuple[int, int], tray: TrayType) -> Pose | None:
    """The same from the cards alone and unrefined: good to a small part of a card, at no cost."""
    focal, _ = usual_focal(size, None)
    return next(iter(first_poses(_seen(cards, tray), size, focal)), None)


def _seen(cards: Mapping[int, Quad], tray: TrayType) -> list[Seen]:
    return [Seen(corners=np.array(quad), quad_mm=tray.card_quad(number)) for number, quad in cards.items()]


def _ladder(longest: int) -> Iterator[Way]:
    """The ways of a search, in their order."""
    scales = [scale for scale in (4, 2, 1) if longest / scale >= LEAST_SIDE_PX][:2]
    for scale in scales:
        yield scale, THRESHOLD_WINDOW_PX, 7
    last = scales[-1] if scales else 1
    yield last, DEEP_WINDOW_PX, DEEP  # leaves count as white: they do not reach so deep
    yield last, None, 7


class _Search:
    """A search for marks in the open, which goes on in further ways."""

    def __init__(self, grey: Grey) -> None:
        self.found: dict[int, list[Quad]] = {}
        self.size = (grey.shape[1], grey.shape[0])
        self._grey, self._small = grey, {1: grey}

    @property
    def is_complete(self) -> bool:
        """Four cards and a tag, or more."""
        return all(number in self.found for number in CARDS) and len(self.found) > len(CARDS)

    def look(self, way: Way, near: NDArray[np.float64] | None = None) -> list[tuple[int, Quad]]:
        """Look in one way, everywhere or near some corners (4, 2); what was not seen before."""
        scale, window, constant = way
        picture, corner = self._part(scale, near)
        if min(picture.shape) < LEAST_LOOK_PX:
            return []
        corners, numbers, _ = _detector(window, constant).detectMarkers(picture)
        news: list[tuple[int, Quad]] = []
        for number, quad in zip(() if numbers is None else numbers.ravel(), corners, strict=True):
            n, places = int(number), (np.asarray(quad, np.float64).reshape(4, 2) + corner + 0.5) * scale
            if (n in CARDS or n in TAGS) and not self._knows(n, places):
                news.append((n, as_quad(_refined(self._grey, places))))
                self.found.setdefault(n, []).append(news[-1][1])
        return news

    def _part(self, scale: int, near: NDArray[np.float64] | None) -> tuple[Grey, NDArray[np.int64]]:
        """The shrunk picture, or the part of it near some corners; where it begins (x, y)."""
        whole = self._shrunk(scale)
        if near is None:
            return whole, np.zeros(2, np.int64)
        middle, reach = near.mean(axis=0) / scale, NEAR * float(np.ptp(near, axis=0).max()) / scale
        (left, top), (right, bottom) = np.clip([middle - reach, middle + reach], 0, whole.shape[::-1]).astype(
            int
        )
        return np.ascontiguousarray(whole[top:bottom, left:right]), np.array([left, top])

    def _shrunk(self, scale: int) -> Grey:
        if scale not in self._small:
            rows, columns = self._grey.shape[0] // scale, self._grey.shape[1] // scale
            whole = self._grey[: rows * scale, : columns * scale]
            small = cv2.resize(whole, (columns, rows), interpolation=cv2.INTER_AREA)
            self._small[scale] = np.asarray(small, np.uint8)
        return self._small[scale]

    def _knows(self, number: int, places: NDArray[np.float64]) -> bool:
        """A mark that was seen already at a smaller size is the same one, and not looked at again."""
        middle, side = places.mean(axis=0), np.linalg.norm(places[0] - places[2])
        return any(
            np.linalg.norm(np.mean(other, axis=0) - middle) < side / 2 for other in self.found.get(number, ())
        )


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


def _one_station(
    found: Mapping[int, list[Quad]], size: tuple[int, int], tray: TrayType, *, strange: bool
) -> Marks:
    """One quad a number: of all ways to choose, the one that lies most like a station.

    `strange`: where no tag hangs here as it should, one at the rim is taken that may be a neighbour's.
    """
    numbers = sorted(number for number in found if number in CARDS)
    ways = [dict(zip(numbers, quads, strict=True)) for quads in product(*(found[n] for n in numbers))][
        :MOST_WAYS
    ]
    cards = min(ways, key=lambda way: _misfit(way, tray)) if len(ways) > 1 else ways[0]
    tags = [Tag(number=n, quad=quad) for n, quads in found.items() if n in TAGS for quad in quads]
    pose = _first_pose(cards, size, tray)
    rivals: tuple[int, ...] = ()
    if pose is not None and len(cards) >= 2:
        tags = [tag for tag in tags if _at_the_rim(tag, pose, tray)]
        own = [tag for tag in tags if _hangs_here(tag, pose)]
        rivals, tags = _rivals(own), own if own or not strange else tags
    middle = np.array(size) / 2 if pose is None else pose.project(np.zeros((1, 3)))[0]
    tags.sort(key=lambda tag: float(np.linalg.norm(np.mean(tag.quad, axis=0) - middle)))
    return Marks(cards=cards, tag=tags[0] if tags else None, rivals=rivals)


def _rivals(own: Sequence[Tag]) -> tuple[int, ...]:
    """Numbers of the tags that hang on this rim, where there are several."""
    numbers = sorted({tag.number for tag in own})
    return tuple(numbers) if len(numbers) > 1 else ()


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


def _hangs_here(tag: Tag, pose: Pose) -> bool:
    """Whether a tag at the rim is upright for who stands beside it; one of a neighbour is upside down."""
    back = np.linalg.inv(pose.plane(TAG_HEIGHT_MM))
    first, second, third, fourth = cv2.perspectiveTransform(np.array([tag.quad]), back)[0]
    upwards = (first + second - third - fourth)[1]
    return bool(upwards * (first + second + third + fourth)[1] < 0)


def _detector(window: int | None, constant: int) -> cv2.aruco.ArucoDetector:
    known, parameters = dictionary(), cv2.aruco.DetectorParameters()
    parameters.errorCorrectionRate = (CORRECTED_BITS + 0.01) / known.maxCorrectionBits
    parameters.adaptiveThreshConstant = constant
    if window is not None:
        parameters.adaptiveThreshWinSizeMin = parameters.adaptiveThreshWinSizeMax = window
    return cv2.aruco.ArucoDetector(known, parameters)
