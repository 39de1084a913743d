"""What passes to a new tray: a code, a tag, a place. Neither tray gets what belongs to the other."""

from datetime import datetime, timedelta
from pathlib import Path

import pytest

from data.book import Book
from data.photos.succession import rack_at, stood_at
from data.readings import ReadingKind
from data.records import TrayId
from data.upkeep.logkeeping import placed
from tests.data.builders import a_kept_tray, a_note, a_tray, bring
from tests.data.upkeep.test_logkeeping import read

DAY = timedelta(days=1)
CUT = datetime(2026, 3, 12, 10)  # of the old tray; the new one is sown on the same day
OLD = a_kept_tray(1, code="A1", done_at=CUT)
NEW = a_kept_tray(
    2, code="A1", sown_at=datetime(2026, 3, 12, 8), position=1
)  # "8:00" is what nobody looked at


@pytest.mark.parametrize(
    ("at", "stood"),
    [
        (datetime(2026, 3, 5, 8), [1]),
        (datetime(2026, 3, 12, 7), [1]),  # in the morning, before the cut
        (datetime(2026, 3, 12, 9), [1]),  # after the time of sowing that nobody looked at
        (datetime(2026, 3, 12, 11), [2]),
        (datetime(2026, 3, 13, 8), [2]),
        (datetime(2026, 2, 27, 8), []),
    ],
)
def test_on_the_day_of_the_change_the_end_of_the_old_tray_parts_the_two(
    at: datetime, stood: list[int]
) -> None:
    assert [tray.id for tray in stood_at([OLD, NEW], at)] == stood
    assert [tray.id for tray in stood_at([NEW, OLD], at)] == stood


def test_a_tray_counts_a_day_before_its_sowing_only_where_no_other_stood() -> None:
    evening_before = NEW.sown_at - DAY / 2
    assert stood_at([NEW], evening_before) == ()
    assert stood_at([NEW], evening_before, DAY) == (NEW,)
    assert stood_at([OLD, NEW], evening_before, DAY) == (OLD,)


def test_two_that_grow_together_are_both_told() -> None:
    twin = a_kept_tray(3, code="A1")
    assert set(stood_at([twin, a_kept_tray(1)], datetime(2026, 3, 5))) == {twin, a_kept_tray(1)}


def test_of_trays_on_one_place_the_rack_has_the_one_that_stood() -> None:
    others = [a_kept_tray(4, code="A2", position=2), a_kept_tray(5, code="Z9", position=9)]
    assert [tray.id for tray in rack_at([OLD, NEW, *others], CUT - DAY / 8)] == [1, 4, 5]
    assert [tray.id for tray in rack_at([OLD, NEW, *others], CUT + DAY / 8)] == [2, 4, 5]


def test_a_tray_of_another_code_takes_a_place_over_once_the_one_before_has_ended() -> None:
    next_one = a_kept_tray(2, code="B7", sown_at=NEW.sown_at, position=1)

    assert rack_at([OLD, next_one], CUT - DAY / 24) == (OLD,)
    assert rack_at([OLD, next_one], CUT + DAY / 24) == (next_one,)


# --- in the book


@pytest.fixture
def changed(book: Book) -> tuple[TrayId, TrayId]:
    """W1 of 1 March was cut on the 12th at ten; another W1 was sown on its place, under its tag, that day."""
    old = book.add_tray(a_tray("W1", tag_number=77, shelf="W"))
    book.add_trays([a_tray("W2", shelf="W"), a_tray("W3", shelf="W")])
    book.finish_tray(old, CUT)
    new = book.add_tray(a_tray("W1", tag_number=77, shelf="W", position=1, sown_at=NEW.sown_at))
    return old, new


@pytest.mark.parametrize(("at", "which"), [("09:00", 0), ("10:00", 0), ("11:00", 1)])
def test_a_photo_with_the_tag_shows_the_tray_that_carried_it_then(
    book: Book, phone: Path, changed: tuple[TrayId, TrayId], at: str, which: int
) -> None:
    photo = bring(book, a_note(phone, tag=77, taken_at=f"2026-03-12T{at}:00")).photo_id

    assert book.photo(photo).tray_id == changed[which]


def test_a_photo_after_the_cut_shows_nothing_where_the_tag_was_not_given_on(book: Book, phone: Path) -> None:
    old = book.add_tray(a_tray("W1", tag_number=77))
    book.finish_tray(old, CUT)

    fate = bring(book, a_note(phone, tag=77, taken_at="2026-03-13T09:00:00"))

    assert "belongs to no tray that grew at that time" in fate.sentence


@pytest.mark.parametrize(("hour", "which"), [(8, 0), (18, 1)])
def test_a_walk_on_the_day_of_the_change_meets_the_tray_that_stood(
    book: Book, phone: Path, changed: tuple[TrayId, TrayId], hour: int, which: int
) -> None:
    for tray in book.trays():
        if tray.shelf != "W":
            book.finish_tray(tray.id, datetime(2026, 3, 10))
    photos = [
        bring(book, a_note(phone, f"{n}.jpg", taken_at=f"2026-03-12T{hour:02}:0{n}:00")).photo_id
        for n in range(3)
    ]

    proposed = [book.photo(photo).proposal_id for photo in photos]

    assert proposed[0] == changed[which]
    assert [book.tray(tray).code for tray in proposed[1:] if tray is not None] == ["W2", "W3"]


def test_weights_of_the_day_of_the_change_go_to_the_tray_that_stood(
    book: Book, changed: tuple[TrayId, TrayId]
) -> None:
    text = (
        "tray,weight g,when\nW1,1400,2026-03-12 07:10\nW1,1390,2026-03-12 09:10\nW1,840,2026-03-12 11:10\n"
        "W1,1410,2026-03-11 07:10\n"
    )
    readings, unplaced = placed(read(text), book.trays(growing=False))

    old, new = changed
    assert unplaced == ()
    assert [(one.value, one.tray_id) for one in readings if one.kind is ReadingKind.WEIGHT] == [
        (1400, old), (1390, old), (840, new), (1410, old),
    ]  # fmt: skip


def test_weights_of_a_code_that_two_growing_trays_carry_are_not_guessed_at(book: Book) -> None:
    book.add_trays([a_tray("W1"), a_tray("W1", sown_at=datetime(2026, 3, 3, 9))])

    readings, unplaced = placed(
        read("tray,weight g,when\nW1,812,2026-03-04 07:10\n"), book.trays(growing=False)
    )

    assert readings == ()
    assert str(unplaced[0].reason).startswith("2 trays were called W1 then")
