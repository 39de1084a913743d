"""Rows: the one place where a row of the book becomes a record.

In    rows, as `queries.py` asks for them
Out   records of `records.py`
Not   running queries (`chapters/reader.py`), the way into the book (`scorerows.py`)
"""

import json
import os
import sys
from array import array
from collections.abc import Iterable
from datetime import datetime
from functools import lru_cache
from pathlib import Path
from sqlite3 import Row

from data.photos.carried import carried_of
from data.photos.originals import original_path, picture_paths
from data.records import (
    BedCells,
    Cells,
    Day,
    KeptGap,
    KeptScore,
    KeptSuspect,
    PhotoId,
    PhotoRow,
    PhotoState,
    Said,
    ScoreId,
    SeenSuspect,
    SuspectId,
    TakenFrom,
    Tray,
    TrayId,
)
from data.tables.packed import bed_in, corners_in
from vision.reason import RETAKE, Reason

__all__ = [
    "day_of",
    "doubts_of",
    "name_text",
    "photo_row_of",
    "reason_of",
    "score_of",
    "seen_suspect_of",
    "state_of",
    "suspect_of",
    "time_of",
    "time_text",
    "tray_of",
    "unpack_bed_cells",
    "unpack_cells",
]


CELL_ROWS = 6
CELL_COLUMNS = 12
NO_CELL = 0xFFFF  # in place of the number of a cell that is not told
OF_BED = ("bed_share", "bed_uniformity", "bed_cells")

# names of a score's numbers, the same in `vision`, in the book and in `KeptScore`
STAND = (
    "coverage", "green", "pale", "red", "uniformity", "low_quarter", "variation", "clumping", "edge_deficit",
    "gradient_x", "gradient_y", "gap_share", "bed_share", "bed_uniformity",
)  # fmt: skip
COLOUR = ("lightness", "a", "b", "chroma", "hue", "dark_green", "dark_green_clipped", "spread")
LIGHT = ("exposure", "clipped_pct", "dark_pct", "glare_pct", "sharpness", "blur_mm")


# --- small things


def time_text(at: datetime) -> str:
    """A time as the book keeps it: the rack's local time, to the second."""
    if at.tzinfo is not None:
        at = at.astimezone().replace(tzinfo=None)
    return at.isoformat(timespec="seconds")


def name_text(name: str) -> str:
    """The name of a file as the book keeps it; what is no text in it, as on old sticks, becomes U+FFFD."""
    return os.fsencode(name).decode("utf-8", errors="replace")


def time_of(text: str | None) -> datetime | None:
    """The time that `time_text` wrote."""
    return None if text is None else datetime.fromisoformat(text)


def _time(text: str) -> datetime:
    return datetime.fromisoformat(text)


def reason_of(name: str | None) -> Reason | str | None:
    """A reason by the name under which the book keeps it; a name that we no longer know stays as it is."""
    if name is None:
        return None
    return Reason.__members__.get(name, name)


def unpack_cells(blob: bytes) -> Cells:
    """144 bytes -> 6 rows of 12 coverages in %."""
    return tuple(tuple(cell / 100 for cell in row) for row in _unpacked(blob))


def unpack_bed_cells(blob: bytes | None) -> BedCells | None:
    """144 bytes -> 6 rows of 12 shares of the bed in %, None where one is not told; None where none are."""
    if blob is None:
        return None
    return tuple(tuple(None if cell == NO_CELL else cell / 100 for cell in row) for row in _unpacked(blob))


def _unpacked(blob: bytes) -> list[list[int]]:
    packed = array("H")
    packed.frombytes(blob)
    if sys.byteorder == "big":
        packed.byteswap()
    values = packed.tolist()
    return [values[r * CELL_COLUMNS : (r + 1) * CELL_COLUMNS] for r in range(CELL_ROWS)]


def _points(text: str | None) -> tuple[tuple[float, float], ...]:
    return tuple((x, y) for x, y in json.loads(text)) if text else ()


# --- out of the book


def tray_of(row: Row) -> Tray:
    """A tray with its growing conditions."""
    values = dict(zip(row.keys(), row, strict=True))
    times = {name: time_of(values[name]) for name in ("sown_at", "done_at", "blackout_from", "blackout_to")}
    yes_no = {name: None if values[name] is None else bool(values[name]) for name in ("stacked", "heat_mat")}
    return Tray(**(values | times | yes_no))


def suspect_of(row: Row) -> KeptSuspect:
    """A suspect with what a person said of it."""
    return KeptSuspect(
        id=SuspectId(row["id"]),
        x_mm=row["x_mm"],
        y_mm=row["y_mm"],
        area_cm2=row["area_cm2"],
        confidence=row["confidence"],
        why=row["why"],
        outline_mm=_points(row["outline"]),
        said=None if row["said"] is None else Said(row["said"]),
        closed_at=time_of(row["closed_at"]),
        closed_why=row["closed_why"],
    )


