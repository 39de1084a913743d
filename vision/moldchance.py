"""Mold chance: top view and what its pixels show -> how likely each cell of 2 mm shows mold.

In    top view, uint8 (rows, columns, 3), sRGB, 2 px/mm; its `TissueMap` with chances of all labels
Out   `Cells`: chance and bare share of each cell, (rows / 4, columns / 4)
Not   patches and words (`suspects.py`), how the table was learned (`models/mold.md`)

Mold is rare in what the tissue network was learned from, though it has been shown made felt. So a small
second network (two layers) looks at each cell: colour and fineness of the bare ground there, in 6 and 18 mm
around and against the tray's own medium; what the tissue network thinks of it, every label; what the plain
felt rule says. Leaves are left out of all means, so that felt seen between them counts as it looks. The two
err in different places (the tissue network on pale ground beside leaves, the table on dark ground): the
chance is the mean of their log odds.
"""

import itertools
import json
from dataclasses import dataclass
from functools import cache

import cv2
import numpy as np
from numpy.typing import NDArray

from vision.cielab import lab
from vision.ground import WALL_MM
from vision.network import FOLDER, checked
from vision.planes import Pixels, Plane, mm_from_edge
from vision.tissue import Label, TissueMap, canopy

__all__ = [
    "CELL_MM", "CELL_PX", "Cells", "features", "mold_cells", "names_of_features", "require_table", "together",
]  # fmt: skip

MODEL = FOLDER / "mold.json"
DIGEST = "6afd751ad80bc97f466c28d30ca931b586184eca716f7794fd7596f521812741"

Planes = dict[str, Plane]

CELL_PX = 4
CELL_MM = 2.0
SEEN = 0.08  # a cell with less bare ground says nothing
LEAST_KNOWN = 40  # cells, before the medium's medians are believed
USUAL = {"light": 3.7, "red": 8.0, "yellow": 18.0, "tone": 20.0, "fine0": -3.5, "fine1": -3.0, "fine2": -3.0,
         "fine3": -3.0, "reds": 4.0, "yellows": 5.0}  # fmt: skip
SCALES_PX = (0.7, 1.5, 3.0, 6.0)  # of fineness: each band lies between two blurs
MOST_CONTRAST = 0.6  # of a band, natural logarithm of L* + 16
NEAR, AROUND = 3, 9  # windows, cells
BY_LABEL = (Label.RIM, Label.MEDIUM, Label.HULL, Label.ROOT_HAIR, Label.FUZZ, Label.OTHER)
WINDOW = 5  # of what the tissue network thinks, cells
FARTHEST_MM = 40.0
FARTHEST_SD = 4.0  # a feature beyond is taken for so far off
UNSURE = 1e-3  # no opinion is nearer to 0 or 1


@dataclass(frozen=True, slots=True, kw_only=True)
class Cells:
    """What is told of each cell of 2 mm."""

    chance: Plane
    """Of mold, 0-1; 0 where no bare ground is seen."""
    bare: Plane
    """Share that is no canopy, 0-1."""


def mold_cells(top: Pixels, tissue: TissueMap, colours: Plane | None = None) -> Cells:
    """Chance of mold in each cell.

    Parameters
    ----------
    top : a top view at 2 px/mm.
    tissue : with `chances`.
    colours : CIELAB of the top view, where it is known already.

    Raises
    ------
    ValueError
        If the tissue method gives no chances of its labels.
    ModelDamaged
        If the table's file is missing or damaged.
    """
    planes = features(top, tissue, colours)
    bare = planes["bare_1"]
    seen = bare > SEEN
    values = np.stack([plane[seen] for plane in planes.values()], axis=1)
    chance = np.zeros(bare.shape, np.float32)
    chance[seen] = together(_table()(values), planes[f"label{Label.FUZZ:d}_1"][seen] / bare[seen])
    return Cells(chance=chance, bare=bare)


def together(table: Plane, network: Plane) -> Plane:
    """One chance of two opinions, 0-1 each: the mean of their log odds, neither of them ever quite sure."""
    odds = np.zeros_like(table)
    for one in (table, network):
        kept = np.clip(one, UNSURE, 1 - UNSURE)
        odds += np.log(kept / (1 - kept)) / 2
    return np.asarray(1 / (1 + np.exp(-odds)), np.float32)


@dataclass(frozen=True, slots=True, kw_only=True)
class _Table:
    """Two layers: mean and spread of each feature, weights of the hidden layer and of the last one."""

    mean: NDArray[np.float32]
    spread: NDArray[np.float32]
    weights: NDArray[np.float32]
    offsets: NDArray[np.float32]
    last: NDArray[np.float32]
    last_offset: float

    def __call__(self, values: Plane) -> Plane:
        known = values - self.mean  # the rest in place: fresh memory costs as much as the sums
        known /= self.spread
        np.clip(known, -FARTHEST_SD, FARTHEST_SD, out=known)
        hidden = known @ self.weights
        hidden += self.offsets
        np.maximum(hidden, 0, out=hidden)
        return np.asarray(1 / (1 + np.exp(-(hidden @ self.last + self.last_offset))), np.float32)


@cache
def _table() -> _Table:
    kept = json.loads(checked(MODEL, DIGEST))
    arrays = {
        name: np.array(kept[name], np.float32) for name in ("mean", "spread", "weights", "offsets", "last")
    }
    return _Table(**arrays, last_offset=float(kept["last_offset"]))


def require_table() -> None:
    """Raise `ModelDamaged` if the table's file is missing or damaged."""
    _table()


