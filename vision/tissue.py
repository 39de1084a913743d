"""Tissue: top view -> what each pixel shows.

In    top view, uint8 (rows, columns, 3), sRGB; scale in px/mm, None when it is not known
Out   `TissueMap`: one `Label` a pixel
Not   shares and gaps (`stand.py`), which fuzz is a suspect (`suspects.py`)

`PlainTissue` is the plain method: thresholds on CIELAB colour and on local texture. It tells canopy, rim,
fuzz and burnt white cards from the medium; hulls and root hairs stay medium. It is the fallback of a
learned model and the yardstick that such a model has to beat.
"""

from dataclasses import dataclass
from enum import IntEnum
from typing import Protocol

import numpy as np
from numpy.typing import NDArray

from vision.ground import find_foreign, find_fuzz, find_rim, look_at_ground
from vision.leaves import find_leaves
from vision.planes import Mask, Pixels
from vision.reason import Reason
from vision.tones import tones

__all__ = ["Label", "Labels", "Mask", "PlainTissue", "Tissue", "TissueMap", "canopy", "require_top_view"]

Labels = NDArray[np.uint8]


class Label(IntEnum):
    """What a pixel shows."""

    OUTSIDE = 0
    RIM = 1
    MEDIUM = 2
    HULL = 3
    PALE = 4
    GREEN = 5
    RED = 6
    ROOT_HAIR = 7
    FUZZ = 8
    OTHER = 9


@dataclass(frozen=True, slots=True, kw_only=True)
class TissueMap:
    """The labels of one top view."""

    labels: Labels
    """uint8 (rows, columns), values of `Label`."""
    fuzz: NDArray[np.float32] | None = None
    """Chance of fuzz, 0-1, (rows, columns); None when the method gives none."""
    chances: NDArray[np.float32] | None = None
    """Chance of each label, (labels, rows / 4, columns / 4), means over 4 x 4 px; None where not told."""
    coverage_sd: float | None = None
    """Standard deviation of coverage, points; None when the method cannot tell how sure it is."""
    notes: tuple[Reason, ...] = ()
    """What the grower should know of how these labels were had."""


class Tissue(Protocol):
    """A method that tells tissues apart. Its name and version travel with every score."""

    @property
    def name(self) -> str:
        """Short name of the method."""

    @property
    def version(self) -> str:
        """Changes whenever labels may change."""

    def label(self, top: Pixels, px_per_mm: float | None) -> TissueMap:
        """Labels of a top view, (rows, columns) as `top`; without a scale nothing is taken for rim."""


def canopy(labels: Labels) -> Mask:
    """Where pale shoots, green or red canopy stand."""
    return np.asarray((labels >= Label.PALE) & (labels <= Label.RED), np.bool_)


class PlainTissue:
    """Thresholds on colour and texture, the same for all crops and media: `leaves.py` and `ground.py`."""

    name = "plain"
    version = "1"

    def __init__(self, notes: tuple[Reason, ...] = ()) -> None:
        self._notes = notes  # for every map: why the plain method stands in for another one

    def label(self, top: Pixels, px_per_mm: float | None) -> TissueMap:
        """Labels of a top view, uint8 (rows, columns); rim and fuzz only when the scale is known.

        Raises
        ------
        ValueError
            If `top` is no uint8 picture with three channels, or the scale is not positive.
        """
        require_top_view(top, px_per_mm)
        seen = tones(top, px_per_mm)
        leaves = find_leaves(seen)
        foreign = find_foreign(seen, leaves.grown)
        labels = np.full(foreign.shape, Label.MEDIUM, np.uint8)
        labels[foreign] = Label.OTHER
        labels[leaves.grown] = Label.PALE
        labels[leaves.green] = Label.GREEN
        labels[leaves.red] = Label.RED
        if px_per_mm is not None:
            ground = look_at_ground(seen, ~leaves.grown & ~foreign, px_per_mm)
            labels[find_fuzz(ground, px_per_mm)] = Label.FUZZ
            labels[find_rim(ground, px_per_mm)] = Label.RIM
        return TissueMap(labels=labels, notes=self._notes)


def require_top_view(top: Pixels, px_per_mm: float | None) -> None:
    """Raise `ValueError` if `top` is no uint8 picture with three channels, or the scale is not positive."""
    if top.dtype != np.uint8 or top.ndim != 3 or top.shape[2] != 3:
        raise ValueError(f"a top view is uint8 (rows, columns, 3), not {top.dtype} {top.shape}")
    if px_per_mm is not None and not px_per_mm > 0:
        raise ValueError(f"px_per_mm must be positive, not {px_per_mm}")