def score_of(row: Row, suspects: Iterable[Row]) -> KeptScore:
    """All numbers of one score."""
    gaps = tuple(
        KeptGap(x_mm=x, y_mm=y, area_cm2=area, outline_mm=tuple((p, q) for p, q in outline))
        for x, y, area, outline in json.loads(row["gaps"])
    )
    bed_cells = unpack_bed_cells(bed_in(row["cells"], row["bed_cells"]))
    reasons = {name: reason_of(reason) or "" for name, reason in json.loads(row["reasons"]).items()}
    if bed_cells is None:
        reasons |= dict.fromkeys(OF_BED, Reason.BEFORE_BED)
    return KeptScore(
        id=ScoreId(row["id"]),
        photo_id=PhotoId(row["photo"]),
        method=row["method"],
        sure=bool(row["sure"]),
        cells=unpack_cells(row["cells"]),
        bed_cells=bed_cells,
        gaps=gaps,
        suspects=tuple(suspect_of(suspect) for suspect in suspects),
        corners_from=row["corners_from"],
        frame_confidence=row["frame_confidence"],
        corners_px=_points(row["corners_px"]),
        px_per_mm=row["px_per_mm"],
        tilt_deg=row["tilt_deg"],
        cast=row["colour_cast"],
        corrected_by=row["corrected_by"],
        seconds=row["seconds"],
        reasons=reasons,
        notes=tuple(reason_of(note) or "" for note in json.loads(row["notes"])),
        coverage_sd=row["coverage_sd"],
        mended=bool(row["mended"]),
        inner_long_mm=row["inner_long_mm"],
        inner_short_mm=row["inner_short_mm"],
        **{name: row[name] for name in (*STAND, *COLOUR, *LIGHT)},
    )


def state_of(row: Row) -> PhotoState:
    """Where a photo stands, by what its row says."""
    if row["left_out_at"] is not None:
        return PhotoState.LEFT_OUT
    if row["refusal"] is not None:
        return PhotoState.REFUSED
    if row["needs_corners"]:
        return PhotoState.NEEDS_CORNERS
    return PhotoState.NEEDS_TRAY if row["tray"] is None else PhotoState.STORED


def _why(row: Row) -> Reason | str | None:
    return Reason.UNSURE_FRAME if row["needs_corners"] else reason_of(row["refusal"])


def day_of(row: Row, score: KeptScore | None, tray: Tray, folder: Path) -> Day:
    """One photo of a tray on its day."""
    taken_at = _time(row["taken_at"])
    return Day(
        photo_id=PhotoId(row["photo"]),
        taken_at=taken_at,
        taken_from=TakenFrom(row["taken_from"]),
        day=tray.day(taken_at.date()),
        state=state_of(row),
        reason=_why(row),
        photo=original_path(folder, row["digest"], row["suffix"]),
        pictures=None
        if score is None
        else picture_paths(folder, row["digest"], row["method"], corners_in(row["corners"]), row["mend"]),
        score=score,
    )


def seen_suspect_of(row: Row) -> SeenSuspect:
    """A suspect with the photo on which it was seen."""
    carried = None if row["carried"] is None else carried_of(row["carried"])
    return SeenSuspect(
        id=SuspectId(row["id"]),
        tray_id=TrayId(row["tray"]),
        photo_id=PhotoId(row["photo"]),
        taken_at=_time(row["taken_at"]),
        x_mm=row["x_mm"],
        y_mm=row["y_mm"],
        area_cm2=row["area_cm2"],
        confidence=row["confidence"],
        said=None if row["said"] is None else Said(row["said"]),
        since=None if carried is None or row["id"] not in carried.was else carried.since,
        was=() if carried is None else carried.was.get(SuspectId(row["id"]), ()),
        closed=row["closed_at"] is not None,
    )


def photo_row_of(row: Row, proposal: tuple[TrayId, str] | None, folder: Path) -> PhotoRow:
    """One row of Intake."""
    scored = row["score"] is not None
    return PhotoRow(
        id=PhotoId(row["id"]),
        name=row["name"],
        added_at=_time(row["added_at"]),
        taken_at=_time(row["taken_at"]),
        taken_from=TakenFrom(row["taken_from"]),
        tag_number=row["tag_number"],
        state=state_of(row),
        tray_id=row["tray"],
        tray_code=row["code"],
        matched_by=row["matched_by"],
        proposal_id=proposal and proposal[0],
        proposal_code=proposal and proposal[1],
        reason=_why(row),
        photo=original_path(folder, row["digest"], row["suffix"]) if row["kept"] else None,
        thumbnail=picture_paths(folder, row["digest"], row["method"], corners_in(row["corners"])).thumbnail
        if scored
        else None,
        coverage=row["coverage"],
        doubts=doubts_of(row["notes"], row["mended"]) if scored else (),
        two_tags=scored and Reason.TWO_TAGS.name in json.loads(row["notes"]),
    )


def doubts_of(kept: str | None, mended: int | None) -> tuple[Reason, ...]:
    """Those of a score's notes, as text, that another photo would be free of; none where it is mended."""
    if kept is None or kept == "[]" or mended:  # nearly always: thousands are read each morning
        return ()
    return _doubts_in(kept)


@lru_cache(256)  # the same few are noted again and again
def _doubts_in(kept: str) -> tuple[Reason, ...]:
    notes = (reason_of(note) for note in json.loads(kept))
    return tuple(note for note in notes if isinstance(note, Reason) and note in RETAKE)
