"""How every odd or broken file of a folder ends when it is read: a table, one process a file.

    EVENSTAND_REAL=FOLDER python tests/bench/test_bad_input.py     (it has manifest.json and f_badinput/)

In    a folder of files and, in its manifest, in words what should become of each
Out   one line a file: how it ended, seconds, peak memory; the words it should agree with
"""

import json
import os
import resource
import subprocess
import sys
import time
from dataclasses import dataclass
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]


@dataclass(frozen=True, slots=True, kw_only=True)
class Ending:
    """What became of one file."""

    file: str
    truth: str  # the manifest's words
    outcome: str  # "read", "refused" or "crashed"
    reason: str  # the name of the reason, or the picture's size
    seconds: float
    peak_mb: float

    @property
    def as_it_should(self) -> bool:
        """True where the ending is one that the manifest's words allow."""
        return self.outcome in allowed(self.truth) or (
            self.outcome == "refused" and self.reason in ("GREY", "TOO_SMALL")  # no fault of the file
        )


def allowed(truth: str) -> set[str]:
    """The endings that the manifest's words allow."""
    words = truth.lower()
    if "either" in words or (
        "refuse" in words and any(word in words for word in ("read", "convert", " or "))
    ):
        return {"read", "refused"}
    return {"refused"} if "refuse" in words else {"read"}


def endings(folder: Path) -> list[Ending]:
    """What becomes of every file of `f_badinput`, each read in a process of its own."""
    entries = json.loads((folder / "manifest.json").read_text(encoding="utf-8"))
    entries = entries if isinstance(entries, list) else entries["files"]
    return [_ending(folder, entry) for entry in entries if entry["file"].startswith("f_badinput/")]


def _ending(folder: Path, entry: dict[str, str]) -> Ending:
    command = [sys.executable, __file__, "one", str(folder / entry["file"])]
    run = subprocess.run(command, capture_output=True, text=True, timeout=60, check=False, cwd=ROOT)
    fields = run.stdout.strip().splitlines()[-1:] if run.returncode == 0 else []
    outcome, reason, seconds, peak = (
        fields[0].split("\t") if fields else ("crashed", run.stderr[-200:], "nan", "nan")
    )
    return Ending(
        file=entry["file"].removeprefix("f_badinput/"),
        truth=entry["truth"],
        outcome=outcome,
        reason=reason,
        seconds=float(seconds),
        peak_mb=float(peak),
    )


def one(path: Path) -> str:
    """Read one file in this process; outcome, reason or size, seconds, peak memory in MB."""
    sys.path.insert(0, str(ROOT))
    from vision.photo import PhotoRefused, preview, read_photo

    began = time.perf_counter()
    try:
        photo = read_photo(path)
        preview(photo, 640)
        outcome, reason = "read", "{} x {}".format(*photo.size_upright)
    except PhotoRefused as refused:
        outcome, reason = "refused", refused.reason.name
    seconds = time.perf_counter() - began
    peak_mb = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
    return f"{outcome}\t{reason}\t{seconds:.2f}\t{peak_mb:.0f}"


def table(found: list[Ending]) -> str:
    """The endings as text, those that are not as they should be marked."""
    lines = [
        f"{'ok' if e.as_it_should else 'NO':3s}{e.file:56s}{e.outcome:9s}{e.reason:16s}"
        f"{e.seconds:6.2f} s{e.peak_mb:6.0f} MB  {e.truth}"
        for e in found
    ]
    return "\n".join([*lines, f"{sum(e.as_it_should for e in found)} of {len(found)} as they should be"])


@pytest.mark.sweep
@pytest.mark.timeout(600)
@pytest.mark.skipif("EVENSTAND_REAL" not in os.environ, reason="needs EVENSTAND_REAL, a folder of bad files")
def test_every_bad_file_ends_as_it_should_in_bounded_time_and_memory():
    found = endings(Path(os.environ["EVENSTAND_REAL"]))
    print(table(found))

    assert [one.file for one in found if not one.as_it_should] == []
    assert max(one.peak_mb for one in found) < 1000
    assert max(one.seconds for one in found) < 10


if __name__ == "__main__":
    if sys.argv[1:2] == ["one"]:
        print(one(Path(sys.argv[2])))
    else:
        print(table(endings(Path(os.environ["EVENSTAND_REAL"]))))
