"""A program that is killed at any moment leaves a whole book; 250 moments: tests/bench/test_kill_sweep.py."""

import os
import random
from pathlib import Path

import pytest

from tests.data.killing import SCENES, killed

pytestmark = [
    pytest.mark.skipif(os.name == "nt", reason="no such signal there"),
    pytest.mark.timeout(120),
]


@pytest.mark.parametrize("scene", SCENES)
@pytest.mark.parametrize("attempt", range(2))
def test_a_book_is_whole_whenever_the_program_is_killed(scene: str, attempt: int, tmp_path: Path) -> None:
    share = random.Random(f"{scene} {attempt}").random()
    killed(scene, tmp_path / "scene", share * SCENES[scene].longest_s)
