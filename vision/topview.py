"""Top view: photo and corners -> the inner area seen from above, at 2 px/mm, in sRGB.

In    `Photo`, `Corners`
Out   `TopView`: 1016 x 508 px, long side across, with the scale and the tilt of the photo
Not   white balance (`light.py`)

One warp does everything: perspective, the turn that Exif asks for (the corners are those of the stored
photo), the lens where its terms are known. The photo is shrunk with an area filter, for a plain warp drops
pixels: it doubles the sharpness and lets fine leaves flicker from day to day.
"""

from dataclasses import dataclass

import cv2
import numpy as np

from vision.camera import Matrix, homography, local_scale, tilt_deg
from vision.corners import Corners
from vision.lens import Bend
from vision.photo import Photo, Pixels, in_srgb

__all__ = [
    "LONG_MM",
    "PX_PER_MM",
    "SHORT_MM",
    "TOP_HEIGHT",
    "TOP_WIDTH",
    "TopView",
    "make_top_view",
    "top_scale",
    "tray_quad",
]

TOP_WIDTH = 1016
TOP_HEIGHT = 508
PX_PER_MM = 2.0
LONG_MM = 508.0
SHORT_MM = 254.0

FINER = 2  # the warp samples this many times finer in each direction, then averages
MOST_SHRINK = 1.75  # photo px per sample: measured, below that linear sampling of a finer grid is right
MARGIN_PX = 4
STRIP_ROWS = 16

FRAME = np.array([[0, 0], [TOP_WIDTH, 0], [TOP_WIDTH, TOP_HEIGHT], [0, TOP_HEIGHT]], float)


@dataclass(frozen=True, slots=True, kw_only=True)
class TopView:
    """The inner area as seen from above."""

    pixels: Pixels  # (508, 1016, 3) sRGB; black where the tray leaves the photo
    photo_px_per_mm: float  # least over the four corners, of the photo, by the tray's own measures
    tilt_deg: float | None
    homography: Matrix  # 3 x 3, edge coordinates of the top view -> of the stored photo (freed from the lens)


def top_scale(inner_long_mm: float, inner_short_mm: float) -> float:
    """Pixels per mm of the top view of a tray: 2.0 for the nominal one.

    Every inner area becomes 1016 x 508 px. Where it is not twice as long as wide, this is the geometric mean
    of the two directions: shares and areas are right, and `ownmm.py` puts places right.
    """
    return float(np.sqrt(TOP_WIDTH * TOP_HEIGHT / (inner_long_mm * inner_short_mm)))


def make_top_view(
    photo: Photo, corners: Corners, inner_mm: tuple[float, float] = (LONG_MM, SHORT_MM)
) -> TopView:
    """The inner area of a photo, warped to 1016 x 508 px; `inner_mm` are its long and short side.

    Raises ValueError where three corners lie on one line.
    """
    bend = corners.bend(photo.size_stored)
    plane = homography(FRAME, bend.freed(np.array(corners.points, float)))
    own = plane @ np.diag([TOP_WIDTH / inner_mm[0], TOP_HEIGHT / inner_mm[1], 1.0])  # from mm on this tray
    scales = [local_scale(own, x, y) for x, y in FRAME / (TOP_WIDTH, TOP_HEIGHT) * inner_mm]
    shrink = float(np.mean([scale[2] for scale in scales])) / top_scale(*inner_mm)
    box, times = _crop(photo, corners, shrink)
    source = _rimmed(_shrunk(photo.pixels, box, times))
    origin = (box[0] - times, box[1] - times)  # of the source with its rim, in the photo
    if corners.lens == (0.0, 0.0):
        top = _averaged(_warped(source, plane, origin, times))
    else:
        top = _warped_through_lens(source, plane, origin, times, bend)
    tilt = corners.tilt_deg
    return TopView(
        pixels=in_srgb(top, photo.profile),
        photo_px_per_mm=min(scale[0] for scale in scales),
        tilt_deg=tilt if tilt is not None else tilt_deg(own, photo.size_stored, photo.focal_35mm),
        homography=plane,
    )


def tray_quad(top: TopView, times: float = 1.0) -> Matrix:
    """The inner area, enlarged about its middle, in the stored photo: four points (4, 2), top left first."""
    middle = FRAME.mean(axis=0)
    corners = np.column_stack([middle + (FRAME - middle) * times, np.ones(4)]) @ top.homography.T
    return np.asarray(corners[:, :2] / corners[:, 2:], float)


