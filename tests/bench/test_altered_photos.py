"""Photos that filters, lamps and glare have changed: how far coverage is off, and which pass in silence.

EVENSTAND_PHOTOS=DIR [EVENSTAND_NAMES=a06,a07] pytest -m sweep -s tests/bench/test_altered_photos.py

DIR as in `test_tissue_sweep.py`; EVENSTAND_NAMES are beginnings of the names to take. Corners are the true
ones, marks are looked for. Filters are those of W3C, Filter Effects Module Level 1 (matrices from memory),
lamps multiply linear light, glare is added to it. Every changed photo is stored as JPEG 90 and read again.
"""

import json
import os
from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from io import BytesIO
from pathlib import Path

import cv2
import numpy as np
import pytest
from numpy.typing import NDArray
from PIL import Image

from vision.cielab import encoded, linear
from vision.corners import Corners, CornersFrom
from vision.methods import best_tissue
from vision.photo import Photo, Pixels, decode_photo, read_photo
from vision.reason import RETAKE
from vision.score import Refused, score_photo
from vision.tissue import Tissue, canopy

pytestmark = [pytest.mark.sweep, pytest.mark.timeout(3600)]

WRONG = 5.0  # points of coverage
LUMINANCE = np.array([0.213, 0.715, 0.072])
SEPIA = np.array([[0.393, 0.769, 0.189], [0.349, 0.686, 0.168], [0.272, 0.534, 0.131]])

Change = Callable[[Pixels, NDArray[np.float32]], Pixels]


@dataclass(frozen=True, slots=True, kw_only=True)
class Row:
    """One photo, changed in one way; points of coverage."""

    name: str
    change: str
    error: float | None
    """None where it was refused."""
    asked_again: bool
    silent: bool


def faded(share: float) -> Change:
    matrix = np.eye(3) * share + LUMINANCE * (1 - share)
    return lambda pixels, _: mixed(pixels, matrix)


def sepia(share: float) -> Change:
    matrix = np.eye(3) * (1 - share) + SEPIA * share
    return lambda pixels, _: mixed(pixels, matrix)


def mixed(pixels: Pixels, matrix: np.ndarray) -> Pixels:
    return np.clip(np.rint(pixels @ matrix.T), 0, 255).astype(np.uint8)


def lit(*gains: float) -> Change:
    return lambda pixels, _: encoded(linear(pixels) * np.array(gains, np.float32))


def glaring(reach: float, peak: float) -> Change:
    """Over a place right of the middle; `reach` is its standard deviation in parts of the long side."""

    def change(pixels: Pixels, rim: NDArray[np.float32]) -> Pixels:
        middle = rim[0] + 0.35 * (rim[1] - rim[0]) + 0.4 * (rim[3] - rim[0])
        rows, columns = np.mgrid[: pixels.shape[0], : pixels.shape[1]].astype(np.float32)
        away = np.hypot(columns - middle[0], rows - middle[1]) / (reach * np.linalg.norm(rim[1] - rim[0]))
        return encoded(linear(pixels) + (peak * np.exp(-(away**2) / 2))[:, :, None])

    return change


def steamed(share: float) -> Change:
    """So much of the light everywhere is the steam's own, which has 0.7 of white."""
    return lambda pixels, _: encoded(linear(pixels) * (1 - share) + share * 0.7)


def steamed_at_a_corner(share: float) -> Change:
    """At the near left one; what lies under it is blurred, too."""

    def change(pixels: Pixels, rim: NDArray[np.float32]) -> Pixels:
        middle, long = rim[3] + 0.05 * (rim[2] - rim[3]), float(np.linalg.norm(rim[1] - rim[0]))
        rows, columns = np.mgrid[: pixels.shape[0], : pixels.shape[1]].astype(np.float32)
        away = np.hypot(columns - middle[0], rows - middle[1]) / (0.3 * long)
        veil = (share * np.exp(-(away**2) / 2))[:, :, None]
        clear = linear(pixels)
        soft = cv2.GaussianBlur(clear, (0, 0), 0.004 * long)
        return encoded((1 - veil) * ((1 - veil) * clear + veil * soft) + veil * 0.5)

    return change


def barred(left: float) -> Change:
    """Eight shadows of a rack's bars in the sun, which leave so much of the light."""

    def change(pixels: Pixels, rim: NDArray[np.float32]) -> Pixels:
        along = (rim[1] - rim[0]) / np.linalg.norm(rim[1] - rim[0])
        rows, columns = np.mgrid[: pixels.shape[0], : pixels.shape[1]].astype(np.float32)
        across = (columns - rim[0, 0]) * along[0] + (rows - rim[0, 1]) * along[1]
        shade = (8 * across / np.linalg.norm(rim[1] - rim[0]) % 1 < 0.5).astype(np.float32)
        return encoded(linear(pixels) * (1.35 - 1.35 * (1 - left) * shade)[:, :, None])

    return change


