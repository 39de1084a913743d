"""The same picture has the same numbers to the last digit, wherever in memory it lies.

OpenCV's `magnitude` rounds by the address, so that a score worked out twice would differ in its last digits.
"""

from pathlib import Path

import cv2
import numpy as np
from numpy.typing import NDArray

from vision.photo import read_photo
from vision.tones import colourfulness, tones

ROOT = Path(__file__).parents[2]
OFFSETS = range(0, 64, 4)  # bytes: every place of a float32 in a line of the processor's cache


def moved(values: NDArray[np.float32], offset: int) -> NDArray[np.float32]:
    """The same values, `offset` bytes behind a multiple of 64."""
    room = np.empty(values.nbytes + 128, np.uint8)
    start = -room.ctypes.data % 64 + offset
    copy = room[start : start + values.nbytes].view(np.float32).reshape(values.shape)
    copy[...] = values
    return copy


def test_colour_is_the_same_at_every_address():
    whole = tones(read_photo(ROOT / "tests/photos/top_felt.jpg").pixels, 2.0)
    first = colourfulness(whole.redness, whole.yellowness)

    for offset in OFFSETS:
        again = colourfulness(moved(whole.redness, offset), moved(whole.yellowness, 3 * offset % 64))
        assert np.array_equal(again, first), offset


def test_colour_is_the_length_that_opencv_gives_to_float_rounding():
    whole = tones(read_photo(ROOT / "tests/photos/top_felt.jpg").pixels, 2.0)

    np.testing.assert_allclose(
        colourfulness(whole.redness, whole.yellowness),
        cv2.magnitude(whole.redness, whole.yellowness),
        rtol=3e-7,  # two steps of float32
    )


def test_no_step_asks_for_a_length_that_depends_on_the_address():
    steps = sorted((ROOT / "vision").glob("*.py"))

    assert len(steps) > 40
    assert [step.name for step in steps if "cv2.magnitude(" in step.read_text("utf-8")] == []
