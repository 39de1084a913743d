"""Judge the frame finder on trays that its networks have not seen, and fit its confidence.

In    the folder that `prepare_frame.py --longest 1280` wrote; one with `place_HELD.onnx`, `sides_HELD.onnx`
      and `edges_HELD.onnx`, as `learn_frame.py` and `learn_edges.py` make them: HELD is 0 (choosing
      set) or 1, 2, 3 (thirds of the rest); parts of which one is missing are left out
Out   a table: share that is sure, errors of the worst corner in mm, with the constants in use and with
      constants from all other trays; constants for `framedoubt.CALIBRATED_CLOSER`
Not   the photos as files (`tests/bench/test_frame_sweep.py`)

Run it with the program's own Python from the project's root:

    python -m vision.training.judge_frame DATA WEIGHTS [ALTERED.npz]

ALTERED holds `pictures` (n, 960, 1280, 3), `names` and `corners` (n, 4, 2): the same trays on other benches,
in other light, under other leaves, as `learn_frame.py alter` makes them.
"""

import json
import math
import sys
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

import cv2
import numpy as np
from numpy.typing import NDArray

from vision import framenet
from vision.frame import reduced, refined, search
from vision.framedoubt import HALF_SURE_MM, LEAST_MISFIT, Closer, Finding, confidence, expected_mm, guessed_mm
from vision.framefit import CORNERS_MM, Array, through
from vision.framenet import COARSE
from vision.photo import Pixels

KINDS = ("place", "sides", "edges")
SURE = 0.5
WRONG_MM = 10.0
NEAREST_MM, FARTHEST_MM = 0.7, 60.0  # an error beyond is only "small" or "large" when constants are fitted
HOPELESS_MM = 40.0
SHRUNK = 0.3  # signs that tell nearly the same share what they tell


@dataclass(frozen=True, slots=True, kw_only=True)
class Judged:
    """One photo: what was found, and by how much its worst corner is off (mm on the tray)."""

    name: str
    altered: bool
    finding: Finding | None
    closer: Closer | None
    error_mm: float

    @property
    def sure(self) -> bool:
        """True where the finder would let it be used unasked."""
        return (
            self.finding is not None
            and self.closer is not None
            and confidence(self.finding, self.closer) >= SURE
        )


def main() -> None:
    """Judge all photos, print the tables."""
    data, weights = Path(sys.argv[1]), Path(sys.argv[2])
    altered = Path(sys.argv[3]) if len(sys.argv) > 3 else None
    parts = [k for k in "0123" if all((weights / f"{kind}_{k}.onnx").exists() for kind in KINDS)]
    rows = [row for held in parts for row in judged(data, weights, held, altered)]
    other = sure_by_other_trays(rows)
    for title, chosen in (
        ("all photos", [not row.altered for row in rows]),
        ("by hand", [not row.altered and row.name[0] == "a" for row in rows]),
        ("altered photos", [row.altered for row in rows]),
    ):
        if any(chosen):
            error = np.array([row.error_mm for row in rows])[chosen]
            print(line(title, error, np.array([row.sure for row in rows])[chosen]))
            print(line("  constants of other trays", error, other[chosen]))
    print("constants", [round(float(value), 2) for value in fitted_constants(rows)])


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
        near = np.ascontiguousarray(stored[..., ::-1])
        yield one(name, near, np.array(index[name]["corners"]), index[name]["focal_35mm"], altered=False)
    if altered is not None:
        with np.load(altered) as kept:
            for name, near, corners in zip(kept["names"], kept["pictures"], kept["corners"], strict=True):
                if fold(str(name)) == held:
                    focal = index[str(name)]["focal_35mm"]
                    yield one(str(name), near, corners.astype(float), focal, altered=True)


def use(weights: Path, held: str) -> None:
    """Let the finder take other networks than the program's own."""
    nets = {f"frame_{kind}": cv2.dnn.readNetFromONNX(str(weights / f"{kind}_{held}.onnx")) for kind in KINDS}
    setattr(framenet, "net_of", lambda path, _: nets[path.stem])  # noqa: B010  not among the exported names


def one(name: str, near: Pixels, corners: Array, focal: float | None, *, altered: bool) -> Judged:
    """Find the tray and compare; half a turn is the same tray."""
    finding = search(reduced(near, COARSE.longest_px), focal)
    if finding is None:
        return Judged(name=name, altered=altered, finding=None, closer=None, error_mm=math.inf)
    closer = refined(finding.pose, near)
    truth = cv2.getPerspectiveTransform(corners.astype(np.float32), CORNERS_MM.astype(np.float32))
    places = through(np.asarray(truth, float), closer.pose.corners)
    error = min(float(np.linalg.norm(np.roll(places, k, 0) - CORNERS_MM, axis=1).max()) for k in (0, 2))
    return Judged(name=name, altered=altered, finding=finding, closer=closer, error_mm=error)


def line(title: str, error: Array, sure: NDArray[np.bool_]) -> str:
    """One line of the table."""
    within = "/".join(f"{(error < mm).mean():.0%}" for mm in (5, 10, 20))
    told = f"{title:26s} n {len(error):3d}  median of all {np.median(error):5.2f} mm, within 5/10/20 {within}"
    told += f"  sure {sure.mean():6.1%}"
    if sure.any():
        median, most = np.percentile(error[sure], (50, 95))
        told += f"  of these: median {median:.2f}, 95 % {most:.2f}, worst {error[sure].max():.2f} mm,"
        told += f" wrong {(error[sure] > WRONG_MM).sum()}"
    return told


def signs(row: Judged) -> list[float]:
    """What `framedoubt.expected_mm` reckons with."""
    assert row.finding is not None
    assert row.closer is not None
    known = (
        max(guessed_mm(row.finding), 0.5),
        row.closer.pose.spread_mm,
        max(row.closer.misfit, LEAST_MISFIT),
    )
    return [1.0, *map(math.log, known)]


def fitted_constants(rows: list[Judged]) -> Array:
    """Least squares for the logarithm of the error.

    All altered versions of a photo together count as much as the photo, hopeless ones a third.
    """
    found = [row for row in rows if row.finding is not None]
    versions = Counter(row.name for row in found if row.altered)
    weight = np.array([1 / versions[row.name] if row.altered else 1.0 for row in found])
    error = np.array([row.error_mm for row in found])
    root = np.sqrt(np.where(error > HOPELESS_MM, weight / 3, weight))
    seen = np.array([signs(row) for row in found])
    aim = np.log(np.clip(error, NEAREST_MM, FARTHEST_MM))
    towards_none = np.sqrt(SHRUNK) * np.eye(seen.shape[1])[1:]
    left = np.vstack([seen * root[:, None], towards_none])
    right = np.concatenate([aim * root, np.zeros(len(towards_none))])
    return np.asarray(np.linalg.lstsq(left, right, rcond=None)[0])


def sure_by_other_trays(rows: list[Judged]) -> NDArray[np.bool_]:
    """Which would be sure, were the constants fitted on all trays but their own."""
    sure = np.zeros(len(rows), np.bool_)
    for name in {row.name for row in rows}:
        constants = fitted_constants([row for row in rows if row.name != name])
        for k, row in enumerate(rows):
            if row.name == name and row.finding is not None and row.closer is not None:
                near = float(np.exp(np.array(signs(row)) @ constants)) <= HALF_SURE_MM
                # what keeps it from being sure whatever is expected
                kept = row.sure or expected_mm(row.finding, row.closer) > HALF_SURE_MM
                sure[k] = near and kept
    return sure


if __name__ == "__main__":
    main()
