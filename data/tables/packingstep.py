"""Packing step: corners and shares of the bed of every kept score, as text and in full -> packed.

In    a `sqlite_utils.Database` that has step 5 behind it
Out   the same numbers in a third of the room, also where the book remembers how a score was before a change
Not   the packed forms (`packed.py`); the order of all steps (`steps.py`)

This step has left the house: it is never edited.
"""

import contextlib
import json
from typing import TYPE_CHECKING, Any

from data.tables.packed import MASK, packed_bed, packed_corners

if TYPE_CHECKING:
    from sqlite_utils import Database

__all__ = ["m006_packed_scores"]

# a column of text holds no bytes, and one of 144 bytes no fewer: each goes and comes again under its name
INTO_NEW_COLUMNS = (
    "ALTER TABLE score ADD COLUMN packed_corners BLOB",
    "ALTER TABLE score ADD COLUMN packed_bed BLOB CHECK (length(packed_bed) >= 9)",
    """
    UPDATE score
       SET packed_corners = packed_corners(corners), packed_bed = packed_bed(cells, bed_cells),
           corners = NULL, bed_cells = NULL  -- at once: a row that grows first would break its page in two
    """,
    "ALTER TABLE score DROP COLUMN corners",
    "ALTER TABLE score DROP COLUMN bed_cells",
    "ALTER TABLE score RENAME COLUMN packed_corners TO corners",
    "ALTER TABLE score RENAME COLUMN packed_bed TO bed_cells",
    "UPDATE score SET sure = sure",  # dropping left 0.0 and 508.0 in 8 bytes, writing them takes 0 and 2
)
REMEMBERED = (
    "UPDATE change SET images = images_packed(images) WHERE images LIKE '%\"score\"%'",
    "UPDATE old_score SET body = body_packed(body)",
)
ALL_TOLD = b"\xff" * MASK  # a change may tell of the bed without the cells


def m006_packed_scores(db: "Database") -> None:
    """Corners and shares of the bed in few bytes: there is a score for every photo."""
    for function in (packed_corners, packed_bed, images_packed, body_packed):
        db.register_function(function, deterministic=True)
    for statement in (*INTO_NEW_COLUMNS, *REMEMBERED):
        db.execute(statement)


def images_packed(text: str) -> str:
    """The images of a change, those of scores packed; what cannot be read stays, and keeps no book shut."""
    with contextlib.suppress(ValueError, TypeError, KeyError, AttributeError):
        return _images_packed(json.loads(text))
    return text


def body_packed(text: str) -> str:
    """A score as it was before a person mended it, packed; likewise."""
    with contextlib.suppress(ValueError, TypeError, KeyError, AttributeError):
        return _body_packed(json.loads(text))
    return text


def _images_packed(images: list[dict[str, Any]]) -> str:
    for image in images:
        if image.get("table") == "score":
            image |= {side: _packed(image[side]) for side in ("before", "after") if side in image}
    return json.dumps(images)


def _body_packed(body: dict[str, Any]) -> str:
    return json.dumps(body | {"score": _packed(body["score"])} if "score" in body else body)


def _packed(row: dict[str, Any] | None) -> dict[str, Any] | None:
    """A row of the table score, or some columns of one, as the journal keeps it."""
    packed = dict(row or {})
    if packed.get("corners") is not None:
        packed["corners"] = {"hex": (packed_corners(packed["corners"]) or b"").hex()}
    if packed.get("bed_cells") is not None:
        packed["bed_cells"] = {"hex": ALL_TOLD.hex() + packed["bed_cells"]["hex"]}
    return None if row is None else packed
