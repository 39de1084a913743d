"""Tissue: top view -> what each pixel shows.

In    top view, uint8 (rows, columns, 3), sRGB; scale in px/mm, None when it is not known
Out   `TissueMap`: one `Label` a pixel
Not   shares and gaps (`stand.py`), which fuzz is a suspect (`suspects.py`)

`PlainTissue` is the plain method: thresholds on CIELAB colour and on local texture. It is the fallback of a
learned model and the yardstick that such a model has to beat.
"""

from dataclasses import dataclass
from enum import IntEnum
from typing import Protocol

import cv2
import numpy as np
from numpy.typing import NDArray

from vision.cielab import lab

__all__ = ["Label", "Labels", "Mask", "PlainTissue", "Tissue", "TissueMap", "canopy"]

Pixels = NDArray[np.uint8]
Labels = NDArray[np.uint8]
Mask = NDArray[np.bool_]


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
    """Thresholds on colour and texture."""

    name = "plain"
    version = "1"

    def label(self, top: Pixels, px_per_mm: float | None) -> TissueMap:
        """Labels of a top view by colour and texture."""
        lightness, a, b = cv2.split(lab(top))
        labels = np.full(lightness.shape, Label.MEDIUM, np.uint8)
        labels[(a < -6) & (b > 6)] = Label.GREEN
        labels[(a > 12) & (b < 8)] = Label.RED
        return TissueMap(labels=labels)
