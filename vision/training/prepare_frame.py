# /// script
# requires-python = ">=3.11"
# dependencies = ["numpy", "opencv-python-headless", "pillow"]
# ///
"""Reduce rendered photos and textures to what the frame networks learn from.

In    a folder with `photos/` (NAME.jpg, NAME_classes.png, NAME_truth.json), `demo/` and `real/` (textures)
Out   one folder: `photos/NAME.jpg` (longer side 640 px, or as asked), `NAME.png` (classes),
      `backs/*.jpg`, `index.json`
Not   learning (`learn_frame.py`)

    prepare_frame.py SOURCE TARGET
    prepare_frame.py SOURCE TARGET --longest 1280 --quality 76       for `learn_edges.py`

Cards of a station are painted out, so that nothing can be learned from them.
"""

import argparse
import hashlib
import json
from pathlib import Path

import cv2
import numpy as np
from PIL import ExifTags, Image

TEXTURE_SIDE = 512
MARK_TO_CARD = 1.62  # a card of 72 mm around a mark of 48 mm, with a little margin
DEMO_DAYS = ("02", "03", "05", "07", "09")


def main() -> None:
    """Read the folder, write the reduced one."""
    words = argparse.ArgumentParser(description=__doc__)
    words.add_argument("source", type=Path)
    words.add_argument("target", type=Path)
    words.add_argument("--longest", type=int, default=640, help="px of the longer side")
    words.add_argument("--quality", type=int, default=88, help="of JPEG")
    asked = words.parse_args()
    (asked.target / "photos").mkdir(parents=True, exist_ok=True)
    (asked.target / "backs").mkdir(parents=True, exist_ok=True)
    index = {}
    for truth in sorted(asked.source.glob("photos/*_truth.json")):
        index |= reduced(truth, asked)
    for day in DEMO_DAYS:
        for truth in sorted(asked.source.glob(f"demo/*_day{day}_truth.json")):
            index |= reduced(truth, asked)
    textures(asked.source / "real", asked.target / "backs")
    (asked.target / "index.json").write_text(json.dumps(index, indent=1))


def reduced(truth_path: Path, asked: argparse.Namespace) -> dict[str, dict]:
    """One photo made smaller; its entry in the index."""
    name = truth_path.name.removesuffix("_truth.json")
    truth = json.loads(truth_path.read_text())
    data = (truth_path.parent / f"{name}.jpg").read_bytes()
    flags = cv2.IMREAD_COLOR | cv2.IMREAD_IGNORE_ORIENTATION
    photo = cv2.imdecode(np.frombuffer(data, np.uint8), flags)
    share = asked.longest / max(photo.shape[:2])
    size = (round(photo.shape[1] * share), round(photo.shape[0] * share))
    small = cv2.resize(photo, size, interpolation=cv2.INTER_AREA)
    small = without_cards(small, truth, share)
    path = asked.target / "photos" / f"{name}.jpg"
    cv2.imwrite(str(path), small, [cv2.IMWRITE_JPEG_QUALITY, asked.quality])
    classes = truth_path.parent / f"{name}_classes.png"
    if classes.exists():
        seen = cv2.imread(str(classes), cv2.IMREAD_GRAYSCALE)
        cv2.imwrite(
            str(path.with_suffix(".png")),
            cv2.resize(seen, size, interpolation=cv2.INTER_NEAREST),
        )
    corners = (np.array(truth["corners_rim_px"]) * np.array(size) / np.array(photo.shape[1::-1])).round(3)
    with Image.open(truth_path.parent / f"{name}.jpg") as opened:
        focal = opened.getexif().get_ifd(ExifTags.IFD.Exif).get(ExifTags.Base.FocalLengthIn35mmFilm)
    entry = {"corners": corners.tolist(), "focal_35mm": focal, "sha256": hashlib.sha256(data).hexdigest()}
    return {name: entry}


def without_cards(small: np.ndarray, truth: dict, share: float) -> np.ndarray:
    """The photo with the cards of its station filled from around."""
    hole = np.zeros(small.shape[:2], np.uint8)
    for key, quad in truth.get("station", {}).get("points_px", {}).items():
        if key.startswith("station"):
            corners = np.array(quad) * share
            card = (corners - corners.mean(0)) * MARK_TO_CARD + corners.mean(0)
            cv2.fillConvexPoly(hole, card.round().astype(np.int32), 255)
    return cv2.inpaint(small, hole, 5, cv2.INPAINT_TELEA) if hole.any() else small


def textures(real: Path, target: Path) -> None:
    """Grounds without a tray: textures and field photographs."""
    found = [
        *sorted(real.glob("e_textures/*.png")),
        *sorted(real.glob("e_textures/*.jpg")),
        *sorted(path for path in real.glob("a_canopy/*/*.*") if "_mask" not in path.name),
    ]
    for number, path in enumerate(path for path in found if path.suffix in (".png", ".jpg")):
        picture = cv2.imread(str(path), cv2.IMREAD_COLOR)
        if picture is None:
            continue
        if min(picture.shape[:2]) < 200:
            times = -(-TEXTURE_SIDE // min(picture.shape[:2]))
            picture = np.tile(picture, (times, times, 1))
        scale = TEXTURE_SIDE / min(picture.shape[:2])
        picture = cv2.resize(picture, None, fx=scale, fy=scale, interpolation=cv2.INTER_AREA)
        cv2.imwrite(
            str(target / f"{number:03d}.jpg"),
            picture[:TEXTURE_SIDE, :TEXTURE_SIDE],
            [cv2.IMWRITE_JPEG_QUALITY, 85],
        )


if __name__ == "__main__":
    main()
