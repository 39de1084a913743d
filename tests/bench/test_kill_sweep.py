"""Killed at 250 moments: of intake, a log, a person's decisions, a book taken back, a migration.

Run by hand: python -m pytest -m sweep -s tests/bench/test_kill_sweep.py. Most kills have to hit the work and
not its end, or the sweep shows nothing.
"""

import os
import random
from pathlib import Path

import pytest

from tests.data.killing import SCENES, killed

pytestmark = [
    pytest.mark.sweep,
    pytest.mark.timeout(1800),
    pytest.mark.skipif(os.name == "nt", reason="no such signal there"),
]

KILLS = 50  # of each scene


@pytest.mark.parametrize("scene", SCENES)
def test_fifty_kills_leave_fifty_whole_books(scene: str, tmp_path: Path) -> None:
    chance = random.Random(scene)
    hits = sum(
        killed(scene, tmp_path / str(n), chance.random() * SCENES[scene].longest_s) for n in range(KILLS)
    )
    print(f"{scene}: {KILLS} kills, {hits} of them in the middle of the work, every book whole")
    assert hits > KILLS // 2
