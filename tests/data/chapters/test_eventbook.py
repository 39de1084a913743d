"""Events are kept, handed out, and each change of them can be taken back."""

from datetime import timedelta

import pytest

from data.book import Book
from data.events import EventKind
from data.looklist.missing import is_covered
from data.records import TrayId
from tests.data.builders import NOON, a_tray


@pytest.fixture
def tray(book: Book) -> TrayId:
    return book.trays()[0].id


def test_an_event_on_many_trays_is_one_step(book: Book) -> None:
    trays = [tray.id for tray in book.trays()]
    book.add_event(trays, EventKind.WATERED, NOON, "from below")

    assert book.undo_text() == "watered: 3 trays"
    (one,) = book.events(trays[1])
    assert (one.kind, one.at, one.note) == (EventKind.WATERED, NOON, "from below")
    assert [len(book.events(tray)) for tray in trays] == [1, 1, 1]
    book.undo()
    assert [len(book.events(tray)) for tray in trays] == [0, 0, 0]


def test_a_tray_that_was_thrown_away_stays_in_its_trial_with_the_reason(book: Book, tray: TrayId) -> None:
    book.add_event([tray], EventKind.THROWN_AWAY, NOON, "mold over half of it")

    ended = book.tray(tray)
    assert (ended.done_at, ended.ended, ended.ended_why) == (NOON, "thrown away", "mold over half of it")
    assert ended.trial == "t"
    assert book.ended_trays() == (ended,)
    assert tray not in {one.id for one in book.trays()}


def test_the_end_of_a_tray_is_taken_back_in_one_step(book: Book, tray: TrayId) -> None:
    before = book.tray(tray)
    book.add_event([tray], EventKind.CUT, NOON)
    book.undo()
    assert book.tray(tray) == before
    assert book.events(tray) == ()


def test_a_tray_that_was_cut_by_mistake_is_opened_again(book: Book, tray: TrayId) -> None:
    before = book.tray(tray)
    book.add_event([tray], EventKind.WATERED, NOON)
    book.add_event([tray], EventKind.CUT, NOON)

    book.reopen_tray(tray)

    assert book.tray(tray) == before
    assert [event.kind for event in book.events(tray)] == [EventKind.WATERED]
    book.undo()
    assert book.tray(tray).ended == "cut"


def test_a_tray_whose_tag_was_given_away_cannot_be_opened_again(book: Book, tray: TrayId) -> None:
    from data.errors import TagTaken

    book.add_event([tray], EventKind.CUT, NOON)
    book.add_tray(a_tray("B1", tag_number=10))

    with pytest.raises(TagTaken, match="tag 10"):
        book.reopen_tray(tray)
    assert book.tray(tray).ended == "cut"


def test_uncovering_ends_the_blackout_then_and_not_as_it_was_planned(book: Book, tray: TrayId) -> None:
    sown = book.tray(tray).sown_at
    book.edit_tray(tray, blackout_from=sown, blackout_to=sown + timedelta(days=2))
    on_day_4 = sown + timedelta(days=4, minutes=-40)

    (event,) = book.add_event([tray], EventKind.UNCOVERED, on_day_4)

    assert (book.tray(tray).blackout_from, book.tray(tray).blackout_to) == (sown, on_day_4)
    assert is_covered(book.tray(tray), (sown + timedelta(days=3)).date())
    book.change_event(event, at=sown + timedelta(days=3))
    assert book.tray(tray).blackout_to == sown + timedelta(days=3)
    book.undo()
    book.undo()
    assert book.tray(tray).blackout_to == sown + timedelta(days=2)


def test_without_the_note_uncovered_the_blackout_ends_as_it_was_planned(book: Book, tray: TrayId) -> None:
    sown = book.tray(tray).sown_at
    planned = (sown, sown + timedelta(days=2))
    book.edit_tray(tray, blackout_from=planned[0], blackout_to=planned[1])
    (event,) = book.add_event([tray], EventKind.UNCOVERED, sown + timedelta(days=4))
    book.change_event(event, at=sown + timedelta(days=3))

    book.delete_event(event)
    assert (book.tray(tray).blackout_from, book.tray(tray).blackout_to) == planned
    book.undo()
    assert book.tray(tray).blackout_to == sown + timedelta(days=3)

    book.edit_tray(tray, blackout_to=sown + timedelta(days=1))  # said otherwise since
    book.delete_event(event)
    assert book.tray(tray).blackout_to == sown + timedelta(days=1)


