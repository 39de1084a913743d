"""Station photos that were cropped, or whose file tells a wrong focal length: who is sure, and how far off.

EVENSTAND_PHOTOS=FOLDER EVENSTAND_DEMO=FOLDER pytest -s -m sweep tests/bench/test_cropped_photos.py
In    photos of rendered stations, NAME.jpg beside NAME_truth.json; those without `station` are passed over
Out   a line a case: worst corner in mm of those that are sure, of all; how many a person is asked about
"""

import json
import os
from collections.abc import Callable
from dataclasses import dataclass, replace
from pathlib import Path

import cv2
import numpy as np
import pytest

from vision.corners import SURE, CornersFrom
from vision.photo import Photo, read_photo
from vision.place import find_corners, marks_and_tray

MOST_PHOTOS = 24
Begin = tuple[int, int]
Altered = tuple[Photo, Begin]  # and where it begins in the whole photo


@dataclass(frozen=True, slots=True)
class Case:
    name: str
    altered: Callable[[Photo], list[Altered]]
    most_mm: float = 5.0  # of the worst corner that is sure


def as_is(photo: Photo) -> list[Altered]:
    return [(photo, (0, 0))]


def told(focal_35mm: float | None) -> Callable[[Photo], list[Altered]]:
    return lambda photo: [(replace(photo, focal_35mm=focal_35mm), (0, 0))]


def cut(kept: tuple[float, float], *begins: tuple[float, float]) -> Callable[[Photo], list[Altered]]:
    """Shares of width and height that are kept; where between the photo's ends that begins."""

    def crops(photo: Photo) -> list[Altered]:
        whole = np.array(photo.size_stored)
        wide, high = (int(part) for part in np.round(whole * kept))
        starts = [np.round((whole - (wide, high)) * np.array(begin)).astype(int) for begin in begins]
        parts = [photo.pixels[top : top + high, left : left + wide] for left, top in starts]
        return [
            (replace(photo, pixels=np.ascontiguousarray(part)), (int(left), int(top)))
            for part, (left, top) in zip(parts, starts, strict=True)
        ]

    return crops


CORNERS = ((0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0))
MIDDLE = (0.5, 0.5)
CASES = [
    Case("as taken", as_is, most_mm=3.0),
    Case("no focal length", told(None), most_mm=3.0),
    *(Case(f"told {focal:.0f} mm", told(focal)) for focal in (22.0, 31.0, 35.0, 50.0)),
    *(Case(f"middle, {kept:.0%} of each side", cut((kept, kept), MIDDLE)) for kept in (0.9, 0.8)),
    Case("a corner, 90 % of each side", cut((0.9, 0.9), *CORNERS)),
    *(
        Case(f"{1 - kept:.0%} of one side cut off", lambda photo, kept=kept: one_side(photo, kept))
        for kept in (0.95, 0.9, 0.85)
    ),
    Case("3:2, an end", cut((1.0, 8 / 9), (0.0, 0.0), (0.0, 1.0))),
    Case("square, the middle", cut((0.75, 1.0), MIDDLE)),
]


def one_side(photo: Photo, kept: float) -> list[Altered]:
    across, down = cut((kept, 1.0), (0.0, 0.0), (1.0, 0.0)), cut((1.0, kept), (0.0, 0.0), (0.0, 1.0))
    return across(photo) + down(photo)


def looked_at(path: Path, case: Case) -> list[tuple[float, bool]]:
    """How far the worst corner is off, mm, and whether that is sure; nothing where no tray is seen."""
    truth = json.loads(path.with_name(f"{path.stem}_truth.json").read_text(encoding="utf-8"))
    rim = np.array(truth["corners_rim_px"])
    px_per_mm = np.linalg.norm(rim[1] - rim[0]) / truth["inner_size_rim_mm"][0]
    rows = []
    for photo, begin in case.altered(read_photo(path)):
        found = find_corners(photo, *marks_and_tray(photo, None))
        if found is None:
            continue
        turns = (0,) if found.found_by is CornersFrom.STATION else (0, 2)
        seen = np.array(found.points) + begin
        off = min(float(np.linalg.norm(np.roll(seen, turn, axis=0) - rim, axis=1).max()) for turn in turns)
        rows.append((off / float(px_per_mm), found.confidence >= SURE))
    return rows


def line(name: str, rows: list[tuple[float, bool]]) -> str:
    sure = np.array([off for off, is_sure in rows if is_sure] or [np.nan])
    every = np.array([off for off, _ in rows])
    percent = [f"{np.median(of):5.2f} {np.percentile(of, 95):5.2f} {of.max():5.2f}" for of in (sure, every)]
    return (
        f"{name:28} n {len(rows):3}  sure {sum(is_sure for _, is_sure in rows):3}:"
        f" median, 95 %, worst {percent[0]} mm, over 5 mm {int((sure > 5).sum())}   all {percent[1]}"
    )


@pytest.mark.sweep
@pytest.mark.timeout(3600)
@pytest.mark.parametrize("variable", ["EVENSTAND_PHOTOS", "EVENSTAND_DEMO"])
def test_of_cropped_photos_those_that_are_sure_are_right(variable):
    if variable not in os.environ:
        pytest.skip(f"needs {variable}: a folder of rendered photos with their truth")
    cv2.setNumThreads(1)
    files = sorted(Path(os.environ[variable]).glob("*_truth.json"))
    stations = [file for file in files if "station" in json.loads(file.read_text(encoding="utf-8"))]
    photos = [file.with_name(file.name.replace("_truth.json", ".jpg")) for file in stations]
    wrong = []
    for case in CASES:
        some = photos if case.altered is as_is else photos[:: -(-len(photos) // MOST_PHOTOS)]
        rows = [row for path in some for row in looked_at(path, case)]
        print(line(case.name, rows), flush=True)
        wrong += [f"{case.name}: {off:.1f} mm" for off, sure in rows if sure and off > case.most_mm]
    assert len(wrong) <= 3, wrong
