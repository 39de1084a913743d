#!/usr/bin/env python3
"""One command: a folder that runs Evenstand on a machine without Python.

    python3 .packaging/bundle.py          builds dist/evenstand, then scores a photo with it

Standard library only; what it needs lies in `.venv` (see `launch.py`). The folder runs on systems whose C
library is at least as new as that of the machine it was built on: build on the oldest one that you want to
reach.
"""

import json
import os
import shutil
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT))

import launch  # noqa: E402  set-up is the same

SPEC = ROOT / ".packaging" / "evenstand.spec"
TARGET = ROOT / "dist" / "evenstand"
PROGRAM = TARGET / f"evenstand{launch.SUFFIX}"
PHOTO = ROOT / "data" / "demo" / "photos" / "A1_day09.webp"


def main() -> int:
    """Build, then try it; 1 where the built program does not do what it should."""
    launch.set_up(testing=False)
    environment = os.environ | {
        "UV_PROJECT_ENVIRONMENT": str(launch.VENV),
        "UV_PYTHON": str(launch.PYTHON),
    }
    fetch = [launch.UV, "sync", "--quiet", "--locked", "--inexact", "--group", "bundle"]
    subprocess.check_call(fetch, cwd=ROOT, env=environment)
    shutil.rmtree(TARGET, ignore_errors=True)
    places = ["--distpath", str(TARGET.parent), "--workpath", str(ROOT / "build")]
    build = [launch.PYTHON, "-m", "PyInstaller", "--noconfirm", "--log-level", "WARN", *places, str(SPEC)]
    subprocess.check_call(build, cwd=ROOT)
    for name in ("evenstand.desktop", "evenstand.svg"):
        shutil.copyfile(ROOT / ".packaging" / name, TARGET / name)
    size = sum(path.stat().st_size for path in TARGET.rglob("*") if not path.is_symlink())
    print(f"{TARGET}: {size / 1e6:.0f} MB")
    return try_out()


def try_out() -> int:
    """Score one photo with the built program, away from the checkout."""
    words = [str(PROGRAM), "score", "--json", str(PHOTO)]
    ran = subprocess.run(words, cwd=TARGET.parent, capture_output=True, text=True, check=False)
    if ran.returncode != 0:
        print(ran.stderr, file=sys.stderr)
        return 1
    (scored,) = json.loads(ran.stdout)
    print(f"{PHOTO.name}: coverage {scored['coverage_pct']:.1f} %, method {scored['method']}")
    return 0 if scored["method"].startswith("learned") else 1


if __name__ == "__main__":
    sys.exit(main())
