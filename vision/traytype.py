"""Tray type and station: where everything that a camera looks for lies, in tray axes.

In    the measures of one kind of tray (mm), the nominal 10 x 20 inch tray unless the grower says otherwise
Out   places in mm: marks of the station cards, corners of the inner area, plane of the tag
Not   finding them in a photo (`markers.py`), the camera (`pose.py`)

Tray axes: origin at the middle of the inner area in the plane of the rim top, x along the long side to the
right, y to the far side, z up. Quads run clockwise as seen from above, from the mark's own top left.

The window asks for a tray type before it shows anything, so numpy comes in only with the places.
"""

from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Points = NDArray[np.float64]

__all__ = [
    "CARD_MARK_MM",
    "CARD_MM",
    "GREY_MM",
    "PATCH_MM",
    "TAG_HEIGHT_MM",
    "TAG_MARK_MM",
    "TAG_MM",
    "WHITE_MM",
    "TrayType",
    "square",
]

CARD_MM = 72.0  # side of a station card; its mark lies in the middle
CARD_MARK_MM = 48.0  # black square, 8 modules
CARD_THICKNESS_MM = 0.6
CARD_INSET_MM = 52.5  # mark centre inward from the tray's outer end, along the long side
CARD_OUTSET_MM = 78.0  # mark centre outward from the tray's outer long side

TAG_MM = (88.0, 40.0)
TAG_MARK_MM = 28.0
TAG_HEIGHT_MM = 2.0  # the tag lies on the rim
# places on the tag from the middle of its mark: x to the right, y up, as one reads it
TAG_MIDDLE_MM = (24.0, 0.0)
WHITE_MM = (32.0, 9.0)
GREY_MM = (32.0, -9.0)
PATCH_MM = 16.0


@dataclass(frozen=True, slots=True, kw_only=True)
class TrayType:
    """One kind of tray, mm; height is that of the rim's top above the bench."""

    name: str = ""  # as the book knows it; no part of the measures
    outer_long_mm: float = 545.0
    outer_short_mm: float = 278.0
    inner_long_mm: float = 508.0
    inner_short_mm: float = 254.0
    rim_height_mm: float = 61.0
    cards_off_mm: tuple[tuple[float, float], ...] = ()
    """How far each card of its station was measured to lie from its place, to the right and to the far side,
    by number; empty where all lie as drawn."""

    @property
    def inner_cm2(self) -> float:
        """The inner area."""
        return self.inner_long_mm * self.inner_short_mm / 100.0

    @property
    def card_height_mm(self) -> float:
        """Height of the card marks against the rim top; negative, for they lie on the bench."""
        return CARD_THICKNESS_MM - self.rim_height_mm

    def card_centres(self) -> "Points":
        """(4, 3) mm: mark centres of cards 0 far left, 1 far right, 2 near right, 3 near left, where they
        were measured to lie."""
        import numpy as np

        x = self.outer_long_mm / 2 - CARD_INSET_MM
        y = self.outer_short_mm / 2 + CARD_OUTSET_MM
        z = self.card_height_mm
        places = np.array([[-x, y, z], [x, y, z], [x, -y, z], [-x, -y, z]])
        if self.cards_off_mm:
            places[:, :2] += self.cards_off_mm
        return places

    def card_quad(self, number: int) -> "Points":
        """(4, 3) mm: corners of one card's mark."""
        import numpy as np

        return np.asarray(self.card_centres()[number] + square(CARD_MARK_MM), np.float64)

    def inner_corners(self) -> "Points":
        """(4, 3) mm: corners of the inner area at rim height; far left, far right, near right, near left."""
        import numpy as np

        x, y = self.inner_long_mm / 2, self.inner_short_mm / 2
        return np.array([[-x, y, 0.0], [x, y, 0.0], [x, -y, 0.0], [-x, -y, 0.0]])


def square(side_mm: float) -> "Points":
    """(4, 3): corners of a level square about the origin, clockwise from the top left."""
    import numpy as np

    h = side_mm / 2
    return np.array([[-h, h, 0.0], [h, h, 0.0], [h, -h, 0.0], [-h, -h, 0.0]])
