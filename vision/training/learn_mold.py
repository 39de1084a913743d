# /// script
# requires-python = ">=3.11"
# dependencies = ["numpy", "opencv-python-headless", "pi-heif", "pillow"]
# ///
"""Learn which cells of 2 mm show mold, from labelled trays; no GPU, a minute or two of one core.

In    a folder with `photos/` and `topviews/` as `prepare_tissue.py` reads them; the tissue network, or three,
      each learned without a third of the trays
Out   the table `mold.json` and its digest; with --judge what cross-validation by tray finds
Not   reading trays (`mold_trays.py`), the nets (`mold_net.py`), judging (`judge_mold.py`)

    PYTHONPATH=. python vision/training/learn_mold.py SOURCE TABLE [--folds FOLDER] [--judge]

What the tissue network thinks of a tray that it has learned from is too good. With --folds each tray is
read by F0.onnx, F1.onnx or F2.onnx of that folder, which has not seen it: tray n by that of n % 3. Trays are
judged in nine parts by number; the table itself is learned from a000-a063, c300-c315 and the top views, and
belongs to the tissue network of the same recipe: learn it anew whenever that changes.

The same pictures and networks give the same table to the last digit: chances are made in the same run, all on
one thread.
"""

import os

os.environ["OMP_NUM_THREADS"] = os.environ["OPENBLAS_NUM_THREADS"] = "1"  # before numpy: one order of sums

import argparse
import hashlib
import json
from pathlib import Path

import cv2
from judge_mold import judge
from mold_net import learned
from mold_trays import read


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


if __name__ == "__main__":
    main()
