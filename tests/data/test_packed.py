"""Packed corners and shares of the bed come back to the last digit."""

import json
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from data.tables.packed import bed_in, corners_in, packed_bed, packed_corners
from data.tables.rows import NO_CELL

CORNERS = (  # as books of the first days have them
    '{"points": [[10.0, 10.0], [1000.5, 12.0], [1001.0, 500.0], [9.0, 498.0]], "found_by": "station", '
    '"confidence": 1.0, "tilt_deg": 3.0, "lens": [0.0, 0.0], "focal_px": null}'
)
NUMBER = st.floats(allow_nan=False)
SHARES = st.lists(st.one_of(st.integers(0, 10_000), st.just(NO_CELL)), min_size=72, max_size=72)
BLANKS = pytest.mark.parametrize("between", [(",", ":"), (", ", ": ")], ids=["close", "with blanks"])


def shares_of(numbers: list[int]) -> bytes:
    return b"".join(number.to_bytes(2, "little") for number in numbers)


@BLANKS
@given(
    numbers=st.lists(NUMBER, min_size=11, max_size=11),
    tilt=st.none() | NUMBER,
    focal=st.none() | NUMBER,
    axis=st.none() | st.lists(NUMBER, min_size=2, max_size=2),
    found_by=st.sampled_from(["station", "frame", "hand", "whole"]),
)
def test_corners_come_back_as_the_very_text(
    between: tuple[str, str],
    numbers: list[float],
    tilt: float | None,
    focal: float | None,
    axis: list[float] | None,
    found_by: str,
) -> None:
    kept: dict[str, Any] = {
        "points": [numbers[at : at + 2] for at in (0, 2, 4, 6)],
        "found_by": found_by,
        "confidence": numbers[8],
        "tilt_deg": tilt,
        "lens": numbers[9:],
        "focal_px": focal,
    }
    text = json.dumps(kept if axis is None else kept | {"axis_px": axis}, separators=between)
    packed = packed_corners(text)

    assert packed is not None
    assert corners_in(packed) == text
    assert len(packed) == 2 + 8 * (13 if axis is None else 15)


@pytest.mark.parametrize(
    "text",
    [
        CORNERS.replace("10.0", "10"),
        CORNERS.replace('"station"', '"dowsing"'),
        CORNERS.replace('"tilt_deg"', '"bend"'),
        CORNERS.replace("1.0", "NaN"),
        CORNERS.replace("{", "{ ", 1),
    ],
)
def test_corners_that_are_written_otherwise_stay_text(text: str) -> None:
    assert packed_corners(text) == text.encode()
    assert corners_in(text.encode()) == text


def test_no_corners_are_none() -> None:
    assert packed_corners(None) is None
    assert corners_in(None) is None


@given(SHARES, SHARES)
def test_shares_of_the_bed_come_back_beside_the_cells(cells: list[int], bed: list[int]) -> None:
    packed = packed_bed(shares_of(cells), shares_of(bed))

    assert packed is not None
    assert bed_in(shares_of(cells), packed) == shares_of(bed)
    assert len(packed) == 9 + 2 * sum(one != other for one, other in zip(cells, bed, strict=True))


def test_a_bed_that_was_not_measured_is_none_and_not_the_cells() -> None:
    cells = shares_of([5000] * 72)

    assert packed_bed(cells, None) is None
    assert bed_in(cells, None) is None
    assert bed_in(cells, packed_bed(cells, cells)) == cells


def test_bytes_that_are_neither_are_refused_in_words() -> None:
    cells = shares_of([0] * 72)
    for broken in (
        b"\0",
        b"\0\0" + bytes(8),
        b"\0\x09" + bytes(104),
        b"\x02\0" + bytes(104),
        b"\0\0" + bytes(99),
    ):
        with pytest.raises(ValueError, match=r"corners"):
            corners_in(broken)
    for broken in (b"", bytes(8), b"\x01" + bytes(8), b"\x01" + bytes(11)):
        with pytest.raises(ValueError, match="cells of the bed"):
            bed_in(cells, broken)
