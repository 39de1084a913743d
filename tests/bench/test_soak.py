"""The window on a book of 2,000 photos for twenty minutes: memory flat, no thread left, no warning.

python -m pytest -m sweep -s tests/bench/test_soak.py; EVENSTAND_SOAK_MINUTES shortens it.
"""

import os
import subprocess
import sys
from pathlib import Path

import pytest

MINUTES = float(os.environ.get("EVENSTAND_SOAK_MINUTES", "20"))


@pytest.mark.sweep
@pytest.mark.timeout(60 * MINUTES + 900)
def test_a_long_day_leaves_nothing_behind(tmp_path: Path) -> None:
    command = [sys.executable, "-m", "tests.bench.soak", str(MINUTES), str(tmp_path / "book")]
    ended = subprocess.run(command, cwd=Path(__file__).parents[2], text=True, capture_output=True)
    print(ended.stdout)
    assert ended.returncode == 0, ended.stdout + ended.stderr
