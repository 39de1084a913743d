"""Ground: what lies bare between the leaves -> rim, fuzz, things that do not belong there.

In    `Tones` of a top view, where leaves stand, scale in px/mm
Out   masks (rows, columns)
Not   leaves (`leaves.py`), which fuzz is a suspect (`suspects.py`), labels (`tissue.py`)

Thresholds were read off the spread (5th to 95th percentile) of each tissue's colour and texture in 157
rendered trays in white light, per medium. Hulls and root hairs are not told: tried by lightness and
texture, little more than a third of what was so marked was right.
"""

from dataclasses import dataclass

import cv2
import numpy as np

from vision.planes import Mask, Plane, mm_from_edge
from vision.tones import Tones, colourfulness, plane

__all__ = ["WALL_MM", "Ground", "find_foreign", "find_fuzz", "find_rim", "look_at_ground"]

WALL_MM = 32.0  # widest band of inner wall: media lie up to 55 mm below the rim, seen from 0.5 m above
GRAIN_MM = 3.5  # window of colour and texture
LEAST_KNOWN_CM2 = 1.25  # bare ground away from the walls, before its medians are believed
USUAL_LIGHTNESS, USUAL_TONE = (
    25.0,
    20.0,
)  # L* and tone of a medium that cannot be seen: the middle of those rendered

FELT_TONE = 14.0  # felt is greyer than this, or than half the medium's tone (in warm light nothing is grey)
FELT_TEXTURE = (2.0, 8.0)  # finer than hulls and chips, rougher than a wall
FELT_DARKEST = 12.0  # L*
FELT_MM = 2.0  # narrowest piece
GREYER, LITTLE_GREYER = 12.0, 3.0  # tone of the medium less that of the felt
LIGHTER, DARKER = 1.3, 0.9  # L* + 16 of the felt by that of the medium
SHADOW = 0.6  # darker than this against the medium is a shadow; at the walls already 0.8
WALL_SHADOW = 0.8

WALL_TONE, WALL_TEXTURE, WALL_DARK = 22.0, 6.0, 0.5  # smooth and grey, or under half the medium's L*
BURNT = 92.0  # L*: cards and tags
CARD_PX = 9  # narrowest piece of a card; white shoots are narrower


@dataclass(frozen=True, slots=True, kw_only=True)
class Ground:
    """Means over a small window with leaves left out, float32 (rows, columns) each."""

    bare: Mask
    lightness: Plane
    tone: Plane
    """Length of (redness, yellowness): 0 is grey."""
    texture: Plane
    """Standard deviation of L* within the window."""
    from_edge: Plane
    """mm from the nearest side of the top view."""
    usual_lightness: float
    usual_tone: float
    """Medians over the bare ground away from the walls."""


def look_at_ground(tones: Tones, bare: Mask, px_per_mm: float) -> Ground:
    """Colour and texture of the bare ground."""
    side = max(3, int(GRAIN_MM * px_per_mm) | 1)
    kept = bare.astype(np.float32)
    weight = cv2.blur(kept, (side, side)) + 1e-3

    def mean(values: Plane) -> Plane:
        return plane(cv2.divide(cv2.blur(cv2.multiply(values, kept), (side, side)), weight))

    lightness = mean(tones.lightness)
    spread = mean(tones.lightness * tones.lightness) - lightness * lightness
    tone = colourfulness(mean(tones.redness), mean(tones.yellowness))
    from_edge = mm_from_edge(bare.shape, px_per_mm)
    inner = bare & (from_edge > WALL_MM)
    known = np.count_nonzero(inner) > LEAST_KNOWN_CM2 * 100 * px_per_mm**2
    return Ground(
        bare=bare,
        lightness=lightness,
        tone=tone,
        texture=plane(cv2.sqrt(np.maximum(spread, 0))),
        from_edge=from_edge,
        usual_lightness=_median(lightness, inner) if known else USUAL_LIGHTNESS,
        usual_tone=_median(tone, inner) if known else USUAL_TONE,
    )


def find_fuzz(ground: Ground, px_per_mm: float) -> Mask:
    """Fine grey felt that is greyer than the medium: much greyer, or a little and of another lightness."""
    greyer = ground.usual_tone - ground.tone
    light = (ground.lightness + 16) / (ground.usual_lightness + 16)
    differs = (
        (greyer > GREYER) | ((greyer > 0) & (light > LIGHTER)) | ((greyer > LITTLE_GREYER) & (light < DARKER))
    )
    grey = ground.tone < max(FELT_TONE, 0.5 * ground.usual_tone)
    finest, coarsest = FELT_TEXTURE
    fine = (ground.texture > finest) & (ground.texture < coarsest) & (ground.lightness > FELT_DARKEST)
    shadow = light < np.where(ground.from_edge < WALL_MM, WALL_SHADOW, SHADOW)
    felt = (ground.bare & grey & fine & differs & ~shadow).astype(np.uint8)
    side = max(3, int(FELT_MM * px_per_mm) | 1)
    return np.asarray(cv2.morphologyEx(felt, cv2.MORPH_OPEN, np.ones((side, side), np.uint8)) > 0)


def find_rim(ground: Ground, px_per_mm: float) -> Mask:
    """Rim and inner walls: smooth and grey, or far darker than the medium, joined to the picture's border."""
    smooth = (ground.texture < WALL_TEXTURE) & (ground.tone < WALL_TONE)
    dark = ground.lightness < WALL_DARK * ground.usual_lightness
    wall = (ground.bare & (ground.from_edge < WALL_MM) & (smooth | dark)).astype(np.uint8)
    wall = np.asarray(cv2.morphologyEx(wall, cv2.MORPH_OPEN, np.ones((3, 3), np.uint8)), np.uint8)
    count, pieces = cv2.connectedComponents(wall)
    at_border = np.zeros(count, np.bool_)
    at_border[np.unique(pieces[ground.from_edge < 2 / px_per_mm])] = True
    at_border[0] = False
    return np.asarray(at_border[pieces])


def find_foreign(tones: Tones, grown: Mask) -> Mask:
    """Cards and tags: burnt white in one piece."""
    white = ((tones.lightness > BURNT) & ~grown).astype(np.uint8)
    return np.asarray(cv2.morphologyEx(white, cv2.MORPH_OPEN, np.ones((CARD_PX, CARD_PX), np.uint8)) > 0)


def _median(values: Plane, where: Mask) -> float:
    """Of every eighth pixel: the windows overlap, and sorting all costs as much as all else here."""
    return float(np.median(values[where][::8]))
