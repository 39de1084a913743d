"""Packed: corners and shares of the bed of a score in few bytes, and back to the last digit.

In    corners as text (`scorerows.corners_text`); 72 cells and 72 shares of the bed, packed
Out   bytes for the table score; the same text, the same shares
Not   records (`rows.py`, `scorerows.py`), the step that packs kept scores (`packingstep.py`)

There is a row for every photo. Corners are numbers to the last digit, 334 characters as text: here each takes
8 bytes. They come back as the very text, with its blanks where it had some, since the names of pictures in
the cache are made of it; text of which that is not true stays text. Of the bed only those cells are told that
differ from the cells of the inner area, a quarter: 47 bytes in place of 144.

These forms have left the house with step 6: another one takes a new step.
"""

import json
import struct
from functools import lru_cache
from typing import Any

__all__ = ["bed_in", "corners_in", "packed_bed", "packed_corners"]

CELLS = 72
MASK = CELLS // 8  # bytes: a bit for each cell, set where the bed has a share of its own
TEXT = ord("{")  # in the first byte: corners that stayed text; else 0 or 1, whether parts stand apart
FOUND_BY = ("station", "frame", "hand", "whole")  # the second byte
WRITERS = tuple(json.JSONEncoder(separators=between).encode for between in ((",", ":"), (", ", ": ")))
NUMBERS, WITH_AXIS = 13, 15  # points 8, confidence, tilt, lens 2, focal length, axis 2
NOTHING = float("nan")


def packed_corners(text: str | None) -> bytes | None:
    """Corners as text -> bytes; None for None."""
    if text is None:
        return None
    try:
        packed = _packed(json.loads(text), apart=": " in text)
        return packed if _text_in(packed) == text else text.encode()
    except (ValueError, TypeError, KeyError, AttributeError, struct.error, RecursionError):
        return text.encode()


def _packed(kept: dict[str, Any], *, apart: bool) -> bytes:
    numbers = [part for point in kept["points"] for part in point]
    numbers += [kept["confidence"], kept["tilt_deg"], *kept["lens"], kept["focal_px"]]
    numbers += kept.get("axis_px", ())
    told = [NOTHING if number is None else number for number in numbers]
    return bytes((apart, FOUND_BY.index(kept["found_by"]))) + struct.pack(f"<{len(told)}d", *told)


@lru_cache(4096)  # each picture of a photo is named by it
def corners_in(packed: bytes | None) -> str | None:
    """The text that `packed_corners` was given; `ValueError` where there is none in it."""
    if not packed:
        return None
    return packed.decode() if packed[0] == TEXT else _text_in(packed)


def _text_in(packed: bytes) -> str:
    try:
        apart, found_by, *told = struct.unpack(f"<BB{(len(packed) - 2) // 8}d", packed)
        return str(WRITERS[apart](_parts(FOUND_BY[found_by], told)))
    except (struct.error, IndexError) as error:
        raise ValueError(f"no corners: {error}") from error


def _parts(found_by: str, told: list[float]) -> dict[str, Any]:
    if len(told) not in (NUMBERS, WITH_AXIS):
        raise ValueError(f"corners are {NUMBERS} numbers, or {WITH_AXIS}; got {len(told)}")
    numbers = [None if number != number else number for number in told]
    return {
        "points": [numbers[at : at + 2] for at in range(0, 8, 2)],
        "found_by": found_by,
        "confidence": numbers[8],
        "tilt_deg": numbers[9],
        "lens": numbers[10:12],
        "focal_px": numbers[12],
        **({"axis_px": numbers[13:]} if len(told) == WITH_AXIS else {}),
    }


def packed_bed(cells: bytes, bed: bytes | None) -> bytes | None:
    """144 bytes of shares of the bed -> those that the cells do not tell; None for None."""
    if bed is None:
        return None
    both = zip(memoryview(cells).cast("H"), memoryview(bed).cast("H"), strict=True)
    own = [place for place, (cell, share) in enumerate(both) if cell != share]
    mask = sum(1 << place for place in own)
    return b"".join((mask.to_bytes(MASK, "little"), *(bed[2 * at : 2 * at + 2] for at in own)))


def bed_in(cells: bytes, packed: bytes | None) -> bytes | None:
    """The 144 bytes that `packed_bed` was given; `ValueError` where they are not in it."""
    if packed is None:
        return None
    mask = int.from_bytes(packed[:MASK], "little")
    if len(packed) != MASK + 2 * mask.bit_count():
        raise ValueError(f"shares of {mask.bit_count()} cells of the bed; got {len(packed) - MASK} bytes")
    bed, at = bytearray(cells), MASK
    for place in range(CELLS):
        if mask >> place & 1:
            bed[2 * place : 2 * place + 2] = packed[at : at + 2]
            at += 2
    return bytes(bed)
