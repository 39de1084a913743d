"""Readings of a logger's file find their trays and are kept once."""

from dataclasses import replace
from datetime import date, datetime
from zoneinfo import ZoneInfo

import pytest

from data.logs.sheet import read_log
from data.readings import ReadingKind
from data.upkeep.logkeeping import keep_sheet, placed
from tests.data.builders import a_tray

SCALE = """tray,weight g,when
W1,812,2026-03-04 07:10
W2,798,2026-03-04 07:11
B7,640,2026-03-04 07:12
W1,845,2026-01-04 07:10
"""
LOGGER = "when,temp C,rh %\n2026-03-04 07:00,20.5,81\n2026-03-04 07:10,20.6,82\n"


def read(text, **how):
    return read_log(text.encode(), "log.csv", today=date(2026, 3, 11), rack=ZoneInfo("UTC"), **how)


def of_a_shelf(text=LOGGER, shelf="A"):
    return read(text, read_as=replace(read(text).read_as, shelf=shelf))


@pytest.fixture
def trays(book):
    return book.add_trays([a_tray("W1"), a_tray("W2")])


def test_weights_find_the_trays_under_their_codes(book, trays):
    kept, unplaced = keep_sheet(book, read(SCALE))

    assert kept.added == 2
    assert [one.value for one in book.readings(trays[0], ReadingKind.WEIGHT)] == [812]
    assert [(one.line, one.reason) for one in unplaced] == [
        (4, "The book has no tray B7."),
        (5, "No tray W1 was growing then."),
    ]


def test_a_code_used_again_means_the_tray_that_grew_then(book):
    old = book.add_tray(a_tray("W1", sown_at=datetime(2026, 1, 1, 9)))
    book.finish_tray(old, datetime(2026, 1, 12, 9))
    new = book.add_tray(a_tray("W1"))

    readings, _ = placed(read(SCALE), book.trays(growing=False))

    assert {one.taken_at.month: one.tray_id for one in readings} == {3: new, 1: old}


def test_a_tray_that_was_cut_has_no_weights_any_more(book):
    old = book.add_tray(a_tray("W1", sown_at=datetime(2026, 1, 1, 9)))
    book.finish_tray(old, datetime(2026, 1, 3, 9))

    readings, unplaced = placed(read(SCALE), book.trays(growing=False))

    assert readings == ()
    assert {one.line for one in unplaced} == {2, 3, 4, 5}


def test_two_trays_of_one_code_sown_together_are_not_guessed_at(book):
    book.add_trays([a_tray("W1"), a_tray("W1", position=9)])

    _, unplaced = placed(read(SCALE), book.trays(growing=False))

    assert 2 in {one.line for one in unplaced}


def test_the_same_file_twice_adds_nothing(book, trays):
    keep_sheet(book, of_a_shelf())

    kept, _ = keep_sheet(book, of_a_shelf())

    assert kept.same_file
    assert len(book.readings(shelf="A")) == 4


def test_a_longer_file_of_the_same_logger_adds_what_is_new(book, trays):
    keep_sheet(book, of_a_shelf())

    kept, _ = keep_sheet(book, of_a_shelf(LOGGER + "2026-03-04 07:20,20.7,83\n"))

    assert (kept.added, kept.known) == (2, 4)


def test_a_whole_file_is_one_step_of_undo(book, trays):
    keep_sheet(book, of_a_shelf())

    book.undo()
    assert book.readings(shelf="A") == ()

    book.redo()
    assert len(book.readings(shelf="A")) == 4


def test_a_file_that_was_taken_back_can_be_read_otherwise(book, trays):
    keep_sheet(book, of_a_shelf(shelf="B"))
    book.undo()

    kept, _ = keep_sheet(book, of_a_shelf(shelf="A"))

    assert kept.added == 4


def test_a_sheet_with_an_open_question_is_not_kept(book):
    with pytest.raises(ValueError, match="open questions"):
        keep_sheet(book, read(LOGGER))
