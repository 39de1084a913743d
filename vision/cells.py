"""Cells: the 6 rows x 12 columns of equal cells of the inner area, and how alike they are.

In    a mask of one top view, bool (rows, columns); values of cells, %
Out   borders, counts and shares of the cells; Christiansen's coefficient, low-quarter uniformity, variation
Not   where canopy is (`tissue.py`), all numbers of a stand (`stand.py`)
"""

import cv2
import numpy as np
from numpy.typing import NDArray

from vision.tissue import Mask

__all__ = [
    "CELL_COLUMNS",
    "CELL_ROWS",
    "Grid",
    "cell_counts",
    "cell_edges",
    "cell_shares",
    "cell_sizes",
    "christiansen",
    "low_quarter",
    "mean_of",
    "variation",
]

Grid = NDArray[np.float64]

CELL_ROWS = 6
CELL_COLUMNS = 12


def cell_edges(size: tuple[int, int]) -> tuple[NDArray[np.intp], NDArray[np.intp]]:
    """Pixel borders of the cells of a (rows, columns) picture: 7 row borders, 13 column borders.

    Border k lies at k * rows // 6 and k * columns // 12, everywhere in the program; a cell's share is of
    its own pixels (cells of a 1016 x 508 top view are 84 or 85 px).
    """
    rows, columns = size
    return (
        np.arange(CELL_ROWS + 1) * rows // CELL_ROWS,
        np.arange(CELL_COLUMNS + 1) * columns // CELL_COLUMNS,
    )


def cell_shares(mask: Mask) -> Grid:
    """Share of True in each cell, %, (6, 12)."""
    return np.asarray(100.0 * cell_counts(mask) / cell_sizes(mask.shape), dtype=np.float64)


def cell_counts(mask: Mask) -> NDArray[np.int64]:
    """Pixels that are True in each cell, (6, 12)."""
    rows, columns = cell_edges((mask.shape[0], mask.shape[1]))
    sums = cv2.integral(mask.view(np.uint8))[np.ix_(rows, columns)]
    return np.asarray(np.diff(np.diff(sums, axis=0), axis=1), dtype=np.int64)


def cell_sizes(size: tuple[int, ...]) -> NDArray[np.int64]:
    """Pixels of each cell of a (rows, columns) picture, (6, 12)."""
    rows, columns = cell_edges((size[0], size[1]))
    return np.asarray(np.outer(np.diff(rows), np.diff(columns)), dtype=np.int64)


def christiansen(cells: Grid) -> float | None:
    """Christiansen's coefficient of uniformity, %.

    Parameters
    ----------
    cells : coverages, %, any shape

    Returns
    -------
    float or None
        100 where all cells are alike, 0 for one half full and one half bare, below 0 where most are bare;
        None where all are bare.

    Raises
    ------
    ValueError
        If there is no cell or one is not finite.

    References
    ----------
    Christiansen, J. E. (1942) Irrigation by Sprinkling. California Agr. Exp. Sta. Bulletin 670 (not opened
    for this program; the formula as in irrigation handbooks).
    """
    mean = mean_of(cells)
    return None if mean == 0 else float(100 * (1 - np.abs(cells - mean).mean() / mean))


def low_quarter(cells: Grid) -> float | None:
    """Low-quarter uniformity, %: mean of the lowest quarter of the cells (rounded down) over the mean of all.

    None where all are bare. Irrigation engineering, e.g. Keller & Bliesner (1990) Sprinkle and Trickle
    Irrigation (not opened for this program).
    """
    mean = mean_of(cells)
    lowest = np.sort(cells, axis=None)[: max(1, cells.size // 4)]
    return None if mean == 0 else float(100 * lowest.mean() / mean)


def variation(cells: Grid) -> float | None:
    """Coefficient of variation, %: standard deviation (n - 1) over the mean; None where all are bare."""
    mean = mean_of(cells)
    return None if mean == 0 or cells.size < 2 else float(100 * cells.std(ddof=1) / mean)


def mean_of(cells: Grid) -> float:
    """Mean of cells; raises `ValueError` where there is none or one is not finite."""
    if cells.size == 0 or not np.isfinite(cells).all():
        raise ValueError(f"finite values are needed, at least one; got {cells!r}")
    return float(cells.mean())
