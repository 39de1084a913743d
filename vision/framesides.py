"""Frame sides: what a network says of the sides in rectified views -> points of the photo with weights.

In    a reduced photo, where the tray is thought to be in it, ways to look at it
Out   what `framenet.py` says of each look; `Points` for `framefit.py`: where each side is, place by place,
      and how surely
Not   which views are taken, and what follows (`frame.py`)
"""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import NamedTuple, Protocol

import numpy as np
from numpy.typing import NDArray

from vision.framefit import Array, Points, inverse, through
from vision.framenet import Fineness, SideMaps, side_maps
from vision.photo import Pixels

__all__ = ["ALIKE", "Looks", "Way", "best_weight", "look_at", "points_of"]

SHARPEST_CELLS = 3 / 8  # no side is trusted better than that at one place
ALIKE = 10.0  # neighbouring places that err together


class Placed(Protocol):
    """A tray placed in a picture."""

    @property
    def matrix(self) -> Array:
        """Homography (3, 3) from mm on the tray (middle, y down) to px."""

    @property
    def corners(self) -> Array:
        """(4, 2) px, top left, top right, bottom right, bottom left."""


class Way(NamedTuple):
    """How one view differs from the plain one."""

    zoom: float = 1.0
    right_mm: float = 0.0
    down_mm: float = 0.0
    mirror_x: int = 1
    mirror_y: int = 1
    tone: int = 0  # 0 as it is, 1 lighter, 2 darker and nearly grey


@dataclass(frozen=True, slots=True, kw_only=True)
class Looks:
    """One tray looked at in several ways."""

    ways: Sequence[Way]
    views: Sequence[Array]  # homographies from view px to the reduced photo
    maps: Sequence[SideMaps]
    fineness: Fineness

    def each(self) -> "list[Looks]":
        """Every look by itself."""
        return [
            Looks(ways=(way,), views=(view,), maps=(one,), fineness=self.fineness)
            for way, view, one in zip(self.ways, self.views, self.maps, strict=True)
        ]


def look_at(pose: Placed, tones: Sequence[Pixels], ways: Sequence[Way], fineness: Fineness) -> Looks:
    """Look where the tray is thought to be; `tones` are the reduced photo in the tones that ways ask for."""
    views = [_view(pose, way, fineness) for way in ways]
    seen = [(tones[way.tone], view) for way, view in zip(ways, views, strict=True)]
    return Looks(ways=ways, views=views, maps=side_maps(seen, fineness), fineness=fineness)


def _view(pose: Placed, way: Way, fineness: Fineness) -> Array:
    """Homography from view px to the reduced photo: inner area in the middle, a little off where asked."""
    mm = fineness.view_mm_per_px / way.zoom
    width, height = fineness.view_px
    x, y = mm * way.mirror_x, mm * way.mirror_y
    to_mm = np.array([[x, 0, way.right_mm - x * width / 2], [0, y, way.down_mm - y * height / 2], [0, 0, 1]])
    return np.asarray(pose.matrix @ to_mm, float)


def points_of(looks: Looks, pose: Placed, window_mm: float) -> Points:
    """Where the sides are, place by place, as far as seen within a window around the pose."""
    cell_mm = looks.fineness.cell_mm
    places, sides, weights = [], [], []
    for one, view, way in zip(looks.maps, looks.views, looks.ways, strict=True):
        ring = through(inverse(view), pose.corners) / 2
        mirror_x, mirror_y = way.mirror_x < 0, way.mirror_y < 0
        for side, (first, second) in enumerate(((0, 1), (3, 2), (0, 3), (1, 2))):
            across = 1 if side < 2 else 0
            swapped = mirror_y if side < 2 else mirror_x
            table = (one.top, one.bottom, one.left, one.right)[side ^ swapped]
            found, weight = _along(table, ring[first], ring[second], across, window_mm / cell_mm)
            places.append(through(view, 2 * found))
            sides.append(np.full(len(found), side))
            weights.append(weight * way.zoom**2 / cell_mm**2 / len(looks.maps))
    return Points(places=np.concatenate(places), sides=np.concatenate(sides), weights=np.concatenate(weights))


def _along(table: NDArray[np.float32], a: Array, b: Array, across: int, window: float) -> tuple[Array, Array]:
    """Points (n, 2) in cells and their weights, 1 / cell2, for one side of one view that runs from a to b."""
    place = np.arange(0, len(table), 2) + 0.5
    share = (place - a[1 - across]) / (b - a)[1 - across]
    expected = a[across] + share * (b - a)[across]
    counts = (share > 0.03) & (share < 0.97) & (expected > 0) & (expected < table.shape[1])
    place, expected, chance = place[counts], expected[counts], table[::2][counts].astype(float)
    cell = np.arange(table.shape[1]) + 0.5
    chance = chance * (np.abs(cell - expected[:, None]) <= window)
    mass = chance.sum(axis=1) + 1e-9
    mean = (chance * cell).sum(axis=1) / mass
    var = (chance * (cell - mean[:, None]) ** 2).sum(axis=1) / mass
    weight = mass / (var + SHARPEST_CELLS**2) / (ALIKE / 2)
    points = np.empty((len(place), 2))
    points[:, 1 - across], points[:, across] = place, mean
    return points, weight


def best_weight(fineness: Fineness) -> float:
    """Weight of a point of a side that is seen as sharply as can be, 1 / mm2, of one view alone."""
    return 1 / (0.7 + SHARPEST_CELLS**2) / fineness.cell_mm**2 / (ALIKE / 2)
