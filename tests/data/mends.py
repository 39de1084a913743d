"""Mends: a drawn canopy, and notes of photos scored with it."""

from dataclasses import replace
from pathlib import Path
from typing import Any

import numpy as np

from data.photos.judged import Judged
from tests.data.builders import a_score, score_note
from vision.mending import decode_mask

CORNERS = [(1.0, 2.0), (900.0, 2.0), (900.0, 480.0), (1.0, 480.0)]
HALF = np.zeros((508, 1016), bool)
HALF[:, :508] = True


def mend_note(path: Path, corners: Any, canopy: bytes, *_: Any) -> Judged:
    """A note scored with a drawn canopy: its coverage is that of the mask."""
    mask = decode_mask(canopy)
    judged = score_note(path)
    score = replace_coverage(judged, 100.0 * float(mask.mean()))
    return replace(judged, score=score, labels=b"labels of " + canopy)


def replace_coverage(judged: Judged, coverage: float) -> Any:
    assert judged.score is not None
    return a_score(coverage, suspects=judged.score.suspects, method=judged.score.method)
