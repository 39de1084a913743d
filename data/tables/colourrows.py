"""Colour rows: canopy colours of a tray's mates and of a trial, and where those rows become records.

In    rows
Out   `MateColour`, `CanopyGreen`; SQL as constants, values bound by name
Not   running the queries (`chapters/reader.py`), how far colours are apart (`chapters/colourapart.py`)
"""

import sqlite3
from dataclasses import dataclass

from data.numbers import TrayId
from data.queries import ASKED_SCORE, MATES
from vision.colourdifference import CanopyColour

__all__ = [
    "GREENS_OF_TRIAL", "MATE_COLOURS", "CanopyGreen", "MateColour", "canopy_green_of", "mate_colour_of",
]  # fmt: skip

# block mates of one crop and sowing day on the medium that the tray's trial trusts, else the book, on one day
MATE_COLOURS = f"""
    SELECT t.id AS tray, t.code, m.name AS medium, s.lightness, s.a, s.b, s.corrected_by, s.method
      FROM tray me
      LEFT JOIN trial r ON r.id = me.trial
      JOIN medium m ON m.id = coalesce(r.trusted, (SELECT id FROM medium WHERE trusted = 1 LIMIT 1))
      JOIN tray t ON {MATES} AND t.medium = m.id AND t.id <> me.id
      JOIN photo p ON p.tray = t.id AND p.refusal IS NULL AND p.left_out_at IS NULL
      JOIN score s ON {ASKED_SCORE}
     WHERE me.id = :tray
       AND p.taken_at >= :day AND p.taken_at < date(:day, '+1 day') AND s.sure = 1
     ORDER BY t.shelf, t.position, t.id, p.taken_at, p.id
"""


# of photos whose colours were set right by a grey patch: a new lamp is no hunger
GREENS_OF_TRIAL = """
    SELECT s.id AS score, s.dark_green, s.lightness
      FROM trial r
      CROSS JOIN tray t ON t.trial = r.id
      CROSS JOIN photo p ON p.tray = t.id
      CROSS JOIN score s ON s.photo = p.id
     WHERE r.name = :trial AND p.left_out_at IS NULL AND p.refusal IS NULL AND s.sure = 1
       AND s.corrected_by = 'patch'
       AND julianday(date(p.taken_at)) - julianday(date(t.sown_at)) = :day
"""


@dataclass(frozen=True, slots=True, kw_only=True)
class CanopyGreen:
    """How green and how light the canopy of one score is; None where that cannot be had."""

    dark_green: float | None  # index from 0 to 1; red canopies have none
    lightness: float | None  # L*


def canopy_green_of(row: sqlite3.Row) -> CanopyGreen:
    """Green and lightness of one score."""
    return CanopyGreen(dark_green=row["dark_green"], lightness=row["lightness"])


@dataclass(frozen=True, slots=True, kw_only=True)
class MateColour:
    """The canopy colour of one photo of a mate."""

    tray_id: TrayId
    code: str
    medium: str
    colour: CanopyColour


def mate_colour_of(row: sqlite3.Row) -> MateColour:
    """The canopy colour of one photo of a mate."""
    return MateColour(
        tray_id=TrayId(row["tray"]),
        code=row["code"],
        medium=row["medium"],
        colour=CanopyColour(
            lightness=row["lightness"],
            a=row["a"],
            b=row["b"],
            corrected_by=row["corrected_by"],
            method=row["method"],
        ),
    )
