"""Small disk: one that fills, or that may only be read."""

import os
import shutil
import subprocess
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest


@contextmanager
def small_disk(place: Path, size: str, *options: str) -> Iterator[Path]:
    """A disk of its own in memory; skips where this machine does not let us have one."""
    place.mkdir()
    line = ["mount", "-t", "tmpfs", "-o", ",".join((f"size={size}", *options)), "tmpfs", str(place)]
    if os.name != "posix" or os.geteuid() != 0 or shutil.which("mount") is None:
        pytest.skip("a disk of its own needs root and mount")
    if subprocess.run(line, check=False, capture_output=True).returncode:
        pytest.skip("this machine does not allow mounting")
    try:
        yield place
    finally:
        subprocess.run(["umount", "-l", str(place)], check=True)
