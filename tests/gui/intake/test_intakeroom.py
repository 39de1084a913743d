"""The height of Intake's page, shared while a question is open above the list."""

from dataclasses import replace
from itertools import pairwise

import pytest

from gui.intake.room import FRAME, ROWS, Parts, row_height, share_out

# as measured on the page at 100 % and 150 % text, px
ORDINARY = Parts(
    room=528,
    line=18,
    question=183,
    least_question=126,
    heading=35,
    panel=290,
    picture=118,
    words=156,
    drop=96,
    next_step=44,
)
LARGE = Parts(
    room=465,
    line=27,
    question=252,
    least_question=162,
    heading=45,
    panel=342,
    picture=118,
    words=208,
    drop=110,
    next_step=44,
)


def test_with_room_the_question_is_whole_and_the_photo_stays_beside_the_list() -> None:
    room = share_out(ORDINARY)

    assert (room.question, room.heading, room.panel, room.next_step) == (183, True, True, True)
    assert room.row == row_height(18)


def test_with_large_letters_in_the_least_window_the_question_rolls_and_the_list_keeps_three_rows() -> None:
    room = share_out(LARGE)

    assert room.question < LARGE.question
    assert (room.heading, room.drop, room.next_step) == (False, False, True)
    assert LARGE.room - room.question - LARGE.next_step == ROWS * room.row + FRAME
    assert (room.panel, room.picture, room.words) == (True, True, False), "the photo is seen all the same"


@pytest.mark.parametrize("height", range(300, 900, 7))
def test_three_rows_and_the_next_step_come_before_all_of_the_question(height: int) -> None:
    parts = replace(LARGE, room=height)

    room = share_out(parts)

    left = height - room.question - (parts.next_step if room.next_step else 0)
    rows = (left - FRAME - (parts.heading if room.heading else 0)) // room.row
    assert room.question >= parts.least_question
    assert rows >= ROWS or room.question == parts.least_question
    assert room.next_step or left < room.row + parts.next_step
    asked = parts.panel - (0 if room.picture else parts.picture) - (0 if room.words else parts.words)
    assert not room.panel or left >= asked
    assert room.panel or left < parts.panel - max(parts.picture, parts.words)


def test_more_height_never_takes_a_part_away() -> None:
    rooms = [share_out(replace(LARGE, room=height)) for height in range(300, 900)]

    for before, after in pairwise(rooms):
        assert before.question <= after.question
        assert before.panel <= after.panel
        assert before.heading <= after.heading
        assert before.next_step <= after.next_step
