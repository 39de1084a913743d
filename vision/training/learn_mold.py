# /// script
# requires-python = ">=3.11"
# dependencies = ["numpy", "opencv-python-headless", "pi-heif", "pillow"]
# ///
"""Learn which cells of 2 mm show mold, from labelled trays; no GPU, a minute or two of one core.

In    a folder with `photos/` and `topviews/` as `prepare_tissue.py` reads them; the tissue network, or three,
      each learned without a third of the trays
Out   the table `mold.json` and its digest; with --judge what cross-validation by tray finds
Not   the features themselves (`vision/moldchance.py`), patches (`vision/suspects.py`)

    PYTHONPATH=. python vision/training/learn_mold.py SOURCE TABLE [--folds FOLDER] [--judge]

What the tissue network thinks of a tray that it has learned from is too good. With --folds each tray is
read by F0.onnx, F1.onnx or F2.onnx of that folder, which has not seen it: tray n by that of n % 3. Trays are
judged in nine parts by number; the table itself is learned from a000-a063, c300-c315 and the top views, and
belongs to the tissue network of the same recipe: learn it anew whenever that changes.

The same pictures and networks give the same table to the last digit: chances are made in the same run, all on
one thread, features are kept to three decimals, draws have fixed seeds, sums are float32 in one order.
"""

import os

os.environ["OMP_NUM_THREADS"] = os.environ["OPENBLAS_NUM_THREADS"] = "1"  # before numpy: one order of sums

import argparse
import hashlib
import itertools
import json
from collections.abc import Callable, Collection
from dataclasses import dataclass
from pathlib import Path

import cv2
import numpy as np
from prepare_tissue import SIZE, onto

from vision import learned as tissue_network
from vision.cielab import lab
from vision.learned import LearnedTissue
from vision.moldchance import FARTHEST_SD, SEEN, Cells, features, names_of_features, together
from vision.suspect import Suspect
from vision.suspects import suspects_in
from vision.tissue import Label, TissueMap, canopy

PARTS = 9  # whole thirds, so that no tray is judged by what has seen it
SEEDS = (1, 2, 3)
HIDDEN, STEPS, BATCH, DECAY, RATE = 32, 12, 512, 1e-2, 2e-3
MOST_MOLD, MOST_REST = 600, 600  # cells of a tray
JUDGED_BARE = 0.12  # of a cell that is learned from
SAMPLED_BY = 0
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


def main() -> None:
    """Read the trays, judge where wanted, learn, write."""
    words = argparse.ArgumentParser(description=__doc__)
    words.add_argument("source", type=Path)
    words.add_argument("table", type=Path)
    words.add_argument("--folds", type=Path, help="folder of F0.onnx, F1.onnx, F2.onnx")
    words.add_argument("--judge", action="store_true")
    asked = words.parse_args()
    cv2.setNumThreads(1)
    trays = list(read(asked.source, asked.folds))
    if asked.judge:
        judge(trays)
    table, _ = learned([tray for tray in trays if not tray.kept_apart])
    text = json.dumps(table, indent=None, separators=(",", ":")) + "\n"
    asked.table.write_text(text)
    print("table", hashlib.sha256(text.encode()).hexdigest())


def use(network: Path) -> None:
    """Read chances by another file of the same kind."""
    tissue_network.MODEL = network
    tissue_network.DIGEST = hashlib.sha256(network.read_bytes()).hexdigest()


def read(source: Path, folds: Path | None = None):
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


# --- learning


@dataclass(frozen=True, slots=True, kw_only=True)
class Net:
    """One hidden layer, and the answer's weights."""

    weights: np.ndarray
    offsets: np.ndarray
    last: np.ndarray
    last_offset: float


def learned(trays: list[Tray]) -> tuple[dict, Callable[[np.ndarray], np.ndarray]]:
    """The table, and the same as a function: three nets, their answers averaged before the last curve."""
    values, mold = sampled(trays)
    mean, spread = values.mean(0), values.std(0) + 1e-3
    known = np.clip((values - mean) / spread, -FARTHEST_SD, FARTHEST_SD).astype(np.float32)
    nets = [net(known, mold, seed) for seed in SEEDS]
    table = {
        "features": list(names_of_features()),
        "mean": rounded(mean),
        "spread": rounded(spread),
        "weights": rounded(np.hstack([one.weights for one in nets])),
        "offsets": rounded(np.hstack([one.offsets for one in nets])),
        "last": rounded(np.hstack([one.last for one in nets]) / len(nets)),
        "last_offset": round(float(np.mean([one.last_offset for one in nets])), 5),
    }

    def chance(values: np.ndarray) -> np.ndarray:
        known = np.clip((values - mean) / spread, -FARTHEST_SD, FARTHEST_SD)
        hidden = np.maximum(known @ np.array(table["weights"]) + np.array(table["offsets"]), 0)
        return 1 / (1 + np.exp(-(hidden @ np.array(table["last"]) + table["last_offset"])))

    return table, chance


