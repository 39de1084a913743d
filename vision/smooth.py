"""Smooth: top view and its labels -> how much of the tray lies under something smooth.

In    top view, uint8 (rows, columns, 3), sRGB; its labels (rows, columns); scale in px/mm
Out   the largest smooth piece that is no leaf, % of the top view; where it is smooth
Not   light over a part of the tray (`glare.py`) or over all of it (`veil.py`); what the thing is

Seeds, hulls, fibres and grains leave no bare place of a tray without contrast within a millimetre. A hand,
a glove, a hose, a blade, or a drop on the lens, behind which all is blurred, has next to none. Walls are
smooth, too, so nothing is looked for within 36 mm of the rim.

Of 239 rendered photos in white light the largest piece was 0.4 %, softened by half a millimetre 0.9 %;
through JPEG 40, WebP 50, half their size, a median or a bilateral filter (every second one) 0.7 %. On eight
of them a drawn hand, glove, hose and scissors had 2.1 to 7 %, and cost up to 10 points of coverage; a card
has its own share. The bar was laid between the two groups; 144 of the 239 are the demonstration's, which
proves nothing of it.
"""

import cv2
import numpy as np
from numpy.typing import NDArray

from vision.cielab import lab
from vision.ground import WALL_MM
from vision.planes import Mask, Pixels, mm_from_edge
from vision.tissue import Labels, canopy

__all__ = ["MOST_SMOOTH_PCT", "smooth_pct", "smooth_things"]

MOST_SMOOTH_PCT = 1.5
GRAIN_PX = 2.0  # sd of the blur that contrast is measured against, 1 mm on a nominal tray
CELL_PX = 4
WINDOW = 3  # cells over which contrast is averaged
NARROWEST = 3  # cells
SMOOTH = 0.025  # contrast, natural logarithm of L* + 16; the smoothest medium, white paper, has 0.05
OF_USUAL = 0.4  # of the tray's middle contrast, which blur and a camera's smoothing lower everywhere
MOST_CONTRAST = 0.5  # of a pixel: single glints
BARE = 0.7  # of a cell
WINDOW_MM = 4.0  # half a window and what the opening takes beside a wall


def smooth_pct(top: Pixels, labels: Labels, px_per_mm: float) -> float:
    """Largest smooth piece that is no canopy, % of the top view. Felt has grain; a glove may pass for it."""
    return _largest_pct(_smooth_cells(top, px_per_mm), labels)


def smooth_things(top: Pixels, labels: Labels, px_per_mm: float) -> Mask | None:
    """Cells of 4 px that are smooth, whatever they were taken for; None where nothing hides the tray."""
    cells = _smooth_cells(top, px_per_mm)
    return cells if _largest_pct(cells, labels) > MOST_SMOOTH_PCT else None


def _smooth_cells(top: Pixels, px_per_mm: float) -> Mask:
    """Cells of 4 px, away from the walls, that have next to no contrast."""
    contrast = _contrast(top)
    inner = mm_from_edge(contrast.shape, px_per_mm / CELL_PX) > WALL_MM + WINDOW_MM
    if not inner.any():
        return inner
    return np.asarray(
        inner & (contrast < min(SMOOTH, OF_USUAL * float(np.median(contrast[inner])))), np.bool_
    )


def _largest_pct(cells: Mask, labels: Labels) -> float:
    open_ground = (~canopy(labels)).astype(np.float32)
    bare = cv2.resize(open_ground, cells.shape[::-1], interpolation=cv2.INTER_AREA) > BARE
    narrowest = cv2.getStructuringElement(cv2.MORPH_ELLIPSE, (NARROWEST, NARROWEST))
    wide = cv2.morphologyEx((cells & bare).astype(np.uint8), cv2.MORPH_OPEN, narrowest)
    _, _, boxes, _ = cv2.connectedComponentsWithStats(wide)
    return 100 * float(boxes[1:, cv2.CC_STAT_AREA].max(initial=0)) / cells.size


def _contrast(top: Pixels) -> NDArray[np.float32]:
    """Mean difference of each pixel from what is within a millimetre of it, over windows of cells."""
    size = (top.shape[1] // CELL_PX, top.shape[0] // CELL_PX)
    log = np.log(lab(top)[:, :, 0] + 16)
    fine = np.minimum(np.abs(log - cv2.GaussianBlur(log, (0, 0), GRAIN_PX)), MOST_CONTRAST)
    return np.asarray(
        cv2.blur(cv2.resize(fine, size, interpolation=cv2.INTER_AREA), (WINDOW, WINDOW)), np.float32
    )
