"""Frame networks: a reduced photo -> where the tray lies roughly, where its sides are in rectified views.

In    pixels of the reduced photo (uint8 RGB); for the sides, homographies of rectified views
Out   *place*: chance (h, w) that a pixel of a 128 x 96 map belongs to the inner area, also under leaves;
      *sides*, *edges*: for each view and side the chance of each row (column) along it, see `SideMaps`;
      *edges* looks twice as finely, at a tray that has been found already
Not   what follows from it (`frame.py`), how it was learned (`training/`)

The files are checked by their digests before they are read (`network.py`).
"""

from collections.abc import Sequence
from dataclasses import dataclass

import cv2
import numpy as np
from numpy.typing import NDArray

from vision.framefit import Array
from vision.network import FOLDER, ModelDamaged, net_of
from vision.photo import Pixels

__all__ = [
    "BEYOND",
    "COARSE",
    "FINE",
    "VIEW_MM",
    "Fineness",
    "ModelDamaged",
    "SideMaps",
    "place_map",
    "side_maps",
]

DIGESTS = {
    "frame_place": "650407333b84e72c42e88cd880f7366870bb7dead078f3c91ae2b110c42a8211",
    "frame_edges": "62fc3141116029b4179d7e14760419c9f0bf2afd4c1ac6e8accf154915577ce9",
    "frame_sides": "915023e493fa6893144058fdd1f1cb08b0e02e470c49522c3fb3baa5a279c868",
}
PLACE_SIZE = (256, 192)
VIEW_MM = (640.0, 384.0)
BEYOND = (114, 114, 114)  # what stands for "outside the photo", in learning too


@dataclass(frozen=True, slots=True, kw_only=True)
class Fineness:
    """How finely the sides are looked for, and by which network."""

    network: str
    view_px: tuple[int, int]
    longest_px: int  # longer side of the reduced photo that views are cut from
    as_bent: bool  # whether sides are told as a lens bends them, or straight from corner to corner

    @property
    def view_mm_per_px(self) -> float:
        """Scale of a view."""
        return VIEW_MM[0] / self.view_px[0]

    @property
    def cell_mm(self) -> float:
        """Side of a cell of the maps, which are half as fine as the view."""
        return 2 * self.view_mm_per_px


COARSE = Fineness(network="frame_sides", view_px=(320, 192), longest_px=640, as_bent=False)
FINE = Fineness(network="frame_edges", view_px=(640, 384), longest_px=1280, as_bent=True)


@dataclass(frozen=True, slots=True, kw_only=True)
class SideMaps:
    """Chances for one view: top and bottom (columns, rows) by column, left and right (rows, columns) by row.

    160 columns and 96 rows of the coarse view, twice as many of the fine one.
    """

    top: NDArray[np.float32]
    bottom: NDArray[np.float32]
    left: NDArray[np.float32]
    right: NDArray[np.float32]
    rim: NDArray[np.float32]  # (rows, columns) chance that rim is visible there


def place_map(small: Pixels) -> tuple[NDArray[np.float32], Array]:
    """Chance of inner area, and the homography from that map to the reduced photo, edge coordinates."""
    to_photo = _whole(small.shape[1], small.shape[0])
    out = _run("frame_place", [_viewed(small, to_photo, PLACE_SIZE)])
    chance = 1 / (1 + np.exp(-out[0, 0]))
    return chance.astype(np.float32), to_photo @ np.diag([2.0, 2.0, 1.0])


def side_maps(views: Sequence[tuple[Pixels, Array]], fineness: Fineness) -> list[SideMaps]:
    """Chances of the sides in views: a reduced photo and the homography from view px to its px each."""
    out = _run(fineness.network, [_viewed(small, view, fineness.view_px) for small, view in views])
    return [
        SideMaps(
            top=_shares(maps[0].T),
            bottom=_shares(maps[1].T),
            left=_shares(maps[2]),
            right=_shares(maps[3]),
            rim=(1 / (1 + np.exp(-maps[4]))).astype(np.float32),
        )
        for maps in out
    ]


def _shares(logits: NDArray[np.float32]) -> NDArray[np.float32]:
    weights = np.exp(logits - logits.max(axis=1, keepdims=True))
    return np.asarray(weights / weights.sum(axis=1, keepdims=True))


def _whole(width: int, height: int) -> Array:
    """From the small whole picture to the photo: lying, as large as fits, in the middle."""
    across, down = PLACE_SIZE
    if height > width:  # a quarter turn: the network knows trays at any angle, but its picture lies
        scale = max(height / across, width / down)
        return np.array(
            [
                [0, -scale, width / 2 + scale * down / 2],
                [scale, 0, height / 2 - scale * across / 2],
                [0, 0, 1],
            ]
        )
    scale = max(width / across, height / down)
    return np.array(
        [[scale, 0, width / 2 - scale * across / 2], [0, scale, height / 2 - scale * down / 2], [0, 0, 1]]
    )


def _viewed(small: Pixels, to_photo: Array, size: tuple[int, int]) -> Pixels:
    """The reduced photo through a homography, drawn twice as fine and averaged."""
    fine = to_photo @ np.array([[0.5, 0, 0.25], [0, 0.5, 0.25], [0, 0, 1]])
    fine = np.array([[1, 0, -0.5], [0, 1, -0.5], [0, 0, 1]]) @ fine  # cv2 counts from pixel centres
    drawn = cv2.warpPerspective(
        small,
        fine,
        (2 * size[0], 2 * size[1]),
        flags=cv2.INTER_LINEAR | cv2.WARP_INVERSE_MAP,
        borderMode=cv2.BORDER_CONSTANT,
        borderValue=BEYOND,
    )
    return np.asarray(cv2.resize(drawn, size, interpolation=cv2.INTER_AREA), np.uint8)


def _run(name: str, pictures: list[Pixels]) -> NDArray[np.float32]:
    net = net_of(FOLDER / f"{name}.onnx", DIGESTS[name])
    net.setInput(cv2.dnn.blobFromImages(pictures))
    return np.asarray(net.forward(), np.float32)
