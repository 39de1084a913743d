"""Score sheet: scores -> the objects of a JSON list, or the lines of a table.

In    a photo's path as it was given; its `Score` or `Refused`
Out   a dict of plain values with every key there for every photo, or one line of text
Not   scoring (`scoring.py`), printing, files

A number that is missing is null and named in `missing` with its reason, keys of inner objects as
`quality.tilt_deg`. Of a refused photo every number is missing for the one reason.
"""

from collections.abc import Mapping, Sequence
from dataclasses import fields
from json import dumps
from typing import TYPE_CHECKING, Any

from gui.commands.saying import plain

if TYPE_CHECKING:
    from vision.bed import BedCells
    from vision.reason import Reason
    from vision.score import Refused, Score

__all__ = ["as_json", "as_line", "as_object", "heading", "name_width"]

DIGITS = 4
PIXEL_DIGITS = 2

# name of a number in the records -> its key in the list, where the two differ
KEYS = {
    "corners": "corners_px",
    "coverage": "coverage_pct",
    "coverage_sd": "coverage_sd_points",
    "green": "green_pct",
    "pale": "pale_pct",
    "red": "red_pct",
    "cells": "cells_pct",
    "uniformity": "uniformity_pct",
    "low_quarter": "low_quarter_pct",
    "bed_share": "bed_share_pct",
    "bed_cells": "bed_cells_pct",
    "bed_uniformity": "bed_uniformity_pct",
    "variation": "variation_pct",
    "gap_share": "gap_pct",
    "edge_deficit": "edge_deficit_points",
    "gradient_x": "gradient_x_points_per_100mm",
    "gradient_y": "gradient_y_points_per_100mm",
    "lightness": "colour.lightness",
    "a": "colour.a",
    "b": "colour.b",
    "chroma": "colour.chroma",
    "hue": "colour.hue_deg",
    "spread": "colour.spread",
    "dark_green": "colour.dark_green_index",
    "dark_green_clipped": "colour.dark_green_clipped_pct",
}
# every key that may be null, in the order of the list
NUMBERS = (
    "tag_number",
    "taken_at",
    "digest",
    "corners_px",
    "corners_from",
    "frame_confidence",
    "coverage_pct",
    "coverage_sd_points",
    "green_pct",
    "pale_pct",
    "red_pct",
    "cells_pct",
    "uniformity_pct",
    "low_quarter_pct",
    "bed_share_pct",
    "bed_cells_pct",
    "bed_uniformity_pct",
    "variation_pct",
    "clumping",
    "gap_pct",
    "gaps",
    "edge_deficit_points",
    "gradient_x_points_per_100mm",
    "gradient_y_points_per_100mm",
    "colour",
    "suspects",
    "quality",
    "notes",
    "method",
    "seconds",
)

COLUMNS = (  # heading, unit, width
    ("tag", "", 5),
    ("coverage", "%", 9),
    ("green", "%", 6),
    ("pale", "%", 6),
    ("red", "%", 6),
    ("uniformity", "%", 11),
    ("gaps", "%", 6),
    ("suspects", "", 9),
    ("corners, how sure", "", 20),
)
MOST_NAME = 48  # letters of a path in the table; the end of a path tells photos apart
NONE = "-"


def as_object(photo: str, result: "Score | Refused") -> dict[str, Any]:
    """One object of the list, for a score or a refusal."""
    from vision.score import Refused

    return _of_refusal(photo, result) if isinstance(result, Refused) else _of_score(photo, result)


def as_json(objects: Sequence[Mapping[str, Any]]) -> str:
    """The list as JSON text, one key a line, so that 72 cells do not fill two screens."""
    texts = [
        "{\n  "
        + ",\n  ".join(f"{dumps(key)}: {dumps(value, allow_nan=False)}" for key, value in told.items())
        + "\n}"
        for told in objects
    ]
    return "[" + ",\n".join(texts) + "]"


def heading(name_width: int) -> str:
    """The two lines above a table: what, and in which unit."""
    names = f"{'photo':{name_width}}" + "".join(f"{name:>{width}}" for name, _, width in COLUMNS)
    units = " " * name_width + "".join(f"{unit:>{width}}" for _, unit, width in COLUMNS)
    return f"{names.rstrip()}\n{units.rstrip()}"


def as_line(photo: str, result: "Score | Refused", name_width: int) -> str:
    """One line of the table; of a refused photo only what is known."""
    from vision.score import Refused

    if isinstance(result, Refused):
        cells = [_number(result.tag_number, 0), "not used"]
    else:
        stand = result.stand
        cells = [
            _number(result.tag_number, 0),
            *(_number(share, 1) for share in (stand.coverage, stand.green, stand.pale, stand.red)),
            _number(stand.uniformity, 1),
            _number(stand.gap_share, 1),
            NONE if "suspects" in result.missing else str(len(result.suspects)),
            f"{result.corners_from} {result.frame_confidence:.2f}{'' if result.is_sure else ' unsure'}",
        ]
    line = f"{_short(photo):{name_width}}"
    return line + "".join(f"{cell:>{width}}" for cell, (_, _, width) in zip(cells, COLUMNS, strict=False))


def name_width(photos: list[str]) -> int:
    """Room for the longest name of a table."""
    return max((len(_short(photo)) for photo in [*photos, "photo"]), default=0) + 1


