"""Reasons: a photo that is not used is refused with what to do about it."""

import pytest

from vision.reason import Reason

ALL = tuple(Reason)
REFUSALS = ALL[: ALL.index(Reason.UNSURE_FRAME) + 1]  # of the file, the light, the tray


@pytest.mark.parametrize("reason", REFUSALS)
def test_a_refusal_says_what_is_wrong_and_then_what_to_do(reason: Reason) -> None:
    wrong, _, to_do = reason.partition(": ")

    assert len(wrong.split()) >= 2
    assert len(to_do.split()) >= 3
