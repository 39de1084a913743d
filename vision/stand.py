"""Stand: tissue labels -> coverage, cells, uniformity, share of the bed, clumping, edge, gradients, gaps.

In    labels of one top view, uint8 (rows, columns), see `tissue.Label`; scale in px/mm, None where unknown
Out   `Stand`: shares in % of the inner area, areas in cm2, places in mm from its top left corner
Not   colour (`colour.py`), mold (`suspects.py`), the grid (`cells.py`), what is bed (`bed.py`)

Cells are 6 rows x 12 columns. Uniformity is Christiansen's coefficient (Christiansen 1942), clumping
is Moran's I (Moran 1950), rook neighbours, each join counted alike. What says nothing yet is None, with the
reason: without canopy there is no uniformity, and until a tenth is covered nothing is a gap. The crop's age
is not known here: whether a gap should worry anyone the caller must judge.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

import cv2
import numpy as np

from vision.bed import BedCells, measure_bed
from vision.cells import (
    CELL_COLUMNS,
    CELL_ROWS,
    Grid,
    cell_shares,
    christiansen,
    low_quarter,
    mean_of,
    variation,
)
from vision.reason import Reason
from vision.tissue import Label, Labels, Mask, canopy

__all__ = [
    "Gap",
    "Stand",
    "expected_clumping",
    "find_gaps",
    "gradient",
    "measure_stand",
    "morans_i",
]

LEAST_GAP_CM2 = 4.0  # our definition of a gap
EDGE_BAND_MM = 25.0  # our definition of the edge
LEAST_CORE_MM = 20.0  # of the middle that it is held against, either way
MM2_PER_CM2 = 100.0
OUTLINE_MM = 1.0  # of a young tray the gap is all of the ground: to within a pixel 1.7 times as many points
LITTLE_CANOPY_PCT = 10.0  # common practice: below it, evenness says nothing yet


@dataclass(frozen=True, slots=True, kw_only=True)
class Gap:
    """A connected bare piece of at least 4 cm2."""

    x_mm: float  # centre of gravity, along the long side
    y_mm: float
    area_cm2: float
    outline_mm: tuple[tuple[float, float], ...]  # outer outline, (x, y)


@dataclass(frozen=True, slots=True, kw_only=True)
class Stand:
    """How the canopy stands in one tray. Shares in % of the inner area, where not of the bed."""

    coverage: float  # pale + green + red
    green: float
    pale: float
    red: float
    cells: tuple[tuple[float, ...], ...]  # coverage of each cell, 6 rows of 12
    uniformity: float | None  # Christiansen, %; 100 = all cells alike, may be negative
    low_quarter: float | None  # mean of the lowest quarter of the cells over the mean, %
    variation: float | None  # coefficient of variation of the cells, %
    clumping: float | None  # Moran's I of the cells, rook, binary
    edge_deficit: float | None  # core minus outer 25 mm band, points
    gradient_x: float | None  # points per 100 mm along the long side, left to right
    gradient_y: float | None  # points per 100 mm along the short side, far to near
    gap_share: float | None  # all gaps together, % of the inner area
    gaps: tuple[Gap, ...]  # largest first; empty also where `gap_share` is None
    bed_share: float | None  # canopy in % of the growing bed, for comparing media at different heights
    bed_cells: BedCells  # the same of each cell, 6 rows of 12; None where too little of the bed shows
    bed_uniformity: float | None  # Christiansen of those cells, %
    reasons: Mapping[str, Reason] = field(default_factory=dict)  # by name of the field that is None


def measure_stand(labels: Labels, px_per_mm: float | None = 2.0) -> Stand:
    """All numbers of the stand from tissue labels.

    Parameters
    ----------
    labels : uint8 (rows, columns), values of `Label`; at least 6 x 12 pixels
    px_per_mm : scale of the labels; None where it is not known (lengths and areas are then None)

    Returns
    -------
    Stand
        Fields that cannot be had are None and named in `reasons`.

    Raises
    ------
    ValueError
        If the labels are no uint8 picture of at least 6 x 12 pixels, or the scale is not positive.
    """
    _at_the_door(labels, px_per_mm)
    mask = canopy(labels)
    cells = cell_shares(mask)
    reasons = _reasons(_share(mask), cells, px_per_mm)
    even = "uniformity" not in reasons
    bed = measure_bed(labels, reasons.get("uniformity"))
    reasons |= {f"bed_{name}": why for name, why in bed.reasons.items()}
    gaps: tuple[Gap, ...] = ()
    edge_deficit = gradient_x = gradient_y = gap_share = None
    if px_per_mm is not None:
        if "gap_share" not in reasons:
            gaps = find_gaps(mask, px_per_mm)
            gap_share = 100.0 * sum(gap.area_cm2 for gap in gaps) / (mask.size / px_per_mm**2 / MM2_PER_CM2)
        core = _core(mask, px_per_mm)
        edge_deficit = None if core is None else _edge_deficit(mask, core)
        reasons |= {"edge_deficit": Reason.ALL_EDGE} if core is None else {}
        gradient_x, gradient_y = gradient(cells, _cell_mm(mask, px_per_mm))
    return Stand(
        coverage=_share(mask),
        green=_share(labels == Label.GREEN),
        pale=_share(labels == Label.PALE),
        red=_share(labels == Label.RED),
        cells=tuple(tuple(row) for row in cells.tolist()),
        uniformity=christiansen(cells) if even else None,
        low_quarter=low_quarter(cells) if even else None,
        variation=variation(cells) if even else None,
        clumping=morans_i(cells) if "clumping" not in reasons else None,
        edge_deficit=edge_deficit,
        gradient_x=gradient_x,
        gradient_y=gradient_y,
        gap_share=gap_share,
        gaps=gaps,
        bed_share=bed.share,
        bed_cells=bed.cells,
        bed_uniformity=bed.uniformity,
        reasons=reasons,
    )


def morans_i(grid: Grid) -> float | None:
    """Moran's I of a grid of values: cells that share a side are neighbours, each pair with weight 1.

    Near 1 where like lies beside like, near `expected_clumping` where values are strewn at random, -1 for a
    checkerboard; a plain gradient raises it as clumps do. None where all values are alike.

    References
    ----------
    Moran, P. A. P. (1950) Notes on continuous stochastic phenomena. Biometrika 37, 17-23 (formula as in the
    documentation of the PySAL library).
    """
    z = grid - mean_of(grid)
    spread = float((z * z).sum())
    if np.ptp(grid) == 0 or spread == 0:
        return None
    along = float((z[:, 1:] * z[:, :-1]).sum())
    down = float((z[1:] * z[:-1]).sum())
    pairs = z[:, 1:].size + z[1:].size
    return grid.size / pairs * (along + down) / spread


def expected_clumping(cells: int = CELL_ROWS * CELL_COLUMNS) -> float:
    """What Moran's I is on average where nothing clumps: -1 / (n - 1)."""
    return -1.0 / (cells - 1)


