"""A station drawn in code: the camera is known, so everything found in the picture can be checked."""

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field

import cv2
import numpy as np
import pytest

from vision.patterns import bits
from vision.photo import Photo
from vision.pose import Pose
from vision.traytype import (
    CARD_MARK_MM,
    CARD_MM,
    GREY_MM,
    PATCH_MM,
    TAG_HEIGHT_MM,
    TAG_MARK_MM,
    TAG_MIDDLE_MM,
    TAG_MM,
    WHITE_MM,
    TrayType,
)

BENCH, PAPER, INK, LEAF = 150, 235, 35, 105
WHITE, GREY = 232, 124  # codes of the patches, all three channels alike
FINER = 2


@dataclass(frozen=True, slots=True, kw_only=True)
class DrawnStation:
    """A drawn photo and the truth about it."""

    pixels: np.ndarray
    pose: Pose
    tray: TrayType = field(default_factory=TrayType)

    @property
    def grey(self) -> np.ndarray:
        return np.ascontiguousarray(self.pixels[:, :, 0])

    @property
    def rim(self) -> np.ndarray:
        """Corners of the inner area, px; far left first."""
        return self.pose.project(self.tray.inner_corners())

    def photo(self, focal_35mm: float | None = 26.0) -> Photo:
        return Photo(
            name="drawn.png",
            digest="0" * 64,
            pixels=self.pixels,
            turns=0,
            profile=None,
            taken_at=None,
            utc_offset=None,
            focal_35mm=focal_35mm,
            camera=None,
            notes=(),
        )

    def worst_mm(self, points: Sequence[tuple[float, float]]) -> float:
        """How far the worst corner is off, mm at the rim."""
        px_per_mm = np.linalg.norm(self.rim[1] - self.rim[0]) / self.tray.inner_long_mm
        return float(np.linalg.norm(np.array(points) - self.rim, axis=1).max() / px_per_mm)


def _looking_down(
    *,
    tilt_deg: float = 7.0,
    turned_deg: float = 3.0,
    distance_mm: float = 640.0,
    focal_35mm: float = 26.0,
) -> Pose:
    """A camera above the tray; `turned_deg` 180 sees the far side at the bottom of the photo."""
    size = (1600, 1200)
    focal = focal_35mm * math.hypot(*size) / 43.267
    level = cv2.Rodrigues(np.array([0.0, 0.0, math.radians(turned_deg)]))[0] @ np.diag([1.0, -1.0, -1.0])
    turn = cv2.Rodrigues(np.array([math.radians(tilt_deg), 0.0, 0.0]))[0] @ level
    return Pose(turn=turn, shift=np.array([4.0, -6.0, distance_mm]), focal_px=focal, size=size)


@pytest.fixture(scope="session")
def draw_station() -> Callable[..., DrawnStation]:
    return _drawn


def _drawn(
    *,
    cards: Sequence[int] = (0, 1, 2, 3),
    tag: int | None = 42,
    tag_mm: tuple[float, float] = (-40.0, -201.0),
    further: Sequence[tuple[int, float, float, bool]] = (),
    leaves: Sequence[tuple[float, float, float, float]] = (),
    pushed: dict[int, tuple[float, float]] | None = None,
    blur_px: float = 0.8,
    tray: TrayType | None = None,
    **camera: float,
) -> DrawnStation:
    """Draw the station; a leaf is (x, y, height, radius) in mm, a further tag (number, x, y, upside down).

    `camera` as in `_looking_down`.
    """
    pose = _looking_down(**camera)
    tray = tray or TrayType()
    wide, high = pose.size
    canvas = np.full((high * FINER, wide * FINER), BENCH, np.float32)
    for number in cards:
        x, y, z = tray.card_centres()[number]
        dx, dy = (pushed or {}).get(number, (0.0, 0.0))
        _lay(canvas, pose, _card(number), (x + dx, y + dy), z, 4.0)
    outer = np.array([[-1, 1], [1, 1], [1, -1], [-1, -1]]) * (tray.outer_long_mm / 2, tray.outer_short_mm / 2)
    _fill(canvas, pose, outer, 0.0, 60)
    _fill(canvas, pose, tray.inner_corners()[:, :2], 0.0, 95)
    if tag is not None:
        wider = (tray.outer_short_mm - TrayType().outer_short_mm) / 2
        middle = (tag_mm[0] + TAG_MIDDLE_MM[0], tag_mm[1] - wider + TAG_MIDDLE_MM[1])
        _lay(canvas, pose, _tag(tag), middle, TAG_HEIGHT_MM, 4.0)
    for number, x, y, turned in further:
        card = _tag(number)[::-1, ::-1] if turned else _tag(number)
        _lay(canvas, pose, card, (x, y), TAG_HEIGHT_MM, 4.0)
    for x, y, z, radius in leaves:
        around = np.linspace(0, 2 * np.pi, 24)
        ring = np.column_stack([x + radius * np.cos(around), y + 0.8 * radius * np.sin(around)])
        _fill(canvas, pose, ring, z, LEAF)
    photo = cv2.resize(canvas, (wide, high), interpolation=cv2.INTER_AREA)
    photo = cv2.GaussianBlur(photo, (0, 0), blur_px)
    photo = photo + np.random.default_rng(7).normal(0, 2.0, photo.shape)
    pixels = np.repeat(np.clip(photo, 0, 255).astype(np.uint8)[:, :, None], 3, axis=2)
    return DrawnStation(pixels=pixels, pose=pose, tray=tray)


