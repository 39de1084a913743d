"""Covered marks: cards and tag partly under leaves, found because one knows where they must be.

In    grey photo; poses of the camera from the marks that were read in the open; or nothing at all
Out   corners of further cards, number and corners of the tag
Not   marks in the open (`markers.py`)

A leaf over a mark's black frame hides the mark from a search for squares, while most of its modules can still
be seen. A card's pattern is known: it is enough that it lies where the pose says. The tag's number is not
known: modules under a leaf are left out, and a number is believed only if no other comes near (36h11
numbers differ in at least 11 of 36 modules: Olson 2011).
"""

import math
from collections.abc import Iterator
from itertools import product
from typing import Any

import cv2
import numpy as np
from numpy.typing import NDArray

from vision.patterns import (
    FRAME,
    MARK,
    Array,
    Grey,
    Reading,
    all_codes,
    frame_picture,
    picture,
    read_modules,
    rectified,
)
from vision.pose import Pose
from vision.traytype import CARD_MARK_MM, TAG_HEIGHT_MM, TAG_MARK_MM, TrayType

__all__ = ["covered_card", "covered_tag", "decoded", "decoded_tag", "lone_cards"]

MOST_CHANCE = 1e-4  # that random modules look like a number
LEAST_TOLD = 20  # of 64 modules of a card whose place is known
LEAST_FRAME = 10  # of 28 modules of the frame
MOST_WRONG = 0.12  # share of told modules
CARD_PX_PER_MM, TAG_PX_PER_MM = 1.0, 1.5
TAG_REACH_MM = (10.0, 100.0)  # the tag's middle lies this far outside the rim's long side
LEAST_APART = 3  # wrong modules more that the next best number must have
# of a tag whose number is told by the modules in the open: measured by pasting leaves over 144 tags; six dark
# modules instead of four gave a wrong number
SURE_FRAME, LEAST_PAYLOAD = 15, 16
LIGHT_COUNTS, MOST_SHADE = 3, 4  # what a white module in place of a black one counts; dark ones for white
SHORT_LIST = 5  # places along one side of the rim that are looked at closely
FIRST_TAG = 10
SEARCH_PX = 1000  # longest side of the picture that is searched for dark squares
DARK_LEVELS = (45, 65, 90, 120)  # grey levels below which a pixel may be black print, in any light
BLADES_PX = (0, 5)  # width of blades of grass that cut the black into pieces
LEAST_LIKENESS, MOST_LOOKS = 0.6, 12  # correlation with a frame; squares that are looked at closely


def covered_card(grey: Grey, pose: Pose, number: int, tray: TrayType, reach_mm: float) -> Array | None:
    """Corners (4, 2) of a card's mark, looked for within `reach_mm` of where it should be."""
    middle = tray.card_centres()[number]
    to_photo = pose.plane(middle[2])
    side = CARD_MARK_MM * 1.25 + 2 * reach_mm
    corner = (middle[0] - side / 2, middle[1] + side / 2)
    view = _plan(grey, to_photo, corner, (side, side), CARD_PX_PER_MM)
    if view is None:
        return None
    module = CARD_MARK_MM / 8
    fine, _ = picture(number)
    size = round(10 * module * CARD_PX_PER_MM)
    small = cv2.resize(fine.astype(np.float32), (size, size), interpolation=cv2.INTER_AREA)
    match = cv2.matchTemplate(view.astype(np.float32), small, cv2.TM_CCOEFF_NORMED)
    for x, y, _ in _peaks(match, 2, size / 4):
        left, top = corner[0] + x / CARD_PX_PER_MM, corner[1] - y / CARD_PX_PER_MM
        reading = read_modules(grey, to_photo @ _modules(left, top, module), number)
        if reading is not None and _agrees(reading, number):
            return reading.corners
    return None


def covered_tag(grey: Grey, pose: Pose, tray: TrayType) -> tuple[int, Array] | None:
    """Number and corners (4, 2) of the tag, looked for along both long sides of the rim."""
    to_photo = pose.plane(TAG_HEIGHT_MM)
    module = TAG_MARK_MM / 8
    template, mask = frame_picture(module * TAG_PX_PER_MM)
    rim = tray.outer_short_mm / 2
    half = 5 * module
    wide, high = tray.outer_long_mm + 2 * half, TAG_REACH_MM[1] - TAG_REACH_MM[0] + 2 * half
    for top in (-rim - TAG_REACH_MM[0] + half, rim + TAG_REACH_MM[1] + half):
        corner = (-wide / 2, top)
        view = _plan(grey, to_photo, corner, (wide, high), TAG_PX_PER_MM)
        if view is None:
            continue
        match = cv2.matchTemplate(view.astype(np.float32), template, cv2.TM_CCOEFF_NORMED, mask=mask)
        match = np.nan_to_num(match, nan=-1.0, posinf=-1.0, neginf=-1.0)
        for x, y, _ in _peaks(match, SHORT_LIST, len(template) / 4):
            place = to_photo @ _modules(corner[0] + x / TAG_PX_PER_MM, corner[1] - y / TAG_PX_PER_MM, module)
            found = _tag_at(grey, place)
            if found is not None:
                return found
    return None