def gradient(cells: Grid, cell_mm: tuple[float, float]) -> tuple[float, float]:
    """Slope of the least-squares plane through the cells, points per 100 mm, (to the right, downwards).

    `cell_mm` is one cell's (width, height). On a full grid the plane's two slopes are those of two straight
    lines, since the centred coordinates are orthogonal.
    """
    rows, columns = cells.shape
    x = (np.arange(columns) - (columns - 1) / 2) * cell_mm[0]
    y = (np.arange(rows) - (rows - 1) / 2) * cell_mm[1]
    return (
        float(100.0 * (cells * x).sum() / (rows * (x * x).sum())),
        float(100.0 * (cells * y[:, None]).sum() / (columns * (y * y).sum())),
    )


def find_gaps(mask: Mask, px_per_mm: float, least_cm2: float = LEAST_GAP_CM2) -> tuple[Gap, ...]:
    """Bare pieces (`mask`: canopy), joined over pixel sides, of at least `least_cm2`, largest first."""
    bare = (~mask).view(np.uint8)
    _, pieces, stats, centres = cv2.connectedComponentsWithStats(bare, connectivity=4, ltype=cv2.CV_32S)
    area_cm2 = stats[:, cv2.CC_STAT_AREA] / px_per_mm**2 / MM2_PER_CM2
    large = [k for k in range(1, len(stats)) if area_cm2[k] >= least_cm2]
    gaps = (
        Gap(
            x_mm=(float(centres[k][0]) + 0.5) / px_per_mm,
            y_mm=(float(centres[k][1]) + 0.5) / px_per_mm,
            area_cm2=float(area_cm2[k]),
            outline_mm=_outline_mm(pieces == k, stats[k].tolist(), px_per_mm),
        )
        for k in large
    )
    return tuple(sorted(gaps, key=lambda gap: -gap.area_cm2))


