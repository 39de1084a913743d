"""Suspects: top view and tissue -> patches that may be mold.

In    top view, uint8 (rows, columns, 3), sRGB; its `TissueMap`; scale in px/mm
Out   `Suspect`s: place in mm from the top view's top left corner, area in cm2, confidence, reasons in words
Not   what a person said about them (the book), what changed since yesterday

A suspect is a reason to look, no finding; no suspect is no proof that a tray is safe.
"""

from dataclasses import dataclass

from vision.tissue import Pixels, TissueMap

__all__ = ["Suspect", "find_suspects"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Suspect:
    """One patch that may be mold."""

    x_mm: float
    y_mm: float
    area_cm2: float
    confidence: float
    """0-1: how much the patch looks like mold; no chance in the strict sense."""
    why: str
    outline_mm: tuple[tuple[float, float], ...]


def find_suspects(top: Pixels, tissue: TissueMap, px_per_mm: float = 2.0) -> tuple[Suspect, ...]:
    """Suspects of a top view, the surest and largest first."""
    return ()