def lone_cards(grey: Grey) -> dict[int, Array]:
    """One or two cards where none was read in the open, by the outlines of what is dark and about square.

    The rest of the station can then be looked for where it must be.
    """
    found: dict[int, Array] = {}
    likely = sorted(
        ((_likeness(grey, place), index, place) for index, place in enumerate(_dark_squares(grey)))
    )
    looked_at: list[Array] = []
    for likeness, _, place in likely[::-1]:
        if likeness < LEAST_LIKENESS or len(looked_at) >= MOST_LOOKS or len(found) >= 2:
            break
        corners = cv2.perspectiveTransform(MARK[None], place)[0]
        side = np.linalg.norm(corners[2] - corners[0]) / 4
        if any(np.linalg.norm(corners.mean(axis=0) - other) < side for other in looked_at):
            continue
        looked_at.append(corners.mean(axis=0))
        for number, reading in _card_at(grey, place):
            found.setdefault(number, reading.corners)
    return found


def _likeness(grey: Grey, place: Array) -> float:
    """Correlation of what is seen at a place with a black frame in white, -1 to 1."""
    patch = rectified(grey, place)
    if patch is None:
        return -1.0
    frame, counts = picture(None)
    seen, meant = patch[counts > 0], frame[counts > 0]
    return float(np.corrcoef(seen, meant)[0, 1]) if seen.std() > 0 else -1.0


def decoded(reading: Reading) -> int | None:
    """The number whose pattern is seen, by the modules that can be told; None where chance could do it."""
    if not _framed(reading, LEAST_FRAME):
        return None
    told = reading.told & ~FRAME
    wrong = ((all_codes() != reading.black) & told).sum(axis=(1, 2))
    best, least, next_best = _two_best(wrong)
    sure = least <= 2 and next_best - least >= LEAST_APART and _chance(int(told.sum()), least) <= MOST_CHANCE
    return best if sure else None


def decoded_tag(reading: Reading) -> int | None:
    """The same for a tag where a tag must be: its frame proves that it is one of the 587.

    A leaf in the shade may look black where the tag is white, hardly ever the other way, so that counts less.
    """
    told = reading.told & ~FRAME
    if not _framed(reading, SURE_FRAME) or told.sum() < LEAST_PAYLOAD:
        return None
    shade = (~all_codes() & reading.black & told).sum(axis=(1, 2))
    light = (all_codes() & ~reading.black & told).sum(axis=(1, 2))
    best, least, next_best = _two_best(shade + LIGHT_COUNTS * light)
    return best if least <= MOST_SHADE and next_best - least >= LEAST_APART + least // 2 else None


def _framed(reading: Reading, least: int) -> bool:
    told = reading.told & FRAME
    return bool(told.sum() >= least and (~reading.black & told).sum() <= MOST_WRONG * told.sum())


def _two_best(costs: NDArray[np.int64]) -> tuple[int, int, int]:
    """The number with the least cost, that cost, and the next one."""
    least, next_best = (int(cost) for cost in np.partition(costs, 1)[:2])
    return int(np.argmin(costs)), least, next_best


def _chance(told: int, wrong: int) -> float:
    """How often random modules would look like any of the 587 numbers, with no more wrong ones."""
    return len(all_codes()) * sum(math.comb(told, k) for k in range(wrong + 1)) / 2.0**told


def _tag_at(grey: Grey, place: Array) -> tuple[int, Array] | None:
    """Read a tag at a place where a frame seems to be; it may stand on its head on the far side."""
    frame = read_modules(grey, place, None)
    if frame is None:
        return None
    for turned in (frame.place, frame.place @ _HALF_TURN):
        reading = read_modules(grey, turned, None, rounds=0)
        number = decoded_tag(reading) if reading is not None else None
        if number is None or number < FIRST_TAG:
            continue
        better = read_modules(grey, turned, number)
        if better is not None and decoded_tag(better) == number:
            return number, better.corners
    return None


def _agrees(reading: Reading, number: int) -> bool:
    wrong = reading.told & (reading.black != all_codes()[number])
    told = int(reading.told.sum())
    payload = int((reading.told & ~FRAME).sum())
    return bool(told >= LEAST_TOLD and payload >= 8 and wrong.sum() <= MOST_WRONG * told)


def _card_at(grey: Grey, place: Array) -> Iterator[tuple[int, Reading]]:
    """Cards that agree at a dark square, whichever way it is turned; stricter than at a known place."""
    frame = read_modules(grey, place, None)
    if frame is None:
        return
    for quarter in range(4):
        turned = frame.place @ np.linalg.matrix_power(_QUARTER_TURN, quarter)
        first = read_modules(grey, turned, None, rounds=0)
        if first is None:
            continue
        for number in range(4):
            told = first.told & ~FRAME
            wrong = (told & (first.black != all_codes()[number])).sum()
            if told.sum() < 12 or wrong > 0.25 * told.sum():
                continue
            reading = read_modules(grey, turned, number)
            if reading is not None and decoded(reading) == number:
                yield number, reading


