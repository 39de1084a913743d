"""Fit the three factors of `vision/outline.py`.

In    the folder that `prepare_tissue.py` wrote; a folder with `0.onnx`, `1.onnx` and `2.onnx`, each learned
      without a third of the trays (`learn_tissue.py --held`)
Out   the factors beside 1 for the pixel's own log odds; canopy IoU and error of cells on the choosing set
      with and without them
Not   the network (`learn_tissue.py`)

Run it with the program's own Python from the project's root:

    python -m vision.training.fit_outline PACK THIRDS
"""

import json
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import cv2
import numpy as np
from numpy.typing import NDArray

from vision import learned
from vision.learned import look
from vision.outline import AROUND, COLOUR, LIGHTER, clues
from vision.tissue import canopy

EACH = 4000  # pixels of a picture
THIRDS = 3
ROUNDS = 30
LEAST_CANOPY = 0.05


def main() -> None:
    """Fit on trays that a network had not seen, none of the choosing set; judge there."""
    folder, thirds = Path(sys.argv[1]), Path(sys.argv[2])
    trays = [t for t in json.loads((folder / "meta.json").read_text())["top"] if t["light"] != "purple"]
    names = [t["name"] for t in trays if t["src"] == "topviews" or not chooses(t["name"])]
    rng = np.random.default_rng(0)
    rows, truths = [], []
    for third in range(THIRDS):
        with another_net(thirds / f"{third}.onnx"):
            unseen = [name for name in names if int(name[1:]) % THIRDS == third]
            for seen, leaves, _ in clues_of(folder, unseen):
                drawn = rng.integers(0, leaves.size, EACH)
                rows.append(seen.reshape(4, -1)[:, drawn].T)
                truths.append(leaves.ravel()[drawn])
    factors = logistic(np.concatenate(rows), np.concatenate(truths))
    print(len(names), "pictures; colour, around, lighter:", np.round(factors[1:4] / factors[0], 4))
    choosing = [t["name"] for t in trays if t["src"] == "photos" and chooses(t["name"])]
    for title, weights in (("chance alone", (1, 0, 0, 0)), ("in use", (1, COLOUR, AROUND, LIGHTER))):
        judged(title, folder, choosing, np.array(weights, np.float32))


@contextmanager
def another_net(path: Path) -> Iterator[None]:
    """Let `look` run another network than the program's own."""
    net, own = cv2.dnn.readNetFromONNX(str(path)), learned.net_of
    learned.net_of = lambda *_: net
    try:
        yield
    finally:
        learned.net_of = own


def chooses(name: str) -> bool:
    """a064-a083 and c316-c323 choose between methods."""
    number = int(name[1:].rstrip("s"))
    return 64 <= number <= 83 if name[0] == "a" else 316 <= number <= 323


def clues_of(folder: Path, names: list[str]) -> Iterator[tuple[NDArray[np.float32], NDArray[np.bool_], int]]:
    """(4, rows, columns), the true canopy and the number of pixels of canopy by chance, of each picture."""
    cv2.setNumThreads(1)
    for name in names:
        picture = cv2.imread(str(folder / f"{name}.jpg"))
        labels = cv2.imread(str(folder / f"{name}_labels.png"), cv2.IMREAD_GRAYSCALE)
        if picture is None or labels is None:
            raise FileNotFoundError(folder / f"{name}.jpg")
        top = np.ascontiguousarray(picture[..., ::-1])
        chance = look(top).canopy
        wanted = round(float(chance.sum(dtype=np.float64)))
        yield np.stack(clues(top, chance)), canopy(np.asarray(labels, np.uint8)), wanted


def logistic(rows: NDArray[np.float32], truths: NDArray[np.bool_]) -> NDArray[np.float64]:
    """Factors and constant of a logistic regression, by Newton's method."""
    table = np.column_stack([rows, np.ones(len(rows))]).astype(np.float64)
    factors = np.zeros(table.shape[1])
    for _ in range(ROUNDS):
        chance = 1 / (1 + np.exp(-table @ factors))
        slope = table.T @ (truths - chance)
        bend = (table * (chance * (1 - chance))[:, None]).T @ table
        factors += np.linalg.solve(bend + 0.1 * np.eye(len(bend)), slope)
    return factors


def judged(title: str, folder: Path, names: list[str], weights: NDArray[np.float32]) -> None:
    """Print canopy IoU (from 5 % coverage on) and the mean error of cells, points."""
    overlaps, errors = [], []
    for seen, leaves, wanted in clues_of(folder, names):
        value = np.tensordot(weights, seen, 1)
        found = np.zeros(leaves.shape, np.bool_)
        found.flat[np.argsort(-value, axis=None, kind="stable")[:wanted]] = True
        seen_cells, true_cells = (
            cv2.resize(mask.astype(np.float32), (12, 6), interpolation=cv2.INTER_AREA)
            for mask in (found, leaves)
        )
        errors.append(100 * np.abs(seen_cells - true_cells).mean())
        if leaves.mean() > LEAST_CANOPY:
            overlaps.append((found & leaves).sum() / (found | leaves).sum())
    print(f"{title}: IoU {np.mean(overlaps):.4f}, cells {np.mean(errors):.2f}, n {len(names)}")


if __name__ == "__main__":
    main()
