"""How far coverage moves when the same tray is photographed again at the station.

Run by hand:  EVENSTAND_PHOTOS=DIR [EVENSTAND_DAYS=DIR] pytest -m sweep -s tests/bench/test_repeatability.py

DIR holds NAME.jpg and NAME_truth.json (`station`, `light`, `day`, `tilt_deg`, `coverage_photo`,
`coverage_top`). Other light, exposure, blur and camera are made from one photo: the whole photo is rendered
anew, marks and patches with it, and goes through the whole program. What cannot be made from one photo is
told apart: a camera turned on its place (no parallax, the picture is only drawn anew), and, from the truth,
how much leaves that stand above the rim add by leaning outwards. EVENSTAND_DAYS holds trays day after day
(A1_day05.jpg ...): where the truth moves by less than a point in a day, the tray stands still.
"""

import json
import os
import re
from collections.abc import Callable, Iterable
from io import BytesIO
from itertools import pairwise
from pathlib import Path

import cv2
import numpy as np
import pytest
from numpy.typing import NDArray
from PIL import Image

from vision.methods import best_tissue
from vision.photo import decode_photo
from vision.score import Scored, score_photo

pytestmark = [pytest.mark.sweep, pytest.mark.timeout(3600)]

Picture = NDArray[np.uint8]
WHITE_LIGHT = {"led", "daylight", "warm", "mixed"}
WANTED = 1.5  # points
STILL = 1.0  # points a day
TISSUE = best_tissue()


def in_linear_light(picture: Picture, gains: Iterable[float]) -> Picture:
    """Each channel times its gain, as if the lamp or the shutter had been another one (sRGB as gamma 2.2)."""
    light = (picture / 255.0) ** 2.2 * np.array(list(gains))
    return np.asarray(np.rint(255 * np.clip(light, 0, 1) ** (1 / 2.2)), np.uint8)


def blurred(picture: Picture, sd: float) -> Picture:
    return np.asarray(cv2.GaussianBlur(picture, (0, 0), sd), np.uint8)


def noisy(picture: Picture, sd: float) -> Picture:
    grain = np.random.default_rng(1).normal(0, sd, picture.shape)
    return np.asarray(np.clip(np.rint(picture + grain), 0, 255), np.uint8)


def turned(picture: Picture, degrees: float) -> Picture:
    """The camera turned about its own horizontal axis: a homography, as no ray moves."""
    height, width = picture.shape[:2]
    focal = 0.8 * max(width, height)  # a phone's main camera, roughly
    lens = np.array([[focal, 0, width / 2], [0, focal, height / 2], [0, 0, 1.0]])
    turn = cv2.Rodrigues(np.array([np.radians(degrees), 0, 0]))[0]
    way = lens @ turn @ np.linalg.inv(lens)
    return np.asarray(
        cv2.warpPerspective(picture, way, (width, height), borderMode=cv2.BORDER_REPLICATE), np.uint8
    )


def all_at_once(picture: Picture) -> Picture:
    return noisy(blurred(in_linear_light(picture, (0.8, 0.71, 0.57)), 1.0), 4.0)


# what is changed, how, quality of the JPEG that is written then
CHANGES: tuple[tuple[str, Callable[[Picture], Picture], int], ...] = (
    ("saved again, quality 92", lambda p: p, 92),
    ("half a stop darker", lambda p: in_linear_light(p, (0.71,) * 3), 92),
    ("a stop darker", lambda p: in_linear_light(p, (0.5,) * 3), 92),
    ("half a stop brighter", lambda p: in_linear_light(p, (1.41,) * 3), 92),
    ("warmer light", lambda p: in_linear_light(p, (1.12, 1.0, 0.8)), 92),
    ("cooler light", lambda p: in_linear_light(p, (0.85, 1.0, 1.15)), 92),
    ("blur, sd 1 px", lambda p: blurred(p, 1.0), 92),
    ("blur, sd 2 px", lambda p: blurred(p, 2.0), 92),
    ("noise, sd 5", lambda p: noisy(p, 5.0), 92),
    ("strong JPEG, quality 50", lambda p: p, 50),
    ("warmer, darker, blurred, noisy", all_at_once, 80),
)
TURNS = (("camera turned 4 degrees", lambda p: turned(p, 4.0), 92),)


def coverage(data: bytes, name: str) -> float | None:
    result = score_photo(decode_photo(data, name), TISSUE)
    return result.score.stand.coverage if isinstance(result, Scored) else None