def _dark_squares(grey: Grey) -> Iterator[Array]:
    """Places (3, 3) of dark pieces of about square outline: leaves lie over a corner or an edge of them."""
    times = max(1, min(*grey.shape, round(max(grey.shape) / SEARCH_PX)))
    rows, columns = grey.shape[0] // times, grey.shape[1] // times
    small = np.asarray(
        cv2.resize(grey[: rows * times, : columns * times], (columns, rows), interpolation=cv2.INTER_AREA),
        np.uint8,
    )
    least, most = (columns / 60) ** 2, (columns / 6) ** 2
    for level, blade in product(DARK_LEVELS, BLADES_PX):
        dark = (small < level).astype(np.uint8)
        if blade:  # blades of grass cut the black into pieces
            dark = np.asarray(
                cv2.morphologyEx(dark, cv2.MORPH_CLOSE, np.ones((blade, blade), np.uint8)), np.uint8
            )
        outlines, _ = cv2.findContours(dark, cv2.RETR_EXTERNAL, cv2.CHAIN_APPROX_SIMPLE)
        for outline in outlines:
            box = cv2.minAreaRect(outline)
            area = box[1][0] * box[1][1]
            if not least < area < most or min(box[1]) < 0.7 * max(box[1]):
                continue
            if cv2.contourArea(cv2.convexHull(outline)) < 0.75 * area:
                continue
            quad = (cv2.boxPoints(box) + 0.5) * times
            if np.linalg.det(np.diff(quad[:3], axis=0)) < 0:  # not clockwise
                quad = quad[::-1]
            place = cv2.getPerspectiveTransform(MARK.astype(np.float32), quad.astype(np.float32))
            yield np.asarray(place, np.float64)


def _plan(
    grey: Grey, to_photo: Array, corner: tuple[float, float], size_mm: tuple[float, float], scale: float
) -> Grey | None:
    """A level plane from above at `scale` px/mm, `corner` (mm) its far left; None outside the photo."""
    to_plane = np.array([[1 / scale, 0, corner[0]], [0, -1 / scale, corner[1]], [0, 0, 1.0]])
    half_pixel = np.array([[1, 0, 0.5], [0, 1, 0.5], [0, 0, 1.0]])
    place = to_photo @ to_plane
    wide, high = (round(side * scale) for side in size_mm)
    ring = cv2.perspectiveTransform(np.array([[[0.0, 0], [wide, 0], [wide, high], [0, high]]]), place)[0]
    if (
        not np.isfinite(ring).all()
        or (ring.max(axis=0) < 0).any()
        or (ring.min(axis=0) > grey.shape[::-1]).any()
    ):
        return None
    times = max(1, int(np.linalg.norm(ring[1] - ring[0]) / wide))
    (left, top), (right, bottom) = np.floor(ring.min(axis=0)), np.ceil(ring.max(axis=0))
    left, top = int(max(0, left)), int(max(0, top))
    crop = grey[top : int(bottom), left : int(right)]
    rows, columns = crop.shape[0] // times, crop.shape[1] // times
    if min(rows, columns) < 10:
        return None
    small = cv2.resize(crop[: rows * times, : columns * times], (columns, rows), interpolation=cv2.INTER_AREA)
    to_crop = np.array([[1 / times, 0, -left / times - 0.5], [0, 1 / times, -top / times - 0.5], [0, 0, 1.0]])
    flags = cv2.INTER_LINEAR | cv2.WARP_INVERSE_MAP
    view = cv2.warpPerspective(
        small, to_crop @ place @ half_pixel, (wide, high), flags=flags, borderValue=128.0
    )
    return np.asarray(view, np.uint8)


def _peaks(match: NDArray[Any], count: int, apart: float) -> Iterator[tuple[float, float, float]]:
    """The `count` highest places (x, y, height) of a map, at least `apart` px from each other."""
    left = match.copy()
    for _ in range(count):
        _, height, _, (x, y) = cv2.minMaxLoc(left)
        if height <= 0:
            return
        yield float(x), float(y), float(height)
        cv2.circle(left, (x, y), max(1, round(apart)), -1.0, -1)


def _modules(left_mm: float, top_mm: float, module_mm: float) -> Array:
    """From modules to mm on a level plane, the white surrounding's far left corner given."""
    return np.array([[module_mm, 0, left_mm], [0, -module_mm, top_mm], [0, 0, 1.0]])


_HALF_TURN = np.array([[-1.0, 0, 10], [0, -1, 10], [0, 0, 1]])
_QUARTER_TURN = np.array([[0.0, -1, 10], [1, 0, 0], [0, 0, 1]])
