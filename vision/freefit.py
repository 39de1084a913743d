"""Free fit: marks of a photo that was zoomed or cropped -> the camera, whatever focal length is told.

In    marks, size of the photo, the told focal length, as for `posefit.py`; how well the marks must be suited
Out   `Fit`, None where no such camera is in sight
Not   whether it is to be believed (`station.py`)
"""

import math
from collections.abc import Sequence

from vision.pose import ASIDE_SPREAD, Seen, first_poses, usual_focal
from vision.posefit import Fit, better, fit_pose

__all__ = ["free_fit"]

FREE_SPREAD = 0.4  # of the logarithm of the focal length
STARTS = (1.0, 2.0, 0.5)  # times what is told; where that is far from any phone's, also from a phone's
AS_GOOD = 1.3  # misfit of a fit that needs no other


def free_fit(
    seen: Sequence[Seen], size: tuple[int, int], focal_35mm: float | None, most: float
) -> Fit | None:
    """The same of a photo that was zoomed, or also cropped: there the optical axis lies aside of its middle.

    That it was cropped is believed only where another focal length alone does not do. None where no misfit
    of up to `most` is in sight.
    """
    zoomed = _freed(seen, size, focal_35mm, most, None)
    if zoomed is not None and zoomed.misfit <= AS_GOOD:
        return zoomed
    cropped = _freed(seen, size, focal_35mm, most, ASIDE_SPREAD * math.hypot(*size))
    if zoomed is None or cropped is None:
        return zoomed or cropped
    return cropped if cropped.misfit * AS_GOOD < zoomed.misfit else zoomed


def _freed(
    seen: Sequence[Seen],
    size: tuple[int, int],
    focal_35mm: float | None,
    most: float,
    aside_spread: float | None,
) -> Fit | None:
    best: Fit | None = None
    for focal in _first_focals(size, focal_35mm):
        for start in first_poses(seen, size, focal):
            fit = fit_pose(seen, start, FREE_SPREAD, aside_spread=aside_spread, hopeless=AS_GOOD * most)
            best = better(best, fit)
        if best is not None and best.misfit <= 1.0:
            break
    return best


def _first_focals(size: tuple[int, int], focal_35mm: float | None) -> list[float]:
    (told, _), (phones, _) = usual_focal(size, focal_35mm), usual_focal(size, None)
    near = min(STARTS) <= phones / told <= max(STARTS)
    return [told * times for times in STARTS] + ([] if near else [phones])