def again(path: Path, change: Callable[[Picture], Picture], quality: int) -> bytes:
    with Image.open(path) as image:
        exif, picture = image.info.get("exif", b""), np.asarray(image.convert("RGB"))
    file = BytesIO()
    Image.fromarray(change(picture)).save(file, "JPEG", quality=quality, exif=exif)
    return file.getvalue()


@pytest.fixture(scope="module")
def stationed() -> list[tuple[Path, dict]]:
    folder = os.environ.get("EVENSTAND_PHOTOS")
    if not folder:
        pytest.skip("set EVENSTAND_PHOTOS to a folder of photos at a station")
    every = [(path, json.loads(path.read_text())) for path in sorted(Path(folder).glob("*_truth.json"))]
    named = [(path.with_name(path.name.replace("_truth.json", ".jpg")), truth) for path, truth in every]
    return [(path, truth) for path, truth in named if "station" in truth and truth["light"] in WHITE_LIGHT]


def told(title: str, moved: list[float | None]) -> str:
    size = np.abs([value for value in moved if value is not None])
    if not len(size):
        return f"{title:34s} none"
    return (
        f"{title:34s} n {len(size):3d}  mean {size.mean():5.2f}  95 % {np.percentile(size, 95):5.2f}"
        f"  worst {size.max():5.2f}  within {WANTED} points {(size <= WANTED).mean():4.0%}"
        f"  refused {len(moved) - len(size)}"
    )


def test_the_same_tray_in_other_light_keeps_its_coverage(stationed: list[tuple[Path, dict]]) -> None:
    cv2.setNumThreads(1)
    moved: dict[str, list[float | None]] = {title: [] for title, *_ in (*CHANGES, *TURNS)}
    worst: list[tuple[float, str]] = []
    for path, truth in stationed:
        first = coverage(path.read_bytes(), path.name)
        if first is None:
            continue
        for title, change, quality in (*CHANGES, *TURNS):
            then = coverage(again(path, change, quality), path.name)
            moved[title].append(None if then is None else then - first)
            if then is not None:
                worst.append(
                    (abs(then - first), f"{path.stem} {truth['crop']} day {truth['day']:.0f}: {title}")
                )
    print()
    for title, values in moved.items():
        print(told(title, values))
    changed = [value for title, *_ in CHANGES for value in moved[title]]
    print(told("all but the turned camera", changed))
    for size, where in sorted(worst, reverse=True)[:8]:
        print(f"  {size:5.2f} {where}")

    size = np.abs([value for value in changed if value is not None])
    assert np.median(size) <= WANTED


def test_what_leaning_leaves_add_is_told_apart(stationed: list[tuple[Path, dict]]) -> None:
    """Truth alone: canopy inside the rim as the photo shows it, less the same seen exactly from above."""
    print()
    rows = [(t["tilt_deg"], 100 * (t["coverage_photo"] - t["coverage_top"])) for _, t in stationed]
    for title, low, high in (("tilt under 3", 0, 3), ("tilt 3 to 6", 3, 6), ("tilt over 6", 6, 90)):
        print(told(title, [lean for tilt, lean in rows if low <= tilt < high]))

    assert rows


def test_a_tray_that_stands_still_keeps_its_coverage_from_day_to_day() -> None:
    folder = os.environ.get("EVENSTAND_DAYS")
    if not folder:
        pytest.skip("set EVENSTAND_DAYS to a folder of trays day after day")
    cv2.setNumThreads(1)
    trays: dict[str, list[tuple[float, Path]]] = {}
    for path in sorted(Path(folder).glob("*_day*.jpg")):
        truth = json.loads(path.with_name(f"{path.stem}_truth.json").read_text())
        trays.setdefault(re.sub("_day.*", "", path.name), []).append((100 * truth["coverage_photo"], path))
    pairs = [
        (then[0] - now[0], now[1], then[1])
        for days in trays.values()
        for now, then in pairwise(days)
        if abs(then[0] - now[0]) < STILL
    ]
    seen = {path: coverage(path.read_bytes(), path.name) for _, *both in pairs for path in both}
    moved = {True: [], False: []}
    for true, now, then in pairs:
        before, after = seen[now], seen[then]
        young = int(re.sub(".*day", "", now.stem)) < 4
        moved[young].append(None if before is None or after is None else after - before - true)
    print()
    print(told("days that stand still, under 4", moved[True]))
    print(told("days that stand still, from 4", moved[False]))

    assert pairs
