"""Builders: ordinary trays, scores and photos; a test says only what it is about.

A photo file in these tests is a note in JSON that tells what scoring will make of it, and `score_note` reads
it: so intake can be tested to the last row without decoding a picture, in threads and in other processes.
"""

import hashlib
import itertools
import json
import os
import time
from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from pathlib import Path
from types import SimpleNamespace
from typing import Any

from data.book import Book
from data.photos.judged import Judged
from data.records import DayNumbers, NewTray, PhotoId, SeenSuspect, SuspectId, Tray, TrayId
from vision.reason import Reason

SOWN = datetime(2026, 3, 1, 9)
NOON = datetime(2026, 3, 8, 12)
SUSPECTS = itertools.count(1)  # each drawn suspect has an id of its own


def a_tray(code: str = "A1", **special: Any) -> NewTray:
    """Broccoli on coir, sown on 1 March 2026 in block 1 on shelf A, without a tag."""
    ordinary = {
        "crop": "broccoli",
        "medium": "coir",
        "sown_at": SOWN,
        "shelf": "A",
        "block": "1",
        "trial": "t",
    }
    return NewTray(code=code, **(ordinary | special))


def a_kept_tray(number: int = 1, **special: Any) -> Tray:
    """The same tray as a book hands it out."""
    ordinary = {
        "id": TrayId(number),
        "code": f"A{number}",
        "crop": "broccoli",
        "medium": "coir",
        "sown_at": SOWN,
        "done_at": None,
        "tag_number": None,
        "shelf": "A",
        "position": number,
        "trial": "t",
        "block": "1",
        "tray_type": "10 x 20 inch",
        "seed_lot": None,
        "seating": "in the tray",
        "sowing_rate_g": None,
        "soak_hours": None,
        "blackout_from": None,
        "blackout_to": None,
        "stacked": None,
        "watering": None,
        "feed": None,
        "heat_mat": None,
        "light": None,
        "note": "",
    }
    return Tray(**(ordinary | special))


def numbers(tray: int = 1, day: int = 8, **special: Any) -> DayNumbers:
    """An ordinary, even photo of a tray at noon of a day in March 2026."""
    ordinary = {
        "tray_id": TrayId(tray),
        "photo_id": PhotoId(100 * tray + day),
        "taken_at": datetime(2026, 3, day, 12),
        "refusal": None,
        "needs_corners": False,
        "method": "plain 1",
        "sure": True,
        "coverage": 80.0,
        "uniformity": 90.0,
        "edge_deficit": 3.0,
        "gap_share": 1.0,
    }
    return DayNumbers(**(ordinary | special))


def a_seen_suspect(tray: int = 1, day: int = 8, **special: Any) -> SeenSuspect:
    """A patch of 6 cm2 in the middle of a tray, of which nobody has said anything."""
    ordinary = {
        "id": SuspectId(next(SUSPECTS)),
        "tray_id": TrayId(tray),
        "photo_id": PhotoId(100 * tray + day),
        "taken_at": datetime(2026, 3, day, 12),
        "x_mm": 254.0,
        "y_mm": 127.0,
        "area_cm2": 6.0,
        "confidence": 0.5,
        "said": None,
    }
    return SeenSuspect(**(ordinary | special))


@dataclass
class Patch:
    """A suspect as the vision room tells it."""

    x_mm: float = 100.0
    y_mm: float = 50.0
    area_cm2: float = 6.0
    confidence: float = 0.7
    why: str = "pale web over green"
    outline_mm: Sequence[tuple[float, float]] = field(
        default_factory=lambda: [(90, 40), (110, 40), (100, 60)]
    )
    white: bool = False


