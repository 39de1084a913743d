"""How the light of rendered photos is judged, through their true corners: a table with the worst cases.

EVENSTAND_PHOTOS=FOLDER python -m tests.bench.test_light_of_photos   (photos NAME.jpg with NAME_truth.json)
"""

import json
import os
import time
from dataclasses import dataclass
from pathlib import Path

import pytest

from vision.corners import Corners, CornersFrom
from vision.light import Light, judge_light, surroundings_tint
from vision.photo import read_photo
from vision.topview import make_top_view


@dataclass(frozen=True, slots=True, kw_only=True)
class Judged:
    """One photo, what its light was, and what was made of it."""

    name: str
    truth: str
    light: Light
    tint: float | None
    seconds: float

    @property
    def wrong(self) -> bool:
        """True where white light was refused or purple light was not."""
        return (self.light.refusal is None) == (self.truth == "purple")


def judged(folder: Path) -> list[Judged]:
    """All photos of a folder that have a truth."""
    return [_judged(path) for path in sorted(folder.glob("*_truth.json"))]


def _judged(path: Path) -> Judged:
    truth = json.loads(path.read_text(encoding="utf-8"))
    photo = read_photo(path.with_name(path.name.replace("_truth.json", ".jpg")))
    one, two, three, four = ((float(x), float(y)) for x, y in truth["corners_rim_px"])
    corners = Corners(points=(one, two, three, four), found_by=CornersFrom.HAND, confidence=1.0)
    top = make_top_view(photo, corners)
    began = time.perf_counter()
    light = judge_light(photo, top, None)
    seconds = time.perf_counter() - began
    return Judged(
        name=photo.name,
        truth=truth["light"],
        light=light,
        tint=surroundings_tint(photo, top),
        seconds=seconds,
    )


def table(found: list[Judged]) -> str:
    """Counts by light, the photos judged wrongly, and the extremes of every number."""
    lines = []
    for kind in sorted({one.truth for one in found}):
        of_kind = [one for one in found if one.truth == kind]
        refused = [one.name for one in of_kind if one.light.refusal is not None]
        tints = [one.tint for one in of_kind if one.tint is not None]
        lines.append(
            f"{kind:9s} {len(of_kind):3d}  refused {len(refused):3d}  "
            f"tint {min(tints):+.2f} to {max(tints):+.2f}"
        )
    lines += [f"WRONG {one.name} {one.truth}: {one.light.refusal}" for one in found if one.wrong]
    for field in ("exposure", "clipped_pct", "dark_pct", "glare_pct", "sharpness", "blur_mm"):
        values = sorted((getattr(one.light, field) or 0.0, one.name) for one in found)
        lines.append(
            f"{field:12s} {values[0][0]:8.2f} {values[0][1]} to {values[-1][0]:8.2f} {values[-1][1]}"
        )
    times = sorted(one.seconds for one in found)
    lines.append(
        f"judged in {1000 * times[len(times) // 2]:.0f} ms (median), {1000 * times[-1]:.0f} ms at most"
    )
    return "\n".join(lines)


@pytest.mark.sweep
@pytest.mark.timeout(600)
@pytest.mark.skipif("EVENSTAND_PHOTOS" not in os.environ, reason="needs EVENSTAND_PHOTOS, photos with truth")
def test_purple_light_is_refused_and_white_light_is_not():
    found = judged(Path(os.environ["EVENSTAND_PHOTOS"]))
    print(table(found))

    white = [one for one in found if one.truth != "purple"]
    assert [one.name for one in found if one.truth == "purple" and one.light.refusal is None] == []
    assert sum(one.light.refusal is not None for one in white) <= 0.02 * len(white)


if __name__ == "__main__":
    print(table(judged(Path(os.environ["EVENSTAND_PHOTOS"]))))
