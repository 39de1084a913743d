#!/usr/bin/env python3
"""One command on a fresh machine: fill `.venv` from `uv.lock`, then start Evenstand or its tests.

    python3 launch.py                open Evenstand (the first time with its demonstration)
    python3 launch.py test [...]     run the tests; further words go to pytest
    python3 launch.py score ...      any command of the program

Standard library only. Everything it installs lies in `.venv` beside this file; deleting that undoes it.
"""

import os
import shutil
import signal
import subprocess
import sys
from collections.abc import Mapping, Sequence
from pathlib import Path

ROOT = Path(__file__).resolve().parent
VENV = ROOT / ".venv"
BIN = VENV / ("Scripts" if os.name == "nt" else "bin")
SUFFIX = ".exe" if os.name == "nt" else ""
PYTHON = BIN / f"python{SUFFIX}"
UV = BIN / f"uv{SUFFIX}"
UV_WANTED = "uv>=0.13"
OLDEST = (3, 11)

# What the wheels of Qt and OpenCV need of a Debian or Ubuntu system, found with ldd on a bare one.
LIBRARIES = (
    "libgl1 libegl1 libglib2.0-0 libdbus-1-3 libfontconfig1 libxkbcommon0 libxkbcommon-x11-0 libxcb-cursor0 "
    "libxcb-icccm4 libxcb-image0 libxcb-keysyms1 libxcb-render-util0 libxcb-shape0 libxcb-xkb1 libxcb-randr0 "
    "libxcb-xfixes0 libxcb-sync1"
)
APT_LINE = f"sudo apt install --no-install-recommends python3-venv {LIBRARIES}"


class NotReady(Exception):
    """This machine lacks something; the message is the sentence that says what to do."""


def main(words: Sequence[str]) -> int:
    """Set up, run, and pass on the exit code; 3 where the machine lacks something."""
    try:
        if sys.version_info < OLDEST:
            raise NotReady(
                f"Evenstand needs Python {OLDEST[0]}.{OLDEST[1]} or newer; this is {sys.version.split()[0]}."
            )
        testing = words[:1] == ["test"]
        set_up(testing)
        look_for_libraries()
    except NotReady as lacking:
        print(lacking, file=sys.stderr)
        return 3
    except KeyboardInterrupt:
        return 130
    if testing:
        os.chdir(ROOT)
        return become(["-m", "pytest", *words[1:]], dict(os.environ))
    wanted = [] if list(words) == ["app"] else list(words)
    return become(["-m", "gui", *wanted], os.environ | {"PYTHONPATH": str(ROOT)})


def become(words: Sequence[str], environment: Mapping[str, str]) -> int:
    """Let the program take this one's place, so that Ctrl+C and a service's stop reach it and wait for it."""
    if os.name != "nt":
        os.execve(PYTHON, [str(PYTHON), *words], environment)
    signal.signal(signal.SIGINT, lambda *_: None)  # Ctrl+C reaches both: it ends in its own way
    return subprocess.call([PYTHON, *words], env=environment)


def set_up(testing: bool) -> None:
    """Make `.venv` hold exactly what `uv.lock` says, and with `testing` the test tools too."""
    if not PYTHON.exists():
        print("Setting up Evenstand in .venv (once, about 200 MB to download) ...", file=sys.stderr)
        if subprocess.call([sys.executable, "-m", "venv", "--clear", "--without-pip", VENV]) != 0:
            raise NotReady(
                f"No folder .venv could be made in {ROOT} (the lines above say why). Put Evenstand where you "
                "may write and 1 GB is free, then run the same command again."
            )
    if not UV.exists():
        fetch_uv()
    environment = {name: value for name, value in os.environ.items() if name != "VIRTUAL_ENV"} | {
        "UV_PROJECT_ENVIRONMENT": str(VENV),
        "UV_PYTHON": str(PYTHON),
        "UV_PYTHON_DOWNLOADS": "never",
    }
    groups = ["--group", "test"] if testing else []
    command = [UV, "sync", "--quiet", "--locked", "--inexact", "--compile-bytecode", *groups]
    if subprocess.call(command, cwd=ROOT, env=environment) != 0:
        raise NotReady(
            "The libraries could not be installed (the lines above say why). "
            "Look whether this machine is online, then run the same command again."
        )


def fetch_uv() -> None:
    """Put uv into `.venv`, by this Python's own pip or by the one that comes with Python."""
    into = ["--python", str(PYTHON), "install", "--quiet", UV_WANTED]
    if subprocess.call([sys.executable, "-m", "pip", *into], stderr=subprocess.DEVNULL) == 0:
        return
    quiet = {"stdout": subprocess.DEVNULL, "stderr": subprocess.DEVNULL}
    if subprocess.call([PYTHON, "-m", "ensurepip"], **quiet) != 0:
        raise NotReady(f"This Python comes without pip. This line brings it, then try again:\n{APT_LINE}")
    if subprocess.call([PYTHON, "-m", "pip", "install", "--quiet", UV_WANTED]) != 0:
        raise NotReady(
            "The installer uv could not be fetched. Look whether this machine is online, then try again."
        )


def look_for_libraries() -> None:
    """Import Qt and OpenCV once; where a system library is missing, say the one line that brings it."""
    tried = subprocess.run(
        [PYTHON, "-c", "import PySide6.QtWidgets, cv2"], capture_output=True, text=True, check=False
    )
    if tried.returncode == 0:
        return
    last = tried.stderr.strip().rpartition("\n")[2]
    if sys.platform == "linux" and shutil.which("apt"):
        raise NotReady(f"A library of the system is missing ({last}). This line brings it:\n{APT_LINE}")
    raise NotReady(f"A library of the system is missing: {last}")


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
