# /// script
# requires-python = ">=3.11"
# dependencies = ["numpy", "opencv-python-headless"]
# ///
"""Bring labelled trays and real pictures into the form that the tissue network learns from.

In    a folder with `photos/` (NAME.jpg, NAME_classes.png, NAME_truth.json), `topviews/` (NAME.jpg,
      NAME_labels.png, NAME.json) and `real/` (`manifest.json` and what it names)
Out   one folder: top views NAME.jpg + NAME_labels.png (1016 x 508 px), real pictures with a plant mask
      real_*.jpg + real_*_mask.png, textures tex_*.jpg, `meta.json` with the digest of every source file
Not   learning (`learn_tissue.py`)

    prepare_tissue.py SOURCE TARGET
"""

import argparse
import hashlib
import json
from pathlib import Path

import cv2
import numpy as np

SIZE = (1016, 508)
TOP_QUALITY, MASKED_QUALITY, TEXTURE_QUALITY = 95, 92, 90  # of JPEG
TOLD = ("crop", "day", "medium", "light")


def main() -> None:
    """Read the folder, write the prepared one."""
    words = argparse.ArgumentParser(description=__doc__)
    words.add_argument("source", type=Path)
    words.add_argument("target", type=Path)
    asked = words.parse_args()
    asked.target.mkdir(parents=True, exist_ok=True)
    trays = [photo(path, asked.target) for path in sorted(asked.source.glob("photos/*_truth.json"))]
    trays += [top_view(path, asked.target) for path in sorted(asked.source.glob("topviews/*.json"))]
    manifest = json.loads((asked.source / "real" / "manifest.json").read_text())
    real = [entry for one in manifest if (entry := real_picture(one, asked.source / "real", asked.target))]
    (asked.target / "meta.json").write_text(json.dumps({"top": trays, "real": real}, indent=1))
    print(len(trays), "trays,", len(real), "real pictures; meta.json", digest(asked.target / "meta.json"))


def photo(truth_path: Path, target: Path) -> dict:
    """A photo and its classes warped by the true corners of the inner area."""
    name = truth_path.name.removesuffix("_truth.json")
    truth = json.loads(truth_path.read_text())
    path = truth_path.with_name(f"{name}.jpg")
    classes = cv2.imread(str(path.with_name(f"{name}_classes.png")), cv2.IMREAD_GRAYSCALE)
    corners = np.array(truth["corners_rim_px"], np.float32) - 0.5
    twice = (2 * SIZE[0], 2 * SIZE[1])
    seen = cv2.warpPerspective(
        cv2.imread(str(path)), onto(corners, twice), twice, borderMode=cv2.BORDER_REPLICATE
    )
    labels = cv2.warpPerspective(
        classes, onto(corners, SIZE), SIZE, flags=cv2.INTER_NEAREST, borderMode=cv2.BORDER_REPLICATE
    )
    write_jpeg(target / f"{name}.jpg", cv2.resize(seen, SIZE, interpolation=cv2.INTER_AREA), TOP_QUALITY)
    cv2.imwrite(str(target / f"{name}_labels.png"), labels)
    return about(name, "photos", truth, path)


def top_view(truth_path: Path, target: Path) -> dict:
    """A top view that was rendered as one: copied."""
    name = truth_path.stem
    path = truth_path.with_suffix(".jpg")
    for file in (path, path.with_name(f"{name}_labels.png")):
        (target / file.name).write_bytes(file.read_bytes())
    return about(name, "topviews", json.loads(truth_path.read_text()), path)


def about(name: str, source: str, truth: dict, path: Path) -> dict:
    """What is kept of a tray's truth."""
    told = {key: truth[key] for key in TOLD}
    return {"name": name, "src": source, **told, "mold": len(truth["mold"]), "sha256": digest(path)}


def real_picture(entry: dict, folder: Path, target: Path) -> dict | None:
    """A real picture with its mask, or a texture; None where it is neither."""
    path = folder / entry["file"]
    masked = entry["kind"] == "a" and str(entry.get("truth")).endswith(".png")
    texture = entry["kind"] in "be" or (entry["kind"] == "a" and not entry.get("truth"))
    picture = cv2.imread(str(path)) if masked or texture else None
    if picture is None:
        return None
    if masked:
        group = Path(entry["file"]).parts[1]
        name = f"real_{group}_{path.stem}"
        mask = cv2.imread(str(folder / entry["truth"]), cv2.IMREAD_GRAYSCALE)
        write_jpeg(target / f"{name}.jpg", picture, MASKED_QUALITY)
        cv2.imwrite(str(target / f"{name}_mask.png"), mask)
    else:
        group, name = f"tex{entry['kind']}", f"tex_{path.stem}"
        share = min(1.0, SIZE[0] / max(picture.shape[:2]))
        small = cv2.resize(picture, None, fx=share, fy=share, interpolation=cv2.INTER_AREA)
        write_jpeg(target / f"{name}.jpg", small, TEXTURE_QUALITY)
    return {"name": name, "group": group, "file": entry["file"], "sha256": digest(path)}


def onto(corners: np.ndarray, size: tuple[int, int]) -> np.ndarray:
    """Homography from pixel centres of the photo to those of a top view of that size."""
    width, height = size
    target = np.array([[0, 0], [width, 0], [width, height], [0, height]], np.float32) - 0.5
    return cv2.getPerspectiveTransform(corners, target)


def write_jpeg(path: Path, picture: np.ndarray, quality: int) -> None:
    """Write a picture in blue, green, red order."""
    cv2.imwrite(str(path), picture, [cv2.IMWRITE_JPEG_QUALITY, quality])


def digest(path: Path) -> str:
    """SHA-256 of a file, hex."""
    return hashlib.sha256(path.read_bytes()).hexdigest()


if __name__ == "__main__":
    main()
