"""Judge the frame finder on trays that its networks have not seen, and fit its confidence.

In    the folder that `prepare_frame.py` wrote; a folder with `place_HELD.onnx` and `sides_HELD.onnx` for HELD
      0 (choosing set) and 1, 2, 3 (thirds of the rest), made by `learn_frame.py`
Out   a table: share that is sure, errors of the worst corner in mm; constants for `frame.CALIBRATED`
Not   the photos as files (`tests/bench/test_frame_sweep.py`)

Run it with the program's own Python from the project's root:

    python -m vision.training.judge_frame DATA WEIGHTS [ALTERED.npz]

ALTERED holds `pictures` (n, 480, 640, 3), `names` and `corners` (n, 4, 2): the same trays on other benches,
in other light, under other leaves, as `learn_frame.py alter` makes them.
"""

import json
import math
import sys
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

import cv2
import numpy as np

from vision import framenet
from vision.frame import Finding, confidence, search
from vision.framefit import CORNERS_MM, Array, through
from vision.photo import Pixels

SURE = 0.5
WRONG_MM = 10.0
FARTHEST_MM = 40.0  # beyond that an error is only "large" when constants are fitted


@dataclass(frozen=True, slots=True, kw_only=True)
class Judged:
    """One photo: what was found, and by how much its worst corner is off (mm on the tray)."""

    name: str
    held: str
    altered: bool
    finding: Finding | None
    error_mm: float

    @property
    def sure(self) -> bool:
        """True where the finder would let it be used unasked."""
        return self.finding is not None and confidence(self.finding) >= SURE


def main() -> None:
    """Judge all photos, print the tables."""
    data, weights = Path(sys.argv[1]), Path(sys.argv[2])
    altered = Path(sys.argv[3]) if len(sys.argv) > 3 else None
    rows = [row for held in "0123" for row in judged(data, weights, held, altered)]
    for title, chosen in (
        ("all photos", [row for row in rows if not row.altered]),
        ("choosing set", [row for row in rows if not row.altered and row.held == "0"]),
        ("altered photos", [row for row in rows if row.altered]),
    ):
        if chosen:
            print(line(title, chosen))
    print("constants", fitted_constants(rows))


def fold(name: str) -> str:
    """As in `frame_scenes.py`."""
    number = int(name[1:]) if name[0] in "ac" and name[1:].isdigit() else -1
    if number < 0:
        return "demo"
    return "0" if number >= (64 if name[0] == "a" else 316) else str(1 + number % 3)


def judged(data: Path, weights: Path, held: str, altered: Path | None) -> Iterator[Judged]:
    """All photos of one part by the networks that were learned without it."""
    use(weights, held)
    index = json.loads((data / "index.json").read_text())
    for name in (name for name in index if fold(name) == held):
        stored = cv2.imread(str(data / "photos" / f"{name}.jpg"))
        if stored is None:
            raise FileNotFoundError(data / "photos" / f"{name}.jpg")
        small = np.asarray(stored[..., ::-1], np.uint8)
        corners = np.array(index[name]["corners"])
        yield one(name, held, small, corners, index[name]["focal_35mm"], altered=False)
    if altered is not None:
        with np.load(altered) as kept:
            for name, small, corners in zip(kept["names"], kept["pictures"], kept["corners"], strict=True):
                if fold(str(name)) == held:
                    focal = index[str(name)]["focal_35mm"]
                    yield one(str(name), held, small, corners.astype(float), focal, altered=True)


def use(weights: Path, held: str) -> None:
    """Let the finder take other networks than the program's own."""
    nets = {
        f"frame_{kind}": cv2.dnn.readNetFromONNX(str(weights / f"{kind}_{held}.onnx"))
        for kind in ("place", "sides")
    }
    setattr(framenet, "net_of", lambda path, _: nets[path.stem])  # noqa: B010  not among the exported names


def one(name: str, held: str, small: Pixels, corners: Array, focal: float | None, *, altered: bool) -> Judged:
    """Find the tray and compare; half a turn is the same tray."""
    finding = search(np.ascontiguousarray(small), focal)
    error = math.inf
    if finding is not None:
        truth = cv2.getPerspectiveTransform(corners.astype(np.float32), CORNERS_MM.astype(np.float32))
        places = through(np.asarray(truth, float), finding.pose.corners)
        error = min(float(np.linalg.norm(np.roll(places, k, 0) - CORNERS_MM, axis=1).max()) for k in (0, 2))
    return Judged(name=name, held=held, altered=altered, finding=finding, error_mm=error)


def line(title: str, rows: list[Judged]) -> str:
    """One line of the table."""
    error = np.array([row.error_mm for row in rows])
    sure = np.array([row.sure for row in rows])
    told = f"{title:15s} n {len(rows):3d}  median of all {np.median(error):5.2f} mm  sure {sure.mean():6.1%}"
    if sure.any():
        median, most = np.percentile(error[sure], (50, 95))
        told += f"  of these: median {median:.2f}, 95 % {most:.2f}, worst {error[sure].max():.2f} mm,"
        told += f" wrong {(error[sure] > WRONG_MM).sum()}"
    return told


def fitted_constants(rows: list[Judged]) -> list[float]:
    """Least squares for the logarithm of the error; altered photos and hopeless ones count a third."""
    found = [(row, row.finding) for row in rows if row.finding is not None]
    signs = np.array(
        [[1.0, *np.log([f.discord_mm, f.misfit, f.spread_mm, max(min(f.sight), 1e-3)])] for _, f in found]
    )
    error = np.log(np.maximum([row.error_mm for row, _ in found], 0.7))
    weight = np.array([1 / 3 if row.altered or row.error_mm > FARTHEST_MM else 1.0 for row, _ in found])
    root = np.sqrt(weight)
    constants = np.linalg.lstsq(signs * root[:, None], error * root, rcond=None)[0]
    return [round(float(value), 2) for value in constants]


if __name__ == "__main__":
    main()