def _of_score(photo: str, score: "Score") -> dict[str, Any]:
    told = {
        "photo": photo,
        "refused": None,
        "tag_number": score.tag_number,
        "taken_at": None if score.taken_at is None else score.taken_at.isoformat(),
        "digest": score.digest,
        "corners_px": _points(score.corners_px),
        "corners_from": str(score.corners_from),
        "frame_confidence": score.frame_confidence,
        **_stand(score),
        "colour": _colour(score),
        "suspects": _suspects(score),
        "quality": _quality(score),
        "notes": [str(note) for note in score.notes],
        "method": score.method,
        "seconds": score.seconds,
        "missing": _missing(score.missing) | _missing_cells(score.stand.bed_cells),
    }
    return {key: _rounded(value) for key, value in told.items()}


def _stand(score: "Score") -> dict[str, Any]:
    stand = score.stand
    return {
        "coverage_pct": stand.coverage,
        "coverage_sd_points": score.coverage_sd,
        "green_pct": stand.green,
        "pale_pct": stand.pale,
        "red_pct": stand.red,
        "cells_pct": stand.cells,
        "uniformity_pct": stand.uniformity,
        "low_quarter_pct": stand.low_quarter,
        "bed_share_pct": stand.bed_share,
        "bed_cells_pct": stand.bed_cells,
        "bed_uniformity_pct": stand.bed_uniformity,
        "variation_pct": stand.variation,
        "clumping": stand.clumping,
        "gap_pct": stand.gap_share,
        "gaps": [{"x_mm": gap.x_mm, "y_mm": gap.y_mm, "area_cm2": gap.area_cm2} for gap in stand.gaps]
        if stand.gap_share is not None
        else None,
        "edge_deficit_points": stand.edge_deficit,
        "gradient_x_points_per_100mm": stand.gradient_x,
        "gradient_y_points_per_100mm": stand.gradient_y,
    }


def _colour(score: "Score") -> dict[str, Any]:
    colour = score.colour
    return {
        "lightness": colour.lightness,
        "a": colour.a,
        "b": colour.b,
        "chroma": colour.chroma,
        "hue_deg": colour.hue,
        "spread": colour.spread,
        "dark_green_index": colour.dark_green,
        "dark_green_clipped_pct": colour.dark_green_clipped,
    }


def _suspects(score: "Score") -> list[dict[str, Any]] | None:
    if "suspects" in score.missing:
        return None
    return [
        {"x_mm": s.x_mm, "y_mm": s.y_mm, "area_cm2": s.area_cm2, "confidence": s.confidence, "why": s.why}
        for s in score.suspects
    ]


def _quality(score: "Score") -> dict[str, Any]:
    light = score.light
    told = {f.name: getattr(light, f.name) for f in fields(light) if f.name not in ("refusal", "reasons")}
    return {"px_per_mm": score.px_per_mm, "tilt_deg": score.tilt_deg} | told


def _of_refusal(photo: str, refused: "Refused") -> dict[str, Any]:
    told: dict[str, Any] = dict.fromkeys(NUMBERS)
    told["tag_number"] = refused.tag_number
    told["taken_at"] = None if refused.taken_at is None else refused.taken_at.isoformat()
    told["digest"] = refused.digest
    missing = {key: str(refused.reason) for key, value in told.items() if value is None}
    return {"photo": photo, "refused": str(refused.reason)} | told | {"missing": missing}


def _missing(reasons: Mapping[str, "Reason"]) -> dict[str, str]:
    """Reasons by key of the list; what is not named otherwise is a number of the photo's quality."""
    keyed = {
        KEYS.get(name, name if name in NUMBERS else f"quality.{name}"): str(reason)
        for name, reason in reasons.items()
    }
    keyed.pop("bed_cells_pct", None)  # each cell has a reason of its own
    if "gap_pct" in keyed:
        keyed["gaps"] = keyed["gap_pct"]
    return keyed


def _missing_cells(cells: "BedCells") -> dict[str, str]:
    """Cells that are not told, as `bed_cells_pct.row.column`, both from 0."""
    from vision.reason import Reason

    return {
        f"bed_cells_pct.{row}.{column}": str(Reason.LITTLE_BED)
        for row, values in enumerate(cells)
        for column, value in enumerate(values)
        if value is None
    }


def _points(points: Sequence[tuple[float, float]] | None) -> list[list[float]] | None:
    return None if points is None else [[round(x, PIXEL_DIGITS), round(y, PIXEL_DIGITS)] for x, y in points]


def _rounded(value: Any) -> Any:
    """Plain values with at most four digits behind the point, all the way down."""
    if isinstance(value, bool) or value is None:
        return value
    if isinstance(value, float):
        return round(float(value), DIGITS)
    if isinstance(value, Mapping):
        return {key: _rounded(inner) for key, inner in value.items()}
    if isinstance(value, list | tuple):
        return [_rounded(inner) for inner in value]
    return str(value) if isinstance(value, str) else value


def _number(value: float | None, digits: int) -> str:
    return NONE if value is None else f"{value:.{digits}f}"


def _short(photo: str) -> str:
    photo = plain(photo)
    return photo if len(photo) <= MOST_NAME else "…" + photo[1 - MOST_NAME :]