def _card(number: int) -> np.ndarray:
    """Picture of a station card, 4 px/mm."""
    side, mark = round(CARD_MM * 4), round(CARD_MARK_MM * 4)
    card = np.full((side, side), PAPER, np.float32)
    start = (side - mark) // 2
    card[start : start + mark, start : start + mark] = _mark(number, mark)
    return card


def _tag(number: int) -> np.ndarray:
    """Picture of a tag, 4 px/mm."""
    wide, high = (round(side * 4) for side in TAG_MM)
    card = np.full((high, wide), PAPER, np.float32)
    mark, patch = round(TAG_MARK_MM * 4), round(PATCH_MM * 4)
    x, y = wide // 2 - round(TAG_MIDDLE_MM[0] * 4), high // 2
    card[y - mark // 2 : y + mark // 2, x - mark // 2 : x + mark // 2] = _mark(number, mark)
    for (right, up), code in ((WHITE_MM, WHITE), (GREY_MM, GREY)):
        px, py = x + round(right * 4) - patch // 2, y - round(up * 4) - patch // 2
        card[py : py + patch, px : px + patch] = code
    return card


def _mark(number: int, side: int) -> np.ndarray:
    black = cv2.resize(bits(number).astype(np.float32), (side, side), interpolation=cv2.INTER_NEAREST)
    return np.where(black > 0.5, INK, PAPER).astype(np.float32)


def _lay(
    canvas: np.ndarray, pose: Pose, card: np.ndarray, middle: tuple[float, float], z: float, scale: float
) -> None:
    """Lay a picture (its middle at `middle`, mm) onto the level plane z as the camera sees it."""
    high, wide = card.shape
    to_mm = np.array(
        [
            [1 / scale, 0, middle[0] - wide / 2 / scale],
            [0, -1 / scale, middle[1] + high / 2 / scale],
            [0, 0, 1],
        ]
    )
    half = np.array([[1, 0, 0.5], [0, 1, 0.5], [0, 0, 1.0]])  # OpenCV counts from pixel centres
    to_canvas = np.diag([FINER, FINER, 1.0]) @ pose.plane(z) @ to_mm
    ring = cv2.perspectiveTransform(np.array([[[0.0, 0], [wide, 0], [wide, high], [0, high]]]), to_canvas)[0]
    left, top = np.clip(np.floor(ring.min(axis=0)).astype(int), 0, None)
    right, bottom = np.clip(np.ceil(ring.max(axis=0)).astype(int), 0, canvas.shape[::-1])
    if right <= left or bottom <= top:
        return
    aside = np.array([[1, 0, -left], [0, 1, -top], [0, 0, 1.0]])
    place = np.linalg.inv(half) @ aside @ to_canvas @ half
    size = (int(right - left), int(bottom - top))
    seen = cv2.warpPerspective(card, place, size)
    cover = cv2.warpPerspective(np.ones_like(card), place, size)
    part = canvas[top:bottom, left:right]
    part[:] = np.where(cover > 0.5, seen / np.maximum(cover, 0.5), part)


def _fill(canvas: np.ndarray, pose: Pose, ring_mm: np.ndarray, z: float, code: float) -> None:
    ring = pose.project(np.column_stack([ring_mm, np.full(len(ring_mm), z)])) * FINER - 0.5
    cv2.fillPoly(canvas, [np.round(ring * 16).astype(np.int32)], float(code), shift=4)
