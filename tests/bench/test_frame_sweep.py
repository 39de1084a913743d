"""How well and how surely trays are found without a station, over a folder of photos with known corners.

Run by hand:  EVENSTAND_PHOTOS=DIR pytest -m sweep -s tests/bench/test_frame_sweep.py

DIR holds NAME.jpg and NAME_truth.json (`corners_rim_px`). Cards of a station are painted out first. Photos
that the networks were learned from come out better than new ones will: for an honest figure use new photos,
or `vision/training/judge_frame.py`, which judges every tray by networks that have not seen it.
"""

import json
import os
import time
from collections.abc import Iterator
from dataclasses import dataclass, replace
from pathlib import Path

import cv2
import numpy as np
import pytest

from vision.camera import homography
from vision.frame import find_frame
from vision.framefit import CORNERS_MM, through
from vision.photo import Photo, read_photo, upright_points

pytestmark = [pytest.mark.sweep, pytest.mark.timeout(1800)]

SURE = 0.5
WRONG_MM = 10.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Row:
    """One photo: confidence, the worst corner's error (mm on the tray), seconds; None without a find."""

    name: str
    confidence: float | None
    error_mm: float | None
    seconds: float


@pytest.fixture(scope="module")
def rows() -> list[Row]:
    folder = os.environ.get("EVENSTAND_PHOTOS")
    if not folder:
        pytest.skip("set EVENSTAND_PHOTOS to a folder of photos with known corners")
    return list(found(Path(folder)))


def found(folder: Path) -> Iterator[Row]:
    cv2.setNumThreads(1)
    for path in sorted(folder.glob("*_truth.json")):
        name, truth = path.name.removesuffix("_truth.json"), json.loads(path.read_text())
        photo = without_cards(read_photo(folder / f"{name}.jpg"), truth)
        start = time.perf_counter()
        corners = find_frame(photo)
        seconds = time.perf_counter() - start
        if corners is None:
            yield Row(name=name, confidence=None, error_mm=None, seconds=seconds)
            continue
        to_mm = np.linalg.inv(homography(CORNERS_MM, np.array(truth["corners_rim_px"])))
        places = through(to_mm, np.array(upright_points(photo, corners.points)))
        error = min(float(np.linalg.norm(np.roll(places, k, 0) - CORNERS_MM, axis=1).max()) for k in (0, 2))
        yield Row(name=name, confidence=corners.confidence, error_mm=error, seconds=seconds)


def without_cards(photo: Photo, truth: dict) -> Photo:
    """The same photo with the station's cards painted out from around."""
    hole = np.zeros(photo.pixels.shape[:2], np.uint8)
    for key, quad in truth.get("station", {}).get("points_px", {}).items():
        if key.startswith("station"):
            mark = np.array(quad)
            card = (mark - mark.mean(axis=0)) * 1.62 + mark.mean(axis=0)
            cv2.fillConvexPoly(hole, card.round().astype(np.int32), 255)
    if not hole.any():
        return photo
    return replace(photo, pixels=cv2.inpaint(np.ascontiguousarray(photo.pixels), hole, 5, cv2.INPAINT_TELEA))


def test_no_tray_is_found_surely_and_wrongly(rows: list[Row]) -> None:
    sure = [row for row in rows if row.confidence is not None and row.confidence >= SURE]
    error = np.array([row.error_mm for row in sure])
    everything = np.array([row.error_mm if row.error_mm is not None else np.inf for row in rows])
    wrong = [row.name for row in sure if row.error_mm is not None and row.error_mm > WRONG_MM]
    print(f"\nphotos {len(rows)}, none found {sum(row.confidence is None for row in rows)}")
    print(f"sure {len(sure)} ({len(sure) / len(rows):.1%}), wrong among them {len(wrong)} {wrong}")
    if sure:
        median, most = np.percentile(error, (50, 95))
        print(f"sure: median {median:.2f}, 95 % {most:.2f}, worst {error.max():.2f} mm")
    print(f"all: median {np.median(everything):.2f} mm, within 10 mm {(everything < WRONG_MM).mean():.1%}")
    print(f"seconds: median {np.median([row.seconds for row in rows]):.3f}")
    for row in sorted(rows, key=lambda row: -(row.error_mm or np.inf))[:12]:
        print(f"  {row.name}  confidence {row.confidence}  error {row.error_mm}")

    assert not wrong
