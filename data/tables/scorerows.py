"""Score rows: a score of the vision room -> rows of the book.

In    `Score`, `Suspect`, `Corners` of the vision room
Out   dicts for the tables score and suspect; corners as text and back
Not   the way out of the book (`rows.py`), writing (`book.py`)

The 72 cells are one BLOB of 16-bit numbers, little-endian, 1/100 %, row by row: a third of the size of 72
rows of a table. The shares of the bed are a second one that tells what differs; corners are a third
(`packed.py`). Outlines of gaps are left out: the labels in the cache have them, and they took two thirds of a
book's file.
"""

import json
import sys
from array import array
from collections.abc import Iterable
from datetime import datetime
from typing import TYPE_CHECKING, Any

from data.tables.packed import packed_bed, packed_corners
from data.tables.rows import CELL_COLUMNS, CELL_ROWS, COLOUR, LIGHT, NO_CELL, STAND, time_text
from vision.reason import Reason

if TYPE_CHECKING:
    from vision.corners import Corners
    from vision.score import Score
    from vision.suspect import Suspect

__all__ = ["corners_of", "corners_text", "pack_cells", "score_row", "suspect_rows"]

NO_OUTLINE: tuple[()] = ()  # where an older program looks for one


def score_row(score: "Score", *, sure: bool, made_at: datetime) -> dict[str, Any]:
    """A score as a row of the table, without its photo."""
    stand, colour, light, corners = score.stand, score.colour, score.light, score.corners
    gaps = [[*(_plain(v) for v in (gap.x_mm, gap.y_mm, gap.area_cm2)), NO_OUTLINE] for gap in stand.gaps]
    cells = pack_cells(stand.cells)
    reasons = {**score.missing, **stand.reasons, **colour.reasons, **light.reasons}
    return {
        "method": score.method,
        "made_at": time_text(made_at),
        "sure": int(sure),
        "coverage_sd": _number(score.coverage_sd),
        "cells": cells,
        "bed_cells": packed_bed(cells, pack_cells(stand.bed_cells)),
        "gaps": _text(gaps),
        "corners": None if corners is None else packed_corners(corners_text(corners)),
        "corners_from": None if corners is None else str(corners.found_by),
        "frame_confidence": None if corners is None else float(corners.confidence),
        "corners_px": _points_text(score.corners_px),
        "px_per_mm": _number(score.px_per_mm),
        "tilt_deg": _number(score.tilt_deg),
        "colour_cast": _number(light.cast),
        "corrected_by": light.corrected_by,
        "inner_long_mm": float(score.inner_mm[0]),
        "inner_short_mm": float(score.inner_mm[1]),
        "seconds": _number(score.seconds),
        "notes": _text([_reason_name(note) for note in score.notes]),
        "reasons": _text({name: _reason_name(reason) for name, reason in reasons.items()}),
        **{name: _number(getattr(stand, name)) for name in STAND},
        **{name: _number(getattr(colour, name)) for name in COLOUR},
        **{name: _number(getattr(light, name)) for name in LIGHT},
    }


def suspect_rows(suspects: Iterable["Suspect"]) -> list[dict[str, Any]]:
    """Suspects as rows of the table, without their score."""
    return [
        {
            "x_mm": _number(one.x_mm),
            "y_mm": _number(one.y_mm),
            "area_cm2": _number(one.area_cm2),
            "confidence": float(one.confidence),
            "why": str(one.why),
            "outline": _points_text(one.outline_mm) or "[]",
        }
        for one in suspects
    ]


def _number(value: float | None) -> float | None:
    return None if value is None else float(value)  # numpy's own floats would be stored as BLOB


def _plain(value: float | None) -> float | None:
    return None if value is None else round(float(value), 2)


# --- corners, which have to come back exactly: pictures are made again from them


def corners_text(corners: "Corners") -> str:
    """Corners in the stored photo as text."""
    return _text(
        {
            "points": [[float(x), float(y)] for x, y in corners.points],
            "found_by": str(corners.found_by),
            "confidence": float(corners.confidence),
            "tilt_deg": _number(corners.tilt_deg),
            "lens": [float(term) for term in corners.lens],
            "focal_px": _number(corners.focal_px),
            **({} if corners.axis_px is None else {"axis_px": [float(part) for part in corners.axis_px]}),
        }
    )


def corners_of(text: str) -> "Corners":
    """The corners that `corners_text` wrote."""
    from vision.corners import Corners, CornersFrom

    kept = json.loads(text)
    first, second, third, fourth = ((x, y) for x, y in kept["points"])
    axis = kept.get("axis_px")  # of cropped photos alone
    return Corners(
        points=(first, second, third, fourth),
        found_by=CornersFrom(kept["found_by"]),
        confidence=kept["confidence"],
        tilt_deg=kept["tilt_deg"],
        lens=(kept["lens"][0], kept["lens"][1]),
        axis_px=None if axis is None else (axis[0], axis[1]),
        focal_px=kept["focal_px"],
    )


# --- small things


def _text(value: object) -> str:
    """As JSON without blanks: there is a row for every photo."""
    return json.dumps(value, separators=(",", ":"))


def pack_cells(cells: Iterable[Iterable[float | None]]) -> bytes:
    """6 x 12 shares in % -> 144 bytes; a cell that is not told gets a number that no share has."""
    packed = array("H", (NO_CELL if cell is None else round(cell * 100) for row in cells for cell in row))
    if len(packed) != CELL_ROWS * CELL_COLUMNS:
        raise ValueError(f"a tray has {CELL_ROWS} x {CELL_COLUMNS} cells; got {len(packed)}")
    if sys.byteorder == "big":
        packed.byteswap()
    return packed.tobytes()


def _reason_name(reason: Reason | str) -> str:
    return reason.name if isinstance(reason, Reason) else str(reason)


def _points_text(points: Iterable[Iterable[float]] | None) -> str | None:
    return None if points is None else _text([[round(float(v), 2) for v in point] for point in points])