def _at_the_door(labels: Labels, px_per_mm: float | None) -> None:
    if labels.dtype != np.uint8 or labels.ndim != 2:
        raise ValueError(f"labels are uint8 (rows, columns); got {labels.dtype} {labels.shape}")
    if labels.shape[0] < CELL_ROWS or labels.shape[1] < CELL_COLUMNS:
        raise ValueError(f"labels need at least {CELL_ROWS} x {CELL_COLUMNS} pixels; got {labels.shape}")
    if px_per_mm is not None and px_per_mm <= 0:
        raise ValueError(f"a scale is positive, in px/mm; got {px_per_mm}")


def _reasons(coverage: float, cells: Grid, px_per_mm: float | None) -> dict[str, Reason]:
    """Why numbers are missing, by name of the field."""
    reasons: dict[str, Reason] = {}
    if coverage < LITTLE_CANOPY_PCT:
        why = Reason.LITTLE_CANOPY if coverage > 0 else Reason.NO_CANOPY
        reasons |= dict.fromkeys(("uniformity", "low_quarter", "variation"), why)
        reasons["gap_share"] = Reason.NOT_UP
    if np.ptp(cells) == 0:
        reasons["clumping"] = Reason.ALL_ALIKE if coverage > 0 else Reason.NO_CANOPY
    if px_per_mm is None:
        reasons |= dict.fromkeys(("edge_deficit", "gradient_x", "gradient_y", "gap_share"), Reason.NO_SCALE)
    return reasons


def _share(mask: Mask) -> float:
    return 100.0 * cv2.countNonZero(mask.view(np.uint8)) / mask.size


def _cell_mm(mask: Mask, px_per_mm: float) -> tuple[float, float]:
    rows, columns = mask.shape
    return columns / CELL_COLUMNS / px_per_mm, rows / CELL_ROWS / px_per_mm


def _core(mask: Mask, px_per_mm: float) -> Mask | None:
    """The middle, inside the outer band; None where the tray is too small to have one."""
    width = round(EDGE_BAND_MM * px_per_mm)
    core = mask[width:-width, width:-width]
    return core if min(core.shape) >= LEAST_CORE_MM * px_per_mm else None


def _edge_deficit(mask: Mask, core: Mask) -> float:
    """Coverage of the middle minus that of the outer band, points; positive where the edge is thinner."""
    band = (int(np.count_nonzero(mask)) - int(np.count_nonzero(core))) / (mask.size - core.size)
    return float(100.0 * (np.count_nonzero(core) / core.size - band))


def _outline_mm(piece: Mask, box: Sequence[int], px_per_mm: float) -> tuple[tuple[float, float], ...]:
    """Outer outline through the border pixels' centres, thinned to within 1 mm."""
    left, top, width, height = box[:4]
    inside = np.ascontiguousarray(piece[top : top + height, left : left + width]).view(np.uint8)
    outlines, _ = cv2.findContours(inside, cv2.RETR_EXTERNAL, cv2.CHAIN_APPROX_SIMPLE)
    thinned = cv2.approxPolyDP(max(outlines, key=len), OUTLINE_MM * px_per_mm, closed=True)[:, 0]
    shifted = (thinned + np.array([left + 0.5, top + 0.5])) / px_per_mm
    return tuple((x, y) for x, y in shifted.tolist())