def net(known: np.ndarray, mold: np.ndarray, seed: int) -> Net:
    """One small net by Adam (Kingma & Ba 2015); `known` in standard deviations.

    Written out, so that no version of a library moves the table.
    """
    draw = np.random.default_rng(seed)
    sizes = (known.shape[1], HIDDEN, 1)
    reach = [np.sqrt(6 / (a + b)) for a, b in itertools.pairwise(sizes)]  # Glorot & Bengio 2010
    drawn = [
        draw.uniform(-reach[0], reach[0], (sizes[0], HIDDEN)), np.zeros(HIDDEN),
        draw.uniform(-reach[1], reach[1], HIDDEN), np.zeros(1),
    ]  # fmt: skip
    parts = [part.astype(np.float32) for part in drawn]
    means, squares, step = [0 * part for part in parts], [0 * part for part in parts], 0
    for _ in range(STEPS):
        order = draw.permutation(len(known))
        for begin in range(0, len(order), BATCH):
            batch = order[begin : begin + BATCH]
            step += 1
            rate = RATE * np.sqrt(1 - 0.999**step) / (1 - 0.9**step)
            for k, slope in enumerate(slopes(parts, known[batch], mold[batch])):
                means[k] = 0.9 * means[k] + 0.1 * slope
                squares[k] = 0.999 * squares[k] + 0.001 * slope * slope
                parts[k] = (parts[k] - rate * means[k] / (np.sqrt(squares[k]) + 1e-8)).astype(np.float32)
    return Net(weights=parts[0], offsets=parts[1], last=parts[2], last_offset=float(parts[3][0]))


def slopes(parts: list[np.ndarray], known: np.ndarray, mold: np.ndarray) -> list[np.ndarray]:
    """Of the mean log loss and the decay of weights, by each part."""
    weights, offsets, last, last_offset = parts
    hidden = np.maximum(known @ weights + offsets, 0)
    off = (1 / (1 + np.exp(-(hidden @ last + last_offset))) - mold) / len(known)
    back = np.outer(off, last) * (hidden > 0)
    decay = DECAY / len(known)
    return [
        known.T @ back + decay * weights,
        back.sum(0),
        hidden.T @ off + decay * last,
        np.array([off.sum()]),
    ]


def sampled(trays: list[Tray]) -> tuple[np.ndarray, np.ndarray]:
    """Cells that show mold for more than half of their bare ground, and cells without any."""
    chance = np.random.default_rng(SAMPLED_BY)
    values, mold = [], []
    for tray in trays:
        bare = tray.bare > JUDGED_BARE
        share = tray.mold / np.maximum(tray.bare, 1e-3)
        for wanted, most, is_mold in ((share > 0.5, MOST_MOLD, 1), (share < 0.1, MOST_REST, 0)):
            cells = np.flatnonzero(bare & wanted)
            cells = chance.choice(cells, min(most, len(cells)), replace=False) if len(cells) else cells
            values.append(tray.values.reshape(-1, tray.values.shape[-1])[cells])
            mold.append(np.full(len(cells), is_mold, np.float32))
    return np.concatenate(values), np.concatenate(mold)


def rounded(values: np.ndarray) -> list:
    """As the table keeps them."""
    return np.round(values.astype(np.float64), 5).tolist()


# --- judging


def judge(trays: list[Tray]) -> None:
    """Each tray by a table learned without its part."""
    found: dict[str, tuple[Suspect, ...]] = {}
    for part in range(PARTS):
        _, chance = learned([tray for tray in trays if tray.number % PARTS != part])
        for tray in trays:
            if tray.number % PARTS == part:
                found[tray.name + tray.truth["source"]] = suspects_of(tray, chance)
    rows = [(tray, found[tray.name + tray.truth["source"]]) for tray in trays]
    print(report("all", rows))
    print(report("photos", [row for row in rows if row[0].truth["source"] == "photos"]))
    for what in ("medium", "crop"):
        for value in sorted({tray.truth[what] for tray in trays}):
            print(report(f"  {value}", [row for row in rows if row[0].truth[what] == value]))
    for title, first, end in (("under 4", 0, 4), ("4 to 7", 4, 7), ("from 7", 7, 99)):
        print(report(f"  day {title}", [row for row in rows if first <= row[0].truth["day"] < end]))


def suspects_of(tray: Tray, chance: Callable[[np.ndarray], np.ndarray]) -> tuple[Suspect, ...]:
    """What the program would find with this table."""
    seen = tray.bare > SEEN
    cells = np.zeros(tray.bare.shape, np.float32)
    fuzz = tray.values[..., names_of_features().index(f"label{Label.FUZZ:d}_1")]
    cells[seen] = together(chance(tray.values[seen]), fuzz[seen] / tray.bare[seen])
    return suspects_in(Cells(chance=cells, bare=tray.bare), tray.colours, tray.tissue)


def report(title: str, rows: Collection[tuple[Tray, tuple[Suspect, ...]]]) -> str:
    """Found by size, false ones where there is no mold."""
    bands = []
    for least, most in ((1, 2), (2, 4), (4, 99), (2, 99)):
        hits = [
            any(near(patch, one) for one in found)
            for tray, found in rows
            for patch in tray.patches
            if least <= patch[2] < most
        ]
        bands.append(f"{least}-{most} cm2 {sum(hits)}/{len(hits)} {interval(sum(hits), len(hits))}")
    free = [found for tray, found in rows if not tray.truth["mold"]]
    false = sum(map(len, free))
    photos = sum(map(bool, free))
    quiet = f"false {false} on {photos} of {len(free)} {interval(photos, len(free))}"
    return f"{title:14s} {'  '.join(bands)}  {quiet}"


def interval(hits: int, of_all: int) -> str:
    """95 % by Wilson (1927)."""
    if not of_all:
        return ""
    z, share = 1.96, hits / of_all
    middle = (share + z * z / (2 * of_all)) / (1 + z * z / of_all)
    half = z / (1 + z * z / of_all) * np.sqrt(share * (1 - share) / of_all + z * z / (4 * of_all**2))
    return f"({100 * max(0, middle - half):.0f}-{100 * min(1, middle + half):.0f} %)"


def near(patch: tuple[float, float, float], one: Suspect) -> bool:
    """Whether a suspect is that patch."""
    reach = 12 + np.sqrt(max(patch[2], one.area_cm2) * 100 / np.pi)
    return bool(np.hypot(patch[0] - one.x_mm, patch[1] - one.y_mm) < reach)


if __name__ == "__main__":
    main()
