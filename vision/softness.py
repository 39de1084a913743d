"""Softness: how much of a tray is blurred while the rest of it is sharp.

In    top view, uint8 (rows, columns, 3), sRGB
Out   share of its places that are far softer than the sharp ones, %
Not   a photo that is blurred all over (`sharpness.py`), something smooth over the tray (`smooth.py`)

Portrait mode blurs what lies away from the middle, a greasy lens one side. Where the photo is sharp,
contrast within half a millimetre goes with contrast within four; blur takes the fine one alone. Of 239
rendered photos in white light one had 11.9 % of its places under half of the sharp ones' share, one 4.8,
the others none (144 are the demonstration's, which proves nothing of the bar). With three tenths of the
tray blurred by 1.5 mm (standard deviation) 44 of 44 were over the bar, by 3 mm 38; blurred by more many are
missed: no contrast is left to tell it by. In one that was blurred away from the middle coverage was 13
points too low. Rendered photos are sharp everywhere: real lenses may come nearer to the bar.
"""

import cv2
import numpy as np

from vision.planes import Pixels

__all__ = ["MOST_SOFT_PCT", "soft_pct"]

MOST_SOFT_PCT = 14.0
FINE_PX, COARSE_PX = 1.0, 8.0  # sd of the blurs that contrast is measured against, 0.5 and 4 mm
SHRUNK = 2  # times, for the coarse one
LOG = np.log(np.arange(256, dtype=np.float32) + 8)
COLUMNS, ROWS = 16, 8  # of places; those beside the rim are left out, for walls are smooth
LEAST_CONTRAST = 0.03  # coarse, natural logarithm: a place with less tells nothing
FEWEST = 20  # places
SHARP = 75.0  # percentile of places, which counts as sharp
SOFT = 0.5  # of the sharp ones' share


def soft_pct(top: Pixels) -> float:
    """Share of the places with contrast that are blurred beside the sharp ones, %; 0 where few have any."""
    light = cv2.LUT(cv2.cvtColor(top, cv2.COLOR_RGB2GRAY), LOG)
    near = cv2.GaussianBlur(light, (0, 0), FINE_PX)
    small = cv2.resize(near, None, fx=1 / SHRUNK, fy=1 / SHRUNK, interpolation=cv2.INTER_AREA)
    far = cv2.GaussianBlur(small, (0, 0), COARSE_PX / SHRUNK)
    fine, coarse = (
        cv2.resize(cv2.absdiff(*two), (COLUMNS, ROWS), interpolation=cv2.INTER_AREA)[1:-1, 1:-1]
        for two in ((light, near), (small, far))
    )
    told = coarse > LEAST_CONTRAST
    if np.count_nonzero(told) < FEWEST:
        return 0.0
    share = fine[told] / coarse[told]
    return 100 * float(np.mean(share < SOFT * np.percentile(share, SHARP)))
