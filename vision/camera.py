"""Camera: focal length and tilt from the four corners of a tray.

In    the homography from the tray's plane to the photo, the photo's size, the focal length where known
Out   focal length in px, tilt in degrees
Not   the pose from marks of several heights (`station.py`)

Square pixels and a principal point in the middle of the photo are taken for granted (Zhang 2000, A flexible
new technique for camera calibration; from memory). Cropped or digitally zoomed photos break that.
"""

import numpy as np
from numpy.typing import NDArray

__all__ = ["Matrix", "focal_from_exif", "focal_from_plane", "homography", "local_scale", "tilt_deg"]

Matrix = NDArray[np.float64]

FILM_DIAGONAL_MM = 43.267  # of 36 x 24 mm
USUAL_FOCAL_35MM = 26.0  # a phone's main camera, from memory
LEAST_TRIANGLE = 1e-6  # twice the area of three corners, against the square of their spread
LEAST_TELLING = 1e-3  # of the denominators: below that the plane is too straight on to tell a focal length


def homography(plane: Matrix, photo: Matrix) -> Matrix:
    """The 3 x 3 matrix, last element 1, that takes four points (4, 2) of a plane to four of the photo.

    Raises ValueError where three of the points lie on a line.

    References
    ----------
    Hartley, R. & Zisserman, A. (2004) Multiple View Geometry in Computer Vision. Section 4.1.
    """
    if any(
        _in_line(np.delete(np.asarray(points, float), k, axis=0))
        for points in (plane, photo)
        for k in range(4)
    ):
        raise ValueError("three of the four corners lie on one line")
    rows, right = [], []
    for (x, y), (u, v) in zip(plane, photo, strict=True):
        rows += [[x, y, 1, 0, 0, 0, -u * x, -u * y], [0, 0, 0, x, y, 1, -v * x, -v * y]]
        right += [u, v]
    solved = np.linalg.solve(np.array(rows, float), np.array(right, float))
    return np.append(solved, 1.0).reshape(3, 3)


def _in_line(three: Matrix) -> bool:
    """True where three points (3, 2) span a triangle without area worth the name."""
    (a, b), (c, d) = three[1] - three[0], three[2] - three[0]
    return bool(abs(a * d - b * c) <= LEAST_TRIANGLE * float(np.ptp(three, axis=0).max()) ** 2)


def local_scale(matrix: Matrix, x: float, y: float) -> tuple[float, float, float]:
    """Enlargement of the plane at a point: least, greatest singular value, root of the area's factor."""
    u, v, w = matrix @ (x, y, 1.0)
    place = np.array([u / w, v / w])
    jacobian = (matrix[:2, :2] - np.outer(place, matrix[2, :2])) / w
    greatest, least = np.linalg.svd(jacobian, compute_uv=False)
    return float(least), float(greatest), float(np.sqrt(abs(np.linalg.det(jacobian))))


def focal_from_exif(focal_35mm: float, size: tuple[int, int]) -> float:
    """Focal length in px of a photo of that width and height, from the one for 36 x 24 mm film."""
    return float(focal_35mm * np.hypot(*size) / FILM_DIAGONAL_MM)


def focal_from_plane(matrix: Matrix, size: tuple[int, int]) -> float | None:
    """Focal length, px, that makes the plane's axes square and alike; None where it looks too straight."""
    (a, b), (c, d), (e, f) = _centred(matrix, size)[:, :2]
    candidates = (
        (abs(e * f), -(a * b + c * d), e * f),
        (abs(e**2 - f**2), b**2 + d**2 - a**2 - c**2, e**2 - f**2),
    )
    weight, above, below = max(candidates, key=lambda candidate: candidate[0])
    reach = float(np.hypot(*size))
    scale = (
        float(np.hypot(a, c) * np.hypot(b, d)) / reach**2
    )  # what the denominator would be at 45 degrees, roughly
    if weight < LEAST_TELLING * scale or above / below <= 0:
        return None
    return float(np.sqrt(above / below))


def tilt_deg(matrix: Matrix, size: tuple[int, int], focal_35mm: float | None) -> float:
    """Angle between the camera's axis and the upright of the plane, degrees.

    The focal length is that of Exif where there is one, else the plane's own, else a usual phone's.
    """
    focal = focal_from_exif(focal_35mm, size) if focal_35mm is not None else focal_from_plane(matrix, size)
    if focal is None:
        focal = focal_from_exif(USUAL_FOCAL_35MM, size)
    axes = np.diag([1 / focal, 1 / focal, 1.0]) @ _centred(matrix, size)[:, :2]
    upright = np.cross(axes[:, 0], axes[:, 1])
    return float(np.degrees(np.arccos(min(1.0, abs(upright[2]) / float(np.linalg.norm(upright))))))


def _centred(matrix: Matrix, size: tuple[int, int]) -> Matrix:
    """The same with the photo's middle as its origin."""
    shift = np.array([[1.0, 0.0, -size[0] / 2], [0.0, 1.0, -size[1] / 2], [0.0, 0.0, 1.0]])
    return np.asarray(shift @ matrix, float)
