"""Labelled trays as the table of mold is learned from and judged by them.

In    a folder with `photos/` and `topviews/` as `prepare_tissue.py` reads them; the tissue network, or three,
      each learned without a third of the trays
Out   `Tray`: features of its cells, which of them show mold, its true patches
Not   the features themselves (`vision/moldchance.py`), learning (`mold_net.py`)
"""

import hashlib
import json
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

import cv2
import numpy as np
from prepare_tissue import SIZE, onto

from vision import learned as tissue_network
from vision.cielab import lab
from vision.learned import LearnedTissue
from vision.moldchance import features
from vision.tissue import Label, TissueMap, canopy

FOLDS = 3


@dataclass(frozen=True, slots=True, kw_only=True)
class Tray:
    """One labelled tray."""

    name: str
    truth: dict
    values: np.ndarray  # (rows, columns, features)
    bare: np.ndarray
    mold: np.ndarray  # share of each cell
    patches: list[tuple[float, float, float]]  # x mm, y mm, cm2
    tissue: TissueMap
    colours: np.ndarray

    @property
    def number(self) -> int:
        """By which trays are split."""
        return int(self.name[1:])

    @property
    def kept_apart(self) -> bool:
        """Never learned from: methods are chosen on these."""
        return self.truth["source"] == "photos" and self.number >= (316 if self.name[0] == "c" else 64)


def use(network: Path) -> None:
    """Read chances by another file of the same kind."""
    tissue_network.MODEL = network
    tissue_network.DIGEST = hashlib.sha256(network.read_bytes()).hexdigest()


def read(source: Path, folds: Path | None = None) -> Iterator[Tray]:
    """Trays in white light; colours and labels are those of the top view by the true corners."""
    method = LearnedTissue()
    places = [(p, "photos") for p in sorted(source.glob("photos/*_truth.json"))]
    places += [(p, "topviews") for p in sorted(source.glob("topviews/*.json"))]
    for path, kind in places:
        truth = json.loads(path.read_text()) | {"source": kind}
        if truth["light"] == "purple":
            continue
        name = path.stem.removesuffix("_truth")
        if folds is not None:
            use(folds / f"F{int(name[1:]) % FOLDS}.onnx")
        top, labels = photo(path, name, truth) if kind == "photos" else top_view(path, name)
        tissue = method.label(top, 2.0)
        colours = lab(top)
        planes = features(top, tissue, colours)
        seen = ((labels == Label.FUZZ) & ~canopy(tissue.labels)).astype(np.float32)
        bare = planes["bare_1"]
        yield Tray(
            name=name,
            truth=truth,
            values=np.round(np.stack(list(planes.values()), -1).astype(np.float32), 3),
            bare=bare,
            mold=cv2.resize(seen, bare.shape[::-1], interpolation=cv2.INTER_AREA),
            patches=true_patches(labels),
            tissue=tissue,
            colours=colours,
        )


def photo(path: Path, name: str, truth: dict) -> tuple[np.ndarray, np.ndarray]:
    """Top view and labels of a photo, warped by its true corners."""
    corners = np.array(truth["corners_rim_px"], np.float32) - 0.5
    flags = cv2.IMREAD_COLOR | cv2.IMREAD_IGNORE_ORIENTATION
    seen = cv2.imread(str(path.with_name(f"{name}.jpg")), flags)
    classes = cv2.imread(str(path.with_name(f"{name}_classes.png")), cv2.IMREAD_GRAYSCALE)
    twice = (2 * SIZE[0], 2 * SIZE[1])
    top = cv2.warpPerspective(seen, onto(corners, twice), twice, borderMode=cv2.BORDER_REPLICATE)
    top = cv2.resize(top, SIZE, interpolation=cv2.INTER_AREA)
    labels = cv2.warpPerspective(
        classes, onto(corners, SIZE), SIZE, flags=cv2.INTER_NEAREST, borderMode=cv2.BORDER_REPLICATE
    )
    return np.ascontiguousarray(top[..., ::-1]), labels


def top_view(path: Path, name: str) -> tuple[np.ndarray, np.ndarray]:
    """A tray that was rendered as a top view."""
    top = cv2.imread(str(path.with_suffix(".jpg")))
    labels = cv2.imread(str(path.with_name(f"{name}_labels.png")), cv2.IMREAD_GRAYSCALE)
    return np.ascontiguousarray(top[..., ::-1]), labels


def true_patches(labels: np.ndarray) -> list[tuple[float, float, float]]:
    """x mm, y mm, visible cm2 of each piece of mold, gaps of 6 mm closed."""
    mold = (labels == Label.FUZZ).astype(np.uint8)
    disc = cv2.getStructuringElement(cv2.MORPH_ELLIPSE, (13, 13))
    joined = cv2.morphologyEx(mold, cv2.MORPH_CLOSE, disc)
    count, pieces, _, centres = cv2.connectedComponentsWithStats(joined)
    seen = np.bincount(pieces[mold > 0], minlength=count) / 400
    return [(centres[k][0] / 2, centres[k][1] / 2, float(seen[k])) for k in range(1, count)]