STAND = {
    "pale": 5.0, "red": 0.0, "uniformity": 88.0, "low_quarter": 80.0, "variation": 12.0, "clumping": 0.1,
    "edge_deficit": 3.0, "gradient_x": 0.5, "gradient_y": -0.5, "gap_share": 1.5, "bed_uniformity": 88.0,
    "gaps": (SimpleNamespace(x_mm=30.0, y_mm=40.0, area_cm2=5.0, outline_mm=((25.0, 35.0), (35.0, 45.0))),),
    "reasons": {},
}  # fmt: skip
COLOUR = {
    "lightness": 45.0, "a": -20.0, "b": 25.0, "chroma": 32.0, "hue": 128.7, "dark_green": 0.5,
    "dark_green_clipped": 0.0, "spread": None, "reasons": {"spread": Reason.NO_CANOPY},
}  # fmt: skip
LIGHT = {
    "exposure": 52.0, "clipped_pct": 0.1, "dark_pct": 0.2, "glare_pct": 0.0, "sharpness": 300.0,
    "blur_mm": 0.6, "cast": None, "reasons": {}, "corrected_by": "patch",
}  # fmt: skip


def a_score(
    coverage: float = 55.0,
    *,
    suspects: Sequence[Patch] = (),
    confidence: float = 1.0,
    found_by: str = "station",
    method: str = "plain 1",
    **stand: Any,
) -> Any:
    """Everything that the vision room tells of one photo, with the names that it uses."""
    cells = tuple(tuple(coverage for _ in range(12)) for _ in range(6))
    ordinary = STAND | {"coverage": coverage, "green": coverage - 5, "cells": cells}
    ordinary |= {
        "bed_share": coverage,
        "bed_cells": cells,
    }  # where a test says nothing else
    return SimpleNamespace(
        coverage_sd=1.5,
        inner_mm=(508.0, 254.0),
        stand=SimpleNamespace(**(ordinary | stand)),
        colour=SimpleNamespace(**COLOUR),
        light=SimpleNamespace(**LIGHT),
        corners=SimpleNamespace(
            points=((10.0, 10.0), (1000.5, 12.0), (1001.0, 500.0), (9.0, 498.0)),
            found_by=found_by,
            confidence=confidence,
            tilt_deg=3.0,
            lens=(0.0, 0.0),
            axis_px=None,
            focal_px=None,
        ),
        corners_px=((10.0, 10.0), (1000.5, 12.0), (1001.0, 500.0), (9.0, 498.0)),
        suspects=tuple(suspects),
        px_per_mm=1.95,
        tilt_deg=3.0,
        method=method,
        seconds=0.1,
        notes=(),
        missing={"cast": Reason.NO_PATCH},
    )


def a_note(folder: Path, name: str = "IMG_1.jpg", **says: Any) -> Path:
    """A photo file that says what scoring will make of it; taken at noon of 8 March 2026."""
    ordinary = {"name": name, "taken_at": NOON.isoformat(), "tag": None, "coverage": 55.0}
    folder.mkdir(parents=True, exist_ok=True)
    path = folder / name
    path.write_text(json.dumps(ordinary | says), encoding="utf-8")
    return path


def score_note(path: Path, corners: Sequence[tuple[float, float]] | None = None) -> Judged:
    """What `a_note` asked for. `crash` ends the worker, `fail` raises, `slow` takes that many seconds."""
    data = path.read_bytes()
    says = json.loads(data)
    time.sleep(says.get("slow", 0.0))
    if says.get("crash"):
        os._exit(9)
    if says.get("fail"):
        raise ValueError("a mistake of ours")
    digest = hashlib.sha256(data).hexdigest()
    taken_at = None if says["taken_at"] is None else datetime.fromisoformat(says["taken_at"])
    known = {"name": says["name"], "digest": digest, "taken_at": taken_at, "tag_number": says["tag"]}
    known["camera"] = says.get("camera")
    known["utc_offset"] = timedelta(hours=says["zone"]) if "zone" in says else None
    if says.get("refuse"):
        return Judged(**known, refusal=Reason[says["refuse"]])
    suspects = [Patch(**patch) for patch in says.get("suspects", ())]
    found_by, confidence = (
        ("hand", 1.0) if corners else (says.get("found_by", "station"), says.get("sure", 1.0))
    )
    score = a_score(
        says["coverage"] + (10.0 if corners else 0.0),
        suspects=suspects,
        confidence=confidence,
        found_by=found_by,
    )
    score.notes = tuple(Reason[note] for note in says.get("notes", ()))
    return Judged(**known, score=score, top_view=b"top", labels=b"labels", thumbnail=b"thumb")


def bring(book: Book, path: Path) -> Any:
    """Score a note and keep it."""
    return book.keep(score_note(path), path)
