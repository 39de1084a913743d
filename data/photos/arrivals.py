"""Arrivals: looks at a folder -> the files that have arrived whole.

In    what was seen at the last look; what is there now; the time in s
Out   files that are ready, each once; what to remember for the next look
Not   waiting and waking up (the window does), reading the files (`intake.py`)

No system says reliably when a phone or a sync program is done with a file. A file counts as whole when size
and time of change stayed the same over at least 2 s, and its name is not one of a download on its way.
"""

import os
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path

from data.photos.originals import SUFFIXES, folders_below

__all__ = ["Seen", "arrived", "look_into"]

QUIET_S = 2.0
ON_ITS_WAY = (".part", ".tmp", ".crdownload", ".download", ".partial")


@dataclass(frozen=True, slots=True, kw_only=True)
class Seen:
    """A file as it was when it was first seen in this state."""

    size: int
    changed: float  # time of change, s
    since: float  # seen like this since, s
    handed_over: bool = False


def look_into(folder: Path) -> dict[Path, tuple[int, float]]:
    """Size and time of change of the pictures in a folder and below; unreadable ones are left out."""
    found: dict[Path, tuple[int, float]] = {}
    for place, inner, names in os.walk(folder):
        inner[:] = folders_below(inner, names)
        for name in names:
            path = Path(place) / name
            if is_wanted(path):
                try:
                    stat = path.stat()
                except OSError:
                    continue
                found[path] = (stat.st_size, stat.st_mtime)
    return found


def is_wanted(path: Path) -> bool:
    """Whether a file's name is that of a picture, and of one that is not still on its way."""
    name = path.name.lower()
    return not name.startswith(".") and not name.endswith(ON_ITS_WAY) and path.suffix.lower() in SUFFIXES


def arrived(
    before: Mapping[Path, Seen], there: Mapping[Path, tuple[int, float]], at: float
) -> tuple[tuple[Path, ...], dict[Path, Seen]]:
    """The files that are whole now and were not handed over before, and what to remember.

    Parameters
    ----------
    before : what the last look remembered; empty at the first.
    there : path -> (size in bytes, time of change in s), as `look_into` gives it.
    at : the time of this look, s, of a clock that does not jump.
    """
    ready: list[Path] = []
    now: dict[Path, Seen] = {}
    for path, (size, changed) in sorted(there.items()):
        seen = before.get(path)
        if seen is None or (seen.size, seen.changed) != (size, changed):
            now[path] = Seen(size=size, changed=changed, since=at)
            continue
        whole = size > 0 and at - seen.since >= QUIET_S and is_wanted(path)
        if whole and not seen.handed_over:
            ready.append(path)
        now[path] = Seen(size=size, changed=changed, since=seen.since, handed_over=seen.handed_over or whole)
    return tuple(ready), now