def names_of_features() -> tuple[str, ...]:
    """In the order of the table."""
    side = 8 * CELL_PX
    nothing = TissueMap(
        labels=np.full((side, side), Label.MEDIUM, np.uint8),
        chances=np.zeros((len(Label), side // CELL_PX, side // CELL_PX), np.float32),
    )
    return tuple(features(np.zeros((side, side, 3), np.uint8), nothing))


# --- features


def features(top: Pixels, tissue: TissueMap, colours: Plane | None = None) -> Planes:
    """What a cell is judged by, float32 (rows / 4, columns / 4) each, by name."""
    if tissue.chances is None:
        raise ValueError("the tissue method gives no chances of its labels")
    bare = (~canopy(tissue.labels)).astype(np.float32)
    size = (top.shape[1] // CELL_PX, top.shape[0] // CELL_PX)
    ground = _Ground(bare, size)
    from_edge = mm_from_edge(ground.share.shape, 1 / CELL_MM)
    planes = ground.planes(lab(top) if colours is None else colours)
    inner = (from_edge > WALL_MM) & (ground.share > 0.5)
    planes |= _against_medium(planes, inner)
    planes |= {f"bare_{k}": _over(ground.share, k) for k in (1, NEAR, AROUND)}
    planes |= _thoughts(tissue.chances, size)
    felt = tissue.labels == Label.FUZZ if tissue.fuzz is None else tissue.fuzz
    planes["felt_1"] = _cells(felt.astype(np.float32), size)
    planes[f"felt_{WINDOW}"] = _over(planes["felt_1"], WINDOW)
    planes["from_edge"] = np.minimum(from_edge, np.float32(FARTHEST_MM))
    return planes


class _Ground:
    """Means over cells and windows with leaves left out."""

    def __init__(self, bare: Plane, size: tuple[int, int]) -> None:
        self._bare, self._size = bare, size
        self._inside = _plane(cv2.erode(bare, np.ones((3, 3), np.uint8)))  # a leaf's border is no texture
        self.share = _cells(bare, size)
        self._inside_share = _cells(self._inside, size)

    def planes(self, colours: Plane) -> Planes:
        """Colour, its spread, and fineness in four bands, over windows of one, three and nine cells."""
        lightness, a, b = (_plane(part) for part in cv2.split(colours))
        light = lightness + 16
        red, yellow = 100 * a / light, 100 * b / light
        log = _plane(cv2.log(light))
        sums = {"light": log, "red": red, "yellow": yellow, "reds": red * red, "yellows": yellow * yellow}
        sums = {name: _cells(plane * self._bare, self._size) for name, plane in sums.items()}
        bands = [_cells(band * self._inside, self._size) for band in _bands(log)]
        found: Planes = {}
        for k in (1, NEAR, AROUND):
            weight = _over(self.share, k) + 1e-3
            mean = {name: _over(plane, k) / weight for name, plane in sums.items()}
            found |= {f"{name}_{k}": mean[name] for name in ("light", "red", "yellow")}
            # not cv2.magnitude, whose last digit depends on where in memory the plane lies
            found[f"tone_{k}"] = _plane(np.sqrt(mean["red"] ** 2 + mean["yellow"] ** 2))
            if k > 1:
                for name, of in (("reds", "red"), ("yellows", "yellow")):
                    found[f"{name}_{k}"] = _plane(np.sqrt(np.maximum(mean[name] - mean[of] * mean[of], 0)))
                weight = _over(self._inside_share, k) + 1e-3
                for number, band in enumerate(bands):
                    found[f"fine{number}_{k}"] = _plane(np.log(_over(band, k) / weight + 0.004))
        return found


def _bands(log: Plane) -> list[Plane]:
    """Contrast between one blur and the next coarser one; the coarse ones at half size."""
    blurs = [log, *(_plane(cv2.GaussianBlur(log, (0, 0), scale)) for scale in SCALES_PX)]
    return [
        _plane(np.minimum(_plane(cv2.absdiff(fine, coarse)), MOST_CONTRAST))
        for fine, coarse in itertools.pairwise(blurs)
    ]


def _against_medium(planes: Planes, inner: NDArray[np.bool_]) -> Planes:
    """How far each window is from the tray's own bare ground, and near it from farther around."""
    enough = np.count_nonzero(inner) > LEAST_KNOWN
    found: Planes = {}
    for name, usual in USUAL.items():
        near = planes[f"{name}_{NEAR}"]
        median = np.float32(np.median(near[inner]) if enough else usual)
        found[f"{name}_off_{NEAR}"] = near - median
        if f"{name}_1" in planes:
            found[f"{name}_off_1"] = planes[f"{name}_1"] - median
            found[f"{name}_here"] = near - planes[f"{name}_{AROUND}"]
    return found


def _thoughts(chances: Plane, size: tuple[int, int]) -> Planes:
    """What the tissue network thinks of the cell, and of the five around."""
    cells = {f"label{k}_1": np.ascontiguousarray(plane) for k, plane in enumerate(chances)}
    if chances.shape[1:] != size[::-1]:
        raise ValueError(f"chances are {size[::-1]} cells, not {chances.shape[1:]}")
    return cells | {f"label{k:d}_{WINDOW}": _over(cells[f"label{k:d}_1"], WINDOW) for k in BY_LABEL}


def _cells(plane: Plane, size: tuple[int, int]) -> Plane:
    return _plane(cv2.resize(plane, size, interpolation=cv2.INTER_AREA))


def _over(plane: Plane, cells: int) -> Plane:
    if cells == 1:
        return plane
    return _plane(cv2.blur(plane, (cells, cells), borderType=cv2.BORDER_REFLECT))


def _plane(values: NDArray[np.integer | np.floating]) -> Plane:
    return np.asarray(values, np.float32)
