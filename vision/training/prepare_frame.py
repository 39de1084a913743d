# /// script
# requires-python = ">=3.11"
# dependencies = ["numpy", "opencv-python-headless", "pillow", "scipy"]
# ///
"""Reduce rendered photos and textures to what the frame networks learn from.

In    a folder with `photos/` (NAME.jpg, NAME_classes.png, NAME_truth.json), `demo/` and `real/` (textures)
Out   one folder: `photos/NAME.jpg` (longer side 640 px, or as asked), `NAME.png` (classes),
      `backs/*.jpg`, `index.json`
Not   learning (`learn_frame.py`)

    prepare_frame.py SOURCE TARGET
    prepare_frame.py SOURCE TARGET --longest 1280 --quality 76       for `learn_edges.py`

Cards of a station are painted out, so that nothing can be learned from them. The lens is not told of every
photo, but the corners of two levels, the rim's and the medium's, tell it to the last digit.
"""

import argparse
import hashlib
import json
from pathlib import Path

import cv2
import numpy as np
from PIL import ExifTags, Image
from scipy.optimize import least_squares

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
    entry = {
        "corners": corners.tolist(),
        "lens": lens_of(truth),
        "focal_35mm": focal,
        "sha256": hashlib.sha256(data).hexdigest(),
    }
    return {name: entry}


def lens_of(truth: dict) -> list[float]:
    """k1, k2 of r (1 + k1 r2 + k2 r4), r in half diagonals, that a flat picture goes through (Brown 1971)."""
    size = np.array(truth["size_px"], float)
    signs = np.array([[-1.0, -1.0], [1.0, -1.0], [1.0, 1.0], [-1.0, 1.0]])
    rim, medium = (signs * truth[f"inner_size_{level}_mm"] / 2 for level in ("rim", "medium"))
    places = np.vstack([np.c_[rim, np.zeros(4)], np.c_[medium, np.full(4, truth["medium_below_rim_mm"])]])
    wanted = np.vstack([truth["corners_rim_px"], truth["corners_medium_px"]]) - size / 2

    def off(values: np.ndarray) -> np.ndarray:
        lean, shift, log_far, log_focal, k1, k2 = np.split(values, [3, 5, 6, 7, 8])
        seen = places @ cv2.Rodrigues(lean)[0].T + np.concatenate([shift, np.exp(log_far)])
        flat = np.exp(log_focal) * seen[:, :2] / seen[:, 2:]
        square = (flat**2).sum(1, keepdims=True) / (size**2).sum() * 4
        return (flat * (1 + k1 * square + k2 * square**2) - wanted).ravel()

    along, far = wanted[1] - wanted[0], truth["camera_height_mm"]
    scale = np.hypot(*along) / (2 * rim[1, 0])
    begin = [
        0,
        0,
        np.arctan2(along[1], along[0]),
        *wanted[:4].mean(0) / scale,
        np.log(far),
        np.log(far * scale),
        0,
        0,
    ]
    steps = [0.01, 0.01, 0.01, 1, 1, 0.01, 0.01, 0.01, 0.01]
    found = least_squares(off, begin, x_scale=steps, xtol=1e-15, ftol=1e-15, gtol=1e-15, max_nfev=4000)
    return [float(k) for k in found.x[7:].round(5)]


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
