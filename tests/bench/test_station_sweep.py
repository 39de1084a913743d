"""Tags read and rim corners against the truth of rendered photos.

EVENSTAND_PHOTOS=FOLDER EVENSTAND_DEMO=FOLDER pytest -s -m sweep tests/bench/test_station_sweep.py
Photos are NAME.jpg beside NAME_truth.json; those without `station` in their truth are passed over.
"""

import json
import os
from dataclasses import dataclass
from pathlib import Path
from time import perf_counter

import cv2
import numpy as np
import pytest

from vision.markers import find_marks
from vision.photo import grey, read_photo
from vision.station import station_corners

SURE = 0.5


@dataclass(frozen=True, slots=True, kw_only=True)
class Seen:
    name: str
    cards: int
    tag_inside: bool
    tag_read: bool
    tag_wrong: bool
    off_mm: float | None
    confidence: float
    seconds: float


def look(path: Path, truth: dict) -> Seen:
    photo = read_photo(path)
    picture = grey(photo)
    started = perf_counter()
    marks = find_marks(picture)
    corners = station_corners(marks, photo)
    seconds = perf_counter() - started
    rim = np.array(truth["corners_rim_px"])
    px_per_mm = np.linalg.norm(rim[1] - rim[0]) / truth["inner_size_rim_mm"][0]
    off = (
        None if corners is None else np.linalg.norm(np.array(corners.points) - rim, axis=1).max() / px_per_mm
    )
    right = marks.tag is not None and marks.tag.number == truth["station"]["tag_number"]
    return Seen(
        name=path.stem,
        cards=len(marks.cards),
        tag_inside="tag" in truth["station"]["fully_inside"],
        tag_read=right,
        tag_wrong=marks.tag is not None and not right,
        off_mm=None if off is None else float(off),
        confidence=0.0 if corners is None else corners.confidence,
        seconds=seconds,
    )


def sweep(folder: Path) -> list[Seen]:
    cv2.setNumThreads(1)
    found = []
    for file in sorted(folder.glob("*_truth.json")):
        truth = json.loads(file.read_text(encoding="utf-8"))
        if "station" in truth:
            found.append(look(file.with_name(file.name.replace("_truth.json", ".jpg")), truth))
    return found


def table(found: list[Seen]) -> str:
    inside = [seen for seen in found if seen.tag_inside]
    off = np.array([seen.off_mm for seen in found if seen.off_mm is not None])
    seconds = [seen.seconds for seen in found]
    cards = [sum(seen.cards == count for seen in found) for count in range(5)]
    lines = [
        f"{len(found)} photos; tags read {sum(s.tag_read for s in inside)} of {len(inside)} inside,"
        f" wrong {sum(s.tag_wrong for s in found)}; photos by cards found (0 to 4) {cards}",
        f"rim found in {len(off)}: worst corner median {np.median(off):.2f},"
        f" 95 % {np.percentile(off, 95):.2f}, worst {off.max():.2f} mm;"
        f" seconds median {np.median(seconds):.3f}, most {max(seconds):.3f}",
    ]
    lines += [f"  not read: {s.name} ({s.cards} cards)" for s in inside if not s.tag_read]
    lines += [f"  over 2 mm: {s.name} {s.off_mm:.1f}" for s in found if s.off_mm and s.off_mm > 2]
    return "\n".join(lines)


@pytest.mark.sweep
@pytest.mark.timeout(900)
@pytest.mark.parametrize("variable", ["EVENSTAND_PHOTOS", "EVENSTAND_DEMO"])
def test_tags_are_read_and_the_rim_is_right_at_the_station(variable):
    if variable not in os.environ:
        pytest.skip(f"needs {variable}: a folder of rendered photos with their truth")
    found = sweep(Path(os.environ[variable]))
    print(f"\n{variable}\n{table(found)}")

    inside = [seen for seen in found if seen.tag_inside]
    off = [seen.off_mm for seen in found if seen.off_mm is not None]
    assert not any(seen.tag_wrong for seen in found)
    assert sum(seen.tag_read for seen in inside) >= 0.95 * len(inside)
    assert np.percentile(off, 95) < 2.0
    assert not any(seen.confidence >= SURE and (seen.off_mm or 0) > 10 for seen in found)
