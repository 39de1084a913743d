"""The two commands of the README, and what they promise a fresh machine."""

import os
import re
import signal
import subprocess
import sys
import tomllib
from pathlib import Path

import pytest

import launch

ROOT = Path(__file__).resolve().parent.parent
README = (ROOT / "README.md").read_text(encoding="utf-8")


def test_readme_gives_the_line_that_launch_prints() -> None:
    assert launch.APT_LINE in README


def test_every_command_of_the_readme_is_one_of_the_program() -> None:
    from gui.commands.commandlist import COMMANDS

    shown = set(re.findall(r"^python3 launch\.py ([a-z]+)", README, re.MULTILINE)) - {"test"}

    assert shown <= {command.name for command in COMMANDS}


def test_every_command_of_the_program_is_in_the_readme() -> None:
    from gui.commands.commandlist import COMMANDS

    shown = set(re.findall(r"^python3 launch\.py ([a-z]+)", README, re.MULTILINE))

    assert {command.name for command in COMMANDS} <= shown


def test_the_lock_names_the_public_index_alone() -> None:
    sources = set(re.findall(r"https?://([^/\"]+)", (ROOT / "uv.lock").read_text(encoding="utf-8")))

    assert sources == {"pypi.org", "files.pythonhosted.org"}


def test_test_tools_stay_out_of_a_growers_installation() -> None:
    settings = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))

    assert settings["tool"]["uv"]["default-groups"] == []


@pytest.mark.skipif(os.name == "nt", reason="signals of POSIX")
def test_ctrl_c_reaches_the_program_which_ends_in_its_own_way() -> None:
    """`watch` brings in the photo that it is at; it was killed a quarter of a second after Ctrl+C."""
    slow = """if True:
        import time
        try:
            print(flush=True)
            time.sleep(20)
        except KeyboardInterrupt:
            time.sleep(1)
            exit(7)
    """
    code = """if True:
        import os, sys, launch
        launch.PYTHON = sys.executable
        exit(launch.become(["-c", sys.argv[1]], os.environ))
    """
    words = [sys.executable, "-c", code, slow]
    with subprocess.Popen(words, cwd=ROOT, stdout=subprocess.PIPE, start_new_session=True) as started:
        assert started.stdout is not None
        started.stdout.readline()
        os.killpg(started.pid, signal.SIGINT)  # as a terminal does

        assert started.wait(timeout=20) == 7


def test_a_place_that_may_not_be_written_is_told(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    monkeypatch.setattr(launch, "PYTHON", tmp_path / "python")
    monkeypatch.setattr(launch, "VENV", tmp_path / "file" / "venv")
    (tmp_path / "file").write_text("no folder")

    with pytest.raises(launch.NotReady, match="where you may write"):
        launch.set_up(testing=False)


def test_a_missing_system_library_is_told_with_the_line_that_brings_it(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    broken = tmp_path / "python"
    broken.write_text("#!/bin/sh\necho 'ImportError: libGL.so.1: cannot open it' >&2\nexit 1\n")
    broken.chmod(0o755)
    monkeypatch.setattr(launch, "PYTHON", broken)
    monkeypatch.setattr(launch.sys, "platform", "linux")
    monkeypatch.setattr(launch.shutil, "which", lambda _: "/usr/bin/apt")

    with pytest.raises(launch.NotReady) as lacking:
        launch.look_for_libraries()

    assert "libGL.so.1" in str(lacking.value)
    assert launch.APT_LINE in str(lacking.value)