@pytest.mark.parametrize("beside", [False, True])
def test_without_two_notes_uncovered_the_blackout_ends_as_planned_whichever_was_deleted_first(
    book: Book, tray: TrayId, beside: bool
) -> None:
    """Where no other tray is noted beside it, the ids of deleted notes are used again."""
    sown = book.tray(tray).sown_at
    trays = [tray, *(other.id for other in book.trays()[1:2] if beside)]

    for first, days in ((0, 1), (1, 2)):
        planned = (sown, sown + timedelta(days=days))
        book.edit_tray(tray, blackout_from=planned[0], blackout_to=planned[1])
        one = book.add_event(trays, EventKind.UNCOVERED, sown + timedelta(days=4))[0]
        book.change_event(one, at=sown + timedelta(days=3))
        notes = [one, book.add_event(trays, EventKind.UNCOVERED, sown + timedelta(days=5))[0]]
        book.delete_event(notes[first])
        assert book.tray(tray).blackout_to == sown + timedelta(days=(5, 3)[first])
        book.delete_event(notes[1 - first])

        assert (book.tray(tray).blackout_from, book.tray(tray).blackout_to) == planned


def test_where_nobody_knows_any_more_how_it_was_planned_the_blackout_stays(book: Book, tray: TrayId) -> None:
    sown = book.tray(tray).sown_at
    (event,) = book.add_event([tray], EventKind.UNCOVERED, sown + timedelta(days=4))
    book.forget_changes()

    book.delete_event(event)

    assert book.tray(tray).blackout_to == sown + timedelta(days=4)


def test_a_blackout_that_was_said_otherwise_since_stays_where_the_uncovering_is_mended(
    book: Book, tray: TrayId
) -> None:
    sown = book.tray(tray).sown_at
    (event,) = book.add_event([tray], EventKind.UNCOVERED, sown + timedelta(days=3))
    book.edit_tray(tray, blackout_to=sown + timedelta(days=2))

    book.change_event(event, at=sown + timedelta(days=4))

    assert book.tray(tray).blackout_to == sown + timedelta(days=2)


def test_of_a_tray_whose_cover_nobody_noted_uncovering_says_that_it_was_covered(
    book: Book, tray: TrayId
) -> None:
    sown = book.tray(tray).sown_at
    book.edit_tray(tray, blackout_from=None, blackout_to=None)

    book.add_event([tray], EventKind.UNCOVERED, sown + timedelta(days=3))
    book.add_event([tray], EventKind.UNCOVERED, sown - timedelta(days=1))  # of whatever grew there before

    assert (book.tray(tray).blackout_from, book.tray(tray).blackout_to) == (sown, sown + timedelta(days=3))


def test_changing_the_event_moves_the_end_of_the_tray(book: Book, tray: TrayId) -> None:
    (end,) = book.add_event([tray], EventKind.THROWN_AWAY, NOON, "fell down")
    earlier = NOON - timedelta(days=1)

    book.change_event(end, at=earlier, note="fell over")

    assert (book.tray(tray).done_at, book.tray(tray).ended_why) == (earlier, "fell over")
    book.undo()
    assert (book.tray(tray).done_at, book.tray(tray).ended_why) == (NOON, "fell down")


def test_an_event_can_be_deleted(book: Book, tray: TrayId) -> None:
    (one,) = book.add_event([tray], EventKind.TURNED, NOON)
    book.delete_event(one)
    assert book.events(tray) == ()
    assert book.undo() == "turned of A1 deleted"


def test_a_note_is_words_without_a_number_and_ends_no_tray(book: Book, tray: TrayId) -> None:
    book.add_event([tray], EventKind.NOTE, NOON, "smells of the cellar")

    (event,) = book.events(tray)
    assert (event.kind, event.note) == (EventKind.NOTE, "smells of the cellar")
    assert book.tray(tray).done_at is None
    assert book.undo_text() == f"note: {book.tray(tray).code}"
