"""Network: the file of a learned network -> OpenCV's net, ready to run.

In    the name of a file in `models/` and the digest that belongs to this version of the program
Out   the net, one of its own for each thread: OpenCV's are not made to be shared
Not   what a network is fed and what its answer means (`framenet.py`, `learned.py`)

A file is checked by its digest before it is parsed, and read once.
"""

import hashlib
import threading
from functools import cache
from pathlib import Path

import cv2
import numpy as np

__all__ = ["FOLDER", "ModelDamaged", "checked", "net_of"]

FOLDER = Path(__file__).parent / "models"

_kept = threading.local()


class ModelDamaged(Exception):
    """A network's file is missing, or is not the one that belongs to this version."""


def net_of(path: Path, digest: str) -> cv2.dnn.Net:
    """This thread's net of a file.

    Raises
    ------
    ModelDamaged
        If the file is missing, cannot be read, or has another digest (SHA-256, hex).
    """
    nets: dict[str, cv2.dnn.Net] = _kept.__dict__.setdefault("nets", {})
    if digest not in nets:
        nets[digest] = cv2.dnn.readNetFromONNX(np.frombuffer(checked(path, digest), np.uint8))
    return nets[digest]


@cache
def checked(path: Path, digest: str) -> bytes:
    """The bytes of a file that has this digest; raises `ModelDamaged` as `net_of` does."""
    try:
        data = path.read_bytes()
    except OSError as error:
        raise ModelDamaged(f"{path.name} is missing or cannot be read: install the program again") from error
    if hashlib.sha256(data).hexdigest() != digest:
        raise ModelDamaged(f"{path.name} is damaged or of another version: install the program again")
    return data
