"""Veil: what lies over the bare part of a tray while its canopy is mended, as pixels; no Qt.

In    the canopy, bool (rows, columns)
Out   uint8 (rows, columns, 4): blue, green, red, alpha, multiplied by alpha; clear over canopy
Not   painting it (`brushview.py`)

Dark with stripes, and a line along the canopy's edge, so that it is told by pattern as well as by colour.
"""

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    from gui.mend.canopymask import Patch

__all__ = ["draw_veil", "veil_of"]

VEIL = (34, 16, 10, 96)
STRIPE = (58, 40, 34, 150)
EDGE = (0xE9, 0xB4, 0x56, 255)  # sky blue, as the canopy's outline in the layers
STRIPES_EVERY = 12  # pixels of the top view


def veil_of(canopy: "NDArray[np.bool_]") -> "NDArray[np.uint8]":
    """The veil of a whole tray; 20 ms, for a worker."""
    import numpy as np

    from gui.mend.canopymask import Patch

    rows, columns = canopy.shape
    veil = np.empty((rows, columns, 4), np.uint8)
    draw_veil(veil, canopy, Patch(left=0, top=0, right=columns, bottom=rows))
    return veil


def draw_veil(veil: "NDArray[np.uint8]", canopy: "NDArray[np.bool_]", patch: "Patch") -> None:
    """Draw a part of it anew, with a pixel around it: its edge may have changed as well."""
    import numpy as np

    rows, columns = canopy.shape
    left, top = max(0, patch.left - 1), max(0, patch.top - 1)
    right, bottom = min(columns, patch.right + 1), min(rows, patch.bottom + 1)
    part = canopy[top:bottom, left:right]
    around = canopy[max(0, top - 1) : bottom + 1, max(0, left - 1) : right + 1]
    missing = ((int(top == 0), int(bottom == rows)), (int(left == 0), int(right == columns)))
    bare = ~np.pad(around, missing, mode="edge")
    beside = bare[:-2, 1:-1] | bare[2:, 1:-1] | bare[1:-1, :-2] | bare[1:-1, 2:]
    down, across = np.ogrid[top:bottom, left:right]
    colours = np.array([VEIL, STRIPE, (0, 0, 0, 0), EDGE], np.uint8)
    kinds = ((down + across) % STRIPES_EVERY < 2).astype(np.uint8)
    kinds[part] = 2
    kinds[part & beside] = 3
    veil[top:bottom, left:right] = colours[kinds]