def _crop(photo: Photo, corners: Corners, shrink: float) -> tuple[tuple[int, int, int, int], int]:
    """The part of the photo to look at (left, top, right, bottom); how many times it is shrunk first."""
    times = 1 << max(0, int(np.floor(np.log2(max(shrink, 1e-6) / MOST_SHRINK))))
    width, height = photo.size_stored
    points = np.array(corners.points, float)
    bow = 0.02 * float(np.ptp(points, axis=0).max()) if corners.lens != (0.0, 0.0) else 0.0
    margin = MARGIN_PX * times + bow
    left, top = np.clip(np.floor(points.min(axis=0) - margin), 0, (width - 1, height - 1)).astype(int)
    right, bottom = np.clip(
        np.ceil(points.max(axis=0) + margin), (left + 1, top + 1), (width, height)
    ).astype(int)
    return (int(left), int(top), int(right), int(bottom)), times


def _shrunk(pixels: Pixels, box: tuple[int, int, int, int], times: int) -> Pixels:
    left, top, right, bottom = box
    part = pixels[top:bottom, left:right]
    wide, high = part.shape[1] // times, part.shape[0] // times
    if times == 1 or min(wide, high) == 0:
        return part
    part = part[: high * times, : wide * times]  # whole blocks only, so that edge coordinates just divide
    return np.asarray(cv2.resize(part, (wide, high), interpolation=cv2.INTER_AREA), np.uint8)


def _rimmed(source: Pixels) -> Pixels:
    """With one pixel more all round: the outer half of the photo's last pixels is not black."""
    return np.asarray(cv2.copyMakeBorder(source, 1, 1, 1, 1, cv2.BORDER_REPLICATE), np.uint8)


def _warped(source: Pixels, plane: Matrix, origin: tuple[int, int], times: int) -> Pixels:
    """The finer top view by one warp; OpenCV counts from pixel centres, hence the half pixels."""
    to_source = np.diag([1 / times, 1 / times, 1.0]) @ _shift(-origin[0], -origin[1])
    back = _shift(-0.5, -0.5) @ to_source @ plane @ np.diag([1 / FINER, 1 / FINER, 1.0]) @ _shift(0.5, 0.5)
    flags = cv2.INTER_LINEAR | cv2.WARP_INVERSE_MAP
    return np.asarray(
        cv2.warpPerspective(source, back, (TOP_WIDTH * FINER, TOP_HEIGHT * FINER), flags=flags), np.uint8
    )


def _averaged(fine: Pixels) -> Pixels:
    """The finer top view, or some rows of it, at 2 px/mm."""
    size = (fine.shape[1] // FINER, fine.shape[0] // FINER)
    return np.asarray(cv2.resize(fine, size, interpolation=cv2.INTER_AREA), np.uint8)


def _warped_through_lens(
    source: Pixels,
    plane: Matrix,
    origin: tuple[int, int],
    times: int,
    lens: Bend,
) -> Pixels:
    """The top view where the photo is bent by its lens; strip by strip: the sums stay in the cache."""
    (k1, k2), centre = lens.terms, lens.middle
    x = (np.arange(TOP_WIDTH * FINER) + 0.5) / FINER
    top = np.empty((TOP_HEIGHT, TOP_WIDTH, 3), np.uint8)
    for row in range(0, TOP_HEIGHT, STRIP_ROWS):
        strip = top[row : row + STRIP_ROWS]
        y = (np.arange(len(strip) * FINER)[:, None] + row * FINER + 0.5) / FINER
        below = plane[2, 0] * x + plane[2, 1] * y + plane[2, 2]
        u = (plane[0, 0] * x + plane[0, 1] * y + plane[0, 2]) / below - centre[0]
        v = (plane[1, 0] * x + plane[1, 1] * y + plane[1, 2]) / below - centre[1]
        square = (u * u + v * v) / lens.reach**2
        bend = 1 + k1 * square + k2 * square * square
        across = ((u * bend + centre[0] - origin[0]) / times - 0.5).astype(np.float32)
        down = ((v * bend + centre[1] - origin[1]) / times - 0.5).astype(np.float32)
        strip[:] = _averaged(np.asarray(cv2.remap(source, across, down, cv2.INTER_LINEAR), np.uint8))
    return top


def _shift(x: float, y: float) -> Matrix:
    return np.array([[1.0, 0.0, x], [0.0, 1.0, y], [0.0, 0.0, 1.0]])
