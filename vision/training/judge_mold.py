"""What a table of mold finds on trays that it has not been learned from.

In    `Tray`s
Out   found of patches by size, false ones on trays without mold, by medium, crop and day, with intervals
Not   patches (`vision/suspects.py`)
"""

from collections.abc import Callable, Collection

import numpy as np
from mold_net import learned
from mold_trays import Tray

from vision.moldchance import SEEN, Cells, names_of_features, together
from vision.suspect import Suspect
from vision.suspects import suspects_in
from vision.tissue import Label

PARTS = 9  # whole thirds, so that no tray is judged by what has seen it


def judge(trays: list[Tray]) -> None:
    """Each tray by a table learned without its part."""
    found: dict[str, tuple[Suspect, ...]] = {}
    for part in range(PARTS):
        _, chance = learned([tray for tray in trays if tray.number % PARTS != part])
        for tray in trays:
            if tray.number % PARTS == part:
                found[tray.name + tray.truth["source"]] = suspects_of(tray, chance)
    rows = [(tray, found[tray.name + tray.truth["source"]]) for tray in trays]
    print(report("all", rows))
    print(report("photos", [row for row in rows if row[0].truth["source"] == "photos"]))
    for what in ("medium", "crop"):
        for value in sorted({tray.truth[what] for tray in trays}):
            print(report(f"  {value}", [row for row in rows if row[0].truth[what] == value]))
    for title, first, end in (("under 4", 0, 4), ("4 to 7", 4, 7), ("from 7", 7, 99)):
        print(report(f"  day {title}", [row for row in rows if first <= row[0].truth["day"] < end]))


def suspects_of(tray: Tray, chance: Callable[[np.ndarray], np.ndarray]) -> tuple[Suspect, ...]:
    """What the program would find with this table."""
    seen = tray.bare > SEEN
    cells = np.zeros(tray.bare.shape, np.float32)
    fuzz = tray.values[..., names_of_features().index(f"label{Label.FUZZ:d}_1")]
    cells[seen] = together(chance(tray.values[seen]), fuzz[seen] / tray.bare[seen])
    return suspects_in(Cells(chance=cells, bare=tray.bare), tray.colours, tray.tissue)


def report(title: str, rows: Collection[tuple[Tray, tuple[Suspect, ...]]]) -> str:
    """Found by size, false ones where there is no mold."""
    bands = []
    for least, most in ((1, 2), (2, 4), (4, 99), (2, 99)):
        hits = [
            any(near(patch, one) for one in found)
            for tray, found in rows
            for patch in tray.patches
            if least <= patch[2] < most
        ]
        bands.append(f"{least}-{most} cm2 {sum(hits)}/{len(hits)} {interval(sum(hits), len(hits))}")
    free = [found for tray, found in rows if not tray.truth["mold"]]
    false = sum(map(len, free))
    photos = sum(map(bool, free))
    quiet = f"false {false} on {photos} of {len(free)} {interval(photos, len(free))}"
    return f"{title:14s} {'  '.join(bands)}  {quiet}"


def interval(hits: int, of_all: int) -> str:
    """95 % by Wilson (1927)."""
    if not of_all:
        return ""
    z, share = 1.96, hits / of_all
    middle = (share + z * z / (2 * of_all)) / (1 + z * z / of_all)
    half = z / (1 + z * z / of_all) * np.sqrt(share * (1 - share) / of_all + z * z / (4 * of_all**2))
    return f"({100 * max(0, middle - half):.0f}-{100 * min(1, middle + half):.0f} %)"


def near(patch: tuple[float, float, float], one: Suspect) -> bool:
    """Whether a suspect is that patch."""
    reach = 12 + np.sqrt(max(patch[2], one.area_cm2) * 100 / np.pi)
    return bool(np.hypot(patch[0] - one.x_mm, patch[1] - one.y_mm) < reach)