CHANGES: dict[str, Change | None] = {
    "none": None,
    "faded to a third": faded(0.33),
    "faded to a fifth": faded(0.2),
    "nearly grey": faded(0.03),
    "most of sepia": sepia(0.7),
    "sepia": sepia(1.0),
    "green": lit(0.8, 1.6, 0.8),
    "cyan": lit(0.63, 1.26, 1.26),
    "orange": lit(1.6, 0.9, 0.4),
    "blue": lit(0.28, 1.0, 1.9),
    "bars' shadows": barred(0.15),
    "steamed corner": steamed_at_a_corner(0.3),
    "veil": glaring(0.12, 0.25),
    "steam": steamed(0.25),
    "dense steam": steamed(0.45),
    "glare": glaring(0.06, 1.2),
}


@pytest.fixture(scope="module")
def rows() -> list[Row]:
    folder = os.environ.get("EVENSTAND_PHOTOS")
    if not folder:
        pytest.skip("set EVENSTAND_PHOTOS to a folder of rendered photos")
    cv2.setNumThreads(1)
    found = list(measured(Path(folder), best_tissue()))
    print("\n" + table(found))
    return found


def measured(folder: Path, tissue: Tissue) -> Iterator[Row]:
    names = tuple(os.environ.get("EVENSTAND_NAMES", "").split(","))
    for path in sorted(folder.glob("*_truth.json")):
        name, truth = path.name.removesuffix("_truth.json"), json.loads(path.read_text())
        if truth["light"] == "purple" or not name.startswith(names):
            continue
        rim = np.array(truth["corners_rim_px"], np.float32)
        true = true_coverage(folder / f"{name}_classes.png", rim)
        photo = read_photo(folder / f"{name}.jpg")
        for change, how in CHANGES.items():
            yield row_of(name, change, photo if how is None else stored(photo, how, rim), rim, true, tissue)


def true_coverage(classes: Path, rim: NDArray[np.float32]) -> float:
    square = np.array([[0, 0], [1016, 0], [1016, 508], [0, 508]], np.float32)
    place = cv2.getPerspectiveTransform(rim - 0.5, square - 0.5)
    seen = cv2.imread(str(classes), cv2.IMREAD_GRAYSCALE)
    top = cv2.warpPerspective(seen, place, (1016, 508), flags=cv2.INTER_NEAREST)
    return 100 * float(canopy(np.asarray(top, np.uint8)).mean())


def stored(photo: Photo, how: Change, rim: NDArray[np.float32]) -> Photo:
    file = BytesIO()
    Image.fromarray(how(np.asarray(photo.pixels), rim)).save(file, "JPEG", quality=90)
    read = decode_photo(file.getvalue(), photo.name)
    return replace(read, taken_at=photo.taken_at, focal_35mm=photo.focal_35mm)


def row_of(
    name: str, change: str, photo: Photo, rim: NDArray[np.float32], true: float, tissue: Tissue
) -> Row:
    one, two, three, four = ((float(x), float(y)) for x, y in rim)
    corners = Corners(points=(one, two, three, four), found_by=CornersFrom.HAND, confidence=1.0)
    result = score_photo(photo, tissue, corners=corners)
    if isinstance(result, Refused):
        return Row(name=name, change=change, error=None, asked_again=False, silent=False)
    score = result.score
    error = score.stand.coverage - true
    again = not RETAKE.isdisjoint(score.notes)
    return Row(name=name, change=change, error=error, asked_again=again, silent=not score.notes)


def table(rows: list[Row]) -> str:
    """A line for each change: how many photos, refused, asked for again, noted, wrong, wrong in silence."""
    lines = [f"{'':18}{'n':>5}{'refused':>9}{'again':>7}{'noted':>7}{'wrong':>7}{'silent':>8}{'worst':>7}"]
    for change in CHANGES:
        mine = [row for row in rows if row.change == change]
        used = [(row, abs(row.error)) for row in mine if row.error is not None]
        silent = [error for row, error in used if row.silent]
        counts = (
            len(mine),
            len(mine) - len(used),
            sum(row.asked_again for row, _ in used),
            len(used) - len(silent),
            sum(error > WRONG for _, error in used),
            sum(error > WRONG for error in silent),
        )
        each = "".join(f"{count:{width}}" for count, width in zip(counts, (5, 9, 7, 7, 7, 8), strict=True))
        lines.append(f"{change:18}{each}{max(silent, default=0.0):7.1f}")
    return "\n".join(lines)


def test_a_photo_as_it_was_taken_is_used_and_not_asked_for_again(rows: list[Row]) -> None:
    plain = [row for row in rows if row.change == "none"]

    assert sum(row.error is None or row.asked_again for row in plain) <= 0.02 * len(plain)


def test_a_changed_photo_is_seldom_wrong_in_silence(rows: list[Row]) -> None:
    changed = [row for row in rows if row.change != "none"]
    wrong = [row for row in changed if row.silent and row.error is not None and abs(row.error) > WRONG]

    assert len(wrong) <= 0.02 * len(changed)
