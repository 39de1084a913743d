"""Bed: tissue labels -> canopy as a share of the growing bed, of the whole tray and of each cell.

In    labels of one top view, uint8 (rows, columns), see `tissue.Label`
Out   `Bed`: shares in % of what is neither outside nor rim; how alike the cells are, %
Not   shares of the inner area (`stand.py`), which of the two a comparison uses (`data`)

The inner area is a rectangle at the rim's height. A mat lies some 48 mm below the rim, loose media some 24:
the camera sees more of a mat's wall, which no canopy can cover, and so coverage favours loose media. Leaves
that lean over the wall hide it and count as bed, hence this share lies above coverage, of all media alike.
It is for comparing media; what a grower reads as coverage stays the share of the inner area.

On 47 drawn photos that we learn from, day 6 on, loose media came out higher than mats, against what is seen
from straight above, by 2.7 points (95 %: 0.2 to 5.3) of the inner area and by 0.3 (-2.3 to 2.9) of the bed.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field

import cv2
import numpy as np

from vision.cells import Grid, cell_counts, cell_sizes, christiansen
from vision.reason import Reason
from vision.tissue import Label, Labels, Mask, canopy

__all__ = ["LEAST_BED", "Bed", "BedCells", "measure_bed"]

BedCells = tuple[tuple[float | None, ...], ...]  # 6 rows of 12, %

# Of a cell, 3.6 cm2. On the same photos cells with a fifth of bed in them are no worse against the truth than
# those with half, and with this limit mats and loose media differ least in uniformity (-1.2 points; -1.7 with
# a half, -2.4 with nine tenths, +1.4 of the inner area). Hardly one cell in five hundred has less.
LEAST_BED = 0.2
LEAST_CELLS = 36  # that can be told, of 72: fewer are not the tray; common practice


@dataclass(frozen=True, slots=True, kw_only=True)
class Bed:
    """Canopy as a share of the growing bed, %."""

    share: float | None
    cells: BedCells  # None where too little of the bed shows in a cell
    uniformity: float | None  # Christiansen, of the cells that are told, %
    reasons: Mapping[str, Reason] = field(default_factory=dict)  # by name of what is None; "cells" for any


def measure_bed(labels: Labels, why_uneven: Reason | None = None) -> Bed:
    """Shares of the bed.

    Parameters
    ----------
    labels : uint8 (rows, columns), values of `Label`; at least 6 x 12 pixels
    why_uneven : why evenness says nothing yet on this tray; None where it does
    """
    grown, bed = canopy(labels), _bed(labels)
    sizes = cell_counts(bed)
    told = sizes >= LEAST_BED * cell_sizes(labels.shape)
    shares = 100.0 * cell_counts(grown) / np.maximum(sizes, 1)
    reasons = _reasons(bed, told, why_uneven)
    return Bed(
        share=None if "share" in reasons else 100.0 * _count(grown) / _count(bed),
        cells=_cells(shares, told),
        uniformity=None if "uniformity" in reasons else christiansen(shares[told]),
        reasons=reasons,
    )


def _bed(labels: Labels) -> Mask:
    """What grows or could be grown over: all but what is outside the tray, and its rim and wall."""
    return np.asarray((labels != Label.OUTSIDE) & (labels != Label.RIM), dtype=np.bool_)


def _cells(shares: Grid, told: Mask) -> BedCells:
    return tuple(
        tuple(share if seen else None for share, seen in zip(row, seen_row, strict=True))
        for row, seen_row in zip(shares.tolist(), told.tolist(), strict=True)
    )


def _reasons(bed: Mask, told: Mask, why_uneven: Reason | None) -> dict[str, Reason]:
    reasons: dict[str, Reason] = {}
    if not bed.any():
        reasons["share"] = Reason.NO_BED
    if not told.all():
        reasons["cells"] = Reason.LITTLE_BED
    if why_uneven is not None:
        reasons["uniformity"] = why_uneven
    elif np.count_nonzero(told) < LEAST_CELLS:
        reasons["uniformity"] = Reason.LITTLE_BED
    return reasons


def _count(mask: Mask) -> int:
    return int(cv2.countNonZero(mask.view(np.uint8)))
